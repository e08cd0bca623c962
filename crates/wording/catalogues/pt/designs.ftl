designs-title = Uma mudança ajuda?
designs-no-such = Este caderno não conhece tal teste deste animal.
designs-cannot-draw = A ordem deste teste não pode ser sorteada do plano dele: { $why }.
designs-design = { $design ->
    [reversal] Ida e volta, alguns dias de cada (reversão, ABAB)
    [multiple_baseline] Um depois do outro (linha de base múltipla)
    [alternating_treatments] Em alternância rápida (tratamentos alternados)
   *[changing_criterion] Passo a passo (critério variável)
}
designs-from-a-day = A partir de um dia sorteado (AB, início sorteado)
designs-question = { $question ->
    [quieter_button] Um botão mais baixo ajuda?
    [new_place] Um lugar novo ajuda?
    [faster_delivery] Entregar mais rápido ajuda?
    [another_word] Outra palavra ajuda?
   *[other] Uma mudança ajuda?
}
designs-question-own = Isto ajuda: { $label }?
designs-question-word = Outra palavra ajuda: “{ $label }”?
designs-with = { $question ->
    [quieter_button] com o botão mais baixo
    [new_place] com o lugar novo
    [faster_delivery] com a entrega mais rápida
    [another_word] com a outra palavra
   *[other] com a mudança
}
designs-with-own = com isto: { $label }
designs-as-usual = como sempre
designs-measure = { $measure ->
    [own_presses] Apertos próprios
    [joined_share] Parte de sessões com participação
    [time_to_press] Segundos até o aperto, quando convidado e querendo
    [pressed_share] Parte de apertos, quando convidado e querendo
    [stress_signs] Sinais de estresse
   *[delivery_delay] Segundos do aperto à entrega
}
designs-unit = { $unit ->
    [session] sessão
   *[day] dia
}
designs-meets = cumpre os critérios
designs-meets-with-reservations = cumpre os critérios com reservas
designs-does-not-meet = não cumpre os critérios
designs-phase-usual = habitual
designs-phase-usual-turn = habitual { $turn }
designs-phase-changed = com mudança
designs-phase-changed-turn = com mudança { $turn }
designs-phase-goal = meta { $seconds } s
designs-changed-against-usual = com mudança em relação ao habitual
designs-one-after-other = { $after } depois de { $before }
designs-not-drawn-before = a ordem não foi sorteada antes do primeiro ponto, ou o plano foi mudado depois
designs-was-stopped = o teste foi parado antes do fim
designs-not-finished = o teste não terminou
designs-too-short = { $points ->
    [1] um ponto não basta para este plano; são necessários pelo menos { $needed }
   *[other] { $points } pontos não bastam para este plano; são necessários pelo menos { $needed }
}
designs-empty-condition = uma condição ainda não tem nenhuma observação, por isso não há nada a comparar
designs-no-figure = não há número para esta fase: poucos pontos, ou todos ao mesmo tempo
designs-other-condition = { $points ->
    [1] 1 ponto com outra condição que não a sorteada; a análise segue o sorteio.
   *[other] { $points } pontos com outra condição que não a sorteada; a análise segue o sorteio.
}
designs-drawn-late = A ordem não foi sorteada antes do primeiro ponto, ou o plano foi mudado depois.
designs-more-than = mais de { $number }
designs-percentage-points = { $value } pontos percentuais
designs-a-session = { $value } por sessão
designs-not-yet = Começa em { $day }; até lá tudo fica como sempre.
designs-running = Pontos passados: { $done } de { $points }. Nada se afirma antes do fim.
designs-strong-sign = Parado: em { $day } foi visto um sinal forte de estresse enquanto a mudança vigorava. Tudo volta ao habitual; nada se afirma a favor da mudança.
designs-stopped = { $reason ->
    [strong_sign] Parado em { $day }: um sinal forte de estresse. Nada é analisado, pois um teste que pode acabar a qualquer momento pode acabar quando está ganhando.
    [not_good] Parado em { $day }: a mudança não fazia bem. Nada é analisado, pois um teste que pode acabar a qualquer momento pode acabar quando está ganhando.
    [not_kept] Parado em { $day }: não foi possível manter. Nada é analisado, pois um teste que pode acabar a qualquer momento pode acabar quando está ganhando.
   *[other] Parado em { $day }: outro motivo. Nada é analisado, pois um teste que pode acabar a qualquer momento pode acabar quando está ganhando.
}
designs-untested = Terminado, mas nada pode ser analisado: { $why }. Os números só descrevem estes pontos.
designs-seen = { $measure }: { $amount } { $way ->
    [higher] a mais
   *[lower] a menos
    } { $with } ({ $usual } pontos habituais e { $changed } com mudança). Com a ordem sorteada ao acaso, uma diferença tão grande surge em { $exact ->
    [yes] { $extreme } de { $orders } ordens possíveis ({ $p }).
   *[no] { $extreme } de { $orders } ordens sorteadas de novo ({ $p }).
}
designs-seen-goal = { $points ->
    [1] As pessoas ficaram a { $seconds } s da meta (um ponto).
   *[other] As pessoas ficaram em média a { $seconds } s da meta ({ $points } pontos).
    } Com os passos sorteados ao acaso, um ajuste tão bom surge em { $exact ->
    [yes] { $extreme } de { $orders } ordens possíveis ({ $p }).
   *[no] { $extreme } de { $orders } ordens sorteadas de novo ({ $p }).
}
designs-too-few-orders = { $orders ->
    [1] Com uma só ordem possível, este teste não conseguiria distinguir nenhum efeito do acaso.
   *[other] Com apenas { $orders } ordens possíveis, este teste não conseguiria distinguir nenhum efeito do acaso.
}
designs-rare = Seria raro se a mudança não fizesse nada: fala a favor de um efeito, com { $name }, nestas semanas.
designs-rare-goals = Seria raro se as metas não fizessem nada: fala a favor de um efeito, com { $name }, nestas semanas.
designs-may-be-chance = Portanto, pode bem ser acaso. Isso não mostra que a mudança não faz nada.
designs-weak = O próprio plano é pequeno demais segundo os critérios da área; tome isto como um indício.
designs-change-again = O mesmo teste de novo, com novo plano, por outras pessoas ou em outras semanas.
designs-change-gentler = Nada deste teste; uma mudança mais suave, planejada de novo.
designs-change-points = Os pontos que ainda faltam.
designs-change-by-hand = Um microfone ouve pior os apertos em um botão mais baixo: anote-os à mão neste teste.
designs-intro = Um botão mais baixo, um lugar novo, uma entrega mais rápida: ajuda { $name }? Um teste (um plano de caso único, no jargão da área) deixa o acaso decidir quando vigora a mudança, e compara.
designs-none-today = Hoje nenhum teste novo: foram anotados sinais fortes de estresse. Dê espaço; tudo como sempre.
designs-plan = Planejar um teste
designs-so-far = Testes até agora
designs-none = Ainda nenhum.
designs-open = Abrir
designs-undrawable = não pode ser sorteado
designs-begins = começa em { $day }
designs-going-on = em andamento
designs-finished = terminado
designs-stopped-on = parado em { $day }
designs-ended-by-sign = terminado por um sinal forte de estresse em { $day }
designs-checks = As verificações planejadas da compreensão fazem outra pergunta: { $link }.
designs-checks-link = Verificações
designs-how = Como os testes são sorteados e analisados
designs-kindly = { $lead } Só se muda o ambiente e o que as pessoas fazem: { $name } pode ir embora a qualquer momento, nada do que pede é negado, e nenhum dia precisa de um aperto. Um sinal forte de estresse durante a mudança acaba o teste. Não teste nada que doa, assuste ou prive; pergunte a um veterinário ou a um profissional qualificado de comportamento se tiver dúvidas.
designs-kindly-lead = Um teste é para { $name }, e não o contrário.
designs-not-as-planned = Não como planejado:
designs-the-plan = O plano
designs-all = Todos os testes
designs-today = Hoje
designs-of-lane = { $lane }:
designs-rest = Hoje descanso, tudo como sempre: foram anotados sinais fortes de estresse. Dê espaço e não atraia de volta.
designs-everything-usual = Tudo como sempre.
designs-now = { $unit ->
    [session] Esta sessão ou a próxima (ponto { $point } de { $points }): { $what }
   *[day] Hoje (ponto { $point } de { $points }): { $what }
}
designs-deliver-within = entregue em { $seconds } s no máximo
designs-later-hidden = Os dias seguintes não são mostrados de propósito: conhecê-los muda o que as pessoas fazem. Responda a cada aperto como sempre.
designs-fact-design = Plano
designs-fact-measured = O que é medido
designs-measured = { $unit ->
    [session] { $measure }, cada sessão: { $words }
   *[day] { $measure }, cada dia: { $words }
}
designs-all-words = todas as palavras
designs-fact-expected = O que é esperado
designs-expected = { $expected ->
    [more] mais
    [less] menos
   *[either] qualquer dos dois
}
designs-fact-first = Primeiro dia, pontos
designs-first = { $points ->
    [1] { $day }, um ponto
   *[other] { $day }, { $points } pontos
}
designs-fact-orders = Ordens possíveis
designs-planned-on = Planejado em { $day }; a ordem vem de uma semente sorteada naquela hora.
designs-other-in-force = Vigorou algo diferente do sorteado?
designs-this-trial = este teste
designs-field-lane = Onde
designs-field-point = Ponto
designs-field-point-hint = contado a partir de 1
designs-field-in-force = Vigorou
designs-with-the-change = com a mudança
designs-field-because = Por quê
designs-may-be-left-out = pode ficar vazio
designs-note-it = Anotar
designs-honest-note = A análise segue a ordem sorteada, por isso uma nota honesta nunca a estraga; a página diz quantos pontos diferiram.
designs-stop = Parar
designs-reason = { $reason ->
    [strong_sign] um sinal forte de estresse
    [not_good] a mudança não faz bem
    [not_kept] não dá para manter
   *[other] outro motivo
}
designs-field-in-words = Em palavras
designs-stop-now = Parar este teste agora
designs-stop-right = Na dúvida, parar é sempre acertado. Ponha tudo como estava; o que foi anotado fica guardado.
designs-plan-title = Planejar um teste de uma mudança
designs-not-today = Hoje não: foram anotados sinais fortes de estresse. Dê espaço a { $name } e planeje em um dia calmo.
designs-back = Voltar aos testes
designs-why = Uma mudança e uma semana melhor coincidem muitas vezes por acidente. Quando o acaso decide os dias em que a mudança vigora, a diferença pode ser comparada com todas as ordens que poderiam ter saído.
designs-change = { $question ->
    [quieter_button] Um botão mais baixo
    [new_place] Um lugar novo
    [faster_delivery] Uma entrega mais rápida
    [another_word] Outra palavra
   *[other] Outra coisa
}
designs-proposed-for = proposto: { $design }
designs-the-proposed = o proposto
designs-expect = { $expected ->
    [more] mais disso
    [less] menos disso
   *[either] qualquer dos dois
}
designs-expect-either-hint = exige mais pontos
designs-point-unit = { $unit ->
    [session] uma sessão
   *[day] um dia
}
designs-point-session-hint = de mostrar ou de convidar
designs-field-question = O que muda
designs-field-question-hint = uma só coisa; todo o resto fica como está
designs-field-label = Outra coisa: qual
designs-field-label-hint = só para “outra coisa”
designs-field-measure = O que é medido
designs-field-measure-hint = escolha antes de começar; é lido do que você anota de qualquer forma
designs-field-expected = O que você espera disso
designs-field-expected-hint = dito agora, para que o resultado não possa escolher
designs-field-words = Palavras
designs-field-words-hint = nenhuma marcada: todas. Um depois do outro: cada palavra marcada é uma série; 3 cumprem os critérios
designs-field-unit = Um ponto é
designs-field-first = Primeiro dia
designs-field-first-hint = amanhã ou mais tarde, se forem dias
designs-field-points = Pontos ao todo
designs-field-points-hint = dias ou sessões; 120 no máximo
designs-numbers = O plano e seus números
designs-field-design = Plano
designs-field-least = Mínimo de pontos por fase
designs-field-least-hint = 5 cumprem os critérios, 3 com reservas
designs-field-phases = Fases
designs-field-phases-hint = ida e volta, e passo a passo: 4 ou mais
designs-field-apart = Pontos entre duas mudanças
designs-field-apart-hint = um depois do outro: pelo menos tantos
designs-field-animals = Animais
designs-field-animals-hint = um depois do outro entre animais em vez de palavras
designs-field-criteria = Metas para as pessoas, em segundos
designs-field-criteria-hint = passo a passo: uma por fase depois da primeira, como 6; 4; 2,5. Um animal nunca recebe metas
designs-see = Ver o que pode mostrar
designs-proposed = Proposto: { $design }
designs-your-choice = Sua escolha: { $design }
designs-because = { $question ->
    [quieter_button] Porque o som pode ser baixado e voltar a subir, e um animal precisa de alguns dias para se acostumar a cada um.
    [new_place] Porque mudar um botão de um lado para o outro confundiria: cada palavra muda uma vez, uma depois da outra.
    [faster_delivery] Porque as pessoas podem entregar logo em um dia e como sempre no seguinte, e o efeito vai e vem rápido.
    [another_word] Porque uma palavra fica depois que está lá: use duas fases, e assim só o primeiro dia dela é sorteado.
   *[other] Porque é o indicado se a mudança puder ser desfeita; se não, use “um depois do outro”.
}
designs-usual-here = O habitual para esta pergunta: { $design }.
designs-undrawn = Isto não pode ser sorteado: { $why }.
designs-orders = { $orders } ordens possíveis; uma é sorteada ao acaso quando você planeja. Você só vê a condição do dia.
designs-smallest-p = O menor p que pode alcançar é { $p }.
designs-fewer-than-20 = Com menos de 20 ordens nunca se desce abaixo de { $level }: use mais pontos, ou menos em cada fase.
designs-verdict-ahead = Com todos os pontos, { $verdict } ({ $chances ->
    [0] nenhuma oportunidade
    [1] uma oportunidade
   *[other] { $chances } oportunidades
} de mostrar um efeito, pelo menos { $fewest ->
    [1] um ponto
   *[other] { $fewest } pontos
} cada; Kratochwill et al. 2010).
designs-plan-and-draw = Planejar e sortear a ordem
designs-figures = Números até agora
designs-not-finished-yet = Ainda não terminou: nada se afirma destes números, e olhar para eles dá vontade de parar. A análise é feita no fim.
designs-came-out = O resultado
designs-would-change = O que mudaria isso: { $what }
designs-about-one = Isto é só sobre { $name }. Não diz nada de outros animais.
designs-no-test = Sem análise: { $why }.
designs-difference = Diferença, com mudança menos habitual
designs-difference-none = { $points ->
    [1] { $value } (sem intervalo de 95%: poucas ordens; um ponto)
   *[other] { $value } (sem intervalo de 95%: poucas ordens; { $points } pontos)
}
designs-difference-interval = { $points ->
    [1] { $value } (intervalo de 95%: { $low } a { $high }, um ponto)
   *[other] { $value } (intervalo de 95%: { $low } a { $high }, { $points } pontos)
}
designs-open-end = aberto
designs-distance = Distância média à meta
designs-extreme = Ordens igualmente extremas
designs-extreme-of = { $exact ->
    [yes] { $extreme } de { $orders }, todas contadas
   *[no] { $extreme } de { $orders }, sorteadas de novo
}
designs-orders-left-out = Ordens deixadas de fora
designs-orders-undefined = { $orders } (os pontos que faltam teriam deixado uma condição vazia)
designs-verdict = O plano { $verdict }: { $chances ->
    [0] nenhuma oportunidade
    [1] uma oportunidade
   *[other] { $chances } oportunidades
} de mostrar um efeito (o desejado são 3), pelo menos { $fewest ->
    [1] um ponto observado
   *[other] { $fewest } pontos observados
} cada (o desejado são 5, 3 com reservas; Kratochwill et al. 2010).
designs-missing = { $missing ->
    [1] 1 de { $points } pontos passados não tem valor: nada foi anotado de onde se lesse esta medida. Fica de fora, não conta como zero.
   *[other] { $missing } de { $points } pontos passados não têm valor: nada foi anotado de onde se lesse esta medida. Ficam de fora, não contam como zero.
}
designs-no-point = Ainda nenhum ponto.
designs-chart = { $unit ->
    [session] { $measure }, por sessão
   *[day] { $measure }, por dia
}
designs-chart-told = { $question } { $phases }.
designs-chart-read = Pontos ocos: como sempre (A). Pontos cheios: com a mudança (B). Linhas tracejadas: a fase mudou. Lacunas: falta o valor.
designs-mean = média: { $mean }
designs-independent = Os intervalos das médias, do NAP, do nível e da tendência tratam os pontos como independentes, e os dias de um animal não são bem assim. A análise acima não depende disso.
designs-times-a-week = celeração × { $factor } por semana
designs-divided-a-week = celeração ÷ { $factor } por semana
designs-weekly = { $turn } (intervalo de 90%: × { $low } a × { $high }, n = { $n })
designs-weekly-no-interval = { $turn } (ainda sem intervalo, n = { $n })
designs-nap = NAP (pares em que a mudança se saiu melhor)
designs-nap-value = { $share } (intervalo de 90%: { $low } a { $high }, n = { $usual } e { $changed })
designs-tau = Tau-U (descontada a tendência anterior)
designs-tau-value = { $share } ({ $p }, n = { $usual } e { $changed }; não há intervalo publicado)
designs-level = Salto do nível
designs-trend = Mudança da tendência, por dia
designs-change-value = { $value } (intervalo de 95%: { $low } a { $high })
designs-change-value-no-interval = { $value } (ainda sem intervalo)
designs-small = { $way ->
    [once] Um teste de { $days } dias: sorteia-se o dia a partir do qual vale.
    [back] Um teste de { $days } dias, ida e volta: os dias são sorteados.
   *[turn] Um teste de { $days } dias, dia a dia: sorteia-se quais.
}
designs-measured-by = { $measure } ({ $words }); esperado: { $expected ->
    [more] mais
    [less] menos
   *[either] mais ou menos
}

