figures-none = encore rien compté
figures-with-interval = { $value } (de { $low } à { $high }, n = { $n })
figures-without-interval = { $value } (pas encore d’intervalle, n = { $n })
figures-nothing = on ne peut encore rien dire (n = { $n })
figures-interval = de { $low } à { $high }
figures-too-early = trop tôt pour le dire (n = { $n })
figures-told-interval = { $value } (de { $low } à { $high }, d’après { $n ->
    [0] aucune note
    [1] une note
   *[other] { $n } notes
})
figures-told-without = { $value } (pas encore d’intervalle, d’après { $n ->
    [0] aucune note
    [1] une note
   *[other] { $n } notes
})
figures-told-nothing = on ne peut encore rien dire ({ $n ->
    [1] une note
   *[other] { $n } notes
})
figures-told-early = trop tôt pour le dire ({ $n ->
    [1] une note
   *[other] { $n } notes
})
figures-cell-interval = { $value } (de { $low } à { $high }, sur { $n })
figures-cell-without = { $value } (pas encore d’intervalle, sur { $n })
figures-cell-nothing = on ne peut encore rien dire (sur { $n })
figures-cell-early = trop tôt pour le dire (sur { $n })
