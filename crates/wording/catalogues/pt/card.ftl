card-animal = Um animal
card-new-animal = Um animal novo
card-name = Nome
card-species = Espécie
card-species-hint = Dela dependem a linguagem corporal, os alimentos perigosos e a fórmula de energia.
card-age = Idade
card-born = Data de nascimento
card-if-known = se se souber
card-estimated = esta data é aproximada
card-or-age = Não se sabe? Dá uma idade; calcula-se uma data marcada como aproximada.
card-years = Idade, anos
card-months = e meses
card-months-hint = 0 a 11
card-food = Comida
card-weight-hint = por exemplo 4,5
card-grown-hint = A necessidade de um cachorro depende de quanto já tem do peso adulto. Pergunta ao criador ou a um veterinário; sem isso nada se calcula.
card-day-hint = Para cães e gatos deixa vazio e calcula-se um ponto de partida. Onde não se possa calcular, pergunta a um veterinário e escreve; substitui a fórmula.
card-share = Parte para prémios, por cento
card-share-hint = no máximo 10; vazio quer dizer 10
card-allow = A ter em conta
card-limits = Limites
card-limits-hint = ouvido, vista, movimento: ouve ou vê mal, patas rígidas
card-cautions = Cuidados de saúde
card-cautions-hint = alergias, dor, medicamentos, guarda comida ou lugares; mostra-se onde se oferece comida
card-takes-part = continua a participar
card-versions = Nada disto substitui um veterinário. Cada mudança é uma versão nova; as anteriores ficam no registo.
card-back = Voltar a Pessoas
card-stage = { $stage ->
    [neutered_adult] adulto, esterilizado
    [intact_adult] adulto, não esterilizado
    [obese_prone] adulto, engorda facilmente
    [weight_loss] em dieta (indica o peso pretendido)
    [kitten] gatinho
   *[puppy] cachorro
}
card-whose = { $species ->
    [dog] { $stage } (cães)
   *[cat] { $stage } (gatos)
}
card-choose-one = falta; escolhe uma
card-stage-no-fit = “{ $stage }” não serve para: { $species }
card-less-than-now = é menos do que os { $weight } de hoje; corrige um, ou escolhe uma fase adulta
card-share-wrong = tem de ser maior que 0 e no máximo 10; para mais, pergunta a um veterinário
card-born-twice = e uma idade foram dadas ao mesmo tempo; dá só uma
card-born-later = está no futuro
card-born-long-ago = fica há mais de 120 anos
card-weeks-old = { $weeks ->
    [one] uma semana
   *[other] { $weeks } semanas
}
card-months-old = { $months } meses
card-years-old = { $years ->
    [one] um ano
   *[other] { $years } anos
}
card-home = Casa
card-home-name-hint = como lhe chamam
card-zone-hint = Um nome como Europe/Lisbon. O dia é o de casa, também quando a hora muda.
card-zone-moves = Mudá-la desloca também os limites dos dias passados: tudo o que é por dia ou hora calcula-se de novo.
card-person = Uma pessoa
card-new-person = Uma pessoa nova
card-name-at-home = como se usa em casa
card-role-title = O que é para a casa
card-role = { $role ->
    [home] mora aqui: mostra e responde
    [coach] acompanha de fora
   *[visitor] vem às vezes: toma conta, passeia, amizade
}
card-no-such-person = Este caderno não conhece essa pessoa.
card-rule = Uma regra da casa
card-new-rule = Uma regra nova da casa
card-rules-how = As regras vão para a folha do frigorífico. As curtas cumprem-se melhor, como: responder a cada toque, também com “agora não”.
card-the-rule = A regra
card-rule-for = Para
card-every-word = todas as palavras
card-still-holds = continua a valer
card-rule-missing = falta; escreve a regra
card-no-such-rule = Este caderno não conhece essa regra.
card-people = Pessoas
card-animals = Animais
card-add-animal = Juntar um animal
card-add-person = Juntar uma pessoa
card-edit = Editar
card-edit-it = Editar { $what }
card-not-named = ainda sem nome
card-files = Ficheiros: trazer e guardar
card-devices = Dispositivos que podem ler isto
card-about-age = cerca de { $age }
card-weight = Peso
card-grown = Em adulto
card-stage-title = Fase
card-food-today = Comida hoje
card-budget = { $budget } para prémios, de cerca de { $day } kcal por dia.
card-range = Animais deste peso: { $low } a { $high } kcal por dia.
card-given = { $feeds ->
    [one] Dadas { $given } kcal numa vez, restam { $left } kcal.
   *[other] Dadas { $given } kcal em { $feeds } vezes, restam { $left } kcal.
}
card-nobody = ninguém indicado
card-basis = Base: { $basis }.
card-not-computed = Nada se calcula: { $why }. { $link }
card-type-in = Escreve-o
card-wants = O que podem querer
card-wants-none = Nada anotado ainda. Quatro ou mais coisas de vários tipos fazem um bom teste de gostos.
card-examples = { $kind ->
    [food] o que se come ou lambe
    [play] um brinquedo, puxar, correr, um sino
    [touch] festas, escovar, o colo
    [training] um exercício de que gosta
    [exploring] lá fora, farejar, a janela
   *[rest] uma cama, um quarto sossegado, dormir
}
card-add-want = Juntar algo
card-kcal-piece = { $kcal } kcal por pedaço
card-s-to-give = { $seconds } s a dar
card-at-most = no máximo { $times } por dia
card-says = diz “{ $says }”
card-said-often = já se diz muitas vezes
card-at-board = { $at_board ->
    [yes] pode dar-se junto ao quadro
   *[no] não junto ao quadro
}
card-stands-for = { $stand_in } representa-o
card-for-whom = para { $names }
card-rules = Regras da casa
card-rules-none = Nenhuma ainda. Que fazem todos quando um botão soa e não há tempo?
card-edit-rule = Editar a regra: { $rule }
card-add-rule = Juntar uma regra
card-fridge = Folha para o frigorífico
card-put-away = Já sem uso ({ $things })
