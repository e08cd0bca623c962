rehearse-title = Répéter
rehearse-intro = Exerce-toi avec un animal à qui rien ne peut faire de mal, avant l’arrivée des boutons ou quand tu veux. Rien de cela n’entre dans le carnet.
rehearse-simulation = Une simulation : les vrais animaux sont différents.
rehearse-assumes = Ce qu’elle suppose
rehearse-assumes-short = En bref : montrer enseigne le plus quand la chose vient aussitôt et qu’elle est prise ; moins, peu après la dernière fois. Ce qui est montré pendant que l’animal est ailleurs ou a encore quelque chose n’enseigne rien ; lors d’un signe, cela retire un peu. « Pas maintenant », autre chose ou aucune réponse en retire un peu. La hâte, les appels, le passage barré et une longue séance pèsent, jusqu’à ce qu’un signe se montre et que l’animal parte. Tout va environ dix fois plus vite que dans nos foyers simulés. La part de chacun est notre choix : personne ne l’a mesurée.
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
    [stuck] Un mot bloqué
   *[free] Exercice libre
}
rehearse-short = { $which ->
    [likes] Deux choses tendues à la fois : ce qui est choisi, et avec quelle certitude.
    [showing] Deux minutes pour montrer deux ou trois mots.
    [leaving] Quelqu’un veut partir, et le peut.
    [inviting] Chacune avec son attente entière de cinq secondes.
    [evening] Jusqu’à trente appuis, en accéléré, autant que l’animal en fait : chacun reçoit une réponse juste, y compris « pas maintenant ».
    [stuck] Un mot n’avance pas. Essaie des choses, puis dis ce qui le retient.
   *[free] Cinq minutes de ce que tu veux.
}
rehearse-how = { $which ->
    [likes] Touche « En tendre deux » : tu tiens une chose de chaque côté. Puis ne bouge plus jusqu’à ce que { $name } ait choisi, ou rien choisi, et ait fini. Douze paires en disent le plus ; moins en disent moins.
    [showing] Touche un bouton : tu appuies dessus et dis son mot. Touche-le encore pour donner la chose. Donne aussitôt, partage les appuis entre les mots, et laisse le temps de manger et de jouer.
    [leaving] Montre des mots comme tu veux. Quand { $name } s’en va, laisse faire : pas d’appel, rien en travers. Puis termine.
    [inviting] Touche « Inviter » et un bouton : tu tiens la chose en vue. Puis ne fais rien pendant cinq secondes. Appuyé ? Dis le mot et donne aussitôt. Pas appuyé ? Appuie toi-même, dis-le, donne. Si { $name } est parti, laisse faire.
    [evening] { $name } appuie. Réponds à chaque appui : donne, dis « pas maintenant » ou donne autre chose. Les friandises s’épuisent.
    [stuck] Le mot encadré n’avance pas. Quelque chose le retient : essaie une chose après l’autre, regarde ce que fait { $name } et termine quand tu as une idée. Puis tu dis ce que c’est, et tu apprends ce qui était vrai.
   *[free] Tout ce qu’a le tableau, et ce qui tente en plus : appeler, se mettre en travers, le redire.
}
rehearse-choose = Répéter
rehearse-fits = { $which ->
    [showing] Avant la première séance
    [inviting] Avant la première invitation
   *[evening] Quand on répond aux appuis
}
rehearse-others = Autres exercices
rehearse-lessons = Leçons pour cela
rehearse-start = Commencer
rehearse-see = Voir comment c’était
rehearse-all = Tous les exercices
rehearse-no-script = Pour répéter, il faut des scripts. Les leçons s’en passent.
rehearse-room = La pièce vue d’en haut : en haut le tableau et toi, en bas à droite un panier, en bas à gauche la porte ouverte.
rehearse-room-likes = La pièce vue d’en haut : toi en haut, une chose dans chaque main quand tu en tends deux ; un panier en bas à droite, la porte ouverte en bas à gauche.
rehearse-happens = Ce qui se passe
rehearse-words = Boutons du tableau
rehearse-acts = Ce que tu peux faire
rehearse-keys-words = les boutons, dans l’ordre
rehearse-keys-count = Ces touches comptent ici
rehearse-keys-before = Au clavier : { $list }.
rehearse-keys-one = { $key } : { $does }
rehearse-word = { $thing ->
    [treat] Friandise
    [ball] Balle
    [out] Dehors
   *[company] Compagnie
}
rehearse-act = { $does ->
    [two] En tendre deux
    [offer] Inviter
    [again] Le redire
    [not-now] Pas maintenant
    [instead] Autre chose
    [call] Appeler
    [block] Se mettre en travers
    [back] S’écarter
    [ready] Tout avoir sous la main
    [softer] Baisser le son
    [quiet] Fermer les fenêtres
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
    [ready] Tu vas chercher les choses et les gardes sous la main.
    [softer] Tu poses un tissu sur les haut-parleurs : tous les boutons sont moins forts.
    [quiet] Tu fermes fenêtres et portes.
   *[end] Tu termines.
}
rehearse-you-gone = { $does ->
    [call] Tu appelles : { $name } l’entend dehors et ne revient pas.
   *[block] Tu te mets dans la porte : { $name } ne revient pas.
}
rehearse-seen = { $what ->
    [chose] { $name } choisit et l’a : { $word }.
    [chose-none] { $name } ne choisit aucune des deux.
    [looks-up] { $name } lève les yeux.
    [comes] { $name } s’approche.
    [joined] { $name } est au tableau.
    [joined-likes] { $name } est devant toi.
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
    [noise] Dehors, quelque chose claque.
    [startled] { $name } recule devant « { $word } ».
    [fetches] Pas sous la main : { $word }. Tu vas le chercher.
    [fetched] Tu es de retour avec : { $word }.
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
    [soften] Une fois que { $name } a reculé devant « { $word } » : n’appuie plus dessus avant qu’il soit moins fort.
    [longer] Reste les deux minutes, tant que { $name } le veut bien.
    [longer-evening] Reste toute la soirée, tant que { $name } le veut bien.
    [more-invitations] Invite cinq fois, chaque fois avec toute l’attente.
    [let-choose] Ne bouge plus jusqu’à ce que { $name } choisisse ou se détourne. Pas d’autre mot, pas d’autre paire.
    [more-pairs] Tends plus de paires : chaque chose au moins cinq fois.
    [step-away] À un signe fort, écarte-toi tout de suite ou termine. Tout le reste peut attendre.
    [let-go] Quand { $name } s’en va, laisse faire : pas d’appel, rien en travers, rien à montrer.
    [let-eat] Laisse { $name } profiter en paix de ce qui a été pris. On n’appuie ni ne montre rien avant la fin.
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
    [give] Donne ce que dit le bouton, après chacun de tes appuis.
    [try] Essaie plus de choses avant de dire ce qui le retient : montrer, en tendre deux, tout avoir sous la main, baisser le son, fermer les fenêtres.
    [stay] { $name } n’était pas encore parti. Reste jusqu’à son départ, puis laisse faire.
    [too-soon] Il s’est passé trop peu pour dire quelque chose. Réessaie, en prenant ton temps.
    [after-wait] Quand les cinq secondes sont passées, appuie toi-même, dis le mot, donne la chose. L’attente ne finit jamais sur rien.
    [when-there-invited] Invite quand { $name } est au tableau. Qui est ailleurs est laissé en paix.
    [wanted] Invite avec ce que { $name } veut à ce moment.
    [wanted-shown] Montre ce que { $name } veut à ce moment.
    [vet] Dans la vie : arrête, et demande à un vétérinaire. Les leçons peuvent attendre.
    [give-oftener] Donne plus souvent ce que dit « { $word } ». Quand ce n’est pas possible, donne-le à un autre moment, sans demande.
    [used-up] Toutes les friandises de la soirée ont été données. Continue de répondre à « { $word } » par « pas maintenant » ou par autre chose.
    [shorter] Fais plus court : termine tant que { $name } aime encore cela.
    [shorter-left] S’en aller, c’est dire que c’est fini. Restes-en là pour aujourd’hui.
    [give-never] Donne ce que dit le bouton aussi souvent que possible, d’abord pour « { $word } ». Ce qui ne se peut pas maintenant se peut peut-être à un autre moment.
   *[carry-on] Continue ainsi.
}
rehearse-because = { $change ->
    [soften] Appuyé encore après que { $name } a reculé : { $figure }
    [longer] Tu as terminé après { $figure }.
    [longer-evening] Tu as terminé après { $figure }.
    [more-invitations] Invitations : { $figure }
    [let-choose] Choix laissés en paix : { $figure }
    [more-pairs] Paires : { $figure }
    [step-away] Signes forts respectés : { $figure }
    [let-go] Départs respectés : { $figure }
    [let-eat] Laissé en paix, de ce qui a été pris : { $figure }
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
    [give] Donné, de ce que tu as pressé : { $figure }
    [try] Choses différentes essayées : { $figure }
    [stay] { $name } n’est pas parti, on ne peut donc rien dire du laisser partir.
    [too-soon] Personne n’a été invité ; rien n’a été montré ni donné, et aucune réponse n’a été donnée.
    [after-wait] Montré et donné après l’attente : { $figure }
    [when-there-invited] Invitations avec { $name } au tableau ou en chemin : { $figure }
    [wanted] Pris, de ce que tu as donné après tes invitations : { $figure }
    [wanted-shown] Pris, de ce que tu as montré au tableau : { $figure }
    [vet] { $name } n’allait pas bien. Dans la vie, personne ne le voit avec certitude à un tableau : un changement dans l’appétit, le mouvement ou les appuis est une raison suffisante.
    [give-oftener] « { $word } » a baissé ici. De ses appuis, ceux qui ont reçu « pas maintenant » ou autre chose : { $figure }
    [used-up] « { $word } » a baissé tout de même. De ses appuis, ceux qui ont reçu « pas maintenant » ou autre chose : { $figure }
    [shorter] Au tableau jusqu’à ta dernière demande : { $figure }. Pour { $name }, cela devient long après environ { $word }.
    [shorter-left] { $name } est parti après { $figure } au tableau. Une fois { $name } de retour, tu as continué.
    [give-never] Aucun appui n’a obtenu ici ce que dit le bouton. De ceux de « { $word } », avec « pas maintenant » ou autre chose pour réponse : { $figure }
    [carry-on-likes] Chaque choix a été laissé à { $name }.
    [carry-on-no-choice] Aucune paire n’est allée jusqu’à un choix, et rien de ce que tu as fait n’a gêné.
   *[carry-on] Rien ici n’a gêné l’apprentissage.
}
rehearse-would-change = La prochaine répétition nommera peut-être autre chose : celle-ci était courte, et peu de relevés disent peu.
rehearse-care-strong = Dans la vie, un signe fort met fin à la séance. Garde tes distances et consulte un vétérinaire ou un professionnel qualifié du comportement avant de reprendre.
rehearse-care-guards = Dans la vie, qui défend sa nourriture peut mordre : ne prends rien dans la gueule ou la gamelle, éloigne les enfants et consulte un professionnel qualifié du comportement.
rehearse-care-likes = Dans la vie, ne teste pas les goûts avec de la nourriture ou des choses que quelqu’un défend.
rehearse-measured = Comment tu as enseigné
rehearse-measured-what = Les chiffres de l’usage réel, pour cette seule répétition.
rehearse-row = { $which ->
    [paid] Donné, de ce que tu as pressé
    [held] Choix laissés en paix
    [delay] De ton appui à la chose
    [answer-delay] De l’appui de { $name } à la chose
    [pace] Montrer
    [balance] Entre les mots
    [taken] Pris, de ce que tu as montré
    [waits] Attentes tenues
    [answered] Appuis avec réponse
    [alternatives] Autre chose donnée, là où ce n’était pas ce qui était pressé
    [leaving] Départs respectés
    [mild] Signes légers respectés
    [strong] Signes forts respectés
    [eaten] Laissé en paix, de ce qui a été pris
    [given] Choses données
    [after-wait] Montré et donné après l’attente
    [invited-there] Invitations avec { $name } là ou en chemin
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
rehearse-truth-what = Dans la vie, personne ne peut le voir. Ici, la simulation dit avec quelle probabilité { $name } appuie sur le bouton d’un mot quand sa chose est voulue. La dernière colonne : si tout était venu aussi tôt que possible, une seconde plus tôt au plus.
rehearse-of-word = Mot
rehearse-before = avant
rehearse-after = après
rehearse-sooner = 1 s plus tôt
rehearse-liked = { $name } aime, le plus aimé d’abord : { $things }.
rehearse-likes-told = { $same ->
    [yes] Le plus choisi était aussi le plus aimé. Mais chaque chose a été présentée { $times } au plus, et un ou deux choix par hasard changent l’ordre : peu de paires ne séparent pas des goûts proches.
   *[no] Le plus choisi : { $chosen }. Le plus aimé : { $liked }. Chaque chose a été présentée { $times } au plus, et un ou deux choix par hasard changent l’ordre : peu de paires ne séparent pas des goûts proches.
}
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
rehearse-at-home = Ce carnet ne répond qu’à la maison : son adresse entière ne s’ouvre nulle part ailleurs. Ce qui est copié est la partie qui suit : qui a son propre carnet, ou est sur le même serveur, la met derrière la sienne.
rehearse-no-such = Il n’y a pas d’exercice de ce nom.
rehearse-no-acts = Ce qui a été fait ne se lit pas dans cette adresse : { $item }. Recommence l’exercice.
rehearse-practise = S’y exercer : { $title }
rehearse-who = { $who ->
    [eager] Zip, un jeune chien
    [wary] Moth, un chat
    [old] Bramble, un vieux chien
    [quick] Pico, un perroquet
   *[guards] Rusk, un chien qui défend sa nourriture
}
rehearse-whoswho = Qui tu peux rencontrer
rehearse-the-lesson = La leçon pour cela : { $title }
rehearse-gain = Tout le reste étant pareil, cela seul aurait mené les mots de { $was } à { $would }, en moyenne.
rehearse-gain-given = Si chaque appui resté sans réponse avait reçu sa chose, tout le reste étant pareil, les mots seraient passés de { $was } à { $would }, en moyenne. « Pas maintenant » est aussi une réponse, et apporte moins.
rehearse-asks-more = { $name } demande plus souvent qu’avant : { $things }
rehearse-asks-less = { $name } demande moins souvent qu’avant : { $things }
rehearse-asks-same = { $name } demande tout à peu près aussi souvent qu’avant.
rehearse-stuck-word = Le mot qui n’avance pas : « { $word } »
rehearse-before-shown = Dans le carnet, montré ces trois dernières semaines : { $list }. Pour un mot, moins de deux par jour (42 en trois semaines), c’est peu.
rehearse-name-it = Qu’est-ce qui retient « { $word } » ?
rehearse-name-help = Dis ce que tu penses avant de lire la suite. Personne ne l’apprend.
rehearse-name-button = Le dire
rehearse-held-up = { $hit ->
    [yes] Tu l’as dit, et c’était cela : { $cause }.
   *[no] C’était autre chose : { $cause }. Tu as dit : { $said }.
}
rehearse-showed = { $cause ->
    [not-wanted] Comment cela se voyait : sa chose laissée ou pas choisie, { $figure }. « En tendre deux » le montre sans bouton.
    [too-late] Comment cela se voyait : temps avant ton retour avec elle, { $figure }. Avec tout sous la main, rien ne tarde.
    [avoided] Comment cela se voyait : a reculé quand tu appuyais, { $figure }. Moins fort, le bouton est utilisé.
    [time-or-place] Comment cela se voyait : un signe ou un départ juste après un claquement, { $figure }. Fenêtres fermées, il n’y en a pas.
    [health] Comment cela se voyait : des choses laissées, même la préférée, { $figure } ; et chaque pas lent. Rien de ce que tu as essayé n’y change quelque chose. Dans la vie : demande d’abord à un vétérinaire.
   *[too-little] Comment cela se voyait : rien ne s’y opposait, et chaque fois montré apprenait. Montré : { $figure }.
}
rehearse-unseen = { $cause ->
    [not-wanted] Tu n’as pas pu le voir : donne sa chose, ou tends-en deux.
    [too-late] Tu n’as pas pu le voir : montre le mot et donne sa chose.
    [avoided] Tu n’as pas pu le voir : appuie sur son bouton quand { $name } est près.
    [time-or-place] Tu n’as pas pu le voir : attends un claquement et cherche un signe.
    [health] Tu n’as pas pu le voir : donne ce que { $name } préfère. Dans la vie : demande d’abord à un vétérinaire.
   *[too-little] Tu n’as pas pu le voir : montre le mot.
}
rehearse-put-right = { $cause ->
    [too-late] Tu l’as corrigé avant que cela se voie : tout sous la main, plus rien n’arrivait tard.
    [avoided] Tu l’as corrigé avant que cela se voie : adouci, le bouton n’effraie plus.
   *[time-or-place] Tu l’as corrigé avant que cela se voie : fenêtres fermées, aucun claquement ne s’entend.
}
rehearse-showings = trois semaines avant : { $before } ; ici : { $here }
rehearse-notebook = Ce que le carnet aurait dit
rehearse-notebook-what = D’après six semaines de notes d’un tel foyer et cette séance, avec les mêmes règles qu’en usage réel. Ce qu’il nomme d’abord n’est pas toujours vrai.
rehearse-advisor = { $cause } : { $bearing }.
rehearse-three-more = Des mots qui se ressemblent, un enregistrement difficile à distinguer et des personnes qui répondent différemment peuvent aussi retenir un mot. Cet exercice ne les a pas.
rehearse-share = { $club ->
    [yes] Partager ceci avec { $name } et le club
   *[no] Partager ceci avec { $name }
}
rehearse-share-what = { $club ->
    [yes] Ce qui va à { $name }, sur la page Convenu : l’exercice et l’animal, ton nom, et de « Comment tu as enseigné » les secondes et les parts de ce qui a été pris, attendu, répondu, respecté, laissé partir et laissé en paix, chacune avec son nombre. Ce qui n’y va pas : à quel rythme et avec quel partage tu as montré, ce que tu as pressé sans donner, où était l’animal quand tu as invité, ce qui suivit l’attente, combien de fois tu as appelé, barré le passage ou redit le mot ; aucun moment, ni ce qui était vrai. Les autres coachs du club le lisent aussi : c’est en son nom que ceci a été remis. Sans ce geste, personne ne le voit ; sur cette page, tu peux le retirer.
   *[no] Ce qui va à { $name }, sur la page Convenu : l’exercice et l’animal, ton nom, et de « Comment tu as enseigné » les secondes et les parts de ce qui a été pris, attendu, répondu, respecté, laissé partir et laissé en paix, chacune avec son nombre. Ce qui n’y va pas : à quel rythme et avec quel partage tu as montré, ce que tu as pressé sans donner, où était l’animal quand tu as invité, ce qui suivit l’attente, combien de fois tu as appelé, barré le passage ou redit le mot ; aucun moment, ni ce qui était vrai. Qui continue à la place de { $name } le lit aussi. Sans ce geste, personne ne le voit ; sur cette page, tu peux le retirer.
}
