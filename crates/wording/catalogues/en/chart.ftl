chart-figures = The figures
chart-figures-of = Figures: { $title }
chart-what = What it is of
chart-interval = 95% interval
chart-missing = missing
chart-phase = phase
chart-nothing = nothing can be said yet
chart-times = { $n ->
    [one] once
   *[other] { $n } times
}
