chart-figures = Die Zahlen
chart-figures-of = Zahlen: { $title }
chart-interval = 95-%-Intervall
chart-missing = fehlt
chart-phase = Phase
chart-nothing = noch lässt sich nichts sagen
chart-waiting-less = Von { $whose } folgte auf { $share } ({ $low } bis { $high }, n = { $n }) ein Druck binnen { $seconds }: weniger als die Hälfte.
chart-waiting-part = Von { $whose } folgte auf { $share } ({ $low } bis { $high }, n = { $n }) ein Druck binnen { $seconds }.
chart-waiting-none = Auf keine von { $whose } folgte ein Druck (n = { $n }).
chart-waiting-half = Auf die Hälfte von { $whose } folgte ein Druck binnen: { $median }.
chart-waiting-few = { $title }: zu wenige, um etwas zu sagen (n = { $n }).
chart-waiting-not = { $title }: { $why }.
chart-waiting-censored = Die ohne Druck zählen bis zum Ende der Wartezeit (Kaplan–Meier).
chart-seconds-from-offer = Sekunden ab dem Angebot
chart-pressed-by-then = bis dahin gedrückt
