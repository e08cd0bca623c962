figures-with-interval = { $value } ({ $low } bis { $high }, n = { $n })
figures-without-interval = { $value } (noch kein Intervall, n = { $n })
figures-nothing = noch lässt sich nichts sagen (n = { $n })
figures-interval = { $low } bis { $high }
figures-too-early = zu früh, etwas zu sagen (n = { $n })
