card-animal = Um animal
card-new-animal = Um animal novo
card-name = Nome
card-species = Espécie
card-species-hint = Dela dependem a linguagem corporal, os alimentos perigosos e a fórmula de energia.
card-age = Idade
card-born = Data de nascimento
card-if-known = se for conhecida
card-estimated = esta data é aproximada
card-or-age = Não sabe? Dê uma idade; será calculada uma data marcada como aproximada.
card-years = Idade, anos
card-months = e meses
card-months-hint = 0 a 11
card-food = Comida
card-weight-hint = por exemplo 4,5
card-grown-hint = A necessidade de um filhote depende de quanto ele já tem do peso adulto. Pergunte ao criador ou a um veterinário; sem isso nada é calculado.
card-day-hint = Para cães e gatos, deixe vazio e um ponto de partida é calculado. Onde não se possa calcular, pergunte a um veterinário e digite; isso substitui a fórmula.
card-share = Parte para recompensas, por cento
card-share-hint = no máximo 10; vazio quer dizer 10
card-allow = A levar em conta
card-limits = Limites
card-limits-hint = audição, visão, movimento: ouve ou vê mal, patas rígidas
card-cautions = Cuidados de saúde
card-cautions-hint = alergias, dor, medicamentos, protege comida ou lugares; é mostrado onde se oferece comida
card-takes-part = continua participando
card-versions = Nada disto substitui um veterinário. Cada mudança é uma versão nova; as anteriores ficam no registro.
card-back = Voltar a Pessoas
card-stage = { $stage ->
    [neutered_adult] adulto, castrado
    [intact_adult] adulto, não castrado
    [obese_prone] adulto, engorda facilmente
    [weight_loss] em dieta (informe o peso desejado)
    [kitten] filhote de gato
   *[puppy] filhote de cão
}
card-whose = { $species ->
    [dog] { $stage } (cães)
   *[cat] { $stage } (gatos)
}
card-choose-one = falta; escolha uma
card-stage-no-fit = “{ $stage }” não serve para: { $species }
card-less-than-now = é menos do que os { $weight } de hoje; corrija um, ou escolha uma fase adulta
card-share-wrong = tem de ser maior que 0 e no máximo 10; para mais, pergunte a um veterinário
card-born-twice = e uma idade foram dadas ao mesmo tempo; dê só uma
card-born-later = está no futuro
card-born-long-ago = fica há mais de 120 anos
card-weeks-old = { $weeks ->
    [1] uma semana
   *[other] { $weeks } semanas
}
card-months-old = { $months } meses
card-years-old = { $years ->
    [1] um ano
   *[other] { $years } anos
}
card-home = Casa
card-home-name-hint = como é chamada
card-zone-hint = Um nome como America/Sao_Paulo. O dia é o de casa, também quando a hora muda.
card-zone-moves = Mudar isto desloca também os limites dos dias passados: tudo o que é por dia ou hora é calculado de novo.
card-person = Uma pessoa
card-new-person = Uma pessoa nova
card-name-at-home = como se usa em casa
card-role-title = O que é para a casa
card-role = { $role ->
    [home] mora aqui: mostra e responde
    [coach] acompanha de fora
   *[visitor] vem às vezes: cuida, passeia, visita
}
card-no-such-person = Este caderno não conhece essa pessoa.
card-rule = Uma regra da casa
card-new-rule = Uma regra nova da casa
card-rules-how = As regras vão para a folha da geladeira. As curtas são cumpridas melhor, como: responder a cada aperto, também com “agora não”.
card-the-rule = A regra
card-rule-for = Para
card-every-word = todas as palavras
card-still-holds = continua valendo
card-rule-missing = falta; escreva a regra
card-no-such-rule = Este caderno não conhece essa regra.
card-people = Pessoas
card-animals = Animais
card-add-animal = Adicionar um animal
card-add-person = Adicionar uma pessoa
card-edit = Editar
card-edit-it = Editar { $what }
card-not-named = ainda sem nome
card-files = Arquivos: trazer e guardar
card-devices = Aparelhos que podem ler isto
card-about-age = cerca de { $age }
card-weight = Peso
card-grown = Peso adulto
card-stage-title = Fase
card-food-today = Comida hoje
card-budget = { $budget } para recompensas, de cerca de { $day } kcal por dia.
card-range = Animais deste peso: { $low } a { $high } kcal por dia.
card-given = { $feeds ->
    [1] Dadas { $given } kcal em uma vez, restam { $left } kcal.
   *[other] Dadas { $given } kcal em { $feeds } vezes, restam { $left } kcal.
}
card-nobody = ninguém informado
card-basis = Base: { $basis }.
card-not-computed = Nada é calculado: { $why }. { $link }
card-type-in = Digite
card-wants = O que podem querer
card-wants-none = Nada anotado ainda. Quatro ou mais coisas de vários tipos fazem um bom teste de gostos.
card-examples = { $kind ->
    [food] o que se come ou lambe
    [play] um brinquedo, puxar, correr, um sino
    [touch] carinho, escovar, o colo
    [training] um exercício de que gosta
    [exploring] lá fora, farejar, a janela
   *[rest] uma cama, um quarto tranquilo, dormir
}
card-add-want = Adicionar algo
card-kcal-piece = { $kcal } kcal por pedaço
card-s-to-give = { $seconds } s para dar
card-at-most = no máximo { $times } por dia
card-says = diz “{ $says }”
card-said-often = já é dito muitas vezes
card-at-board = { $at_board ->
    [yes] pode ser dado junto ao quadro
   *[no] não junto ao quadro
}
card-stands-for = { $stand_in } no lugar
card-for-whom = para { $names }
card-rules = Regras da casa
card-rules-none = Nenhuma ainda. O que todos fazem quando um botão soa e não há tempo?
card-edit-rule = Editar a regra: { $rule }
card-add-rule = Adicionar uma regra
card-fridge = Folha para a geladeira
card-put-away = Fora de uso ({ $things })
