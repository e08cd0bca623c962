swaps-title = Trocas combinadas
swaps-earlier = Períodos anteriores
swaps-choice = { $lead } Dar outra coisa de propósito pode decepcionar. Não faça isso com um animal novo na casa, doente, ansioso ou que protege coisas. Pare diante de sinais de estresse ({ $signs }); um sinal forte para tudo na hora.
swaps-choice-lead = Você decide, para o bem de { $name }.
swaps-thing-food = { $thing } – comida
swaps-why = { $name } aperta pela coisa, ou serve qualquer coisa boa? Só há um jeito de saber: de vez em quando vem outra, por acaso, e vemos se { $name } continua apertando.
swaps-how = Você responde como sempre: quando vai dar alguma coisa, o quadro diz o quê. Uma vez em oito é a coisa de outra palavra. O que { $name } faz a seguir é o que conta, não o que você acha.
swaps-not-now = Agora não: foram anotados sinais fortes de estresse. Dê espaço a { $name }; combinem em um dia calmo.
swaps-too-few-words = { $words ->
    [0] As trocas precisam de duas palavras ou mais, cada uma com sua própria coisa; { $name } não tem nenhuma.
   *[other] As trocas precisam de duas palavras ou mais, cada uma com sua própria coisa; { $name } tem { $words }.
}
swaps-to-words = Para as palavras
swaps-field-words = Palavras que participam
swaps-field-words-hint = A comida não está marcada: nunca com comida que { $name } espera com sinais de estresse. As palavras que acabam uma sessão não participam.
swaps-field-days = Dias
swaps-field-days-hint = o habitual são 28; você pode parar a qualquer momento
swaps-field-one-in = Uma resposta em tantas
swaps-field-one-in-hint = o habitual é 8; 4, o mais frequente
swaps-agreed = Combinado
swaps-agreed-wrong = Todos têm de estar de acordo: quem responde dá o que é sorteado, ou para as trocas.
swaps-agreed-everyone = Todos os que respondem a { $name } estão de acordo
swaps-begin = Começar as trocas
swaps-running = { $lead }: { $words }.
swaps-running-lead = Há trocas em andamento
swaps-drawn = Respostas sorteadas
swaps-swapped = Dessas, outra coisa
swaps-as-drawn = Dadas como sorteado
swaps-of = { $some } de { $all }
swaps-against = Um trecho de quatro dias com uma resposta não dada como sorteado pode contar contra, nunca a favor.
swaps-rate = Uma resposta em { $number }, desde { $day }. Dias que faltam: { $days }.
swaps-stop-signs = Parar: sinais de estresse
swaps-stop-home = Parar: não queremos mais
swaps-answer-how = Responda no quadro em “Responder”. Não dar nada está sempre bem e não sorteia nada. Parar também está bem; o que foi sorteado fica.
swaps-to-board = Para o quadro
swaps-dates = { $from } a { $to }
swaps-past = { $drawn ->
    [1] { $dates }: { $words }. Uma resposta sorteada, outra coisa { $swapped }, dadas como sorteado { $given }.
   *[other] { $dates }: { $words }. { $drawn } respostas sorteadas, outra coisa { $swapped }, dadas como sorteado { $given }.
}
swaps-stopped = Parado.
swaps-stopped-signs = Parado por sinais de estresse.
