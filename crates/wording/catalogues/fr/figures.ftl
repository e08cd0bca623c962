figures-with-interval = { $value } (de { $low } à { $high }, n = { $n })
figures-without-interval = { $value } (pas encore d’intervalle, n = { $n })
figures-nothing = on ne peut encore rien dire (n = { $n })
figures-interval = de { $low } à { $high }
figures-too-early = trop tôt pour le dire (n = { $n })
