chart-figures = Die Zahlen
chart-figures-of = Zahlen: { $title }
chart-what = Wovon
chart-interval = 95-%-Intervall
chart-missing = fehlt
chart-phase = Phase
chart-nothing = noch lässt sich nichts sagen
chart-times = { $n ->
    [one] einmal
   *[other] { $n }-mal
}
