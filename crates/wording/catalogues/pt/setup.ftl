setup-what = { $step ->
    [food] Quanta comida pode { $name } ter?
    [wants] De que poderá { $name } gostar? Junta quatro coisas.
    [likes] Testa aquilo de que { $name } gosta
    [words] Escolhe as primeiras palavras de { $name }
    [places] Indica onde estão os botões
   *[people] Junta quem responde a { $name }
}
setup-why = { $step ->
    [food] para os prémios caberem nela
    [wants] de vários tipos: comida, brincadeira, toque
    [likes] cerca de dez minutos; torna a escolha das palavras mais segura, e pode ficar para depois
    [words] duas ou três, propostas com as razões
    [places] para reconhecer um toque pelo lugar
   *[people] todos mostram e todos respondem da mesma forma
}
setup-title = Preparação para { $name }
setup-done-of = { $done } de { $of } feitos
setup-is-done = – feito
setup-next = Seguinte
setup-keep = Guardar
setup-later = Mais tarde
setup-along = Passo { $number } de { $of }
setup-food-why = Os prémios de comida ocupam no máximo um décimo do dia de { $name }. O dia calcula-se pelo peso e pela idade; o número de um veterinário é melhor.
setup-weight = Peso, { $unit }
setup-stage = Idade e corpo
setup-stage-hint = serve para calcular a energia do dia
setup-stage-unknown = não se sabe
setup-food-more = Um cachorro, ou o número de um veterinário
setup-grown-weight = Se for cachorro: peso em adulto, { $unit }
setup-grown-weight-hint = pergunta ao criador ou a um veterinário; sem ele nada se calcula
setup-day-kcal = A comida do dia inteiro, kcal, segundo um veterinário
setup-day-kcal-hint = substitui qualquer fórmula
setup-day-kcal-more = tem de ser maior que 0; deixa vazio para ser calculado
setup-food-later = Sem isto não se propõe comida como palavra.
setup-no-vet = Nada disto substitui um veterinário.
