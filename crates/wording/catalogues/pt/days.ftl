days-title = Dias
days-how-many = Quantos dias
days-length = { $n } dias
days-length-wrong = days deve ser um de { $allowed }, não { $given }.
days-calendar = Semanas de { $name }
days-week-of = Semana de { $day }
days-week = Semana
days-cell = { $day }: { $presses ->
    [one] { $presses } aperto próprio
   *[other] { $presses } apertos próprios
}{ $sessions ->
    [0] , sem sessão
   *[other] , sessões com participação: { $joined } de { $sessions }
}{ $signs ->
    [none] { "" }
    [mild] , sinais leves de estresse
   *[other] , sinal forte de estresse
}
days-legend = Número: apertos próprios. ● sessão com participação, ○ sessão sem ela. ! sinais leves de estresse, !! um sinal forte. Um dia abre seu registro.
days-earlier = Semanas anteriores
days-side-by-side = Lado a lado
days-mini-presses = Apertos próprios
days-mini-showings = Demonstrações
days-mini-joined = Sessões com participação, por semana
days-mini-delay = Do aperto à entrega, por semana
days-mini-hours = Por hora
days-mini-weekdays = Por dia da semana
days-told-presses = { $n } em { $days } dias
days-told-showings = { $n } em { $days } dias{ $without ->
    [0] { "" }
   *[other] , { $without } sem nenhuma
}
days-told-joined = { $joined } de { $sessions }
days-no-sessions = nenhuma sessão
days-told-delay = { $seconds } nos últimos sete dias
days-too-few = poucos demais para dizer
days-stands-out = mais: { $which }
days-quiet = menos: { $which }
days-none-stands-out = nada se destaca
days-figures-hours = Apertos próprios por hora
days-figures-weekdays = Apertos próprios por dia da semana
days-hour-axis = hora do dia
days-weekday-axis = dia da semana
days-presses-a-day = apertos por dia
days-no-presses = Nenhum aperto próprio neste tempo.
days-too-few-presses = Apertos próprios de menos para comparar ({ $n ->
    [one] { $n } aperto
   *[other] { $n } apertos
}).
days-most = Mais: { $which }, { $rate }; { $n } apertos próprios ao todo.
days-outstanding = { $which } se destaca: { $ratio } vezes as outras ({ $p } ajustado).
days-asleep = As horas em que ninguém nunca anotou um aperto contam como sono ou ausência: não são um achado, e nenhuma outra hora é comparada com elas.
days-trust = { $bursts ->
    [yes] Os apertos vêm em rajadas, ou em dias bons e ruins: as contagens variam { $times } vezes o que variariam apertos isolados. Estes intervalos, e o que se destaca, levam isso em conta.
   *[other] Os apertos vêm isolados: as contagens variam { $times } vezes o que daria só o acaso.
}
days-weeks-by-week = Semana a semana
days-joined-told = Sessões com participação nos últimos sete dias: { $share }.
days-sessions-joined = Sessões com participação
days-joined = participou
days-weeks-axis = semanas antes de hoje
days-delay = Do aperto à entrega
days-delay-told = Do aperto à entrega, valor do meio dos últimos sete dias: { $seconds }.
days-seconds = segundos
days-when-invited = Tempo até apertar quando convidado
days-answers = Respostas aos apertos próprios
days-answer = { $answer ->
    [given] Dado
    [partly] Em parte
    [declined] Agora não
    [alternative] Outra coisa oferecida
   *[other] Sem resposta ou não anotado
}
days-day-by-day = Dia a dia
days-day = Dia
days-shown = Mostrado
days-pressed = Apertado por conta própria
days-zone = Dias e horas são os de { $zone }. { $link }.
days-all-events = Todos os eventos
days-patterns = Padrões: se os apertos crescem ou diminuem, o que segue o quê, deslizes, gostos por hora
days-readiness = Disposição
days-readiness-told = Na última sessão { $name } provavelmente estava { $state ->
    [away] longe
    [warming] se animando
   *[other] a postos
}; probabilidade de “a postos”: { $share }.
days-readiness-open = Ainda não se sabe se { $name } estava a postos na última sessão; probabilidade de “a postos”: { $share }.
days-readiness-title = Probabilidade de estar a postos, por sessão
days-readiness-from = Da participação, do tempo até vir e dos sinais juntos (modelo de estados ocultos).
days-session-axis = sessão, a mais antiga primeiro
days-ready = a postos
days-demand = Demanda
days-no-demand = Nenhum aperto próprio neste tempo, então nada se pode dizer da demanda.
days-stretches = Trechos em que { $name } apertou em ritmo constante:
days-stretch = de { $first } a { $last }: { $rate }
days-bursts = Rajadas das últimas quatro semanas, mais rápidas que o usual.
days-burst-may-come = Quando as respostas mudam, uma rajada de apertos pode vir primeiro: em 24% dos casos em pessoas, 12% onde se ofereceu outra coisa (Lerman & Iwata 1995).
days-burst = { $when }: { $presses } apertos em { $seconds }
days-after-answers = O que veio após as respostas
days-after-each = Após cada tipo de resposta
days-answer-head = Resposta
days-pressed-again = apertou de novo em dez minutos
days-against-given = próximo aperto em relação a “dado”
days-times-as-fast = { $times } vezes mais rápido
days-unvoiced = Pedido sem botão, por semana:
days-named-figure = { $what }: { $figure }
days-next-words = Palavras que poderiam vir
days-hold = Palavras do quadro em uso: { $used } de { $all }. Deixe-as crescer antes de acrescentar mais (prática comum, sem fonte).
days-next-gap = { $word }: pedida sem botão { $asked ->
    [1] uma vez
   *[other] { $asked } vezes
}, { $rate } por semana ({ $low } a { $high })
days-next-demand = { $word }: { $rate } apertos por hora ({ $low } a { $high }, { $n ->
    [one] { $n } aperto
   *[other] { $n } apertos
}) e nenhuma palavra encerra uma sessão
days-next-arousal = { $word }: { $ended } de { $of } sessões terminaram com muita excitação ({ $low } a { $high }) e nenhuma palavra as encerra
days-zone-only = Dias e horas são os de { $zone }.
