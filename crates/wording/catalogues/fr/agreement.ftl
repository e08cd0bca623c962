agreement-title = Voyons-nous la même chose ?
agreement-intro = Ce que deux personnes notent, chacune seule, dit si les chiffres de ce carnet seraient les mêmes quelle que soit la personne qui note.
agreement-records = Dans le journal : ce que deux personnes ont noté
agreement-no-records = Deux personnes n’ont pas encore noté la même séance ou vérification. Que deux personnes, chacune avec son appareil, notent une séance sans se regarder ; elles seront alors ici.
agreement-pair = { $first } et { $second }, { $animal } : { $kind ->
    [presses] { $n ->
        [one] { $n } appui
       *[other] { $n } appuis
    }
   *[other] { $n ->
        [one] { $n } essai de vérification
       *[other] { $n } essais de vérification
    }
}
agreement-which = Lesquels comparer
agreement-group = { $kind ->
    [presses] Séance
   *[other] Vérification
} du { $when } : { $n }
agreement-compare = Comparer
agreement-compare-these = Comparer seulement ceux-ci
agreement-paired = { $kind ->
    [presses] Les appuis d’une séance sont le même si les deux en ont noté un en { $seconds } ; ce qu’un seul a noté est « { $none } » pour l’autre.
   *[other] Les essais d’une vérification sont comparés par leur numéro.
}
agreement-not-noted = non noté
agreement-paste = D’un film : saisir ou coller des scores
agreement-paste-intro = Deux personnes regardent le même film, chacune seule, et écrivent ce qu’elles voient.
agreement-scores = Scores
agreement-scores-hint = Une ligne par chose évaluée, une colonne par personne, séparées par des virgules : press,brush. Laisse une colonne vide si quelqu’un n’a pas évalué.
agreement-scores-wrong = Scores : { $what }.
agreement-scale = Ce que sont les scores
agreement-scale-names = des noms, comme appui et frôlement
agreement-scale-steps = des nombres dont seul l’ordre compte, comme 1 calme à 3 tendu
agreement-scale-numbers = des nombres dont les écarts comptent, comme des secondes
agreement-headed = La première ligne porte les noms
agreement-not-stored = Rien de ce qui est saisi ici n’est enregistré. { $link }.
agreement-how-computed = Comment c’est calculé
agreement-what-scores-say = Ce que disent les scores
agreement-sentence = { $alike ->
    [none] { "" }
   *[other] Évalué de même : { $alike }.{ " " }
}{ $beyond ->
    [well] Au-delà du hasard, l’accord est bon.
    [little] Au-delà du hasard, c’est trop peu pour s’y fier : fixez d’abord ce qui compte comme quoi.
    [some] L’accord dépasse le hasard ; à quel point n’est pas encore assez bien connu.
    [chance] Cela pourrait être le seul hasard.
   *[other] À quel point cela dépasse le hasard ne peut pas encore être jugé.
}
agreement-sentence-nothing = Rien n’a été évalué par deux personnes, on ne peut donc rien dire de l’accord.
agreement-scored-alike = Évalué de même
agreement-kappa = Kappa de Cohen
agreement-alpha = Alpha de Krippendorff
agreement-shared = Évalué par au moins deux personnes sur { $people }
agreement-differing = Le plus souvent vu autrement :
agreement-differs = { $one } « { $first } », { $two } « { $second } » : { $n ->
    [1] une fois
   *[other] { $n } fois
}
agreement-would-change = Ce qui le changerait : plus de choses évaluées par les deux sans connaître les scores de l’autre ; et des mots plus clairs sur ce qui compte comme quoi, essayés sur un nouveau film.
agreement-no-interval = { $value } (sans intervalle, n = { $n })
agreement-none = aucun (n = { $n })
agreement-lacking = { $figure } ; { $why }
agreement-few = sous { $least } scores, son intervalle est trop court
agreement-wrong-empty = pas de scores : écris une ligne par chose, avec une colonne par personne, comme « press,brush »
agreement-wrong-ragged = la ligne { $line } a { $got ->
    [one] { $got } colonne
   *[other] { $got } colonnes
} et la ligne { $first } en a { $wanted } ; laisse une colonne vide si quelqu’un n’a pas évalué
agreement-wrong-people = { $n ->
    [one] { $n } colonne
   *[other] { $n } colonnes
} ; on compare de deux à vingt personnes, une colonne chacune, séparées par virgules, points-virgules ou tabulations
agreement-wrong-long = trop de lignes
agreement-wrong-number = ligne { $line }, { $person } : « { $got } » n’est pas un nombre ; il faut des nombres sauf si les scores sont des noms
agreement-wrong-names = trop de noms différents ; sont-ce des nombres ?
agreement-person = personne { $number }
