checks-title = Vérifications
checks-one = Une vérification
checks-no-such = Ce carnet ne connaît pas une telle vérification de cet animal.
checks-design = { $design ->
    [pick_for_word] Entendre un mot, choisir la chose
    [press_under_covers] Voir partir une chose, appuyer sur son bouton ; boutons échangés sous des caches
    [wrong_delivery] Autre chose que ce qui était demandé
   *[press_for_thing] Voir partir une chose, appuyer sur son bouton
}
checks-place = { $kind ->
    [button] Bouton { $number }
   *[place] Place { $number }
}
checks-left = à gauche pour { $name }
checks-right = à droite pour { $name }
checks-whose-left = Dessiné comme { $name } le voit. Si tu fais face à { $name }, sa gauche est à ta droite.
checks-mark-asked-for = { $mark } marque ce qui est demandé.
checks-quoted = « { $word } »
checks-health = Santé :
checks-trials = { $trials ->
    [1] Un essai
   *[other] { $trials } essais
}
checks-blind = à l’aveugle
checks-not-blind = pas à l’aveugle
checks-intro = Une vérification (une sonde, dans le métier) demande si { $name } se guide sur le mot lui-même : prévue d’avance, dans un ordre tiré au hasard, avec une personne à côté qui ne peut pas trahir la réponse.
checks-none-today = Pas de vérification aujourd’hui : des signes de stress forts ont été notés. Laisse de l’espace ; un jour calme viendra.
checks-plan = Prévoir une vérification
checks-so-far = Vérifications jusqu’ici
checks-none = Aucune pour l’instant.
checks-open = Ouvrir
checks-to-designs = Un changement aide-t-il ? Essais d’un changement
checks-cannot-show = Une vérification peut montrer sur quoi un animal se guide ; elle ne peut pas montrer qu’un animal ne comprend pas. Ne rien choisir et s’en aller sont comptés à part et ne sont jamais faux.
checks-finished = { $trials ->
    [1] Terminée comme prévu, un essai
   *[other] Terminée comme prévu, { $trials } essais
}
checks-finished-otherwise = { $trials ->
    [1] Terminée, un essai, mais pas comme prévu
   *[other] Terminée, { $trials } essais, mais pas comme prévu
}
checks-going = { $trials ->
    [1] { $done } sur un essai
   *[other] { $done } sur { $trials } essais
}
checks-nothing-worked-out = On ne peut rien calculer à partir de cette vérification : { $why }.
checks-finds = À cette longueur, un animal qui a juste dans { $share } des cas ou plus est repéré dans quatre vérifications sur cinq, mot par mot.
checks-finds-none = C’est trop court pour repérer même un animal qui a juste dans { $share } des cas, mot par mot ; seule une vérification plus longue le peut.
checks-not-as-planned = Pas comme prévu :
checks-taken-back = { $trials ->
    [1] 1 essai annulé : compté faux.
   *[other] { $trials } essais annulés : comptés faux.
}
checks-changed = { $trials ->
    [1] 1 essai modifié après la première réponse : compté faux.
   *[other] { $trials } essais modifiés après la première réponse : comptés faux.
}
checks-again = { $trials ->
    [1] 1 essai répondu de nouveau sous un numéro déjà utilisé : la première réponse compte.
   *[other] { $trials } essais répondus de nouveau sous un numéro déjà utilisé : la première réponse compte.
}
checks-left-out = { $trials ->
    [1] 1 essai sauté entre d’autres : compté faux.
   *[other] { $trials } essais sautés entre d’autres : comptés faux.
}
checks-not-as-drawn = { $trials ->
    [1] 1 essai avec un autre mot ou une autre chose que ce que tire la graine de ce plan : compté faux.
   *[other] { $trials } essais avec un autre mot ou une autre chose que ce que tire la graine de ce plan : comptés faux.
}
checks-beyond = { $trials ->
    [1] 1 essai avec un numéro que le plan n’a pas : pas compté.
   *[other] { $trials } essais avec un numéro que le plan n’a pas : pas comptés.
}
checks-knew-answer = { $trials ->
    [1] 1 essai où la personne près de l’animal connaissait la réponse : juste, il ne compte pas comme fait à l’aveugle ; faux, il compte.
   *[other] { $trials } essais où la personne près de l’animal connaissait la réponse : justes, ils ne comptent pas comme faits à l’aveugle ; faux, ils comptent.
}
checks-earlier-rule = Tirée selon une règle antérieure, où la dernière chose demandée trahissait quelque chose : montrée, elle ne fait rien monter.
checks-given-up = Une autre vérification a été prévue avant la fin de celle-ci : elle reste dans l’ensemble, et la réponse qui serait venue ensuite compte comme fausse.
checks-things-a-trial = { $choices } choses par essai
checks-buttons-a-trial = { $choices } boutons par essai
checks-not-today-space = Pas aujourd’hui : des signes de stress forts ont été notés. Laisse de l’espace.
checks-i-set-up = Je prépare
checks-i-am-with = Je suis avec { $name }
checks-go-on-alone = Passer à l’essai suivant
checks-two-phones = Deux téléphones, c’est le mieux. Avec un seul, imprime la fiche de préparation et donne le téléphone à la personne qui accompagne.
checks-setters-sheet = Fiche de préparation
checks-scorers-sheet = Fiche de notation
checks-who-does-what = Qui fait quoi, et qui peut savoir quoi
checks-all = Toutes les vérifications
checks-setter = Préparation
checks-setter-knows = connaît la réponse
checks-setter-picks = Dispose les choses selon la liste, toutes aussi proches, puis va là où { $name } ne voit personne. De là, fait entendre le mot, une fois. Ne dit rien d’autre.
checks-setter-covers = Couvre le tableau et place les boutons sous les caches selon la liste. Laisse { $name } voir la chose, l’enferme hors de vue et va là où { $name } ne voit personne.
checks-setter-shows = Laisse { $name } voir la chose, l’enferme et va là où { $name } ne voit personne. Laisse chaque bouton à sa place habituelle.
checks-presenter = Accompagnement
checks-alone = La vérification, en solo
checks-must-not-know = ne doit pas la connaître
checks-presenter-knows = ici, la connaît ; ce n’est donc pas à l’aveugle
checks-presenter-picks = Est avec { $name } ; de dos, ou avec des lunettes noires, pendant qu’on dispose les choses et jusqu’au choix. Ne montre pas du doigt, ne hoche pas la tête, ne parle pas, ne presse pas.
checks-presenter-covers = Entre une fois la chose partie ; retire les caches par l’arrière, sans regarder les boutons. Ne sait pas quel bouton est où. Ne montre pas du doigt, ne hoche pas la tête, ne parle pas, ne presse pas.
checks-presenter-stands = Entre une fois la chose partie. Se tient derrière le milieu du tableau et regarde droit devant. Ne montre pas du doigt, ne hoche pas la tête, ne parle pas, ne presse pas.
checks-scorer = Notation
checks-scorer-notes = Note le numéro de ce qui a été choisi en premier, sans savoir ce qui était juste : la personne qui accompagne, sur le téléphone, ou une troisième d’après une vidéo sans le son.
checks-goes-by-place = Seulement pour un animal qui reconnaît ses boutons à l’aspect, à l’image ou à l’odeur. Celui qui se guide sur la place restera ici au niveau du hasard, et ce n’est pas un échec.
checks-kindly = { $stop } ({ $signs }), aussitôt si le signe est fort, et au plus tard après dix essais. { $name } peut partir à tout moment ; ne rappelle jamais { $name }. Quel que soit son choix, { $name } le reçoit : une vérification n’est pas une leçon, et pour un animal rien n’est jamais faux.
checks-kindly-stop = Arrête au moindre signe de stress
checks-not-today = Pas aujourd’hui : des signes de stress forts ont été notés. Laisse de l’espace à { $name } et vérifie un jour calme.
checks-back-to-all = Retour aux vérifications
checks-too-few-words = { $words ->
    [0] Une vérification demande au moins deux mots ; { $name } n’en a aucun.
   *[other] Une vérification demande au moins deux mots ; { $name } en a { $words }.
}
checks-to-words = Vers les mots
checks-why = Les appuis de tous les jours laissent place à d’autres explications : un regard, une place favorite, une chose favorite. Une vérification ferme cette porte, si elle est prévue d’abord et faite ensuite comme prévu.
checks-field-design = Ce que fait { $name }
checks-field-words = Mots
checks-field-words-hint = d’habitude deux à quatre ; chacun avec sa propre chose
checks-field-choices = Choses ou boutons couverts à la fois
checks-field-choices-hint = 2 est le plus facile ; avec plus, il faut moins d’essais. Si les boutons gardent leur place, tous les mots cochés comptent
checks-field-rate = Justes au moins, en %
checks-field-rate-hint = combien de fois { $name } doit tomber juste pour que cela compte pour toi ; plus bas, il faut bien plus d’essais
checks-field-who = Qui est là
checks-who-two = Deux personnes ou plus
checks-who-two-hint = L’une prépare, l’autre est avec { $name } et ne connaît pas la réponse : une vérification à l’aveugle.
checks-who-one = Moi, sans personne d’autre
checks-who-one-hint = Tu connais la réponse, donc des indices involontaires restent une explication possible, quel que soit le résultat.
checks-about-picks = Pour l’écoute : les choses sont à des places au hasard ; un mot retentit ; vers quelle chose va { $name } ? L’ordre et les places au hasard écartent la plupart des autres explications.
checks-about-covers = Pour la demande : avant chaque essai, les boutons sont échangés sous des caches selon le tirage, la chose est hors de vue ; qui répond ne sait pas quel bouton est où.
checks-suggests = Les boutons gardent leur place, donc une habitude de place donnerait la même chose : cela peut suggérer, pas plus. Échangés sous des caches, cela pourrait le montrer.
checks-count = Combien d’essais ?
checks-count-each = { $sittings ->
    [1] { $each } pour chacun des { $words } mots, en une séance environ.
   *[other] { $each } pour chacun des { $words } mots, en { $sittings } séances de { $most } environ, à des jours ou des heures différents.
}
checks-count-chance = Par hasard, { $name } aurait juste dans { $share } des cas.
checks-count-false-alarm = Le hasard seul amène un mot tout en haut dans { $share } des vérifications ({ $alpha }, partagé entre les mots).
checks-count-power = Si { $name } réussit autant que tu l’espères, un mot y arrive dans { $share } des vérifications.
checks-count-top = Un mot est tout en haut à partir de { $right } ; moins suffit s’ils viennent tôt. Comptes binomiaux exacts.
checks-count-right = { $right } justes sur { $each }
checks-count-by-lot = Le mot est tiré au sort à chaque fois, pour que le dernier ne dise rien du suivant : { $each } est la moyenne, et un mot venu moins souvent peut demander plus d’essais.
checks-plan-these = { $trials ->
    [1] Prévoir cet essai
   *[other] Prévoir ces { $trials } essais
}
checks-unfinished = Pas terminées :
checks-unfinished-count = Ce qui a été commencé reste dans l’ensemble. Si tu en prévois une autre du même genre, une réponse fausse est comptée pour celle qui n’a pas été notée.
checks-stop-here = Arrête ici : des signes de stress forts ont été notés. Laisse de l’espace et n’attire pas { $name } de nouveau. La vérification peut continuer un autre jour.
checks-sitting-done = { $trials } essais aujourd’hui : c’est une séance. Reposez-vous ; continuez dans quelques heures ou un autre jour.
checks-setter-only = Seulement pour la personne qui prépare. Celle qui accompagne ne doit voir ni cette page ni le Journal.
checks-cannot-run = Cette vérification ne peut pas être faite d’ici : { $why }.
checks-all-done = { $trials ->
    [1] Le seul essai est fait.
   *[other] Les { $trials } essais sont faits.
}
checks-at-board = Ce genre se note au tableau, comme toute réponse.
checks-back-to-one = Retour à la vérification
checks-trial-of = Essai { $number } sur { $trials }
checks-lay-out = Dispose, en partant de la gauche de { $name }
checks-asked-for = – ce qui est demandé
checks-then-play = Puis sors de la vue et fais entendre { $word }, une fois.
checks-then-play-alone = Puis recule, regarde droit devant et fais sonner { $word }, une fois. Ne dis rien d’autre et ne montre rien.
checks-under-covers = Sous les caches, en partant de la gauche de { $name }
checks-show-thing = Montre la chose, puis enferme-la : { $thing }
checks-lies-in = Son bouton est à la place { $place }. Appelle la personne qui accompagne quand tu es hors de vue. Mets de côté tout bouton absent de la liste.
checks-lies-in-alone = Son bouton est à la place { $place }. Mets de côté tout bouton hors de la liste. Enlève les caches par derrière, regarde droit devant et ne dis rien.
checks-its-number = Appelle la personne qui accompagne quand tu es hors de vue. Son bouton est le numéro { $place }.
checks-its-number-alone = Son bouton est le numéro { $place }. Place-toi derrière le milieu du tableau, regarde droit devant et ne dis rien.
checks-numbers = Numéros des boutons
checks-numbers-how = Pose un petit numéro à côté de chaque bouton, pour qu’on puisse dire lequel a été enfoncé :
checks-next = Noté ? Montrer le suivant
checks-next-how = La page change dès que la personne qui accompagne a touché ce qui est arrivé. Mal disposé ? Ne fais pas entendre le mot ; recommence la disposition.
checks-laid = Fait. Qu’a fait { $name } ?
checks-noted-already = C’était déjà noté ; rien n’a été changé. Annuler retire la dernière réponse ; elle compte alors comme fausse.
checks-thanks = Merci, { $name }.
checks-see = Voir ce qui en est sorti
checks-stop-for-now = Arrêter pour l’instant
checks-stop-for-now-kept = – ce qui est noté est gardé ; continue plus tard.
checks-go-on = Continuer quand même
checks-note-sign = Un signe de stress ? Note-le sur le tableau de { $name }
checks-which = { $kind ->
    [picks] Quelle place est le premier choix de { $name } ?
    [place] À quelle place le premier appui de { $name } ?
   *[button] Sur quel bouton le premier appui de { $name } ?
}
checks-nothing = Rien
checks-away = Départ
checks-before-tap = { $blind ->
    [yes] Chronométré ? Réponse connue ? Dis-le d’abord
   *[other] Chronométré ? Dis-le d’abord
}
checks-field-seconds = Secondes jusqu’au choix
checks-field-seconds-hint = seulement si quelqu’un a chronométré
checks-field-knew = Cette fois, je connaissais la réponse (vue ou entendue)
checks-how-to-note = Regarde ailleurs jusqu’au choix. Aucun choix en une demi-minute environ, c’est « rien » ; s’en aller, c’est « départ ». Ni l’un ni l’autre n’est faux. { $name } reçoit ce que { $name } a choisi ; un morceau de nourriture est compté.
checks-stop-and-cautions = Arrête au moindre signe de stress. Les mises en garde de santé et de nourriture sont sur la page de préparation : qu’on les y lise d’abord.
checks-last-trial = Essai { $number } :
checks-a-choice = un choix
checks-undo = Annuler
checks-undo-counts = Annuler : la réponse reste dans les données et compte comme fausse ; l’essai ne revient pas.
checks-went-away = { $name } s’en va, et c’est une réponse. Laisse faire ; continue quand { $name } revient sans appel, ou un autre jour.
checks-for-setter = { $only } Plie-la pour que les autres ne la voient pas.
checks-for-setter-only = Pour la préparation seulement.
checks-column-number = N°
checks-column-play = Faire entendre
checks-column-hide = Enfermer
checks-column-button = Bouton
checks-column-seconds = Secondes
checks-cross = Coche ce que { $name } a choisi en premier. Aucun choix en une demi-minute environ, c’est { $nothing } ; s’en aller, c’est { $away } ; ni l’un ni l’autre n’est faux. Les secondes seulement si on a chronométré.
checks-do-not-look = Ne regarde pas la fiche de préparation et ne devine pas ce qui était demandé.
checks-cannot-draw = L’ordre ne peut pas être tiré de ce plan : { $why }.
checks-sitting = Séance { $number }
checks-date-and-who = Date et heure, qui était là :
checks-prints-again = graine { $seed } : le même plan imprime de nouveau cet ordre.
checks-nothing-done = Rien n’a encore été fait.
checks-came-out = Ce qui en est sorti
checks-this-not-blind = Cette vérification n’était pas à l’aveugle : qui notait connaissait la réponse. Là où une vérification à l’aveugle est nommée plus bas, c’en est une plus ancienne.
checks-figures = Chiffres jusqu’ici
checks-read-any-time = Lis-le quand tu veux, continue ou laisse-le là : rien n’est à fermer. Les preuves sont faites pour cela. Ce qui a été commencé reste dans l’ensemble.
checks-chart = Justes, parmi les choix faits
checks-chart-axis = part juste
checks-chart-read = Ligne verticale : le hasard, { $chance }. Barres : intervalles à 95 % valables quel que soit le moment où on les lit. Pour chaque mot : parmi les fois où { $name } l’a choisi, combien de fois c’était celui demandé ; un favori n’est juste que par hasard. Les premières réponses comptent ; les réponses annulées comptent comme fausses.
checks-no-choice = Aucun choix n’a été fait ; cela ne dit rien dans un sens ni dans l’autre.
checks-went-for = { $times ->
    [1] Choix de { $name } : une fois celui-ci, dont { $right } où c’était celui demandé : { $share } ({ $low } à { $high }).
   *[other] Choix de { $name } : { $times } fois celui-ci, dont { $right } où c’était celui demandé : { $share } ({ $low } à { $high }).
}
checks-never-wrong = Rien : { $nothing }. Départs : { $away }. Ni l’un ni l’autre ne compte comme faux.
checks-p-rearranged = Ce bouton va-t-il avec ce qui a été montré (choses redistribuées au hasard, appuis laissés tels quels) ? { $p }. À lire avec la part juste.
checks-p-chance = { $times ->
    [1] Contre le hasard ({ $chance }, binomial exact, unilatéral) : { $p }, sur un choix.
   *[other] Contre le hasard ({ $chance }, binomial exact, unilatéral) : { $p }, sur { $times } choix.
}
checks-bayes-above = Facteur de Bayes { $factor } : autant de fois plus probable si la part juste est n’importe où au-dessus du hasard que par hasard.
checks-bayes-below = Facteur de Bayes 1 à { $factor } : autant de fois plus probable par hasard que si la part juste est n’importe où au-dessus du hasard.
checks-more-than = plus de { $number }
checks-seconds-right = { $timed ->
    [1] Le seul choix juste chronométré est venu en { $seconds } s.
   *[other] La moitié des { $timed } choix justes chronométrés est venue en { $seconds } s.
}
checks-seconds-wrong = { $timed ->
    [1] Le seul choix faux chronométré est venu en { $seconds } s.
   *[other] La moitié des { $timed } choix faux chronométrés est venue en { $seconds } s.
}
checks-latency = Justes contre faux, somme des rangs, bilatéral : { $p }.
checks-may-be-said = Ce qu’on peut dire
checks-said-of-word = { $word } : { $said }.
checks-judged = Jugé sur tous les mots et toutes les vérifications jamais commencées ensemble, pour que beaucoup de tests et de lectures ne finissent pas en une affirmation fausse.
