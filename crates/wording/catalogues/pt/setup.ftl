setup-what = { $step ->
    [food] Quanta comida { $name } pode ter?
    [wants] Do que { $name } pode gostar? Adicione quatro coisas.
    [likes] Teste os gostos de { $name }
    [words] Escolha as primeiras palavras de { $name }
    [record] Grave as palavras de { $name }, com a sua voz
    [places] Diga onde estão os botões
   *[people] Adicione quem responde a { $name }
}
setup-why = { $step ->
    [food] para as recompensas caberem nela
    [wants] de vários tipos: comida, brincadeira, carinho
    [likes] cerca de dez minutos; torna a escolha das palavras mais segura, e pode ficar para depois
    [words] duas ou três, propostas com as razões
    [record] para cada botão dizer igual e um aperto poder ser ouvido; pode ficar para depois
    [places] para reconhecer um aperto pelo lugar
   *[people] todos mostram e todos respondem da mesma forma
}
setup-title = Preparação para { $name }
setup-done-of = { $done } de { $of } passos necessários feitos
setup-is-done = – feito
setup-next = Avançar
setup-keep = Salvar
setup-later = Mais tarde
setup-along = Passo { $number } de { $of }
setup-food-why = As recompensas de comida ocupam no máximo um décimo do dia de { $name }. O dia é calculado pelo peso e pela idade; o número de um veterinário é melhor.
setup-weight = Peso, { $unit }
setup-stage = Idade e corpo
setup-stage-hint = serve para calcular a energia do dia
setup-stage-unknown = não se sabe
setup-food-more = { $species ->
    [dog] Um filhote, ou o número de um veterinário
   *[other] O número de um veterinário
}
setup-grown-weight-asked = falta ainda: digite quanto o filhote pesará quando adulto, ou salve mais uma vez sem isso; então nada é calculado
setup-grown-weight = Se for filhote: peso adulto, { $unit }
setup-grown-weight-hint = pergunte ao criador ou a um veterinário; sem ele nada é calculado
setup-day-kcal = A comida do dia inteiro, kcal, segundo um veterinário
setup-day-kcal-hint = substitui qualquer fórmula
setup-day-kcal-more = tem de ser maior que 0; deixe vazio para ser calculado
setup-food-later = Sem isto, comida não é proposta como palavra.
setup-record-later = Os botões falam sem isto. Hoje guarda uma linha para isso.
setup-no-vet = Nada disto substitui um veterinário.
