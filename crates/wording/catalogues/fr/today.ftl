today-title = Aujourd’hui avec { $name }
today-now = Maintenant
today-start = Commencer
today-why = Pourquoi ? ({ $sure })
today-why-plan = Pourquoi autant ?
today-pause-why = { $a_day ->
    [1] Ici, on fait d’habitude une séance par jour
   *[other] Ici, on fait d’habitude { $a_day } séances par jour
}, ou ce qui est courant s’il y en a eu peu ; deux heures de pause entre elles (pratique courante, sans source).
today-care = Attention :
today-take-care = { $care } { $what }
today-change-our-mind = Nous changerions d’avis si :
today-records = les notes
today-also = Ce qui compte aussi :
today-alike = « { $word } » ressemble beaucoup à { $others }. Un autre mot pour l’un d’eux se distingue mieux.
today-alike-first = « { $word } » ressemble beaucoup à { $others } et n’a pas encore été montré : choisis d’abord un autre mot.
today-best-time = Meilleure heure jusqu’ici : de { $from } à { $to }. Participation alors : { $joined }.
today-shown-today = « { $word } » { $times ->
    [0] n’a pas encore été montré aujourd’hui.
    [one] a été montré une fois aujourd’hui.
   *[other] a été montré { $times } fois aujourd’hui.
}
today-words = Mots
today-more-words = { $count ->
    [1] Encore un mot : { $words }
   *[other] Encore { $count } mots : { $words }
}
today-many-more-words = Encore { $count } mots
today-trend = Appuis spontanés ces huit dernières semaines : { $counts }
today-evidence = Ce que disent les appuis sur « { $word } »
today-lately = Ces sept derniers jours
today-later = Plus tard
today-joining = Séances suivies en quatre semaines
today-pieces = { $count } × « { $name } »
today-food-left-pieces = Nourriture restante aujourd’hui : { $pieces }
today-food-left = Récompenses en nourriture restantes aujourd’hui : { $left } sur { $of }.
today-food-over = Plus de récompense en nourriture aujourd’hui : { $over } au-dessus de { $of }
today-feeds = { $count ->
    [1] Donné une fois jusqu’ici.
   *[other] Donné { $count } fois jusqu’ici.
}
today-given = Donné jusqu’ici : { $kcal }.
today-energy-unknown = { $name } : l’énergie d’un morceau n’est pas connue.
today-how-computed = Comment c’est calculé
today-whole-day = La journée entière : { $kcal }, { $basis }.
today-individuals = Individus de ce poids : environ { $low } à { $high }.
today-do-rewards = Ajouter ce qui peut plaire
today-do-likes = Aux tests de préférences
today-do-words = Choisir des mots
today-do-allowance = Fixer la nourriture
today-do-card = Ouvrir la fiche
today-do-heard = Ce qui a été entendu
today-do-rules = Règles de la maison
today-do-days = Jours et heures
today-do-places = Où sont les boutons
today-do-board = Au tableau
today-do-stage = Changer l’étape
today-do-checks = Aux vérifications
today-session = { $minutes ->
    [1] Une minute au plus. Montre :
   *[other] { $minutes } minutes au plus. Montre :
}
today-planned = { $planned }. { $hint }
today-hint-for = Pour { $words } : { $hint }
today-rests-until = Pas de séance jusqu’au { $until }.
today-ask-keeper = Il reste quelque chose à préparer pour { $name }. Demande à qui tient le foyer que faire aujourd’hui.
today-ask-card = Sa fiche revient à qui tient le foyer
today-ask-food = Combien { $name } peut manger par jour n’est pas décidé ici. Demande à qui tient le foyer avant de donner quoi que ce soit.
today-answer-only = Réponds aux appuis de { $name }.
today-without-agreed = Sans ce qui a été convenu : { $step }. { $why }
