estimate-figure = { $value } ({ $low } a { $high }, n = { $n })
estimate-no-interval = { $value } (aún sin intervalo, n = { $n })
estimate-too-early = demasiado pronto para decirlo (n = { $n })
