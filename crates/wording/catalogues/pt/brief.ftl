brief-fill-card = Completar a ficha
brief-batteries = Ver a pilha
brief-silent = Ver pilha e botão
brief-hard-to-make-out = Ouvir a gravação de longe
brief-not-wanted = Mudar o que traz
brief-too-little = Mostrá-la mais vezes
brief-too-late = Dar mais rápido
brief-avoided = Deixar o botão por agora
brief-time-or-place = Outra hora, um lugar mais calmo
brief-health = Primeiro, ao veterinário
brief-sounds-alike = Outra palavra
brief-people-differ = Combinar uma resposta
brief-step-back = { $to ->
    [invite] Voltar a convidar, sem perda
   *[other] Voltar a mostrar, sem perda
}
brief-back-because = { $why ->
    [strain] Sinais fortes de estresse em sessões com ela
    [card] Recompensa ou resposta não está definida
    [faded] Enfraqueceu após algumas semanas
    [shown] Ainda não mostrada o bastante
    [seldom] Poucos apertos ao convidar
    [joins] Entra em poucas sessões
   *[other] Ainda não é segura ao convidar
}
brief-begin-inviting = Começar a convidar
brief-invite = Convidar uma ou duas vezes
brief-show = Mostrá-la
brief-show-at-end = Mostrá-la no fim
brief-leave-to-animal = Deixar a { $name }, responder sempre
brief-answer = Responder a cada aperto
brief-signal-times = Sinalizar quando há
brief-rest = Hoje não ensinar nada
brief-agreed = { $way ->
    [show] Mostrar
    [offer_in_view] Convidar, com a coisa à vista
    [ask_and_point] Convidar, perguntar e apontar
   *[ask_between_two] Convidar, “isto ou aquilo”
}
