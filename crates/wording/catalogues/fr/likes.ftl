likes-test-title = { $format ->
    [paired] Test de préférences : deux par deux
    [multiple] Test de préférences : tout en rang
    [single] Test de préférences : un par un
   *[free_access] Test de préférences : tout à la fois, chronométré
}
likes-stop-here = Arrête ici : de forts signes de stress ont été notés. Laisse de l’espace et n’attire pas. Le test peut continuer un autre jour.
likes-trial = Essai { $number } sur { $of } · tour { $round } sur { $rounds }
likes-done = Tous les essais sont faits. Merci, { $name }.
likes-see-ranking = Voir le classement
likes-noted-already = C’était déjà noté ; rien n’a changé. Utilise Annuler si la dernière réponse est fausse.
likes-stop-for-now = Arrêter pour l’instant
likes-goes-on-later = – ce qui est noté reste ; le test peut continuer plus tard.
likes-last-chose = Dernier : { $thing }
likes-last-none = Dernier : aucun choix
likes-last-away = Dernier : est parti
likes-last-watched = Dernier : observé { $seconds } s
likes-undo = Annuler
likes-undo-this = Annuler : { $what }
likes-away-is-an-answer = { $name } s’en est allé, et c’est une réponse. Continue quand { $name } revient sans appel, ou un autre jour.
likes-stand-in = « { $thing } » ne peut pas être montré : propose { $stand_in } à la place. Si { $name } le choisit, { $kind ->
    [touch] donne-le aussitôt
    [training] faites-le aussitôt
   *[other] allez-y aussitôt
}.
likes-no-stand-in = « { $thing } » ne peut pas être montré à côté d’autre chose. Propose ce qui le représente chez vous, toujours la même chose, comme { $kind ->
    [touch] la brosse ou la main ouverte
    [training] ce qui vous sert pour cela
   *[other] la laisse
} ; ou chronomètre librement.
likes-name-stand-in = Le nommer sur la fiche
likes-time-freely = Chronométrer librement
likes-needs-stand-in = ne peut pas être montré : nomme sur sa fiche ce qui le représente, ou prends le chronomètre
likes-to-card = Ouvrir sa fiche
likes-stands = Ce qui la représente
likes-stands-wrong = { $things } ne peut pas être présenté. Nomme sur chaque fiche ce qui représente la chose, décoche-la ou coche ci-dessous
likes-stands-tick = Je propose quelque chose qui le représente toujours, le même à chaque fois
likes-shown-as = montré par : { $stand_in }
likes-pieces = { $pieces } × « { $thing } »
likes-food-left = Récompenses à manger restantes aujourd’hui : { $kcal } kcal ({ $pieces }). Un morceau pris est compté.
likes-food-short = Il ne reste pas de quoi donner un morceau de tout. Arrête pour aujourd’hui, ou coupe plus petit et modifie la fiche.
likes-food-unknown = On ne sait pas combien { $name } peut manger aujourd’hui. Un morceau pris est compté quand même.
likes-in-front = devant { $name }
likes-far-left = 1, tout à gauche pour { $name }
likes-far-right = { $place }, tout à droite pour { $name }
likes-lay-one = Pose ceci ; touche-le si { $name } vient
likes-lay = Touche ce que { $name } prend
likes-whose-left = Pose-les comme dessiné, comme { $name } les voit. Si tu fais face à { $name }, sa gauche est à ta droite.
likes-lay-all = Pose-les tous, dans cet ordre depuis la gauche de { $name }
likes-did-not-come = N’est pas venu
likes-chose-none = Aucun choix
likes-walked-away = Est parti
likes-how-to-hold = Place-toi derrière le milieu, { $held ->
    [all] tiens les deux pareil, n’en regarde aucun
   *[some] tiens pareil chaque chose, ou ce qui la représente, et n’en regarde aucune
}. Laisse profiter de ce qui est pris ; range le reste.
likes-two-at-once = Si deux sont pris à la fois, ne note rien et propose-les à nouveau.
likes-half-a-minute = Pas de choix en une demi-minute environ : « aucun ».
likes-move-freely = Laisse { $name } bouger librement ; cinq minutes sont habituelles. Chronomètre ce qui occupe { $name }, une chose à la fois.
likes-begin = Commencer
likes-times = Durées en secondes
likes-seconds-there = Secondes de présence des choses
likes-seconds-busy = { $thing } : secondes d’occupation
likes-pieces-eaten = { $thing } : morceaux mangés
likes-note-times = Noter ces durées
likes-away-at-once = Est parti aussitôt
likes-format = { $format ->
    [paired] Deux par deux
    [multiple] Tout en rang, sans remettre
    [single] Un par un
   *[free_access] Tout à la fois, avec un chronomètre
}
likes-about = { $format ->
    [paired] Chaque paire une fois par tour, côtés équilibrés. Le plus sûr et le plus long : 6 choses font 15 essais par tour. (Fisher et al. 1992)
    [multiple] Des choses en rang ; ce qui est pris n’est pas remis. Rapide : 6 choses font 6 essais par tour. (DeLeon & Iwata 1996)
    [single] { $name } y vient-il seulement ? Pour un animal qui ne choisit pas entre des choses. (Pace et al. 1985)
   *[free_access] Tout est là cinq minutes ; tu chronomètres ce qui occupe { $name }. Bien pour le jeu et les lieux. (Roane et al. 1998)
}
likes-new-title = Un test de préférences
likes-not-today = Pas aujourd’hui : de forts signes de stress ont été notés. Laisse de l’espace à { $name } et teste un jour calme.
likes-back = Retour aux préférences
likes-nothing-listed = Rien de ce que { $name } pourrait vouloir n’est encore noté.
likes-how-to-offer = Comment proposer
likes-compare = Quoi comparer
likes-compare-hint = jusqu’à 12 ; cinq à huit sont habituels
likes-rounds = Tours
likes-rounds-hint = chaque paire (ou rang) une fois par tour ; un ou deux par jour suffisent
likes-where-to-test = Teste à l’endroit et à l’heure où les mots serviront ; un animal repu aime moins la nourriture. { $name } peut partir à tout moment.
likes-format-missing = manque ; choisis-en une
likes-how-many = doivent être { $least } à { $most } choses, pas { $ticked } ; coches-en plus ou moins
likes-rounds-missing = manquent ; 1 est un bon début
likes-page-title = Ce que { $name } aime
likes-no-test-today = Pas de test aujourd’hui : de forts signes de stress ont été notés. Laisse de l’espace ; un jour calme viendra.
likes-nothing-tested = Rien n’a encore été testé. Un test montre ce que { $name } choisit ; les premiers mots devraient être ses choix les plus fréquents.
likes-from-trials = { $trials ->
    [1] D’un essai
   *[other] De { $trials } essais
}{ $choosing ->
    [all] { "" }
   *[other] , dont { $choosing } de choix
} ; sans choix : { $none }. Ne pas choisir est aussi une réponse, et elle reste.
likes-test-again = Tester à nouveau :
likes-new-test = Nouveau test
likes-ranking = Classement
likes-sheet = Une feuille à imprimer
likes-disagree = Les façons de tester peuvent diverger : des chiens ont classé la nourriture autrement par paires et en rang ; seul le dernier concordait (Cameron, Siddall & Bizo 2021). Les préférences changent avec l’heure et le jour ; les essais anciens comptent moins.
likes-known-how = Sûr à quel point : la probabilité que rien d’autre ne soit nettement mieux. 90 % suffisent ; arrête dans tous les cas à 60 essais de choix, pour { $name }.
likes-next = Quoi proposer ensuite
likes-next-pair = { $left } à gauche de { $name }, { $right } à droite.
likes-offer-pair = Proposer cette paire maintenant
likes-tests-so-far = Tests jusqu’ici
likes-none-yet = Aucun encore.
likes-test-line = { $trials ->
    [1] { $things } choses · un essai
   *[other] { $things } choses · { $trials } essais
}
likes-begun-by = commencé par { $name }
likes-go-on = Continuer
likes-see = Voir
likes-this-test = Ce test
likes-this-n = { $trials ->
    [1] un essai
   *[other] { $trials } essais
}, dont sans choix : { $none }
likes-thing = Chose
likes-offered = proposé
likes-in-seconds = secondes
likes-taken = pris
likes-sides = Côtés : les chiffres
likes-side = Pris à gauche de { $name } : { $share }, { $p }.
likes-over-middling = Probabilité de le choisir plutôt qu’une chose moyenne
likes-chance = probabilité
likes-scores = Scores : { $format }
likes-score-of = { $format ->
    [single] part des offres suivies d’une approche
    [free_access] part du temps passée avec
   *[other] part des offres où il fut pris
}
likes-no-such-test = Ce carnet ne connaît pas ce test de cet animal.
likes-not-offered = n’est pas une chose à proposer à { $name }
likes-same-twice = doit être autre chose qu’à gauche
likes-answer-wrong = doit être une des choses de cet essai, aucune ou parti
likes-seconds-missing = manque ; donne les secondes de présence des choses
likes-more-than-none = doit dépasser 0
likes-longer-than-there = dépassent le temps de présence des choses
