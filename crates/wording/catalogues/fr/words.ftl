words-first = Premiers mots
words-further = Proposer d’autres mots
words-none-yet = Pas encore de mot. Deux ou trois suffisent pour commencer (pratique courante, sans source).
words-take = Prendre ces mots
words-button-says = Le bouton dit
words-says = « { $says } » :
words-untested = Pas encore de test de préférences : ce que { $name } aime est ici une supposition.
words-test-first = Tester d’abord, une dizaine de minutes
words-tested = { $trials ->
    [1] D’après un essai d’un test de préférences, la nourriture du jour, le temps pour donner et le son des mots.
   *[other] D’après { $trials } essais de tests de préférences, la nourriture du jour, le temps pour donner et le son des mots.
}
words-other-sets = Autres ensembles ({ $sets })
words-left-out = Écartés, et pourquoi ({ $things })
words-why-these = Pourquoi ceux-ci ?
words-score = Le meilleur mélange : aimés, vite donnés, faciles à distinguer. Score { $total } : goût et dons { $liked }, sortes { $kinds }, sons distincts { $apart }, déjà dits { $said }.
words-best-in = Le meilleur de tous les ensembles dans { $share } des { $draws } tirages de ce qu’on ne sait pas encore.
words-how-much = { $basis ->
    [measured] Jusqu’ici environ { $times ->
        [1] une fois
       *[other] { $times } fois
    } par jour
   *[most] Au plus environ { $times ->
        [1] une fois
       *[other] { $times } fois
    } par jour
}{ $guess ->
    [yes] , une supposition
   *[no] { "" }
}
words-how-much-by = { $by ->
    [time] Plus ne tient pas en cinq minutes au panneau.
    [food] La nourriture du jour ne permet pas plus.
    [card] Sa fiche ne permet pas plus.
   *[usual] Plus n’est pas habituel pour ce genre ; donne-le aussi souvent que cela convient.
}{ $guess ->
    [yes] { " " }Pour l’instant c’est une supposition ; tes relevés la remplacent.
   *[no] { "" }
}
words-not-tested = Pas encore testé : que { $name } l’aime est une supposition.
words-picked = Probabilité que { $name } le choisisse plutôt qu’une chose moyenne : { $figure }.
words-scored = { $format ->
    [free_access] Occupé avec dans un test chronométré : { $figure }.
   *[other] Pris dans un test : { $figure }.
}
words-seconds-measured = Le donner prend environ { $seconds } s : mesuré chez vous, n = { $n }.
words-seconds-kind = Le donner prend environ { $seconds } s : comme d’autres choses du même genre chez vous, n = { $n }, jusqu’à son propre chiffre.
words-seconds-card = Le donner prend { $seconds } s, d’après sa fiche.
words-seconds-usual = Le donner prend environ { $seconds } s : habituel pour ce genre (pratique courante, sans source), jusqu’à cinq dons.
words-a-day-measured = Donné { $times ->
    [1] une fois
   *[other] { $times } fois
} un jour ordinaire : mesuré sur { $days ->
    [1] un jour
   *[other] { $days } jours
}.
words-a-day-card = Au plus { $times ->
    [1] une fois
   *[other] { $times } fois
} par jour, d’après sa fiche.
words-a-day-usual = Au plus { $times ->
    [1] une fois
   *[other] { $times } fois
} par jour : habituel pour ce genre (pratique courante, sans source).
words-pieces = { $pieces ->
    [1] Un morceau par jour tient dans la ration, si rien d’autre n’est donné en récompense.
   *[other] { $pieces } morceaux par jour tiennent dans la ration, si rien d’autre n’est donné en récompense.
}
words-already-said = Vous dites déjà souvent ce mot.
words-sounds-like-one = Ressemble beaucoup à « { $other } » : un autre mot se distingue mieux.
words-how-many = doivent être 1 à { $most } mots pour commencer, pas { $ticked }
words-must-not = Ne doit pas être donné : { $why }.
words-twice = « { $says } » est déjà sur un autre bouton ; choisis un autre mot
words-no-set = Pas encore de proposition : { $usable } des choses notées peuvent être des premiers mots, il en faut { $needed }.
words-too-many = Pas de proposition : trop de choses à comparer. Mets-en d’abord de côté.
words-no-allowance = La quantité de nourriture de { $name } n’est pas fixée : on ne peut pas le doser.
words-bad-figure = Un chiffre de sa fiche ne peut pas être juste.
words-not-at-board = On ne peut pas le donner encore et encore près du tableau, et un premier mot demande beaucoup de répétitions rapides. Si c’est possible, dis-le sur sa fiche.
words-no-piece = La ration du jour n’en laisse aucun morceau.
words-too-slow = Prend { $seconds } s près du tableau, plus de { $slowest } s : trop peu de répétitions.
words-too-seldom = Peut être donné { $times } fois par jour, moins de { $fewest }.
words-no-company = Ne va avec aucun autre : il faut { $needed } mots ensemble.
words-as-good = { $cautioned ->
    [yes] Aussi bien ; ce qui ne se donne qu’un peu cède la place. Tu peux le prendre à la place.
   *[no] Aussi bien ; tu peux le prendre à la place.
}
words-outscored = { $by ->
    [liking] Moins aimé que les choisis (score inférieur de { $behind }).
    [uncertainty] Son attrait est moins sûr : teste-le davantage (score inférieur de { $behind }).
    [deliveries] Se donne moins souvent que les choisis (score inférieur de { $behind }).
    [spread] N’ajoute aucune sorte nouvelle (score inférieur de { $behind }).
    [apart] Ressemble plus aux autres que les choisis (score inférieur de { $behind }).
   *[said] Vous ne le dites pas encore, contrairement aux choisis (score inférieur de { $behind }).
}
words-give = Donner ce que « { $says } » demande.
words-asks-for = demande : { $name }
words-not-now = « { $said } », une fois et calmement ; proposer autre chose.
words-not-now-said = Pas maintenant
words-size-leaves-out = et places par rangée laissent de côté une place avec un mot ; change d’abord la taille et regarde
words-cannot-give = ne peut pas être donné à { $name } : { $why }. Choisis autre chose
words-page-title = Mots de { $name }
words-add = Ajouter un mot
words-labels = Étiquettes
words-where-they-are = Où ils sont
words-not-drawn = Le tableau n’est pas encore dessiné. Avec lui, un appui se reconnaît à sa place.
words-edit-board = Modifier le tableau
words-closing-word = mot de fin
words-means = Veut dire
words-answer = Réponse
words-not-now-title = Pas maintenant
words-not-written = pas encore écrit
words-given = On donne
words-card-and-stage = Fiche et étape
words-of = de { $says }
words-these-alike = Ceux-ci se ressemblent beaucoup :
words-different = Un autre mot pour l’un d’eux se distingue mieux.
words-off = Retirés, ou pour d’autres ({ $words })
words-to-others = pour d’autres
words-shown = { $shown ->
    [0] pas encore montré
   *[other] montré { $shown } fois
} · { $own ->
    [0] aucun appui spontané
    [1] un appui spontané
   *[other] { $own } appuis spontanés
} en 28 jours
words-stage = { $stage ->
    [prepare] préparer
    [show] montrer
    [invite] inviter
   *[converse] converser
}
words-on-another = est déjà sur un autre bouton ; choisis un autre mot, ou ouvre cette fiche
words-gives-nothing = rien : il dit seulement quelque chose
words-new-title = Un nouveau mot
words-quoted = « { $says } »
words-kept = Enregistré.
words-alike-here = Ressemble beaucoup à un autre mot d’ici et peut être dur à distinguer : { $how }. Un autre mot pour l’un d’eux est plus sûr.
words-says-hint = court, et différent des autres
words-means-here = Ici cela veut dire
words-means-hint = ce que cela demande ou dit
words-answer-by = Tout le monde répond ainsi
words-answer-hint = chaque fois pareil, par exemple : donner un morceau en trois secondes
words-when-not-now = Quand la réponse est « pas maintenant », tout le monde
words-not-now-hint = dit et fait ceci
words-what-given = Ce qui est donné
words-is-closing = un mot de fin : il termine la séance et apaise
words-taught-to = Pour
words-on-board = au tableau (décoche pour le retirer ; ce qui est noté reste)
words-back = Retour aux mots
words-rules-for = Règles de la maison pour lui
words-rules-none = Aucune en propre.
words-no-such = Ce carnet ne connaît pas ce mot.
words-board-title = Le tableau
words-would-move = Un mot déplacé doit être retrouvé : laisse les mots connus à leur place si tu peux. Ceci bougerait :
words-rows = Rangées
words-columns = Places par rangée
words-change-size = Changer la taille
words-board-language = Langue des mots
words-board-language-hint = celle des boutons ; les mots qui se ressemblent se trouvent par son orthographe
words-not-on-it = Pas dessus : { $words }.
words-propose-places = Proposer des places pour ceux-ci
words-places-stay = Les mots du tableau restent. Ceux qui se ressemblent sont séparés, les plus utilisés à portée.
words-yes-move = Oui, les déplacer
words-mat = Laisse une place libre près du mot le plus pressé, sépare les mots qui se ressemblent et fixe le tableau sur un tapis qui accroche : un tableau qui glisse ou cliquette est évité. Visse les couvercles des piles.
words-to-place = « { $says } » à la rangée { $row }, place { $place }
words-off-board = « { $says } » hors du tableau
words-move-unticked = n’est pas coché : des mots utilisés changeraient de place
words-size-missing = manquent ; donne 1 à 20
words-no-places = ne peuvent pas être proposées : { $why }
words-as-you-stand = Comme tu es devant.
words-taken-off = retiré
words-which-where = Quel mot où, comme tu es devant
words-places = Places
words-place = Rangée { $row }, place { $place }
words-place-taken = contient un mot déjà à la rangée { $row }, place { $place } ; choisis l’une des deux
words-recording = Enregistrement
words-no-recording = Aucun enregistrement n’est gardé ici. Celui du bouton suffit pour commencer : enregistre doucement, un seul mot, de ta voix habituelle, loin du bruit. Avec le même son gardé ici, un micro peut entendre les appuis.
words-sound-file = Fichier son
words-sound-file-hint = WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM ; le son même qui est sur le bouton
words-keep-and-check = Garder et vérifier
words-record-softly = Un son fort près de l’oreille peut effrayer ou blesser : enregistre doucement et laisse { $name } s’approcher.
words-check-nothing = Rien à redire.
words-check-found = La vérification a trouvé :
words-recording-of = Enregistrement de { $says }
words-play-unheard = Fais-le jouer là où { $name } ne l’entend pas : un mot qui sonne et n’apporte rien apprend qu’il ne veut rien dire.
words-sound-not-stored = Durée : { $seconds } s. Son fichier son n’est pas gardé ici.
words-sound-not-stored-lufs = Durée : { $seconds } s, sonie { $lufs } LUFS. Son fichier son n’est pas gardé ici.
words-sound-unreadable = Son son ne peut être lu : { $why }.
words-no-such-recording = Il n’y a pas d’enregistrement de ce nom ici.
words-picture-told = Forme d’onde et, dessous, la force de chaque hauteur au fil du temps
words-picture-label = Image de l’enregistrement, long de { $seconds } secondes
words-stage-means = { $stage ->
    [prepare] on fixe la fiche, l’enregistrement et la place ; on ne montre pas encore
    [show] les personnes appuient, disent et donnent ; rien n’est demandé
    [invite] une offre, une attente, puis on montre et on donne quand même
   *[converse] { $name } appuie sans qu’on le demande ; tout le monde répond
}
words-stage-with = Étape avec { $name }
words-stage-now = Maintenant : { $stage }, { $means }.
words-figures-agree = Les chiffres indiquent la même chose.
words-figures-differ = Les chiffres indiquent { $stage } : { $means }.
words-figures-behind = Pourquoi
words-because = Parce que :
words-would-change = Ce qui le changerait :
words-fact-shown = Montré
words-fact-shown-times = { $times ->
    [0] pas encore
    [1] une fois
   *[other] { $times } fois
}{ $week ->
    [0] , pas dans les sept derniers jours
    [1] , une fois dans les sept derniers jours
   *[other] , { $week } fois dans les sept derniers jours
}
words-fact-delay = De l’appui au don
words-fact-response = Appuyé à l’invitation, quand c’était voulu
words-fact-own = Appuis spontanés en 28 jours
words-never-counted = Ne pas appuyer ne compte jamais comme ne pas comprendre.
words-work-at = Travailler ce mot comme
words-back-no-loss = Revenir d’une étape n’est pas une perte.
words-stage-why = Pourquoi
words-stage-why-hint = si tu veux
words-stage-set = Fixer l’étape
