because-strong-signs = Signes forts de stress : { $count } en { $days } jours, sur { $on } d’entre eux{ $today ->
    [0] { "" }
   *[other] , { $today } aujourd’hui
}. Le dernier : « { $last } ».
because-rests-until = Pas de séance jusqu’au { $until } : un signe fort arrête tout pour la journée, douze heures au moins ; sur deux jours, pour une semaine.
because-lasting-threat = { $count ->
    [1] Un grognement, claquement de dents ou morsure en { $days } jours : « { $last } », { $day }.
   *[other] { $count } grognements, claquements de dents ou morsures en { $days } jours. Dernier : « { $last } », { $day }.
}
because-lasting-guarding = { $count ->
    [1] { $name } a défendu quelque chose une fois en { $days } jours : « { $last } », { $day }.
   *[other] { $name } a défendu quelque chose { $count } fois en { $days } jours. Dernière fois : « { $last } », { $day }.
}
because-lasting-swallowing = { $count ->
    [1] { $name } a avalé quelque chose une fois en { $days } jours : « { $last } », { $day }.
   *[other] { $name } a avalé quelque chose { $count } fois en { $days } jours. Dernière fois : « { $last } », { $day }.
}
because-recurring = Cela revient : dans { $weeks } des { $of } dernières semaines.
because-left-few = Sur les { $of } dernières séances suivies, { $name } en a quitté { $left }.
because-left-sessions = Parmi les dernières séances suivies, { $name } en a quitté { $left } : { $share }.
because-mild-signs = Séances des sept derniers jours avec un signe léger de stress : { $share }.
because-sudden-change = Appuis spontanés sur les deux derniers jours : { $now }. Sur les quatre semaines d’avant : { $before }.
because-food-given = { $given } kcal données { $feeds ->
    [1] en une fois
   *[other] en { $feeds } fois
} aujourd’hui ; les récompenses du jour sont de { $budget } kcal.
because-rewards-listed = { $rewards ->
    [0] Aucune récompense dans la liste ; un test de préférences en compare au moins deux.
    [one] Une récompense dans la liste ; un test de préférences en compare au moins deux.
   *[other] { $rewards } récompenses dans la liste ; un test de préférences en compare au moins deux.
}
because-no-likes-test = { $rewards ->
    [1] Une récompense dans la liste, pas testée.
   *[other] { $rewards } récompenses dans la liste, aucune testée.
}
because-no-word-yet = { $trials ->
    [1] Un essai d’un test de préférences est noté
   *[other] { $trials } essais de tests de préférences sont notés
}, et aucun mot n’est encore sur le tableau.
because-no-allowance = On ne peut pas le calculer avec ce qui est sur la fiche.
because-card-lacks = Il manque sur la fiche : { $lacks }. Un mot s’apprend mieux si tous répondent pareil (pratique courante, sans source).
because-slowing = « { $word } » joue { $by } plus lentement, d’après les appuis entendus en { $days ->
    [1] un jour
   *[other] { $days } jours
}. Probabilité qu’il ralentisse plus qu’un bouton sain : { $probability }.
because-silent = « { $word } » a été entendu pour la dernière fois le { $day }, il y a { $days ->
    [1] un jour
   *[other] { $days } jours
}. D’autres mots ont été entendus { $others ->
    [1] une fois
   *[other] { $others } fois
} depuis.
because-never-heard = « { $word } » n’a pas été entendu en { $days ->
    [1] un jour
   *[other] { $days } jours
} d’écoute. D’autres mots ont été entendus { $others ->
    [1] une fois
   *[other] { $others } fois
}.
because-silent-before = « { $word } » a été entendu pour la dernière fois le { $day }, il y a { $days ->
    [1] un jour
   *[other] { $days } jours
} ; avant, { $before }. D’autres mots ont été entendus { $others ->
    [1] une fois
   *[other] { $others } fois
} depuis.
because-noted-by-hand = « { $word } » a été noté à la main { $times ->
    [1] une fois
   *[other] { $times } fois
} entre-temps : il sonne, mais plus comme son enregistrement d’ici.
because-silent-causes = Une pile vide, un bouton cassé ou un nouvel enregistrement peut l’expliquer ; ou le mot ne sert pas en ce moment. Cela ne dit rien de ce qu’un animal sait.
because-test-old = Le dernier test de préférences a { $days } jours. La moitié compte comme oubliée après { $half } jours (pratique courante, sans source).
because-best-unclear = Pas encore clair ; meilleurs jusqu’ici : { $best } (sûr à { $probability }, { $choices ->
    [0] encore aucun essai de choix
    [1] un essai de choix
   *[other] { $choices } essais de choix
}).
because-when-wanted = { $of ->
    [1] À une invitation où { $name } voulait la chose, { $name } { $parts }.
   *[other] À { $of } invitations où { $name } voulait la chose, { $name } { $parts }.
}
because-wanted-this = a appuyé sur ce mot { $all ->
    [yes] chaque fois
   *[no] { $times ->
        [1] une fois
       *[other] { $times } fois
    }
}
because-wanted-other = a appuyé sur un autre mot { $all ->
    [yes] chaque fois
   *[no] { $times ->
        [1] une fois
       *[other] { $times } fois
    }
}
because-wanted-none = { $all ->
    [yes] n’a chaque fois appuyé sur rien
   *[no] { $times ->
        [1] n’a appuyé sur rien une fois
       *[other] n’a appuyé sur rien { $times } fois
    }
}
because-when-wanted-early = Trop tôt pour le dire : { $of ->
    [0] encore aucune invitation où { $name } voulait la chose
    [1] une seule invitation où { $name } voulait la chose
   *[other] { $of } invitations où { $name } voulait la chose
}.
because-right-none = Part de ce mot dans les appuis à l’invitation : encore rien compté.
because-right = Part de ce mot dans les appuis à l’invitation : { $share }. { $chance ->
    [more] Au-delà du seuil pour une étape suivante ({ $bar } contre 1).
   *[other] Pas encore plus que le hasard.
}
because-right-elsewhere = Part de ce mot dans les appuis à l’invitation : { $share } ; quand on invite à d’autres mots : { $elsewhere }. { $chance ->
    [more] Au-delà du seuil pour une étape suivante ({ $bar } contre 1).
   *[other] Pas encore plus que le hasard.
}
because-showings = { $showings ->
    [0] Jamais montré
    [1] Montré une fois
   *[other] Montré { $showings } fois
} (il en faut { $wanted }), { $days ->
    [0] sur aucun jour
    [1] sur un jour
   *[other] sur { $days } jours
} (il en faut { $dayswanted }).
because-joining = Séances suivies en quatre semaines : { $share }. Avant d’inviter, il en faut nettement plus de { $floor }.
because-mastery = Séances de suite avec au moins { $share } d’appuis et d’appuis justes : { $sessions } (il en faut { $wanted }). Personnes différentes : { $people } (il en faut { $peoplewanted }).
because-own-presses = Appuis spontanés après lesquels la chose a été prise : { $presses } (il en faut { $wanted }), { $days ->
    [0] sur aucun jour
    [1] sur un jour
   *[other] sur { $days } jours
} (il en faut { $dayswanted }).
because-below = { $counted ->
    [wanted] Part d’appuis aux invitations où { $name } voulait la chose
    [latest] Part d’appuis aux dernières invitations où { $name } voulait la chose
    [later] Deux semaines ou plus après la maîtrise, part d’appuis quand { $name } voulait la chose
   *[right] Deux semaines ou plus après la maîtrise, part de ce mot dans les appuis à l’invitation
} : { $share }. Tout cet intervalle, à 90 %, est au-dessous de { $bar }, qu’il faut { $counted ->
    [wanted] pour inviter
   *[other] pour laisser le mot à { $name }
}.
because-later-unknown = On ne sait pas encore si cela dure : { $wanted ->
    [0] aucune invitation
    [1] une invitation
   *[other] { $wanted } invitations
} deux semaines ou plus après la maîtrise (il en faut { $needed }).
because-later = Deux semaines ou plus après la maîtrise : appuyé { $pressed } fois sur { $wanted } quand { $name } voulait la chose{ $presses ->
    [0] { "" }
   *[other] , juste { $right } fois sur { $presses }
}.
because-strain = Signes forts de stress sur plusieurs jours dans des séances avec ce mot.
because-ends-sessions = Ce mot termine la séance : on le montre à ce moment-là, et personne ne l’attend.
because-not-prepared = La récompense ou la réponse du mot n’est pas fixée.
because-contradiction = Les notes se contredisent : { $why }
because-no-recording-checked = Personne n’a vérifié ici un enregistrement de ce mot. Des chiens de famille ont répondu à environ 30 % des signaux appris quand un bouton les disait, et à près de 100 % de vive voix (17 chiens ; Higaki 2025, chiffres d’un texte de presse).
because-recording = { $found ->
    [both] Son enregistrement ({ $seconds }) est très court et plus faible que les autres.
    [short] Son enregistrement ({ $seconds }) est très court.
    [quiet] Son enregistrement ({ $seconds }) est plus faible que les autres.
   *[other] Son enregistrement ({ $seconds }) a été vérifié, ce qui ne dit pas ce qu’un animal distingue.
} Des chiens de famille ont répondu à environ 30 % des signaux appris quand un bouton les disait, et à près de 100 % de vive voix (17 chiens ; Higaki 2025, chiffres d’un texte de presse).
because-taken = Part prise de ce qui a été donné pour ce mot en { $days } jours : { $share } (seuil { $bar }).
because-showings-a-day = Démonstrations en { $days } jours : { $rate } (seuil { $bar } par jour).
because-delay = Délai médian entre l’appui et la chose donnée : { $seconds } (seuil { $bar }).
because-near = Part de ce bouton dans les regards, frôlements et appuis spontanés : { $share }. Sa part dans les démonstrations : { $expected }.
because-comes-more = Appuis spontanés dessus en sept jours : { $now } ; dans les quatre semaines d’avant : { $before }. C’est plus que le hasard n’explique.
because-too-few-hours = Trop peu de séances à des heures différentes.
because-uneasy-hours = De { $from } à { $to } { $name } a participé { $here }, à d’autres heures { $elsewhere }. En comptant retards, départs et signes : { $p } (corrigé pour le choix des heures), sur les { $days } derniers jours.
because-too-few-days = Trop peu de jours pour voir un changement.
because-late-fall = Participation des { $days } derniers jours : { $lately } ; avant : { $before }. En comptant retards, départs, signes, appuis spontanés et prises : { $p } (corrigé pour le choix du jour). Les notes ne montrent pas la santé : si quelque chose te semble bizarre, consulte un vétérinaire.
because-only-word = C’est le seul mot.
because-sounds = { $alike ->
    [yes] Il ressemble beaucoup à « { $nearest } ».
   *[other] Il se distingue assez de « { $nearest } ».
} Part d’autres mots dans les appuis à l’invitation : { $others }.
because-too-few-people = Moins de deux personnes avec cinq réponses chacune.
because-people-delay = { $one } donne après { $first }, { $two } après { $second } (test de la somme des rangs, { $p }).
because-people-give = { $one } donne après { $first } des appuis, { $two } après { $second } ({ $p }).
because-many-presses = Appuis spontanés en { $days } jours : { $rate } (seuil { $bar } par jour).
because-given-share = Appuis après lesquels la chose a été donnée : { $share }.
because-signalled-times = Durées du oui et du non avec signal : Hanley, Iwata & Thompson 2001, dont la dernière étape était 60 s et 240 s. La première est de mémoire, celles entre les deux sont les nôtres.
because-never-checked = { $words ->
    [1] Un mot est en usage et n’a jamais été vérifié.
   *[other] { $words } mots sont en usage et n’ont jamais été vérifiés.
}
because-check-open = { $done } sur { $of } essais de la vérification.
