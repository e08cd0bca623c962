swaps-title = Échanges convenus
swaps-earlier = Périodes passées
swaps-choice = { $lead } Donner exprès autre chose peut décevoir. N’en fais rien avec un animal nouveau, malade, anxieux ou qui défend ses affaires. Arrête aux signes de stress ({ $signs }) ; un signe fort y met fin aussitôt.
swaps-choice-lead = À toi de choisir, pour le bien de { $name }.
swaps-thing-food = { $thing } – nourriture
swaps-why = { $name } appuie pour cette chose-là, ou toute bonne chose convient-elle ? Une seule façon de le savoir : de temps en temps, par hasard, autre chose arrive, et on voit si { $name } continue d’appuyer.
swaps-how = Tu réponds comme toujours : quand tu vas donner quelque chose, le tableau dit quoi. Une fois sur huit, c’est la chose d’un autre mot. Ce qui compte, c’est ce que { $name } fait ensuite, pas ce que tu en penses.
swaps-not-now = Pas maintenant : des signes de stress forts ont été notés. Laisse de l’espace à { $name } ; convenez-en un jour calme.
swaps-too-few-words = { $words ->
    [0] Les échanges demandent au moins deux mots, chacun avec sa propre chose ; { $name } n’en a aucun.
   *[other] Les échanges demandent au moins deux mots, chacun avec sa propre chose ; { $name } en a { $words }.
}
swaps-to-words = Vers les mots
swaps-field-words = Mots qui participent
swaps-field-words-hint = La nourriture n’est pas cochée : jamais avec une nourriture que { $name } attend avec des signes de stress. Les mots qui terminent une séance ne participent pas.
swaps-field-days = Jours
swaps-field-days-hint = 28 d’habitude ; tu peux arrêter à tout moment
swaps-field-one-in = Une réponse sur tant
swaps-field-one-in-hint = 8 d’habitude, 4 au plus souvent
swaps-agreed = Convenu
swaps-agreed-wrong = Tout le monde doit être d’accord : qui répond donne ce qui est tiré, ou arrête les échanges.
swaps-agreed-everyone = Toutes les personnes qui répondent à { $name } sont d’accord
swaps-begin = Commencer les échanges
swaps-running = { $lead } : { $words }.
swaps-running-lead = Des échanges sont en cours
swaps-drawn = Réponses tirées
swaps-swapped = Dont une autre chose
swaps-as-drawn = Données comme tirées
swaps-of = { $some } sur { $all }
swaps-against = Une tranche de quatre jours avec une réponse qui n’a pas été donnée comme tirée peut compter contre, jamais pour.
swaps-rate = Une réponse sur { $number }, depuis le { $day }. Jours restants : { $days }.
swaps-stop-signs = Arrêter : signes de stress
swaps-stop-home = Arrêter : nous n’en voulons plus
swaps-answer-how = Réponds sur le tableau, sous « Répondre ». Ne rien donner est toujours permis et ne tire rien. Arrêter aussi ; ce qui a été tiré reste.
swaps-to-board = Vers le tableau
swaps-dates = { $from } à { $to }
swaps-past = { $drawn ->
    [1] { $dates } : { $words }. Une réponse tirée, autre chose { $swapped }, données comme tirées { $given }.
   *[other] { $dates } : { $words }. { $drawn } réponses tirées, autre chose { $swapped }, données comme tirées { $given }.
}
swaps-stopped = Arrêté.
swaps-stopped-signs = Arrêté à cause de signes de stress.
