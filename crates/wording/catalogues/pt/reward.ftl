reward-poison = { $species ->
    [dog] { $food } pode envenenar cães. Não foi adicionado.
    [cat] { $food } pode envenenar gatos. Não foi adicionado.
    [parrot] { $food } pode envenenar papagaios. Não foi adicionado.
    [rabbit] { $food } pode envenenar coelhos. Não foi adicionado.
   *[other] { $food } pode envenenar este animal. Não foi adicionado.
}
reward-says = O que já dizes para isto
reward-says-hint = uma palavra curta; o botão pode dizer o mesmo
reward-already-said = já dizemos esta palavra muitas vezes por dia
reward-at-board = Pode dar-se junto ao quadro?
reward-at-board-hint = vezes sem conta, em segundos; sair não dá
reward-as-usual = { $at_board ->
    [yes] como é habitual neste tipo: sim
   *[no] como é habitual neste tipo: não
}
reward-at-board-yes = sim
reward-at-board-no = não
reward-seconds = Quanto demora a dar, segundos
reward-usual-seconds = do toque até ao fim; habitual neste tipo: cerca de { $seconds } (prática comum, sem fonte)
reward-most = No máximo, por dia
reward-usual-times = antes de as pessoas ou o animal se fartarem; habitual neste tipo: { $times }
reward-stand-in = O que o representa num teste de gostos
reward-stand-in-hint = algo que se possa mostrar: a trela ou a chave para sair
reward-keep-another = Guardar e juntar outro
reward-new = Novo: { $kind }
reward-title = Algo que podem querer
reward-which-kind = De que tipo? Uma mistura faz um quadro melhor do que só comida.
reward-kind = Tipo
reward-kind-missing = falta; escolhe um
reward-exact = tão exato quanto puderes, por exemplo: frango cozido, simples
reward-only-food = é só para comida; deixa vazio, ou escolhe o tipo comida
reward-not-added = é um alimento que não foi adicionado; escolhe outro
reward-not-added-tick = é um alimento que não foi adicionado; escolhe outro, ou marca só os animais para que serve
reward-none-means-all = nenhum marcado quer dizer todos
reward-still-used = ainda em uso
reward-energy = Energia de um pedaço
reward-kcal = kcal por pedaço
reward-kcal-hint = da embalagem, se disser
reward-not-known = Não se sabe? Deixa vazio e dá o peso de um pedaço, com o número da embalagem ou um alimento da tabela.
reward-grams = Gramas por pedaço
reward-grams-hint = pesa dez e divide por dez
reward-per-100 = kcal por 100 g
reward-per-100-hint = da embalagem; é o melhor número
reward-table = ou um alimento simples
reward-table-hint = da tabela USDA, sem sal, gordura nem tempero; valores habituais: confirma na embalagem
reward-kept = Guardado.
reward-kept-kcal = { $name }: { $kcal } kcal por pedaço.
reward-fits = { $name }: os prémios de um dia são { $budget } kcal, no máximo { $pieces } destes e mais nada.
reward-fits-unknown = { $name }: não se pode dizer quantos por dia. { $why }
reward-no-such = Este caderno não conhece esse prémio.
reward-none-of-these = nenhum destes
reward-food-line = { $food }: { $kcal } kcal por 100 g
reward-food-name = { $food ->
    [chicken_breast_cooked] peito de frango cozido
    [cheddar] cheddar
    [carrot_raw] cenoura crua
    [apple_raw] maçã crua
    [egg_cooked] ovo cozido
    [salmon_farmed_cooked] salmão de viveiro cozido
    [banana] banana
    [green_beans] feijão-verde
    [turkey_breast_cooked] peito de peru cozido
    [beef_lean_cooked] vaca magra cozida
   *[other] { $food }
}
reward-kcal-more = tem de ser maior que 0, ou não se pode contar no dia
reward-grams-missing = falta; pesa dez pedaços e divide por dez
reward-kcal-missing = falta; dá-o, ou os gramas de um pedaço e a energia de 100 g
reward-not-in-list = não está na lista; escolhe um dela, ou dá tu a energia
