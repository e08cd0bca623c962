likes-test-title = { $format ->
    [paired] Teste de gostos: dois a dois
    [multiple] Teste de gostos: tudo em fileira
    [single] Teste de gostos: um a um
   *[free_access] Teste de gostos: tudo junto, cronometrado
}
likes-stop-here = Pare aqui: foram anotados sinais fortes de estresse. Dê espaço e não chame de volta. O teste pode continuar em outro dia.
likes-trial = Ensaio { $number } de { $of } · rodada { $round } de { $rounds }
likes-done = Todos os ensaios estão feitos. Obrigado, { $name }.
likes-see-ranking = Ver a ordem
likes-noted-already = Isso já estava anotado; nada mudou. Use Desfazer se a última resposta estiver errada.
likes-stop-for-now = Parar por agora
likes-goes-on-later = – o que foi anotado fica; o teste pode continuar depois.
likes-last-chose = Último: { $thing }
likes-last-none = Último: não escolheu
likes-last-away = Último: foi embora
likes-last-watched = Último: observado { $seconds } s
likes-undo = Desfazer
likes-undo-this = Desfazer: { $what }
likes-away-is-an-answer = { $name } foi embora, e isso é uma resposta. Continue quando { $name } voltar por conta própria, ou em outro dia.
likes-stand-in = “{ $thing }” não pode ser mostrado: ofereça { $stand_in } em vez disso. Se { $name } escolher, { $kind ->
    [touch] dê logo
    [training] façam logo
   *[other] vão logo
}.
likes-no-stand-in = “{ $thing }” não pode ser mostrado ao lado de outra coisa. Ofereça o que o representa em casa, sempre o mesmo, como { $kind ->
    [touch] a escova ou a mão aberta
    [training] o que usam para isso
   *[other] a guia
}; ou cronometre livremente.
likes-name-stand-in = Ponha na ficha
likes-time-freely = Cronometrar livremente
likes-needs-stand-in = não pode ser mostrado: ponha na ficha o que o representa, ou use o cronômetro
likes-to-card = Abrir a ficha
likes-stands = O que a representa
likes-stands-wrong = { $things } não dá para mostrar na mão. Diga em cada ficha o que representa, desmarque-a ou marque abaixo
likes-stands-tick = Ofereço algo que sempre a representa, igual todas as vezes
likes-shown-as = mostrado como: { $stand_in }
likes-pieces = { $pieces } × “{ $thing }”
likes-food-left = Recompensas de comida que restam hoje: { $kcal } kcal ({ $pieces }). Cada pedaço aceito é contado.
likes-food-short = Não dá para um pedaço de tudo. Pare por hoje, ou corte pedaços menores e edite a ficha.
likes-food-unknown = Não se sabe quanta comida { $name } pode ter hoje. Cada pedaço aceito é contado mesmo assim.
likes-in-front = à frente de { $name }
likes-far-left = 1, extrema esquerda de { $name }
likes-far-right = { $place }, extrema direita de { $name }
likes-lay-one = Ponha isto; toque se { $name } vier
likes-lay = Toque no que { $name } aceitar
likes-whose-left = Ponha as coisas como desenhado, como { $name } as vê. Se você está de frente para { $name }, a esquerda de { $name } fica à sua direita.
likes-lay-all = Ponha todas as coisas, nesta ordem, a partir da esquerda de { $name }
likes-did-not-come = Não veio
likes-chose-none = Não escolheu
likes-walked-away = Foi embora
likes-how-to-hold = Fique atrás do meio, { $held ->
    [all] segure os dois por igual, não olhe para nenhum
   *[some] segure por igual cada coisa, ou o que a representa, e não olhe para nenhuma
}. Deixe aproveitar o que foi aceito; guarde o resto.
likes-two-at-once = Se aceitar dois ao mesmo tempo, não anote nada e ofereça de novo.
likes-half-a-minute = Sem escolha em cerca de meio minuto: “não escolheu”.
likes-move-freely = Deixe { $name } se mover à vontade; cinco minutos é o habitual. Cronometre com o que { $name } se ocupa, uma coisa por vez.
likes-begin = Começar
likes-times = Tempos em segundos
likes-seconds-there = Segundos em que as coisas estiveram lá
likes-seconds-busy = { $thing }: segundos de ocupação
likes-pieces-eaten = { $thing }: pedaços comidos
likes-note-times = Anotar estes tempos
likes-away-at-once = Foi embora logo
likes-format = { $format ->
    [paired] Dois a dois
    [multiple] Tudo em fileira, sem repor
    [single] Um a um
   *[free_access] Tudo junto, com cronômetro
}
likes-about = { $format ->
    [paired] Cada par uma vez por rodada, lados equilibrados. O mais seguro e o mais longo: 6 coisas dão 15 ensaios por rodada. (Fisher et al. 1992)
    [multiple] Coisas em fileira; o que é aceito não é reposto. Rápido: 6 coisas dão 6 ensaios por rodada. (DeLeon & Iwata 1996)
    [single] { $name } se aproxima? Para um animal que não escolhe entre coisas. (Pace et al. 1985)
   *[free_access] Tudo fica lá cinco minutos; você cronometra com o que { $name } se ocupa. Bom para brincadeiras e lugares. (Roane et al. 1998)
}
likes-new-title = Um teste de gostos
likes-not-today = Hoje não: foram anotados sinais fortes de estresse. Dê espaço a { $name } e teste em um dia calmo.
likes-back = Voltar aos gostos
likes-nothing-listed = Ainda não há nada anotado que { $name } possa querer.
likes-how-to-offer = Como oferecer
likes-compare = O que comparar
likes-compare-hint = até 12; o habitual é de cinco a oito
likes-rounds = Rodadas
likes-rounds-hint = cada par (ou fileira) uma vez por rodada; uma ou duas por dia bastam
likes-where-to-test = Teste no lugar e na hora em que as palavras vão ser usadas; de barriga cheia, a comida agrada menos. { $name } pode ir embora quando quiser.
likes-format-missing = falta; escolha uma
likes-how-many = têm de ser { $least } a { $most } coisas, não { $ticked }; marque mais ou menos
likes-rounds-missing = faltam; 1 é um bom começo
likes-page-title = Do que { $name } gosta
likes-no-test-today = Hoje sem teste: foram anotados sinais fortes de estresse. Dê espaço; um dia calmo virá.
likes-nothing-tested = Ainda nada foi testado. Um teste mostra o que { $name } escolhe; as primeiras palavras devem ser o que mais escolhe.
likes-from-trials = { $trials ->
    [1] De um ensaio
   *[other] De { $trials } ensaios
}{ $choosing ->
    [all] { "" }
   *[other] , { $choosing } com escolha
}; sem escolher: { $none }. Não escolher também é uma resposta e fica.
likes-test-again = Testar de novo:
likes-new-test = Novo teste
likes-ranking = Ordem
likes-sheet = Uma folha disto para imprimir
likes-disagree = As formas de testar podem divergir: os cães ordenaram comidas de outro modo em pares e em fileira; só a última coincidiu (Cameron, Siddall & Bizo 2021). Os gostos mudam com a hora e o dia, por isso os ensaios antigos contam menos.
likes-known-how = A certeza: a probabilidade de nada ser claramente melhor. Bastam 90%; pare em todo caso nos 60 ensaios com escolha, pelo bem de { $name }.
likes-next = O que oferecer a seguir
likes-next-pair = { $left } à esquerda de { $name }, { $right } à direita.
likes-offer-pair = Oferecer este par agora
likes-tests-so-far = Testes até agora
likes-none-yet = Nenhum ainda.
likes-test-line = { $trials ->
    [1] { $things } coisas · um ensaio
   *[other] { $things } coisas · { $trials } ensaios
}
likes-begun-by = começado por { $name }
likes-go-on = Continuar
likes-see = Ver
likes-this-test = Este teste
likes-this-n = { $trials ->
    [1] um ensaio
   *[other] { $trials } ensaios
}, sem escolha: { $none }
likes-thing = Coisa
likes-offered = oferecido
likes-in-seconds = segundos
likes-taken = aceito
likes-sides = Lados: os números
likes-side = Aceito à esquerda de { $name }: { $share }, { $p }.
likes-over-middling = Probabilidade de ser escolhido em vez de algo mediano
likes-chance = probabilidade
likes-scores = Pontuações: { $format }
likes-score-of = { $format ->
    [single] parte das ofertas com aproximação
    [free_access] parte do tempo ocupado com isto
   *[other] parte das ofertas em que foi aceito
}
likes-no-such-test = Este caderno não conhece esse teste deste animal.
likes-not-offered = não é algo que se possa oferecer a { $name }
likes-same-twice = tem de ser outra coisa que não a da esquerda
likes-answer-wrong = tem de ser uma das coisas deste ensaio, nenhuma ou foi embora
likes-seconds-missing = falta; informe os segundos em que as coisas estiveram lá
likes-more-than-none = tem de ser maior que 0
likes-longer-than-there = são mais do que o tempo em que as coisas estiveram lá
