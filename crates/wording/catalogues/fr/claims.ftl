claims-asking = demander la chose
claims-hearing = connaître le mot parlé
claims-nothing-asking = on ne peut encore rien dire : rien n’a été tiré au sort ; une série d’invitations tirées par le carnet pourrait le montrer
claims-nothing-hearing = on ne peut encore rien dire : aucune vérification n’a commencé ; une vérification par choix de choses pourrait le montrer
claims-chance = ce qui a été tiré jusqu’ici viendrait aussi par hasard ({ $n ->
    [one] { $n } essai tiré au sort
   *[other] { $n } essais tirés au sort
}) ; cela ne parle ni pour ni contre
claims-differs = les appuis suivent ce qui était appelé, plus que le hasard ne le permet ({ $n } appuis dans des séries tirées au sort{ $since ->
    [none] { "" }
   *[other] , depuis le { $since }
}) ; l’habitude, la préférence ou des indices peuvent encore l’expliquer
claims-open-asking = avec des boutons échangés sous des caches, la chose est demandée plus que le hasard ne le permet ({ $n ->
    [one] { $n } essai tiré au sort
   *[other] { $n } essais tirés au sort
}{ $since ->
    [none] { "" }
   *[other] , depuis le { $since }
}) ; quelqu’un connaissait la réponse, des indices peuvent donc encore l’expliquer
claims-open-hearing = la chose du mot est choisie plus que le hasard ne le permet ({ $n ->
    [one] { $n } essai tiré au sort
   *[other] { $n } essais tirés au sort
}{ $since ->
    [none] { "" }
   *[other] , depuis le { $since }
}) ; quelqu’un connaissait la réponse, des indices peuvent donc encore l’expliquer
claims-blind-asking = la demande résiste à une vérification en aveugle : le bon bouton, les boutons échangés sous des caches et personne à côté qui savait ({ $n ->
    [one] { $n } essai tiré au sort
   *[other] { $n } essais tirés au sort
}{ $since ->
    [none] { "" }
   *[other] , depuis le { $since }
})
claims-blind-hearing = la connaissance du mot résiste à une vérification en aveugle : la chose est choisie sans personne à côté qui savait ({ $n ->
    [one] { $n } essai tiré au sort
   *[other] { $n } essais tirés au sort
}{ $since ->
    [none] { "" }
   *[other] , depuis le { $since }
})
claims-lapsed = { $said }. On affirmait davantage jusqu’au { $until }, quand des mots ou des vérifications se sont ajoutés : tout est jugé ensemble, et depuis on demande plus à chacun
claims-animal-nothing = on ne peut encore rien dire de tous les mots ensemble ; une période d’échanges convenus pourrait le montrer
claims-animal-chance = sur tous les mots, ce qui a suivi les échanges viendrait aussi par hasard ou habitude ({ $n } réponses tirées) ; cela ne parle ni pour ni contre
claims-animal-holds = sur tous les mots ensemble, il y a un nouvel appui quand une autre chose est venue que celle demandée ; par préférence, fréquence, habitude de place et heure seules, ce serait improbable ({ $n } réponses tirées{ $since ->
    [none] { "" }
   *[other] , depuis le { $since }
}) ; des indices peuvent encore l’expliquer
claims-test = { $what } : preuve { $now } maintenant, { $most } au plus ; dit à partir de { $bar } (n = { $n })
claims-test-rounds = séries d’invitations tirées au sort
claims-test-open = { $side ->
    [asking] appuyer sous caches
   *[other] choisir des choses
}, vérifications ouvertes ensemble
claims-test-blind = { $side ->
    [asking] appuyer sous caches
   *[other] choisir des choses
}, vérifications en aveugle ensemble
claims-times = { $times } contre 1
claims-times-most = plus de { $times } contre 1
claims-times-none = aucune
claims-rival = { $rival ->
    [cueing] indices : une personne qui connaît la réponse la trahit
    [place] habitude de place : aller à une place, non à un mot
    [frequency] fréquence : certains mots sont simplement plus pressés
    [liking] préférence : certaines choses plaisent simplement plus
    [clock] heure et rafales : ce que les personnes proposent et donnent suit l’heure, et les appuis aussi
   *[other] espoir : les personnes voient ce qu’ils espèrent
}
claims-nothing-to-explain = Rien n’est affirmé, il n’y a donc rien à expliquer.
claims-ruled-out = { $why ->
    [blind] improbable : dans des vérifications en aveugle, personne à côté ne savait la réponse ; reste un indice auquel personne n’a pensé
    [places] improbable : les places étaient tirées au sort ; reste la chance, aussi petite que le disent les chiffres
    [frequencies] improbable : la comparaison garde la fréquence de chaque mot ; reste la chance, aussi petite que le disent les chiffres
    [thing] improbable : mot et chose ont été comparés en croix, la chose étant tirée ; reste un indice
    [drawn] improbable : le carnet a tiré, personne n’a choisi ; reste un moment remis ou laissé de côté
    [next] improbable : l’appui suivant a compté, que personne n’évalue ; reste un appui qui n’a pas été vu
    [two] improbable : deux personnes ont évalué à part et s’accordent ; reste ce que toutes deux espéraient
   *[other] improbable : qui évaluait ne pouvait pas savoir ; reste un signe sur l’enregistrement
}
claims-still-open = ouvert ; { $remedy ->
    [blind] une vérification où la personne près de l’animal ignore la réponse
    [places] une vérification avec des places tirées au sort
    [thing] une période d’échanges convenus, ou une vérification
   *[other] une seconde personne évaluant à part les mêmes relevés
} en dirait plus
