chart-figures = Las cifras
chart-figures-of = Cifras: { $title }
chart-what = De qué
chart-interval = intervalo del 95 %
chart-missing = falta
chart-phase = fase
chart-nothing = aún no se puede decir nada
chart-times = { $n ->
    [one] una vez
   *[other] { $n } veces
}
