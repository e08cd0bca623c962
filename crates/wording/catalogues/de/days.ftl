days-title = Tage
days-how-many = Wie viele Tage
days-length = { $n } Tage
days-length-wrong = days muss eines von { $allowed } sein, nicht { $given }.
days-calendar = Wochen von { $name }
days-week-of = Woche vom { $day }
days-week = Woche
days-cell = { $day }: { $presses ->
    [one] { $presses } eigener Druck
   *[other] { $presses } eigene Drücke
}{ $sessions ->
    [0] , keine Sitzung
   *[other] , mitgemachte Sitzungen: { $joined } von { $sessions }
}{ $signs ->
    [none] { "" }
    [mild] , milde Zeichen von Stress
   *[other] , starkes Zeichen von Stress
}
days-legend = Zahl: eigene Drücke. ● Sitzung mitgemacht, ○ gehalten, nicht mitgemacht. ! milde Zeichen von Stress, !! ein starkes. Ein Tag öffnet sein Protokoll.
days-earlier = Frühere Wochen
days-side-by-side = Nebeneinander
days-mini-presses = Eigene Drücke
days-mini-showings = Zeigen
days-mini-joined = Mitgemachte Sitzungen je Woche
days-mini-delay = Vom Druck zum Geben, je Woche
days-mini-hours = Nach Stunden
days-mini-weekdays = Nach Wochentagen
days-told-presses = { $n } in den letzten { $days } Tagen
days-told-showings = { $n } in den letzten { $days } Tagen{ $without ->
    [0] { "" }
   *[other] , { $without } ohne
}
days-told-joined = { $joined } von { $sessions }
days-no-sessions = keine Sitzung
days-told-delay = { $seconds } in den letzten sieben Tagen
days-too-few = zu wenige, um etwas zu sagen
days-stands-out = mehr: { $which }
days-quiet = weniger: { $which }
days-none-stands-out = nichts sticht heraus
days-figures-hours = Eigene Drücke nach Stunden
days-figures-weekdays = Eigene Drücke nach Wochentagen
days-hour-axis = Stunde des Tages
days-weekday-axis = Wochentag
days-presses-a-day = Drücke am Tag
days-no-presses = Keine eigenen Drücke in dieser Zeit.
days-too-few-presses = Zu wenige eigene Drücke zum Vergleichen ({ $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}).
days-most = Am meisten: { $which }, { $rate }; { $n } eigene Drücke im Ganzen.
days-outstanding = { $which } sticht heraus: { $ratio }-mal die anderen (angepasst { $p }).
days-asleep = Stunden, in denen nie jemand einen Druck notierte, gelten als Schlaf oder Abwesenheit: Sie sind kein Befund, und keine andere Stunde wird mit ihnen verglichen.
days-trust = { $bursts ->
    [yes] Drücke kommen in Schüben oder an guten und schlechten Tagen: Die Zahlen schwanken { $times }-mal so sehr wie bei einzelnen Drücken. Diese Intervalle, und was heraussticht, berücksichtigen das.
   *[other] Drücke kommen einzeln: Die Zahlen schwanken { $times }-mal so sehr, wie es der Zufall allein täte.
}
days-weeks-by-week = Woche für Woche
days-joined-told = Mitgemachte Sitzungen in den letzten sieben Tagen: { $share }.
days-sessions-joined = Mitgemachte Sitzungen
days-joined = mitgemacht
days-weeks-axis = Wochen vor heute
days-delay = Vom Druck zum Geben
days-delay-told = Vom Druck zum Geben, mittlerer Wert der letzten sieben Tage: { $seconds }.
days-seconds = Sekunden
days-when-invited = Zeit bis zum Druck nach Einladung
days-answers = Antworten auf eigene Drücke
days-answer = { $answer ->
    [given] Gegeben
    [partly] Teilweise
    [declined] Jetzt nicht
    [alternative] Etwas anderes angeboten
   *[other] Verpasst oder nicht notiert
}
days-day-by-day = Tag für Tag
days-day = Tag
days-shown = Gezeigt
days-pressed = Von selbst gedrückt
days-zone = Tage und Stunden sind die von { $zone }. { $link }.
days-all-events = Alle Ereignisse
days-patterns = Muster: nehmen Drücke zu oder ab, was folgt auf was, Ausrutscher, Vorlieben nach Stunden
days-readiness = Bereitschaft
days-readiness-told = In der letzten Sitzung war { $name } am ehesten { $state ->
    [away] abwesend
    [warming] beim Warmwerden
   *[other] bereit
}; Wahrscheinlichkeit von „bereit“: { $share }.
days-readiness-open = Ob { $name } in der letzten Sitzung bereit war, lässt sich noch nicht sagen; Wahrscheinlichkeit von „bereit“: { $share }.
days-readiness-title = Wahrscheinlichkeit der Bereitschaft, nach Sitzungen
days-readiness-from = Aus Mitmachen, Zeit bis zum Kommen und Zeichen zusammen (ein Modell verborgener Zustände).
days-session-axis = Sitzung, die älteste zuerst
days-ready = bereit
days-demand = Nachfrage
days-no-demand = Keine eigenen Drücke in dieser Zeit, also lässt sich über die Nachfrage nichts sagen.
days-stretches = Strecken, in denen { $name } gleichmäßig drückte:
days-stretch = { $first } bis { $last }: { $rate }
days-bursts = Schübe der letzten vier Wochen, schneller als sonst.
days-burst-may-come = Wenn sich Antworten ändern, kann zuerst ein Schub von Drücken kommen: bei Menschen in 24 % der Fälle, 12 %, wo etwas anderes angeboten wurde (Lerman & Iwata 1995).
days-burst = { $when }: { $presses } Drücke in { $seconds }
days-after-answers = Was auf Antworten folgte
days-after-each = Nach jeder Art von Antwort
days-answer-head = Antwort
days-pressed-again = binnen zehn Minuten wieder gedrückt
days-against-given = nächster Druck gegenüber „gegeben“
days-times-as-fast = { $times }-mal so schnell
days-unvoiced = Ohne Knopf erbeten, je Woche:
days-named-figure = { $what }: { $figure }
days-next-words = Wörter, die als Nächste kommen könnten
days-hold = Wörter des Bretts in Gebrauch: { $used } von { $all }. Lass diese wachsen, bevor mehr dazukommen (üblich, ohne Quelle).
days-next-gap = { $word }: { $asked ->
    [one] einmal
   *[other] { $asked }-mal
} ohne Knopf erbeten, { $rate } je Woche ({ $low } bis { $high })
days-next-demand = { $word }: { $rate } Drücke in der Stunde ({ $low } bis { $high }, { $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}), und kein Wort schließt eine Sitzung
days-next-arousal = { $word }: { $ended } von { $of } Sitzungen endeten in hoher Erregung ({ $low } bis { $high }), und kein Wort schließt sie
days-zone-only = Tage und Stunden sind die von { $zone }.
