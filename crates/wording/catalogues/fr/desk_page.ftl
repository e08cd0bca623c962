# La page du bureau de qui conseille. Ce qui s’y trouve est dit dans desk.ftl.
desk-page-title = Qui a besoin de toi d’abord
desk-page-needs = Besoins
desk-page-week = Ce qui a changé
desk-page-more-pages = Autres pages
desk-page-week-how = Depuis que tu as noté que vous vous êtes parlé, sinon depuis une semaine. Des faits, et des chiffres qui ont bougé plus que par hasard ; ce que le hasard fait bouger n’est pas une nouvelle.
desk-page-no-diagnosis = Cette page trie ce qui a été noté. Elle ne pose aucun diagnostic : là où un animal peut être mal ou en danger, elle dit à qui demander.
desk-page-how-many = { $shown } sur { $animals ->
    [one] { $animals } animal
   *[other] { $animals } animaux
} dans { $homes ->
    [one] { $homes } foyer
   *[other] { $homes } foyers
}. Qui gère chaque foyer peut lire que tu as regardé aujourd’hui.
desk-page-none = Rien ici n’a besoin de toi pour l’instant.
desk-page-none-found = Aucun foyer, animal ni mot ne s’appelle ainsi : « { $find } ».
desk-page-no-news = Rien n’a changé plus que par hasard.
desk-page-keys = Touches : j et k vont de ligne en ligne ; dans la liste les flèches aussi, Entrée ouvre, a met de côté. Tab atteint tout.
desk-page-keys-week = Touches : j et k vont de ligne en ligne ; dans la liste les flèches aussi, Entrée ouvre. Tab atteint tout.
desk-page-keys-anywhere = j et k partout sur la page
desk-page-behind = { $behind ->
    [one] { $behind } foyer a noté quelque chose de plus récent que ce qui est ici.
   *[other] { $behind } foyers ont noté quelque chose de plus récent que ce qui est ici.
}
desk-page-unread = { $unread ->
    [one] { $unread } foyer est encore en cours de lecture.
   *[other] { $unread } foyers sont encore en cours de lecture.
}
desk-page-look-again = Regarder de nouveau
desk-page-gone = Ce foyer ne partage plus ses chiffres avec toi. Rien n’a été gardé.
desk-page-was-put = Mis de côté pour { $name }. Cela revient après ces jours, et aussitôt si cela empire ou recommence.
desk-page-filter = N’en montrer que certains
desk-page-show = Montrer
desk-page-all-needs = Tous les besoins
desk-page-kind = { $kind ->
    [safety] Sécurité
    [taken_back] Retiré
    [change] Changement soudain
    [leaves] Quitte les séances
    [silent] Silence
    [held] Un mot freiné
    [ration] Nourriture
    [ready] Prêt à inviter
    [check] Vérifications
    [little] Peu de notes
    [outside] À côté d’autres foyers
    [answers] Réponses
    [aside] Mis de côté
   *[none] Rien de nécessaire
} ({ $count })
desk-page-own-mark = Ta marque
desk-page-any-mark = Toutes
desk-page-own-mark-hint = Toi seul la vois. Laisse vide pour l’enlever.
desk-page-keep-mark = Enregistrer la marque
desk-page-mark-wrong = 40 lettres au plus, sur une ligne
desk-page-find = Foyer, animal ou mot
desk-page-apply = Montrer ceux-ci
desk-page-nothing-needed = Rien de nécessaire pour l’instant.
desk-page-more = { $count ->
    [0] Autres actions ici
    [1] { $count } autre besoin, et d’autres actions ici
   *[other] { $count } autres besoins, et d’autres actions ici
}
desk-page-whose-figures = De qui sont ces chiffres
desk-page-since = Depuis le { $day }, sur { $n ->
    [one] { $n } note
   *[other] { $n } notes
} : { $sure }.
desk-page-at-least-since = Au moins depuis le { $day }, sur { $n ->
    [one] { $n } note
   *[other] { $n } notes
} : { $sure }.
desk-page-first-seen = Vu ici pour la première fois le { $day }, d’après { $n ->
    [one] { $n } note
   *[other] { $n } notes
} : { $sure }.
desk-page-from = Sur { $n ->
    [one] { $n } note
   *[other] { $n } notes
} : { $sure }.
desk-page-until = Ce qui le changerait : { $what }
desk-page-kept = Convenu : { $words ->
    [one] { $words } mot
   *[other] { $words } mots
}. Tenu, sur les jours passés : { $days }.
desk-page-kept-not-yet = Convenu : { $words ->
    [one] { $words } mot
   *[other] { $words } mots
}. Aucun jour ne s’est encore écoulé.
desk-page-kept-no-record = { $days ->
    [one] { $days } jour est sans aucune note : on ne peut rien en dire.
   *[other] { $days } jours sont sans aucune note : on ne peut rien en dire.
}
desk-page-put-aside-days = { $days ->
    [one] Mettre de côté { $days } jour
   *[other] Mettre de côté { $days } jours
}
desk-page-aside-ends = Ce qui empire, recommence ou montre une autre cause revient aussitôt.
desk-page-bring-back = Reprendre
desk-page-safety-stays = ce qui touche à la sécurité ne se met pas de côté
desk-page-unclear = ouvre le bureau de nouveau : ce besoin n’y est pas
desk-page-spoken = Nous nous sommes parlé aujourd’hui
desk-page-since-spoken = Depuis votre échange du { $day }
desk-page-since-week = Depuis le { $day }
desk-page-same = { $count ->
    [one] { $count } animal sans nouvelles
   *[other] { $count } animaux sans nouvelles
}
desk-page-same-more = Et { $count } de plus.
desk-page-presses = Appuis de lui-même
desk-page-joined = Séances rejointes
desk-page-weeks = { $what }, par semaine, la plus ancienne d’abord : { $counts }
desk-page-key = Comment lire les petits graphiques
desk-page-key-says = Une barre par semaine, { $weeks } semaines, la dernière à droite et d’une autre couleur. Une barre pâle derrière montre sur combien. Les nombres à côté sont l’échelle ; le chiffre au-dessus est celui des sept derniers jours.
desk-page-nameless = un mot sans fiche
desk-page-nameless-home = Un foyer sans nom
desk-page-not-begun = Rien de commencé
desk-page-not-begun-since = Rien de commencé depuis { $day } : aucun animal n’est noté.
desk-page-put-away = Aucun animal ne participe en ce moment
desk-page-put-away-all = Des animaux y sont notés ; aucun ne participe plus.
desk-page-pages = Pages
desk-page-page = Page { $at } sur { $pages }
desk-page-before = Précédente
desk-page-after = Suivante
desk-page-practice = À exercer : { $read } leçons montrées comme lues sur { $of }, répétitions partagées : { $shared }
desk-page-in-seven = { $count } en 7 jours
desk-page-days-written = Jours notés
desk-page-of = { $part } sur { $whole }
desk-page-of-within = { $part } sur { $whole } ({ $low } à { $high })
desk-page-of-none = aucune
desk-page-answered = { $homes ->
    [1] { $homes } foyer a répondu depuis que tu y as regardé
   *[other] { $homes } foyers ont répondu depuis que tu y as regardé
}
desk-page-answer = { $reply ->
    [accepted] Accepté : { $what }, { $day }
    [declined] Refusé : { $what }, { $day }
    [shared] Partagé : { $what }, { $day }
   *[said] Répondu : { $what }, { $day }
}
desk-page-answer-what = { $kind ->
    [plan] plan pour { $words }
    [stage] étape de { $words }
    [word] un nouveau mot
    [likes] test de préférences
    [check] vérification de { $words }
    [a_note] une note
    [a_question] une question
    [note] ta note
    [question] ta question
    [meeting] rencontre
    [change] changement à essayer
    [programme] programme
    [practice] quelque chose à exercer
    [hand_over] passation
   *[cover] remplacement
}
desk-page-answers-more = { $count ->
    [1] { $count } autre réponse
   *[other] { $count } autres réponses
}
desk-page-changes-more = { $count ->
    [1] { $count } autre changement
   *[other] { $count } autres changements
}
desk-page-changes-folded = { $count ->
    [1] { $count } changement
   *[other] { $count } changements
}
desk-page-stood-in = { $name } à ta place : { $what }, { $day }
desk-page-stood-in-more = { $count ->
    [one] { $count } autre chose écrite à ta place
   *[other] { $count } autres choses écrites à ta place
}
