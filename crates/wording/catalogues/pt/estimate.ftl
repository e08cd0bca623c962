estimate-figure = { $value } ({ $low } a { $high }, n = { $n })
estimate-no-interval = { $value } (ainda sem intervalo, n = { $n })
estimate-too-early = cedo demais para dizer (n = { $n })
