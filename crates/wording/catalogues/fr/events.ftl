events-word-without-card = un mot sans fiche
events-reward-without-card = une chose sans fiche
events-home-without-name = Un foyer sans nom
events-home = Foyer : { $name }, { $zone }
events-person = Personne : { $name }
events-animal = Animal : { $name }
events-reward = Récompense : { $name }
events-word = Mot : { $word }
events-clip = Enregistrement de { $word }
events-board = Planche de { $rows } sur { $columns }, { $words ->
    [one] { $words } mot
   *[other] { $words } mots
}
events-rule = Règle de la maison : { $text }
events-stage = { $word } : étape { $stage }
events-session-began = Séance commencée : { $purpose }{ $room ->
    [none] { "" }
   *[other] , { $room }
}
events-showing = montrer
events-inviting = inviter
events-likes-test = test de préférences
events-check = vérification de la compréhension
events-joined = Est venu
events-joined-after = Est venu après { $seconds }
events-left = Est parti
events-session-ended = Séance terminée : { $reason }
events-pressed-itself = { $name } a appuyé sur { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(sûr à { $sure })
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(semblait un faux pas)
}
events-pressed-to-show = Montré : appui sur { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(sûr à { $sure })
}
events-pressed-by-someone = Quelqu’un a appuyé sur { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(sûr à { $sure })
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(semblait un faux pas)
}
events-answered = { $word } : { $answer }{ $other ->
    [none] { "" }
   *[other] { " " }({ $other })
}{ $after ->
    [none] { "" }
   *[other] { " " }après { $after }
}{ $then ->
    [none] { "" }
   *[other] { "\u202F" }; { $name } { $then }
}
events-pressed-then = a appuyé sur { $word }
events-looked = A regardé le tableau
events-looked-at = A regardé { $word }
events-brushed = A effleuré { $word } sans le faire sonner
events-round = Série de { $calls } commencée : { $words }
events-swaps-agreed = Échanges convenus pour { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}, une réponse sur { $one_in } : { $words }
events-drawn-give-it = Tirage pour { $word } : le donner
events-drawn-give-other = Tirage pour { $word } : donner { $other } à la place
events-swaps-stopped = Échanges arrêtés
events-swaps-stopped-signs = Échanges arrêtés à cause de signes de stress
events-invited = Invitation à { $word } ({ $way }{ $call ->
    [none] { "" }
   *[other] , tirée au sort, appel { $call }
}, attente { $wait }) : { $result }
events-in-view = en vue
events-asked-pointed = demandé, montré du doigt
events-this-or-that = ceci ou cela
events-pressed-at = a appuyé sur { $word } après { $seconds }
events-answered-without-button = a répondu sans bouton
events-nothing-by-wait = rien à la fin de l’attente
events-result-left = est parti
events-asked-without-button = A demandé { $word } sans bouton{ $how ->
    [none] { "" }
   *[other] { " " }({ $how })
}{ $shown ->
    [no] { "" }
   *[other] { "\u202F" }; montré
}
events-sign = Signe ({ $level }) : { $sign }
events-fed = Nourri : { $pieces ->
    [none] { "" }
   *[other] { $pieces } ×{ " " }
}{ $what }, { $kcal }
events-food = nourriture
events-likes-test-of = Test de préférences de { $n ->
    [one] { $n } chose
   *[other] { $n } choses
} : { $format }
events-one-at-a-time = une à la fois
events-two-at-a-time = deux à la fois
events-all-at-once = toutes à la fois, sans remise
events-free-access = accès libre
events-offered = Proposé { $things } : { $came }
events-chose = a choisi { $what }
events-chose-none = n’a rien choisi
events-walked-away = s’est éloigné
events-watched = observé pendant { $seconds }
events-check-planned = Vérification de la compréhension prévue : { $trials ->
    [one] { $trials } essai
   *[other] { $trials } essais
}
events-check-trial = Vérification, essai { $trial } pour { $word } : { $came }
events-nothing = rien
events-trial-planned = Essai d’un changement prévu : { $question } ({ $points ->
    [one] { $points } point
   *[other] { $points } points
})
events-trial-point = Essai d’un changement, point { $point } : en fait { $force }
events-trial-stopped = Essai d’un changement arrêté
events-remark = Remarque : { $text }
events-lesson-read = Leçon lue : { $lesson }
events-consent-given = Accord donné : { $what }
events-consent-taken-back = Accord retiré : { $what }
events-consent = { $purpose ->
    [coach_figures] { $who ->
        [club] les personnes qui conseillent dans un club voient les chiffres
       *[other] une personne qui conseille voit les chiffres
    }
    [coach_log] { $who ->
        [club] les personnes qui conseillent dans un club lisent le journal
       *[other] une personne qui conseille lit le journal
    }
    [coach_snippets] { $who ->
        [club] les personnes qui conseillent dans un club écoutent les sons d’appuis
       *[other] une personne qui conseille écoute les sons d’appuis
    }
    [norms] les chiffres comptent dans les valeurs de référence
   *[other] les notes peuvent être confiées à des études
}
events-correction = Correction : { $text }
events-undone = Annulé{ $because ->
    [none] { "" }
   *[other] { "\u00A0" }: { $because }
}
events-stage-name = { $stage ->
    [show] montrer
    [invite] inviter
    [converse] converser
   *[other] préparer
}
events-question = { $kind ->
    [quieter] Un bouton plus discret aide-t-il ?
    [place] Une nouvelle place aide-t-elle ?
    [faster] Donner plus vite aide-t-il ?
    [word] Un autre mot aide-t-il ?
   *[other] Cela aide-t-il : { $label } ?
}
events-a-change = un changement
events-in-force = { $force ->
    [changed] avec le changement
   *[other] comme toujours
}
events-proposal = De { $name } : { $what }
events-proposal-answer = { $reply ->
    [accepted] Proposition d’un coach acceptée
    [declined] Proposition d’un coach refusée
   *[said] Réponse à un coach
}{ $text ->
    [none] { "" }
   *[other] { "\u00A0" }: { $text }
}
events-own-plan = Plan du foyer jusqu’au { $day } : { $lines }
