chart-figures = Os números
chart-figures-of = Números: { $title }
chart-what = De quê
chart-interval = intervalo de 95%
chart-missing = falta
chart-phase = fase
chart-nothing = ainda não se pode dizer nada
chart-times = { $n ->
    [1] uma vez
   *[other] { $n } vezes
}
