estimate-figure = { $value } ({ $low } bis { $high }, n = { $n })
estimate-no-interval = { $value } (noch kein Intervall, n = { $n })
estimate-too-early = zu früh, etwas zu sagen (n = { $n })
