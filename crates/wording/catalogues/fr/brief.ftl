brief-fill-card = Compléter sa fiche
brief-batteries = Vérifier la pile
brief-silent = Vérifier pile et bouton
brief-hard-to-make-out = Écouter son enregistrement de loin
brief-not-wanted = Changer ce qu’il apporte
brief-too-little = Le montrer plus souvent
brief-too-late = Donner plus vite
brief-avoided = Laisser son bouton pour l’instant
brief-time-or-place = Une autre heure, un lieu plus calme
brief-health = D’abord le vétérinaire
brief-sounds-alike = Un autre mot
brief-people-differ = S’accorder sur une réponse
brief-step-back = { $to ->
    [invite] Retour à l’invitation, sans perte
   *[other] Retour à montrer, sans perte
}
brief-back-because = { $why ->
    [strain] Signes forts de stress dans ses séances
    [card] Sa récompense ou sa réponse n’est pas fixée
    [faded] Affaibli après quelques semaines
    [shown] Pas encore assez montré
    [seldom] Peu d’appuis à l’invitation
    [joins] Peu de séances rejointes
   *[other] Pas encore sûr à l’invitation
}
brief-begin-inviting = Commencer à inviter
brief-invite = Inviter une ou deux fois
brief-show = Le montrer
brief-show-at-end = Le montrer à la fin
brief-leave-to-animal = Laisser faire { $name }, toujours répondre
brief-answer = Répondre à chaque appui
brief-signal-times = Signaler quand c’est possible
brief-rest = Ne rien enseigner aujourd’hui
brief-agreed = { $way ->
    [show] Le montrer
    [offer_in_view] Inviter, la chose en vue
    [ask_and_point] Inviter, demander et montrer du doigt
   *[ask_between_two] Inviter, « ceci ou cela »
}