# Dois testes ao mesmo tempo.
designs-beside-planned = Outro teste mede o mesmo nos mesmos dias ({ $measure }):
designs-beside-going = Nos próximos dias, outro teste mede isto ({ $measure }):
designs-beside-kept = Em alguns dos mesmos dias, outro teste mediu o mesmo ({ $measure }):
designs-beside-plan = Nos mesmos dias deste plano há um teste de uma mudança:
designs-beside-agreed = Há um plano combinado para dias em que isto seria testado:
designs-beside-agreed-wait = Com duas mudanças ao mesmo tempo, não dá para separar uma da outra: uma diferença pode vir de qualquer uma. Comece depois do último dia do plano. Ou aceite isso.
designs-beside-days = { $question } { $first } a { $last }
designs-beside-sessions = { $question } Desde { $first }, até acabarem as sessões dele
designs-beside-wait = Com duas mudanças ao mesmo tempo, não dá para distinguir uma da outra: uma diferença pode vir de qualquer uma. Espere o outro acabar e comece em { $day } ou depois. Ou aceite isso.
designs-beside-wait-sessions = Com duas mudanças ao mesmo tempo, não dá para distinguir uma da outra: uma diferença pode vir de qualquer uma. Espere o outro acabar. Ou aceite isso.
designs-beside-read = Não dá para distinguir uma da outra: o que aqui se diz de uma mudança pode vir da outra. Uma delas de novo, sozinha, poderia dizer mais.
