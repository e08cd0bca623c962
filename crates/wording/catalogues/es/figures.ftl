figures-none = aún nada contado
figures-with-interval = { $value } (de { $low } a { $high }, n = { $n })
figures-without-interval = { $value } (aún sin intervalo, n = { $n })
figures-nothing = aún no se puede decir nada (n = { $n })
figures-interval = de { $low } a { $high }
figures-too-early = demasiado pronto para decirlo (n = { $n })
figures-told-interval = { $value } (de { $low } a { $high }, de { $n ->
    [0] ningún registro
    [one] un registro
   *[other] { $n } registros
})
figures-told-without = { $value } (aún sin intervalo, de { $n ->
    [0] ningún registro
    [one] un registro
   *[other] { $n } registros
})
figures-told-nothing = aún no se puede decir nada ({ $n ->
    [one] un registro
   *[other] { $n } registros
})
figures-told-early = demasiado pronto para decirlo ({ $n ->
    [one] un registro
   *[other] { $n } registros
})
figures-cell-interval = { $value } (de { $low } a { $high }, de { $n })
figures-cell-without = { $value } (aún sin intervalo, de { $n })
figures-cell-nothing = aún no se puede decir nada (de { $n })
figures-cell-early = demasiado pronto para decirlo (de { $n })
