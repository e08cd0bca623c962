# Figures with their 95% interval and count; every part is written already.
estimate-figure = { $value } ({ $low } to { $high }, n = { $n })
estimate-no-interval = { $value } (no interval yet, n = { $n })
estimate-too-early = too early to say (n = { $n })
