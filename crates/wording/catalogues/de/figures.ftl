figures-none = noch nichts gezählt
figures-with-interval = { $value } ({ $low } bis { $high }, n = { $n })
figures-without-interval = { $value } (noch kein Intervall, n = { $n })
figures-nothing = noch lässt sich nichts sagen (n = { $n })
figures-interval = { $low } bis { $high }
figures-too-early = zu früh, etwas zu sagen (n = { $n })
figures-told-interval = { $value } ({ $low } bis { $high }, aus { $n ->
    [0] keiner Aufzeichnung
    [one] einer Aufzeichnung
   *[other] { $n } Aufzeichnungen
})
figures-told-without = { $value } (noch kein Intervall, aus { $n ->
    [0] keiner Aufzeichnung
    [one] einer Aufzeichnung
   *[other] { $n } Aufzeichnungen
})
figures-told-nothing = noch lässt sich nichts sagen ({ $n ->
    [one] eine Aufzeichnung
   *[other] { $n } Aufzeichnungen
})
figures-told-early = zu früh, etwas zu sagen ({ $n ->
    [one] eine Aufzeichnung
   *[other] { $n } Aufzeichnungen
})
figures-cell-interval = { $value } ({ $low } bis { $high }, aus { $n })
figures-cell-without = { $value } (noch kein Intervall, aus { $n })
figures-cell-nothing = noch lässt sich nichts sagen (aus { $n })
figures-cell-early = zu früh, etwas zu sagen (aus { $n })
