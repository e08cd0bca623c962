estimate-figure = { $value } ({ $low } à { $high }, n = { $n })
estimate-no-interval = { $value } (pas encore d’intervalle, n = { $n })
estimate-too-early = trop tôt pour le dire (n = { $n })
