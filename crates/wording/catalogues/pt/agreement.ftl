agreement-title = Vemos o mesmo?
agreement-intro = O que duas pessoas anotam, cada uma sozinha, diz se os números deste caderno sairiam iguais, não importa quem anote.
agreement-records = Do registro: o que duas pessoas anotaram
agreement-no-records = Ainda não há duas pessoas que anotaram a mesma sessão ou verificação. Que duas pessoas, cada uma com seu aparelho, anotem uma sessão sem se olhar; então aparecerão aqui.
agreement-pair = { $first } e { $second }, { $animal }: { $kind ->
    [presses] { $n ->
        [one] { $n } aperto
       *[other] { $n } apertos
    }
   *[other] { $n ->
        [one] { $n } ensaio de verificação
       *[other] { $n } ensaios de verificação
    }
}
agreement-which = Quais comparar
agreement-group = { $kind ->
    [presses] Sessão
   *[other] Verificação
} de { $when }: { $n }
agreement-compare = Comparar
agreement-compare-these = Comparar só estes
agreement-paired = { $kind ->
    [presses] Apertos de uma sessão contam como o mesmo se ambas anotaram um em { $seconds }; o que só uma anotou é “{ $none }” para a outra.
   *[other] Os ensaios de uma verificação são comparados pelo número.
}
agreement-not-noted = não anotado
agreement-paste = De um filme: digitar ou colar pontuações
agreement-paste-intro = Duas pessoas veem o mesmo filme, cada uma sozinha, e escrevem o que veem.
agreement-scores = Pontuações
agreement-scores-hint = Uma linha por coisa pontuada, uma coluna por pessoa, separadas por vírgulas: press,brush. Deixe vazia a coluna de quem não pontuou.
agreement-scores-wrong = Pontuações: { $what }.
agreement-scale = O que são as pontuações
agreement-scale-names = nomes, como apertar e roçar
agreement-scale-steps = números em que só a ordem conta, como 1 calmo a 3 tenso
agreement-scale-numbers = números cujas diferenças contam, como segundos
agreement-headed = A primeira linha traz os nomes
agreement-not-stored = Nada do que é digitado aqui é guardado. { $link }.
agreement-how-computed = Como é calculado
agreement-what-scores-say = O que dizem as pontuações
agreement-sentence = { $alike ->
    [none] { "" }
   *[other] Pontuaram igual { $alike }.{ " " }
}{ $beyond ->
    [well] Além do acaso concordam bem.
    [little] Além do acaso é pouco demais para se apoiar: combinem primeiro o que conta como o quê.
    [some] Concordam além do acaso; quanto ainda não se sabe com precisão suficiente.
    [chance] Poderia ser só acaso.
   *[other] Quanto isso vai além do acaso ainda não se pode julgar.
}
agreement-sentence-nothing = Nada foi pontuado por duas pessoas, então nada se pode dizer da concordância.
agreement-scored-alike = Pontuado igual
agreement-kappa = Kappa de Cohen
agreement-alpha = Alfa de Krippendorff
agreement-shared = Pontuado por pelo menos duas de { $people } pessoas
agreement-differing = O que mais vezes foi visto de modo diferente:
agreement-differs = { $one } “{ $first }”, { $two } “{ $second }”: { $n ->
    [1] uma vez
   *[other] { $n } vezes
}
agreement-would-change = O que mudaria isso: mais coisas pontuadas por ambas sem saber as da outra; e palavras mais claras do que conta como o quê, testadas em novo filme.
agreement-no-interval = { $value } (sem intervalo, n = { $n })
agreement-none = nenhum (n = { $n })
agreement-lacking = { $figure }; { $why }
agreement-few = com menos de { $least } pontuações seu intervalo é curto demais
agreement-wrong-empty = sem pontuações: escreva uma linha por coisa, com uma coluna por pessoa, como “press,brush”
agreement-wrong-ragged = a linha { $line } tem { $got ->
    [one] { $got } coluna
   *[other] { $got } colunas
} e a linha { $first } tem { $wanted }; deixe vazia a coluna de quem não pontuou
agreement-wrong-people = { $n ->
    [one] { $n } coluna
   *[other] { $n } colunas
}; comparam-se de duas a vinte pessoas, uma coluna para cada, separadas por vírgulas, pontos e vírgulas ou tabulações
agreement-wrong-long = linhas demais
agreement-wrong-number = linha { $line }, { $person }: “{ $got }” não é um número; são necessários números, a não ser que as pontuações sejam nomes
agreement-wrong-names = nomes diferentes demais; são números?
agreement-person = pessoa { $number }
