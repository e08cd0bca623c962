claims-asking = pedir a coisa
claims-hearing = conhecer a palavra falada
claims-nothing-asking = ainda não se pode dizer nada: nada foi sorteado; uma rodada de convites sorteados pelo caderno poderia mostrar
claims-nothing-hearing = ainda não se pode dizer nada: nenhuma verificação começou; uma verificação de escolher coisas poderia mostrar
claims-chance = o que foi sorteado até agora também viria por acaso ({ $n ->
    [one] { $n } ensaio sorteado
   *[other] { $n } ensaios sorteados
}); isso não fala a favor nem contra
claims-differs = apertar segue o que foi chamado, mais do que o acaso permite ({ $n } apertos em rodadas sorteadas{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); hábito, gosto ou pistas ainda podem explicar
claims-open-asking = pede a coisa com os botões trocados sob tampas mais do que o acaso permite ({ $n ->
    [one] { $n } ensaio sorteado
   *[other] { $n } ensaios sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); alguém sabia a resposta, então pistas ainda podem explicar
claims-open-hearing = escolhe a coisa da palavra mais do que o acaso permite ({ $n ->
    [one] { $n } ensaio sorteado
   *[other] { $n } ensaios sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); alguém sabia a resposta, então pistas ainda podem explicar
claims-blind-asking = o pedido resiste a uma verificação cega: o botão certo com os botões trocados sob tampas e ninguém por perto que soubesse ({ $n ->
    [one] { $n } ensaio sorteado
   *[other] { $n } ensaios sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
})
claims-blind-hearing = o conhecimento da palavra resiste a uma verificação cega: escolhe a coisa sem ninguém por perto que soubesse ({ $n ->
    [one] { $n } ensaio sorteado
   *[other] { $n } ensaios sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
})
claims-lapsed = { $said }. Afirmava-se mais até { $until }, quando palavras ou verificações foram acrescentadas: todas são julgadas juntas, e desde então se exige mais de cada uma
claims-animal-nothing = ainda não se pode dizer nada de todas as palavras juntas; um tempo de trocas combinadas poderia mostrar
claims-animal-chance = em todas as palavras, o que veio após as trocas também viria por acaso ou hábito ({ $n } respostas sorteadas); isso não fala a favor nem contra
claims-animal-holds = em todas as palavras juntas aperta de novo quando veio outra coisa que não a pedida; só por gosto, frequência, hábito de lugar e relógio seria improvável ({ $n } respostas sorteadas{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); pistas ainda podem explicar
claims-test = { $what }: evidência { $now } agora, { $most } no máximo; dito a partir de { $bar } (n = { $n })
claims-test-rounds = rodadas de convites sorteados
claims-test-open = { $side ->
    [asking] apertar sob tampas
   *[other] escolher coisas
}, verificações abertas juntas
claims-test-blind = { $side ->
    [asking] apertar sob tampas
   *[other] escolher coisas
}, verificações cegas juntas
claims-times = { $times } para 1
claims-times-most = mais de { $times } para 1
claims-times-none = nenhuma
claims-rival = { $rival ->
    [cueing] pistas: uma pessoa que sabe a resposta a revela
    [place] hábito de lugar: vai a um lugar, não a uma palavra
    [frequency] frequência: algumas palavras são simplesmente mais apertadas
    [liking] gosto: algumas coisas simplesmente agradam mais
    [clock] relógio e rajadas: o que as pessoas oferecem e dão segue a hora, e o que é apertado também
   *[other] ver o desejado: as pessoas veem o que esperam
}
claims-nothing-to-explain = Nada se afirma, então não há nada a explicar.
claims-ruled-out = { $why ->
    [blind] improvável: em verificações cegas ninguém por perto sabia a resposta; resta uma pista em que ninguém pensou
    [places] improvável: os lugares foram sorteados; resta a sorte, tão pequena quanto dizem os números
    [frequencies] improvável: a comparação mantém quanto cada palavra é apertada; resta a sorte, tão pequena quanto dizem os números
    [thing] improvável: palavra e coisa foram comparadas em cruz, com a coisa sorteada; resta uma pista
    [drawn] improvável: o caderno sorteou, ninguém escolheu; resta um momento adiado ou deixado de fora
    [next] improvável: contou o aperto seguinte, que ninguém avalia; resta um aperto que não foi visto
    [two] improvável: duas pessoas avaliaram à parte e concordam; resta o que ambas esperavam
   *[other] improvável: quem avaliou não podia saber; resta um sinal disso na gravação
}
claims-still-open = aberto; diria mais { $remedy ->
    [blind] uma verificação em que a pessoa com o animal não sabe a resposta
    [places] uma verificação com lugares sorteados
    [thing] um tempo de trocas combinadas ou uma verificação
   *[other] uma segunda pessoa avaliando os mesmos registros à parte
}
