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
