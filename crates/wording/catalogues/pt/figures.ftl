figures-with-interval = { $value } ({ $low } a { $high }, n = { $n })
figures-without-interval = { $value } (ainda sem intervalo, n = { $n })
figures-nothing = ainda não se pode dizer nada (n = { $n })
figures-interval = { $low } a { $high }
figures-too-early = cedo demais para dizer (n = { $n })
