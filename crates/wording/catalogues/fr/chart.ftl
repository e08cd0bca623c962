chart-figures = Les chiffres
chart-figures-of = Chiffres : { $title }
chart-interval = intervalle à 95 %
chart-missing = manque
chart-phase = phase
chart-nothing = on ne peut encore rien dire
chart-waiting-less = Sur { $whose }, { $share } (de { $low } à { $high }, n = { $n }) ont eu un appui en { $seconds } : moins de la moitié.
chart-waiting-part = Sur { $whose }, { $share } (de { $low } à { $high }, n = { $n }) ont eu un appui en { $seconds }.
chart-waiting-none = Aucune sur { $whose } n’a eu d’appui (n = { $n }).
chart-waiting-half = La moitié sur { $whose } ont eu un appui en : { $median }.
chart-waiting-few = { $title } : trop peu pour dire quelque chose (n = { $n }).
chart-waiting-not = { $title } : { $why }.
chart-waiting-censored = Celles sans appui comptent jusqu’à la fin de l’attente (Kaplan–Meier).
chart-seconds-from-offer = secondes depuis l’offre
chart-pressed-by-then = appuyé d’ici là
