chart-figures = Las cifras
chart-figures-of = Cifras: { $title }
chart-interval = intervalo del 95 %
chart-missing = falta
chart-phase = fase
chart-nothing = aún no se puede decir nada
chart-waiting-less = De { $whose }, { $share } (de { $low } a { $high }, n = { $n }) tuvo una pulsación en { $seconds }: menos de la mitad.
chart-waiting-part = De { $whose }, { $share } (de { $low } a { $high }, n = { $n }) tuvo una pulsación en { $seconds }.
chart-waiting-none = Ninguna de { $whose } tuvo una pulsación (n = { $n }).
chart-waiting-half = La mitad de { $whose } tuvo una pulsación en: { $median }.
chart-waiting-few = { $title }: muy pocas para decir algo (n = { $n }).
chart-waiting-not = { $title }: { $why }.
chart-waiting-censored = Las que no tuvieron pulsación cuentan hasta el final de la espera (Kaplan–Meier).
chart-seconds-from-offer = segundos desde la oferta
chart-pressed-by-then = pulsado para entonces
