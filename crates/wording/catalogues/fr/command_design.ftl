command-design-listed = { $id }  { $question }  { $design }, { $points ->
    [one] { $points } point
   *[other] { $points } points
} à partir du { $first }
command-design-stopped = Arrêté. Remets tout comme avant.
command-design-no-trial = le carnet ne connaît aucun essai { $id } ; voir `sayso design list`
command-design-not-drawn = l’ordre de cet essai ne se laisse pas tirer de son plan : { $why }
command-design-heading = { $question } { $design } ; { $measure } { $unit ->
    [day] chaque jour
   *[session] à chaque séance
}
command-design-now = maintenant : { $what }
command-design-rest = repos, tout comme d’habitude ; de forts signes de stress ont été notés
command-design-nothing = tout comme d’habitude
command-design-within = donner en moins de { $seconds } s
command-design-usual = comme d’habitude
command-design-point = point { $point } sur { $of } : { $what }
command-design-departure = pas comme prévu : { $what }
command-design-so-far = chiffres à ce jour ; rien n’en est affirmé, et regarder pousse à arrêter :
command-design-no-test = pas de test : { $why }
command-design-open-end = ouvert
command-design-difference = différence, changé moins habituel : { $value } (intervalle à 95 % de { $low } à { $high }, n = { $n } points)
command-design-distance = écart moyen à l’objectif : { $seconds }
command-design-orders = ordres aussi extrêmes : { $extreme } sur { $of } ; { $p }
command-design-standards = le plan { $verdict } : occasions de montrer un effet : { $chances }, au moins { $fewest ->
    [one] { $fewest } point
   *[other] { $fewest } points
} chacune
command-design-missing = points passés sans valeur : { $n } sur { $of }
command-design-mean = moyenne : { $mean }
command-design-nap = { $name } : NAP { $nap } (intervalle à 90 % de { $low } à { $high }, n = { $n_a } et { $n_b }), Tau-U { $tau } ({ $p })
command-design-which-animal = dis quel animal avec --animal
command-design-not-today = pas aujourd’hui : de forts signes de stress ont été notés ; laisse de la place et prévois-le un jour calme
command-design-too-soon = --first doit être { $day } ou plus tard : l’ordre est tiré avant que cela commence
command-design-no-random = cette machine ne donne pas de nombres aléatoires : { $why }
command-design-planned = Prévu : { $id }
command-design-about = Il s’agit de { $name }, et non l’inverse : { $name } peut partir à tout moment, et un fort signe de stress met fin à l’essai.
command-design-see = Vois ce qui vaut chaque jour avec `sayso design show { $id }`.
