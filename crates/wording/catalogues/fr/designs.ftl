designs-title = Un changement aide-t-il ?
designs-no-such = Ce carnet ne connaît pas un tel test de cet animal.
designs-cannot-draw = L’ordre de ce test ne peut pas être tiré de son plan : { $why }.
designs-design = { $design ->
    [reversal] Aller et retour, quelques jours chacun (retrait, ABAB)
    [multiple_baseline] L’un après l’autre (lignes de base multiples)
    [alternating_treatments] En alternance rapide (traitements alternés)
   *[changing_criterion] Pas à pas (critère changeant)
}
designs-from-a-day = À partir d’un jour tiré au sort (AB, début tiré)
designs-question = { $question ->
    [quieter_button] Un bouton moins fort aide-t-il ?
    [new_place] Une nouvelle place aide-t-elle ?
    [faster_delivery] Donner plus vite aide-t-il ?
    [another_word] Un autre mot aide-t-il ?
   *[other] Un changement aide-t-il ?
}
designs-question-own = Cela aide-t-il : { $label } ?
designs-question-word = Un autre mot aide-t-il : « { $label } » ?
designs-with = { $question ->
    [quieter_button] avec le bouton moins fort
    [new_place] avec la nouvelle place
    [faster_delivery] en donnant plus vite
    [another_word] avec l’autre mot
   *[other] avec le changement
}
designs-with-own = avec ceci : { $label }
designs-as-usual = comme d’habitude
designs-measure = { $measure ->
    [own_presses] Appuis spontanés
    [joined_share] Part des séances avec participation
    [time_to_press] Secondes jusqu’à l’appui, sur invitation et avec envie
    [pressed_share] Part des appuis, sur invitation et avec envie
    [stress_signs] Signes de stress
   *[delivery_delay] Secondes de l’appui à la remise
}
designs-unit = { $unit ->
    [session] séance
   *[day] jour
}
designs-meets = satisfait aux critères
designs-meets-with-reservations = satisfait aux critères avec réserves
designs-does-not-meet = ne satisfait pas aux critères
designs-phase-usual = habituel
designs-phase-usual-turn = habituel { $turn }
designs-phase-changed = changé
designs-phase-changed-turn = changé { $turn }
designs-phase-goal = but { $seconds } s
designs-changed-against-usual = changé contre habituel
designs-one-after-other = { $after } après { $before }
designs-not-drawn-before = l’ordre n’a pas été tiré avant le premier point, ou le plan a été modifié ensuite
designs-was-stopped = le test a été arrêté avant sa fin
designs-not-finished = le test n’est pas terminé
designs-too-short = { $points ->
    [1] un point ne suffit pas à ce plan ; il en faut au moins { $needed }
   *[other] { $points } points ne suffisent pas à ce plan ; il en faut au moins { $needed }
}
designs-empty-condition = une condition n’a encore aucune observation, il n’y a donc rien à comparer
designs-no-figure = pas de chiffre pour cette phase : trop peu de points, ou tous au même moment
designs-other-condition = { $points ->
    [1] 1 point avec une autre condition que celle tirée ; l’analyse suit le tirage.
   *[other] { $points } points avec une autre condition que celle tirée ; l’analyse suit le tirage.
}
designs-drawn-late = L’ordre n’a pas été tiré avant le premier point, ou le plan a été modifié ensuite.
designs-more-than = plus de { $number }
designs-percentage-points = { $value } points de pourcentage
designs-a-session = { $value } par séance
designs-not-yet = Il commence le { $day } ; jusque-là, tout reste comme d’habitude.
designs-running = Points passés : { $done } sur { $points }. Rien n’est affirmé avant la fin.
designs-strong-sign = Arrêté : un signe de stress fort a été vu le { $day } pendant que le changement était en vigueur. Tout redevient comme d’habitude ; rien n’est affirmé en faveur du changement.
designs-stopped = { $reason ->
    [strong_sign] Arrêté le { $day } : un signe de stress fort. Rien n’est analysé, car un test qui peut finir à tout moment peut finir pendant qu’il est en tête.
    [not_good] Arrêté le { $day } : le changement ne faisait pas de bien. Rien n’est analysé, car un test qui peut finir à tout moment peut finir pendant qu’il est en tête.
    [not_kept] Arrêté le { $day } : il n’a pas pu être tenu. Rien n’est analysé, car un test qui peut finir à tout moment peut finir pendant qu’il est en tête.
   *[other] Arrêté le { $day } : une autre raison. Rien n’est analysé, car un test qui peut finir à tout moment peut finir pendant qu’il est en tête.
}
designs-untested = Terminé, mais rien ne peut être analysé : { $why }. Les chiffres ne font que décrire ces points.
designs-seen = { $measure } : { $amount } de { $way ->
    [higher] plus
   *[lower] moins
    } { $with } ({ $usual } points habituels et { $changed } changés). Avec un ordre tiré au hasard, une différence aussi grande se produit dans { $exact ->
    [yes] { $extreme } des { $orders } ordres possibles ({ $p }).
   *[no] { $extreme } des { $orders } ordres tirés de nouveau ({ $p }).
}
designs-seen-goal = { $points ->
    [1] Les personnes sont restées à { $seconds } s du but (un point).
   *[other] Les personnes sont restées en moyenne à { $seconds } s du but ({ $points } points).
    } Avec des paliers tirés au hasard, un accord aussi bon se produit dans { $exact ->
    [yes] { $extreme } des { $orders } ordres possibles ({ $p }).
   *[no] { $extreme } des { $orders } ordres tirés de nouveau ({ $p }).
}
designs-too-few-orders = { $orders ->
    [1] Avec un seul ordre possible, ce test ne pourrait distinguer aucun effet du hasard.
   *[other] Avec seulement { $orders } ordres possibles, ce test ne pourrait distinguer aucun effet du hasard.
}
designs-rare = Ce serait rare si le changement ne faisait rien : cela parle pour un effet, avec { $name }, pendant ces semaines.
designs-rare-goals = Ce serait rare si les buts ne faisaient rien : cela parle pour un effet, avec { $name }, pendant ces semaines.
designs-may-be-chance = Cela peut donc bien être le hasard. Cela ne montre pas que le changement ne fait rien.
designs-weak = Le plan lui-même est trop petit selon les critères du domaine ; prends-le comme un indice.
designs-change-again = Le même test encore une fois, prévu de nouveau, par d’autres personnes ou pendant d’autres semaines.
designs-change-gentler = Rien de ce test ; un changement plus doux, prévu de nouveau.
designs-change-points = Les points encore à venir.
designs-change-by-hand = Un micro entend moins bien les appuis sur un bouton moins fort : note-les à la main pendant ce test.
designs-intro = Un bouton moins fort, une nouvelle place, donner plus vite : cela aide-t-il { $name } ? Un test (un plan à cas unique, dans le métier) laisse le hasard décider quand le changement est en vigueur, et compare.
designs-none-today = Pas de nouveau test aujourd’hui : des signes de stress forts ont été notés. Laisse de l’espace ; tout comme d’habitude.
designs-plan = Prévoir un test
designs-so-far = Tests jusqu’ici
designs-none = Aucun pour l’instant.
designs-open = Ouvrir
designs-undrawable = ne peut pas être tiré
designs-begins = commence le { $day }
designs-going-on = en cours
designs-finished = terminé
designs-stopped-on = arrêté le { $day }
designs-ended-by-sign = terminé par un signe de stress fort le { $day }
designs-checks = Les vérifications de la compréhension posent une autre question : { $link }.
designs-checks-link = Vérifications
designs-how = Comment les tests sont tirés et analysés
designs-kindly = { $lead } On ne change que l’entourage et ce que font les personnes : { $name } peut partir à tout moment, rien de ce que { $name } demande n’est retenu, et aucun jour n’a besoin d’un appui. Un signe de stress fort pendant le changement met fin au test. N’essaie rien qui fasse mal, effraie ou prive ; demande à un vétérinaire ou à un professionnel qualifié du comportement en cas de doute.
designs-kindly-lead = Un test est là pour { $name }, pas l’inverse.
designs-not-as-planned = Pas comme prévu :
designs-the-plan = Le plan
designs-all = Tous les tests
designs-today = Aujourd’hui
designs-of-lane = { $lane } :
designs-rest = Repos aujourd’hui, tout comme d’habitude : des signes de stress forts ont été notés. Laisse de l’espace et n’attire pas de nouveau.
designs-everything-usual = Tout comme d’habitude.
designs-now = { $unit ->
    [session] Cette séance ou la prochaine (point { $point } sur { $points }) : { $what }
   *[day] Aujourd’hui (point { $point } sur { $points }) : { $what }
}
designs-deliver-within = donner en { $seconds } s au plus
designs-later-hidden = Les jours suivants ne sont pas montrés, exprès : les connaître change ce que font les personnes. Réponds à chaque appui comme toujours.
designs-fact-design = Plan
designs-fact-measured = Mesuré
designs-measured = { $unit ->
    [session] { $measure }, chaque séance : { $words }
   *[day] { $measure }, chaque jour : { $words }
}
designs-all-words = tous les mots
designs-fact-expected = Attendu
designs-expected = { $expected ->
    [more] plus
    [less] moins
   *[either] dans un sens ou dans l’autre
}
designs-fact-first = Premier jour, points
designs-first = { $points ->
    [1] { $day }, un point
   *[other] { $day }, { $points } points
}
designs-fact-orders = Ordres possibles
designs-planned-on = Prévu le { $day } ; l’ordre découle d’une graine tirée ce jour-là.
designs-other-in-force = Autre chose que le tirage était en vigueur ?
designs-this-trial = ce test
designs-field-lane = Où
designs-field-point = Point
designs-field-point-hint = compté à partir de 1
designs-field-in-force = Était en vigueur
designs-with-the-change = avec le changement
designs-field-because = Pourquoi
designs-may-be-left-out = peut rester vide
designs-note-it = Noter
designs-honest-note = L’analyse suit l’ordre tiré, donc une note honnête ne la gâche jamais ; la page dit combien de points différaient.
designs-stop = Arrêter
designs-reason = { $reason ->
    [strong_sign] un signe de stress fort
    [not_good] le changement ne fait pas de bien
    [not_kept] il ne peut pas être tenu
   *[other] une autre raison
}
designs-field-in-words = En mots
designs-stop-now = Arrêter ce test maintenant
designs-stop-right = Dans le doute, arrêter est toujours juste. Remets tout comme avant ; ce qui est noté est gardé.
designs-plan-title = Prévoir un test d’un changement
designs-not-today = Pas aujourd’hui : des signes de stress forts ont été notés. Laisse de l’espace à { $name } et prévois-le un jour calme.
designs-back = Retour aux tests
designs-why = Un changement et une meilleure semaine tombent souvent ensemble par accident. Quand le hasard décide des jours où le changement est en vigueur, on peut comparer la différence à tous les ordres qui auraient pu être tirés.
designs-change = { $question ->
    [quieter_button] Un bouton moins fort
    [new_place] Une nouvelle place
    [faster_delivery] Donner plus vite
    [another_word] Un autre mot
   *[other] Autre chose
}
designs-proposed-for = proposé : { $design }
designs-the-proposed = celui proposé
designs-expect = { $expected ->
    [more] plus
    [less] moins
   *[either] dans un sens ou dans l’autre
}
designs-expect-either-hint = demande plus de points
designs-point-unit = { $unit ->
    [session] une séance
   *[day] un jour
}
designs-point-session-hint = pour montrer ou inviter
designs-field-question = Ce qui change
designs-field-question-hint = une seule chose ; tout le reste demeure tel quel
designs-field-label = Autre chose : quoi
designs-field-label-hint = seulement pour « autre chose »
designs-field-measure = Ce qui est mesuré
designs-field-measure-hint = à choisir avant le début ; c’est lu dans ce que tu notes de toute façon
designs-field-expected = Ce que tu en attends
designs-field-expected-hint = dit maintenant, pour que le résultat ne puisse pas choisir
designs-field-words = Mots
designs-field-words-hint = aucun coché : tous. L’un après l’autre : chaque mot coché est une série ; 3 satisfont aux critères
designs-field-unit = Un point est
designs-field-first = Premier jour
designs-field-first-hint = demain ou plus tard, pour des jours
designs-field-points = Points en tout
designs-field-points-hint = jours ou séances ; 120 au plus
designs-numbers = Le plan et ses nombres
designs-field-design = Plan
designs-field-least = Points par phase, au moins
designs-field-least-hint = 5 satisfont aux critères, 3 avec réserves
designs-field-phases = Phases
designs-field-phases-hint = aller et retour, et pas à pas : 4 ou plus
designs-field-apart = Points entre deux changements
designs-field-apart-hint = l’un après l’autre : au moins autant
designs-field-animals = Animaux
designs-field-animals-hint = l’un après l’autre entre animaux plutôt qu’entre mots
designs-field-criteria = Buts pour les personnes, en secondes
designs-field-criteria-hint = pas à pas : un par phase après la première, comme 6 ; 4 ; 2,5. On ne fixe jamais de but à un animal
designs-see = Voir ce qu’il peut montrer
designs-proposed = Proposé : { $design }
designs-your-choice = Ton choix : { $design }
designs-because = { $question ->
    [quieter_button] Parce qu’on peut baisser le son et le remonter, et qu’un animal a besoin de quelques jours pour s’habituer à chaque état.
    [new_place] Parce que déplacer un bouton d’avant en arrière troublerait : chaque mot se déplace une fois, l’un après l’autre.
    [faster_delivery] Parce que les personnes peuvent donner tout de suite un jour et comme toujours le lendemain, et que l’effet va et vient vite.
    [another_word] Parce qu’un mot reste une fois qu’il est là : prends deux phases, ainsi seul son premier jour est tiré.
   *[other] Parce que c’est juste là où le changement peut être retiré ; sinon, prends « l’un après l’autre ».
}
designs-usual-here = L’habitude pour cette question : { $design }.
designs-undrawn = Cela ne peut pas être tiré : { $why }.
designs-orders = { $orders } ordres possibles ; l’un d’eux est tiré au hasard quand tu valides. Tu ne vois que la condition du jour.
designs-smallest-p = Le plus petit p possible est { $p }.
designs-fewer-than-20 = Avec moins de 20 ordres, on ne descend jamais sous { $level } : prends plus de points, ou moins dans chaque phase.
designs-verdict-ahead = Avec tous ses points, il { $verdict } ({ $chances ->
    [0] aucune occasion
    [1] une occasion
   *[other] { $chances } occasions
} de montrer un effet, au moins { $fewest ->
    [1] un point
   *[other] { $fewest } points
} chacune ; Kratochwill et al. 2010).
designs-plan-and-draw = Valider et tirer l’ordre
designs-figures = Chiffres jusqu’ici
designs-not-finished-yet = Pas terminé : rien n’est affirmé à partir de ces chiffres, et les regarder donne envie d’arrêter. L’analyse se fait à la fin.
designs-came-out = Ce qui en est sorti
designs-would-change = Ce qui changerait cela : { $what }
designs-about-one = Cela ne concerne que { $name }. Cela ne dit rien d’autres animaux.
designs-no-test = Pas d’analyse : { $why }.
designs-difference = Différence, changé moins habituel
designs-difference-none = { $points ->
    [1] { $value } (pas d’intervalle à 95 % : trop peu d’ordres ; un point)
   *[other] { $value } (pas d’intervalle à 95 % : trop peu d’ordres ; { $points } points)
}
designs-difference-interval = { $points ->
    [1] { $value } (intervalle à 95 % : { $low } à { $high }, un point)
   *[other] { $value } (intervalle à 95 % : { $low } à { $high }, { $points } points)
}
designs-open-end = ouvert
designs-distance = Écart moyen au but
designs-extreme = Ordres aussi extrêmes
designs-extreme-of = { $exact ->
    [yes] { $extreme } sur { $orders }, tous comptés
   *[no] { $extreme } sur { $orders }, tirés de nouveau
}
designs-orders-left-out = Ordres écartés
designs-orders-undefined = { $orders } (des points manquants auraient laissé une condition vide)
designs-verdict = Le plan { $verdict } : { $chances ->
    [0] aucune occasion
    [1] une occasion
   *[other] { $chances } occasions
} de montrer un effet (3 souhaitées), au moins { $fewest ->
    [1] un point observé
   *[other] { $fewest } points observés
} chacune (5 souhaités, 3 avec réserves ; Kratochwill et al. 2010).
designs-missing = { $missing ->
    [1] 1 des { $points } points passés n’a pas de valeur : rien n’a été noté d’où lire cette mesure. Il est laissé de côté, pas compté comme zéro.
   *[other] { $missing } des { $points } points passés n’ont pas de valeur : rien n’a été noté d’où lire cette mesure. Ils sont laissés de côté, pas comptés comme zéro.
}
designs-no-point = Encore aucun point.
designs-chart = { $unit ->
    [session] { $measure }, par séance
   *[day] { $measure }, par jour
}
designs-chart-told = { $question } { $phases }.
designs-chart-read = Points creux : comme d’habitude (A). Points pleins : avec le changement (B). Lignes tiretées : la phase a changé. Trous : valeur manquante.
designs-mean = moyenne : { $mean }
designs-independent = Les intervalles des moyennes, du NAP, du niveau et de la tendance prennent les points pour indépendants, ce que les jours d’un animal ne sont pas tout à fait. L’analyse ci-dessus ne repose pas là-dessus.
designs-times-a-week = célération × { $factor } par semaine
designs-divided-a-week = célération ÷ { $factor } par semaine
designs-weekly = { $turn } (intervalle à 90 % : × { $low } à × { $high }, n = { $n })
designs-weekly-no-interval = { $turn } (pas encore d’intervalle, n = { $n })
designs-nap = NAP (paires où le changement a fait mieux)
designs-nap-value = { $share } (intervalle à 90 % : { $low } à { $high }, n = { $usual } et { $changed })
designs-tau = Tau-U (moins la tendance d’avant)
designs-tau-value = { $share } ({ $p }, n = { $usual } et { $changed } ; aucun intervalle n’est publié)
designs-level = Saut du niveau
designs-trend = Changement de la tendance, par jour
designs-change-value = { $value } (intervalle à 95 % : { $low } à { $high })
designs-change-value-no-interval = { $value } (pas encore d’intervalle)
designs-small = { $way ->
    [once] Un test de { $days } jours : le jour à partir duquel cela vaut est tiré au sort.
    [back] Un test de { $days } jours, aller et retour : les jours sont tirés au sort.
   *[turn] Un test de { $days } jours, jour par jour : lesquels est tiré au sort.
}
designs-measured-by = { $measure } ({ $words }) ; attendu : { $expected ->
    [more] plus
    [less] moins
   *[either] plus ou moins
}

