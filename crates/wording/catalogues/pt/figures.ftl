figures-none = ainda nada contado
figures-with-interval = { $value } ({ $low } a { $high }, n = { $n })
figures-without-interval = { $value } (ainda sem intervalo, n = { $n })
figures-nothing = ainda não se pode dizer nada (n = { $n })
figures-interval = { $low } a { $high }
figures-too-early = cedo demais para dizer (n = { $n })
figures-told-interval = { $value } ({ $low } a { $high }, de { $n ->
    [0] nenhum registro
    [1] um registro
   *[other] { $n } registros
})
figures-told-without = { $value } (ainda sem intervalo, de { $n ->
    [0] nenhum registro
    [1] um registro
   *[other] { $n } registros
})
figures-told-nothing = ainda não se pode dizer nada ({ $n ->
    [1] um registro
   *[other] { $n } registros
})
figures-told-early = cedo demais para dizer ({ $n ->
    [1] um registro
   *[other] { $n } registros
})
figures-cell-interval = { $value } ({ $low } a { $high }, de { $n })
figures-cell-without = { $value } (ainda sem intervalo, de { $n })
figures-cell-nothing = ainda não se pode dizer nada (de { $n })
figures-cell-early = cedo demais para dizer (de { $n })
