patterns-of-animal = Motifs : { $name }
patterns-no-animal = Il n’y a pas un tel animal.
patterns-intro = Ce qui se voit dans les appuis et choix de { $name }, et ce que cela ne montre pas. { $link } dit ce qui s’est passé quand. Les { $days } derniers jours sont regardés.
patterns-days = Jours
patterns-pace = Les appuis augmentent-ils ou baissent-ils ?
patterns-no-press = Pas encore d’appui spontané.
patterns-factor = Facteur par semaine
patterns-factor-told = Chaque point est le facteur de multiplication des appuis par semaine, avec son intervalle à 90 % ; le trait est l’absence de changement.
patterns-factor-interval = intervalle à 90 %
patterns-times-a-week = fois par semaine
patterns-pace-does-not-show = Un facteur de 1 est l’absence de changement. Un nombre qui croît ne montre pas qu’un mot est compris, ni un nombre qui baisse qu’il est oublié : l’envie, la rapidité des réponses et la durée d’accès au tableau le changent aussi. Avec plusieurs mots, un intervalle excluant 1 ne surprend pas.
patterns-by-week = Appuis spontanés par semaine
patterns-by-week-told = { $n ->
    [one] { $n } appui spontané
   *[other] { $n } appuis spontanés
} en { $days } jours, par semaine jusqu’à aujourd’hui ; la première peut être incomplète.
patterns-week-ago = { $ago ->
    [0] les sept derniers jours
   *[other] { $ago ->
        [one] { $ago } semaine avant
       *[other] { $ago } semaines avant
    }
}
patterns-weeks-axis = semaines avant aujourd’hui
patterns-presses = appuis
patterns-all-words = tous les mots
patterns-paced = Les appuis de { $name } sur { $word ->
    [none] tous les mots
   *[other] « { $word } »
} ont été { $turn ->
    [times] multipliés
   *[other] divisés
} par { $by } par semaine{ $low ->
    [none] { " " }(pas encore d’intervalle
   *[other] { " " }(facteur { $factor } ; intervalle à 90 % de { $low } à { $high }
} ; { $weeks ->
    [one] { $weeks } semaine
   *[other] { $weeks } semaines
}, { $n ->
    [one] { $n } appui
   *[other] { $n } appuis
}).
patterns-paced-few = Appuis de { $name } sur { $word ->
    [none] tous les mots
   *[other] « { $word } »
} : trop peu pour dire comment ils changent ({ $days ->
    [one] { $days } jour
   *[other] { $days } jours
}, { $n ->
    [one] { $n } appui
   *[other] { $n } appuis
} ; il faut { $least_days } jours et { $least } appuis).
patterns-lines = Avant et après un changement
patterns-no-lines = Pas encore de changement avec au moins cinq jours de chaque côté : boutons déplacés, mot ou règle venus.
patterns-lines-do-not-show = Cela ne montre pas que le changement en est la cause : d’autres choses ont changé ces jours-là, les appuis montaient ou baissaient déjà, et l’un de plusieurs changements paraît grand par hasard. Les jours d’un animal sont liés, l’intervalle est donc plutôt trop court. Un essai du changement, aux jours tirés au sort, peut le dire.
patterns-trials = Essais d’un changement
patterns-change-moved = des boutons ont été déplacés
patterns-change-word = « { $word } » est venu
patterns-change-rule = une règle de la maison est venue
patterns-line = Quand { $what } ({ $day }) : { $name } a appuyé { $before } avant et { $after } après. Un jour d’après avait plus d’appuis qu’un jour d’avant dans { $share } des paires (intervalle à 90 % de { $low } à { $high }, { $n_before } et { $n_after } jours, { $p } ; 50 % est l’absence de différence).
patterns-line-title = Appuis spontanés par jour autour du { $day }
patterns-line-told = { $what } : avant { $before }, après { $after }.
patterns-before = avant
patterns-after = après
patterns-days-from-change = jours depuis le changement
patterns-presses-a-day = appuis par jour
patterns-order = Un mot après l’autre
patterns-order-no-board = Sans tableau dessiné, un dérapage vers le bouton voisin ne se distingue pas d’un second mot.
patterns-since-why = Depuis que les boutons sont là où ils sont : { $why }.
patterns-order-never = { $name } n’a jamais appuyé sur deux boutons en dix secondes ({ $n ->
    [one] { $n } appui
   *[other] { $n } appuis
}).
patterns-order-none = Aucun mot n’en suit un autre plus que les habitudes de { $name } ne l’expliquent ({ $n ->
    [one] { $n } paire
   *[other] { $n } paires
} d’appuis en dix secondes).
patterns-order-found = { $pairs } ({ $n } paires d’appuis en dix secondes).
patterns-pair = « { $first } » puis « { $second } » { $times } fois, { $expected } attendues par habitude ({ $p } ajusté{ $beside ->
    [yes] , côte à côte : peut être un dérapage
   *[other] { "" }
})
patterns-draw-board = Dessiner le tableau
patterns-order-since = { $n ->
    [one] { $n } appui spontané
   *[other] { $n } appuis spontanés
} { $words ->
    [1] d’un mot
   *[other] de { $words } mots
} depuis le { $day }, quand les boutons ont pris leur place.
patterns-pairs-caption = Paires en dix secondes, cinq fois ou plus, les moins attendues d’abord
patterns-first = D’abord
patterns-next = Ensuite
patterns-times = Fois
patterns-expected = Attendu par habitude
patterns-adjusted-p = p ajusté
patterns-beside = Côte à côte
patterns-beside-told = { $beside ->
    [yes] oui : peut être un dérapage
   *[other] non
}
patterns-order-does-not-show = Comparé aux habitudes : combien chaque mot est pressé d’affilée, répété, pressé à côté du précédent et suivi d’une pause. Une paire qui se détache ne montre pas que les deux mots veulent dire quelque chose ensemble : une routine, une réponse entre deux ou une envie après l’autre donneraient pareil. « Aucun mot n’en suit un autre » ne montre pas non plus qu’aucun ne le fait : d’animaux simulés avec une vraie paire, en séries courtes, trois sur quatre n’ont pas été vus. Chaque appui spontané compte, même pris pour un dérapage.
patterns-slips = Appuis qui semblent des dérapages
patterns-slips-no-board = Sans tableau dessiné, nul ne sait quels boutons sont côte à côte.
patterns-slips-none = Aucun appui de { $name } n’est venu en { $seconds } après un autre contact, donc aucun ne semble un dérapage ({ $n ->
    [one] { $n } appui
   *[other] { $n } appuis
}).
patterns-slips-found = Des appuis de { $name }, expliqués par un dérapage du bouton voisin ou un frôlement : { $share }. En { $seconds } après un autre contact : { $quick }.
patterns-by-button = Expliqué par dérapages, par bouton
patterns-by-button-told = Chaque point est la part des appuis d’un bouton expliquée par dérapages, avec son intervalle à 95 %.
patterns-share-of-presses = part de ses appuis
patterns-judged = Des appuis jugés, pris pour un dérapage par quelqu’un sur place : { $share }.
patterns-slips-do-not-show = D’animaux simulés qui ne dérapaient jamais, un sur dix s’est vu attribuer des dérapages. Et cela ne dit pas quels appuis laisser sans réponse : un animal qui veut dire deux mots voisins ressemble à un qui dérape. Lis une grande part comme « regarde la planche » : éloigne ces deux-là.
patterns-hours = Préférences selon l’heure
patterns-hours-cannot = On ne peut pas encore dire si les préférences de { $name } dépendent de l’heure : { $why } ({ $n } choix en { $sittings ->
    [one] { $sittings } séance
   *[other] { $sittings } séances
} des { $days } derniers jours).
patterns-hours-matter = Les préférences de { $name } dépendent de l’heure ({ $p }, { $n } choix en { $sittings ->
    [one] { $sittings } séance
   *[other] { $sittings } séances
}). Propose d’abord ce qui plaît le plus alors : { $best }.
patterns-hours-no-sign = Aucun signe que les préférences de { $name } dépendent de l’heure ({ $p }, { $n } choix en { $sittings ->
    [one] { $sittings } séance
   *[other] { $sittings } séances
}) ; cela ne montre pas qu’elles n’en dépendent pas.
patterns-best-at = { $what } à { $hour }
patterns-at-hour = Probabilité d’être pris plutôt qu’une chose moyennement aimée à cette heure :
patterns-named-figure = { $what } : { $figure }
patterns-hours-do-not-show = Cela ne dit pas pourquoi : repas, promenades et présences suivent aussi l’heure. On cherche une montée et une descente par jour, aucune autre forme. À l’heure du repas, aimer la nourriture peut être la faim.
patterns-how-computed = Comment ces chiffres sont calculés
