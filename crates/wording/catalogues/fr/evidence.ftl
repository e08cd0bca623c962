evidence-title = Preuves
evidence-of-word = Preuves : { $word }
evidence-no-words = Pas encore de mots. { $link }.
evidence-choose-words = Choisir les premiers mots
evidence-picture = Ce qu’on peut dire des mots de { $name }
evidence-picture-told = { $claimed ->
    [0] D’aucun on ne peut encore dire plus que ce que le hasard explique.
   *[other] { $claimed ->
        [one] { $claimed } mot dépasse ce que le hasard explique.
       *[other] { $claimed } mots dépassent ce que le hasard explique.
    }
} Ne pas appuyer n’est jamais lu comme ne pas comprendre.
evidence-rung = { $rung ->
    [nothing] On ne peut encore rien dire
    [chance] Conforme au hasard jusqu’ici
    [differs] Les appuis suivent l’appel
    [open] Passe une vérification ouverte
   *[other] Résiste à une vérification en aveugle
}
evidence-step = Échelon { $step } sur { $steps }
evidence-behind = { $n ->
    [one] d’après { $n } essai tiré au sort
   *[other] d’après { $n } essais tirés au sort
}
evidence-behind-nothing = rien tiré au sort, { $shown ->
    [0] pas montré non plus
    [1] montré une fois
   *[other] montré { $shown } fois
}
evidence-trend = Appuis spontanés par semaine sur huit semaines, la plus ancienne d’abord : { $list }
evidence-trend-before = pas encore là
evidence-this-week = { $n } en sept jours
evidence-legend = Échelons : jusqu’où portent les relevés ; un échelon plein est atteint. Petites barres : appuis spontanés par semaine sur huit semaines, chaque mot à son échelle, les sept derniers jours en dernier ; un point est une semaine sans, un vide précède l’arrivée du mot.
evidence-how-to-climb = Ce que veulent dire les échelons
evidence-step-1 = 1. Le carnet a tiré quelque chose au sort, et le résultat est conforme au hasard.
evidence-step-2 = 2. Dans les séries tirées par le carnet, les appuis suivent ce qui était appelé.
evidence-step-3 = 3. Dans des vérifications prévues, { $name } a raison plus que le hasard ne le permet, mais quelqu’un connaissait la réponse.
evidence-step-4 = 4. De même en aveugle : personne à côté ne connaissait la réponse.
evidence-step-rule = Tous les mots d’un animal sont jugés ensemble, pour que beaucoup de mots et de lectures ne finissent pas en fausse affirmation.
evidence-climb-round = Une série tirée par le carnet, sur le tableau, est le premier pas.
evidence-checks = Vérifications prévues de la compréhension
evidence-trials = Un changement aide-t-il ? Essais d’un changement
evidence-two-people = Deux personnes voient-elles la même chose ?
evidence-compared = Appuyé et juste, mot à côté de mot
evidence-pressed-of-wanted = Appuyé, quand { $name } voulait la chose
evidence-pressed-told = Pour chaque mot, la part d’invitations avec un appui sur un bouton quelconque, parmi celles où { $name } voulait la chose, avec intervalles à 95 %.
evidence-share-pressed = part appuyée
evidence-right-of-presses = Juste, parmi les appuis
evidence-right-told = Pour chaque mot, la part des appuis à ses invitations qui étaient ce mot, avec intervalles à 95 %. Qui appuie au hasard appuie autant qu’un autre, et a raison par hasard.
evidence-share-right = part juste
evidence-chance-line = Trait vertical : le hasard, un sur { $words }. Les mots à moins de cinq essais sont omis. Les intervalles valent à tout moment.
evidence-no-such-word = { $name } n’apprend pas ce mot.
evidence-sentence-shown = { $times ->
    [0] Pas encore montré
    [1] Montré une fois
   *[other] Montré { $times } fois
} ; on ne peut encore rien dire de ce que « { $word } » veut dire pour { $name }.
evidence-sentence-own = { $name } a appuyé sur « { $word } » { $times ->
    [1] une fois
   *[other] { $times } fois
} spontanément en quatre semaines ; sans invitations ni vérification, cela seul ne dit pas ce que veut dire le mot.
evidence-sentence-invited = { $wanted ->
    [0] Aucune invitation ne compte encore où { $name } voulait la chose.
   *[other] Invité quand la chose était voulue, { $name } a appuyé sur un bouton { $pressed } fois sur { $wanted }.
} { $presses ->
    [0] Encore aucun appui à une invitation de « { $word } ».
   *[other] Sur { $presses ->
        [1] { $presses } appui
       *[other] { $presses } appuis
    } aux invitations de « { $word } », { $right } { $right ->
        [1] était ce mot
       *[other] étaient ce mot
    } : { $above ->
        [few] trop tôt pour le dire
        [yes] plus que le hasard
        [chosen] plus que n’en ferait le hasard, mais le choix des moments peut l’expliquer
       *[other] pas plus que le hasard jusqu’ici
    }.
}
evidence-presses-more = { $more ->
    [1] Un de ces { $presses } appuis est venu quand { $name } ne voulait pas la chose, ou personne ne l’a noté : il n’est pas parmi les { $wanted }.
   *[other] { $more } de ces { $presses } appuis sont venus quand { $name } ne voulait pas la chose, ou personne ne l’a noté : ils ne sont pas parmi les { $wanted }.
}
evidence-stage = Étape : { $stage }
evidence-figures-point = Les chiffres indiquent { $stage }.
evidence-invitations = Invitations
evidence-no-curve = Courbe d’apprentissage : { $why }.
evidence-waiting = Temps jusqu’à l’appui, la valeur du milieu : { $median }. Les invitations sans appui comptent jusqu’à la fin de l’attente (Kaplan–Meier).
evidence-waiting-open = pas atteinte : trop peu ont eu un appui pendant l’attente ({ $n ->
    [one] { $n } invitation
   *[other] { $n } invitations
})
evidence-showings-presses = Démonstrations et appuis spontanés
evidence-showings-a-day = Démonstrations par jour
evidence-showings = démonstrations
evidence-presses-a-day = Appuis spontanés par jour
evidence-presses = appuis
evidence-by-day-told = { $n } en tout ; { $began ->
    [before] les six dernières semaines par jour.
   *[other] par jour, depuis le premier relevé du mot, le { $began }.
}
evidence-day-axis = jour (lundis datés)
evidence-delivered = Donné après l’appui (valeur médiane) : { $delay }.
evidence-then = Ce que { $name } a fait ensuite
evidence-uptake = A pris ce qui était donné pour ce mot : { $this } ; pour les autres mots : { $others }.
evidence-fisher = Test exact de Fisher, bilatéral : { $p }.
evidence-left-out = { $n ->
    [1] { $n } appui qui semblait un faux pas est laissé de côté.
   *[other] { $n } appuis qui semblaient un faux pas sont laissés de côté.
}
evidence-stumbles = Appuis spontanés semblant un faux pas, parmi ceux jugés : { $share }.
evidence-causes = Si cela n’avance pas : ce qui peut être derrière
evidence-how-computed = Comment ces chiffres sont calculés
evidence-may-be-said = Ce qu’on peut dire
evidence-claim = « { $word } », { $what } : { $said }.
evidence-fidelity = Enseignement comme convenu, donné en { $seconds } après l’appui : { $share }.
evidence-claim-animal = { $name } : { $said }.
evidence-not-ruled-out = Ce qui peut l’expliquer autrement :
evidence-made-unlikely = Ce qui a été fait face aux autres explications, et ce qui reste de chacune :
evidence-rival = { $rival } ({ $standing })
evidence-plan-check = Prévoir une vérification
evidence-behind-it = Ce qui est derrière
evidence-nothing-drawn = Rien n’a encore été tiré au sort. Ce qu’une personne a choisi d’inviter ou de donner peut suggérer quelque chose ; cela ne prouve rien, car un choix suit l’heure et l’espoir.
evidence-a-bet = La preuve est ce qu’un pari contre le hasard serait devenu ; elle peut être lue à tout moment. Tous les mots d’un animal sont jugés ensemble.
evidence-elsewhere = Cela tient-il ailleurs ?
evidence-settings = Les deux chiffres dans des cadres différents
evidence-compared-what = Comparé
evidence-which = Lequel
evidence-settings-note = Après le déplacement d’un bouton, une habitude de place va à l’ancienne place : les appuis justes baissent. De petits nombres disent peu ; aucune ligne seule ne prouve rien.
evidence-k-of-n = { $k } sur { $n } – { $figure }
evidence-chance = Hasard
evidence-chance-even = un mot sur { $words } ferait { $share }
evidence-chance-habit = un mot sur { $words } ferait { $share } ; quand d’autres sont invités, celui-ci est pressé dans { $elsewhere }
evidence-above-chance = { $above ->
    [yes] Jusqu’ici plus que le hasard.
    [chosen] Plus que le hasard lors d’invitations dont une personne a pu choisir le moment. Cela aide à choisir l’étape suivante ; ce qu’on peut dire repose sur ce qui a été tiré au sort, et demande plus.
   *[other] Jusqu’ici pas plus que le hasard.
}
evidence-without-button = La voulait : demandée sans bouton
evidence-not-wanted = Ne la voulait pas alors, ou est parti
evidence-not-counted = { $n } (non comptés)
evidence-unrecorded = Non noté si elle a été prise
evidence-not-counted-wanted = { $n } (non comptés comme voulus)
evidence-curve = Courbe d’apprentissage
evidence-curve-told = Part de justes d’appui en appui, et de combien elle peut s’écarter ({ $n ->
    [1] { $n } appui
   *[other] { $n } appuis
}). Si c’est plus que le hasard se juge une seule fois, sous « Ce qu’on peut dire ».
evidence-curve-few = { $n ->
    [0] Courbe d’apprentissage : encore aucun appui à une invitation.
   *[other] Courbe d’apprentissage : trop peu d’appuis ({ $n ->
        [one] { $n } appui
       *[other] { $n } appuis
    }).
}
evidence-press-axis = appui à une invitation
evidence-band = bande à 95 %
evidence-after = { $after ->
    [after] Après
    [given] donné
    [declined] pas maintenant
    [took] pris
    [ignored] ignoré
    [left] parti
    [again] encore
   *[other] pas vu
}
evidence-after-region = Ce que { $name } a fait après les réponses
evidence-answers = Appuis spontanés répondus : { $parts }. Une réponse compte pour l’appui auquel elle est notée si leurs heures sont à moins de trois jours ; sans appui, pour le dernier de son mot dans les deux minutes précédentes.
evidence-answer-times = { $answer ->
    [given] donné
    [partly] donné en partie
    [declined] « pas maintenant »
    [alternative] autre chose
   *[other] manqué ou non noté
} { $times ->
    [1] une fois
   *[other] { $times } fois
}
evidence-step-on-today = L’unique étape qui en découle est sur Aujourd’hui
