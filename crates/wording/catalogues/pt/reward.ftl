reward-poison = { $species ->
    [dog] { $food } pode envenenar cães. Não foi adicionado.
    [cat] { $food } pode envenenar gatos. Não foi adicionado.
    [parrot] { $food } pode envenenar papagaios. Não foi adicionado.
    [rabbit] { $food } pode envenenar coelhos. Não foi adicionado.
   *[other] { $food } pode envenenar este animal. Não foi adicionado.
}
reward-says = O que vocês já dizem para isto
reward-says-hint = uma palavra curta; o botão pode dizer o mesmo
reward-already-said = já dizemos esta palavra muitas vezes por dia
reward-at-board = Pode ser dado junto ao quadro?
reward-at-board-hint = muitas vezes, em segundos; sair não dá
reward-as-usual = { $at_board ->
    [yes] como é habitual neste tipo: sim
   *[no] como é habitual neste tipo: não
}
reward-at-board-yes = sim
reward-at-board-no = não
reward-seconds = Quanto demora para dar, segundos
reward-usual-seconds = do aperto até o fim; habitual neste tipo: cerca de { $seconds } (prática comum, sem fonte)
reward-most = No máximo, por dia
reward-usual-times = antes de as pessoas ou o animal se cansarem; habitual neste tipo: { $times }
reward-stand-in = O que o representa em um teste de gostos
reward-stand-in-hint = algo que se possa mostrar: a guia ou a chave para sair, a escova para um carinho
reward-keep-another = Salvar e adicionar outro
reward-new = Novo: { $kind }
reward-title = Algo que podem querer
reward-which-kind = De que tipo? Uma mistura faz um quadro melhor do que só comida.
reward-kind = Tipo
reward-kind-missing = falta; escolha um
reward-exact = tão exato quanto você puder, por exemplo: frango cozido, simples
reward-only-food = é só para comida; deixe vazio, ou escolha o tipo comida
reward-not-added = nomeia um alimento que não foi adicionado; escolha outro
reward-not-added-tick = nomeia um alimento que não foi adicionado; escolha outro, ou marque só os animais para os quais serve
reward-none-means-all = nenhum marcado quer dizer todos
reward-still-used = ainda em uso
reward-energy = Energia de um pedaço
reward-kcal = kcal por pedaço
reward-kcal-hint = da embalagem, se disser
reward-not-known = Não sabe? Deixe vazio e dê o peso de um pedaço, com o número da embalagem ou um alimento da tabela.
reward-grams = Gramas por pedaço
reward-grams-hint = pese dez e divida por dez
reward-per-100 = kcal por 100 g
reward-per-100-hint = da embalagem; é o melhor número
reward-table = ou um alimento simples
reward-table-hint = da tabela USDA, sem sal, gordura nem tempero; valores habituais: confira na embalagem
reward-kept = Salvo.
reward-kept-kcal = { $name }: { $kcal } kcal por pedaço.
reward-fits = { $name }: no máximo { $pieces } por dia{ $by ->
    [card] , como diz a ficha.
   *[food] , se nada mais for dado: as recompensas de comida do dia são { $budget } kcal.
}
reward-fits-unknown = { $name }: não dá para dizer quantos por dia. { $why }
reward-no-such = Este caderno não conhece essa recompensa.
reward-none-of-these = nenhum destes
reward-food-line = { $food }: { $kcal } kcal por 100 g
reward-food-name = { $food ->
    [chicken_breast_cooked] peito de frango cozido
    [cheddar] cheddar
    [carrot_raw] cenoura crua
    [apple_raw] maçã crua
    [egg_cooked] ovo cozido
    [salmon_farmed_cooked] salmão de cativeiro cozido
    [banana] banana
    [green_beans] vagem
    [turkey_breast_cooked] peito de peru cozido
    [beef_lean_cooked] carne bovina magra cozida
   *[other] { $food }
}
reward-kcal-more = tem de ser maior que 0, ou não pode ser contado no dia
reward-grams-missing = falta; pese dez pedaços e divida por dez
reward-kcal-missing = falta; informe, ou os gramas de um pedaço e a energia de 100 g
reward-not-in-list = não está na lista; escolha um dela, ou informe você a energia
reward-called-like-food = dá o nome de um alimento que nunca se deve dar. Se for esse alimento, não o dê. Se não for, dê outro nome
