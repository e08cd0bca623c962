ration-used-up = As recompensas de comida de hoje acabaram. Use brincadeira, carinho ou exploração, e dê uma refeição menor se o veterinário concordar.
ration-starting-point = Um ponto de partida para um animal saudável: com o mesmo peso, alguns precisam de até três vezes mais do que outros. Observe a condição corporal e pergunte a um veterinário.
ration-growing = A necessidade de um animal em crescimento muda de semana para semana: pese com frequência, use a própria comida como recompensa quando puder e pergunte a um veterinário.
ration-weight-loss = Calculado com o peso pretendido. Emagrecer precisa de um plano do veterinário; em gatos, comer pouco demais é por si só perigoso.
ration-typed-in = Digitado, não verificado por este programa: fica como o veterinário o deu.
ration-basis-typed-in = digitado, como um veterinário o definiu
ration-basis-formula = energia em repouso (70 vezes o peso em kg elevado a 0,75) = { $resting } kcal, vezes { $factor } pela fase da vida ({ $source })
ration-factor-source = { $source ->
    [charts] como em tabelas veterinárias publicadas, secundário; só ponto de partida
    [home_dogs] como em tabelas veterinárias publicadas, secundário; cães de família com peso ideal usaram 1,83 (Divol & Priymenko 2017); só ponto de partida
    [slimming] 80% da energia em repouso com o peso ideal, diretrizes AAHA 2014; só ponto de partida
    [growth_half] FEDIAF 2021, abaixo de metade do peso adulto; só ponto de partida
    [growth_most] FEDIAF 2021, de metade a quatro quintos do peso adulto; só ponto de partida
   *[growth_end] FEDIAF 2021, a partir de quatro quintos do peso adulto; só ponto de partida
}
ration-no-formula = aqui não há fórmula { $whom }: pergunte a um veterinário quanto { $name } pode ter por dia e digite
ration-weight = { $weight } não é um peso { $whom } ({ $low } a { $high }): verifique, ou pergunte a um veterinário quanto { $name } pode ter por dia e digite
ration-stage = “{ $stage }” não é uma fase da vida { $whom }: escolha outra, ou pergunte a um veterinário quanto { $name } pode ter por dia e digite
ration-no-weight = o peso de { $name } não é conhecido: pese { $name }, ou pergunte a um veterinário quanto { $name } pode ter por dia e digite
ration-no-grown-weight = a necessidade de um filhote depende da parte dele no peso adulto, e o de { $name } não é conhecido: pergunte ao criador ou a um veterinário e digite, ou digite quanto { $name } pode ter por dia segundo um veterinário
ration-outgrown = { $weight } é mais do que os { $grown } esperados de { $name } na idade adulta: corrija um deles, escolha uma fase adulta, ou pergunte a um veterinário quanto { $name } pode ter por dia e digite
ration-no-stage = a fase da vida de { $name } não é conhecida: escolha uma, ou pergunte a um veterinário quanto { $name } pode ter por dia e digite
