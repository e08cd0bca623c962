likes-test-title = { $format ->
    [paired] Test de goûts : deux par deux
    [multiple] Test de goûts : tout en rang
    [single] Test de goûts : un par un
   *[free_access] Test de goûts : tout à la fois, chronométré
}
likes-stop-here = Arrête ici : de forts signes de stress ont été notés. Laisse de l’espace et n’attire pas. Le test peut continuer un autre jour.
likes-trial = Essai { $number } sur { $of } · tour { $round } sur { $rounds }
likes-done = Tous les essais sont faits. Merci, { $name }.
likes-see-ranking = Voir le classement
likes-noted-already = C’était déjà noté ; rien n’a changé. Utilise Annuler si la dernière réponse est fausse.
likes-stop-for-now = Arrêter pour l’instant
likes-goes-on-later = – ce qui est noté reste ; le test peut continuer plus tard.
likes-last-chose = Dernier : { $thing }
likes-last-none = Dernier : aucun choix
likes-last-away = Dernier : est parti
likes-last-watched = Dernier : observé { $seconds } s
likes-undo = Annuler
likes-away-is-an-answer = { $name } s’en est allé, et c’est une réponse. Continue quand { $name } revient sans appel, ou un autre jour.
likes-stand-in = { $thing } ne peut pas être montré : propose { $stand_in } à la place. Si { $name } le choisit, allez-y aussitôt.
likes-no-stand-in = { $thing } ne peut pas être montré à côté d’autre chose. Propose ce qui le représente chez vous, toujours la même chose, comme la laisse ; ou chronomètre librement.
likes-name-stand-in = Le nommer sur la fiche
likes-time-freely = Chronométrer librement
likes-needs-stand-in = ne peut pas être montré : nomme sur sa fiche ce qui le représente, ou prends le chronomètre
likes-shown-as = montré par : { $stand_in }
likes-pieces = { $pieces } × { $thing }
likes-food-left = Récompenses à manger restantes aujourd’hui : { $kcal } kcal ({ $pieces }). Un morceau pris est compté.
likes-food-short = Il ne reste pas de quoi donner un morceau de tout. Arrête pour aujourd’hui, ou coupe plus petit et modifie la fiche.
likes-food-unknown = On ne sait pas combien { $name } peut manger aujourd’hui. Un morceau pris est compté quand même.
likes-in-front = devant { $name }
likes-to-the-left = à gauche de { $name }
likes-to-the-right = à droite de { $name }
likes-far-left = 1, tout à gauche de { $name }
likes-far-right = { $place }, tout à droite de { $name }
likes-lay-one = Pose ceci ; touche-le si { $name } vient
likes-lay = Pose-les, comme { $name } les voit ; touche ce que { $name } prend
likes-lay-all = Pose-les tous, dans cet ordre depuis la gauche de { $name }
likes-did-not-come = N’est pas venu
likes-chose-none = Aucun choix
likes-walked-away = Est parti
likes-how-to-hold = Place-toi derrière le milieu, tiens les deux pareil, n’en regarde aucun. Laisse profiter de ce qui est pris ; range le reste.
likes-two-at-once = Si deux sont pris à la fois, ne note rien et propose-les à nouveau.
likes-half-a-minute = Pas de choix en une demi-minute environ : « aucun ».
likes-move-freely = Laisse { $name } bouger librement ; cinq minutes sont habituelles. Chronomètre ce qui occupe { $name }, une chose à la fois.
likes-begin = Commencer
likes-times = Durées en secondes
likes-seconds-there = Secondes de présence des choses
likes-seconds-busy = { $thing } : secondes d’occupation
likes-pieces-eaten = { $thing } : morceaux mangés
likes-note-times = Noter ces durées
likes-away-at-once = Est parti aussitôt
