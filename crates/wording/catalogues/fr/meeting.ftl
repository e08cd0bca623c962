# One page before a meeting with a coach. Figures come written with their interval and count.
meeting-title = Avant une rencontre : { $name }
meeting-link = Avant une rencontre
meeting-told-since = Depuis le jour
meeting-show = Afficher
meeting-write-plan = Écrire le prochain plan
meeting-own-plan = En faire un plan à nous
meeting-safety = La sécurité d’abord
meeting-new = Nouveau depuis le { $day }
meeting-counts = Séances : { $sessions }. Démonstrations par des personnes : { $showings }. Appuis spontanés de { $name } : { $presses }.
meeting-new-word = Un nouveau mot : « { $word } ».
meeting-new-stage = « { $word } » est maintenant à l’étape { $stage }.
meeting-first-press = Premier appui spontané sur « { $word } » : { $day }.
meeting-likes-test = Un test de préférences : { $day }.
meeting-check = Une vérification de la compréhension de { $words }, prévue le { $day }.
meeting-nothing-new = Ni mot, ni étape, ni premier appui, ni test, ni vérification de nouveau.
meeting-more = { $count } de plus, hors de cette page.
meeting-agreed = Ce qui était convenu
meeting-from = De { $name }, convenu le { $day } : { $what }
meeting-own = Plan du foyer du { $day }, jusqu’au { $last }
meeting-nothing-agreed = Rien n’était convenu pour ce temps.
meeting-figures = Trois chiffres
meeting-figure = Chiffre
meeting-since = Depuis le { $day }
meeting-before = { $days ->
    [1] Le jour d’avant
   *[other] Les { $days } jours d’avant
}
meeting-measure = { $measure ->
    [pressed] Appuyé, sur les invitations voulues
    [right] Juste, sur les appuis lors d’invitations
    [presses] Appuis spontanés par jour
    [joining] Séances rejointes
   *[delay] De l’appui d’une personne au don
}
meeting-open = Questions ouvertes
meeting-said = { $reply ->
    [accepted] Le foyer a accepté le { $day } : { $what }
    [declined] Le foyer a dit non le { $day } : { $what }
   *[said] Le foyer a répondu le { $day } : { $what }
}
meeting-next = Convenu à la rencontre
meeting-line = Ligne
meeting-to-write = à remplir à la main
