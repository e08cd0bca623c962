desk-swallowing = { $today ->
    [yes] { $name } a avalé quelque chose aujourd’hui : appelez tout de suite un vétérinaire.
   *[other] { $name } a avalé quelque chose le { $day }. Demande si un vétérinaire s’en est occupé.
}
desk-threat = { $count ->
    [1] { $name } a grogné, claqué des dents ou mordu le { $day }.
   *[other] { $name } a grogné, claqué des dents ou mordu { $count } fois en { $days } jours, la dernière le { $day }.
}
desk-guarding = { $count ->
    [1] { $name } a défendu quelque chose le { $day }.
   *[other] { $name } a défendu quelque chose { $count } fois en { $days } jours, la dernière le { $day }.
}
desk-strong = { $on ->
    [1] { $name } a montré des signes forts de stress le { $day }.
   *[other] { $name } a montré des signes forts de stress { $on } jours sur { $days }, la dernière fois le { $day }.
}
desk-taken-back = { $kind ->
    [swallowing] La note disant que { $name } a avalé quelque chose le { $day } a été retirée.
    [threat] La note disant que { $name } a grogné, claqué des dents ou mordu le { $day } a été retirée.
    [guarding] La note disant que { $name } a défendu quelque chose le { $day } a été retirée.
   *[other] La note d’un signe fort de stress le { $day } a été retirée.
}
desk-joins-less = { $name } rejoint moins de séances depuis le { $day } : { $lately }. Avant : { $before }.
desk-presses-less = { $name } appuie moins depuis le { $day } : { $lately }. Avant : { $before }.
desk-slower = { $name } met plus longtemps à appuyer sur invitation depuis le { $day } : { $lately }. Avant : { $before }.
desk-leaves = { $name } a quitté beaucoup des dernières séances rejointes : { $share }.
desk-silent = Rien n’a été noté sur { $name } depuis { $days } jours.
desk-stuck = « { $word } » est bloqué : { $cause }.
desk-holds = « { $word } » avance, mais quelque chose le gêne : { $cause }.
desk-stuck-unknown = « { $word } » est bloqué, et les notes ne montrent pas pourquoi.
desk-cause = { $cause ->
    [hard_to_make_out] l’enregistrement est peut-être difficile à distinguer
    [not_wanted] ce qu’il apporte n’est pas voulu en ce moment
    [too_little] il est trop peu montré
    [too_late] la chose vient trop tard
    [avoided] { $name } évite le bouton
    [time_or_place] l’heure ou le lieu des séances est difficile pour { $name }
    [health] { $name } ne va peut-être pas bien
    [sounds_alike] il est pris pour un mot qui sonne pareil
   *[people_differ] chacun y répond autrement
}
desk-ration = { $name } a reçu plus de nourriture que les récompenses du jour { $days } des { $of } derniers jours.
desk-ready = « { $word } » est prêt pour l’invitation depuis le { $day }.
desk-check-open = Une vérification attend sa fin : { $done } essais faits sur { $of }.
desk-check-never = { $words ->
    [1] Un mot en usage n’a jamais été vérifié.
   *[other] { $words } mots en usage n’ont jamais été vérifiés.
}
desk-little = { $lack ->
    [days] Des notes { $days } jours sur { $of }, c’est trop peu pour dire ce qui retient un mot.
    [records] Trop peu d’appuis et de séances sont notés, { $days } jours sur { $of }, pour dire ce qui retient un mot.
   *[whole] Trop peu d’appuis et de séances sont notés en entier, { $days } jours sur { $of }, pour dire ce qui retient un mot.
}
desk-outside = Hors des neuf dixièmes du milieu de { $homes } foyers comparables : { $lies }
desk-outside-wait = { $by ->
    [days] { $wait ->
        [1] { $wait } jour
       *[other] { $wait } jours
    }
   *[showings] { $wait ->
        [1] { $wait } démonstration
       *[other] { $wait } démonstrations
    }
}
desk-outside-open = pas encore d’appui sur « { $word } » après { $wait }. Là-bas, dix-neuf mots sur vingt ont reçu leur premier appui en { $place } ou moins (intervalle à { $level } : { $low } à { $high }).
desk-outside-later = premier appui sur « { $word } » après { $wait }. Là-bas, dix-neuf mots sur vingt ont reçu leur premier appui en { $place } ou moins (intervalle à { $level } : { $low } à { $high }).
desk-outside-sooner = premier appui sur « { $word } » après { $wait }. Là-bas, dix-neuf mots sur vingt ont demandé { $place } ou plus (intervalle à { $level } : { $low } à { $high }).

