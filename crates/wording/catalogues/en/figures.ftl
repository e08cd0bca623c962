# An estimate with its interval and count. $value, $low and $high are written already.
figures-with-interval = { $value } ({ $low } to { $high }, n = { $n })
figures-without-interval = { $value } (no interval yet, n = { $n })
figures-nothing = nothing can be said yet (n = { $n })
figures-interval = { $low } to { $high }
figures-too-early = too early to say (n = { $n })
