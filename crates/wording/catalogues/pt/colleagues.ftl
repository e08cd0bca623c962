# Several coaches in a club: another one in the place of one. $from, $to and $name are names of coaches.
colleagues-title = Colegas
colleagues-intro = Outros coaches do seu clube podem ficar no seu lugar: em uma casa de vez, ou em todas enquanto você está fora. Cada casa decide.
colleagues-alone = Não há outro coach no seu clube.
colleagues-who = Quem?
colleagues-cover = Enquanto você está fora
colleagues-cover-how = Uma casa que compartilha com o clube todo continua aberta ao seu colega como está. As outras são consultadas; até dizerem sim, seu colega não vê nada delas. Termina sozinho depois do último dia.
colleagues-first = Primeiro dia
colleagues-last = Último dia
colleagues-cover-me = Perguntar às casas
colleagues-covered-by = { $name } substitui você, { $first } a { $last }.
colleagues-you-cover = Você substitui { $name }, { $first } a { $last }.
colleagues-end = Terminar
colleagues-day-wrong = deve ser um dia de { $first } a { $last }
colleagues-hand-over = Passar adiante
colleagues-hand-over-title = Passar adiante: { $home }
colleagues-hand-over-how = A casa decide. Quando diz sim, o que ela compartilha com você termina nesse momento e começa com seu colega, que então lê o que você e a casa escreveram um ao outro.
colleagues-propose = Perguntar à casa
colleagues-handed-what = { $from } gostaria de passar sua casa a { $to }. Você decide.
colleagues-cover-what = { $from } está fora de { $first } a { $last }. { $to } substituiria. Você decide.
colleagues-ends = O que termina
colleagues-ends-club = Até agora todos os coaches do clube têm isto. A partir daí só { $to }.
colleagues-begins = O que começa
colleagues-begins-for-days = O que começa, só nesses dias
colleagues-reads-on = { $to } também lê o que { $from } e você escreveram um ao outro, continua com o que está aberto e pode encerrá-lo.
colleagues-done = { $asked ->
    [0] { $asked } casa foi consultada.
    [1] { $asked } casa foi consultada.
   *[other] { $asked } casas foram consultadas.
} { $open ->
    [0] { $open } casa já está aberta ao seu colega.
    [1] { $open } casa já está aberta ao seu colega.
   *[other] { $open } casas já estão abertas ao seu colega.
}
colleagues-reads-back = De volta, { $from } lê o que { $to } e você escreveram um ao outro nesses dias.
