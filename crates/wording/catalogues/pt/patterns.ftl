patterns-of-animal = Padrões: { $name }
patterns-no-animal = Não existe esse animal.
patterns-intro = O que se vê nos apertos e escolhas próprios de { $name }, e o que não mostra. { $link } conta o que aconteceu quando. São olhados os últimos { $days } dias.
patterns-days = Dias
patterns-pace = Os apertos crescem ou diminuem?
patterns-no-press = Ainda nenhum aperto próprio.
patterns-factor = Fator por semana
patterns-factor-told = Cada ponto é o fator pelo qual os apertos se multiplicam por semana, com seu intervalo de 90%; a linha é sem mudança.
patterns-factor-interval = intervalo de 90%
patterns-times-a-week = vezes por semana
patterns-pace-does-not-show = Um fator de 1 é sem mudança. Um número que cresce não mostra que uma palavra é entendida, nem um que diminui que foi esquecida: o que quer, quão cedo as pessoas respondem e por quanto tempo o quadro está ao alcance também o mudam. Com várias palavras, um intervalo que exclui 1 não surpreende.
patterns-by-week = Apertos próprios por semana
patterns-by-week-told = { $n ->
    [one] { $n } aperto próprio
   *[other] { $n } apertos próprios
} em { $days } dias, por semana até hoje; a primeira semana pode estar incompleta.
patterns-week-ago = { $ago ->
    [0] os últimos sete dias
   *[other] { $ago ->
        [one] { $ago } semana antes
       *[other] { $ago } semanas antes
    }
}
patterns-weeks-axis = semanas antes de hoje
patterns-presses = apertos
patterns-all-words = todas as palavras
patterns-paced = Os apertos de { $name } em { $word ->
    [none] todas as palavras
   *[other] “{ $word }”
} foram { $turn ->
    [times] multiplicados
   *[other] divididos
} por { $by } por semana{ $low ->
    [none] { " " }(ainda sem intervalo
   *[other] { " " }(fator { $factor }; intervalo de 90% { $low } a { $high }
}; { $weeks ->
    [one] { $weeks } semana
   *[other] { $weeks } semanas
}, { $n ->
    [one] { $n } aperto
   *[other] { $n } apertos
}).
patterns-paced-few = Apertos de { $name } em { $word ->
    [none] todas as palavras
   *[other] “{ $word }”
}: pouco demais para dizer como mudam ({ $days ->
    [one] { $days } dia
   *[other] { $days } dias
}, { $n ->
    [one] { $n } aperto
   *[other] { $n } apertos
}; são necessários { $least_days } dias e { $least } apertos).
patterns-lines = Antes e depois de uma mudança
patterns-no-lines = Ainda nenhuma mudança com pelo menos cinco dias de cada lado: botões movidos, uma palavra ou regra nova.
patterns-lines-do-not-show = Isto não mostra que a mudança causou: outras coisas mudaram nesses dias, os apertos já subiam ou desciam, e uma de várias mudanças parece grande por acaso. Os dias de um animal estão ligados, então o intervalo é um tanto curto. Um teste da mudança, com dias sorteados, pode mostrar.
patterns-trials = Testes de uma mudança
patterns-change-moved = botões foram movidos
patterns-change-word = “{ $word }” chegou
patterns-change-rule = chegou uma regra da casa
patterns-line = Quando { $what } ({ $day }): { $name } apertou { $before } antes e { $after } depois. Um dia depois teve mais apertos que um dia antes em { $share } dos pares (intervalo de 90% { $low } a { $high }, { $n_before } e { $n_after } dias, { $p }; 50% é sem diferença).
patterns-line-title = Apertos próprios por dia em torno de { $day }
patterns-line-told = { $what }: antes { $before }, depois { $after }.
patterns-before = antes
patterns-after = depois
patterns-days-from-change = dias desde a mudança
patterns-presses-a-day = apertos por dia
patterns-order = Uma palavra após a outra
patterns-order-no-board = Sem um quadro desenhado não se distingue um deslize ao botão vizinho de uma segunda palavra.
patterns-since-why = Desde que os botões estão onde estão: { $why }.
patterns-order-never = { $name } nunca apertou dois botões em dez segundos ({ $n ->
    [one] { $n } aperto
   *[other] { $n } apertos
}).
patterns-order-none = Nenhuma palavra segue outra mais do que os hábitos de { $name } explicam ({ $n ->
    [one] { $n } par
   *[other] { $n } pares
} de apertos em dez segundos).
patterns-order-found = { $pairs } ({ $n } pares de apertos em dez segundos).
patterns-pair = “{ $first }” e depois “{ $second }” { $times } vezes, { $expected } esperadas por hábito ({ $p } ajustado{ $beside ->
    [yes] , lado a lado: pode ser um deslize
   *[other] { "" }
})
patterns-draw-board = Desenhar o quadro
patterns-order-since = { $n ->
    [one] { $n } aperto próprio
   *[other] { $n } apertos próprios
} de { $words ->
    [1] uma palavra
   *[other] { $words } palavras
} desde { $day }, quando os botões ficaram onde estão.
patterns-pairs-caption = Pares em dez segundos, cinco vezes ou mais, os menos esperados primeiro
patterns-first = Primeira
patterns-next = Seguinte
patterns-times = Vezes
patterns-expected = Esperado por hábito
patterns-adjusted-p = p ajustado
patterns-beside = Lado a lado
patterns-beside-told = { $beside ->
    [yes] sim: pode ser um deslize
   *[other] não
}
patterns-order-does-not-show = Comparado com hábitos: quanto cada palavra é apertada de uma vez, repetida, apertada ao lado da anterior e seguida de pausa. Um par que se destaca não mostra que as duas palavras significam algo juntas: uma rotina, uma resposta no meio ou um desejo após o outro dariam o mesmo. Nem “nenhuma palavra segue outra” mostra que nenhuma segue: de animais simulados com um par verdadeiro, em sequências curtas, em três de quatro não se viu. Todo aperto próprio conta, também os tidos por deslizes.
patterns-slips = Apertos que parecem deslizes
patterns-slips-no-board = Sem um quadro desenhado ninguém sabe quais botões estão lado a lado.
patterns-slips-none = Nenhum aperto de { $name } veio em { $seconds } após outro contato, então nenhum parece deslize ({ $n ->
    [one] { $n } aperto
   *[other] { $n } apertos
}).
patterns-slips-found = Dos apertos próprios de { $name }, explicados por um deslize do botão vizinho ou um roçar: { $share }. Em { $seconds } após outro contato: { $quick }.
patterns-by-button = Explicado por deslizes, por botão
patterns-by-button-told = Cada ponto é a parte dos apertos de um botão que deslizes explicam, com seu intervalo de 95%.
patterns-share-of-presses = parte dos seus apertos
patterns-judged = Dos apertos que alguém julgou, tidos por deslize por quem estava lá: { $share }.
patterns-slips-do-not-show = De animais simulados que nunca deslizaram, a um em dez se atribuiu algum deslize. E isto não mostra quais apertos deixar sem resposta: um animal que quer dizer duas palavras vizinhas parece um que desliza. Leia uma parte grande como “olhe o quadro”: afaste mais esses dois.
patterns-hours = Gostos por hora
patterns-hours-cannot = Ainda não se sabe se o que { $name } gosta depende da hora: { $why } ({ $n ->
    [one] { $n } escolha
   *[other] { $n } escolhas
} em { $sittings ->
    [one] { $sittings } sessão
   *[other] { $sittings } sessões
} dos últimos { $days } dias).
patterns-hours-matter = O que { $name } gosta depende da hora ({ $p }, { $n ->
    [one] { $n } escolha
   *[other] { $n } escolhas
} em { $sittings ->
    [one] { $sittings } sessão
   *[other] { $sittings } sessões
}). Ofereça primeiro o que mais agrada então: { $best }.
patterns-hours-no-sign = Nenhum sinal de que o que { $name } gosta dependa da hora ({ $p }, { $n ->
    [one] { $n } escolha
   *[other] { $n } escolhas
} em { $sittings ->
    [one] { $sittings } sessão
   *[other] { $sittings } sessões
}); isso não mostra que não depende.
patterns-best-at = { $what } às { $hour }
patterns-at-hour = Probabilidade de ser aceito em vez de algo de gosto médio a essa hora:
patterns-named-figure = { $what }: { $figure }
patterns-hours-do-not-show = Isto não mostra por quê: refeições, passeios e quem está em casa também seguem o relógio. Procura-se uma subida e descida por dia, nenhuma outra forma. Na hora de comer, gostar de comida pode ser fome.
patterns-how-computed = Como estes números são calculados
