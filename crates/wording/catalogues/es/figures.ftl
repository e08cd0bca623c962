figures-with-interval = { $value } (de { $low } a { $high }, n = { $n })
figures-without-interval = { $value } (aún sin intervalo, n = { $n })
figures-nothing = aún no se puede decir nada (n = { $n })
figures-interval = de { $low } a { $high }
figures-too-early = demasiado pronto para decirlo (n = { $n })
