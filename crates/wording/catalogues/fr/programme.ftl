# Programmes : cours de quelques semaines, avec des buts pour les personnes.
programme-title = Programmes
programme-intro = Un cours de quelques semaines pour des foyers de ton club : ce que les personnes se proposent chaque semaine, des leçons, un exercice. Un foyer y participe en acceptant. Les buts sont pour les personnes, jamais pour un animal.
programme-none = Pas encore de programme.
programme-new = Préparer un programme
programme-new-how = Ce que le journal peut dire est compté tout seul. Le reste, le foyer le coche. Laisse vide ce qu’une semaine n’a pas.
programme-how-many = Semaines
programme-field-name = Comment il s’appelle
programme-field-club = Pour quel club
programme-field-showings = Fois montrer dans la semaine
programme-field-invitations = Invitations dans la semaine
programme-field-a-day = Séances par jour
programme-field-days = Sur combien de jours
programme-field-lessons = Leçons à lire
programme-field-own = Un autre but, { $number }
programme-field-own-hint = En quelques mots ; le foyer le coche.
programme-field-exercise = Exercice
programme-lay-out = Garder ce programme
programme-nothing = ou un autre but d’une semaine manque
programme-too-many = et les autres buts de la semaine sont trop nombreux : au plus { $most }
programme-week-number = Semaine { $week }
programme-week = Semaine { $week }, du { $first } au { $last }
programme-weeks = { $weeks ->
    [0] { $weeks } semaine
    [1] { $weeks } semaine
   *[other] { $weeks } semaines
}
programme-closed = n’est plus proposé
programme-close = Ne plus le proposer
programme-open-again = Le proposer de nouveau
programme-rests = doit être plus tard : un signe fort met les séances au repos jusqu’au { $until }
programme-proposed = { $weeks ->
    [0] Programme « { $name } », { $weeks } semaine à partir du { $first }
    [1] Programme « { $name } », { $weeks } semaine à partir du { $first }
   *[other] Programme « { $name } », { $weeks } semaines à partir du { $first }
}
programme-showings = montrer { $times } fois
programme-invitations = { $times ->
    [0] { $times } invitation
    [1] { $times } invitation
   *[other] { $times } invitations
}
programme-sessions = { $a_day ->
    [0] { $a_day } séance par jour
    [1] { $a_day } séance par jour
   *[other] { $a_day } séances par jour
}, sur { $days ->
    [0] { $days } jour
    [1] { $days } jour
   *[other] { $days } jours
}
programme-lesson = Lire la leçon « { $lesson } »
programme-doing = { $aim } : { $done }
programme-so-many = { $done } sur { $of } jusqu’ici
programme-done = fait
programme-not-yet = pas encore
programme-tick = Fait
programme-not-after-all = Finalement non
programme-no-aims = Cette semaine n’a pas de but.
programme-for-people = Les buts sont pour les personnes. Un jour où personne n’a le temps, ou que l’animal préfère laisser, est un jour comme un autre.
programme-done-noted = But { $aim } de la semaine { $week } fait
programme-where-each = Où en est chacun
programme-no-ranking = Chacun face à ses propres buts, par nom. Les foyers et les animaux ne sont pas comparés : ils partent d’endroits différents.
programme-nobody = Personne n’y participe qui partage des chiffres avec toi en ce moment.
programme-handed-on = Transmis à { $name } le { $day }. Cela continue là-bas.
programme-in-week = Semaine { $week } sur { $weeks }
programme-begins = Commence le { $day }
programme-over = Les semaines sont passées.
programme-weeks-before = Les semaines d’avant
programme-course = Le cours
programme-propose = Le proposer à des foyers
programme-field-animal = Avec quels animaux
programme-field-first = Premier jour
programme-propose-button = Le proposer
programme-given-on = { $who } : confié à { $name } le { $day }. Cela continue là-bas.
programme-sent = Proposé avec { $names }. Chaque foyer répond pour lui-même.
programme-left-rests = Laissés de côté, car un signe fort met les séances au repos : { $names }.
programme-left-handed = Laissés de côté, car quelqu’un d’autre y continue : { $names }.
programme-left-joined = Laissés de côté, car ils y participent déjà : { $names }.
programme-each-own = Chaque foyer reçoit sa propre proposition et répond pour lui-même.
programme-all-of-them = Avec tous