desk-why-recurring = Cela revient : { $weeks } des { $of } dernières semaines.
desk-why-taken-back = C’était peut-être une erreur de doigt. Demande au foyer ce qui s’est passé.
desk-why-change = Plus que le hasard ne le permet, en comptant tout ce que ce bureau regarde ({ $p }).
desk-why-silent = Jours d’une note à la suivante : { $usual }. La plus longue pause jusqu’ici : { $longest } ; c’est signalé à partir de { $after } jours entiers.
desk-why-silent-new = Il n’y a pas encore d’habitude à comparer ; c’est signalé à partir de { $after } jours entiers.
desk-why-hardly = Dit bloqué pour cela : { $presses ->
    [0] { $name } ne l’a pas pressé spontanément en quatre semaines
    [one] { $name } l’a pressé une fois spontanément en quatre semaines
   *[other] { $name } l’a pressé { $presses } fois spontanément en quatre semaines
}, et on le montre depuis plus de trois.
desk-why-seldom-taken = Dit bloqué pour cela : { $name } prend rarement ce qu’il apporte, et il y a trop peu d’invitations pour en dire plus.
desk-why-seldom-right = Dit bloqué pour cela : juste dans nettement moins de la moitié des fois où l’on a invité { $name } et où la chose était voulue : { $right }.
desk-why-right = Juste, des fois où l’on a invité { $name } et où la chose était voulue : { $right }.
desk-why-hours = Séances rejointes à ces heures : { $figure }. À d’autres : { $beside }.
desk-why-fall = Dernièrement : { $figure }. Avant : { $beside }.
desk-why-alike = L’autre mot appuyé quand celui-ci était proposé : { $figure }. Quand aucun des deux ne l’était : { $beside }.
desk-why-people = Une personne : { $figure }. Une autre : { $beside }.
desk-why-recording = Son enregistrement ({ $seconds }) est très court, ou plus faible que les autres.
desk-why-ration = Le plus en un jour : { $most } kcal. Les récompenses du jour sont de { $budget } kcal.
desk-why-ready = { $showings ->
    [1] Montré une fois
   *[other] Montré { $showings } fois
}, et il attend depuis { $days } jours.
desk-why-check = Seule une vérification peut le distinguer des indices et de la chance.
desk-why-little = Noté en entier (un appui avec sa réponse, une séance avec sa fin) : { $closed }. Ce que personne n’a noté a pu arriver quand même.
desk-why-outside = À côté de { $kind } dans des foyers avec { $who }. Mots de { $name } qui ont pu être mis à côté d’autres : { $laid }. Partout, environ un mot sur dix est en dehors.
desk-why-outside-cause = Ce qui peut le freiner ici : { $cause }.
desk-why-sooner = Un appui dit qu’un bouton a été enfoncé, pas pourquoi. Plus tôt n’est pas mieux.
desk-until-without = Aucun autre signe de ce genre avant le { $day }.

desk-until-asked = Un mot du foyer sur la raison du retrait.
desk-until-record = N’importe quelle note.
desk-until-more-records = { $lack ->
    [days] Des notes presque chaque jour, avec les réponses et la fin des séances.
    [records] Plus d’appuis et de séances notés, avec réponses et fins.
   *[whole] La réponse à la plupart des appuis, et la fin de la plupart des séances, notées.
}
desk-until-more-right = Nettement plus d’appuis justes sur invitation, ou des notes qui indiquent une cause.
desk-until-fewer-over = Moins de trois jours ainsi par semaine, ou une quantité fixée par un vétérinaire.
desk-until-invited = Le mot est proposé, ou ses chiffres ne mènent plus à l’invitation.
desk-until-first-press = Un premier appui, ou une édition plus récente de ces chiffres.
desk-until-since-press = { $days } jours depuis le premier appui, ou une édition plus récente de ces chiffres.
desk-aside = { $ago ->
    [0] Mis de côté il y a moins d’un jour
    [one] Mis de côté il y a { $ago } jour
   *[other] Mis de côté il y a { $ago } jours
} ; revient dans { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} au plus, plus tôt si cela empire.
desk-back = { $ago ->
    [0] Tu as mis ceci de côté il y a moins d’un jour.
    [one] Tu as mis ceci de côté il y a { $ago } jour.
   *[other] Tu as mis ceci de côté il y a { $ago } jours.
} { $why ->
    [worse] Depuis, cela a empiré.
    [anew] Depuis, cela a recommencé.
    [cause] Les notes indiquent maintenant une autre cause.
   *[days] Ces jours sont passés.
}

desk-new-signs = { $kind ->
    [swallowing] { $count ->
        [1] { $name } a avalé quelque chose : { $day }.
       *[other] { $name } a avalé quelque chose { $count } fois, la dernière { $day }.
    }
    [threat] { $count ->
        [1] { $name } a grogné, claqué des dents ou mordu : { $day }.
       *[other] { $name } a grogné, claqué des dents ou mordu { $count } fois, la dernière { $day }.
    }
    [guarding] { $count ->
        [1] { $name } a défendu quelque chose : { $day }.
       *[other] { $name } a défendu quelque chose { $count } fois, la dernière { $day }.
    }
   *[other] { $count ->
        [1] Un signe fort de stress : { $day }.
       *[other] Signes forts de stress : { $count }, le dernier { $day }.
    }
}
desk-new-joining = Séances que { $name } a rejointes : { $lately }. Avant : { $before } ({ $p }).
desk-new-presses = Appuis spontanés : { $lately }. Avant : { $before } ({ $p }).
desk-new-word = « { $word } » est nouveau sur le tableau.
desk-word-gone = « { $word } » n’est plus en usage.
desk-first-press = { $name } a appuyé sur « { $word } » spontanément pour la première fois : { $day }.
desk-new-stage = « { $word } » est passé de { $from } à { $to }.
desk-above-chance = Les appuis justes sur « { $word } » dépassent désormais le hasard : { $right }.
