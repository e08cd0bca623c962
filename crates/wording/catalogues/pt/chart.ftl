chart-figures = Os números
chart-figures-of = Números: { $title }
chart-interval = intervalo de 95%
chart-missing = falta
chart-phase = fase
chart-nothing = ainda não se pode dizer nada
chart-waiting-less = De { $whose }, { $share } ({ $low } a { $high }, n = { $n }) tiveram um aperto em { $seconds }: menos da metade.
chart-waiting-part = De { $whose }, { $share } ({ $low } a { $high }, n = { $n }) tiveram um aperto em { $seconds }.
chart-waiting-none = Nenhum de { $whose } teve um aperto (n = { $n }).
chart-waiting-half = Metade de { $whose } teve um aperto em: { $median }.
chart-waiting-few = { $title }: poucos demais para dizer algo (n = { $n }).
chart-waiting-not = { $title }: { $why }.
chart-waiting-censored = Os sem aperto contam até o fim da espera (Kaplan–Meier).
chart-seconds-from-offer = segundos desde a oferta
chart-pressed-by-then = apertado até então
