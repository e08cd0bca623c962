rehearse-title = Répéter
rehearse-intro = Exerce-toi avec un animal à qui rien ne peut faire de mal, avant l’arrivée des boutons ou quand tu veux. Rien de cela n’entre dans le carnet.
rehearse-simulation = Une simulation : les vrais animaux sont différents.
rehearse-assumes = Ce qu’elle suppose
rehearse-name = { $who ->
    [eager] Zip
    [wary] Moth
    [old] Bramble
    [quick] Pico
   *[guards] Rusk
}
rehearse-character = { $who ->
    [eager] Zip, un jeune chien : vient tout de suite, se fatigue tard
    [wary] Moth, un chat : vient quand on ne lui demande rien
    [old] Bramble, un vieux chien : chaque pas prend son temps
    [quick] Pico, un perroquet : apprend vite, appuie aussi par curiosité
   *[guards] Rusk, un chien : n’aime pas qu’on le dérange quand il mange
}
rehearse-with = Avec qui
rehearse-exercise = { $which ->
    [likes] Qu’est-ce qui plaît ?
    [showing] Appuyer, dire, donner
    [leaving] Laisser partir
    [inviting] Cinq invitations
    [evening] Une soirée d’appuis
   *[free] Exercice libre
}
rehearse-short = { $which ->
    [likes] Deux choses tendues à la fois : ce qui est choisi, et avec quelle certitude.
    [showing] Deux minutes pour montrer deux ou trois mots.
    [leaving] Quelqu’un veut partir, et le peut.
    [inviting] Chacune avec son attente entière de cinq secondes.
    [evening] Trente appuis, en accéléré : chacun reçoit une réponse juste, y compris « pas maintenant ».
   *[free] Cinq minutes de ce que tu veux.
}
rehearse-how = { $which ->
    [likes] Touche « En tendre deux » : tu tiens une chose de chaque côté. Puis ne bouge plus jusqu’à ce que { $name } ait choisi, ou rien choisi, et ait fini. Douze paires en disent le plus ; moins en disent moins.
    [showing] Touche un bouton : tu appuies dessus et dis son mot. Touche-le encore pour donner la chose. Donne aussitôt, partage les appuis entre les mots, et laisse le temps de manger et de jouer.
    [leaving] Montre des mots comme tu veux. Quand { $name } s’en va, laisse faire : pas d’appel, rien en travers. Puis termine.
    [inviting] Touche « Proposer » et un bouton : tu tiens la chose en vue. Puis ne fais rien pendant cinq secondes. Quoi qu’il en vienne, appuie, dis et donne.
    [evening] { $name } appuie. Réponds à chaque appui : donne, dis « pas maintenant » ou donne autre chose. Les friandises s’épuisent.
   *[free] Tout ce qu’a le tableau, et ce qui tente en plus : appeler, se mettre en travers, le redire.
}
rehearse-choose = Répéter
rehearse-lessons = Leçons pour cela
rehearse-start = Commencer
rehearse-see = Voir comment c’était
rehearse-all = Tous les exercices
rehearse-no-script = Pour répéter, il faut des scripts. Les leçons s’en passent.
rehearse-room = La pièce vue d’en haut : en haut le tableau et toi, en bas à droite un lit, en bas à gauche la porte ouverte.
rehearse-happens = Ce qui se passe
rehearse-words = Boutons du tableau
rehearse-acts = Ce que tu peux faire
rehearse-keys-words = les boutons, dans l’ordre
rehearse-word = { $thing ->
    [treat] Friandise
    [ball] Balle
    [out] Dehors
   *[company] Compagnie
}
rehearse-act = { $does ->
    [two] En tendre deux
    [offer] Proposer
    [again] Le redire
    [not-now] Pas maintenant
    [instead] Autre chose
    [call] Appeler
    [block] Se mettre en travers
    [back] S’écarter
   *[end] Terminer
}
rehearse-you = { $does ->
    [two] Tu tends deux choses.
    [show] Tu appuies sur « { $word } » et tu le dis.
    [give] Tu donnes : { $word }.
    [offer] Tu tiens en vue : { $word }. Attends.
    [again] Tu le redis.
    [not-now] Tu dis « pas maintenant ».
    [instead] Tu dis « pas maintenant » et donnes autre chose : { $word }.
    [call] Tu appelles { $name }.
    [block] Tu te mets en travers.
    [back] Tu t’écartes.
   *[end] Tu termines.
}
rehearse-seen = { $what ->
    [chose] { $name } choisit : { $word }.
    [chose-none] { $name } ne choisit aucune des deux.
    [looks-up] { $name } lève les yeux.
    [comes] { $name } s’approche.
    [joined] { $name } est au tableau.
    [looks] { $name } regarde « { $word } ».
    [brushed] { $name } frôle « { $word } » : pas de son.
    [pressed] { $name } appuie sur « { $word } ».
    [took] { $name } prend : { $word }.
    [finished] { $name } a fini.
    [ignored] { $name } ne prend pas.
    [wanders] { $name } passe à autre chose.
    [leaves] { $name } s’en va.
    [gone] { $name } n’est plus là.
    [barred] { $name } ne peut pas passer.
    [eases] { $name } se détend de nouveau.
    [wait-over] Cinq secondes ont passé.
   *[unanswered] « { $word } » est resté sans réponse.
}
rehearse-sign = { $level ->
    [strong] Signe fort de { $name } : { $sign }.
   *[mild] Signe léger de { $name } : { $sign }.
}
rehearse-held = À gauche : { $left }. À droite : { $right }.
rehearse-chosen = Choisi, sur les fois tendu : { $word }
rehearse-leans-away = se penche loin de ce qui est proposé
rehearse-over = { $why ->
    [time] Le temps est écoulé.
    [done] C’était tout.
   *[ended] C’est fini.
}
rehearse-hand-on = Transmettre
rehearse-hand-on-what = Cette adresse mène au même exercice avec le même animal, et à ses leçons. Elle ne dit rien de ton foyer.
rehearse-copy = Copier l’adresse
rehearse-copied = Copiée
rehearse-send = Envoyer
rehearse-went = Comment c’était
rehearse-one-thing = Une chose pour la prochaine fois
rehearse-change = { $change ->
    [let-choose] Ne bouge plus jusqu’à ce que { $name } choisisse ou se détourne. Pas d’autre mot, pas d’autre paire.
    [more-pairs] Tends plus de paires : chaque chose au moins cinq fois.
    [step-away] À un signe fort, écarte-toi tout de suite ou termine. Tout le reste peut attendre.
    [let-go] Quand { $name } s’en va, laisse faire : pas d’appel, rien en travers, rien à montrer.
    [let-eat] Laisse { $name } manger en paix. On n’appuie ni ne montre rien avant la fin.
    [pause] À un signe léger, fais une pause de cinq secondes et laisse de la place.
    [wait] Attends les cinq secondes entières, sans un mot ni un geste. L’aide vient après.
    [do-not-push] Ni appel, ni passage barré, ni redite : { $name } vient librement ou pas du tout.
    [answer] Réponds à chaque appui, aussi par « pas maintenant ».
    [sooner] Donne plus tôt. Tiens la chose en main avant d’appuyer.
    [when-there] Montre quand { $name } est au tableau, et des choses voulues à ce moment.
    [slower] Laisse plus de temps entre les appuis.
    [instead] De temps en temps, donne autre chose quand c’est « pas maintenant » pour « { $word } ».
    [even] Partage les appuis : montre « { $least } » autant que « { $word } ».
    [oftener] Montre plus : peu de mots, encore et encore.
   *[carry-on] Continue ainsi.
}
rehearse-because = { $change ->
    [let-choose] Choix laissés en paix : { $figure }
    [more-pairs] Paires : { $figure }
    [step-away] Signes forts respectés : { $figure }
    [let-go] Départs respectés : { $figure }
    [let-eat] Friandises mangées en paix : { $figure }
    [pause] Signes légers respectés : { $figure }
    [wait] Attentes tenues : { $figure }
    [do-not-push] Fois où tu as appelé, barré le passage ou redit : { $figure }
    [answer] Appuis avec réponse : { $figure }
    [sooner] De l’appui à la chose : { $figure }. Vise 2 s au plus.
    [when-there] Pris, de ce que tu as montré : { $figure }
    [slower] Montrer : { $figure }
    [instead] Appuis sur « { $word } » avec « pas maintenant » pour réponse : { $figure }
    [even] Montré : { $figure }
    [oftener] Montré : { $figure }
   *[carry-on] Rien ici n’a gêné l’apprentissage.
}
rehearse-would-change = Ce serait autre chose si la prochaine répétition montre un autre tableau : ce sont peu de relevés.
rehearse-care-strong = Dans la vie, un signe fort met fin à la séance. Garde tes distances et consulte un vétérinaire ou un professionnel qualifié du comportement avant de reprendre.
rehearse-care-guards = Dans la vie, qui garde sa nourriture peut mordre : ne prends rien dans la gueule ou la gamelle, éloigne les enfants et consulte un professionnel qualifié du comportement.
rehearse-measured = Comment tu as enseigné
rehearse-measured-what = Les chiffres de l’usage réel, pour cette seule répétition.
rehearse-row = { $which ->
    [held] Choix laissés en paix
    [delay] De ton appui à la chose
    [answer-delay] De l’appui de { $name } à la chose
    [pace] Montrer
    [balance] Entre les mots
    [taken] Pris, de ce que tu as montré
    [waits] Attentes tenues
    [answered] Appuis avec réponse
    [alternatives] Autre chose donnée, sur les « pas maintenant »
    [leaving] Départs respectés
    [mild] Signes légers respectés
    [strong] Signes forts respectés
    [eaten] Friandises mangées en paix
   *[pushes] Appelé, barré le passage ou redit
}
rehearse-times = { $times ->
    [1] une fois
    [one] { $times } fois
   *[other] { $times } fois
}
rehearse-k-of-n = { $k } sur { $n }
rehearse-count = { $word } { $times }
rehearse-truth = Ce qui était vrai
rehearse-truth-what = Dans la vie, personne ne peut le voir. Ici, la simulation dit avec quelle probabilité { $name } appuie sur le bouton d’un mot quand sa chose est voulue.
rehearse-of-word = Mot
rehearse-before = avant
rehearse-after = après
rehearse-sooner = avec tout une seconde plus tôt
rehearse-liked = { $name } aime, le plus aimé d’abord : { $things }.
rehearse-asks = { $name } le demande, par rapport à avant : { $things }
rehearse-line = L’ensemble
rehearse-line-what = { $moments } moments en { $seconds } : en haut ce qu’a fait { $name }, en bas ce que tu as fait.
rehearse-lane = { $lane ->
    [animal] { $name }
    [signs] Signes
   *[you] Toi
}
rehearse-marks = Anneau : venu, proposé, « pas maintenant » ou écarté. Point : un appui. Carré : pris ou donné. Croix : parti, ou pressé. Triangle : un signe, plein s’il est fort.
rehearse-when = Quand
rehearse-what = Quoi
rehearse-list = Tous les moments en liste
rehearse-watch = Revoir
rehearse-same = La même chose encore
rehearse-another = Avec un autre jour de { $name }
rehearse-show-on = Le montrer à quelqu’un
rehearse-show-on-what = L’adresse de cette page contient toute la répétition et rien de ton foyer. Envoie-la à ton coach si tu veux ; sinon, personne ne la voit.
rehearse-no-such = Il n’y a pas d’exercice de ce nom.
rehearse-no-acts = Ce qui a été fait ne se lit pas dans cette adresse : { $item }. Recommence l’exercice.
rehearse-practise = Répète-le : { $title }
