evidence-title = Evidências
evidence-of-word = Evidências: { $word }
evidence-no-words = Ainda não há palavras. { $link }.
evidence-choose-words = Escolher as primeiras palavras
evidence-picture = O que se pode dizer das palavras de { $name }
evidence-picture-told = { $claimed ->
    [0] De nenhuma se pode dizer ainda mais do que o acaso explica.
   *[other] { $claimed ->
        [one] { $claimed } palavra vai além do que o acaso explica.
       *[other] { $claimed } palavras vão além do que o acaso explica.
    }
} Não apertar nunca é lido como não entender.
evidence-rung = { $rung ->
    [nothing] Ainda não se pode dizer nada
    [chance] Até agora cabe no acaso
    [differs] Apertar segue a chamada
    [open] Passa uma verificação aberta
   *[other] Resiste a uma verificação cega
}
evidence-step = Degrau { $step } de { $steps }
evidence-behind = { $n ->
    [one] de { $n } ensaio sorteado
   *[other] de { $n } ensaios sorteados
}
evidence-behind-nothing = nada sorteado ainda, { $shown ->
    [0] também não mostrada
    [1] mostrada uma vez
   *[other] mostrada { $shown } vezes
}
evidence-trend = Apertos próprios por semana em oito semanas, a mais antiga primeiro: { $list }
evidence-trend-before = ainda não existia
evidence-this-week = { $n } em sete dias
evidence-legend = Degraus: até onde os registros chegam; um degrau cheio foi alcançado. Barras pequenas: apertos próprios por semana em oito semanas, cada palavra na sua escala, os últimos sete dias por último; um ponto é uma semana sem nenhum, um vazio é antes de a palavra chegar.
evidence-how-to-climb = O que os degraus significam
evidence-step-1 = 1. O caderno sorteou algo, e o que saiu cabe no acaso.
evidence-step-2 = 2. Em rodadas que o caderno sorteou, apertar segue o que foi chamado.
evidence-step-3 = 3. Em verificações planejadas { $name } acerta mais do que o acaso permite, mas alguém sabia a resposta.
evidence-step-4 = 4. O mesmo em verificações cegas: ninguém por perto sabia a resposta.
evidence-step-rule = Todas as palavras de um animal são julgadas juntas, para que muitas palavras e leituras não virem uma afirmação falsa.
evidence-climb-round = Uma rodada sorteada pelo caderno, no quadro, é o primeiro passo para cima.
evidence-checks = Verificações planejadas da compreensão
evidence-trials = Uma mudança ajuda? Testes de uma mudança
evidence-two-people = Duas pessoas veem o mesmo?
evidence-compared = Apertado e certo, palavra ao lado de palavra
evidence-pressed-of-wanted = Apertado, quando { $name } queria a coisa
evidence-pressed-told = Para cada palavra, a parte de convites com aperto em qualquer botão, dos em que { $name } queria a coisa, com intervalos de 95%.
evidence-share-pressed = parte apertada
evidence-right-of-presses = Certo, dos apertos
evidence-right-told = Para cada palavra, a parte de apertos nos seus convites que foram desta palavra, com intervalos de 95%. Quem aperta ao acaso aperta tanto quanto qualquer um e acerta por acaso.
evidence-share-right = parte certa
evidence-chance-line = Linha vertical: acaso, um em { $words }. Palavras com menos de cinco ensaios ficam de fora. Os intervalos valem sempre que lidos.
evidence-no-such-word = { $name } não aprende essa palavra.
evidence-sentence-shown = { $times ->
    [0] Ainda não mostrada
    [1] Mostrada uma vez
   *[other] Mostrada { $times } vezes
}; ainda não se pode dizer o que “{ $word }” significa para { $name }.
evidence-sentence-own = { $name } apertou “{ $word }” { $times ->
    [1] uma vez
   *[other] { $times } vezes
} por conta própria em quatro semanas; sem convites nem verificação, isso sozinho não diz o que a palavra significa.
evidence-sentence-invited = { $wanted ->
    [0] Ainda não conta nenhum convite em que { $name } queria a coisa.
    [1] Nos convites em que queria a coisa, { $name } apertou um botão { $pressed } de { $wanted } vez.
   *[other] Nos convites em que queria a coisa, { $name } apertou um botão { $pressed } de { $wanted } vezes.
} { $presses ->
    [0] Ainda nenhum aperto em um convite de “{ $word }”.
   *[other] De { $presses ->
        [1] { $presses } aperto
       *[other] { $presses } apertos
    } em convites de “{ $word }”, { $right } { $right ->
        [1] foi dessa palavra
       *[other] foram dessa palavra
    }: { $above ->
        [few] cedo demais para dizer
        [yes] mais que o acaso
        [chosen] mais do que o acaso traria, mas quem escolheu os momentos pode explicar isso
       *[other] até agora não mais que o acaso
    }.
}
evidence-presses-more = { $more ->
    [1] Um destes { $presses } apertos veio quando { $name } não queria a coisa, ou ninguém anotou: ele não está entre as { $wanted }.
   *[other] { $more } destes { $presses } apertos vieram quando { $name } não queria a coisa, ou ninguém anotou: eles não estão entre as { $wanted }.
}
evidence-stage = Etapa: { $stage }
evidence-figures-point = Os números apontam para { $stage }.
evidence-invitations = Convites
evidence-no-curve = Curva de aprendizagem: { $why }.
evidence-waiting = Tempo até apertar, o valor do meio: { $median }. Os convites sem aperto contam até o fim da espera (Kaplan–Meier).
evidence-waiting-open = não se alcança: poucos demais tiveram um aperto durante a espera ({ $n ->
    [one] { $n } convite
   *[other] { $n } convites
})
evidence-showings-presses = Demonstrações e apertos próprios
evidence-showings-a-day = Demonstrações por dia
evidence-showings = demonstrações
evidence-presses-a-day = Apertos próprios por dia
evidence-presses = apertos
evidence-by-day-told = { $n } ao todo; { $began ->
    [before] as últimas seis semanas por dia.
   *[other] por dia, desde o primeiro registro da palavra, em { $began }.
}
evidence-day-axis = dia (segundas com data)
evidence-delivered = Entregue após o aperto (valor do meio): { $delay }.
evidence-then = O que { $name } fez depois
evidence-uptake = Aceitou o que foi dado por esta palavra: { $this }; pelas outras palavras: { $others }.
evidence-fisher = Teste exato de Fisher, bilateral: { $p }.
evidence-left-out = { $n ->
    [1] { $n } aperto que pareceu um tropeço fica de fora.
   *[other] { $n } apertos que pareceram um tropeço ficam de fora.
}
evidence-stumbles = Apertos próprios que pareceram um tropeço, dos julgados: { $share }.
evidence-causes = Se não avança: o que pode estar por trás
evidence-how-computed = Como estes números são calculados
evidence-may-be-said = O que se pode dizer
evidence-claim = “{ $word }”, { $what }: { $said }.
evidence-fidelity = Ensino como combinado, dado em { $seconds } após o aperto: { $share }.
evidence-claim-animal = { $name }: { $said }.
evidence-not-ruled-out = O que pode explicar em vez disso:
evidence-made-unlikely = O que foi feito quanto a outras explicações e o que resta de cada uma:
evidence-rival = { $rival } ({ $standing })
evidence-plan-check = Planejar uma verificação
evidence-behind-it = O que está por trás
evidence-nothing-drawn = Nada foi sorteado ainda. O que uma pessoa escolheu convidar ou dar pode sugerir algo; não prova nada, pois uma escolha segue a hora e a esperança.
evidence-a-bet = A evidência é quanto teria crescido uma aposta contra o acaso; pode ser lida a qualquer momento. Todas as palavras de um animal são julgadas juntas.
evidence-elsewhere = Vale em outros lugares?
evidence-settings = Os dois números em situações diferentes
evidence-compared-what = Comparado
evidence-which = Qual
evidence-settings-note = Depois de mover um botão, um hábito de lugar aperta o lugar antigo: os acertos caem. Números pequenos dizem pouco; nenhuma linha sozinha prova algo.
evidence-k-of-n = { $k } de { $n } – { $figure }
evidence-chance = Acaso
evidence-chance-even = uma em { $words } palavras seria { $share }
evidence-chance-habit = uma em { $words } palavras seria { $share }; quando outras são convidadas, esta é apertada em { $elsewhere }
evidence-above-chance = { $above ->
    [yes] Até agora mais que o acaso.
    [chosen] Mais que o acaso em convites cujo momento uma pessoa pode ter escolhido. Isso ajuda a escolher o próximo passo; o que se pode dizer se apoia no que foi sorteado, e pede mais.
   *[other] Até agora não mais que o acaso.
}
evidence-without-button = Queria: pediu sem botão
evidence-not-wanted = Não a queria então, ou foi embora
evidence-not-counted = { $n } (não contam)
evidence-unrecorded = Não anotado se aceitou
evidence-not-counted-wanted = { $n } (não contam como querida)
evidence-curve = Curva de aprendizagem
evidence-curve-told = Quantas vezes acertou, de aperto em aperto, e quanto isso pode variar ({ $n ->
    [1] { $n } aperto
   *[other] { $n } apertos
}). Se é mais que o acaso julga-se uma só vez, em “O que se pode dizer”.
evidence-curve-few = { $n ->
    [0] Curva de aprendizagem: ainda nenhum aperto em um convite.
   *[other] Curva de aprendizagem: apertos de menos ({ $n ->
        [one] { $n } aperto
       *[other] { $n } apertos
    }).
}
evidence-press-axis = aperto em um convite
evidence-band = faixa de 95%
evidence-after = { $after ->
    [after] Após
    [given] dado
    [declined] agora não
    [took] aceitou
    [ignored] ignorou
    [left] foi embora
    [again] de novo
   *[other] não visto
}
evidence-after-region = O que { $name } fez após as respostas
evidence-answers = Apertos próprios respondidos: { $parts }. Uma resposta conta para o aperto anotado se suas horas distam menos de três dias; uma sem aperto, para o último da sua palavra nos dois minutos anteriores.
evidence-answer-times = { $answer ->
    [given] dado
    [partly] dado em parte
    [declined] “agora não”
    [alternative] outra coisa
   *[other] sem resposta ou não anotado
} { $times ->
    [1] uma vez
   *[other] { $times } vezes
}
evidence-step-on-today = O passo único que isso pede está em Hoje
