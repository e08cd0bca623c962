days-title = Jours
days-how-many = Combien de jours
days-length = { $n } jours
days-length-wrong = days doit être l’un de { $allowed }, non { $given }.
days-calendar = Semaines de { $name }
days-week-of = Semaine du { $day }
days-week = Semaine
days-cell = { $day } : { $presses ->
    [one] { $presses } appui spontané
   *[other] { $presses } appuis spontanés
}{ $sessions ->
    [0] , pas de séance
   *[other] , séances rejointes : { $joined } sur { $sessions }
}{ $signs ->
    [none] { "" }
    [mild] , signes légers de stress
   *[other] , signe fort de stress
}
days-legend = Nombre : appuis spontanés. ● séance rejointe, ○ séance tenue, non rejointe. ! signes légers de stress, !! un signe fort. Un jour ouvre son journal.
days-earlier = Semaines précédentes
days-side-by-side = Côte à côte
days-mini-presses = Appuis spontanés
days-mini-showings = Démonstrations
days-mini-joined = Séances rejointes, par semaine
days-mini-delay = De l’appui au don, par semaine
days-mini-hours = Par heure
days-mini-weekdays = Par jour de la semaine
days-told-presses = { $n } en { $days } jours
days-told-showings = { $n } en { $days } jours{ $without ->
    [0] { "" }
   *[other] , { $without } sans
}
days-told-joined = { $joined } sur { $sessions }
days-no-sessions = aucune séance
days-told-delay = { $seconds } ces sept derniers jours
days-too-few = trop peu pour dire
days-stands-out = plus : { $which }
days-quiet = moins : { $which }
days-none-stands-out = rien ne se détache
days-figures-hours = Appuis spontanés par heure
days-figures-weekdays = Appuis spontanés par jour de la semaine
days-hour-axis = heure du jour
days-weekday-axis = jour de la semaine
days-presses-a-day = appuis par jour
days-no-presses = Aucun appui spontané sur cette période.
days-too-few-presses = Trop peu d’appuis spontanés pour comparer ({ $n ->
    [one] { $n } appui
   *[other] { $n } appuis
}).
days-most = Le plus : { $which }, { $rate } ; { $n } appuis spontanés en tout.
days-outstanding = { $which } se détache : { $ratio } fois les autres ({ $p } ajusté).
days-asleep = Les heures où personne n’a jamais noté d’appui comptent comme sommeil ou absence : elles ne sont pas un résultat, et aucune autre heure ne leur est comparée.
days-trust = { $bursts ->
    [yes] Les appuis viennent par rafales, ou selon les bons et mauvais jours : les nombres varient { $times } fois plus que ceux d’appuis isolés. Ces intervalles, et ce qui se détache, en tiennent compte.
   *[other] Les appuis viennent un par un : les nombres varient { $times } fois autant que par le seul hasard.
}
days-weeks-by-week = Semaine par semaine
days-joined-told = Séances rejointes ces sept derniers jours : { $share }.
days-sessions-joined = Séances rejointes
days-joined = rejointes
days-weeks-axis = semaines avant aujourd’hui
days-delay = De l’appui au don
days-delay-told = De l’appui au don, valeur médiane des sept derniers jours : { $seconds }.
days-seconds = secondes
days-when-invited = Temps jusqu’à l’appui après invitation
days-answers = Réponses aux appuis spontanés
days-answer = { $answer ->
    [given] Donné
    [partly] En partie
    [declined] Pas maintenant
    [alternative] Autre chose proposée
   *[other] Manqué, ou non noté
}
days-day-by-day = Jour par jour
days-day = Jour
days-shown = Montré
days-pressed = Appuyé spontanément
days-zone = Jours et heures sont ceux de { $zone }. { $link }.
days-all-events = Tous les événements
days-patterns = Motifs : les appuis augmentent-ils ou baissent-ils, qu’est-ce qui suit quoi, dérapages, préférences selon l’heure
days-readiness = Disposition
days-readiness-told = À la dernière séance, { $name } était le plus probablement { $state ->
    [away] ailleurs
    [warming] en train de s’y mettre
   *[other] prêt
} ; probabilité de « prêt » : { $share }.
days-readiness-open = On ne peut pas encore dire si { $name } était prêt à la dernière séance ; probabilité de « prêt » : { $share }.
days-readiness-title = Probabilité d’être prêt, par séance
days-readiness-from = D’après la participation, le temps pour venir et les signes ensemble (modèle à états cachés).
days-session-axis = séance, la plus ancienne d’abord
days-ready = prêt
days-demand = Demande
days-no-demand = Aucun appui spontané sur cette période : rien ne peut être dit de la demande.
days-stretches = Périodes où { $name } a appuyé à un rythme régulier :
days-stretch = du { $first } au { $last } : { $rate }
days-bursts = Accès des quatre dernières semaines, plus rapides que d’habitude.
days-burst-may-come = Quand les réponses changent, une rafale d’appuis peut venir d’abord : dans 24 % des cas chez l’humain, 12 % si autre chose était proposé (Lerman & Iwata 1995).
days-burst = { $when } : { $presses } appuis en { $seconds }
days-after-answers = Ce qui a suivi les réponses
days-after-each = Après chaque type de réponse
days-answer-head = Réponse
days-pressed-again = nouvel appui en dix minutes
days-against-given = appui suivant face à « donné »
days-times-as-fast = { $times } fois plus vite
days-unvoiced = Demandé sans bouton, par semaine :
days-named-figure = { $what } : { $figure }
days-next-words = Mots qui pourraient venir
days-hold = Mots du tableau en usage : { $used } sur { $all }. Laisse-les grandir avant d’en ajouter (pratique courante, sans source).
days-next-gap = { $word } : demandé sans bouton { $asked ->
    [1] une fois
   *[other] { $asked } fois
}, { $rate } par semaine (de { $low } à { $high })
days-next-demand = { $word } : { $rate } appuis par heure (de { $low } à { $high }, { $n ->
    [one] { $n } appui
   *[other] { $n } appuis
}) et aucun mot ne clôt une séance
days-next-arousal = { $word } : { $ended } séances sur { $of } ont fini en forte excitation (de { $low } à { $high }) et aucun mot ne les clôt
days-zone-only = Jours et heures sont ceux de { $zone }.