# Deux tests à la fois.
designs-beside-planned = Un autre test mesure la même chose les mêmes jours ({ $measure }) :
designs-beside-going = Les jours à venir, un autre test mesure ceci ({ $measure }) :
designs-beside-kept = Certains des mêmes jours, un autre test a mesuré la même chose ({ $measure }) :
designs-beside-plan = Un test d’un changement a lieu les mêmes jours que ce plan :
designs-beside-agreed = Un plan est convenu pour des jours où l’on essaierait cela :
designs-beside-agreed-wait = Avec deux changements à la fois, on ne peut les distinguer : une différence peut venir de l’un ou de l’autre. Commence après le dernier jour du plan. Ou accepte-le.
designs-beside-days = { $question } { $first } au { $last }
designs-beside-sessions = { $question } Depuis le { $first }, jusqu’à la fin de ses séances
designs-beside-wait = Avec deux changements à la fois, on ne peut pas distinguer l’un de l’autre : une différence peut venir de chacun. Attends la fin de l’autre et commence le { $day } ou plus tard. Ou accepte-le.
designs-beside-wait-sessions = Avec deux changements à la fois, on ne peut pas distinguer l’un de l’autre : une différence peut venir de chacun. Attends la fin de l’autre. Ou accepte-le.
designs-beside-read = On ne peut pas distinguer l’un de l’autre : ce qui est dit ici d’un changement peut venir de l’autre. L’un d’eux encore une fois, seul, pourrait en dire plus.
