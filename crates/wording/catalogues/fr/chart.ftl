chart-figures = Les chiffres
chart-figures-of = Chiffres : { $title }
chart-what = De quoi
chart-interval = intervalle à 95 %
chart-missing = manque
chart-phase = phase
chart-nothing = on ne peut encore rien dire
chart-times = { $n ->
    [1] une fois
   *[other] { $n } fois
}
