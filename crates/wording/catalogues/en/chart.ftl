chart-figures = The figures
chart-figures-of = Figures: { $title }
chart-interval = 95% interval
chart-missing = missing
chart-phase = phase
chart-nothing = nothing can be said yet
chart-waiting-less = Of { $whose }, { $share } ({ $low } to { $high }, n = { $n }) were answered by a press within { $seconds }, less than half.
chart-waiting-part = Of { $whose }, { $share } ({ $low } to { $high }, n = { $n }) were answered by a press within { $seconds }.
chart-waiting-none = None of { $whose } was answered by a press (n = { $n }).
chart-waiting-half = Half of { $whose } were answered by a press within: { $median }.
chart-waiting-few = { $title }: too few to say (n = { $n }).
chart-waiting-not = { $title }: { $why }.
chart-waiting-censored = Those without a press count up to the end of the wait (Kaplan–Meier).
chart-seconds-from-offer = seconds from the offer
chart-pressed-by-then = pressed by then
