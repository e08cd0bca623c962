patterns-of-animal = Muster: { $name }
patterns-no-animal = Es gibt kein solches Tier.
patterns-intro = Was sich in { $name }s eigenen Drücken und Entscheidungen zeigt, und was es nicht zeigt. { $link } sagt, was wann geschah. Betrachtet werden die letzten { $days } Tage.
patterns-days = Tage
patterns-pace = Nehmen die Drücke zu oder ab?
patterns-no-press = Noch kein eigener Druck.
patterns-factor = Faktor je Woche
patterns-factor-told = Jeder Punkt ist der Faktor, um den sich Drücke je Woche vervielfachen, mit 90-%-Intervall; die Linie ist keine Änderung.
patterns-factor-interval = 90-%-Intervall
patterns-times-a-week = Mal je Woche
patterns-pace-does-not-show = Ein Faktor von 1 ist keine Änderung. Eine wachsende Zahl zeigt nicht, dass ein Wort verstanden wird, eine schwindende nicht, dass es vergessen wurde: Was gewollt ist, wie bald Menschen antworten und wie lange das Brett in Reichweite liegt, ändert sie auch. Bei mehreren Wörtern überrascht ein Intervall ohne 1 nicht.
patterns-by-week = Eigene Drücke nach Wochen
patterns-by-week-told = { $n ->
    [one] { $n } eigener Druck
   *[other] { $n } eigene Drücke
} in den letzten { $days } Tagen, nach Wochen bis heute; die erste Woche kann verkürzt sein.
patterns-week-ago = { $ago ->
    [0] die letzten sieben Tage
   *[other] { $ago ->
        [one] { $ago } Woche davor
       *[other] { $ago } Wochen davor
    }
}
patterns-weeks-axis = Wochen vor heute
patterns-presses = Drücke
patterns-all-words = alle Wörter
patterns-paced = { $name }s Drücke { $word ->
    [none] aller Wörter
   *[other] von „{ $word }“
}: je Woche { $turn ->
    [times] mal
   *[other] geteilt durch
} { $by }{ $low ->
    [none] { " " }(noch kein Intervall
   *[other] { " " }(Faktor { $factor }; 90-%-Intervall { $low } bis { $high }
}; { $weeks ->
    [one] { $weeks } Woche
   *[other] { $weeks } Wochen
}, { $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}).
patterns-paced-few = { $name }s Drücke { $word ->
    [none] aller Wörter
   *[other] von „{ $word }“
}: zu wenig, um zu sagen, wie sie sich ändern ({ $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}, { $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}; nötig sind { $least_days } Tage und { $least } Drücke).
patterns-lines = Vor und nach einer Änderung
patterns-no-lines = Noch keine Änderung mit mindestens fünf Tagen auf beiden Seiten: Knöpfe verlegt, ein Wort oder eine Regel dazu.
patterns-lines-do-not-show = Das zeigt nicht, dass es an der Änderung lag: Anderes änderte sich in diesen Tagen auch, die Drücke stiegen oder sanken schon, und eine von mehreren Änderungen sieht durch Zufall groß aus. Tage eines Tiers hängen zusammen, das Intervall ist also eher zu kurz. Ein Versuch mit der Änderung, mit gelosten Tagen, kann es zeigen.
patterns-trials = Versuche mit einer Änderung
patterns-change-moved = Knöpfe wurden verlegt
patterns-change-word = „{ $word }“ kam dazu
patterns-change-rule = eine Hausregel kam dazu
patterns-line = Als das geschah ({ $day }): { $what }. { $name } drückte davor { $before } und danach { $after }. Ein Tag danach hatte in { $share } der Paare mehr Drücke als ein Tag davor (90-%-Intervall { $low } bis { $high }, { $n_before } und { $n_after } Tage, { $p }; 50 % ist kein Unterschied).
patterns-line-title = Eigene Drücke am Tag um den { $day }
patterns-line-told = { $what }: davor { $before }, danach { $after }.
patterns-before = davor
patterns-after = danach
patterns-days-from-change = Tage ab der Änderung
patterns-presses-a-day = Drücke am Tag
patterns-order = Ein Wort nach dem anderen
patterns-order-no-board = Ohne gezeichnetes Brett lässt sich ein Ausrutscher zum Nachbarknopf nicht von einem zweiten Wort unterscheiden.
patterns-since-why = Seit die Knöpfe liegen, wo sie liegen: { $why }.
patterns-order-never = { $name } drückte nie zwei Knöpfe binnen zehn Sekunden ({ $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}).
patterns-order-none = Kein Wort folgt einem anderen öfter, als die Gewohnheiten von { $name } erklären ({ $n ->
    [one] { $n } Paar
   *[other] { $n } Paare
} von Drücken binnen zehn Sekunden).
patterns-order-found = { $pairs } ({ $n } Paare von Drücken binnen zehn Sekunden).
patterns-pair = „{ $first }“, dann „{ $second }“ { $times }-mal, { $expected } aus Gewohnheit erwartet (angepasst { $p }{ $beside ->
    [yes] , nebeneinander: kann ein Ausrutscher sein
   *[other] { "" }
})
patterns-draw-board = Das Brett zeichnen
patterns-order-since = { $n ->
    [one] { $n } eigener Druck
   *[other] { $n } eigene Drücke
} { $words ->
    [one] eines Worts
   *[other] von { $words } Wörtern
} seit { $day }, als die Knöpfe an ihre Plätze kamen.
patterns-pairs-caption = Paare binnen zehn Sekunden, fünfmal oder öfter, die am wenigsten erwarteten zuerst
patterns-first = Zuerst
patterns-next = Danach
patterns-times = Male
patterns-expected = Aus Gewohnheit erwartet
patterns-adjusted-p = Angepasstes p
patterns-beside = Nebeneinander
patterns-beside-told = { $beside ->
    [yes] ja: kann ein Ausrutscher sein
   *[other] nein
}
patterns-order-does-not-show = Verglichen mit Gewohnheiten: wie oft jedes Wort am Stück gedrückt, wiederholt, neben dem vorigen gedrückt und von einer Pause gefolgt wird. Ein Paar, das heraussticht, zeigt nicht, dass die zwei Wörter zusammen etwas bedeuten: Eine Routine, eine Antwort dazwischen oder ein Wunsch nach dem anderen ergäbe dasselbe. Auch „kein Wort folgt einem anderen“ zeigt nicht, dass keines es tut: Von simulierten Tieren mit einem echten Paar in kurzen Sitzungen fiel es bei dreien von vieren nicht auf. Jeder eigene Druck zählt, auch vermeintliche Ausrutscher.
patterns-slips = Drücke, die nach Ausrutschern aussehen
patterns-slips-no-board = Ohne gezeichnetes Brett kann niemand sagen, welche Knöpfe nebeneinanderliegen.
patterns-slips-none = Kein Druck von { $name } kam binnen { $seconds } nach einer anderen Berührung, keiner sieht also nach Ausrutscher aus ({ $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}).
patterns-slips-found = Von { $name }s eigenen Drücken durch einen Ausrutscher vom Nachbarknopf oder ein Streifen erklärt: { $share }. Binnen { $seconds } nach einer anderen Berührung: { $quick }.
patterns-by-button = Durch Ausrutscher erklärt, nach Knöpfen
patterns-by-button-told = Jeder Punkt ist der Anteil der Drücke eines Knopfs, den Ausrutscher erklären, mit 95-%-Intervall.
patterns-share-of-presses = Anteil seiner Drücke
patterns-judged = Von den beurteilten Drücken vor Ort für einen Ausrutscher gehalten: { $share }.
patterns-slips-do-not-show = Von simulierten Tieren, die nie ausrutschten, wurden jedem zehnten Ausrutscher zugeschrieben. Und es zeigt nicht, welche Drücke unbeantwortet bleiben sollen: Ein Tier, das zwei Wörter mit benachbarten Knöpfen meint, sieht aus wie eines, das ausrutscht. Lies einen großen Anteil als „sieh dir das Brett an“: Leg die zwei weiter auseinander.
patterns-hours = Vorlieben nach Stunden
patterns-hours-cannot = Ob die Vorlieben von { $name } von der Stunde abhängen, lässt sich noch nicht sagen: { $why } ({ $n ->
    [one] { $n } Wahl
   *[other] { $n } Wahlen
} in { $sittings ->
    [one] { $sittings } Termin
   *[other] { $sittings } Terminen
} der letzten { $days } Tage).
patterns-hours-matter = Was { $name } mag, hängt von der Stunde ab ({ $p }, { $n ->
    [one] { $n } Wahl
   *[other] { $n } Wahlen
} in { $sittings ->
    [one] { $sittings } Termin
   *[other] { $sittings } Terminen
}). Biete zuerst an, was dann am liebsten ist: { $best }.
patterns-hours-no-sign = Kein Zeichen, dass die Vorlieben von { $name } von der Stunde abhängen ({ $p }, { $n ->
    [one] { $n } Wahl
   *[other] { $n } Wahlen
} in { $sittings ->
    [one] { $sittings } Termin
   *[other] { $sittings } Terminen
}); das zeigt nicht, dass sie es nicht tun.
patterns-best-at = { $what } um { $hour }
patterns-at-hour = Wahrscheinlichkeit, eher genommen zu werden als etwas mittelmäßig Beliebtes zu dieser Stunde:
patterns-named-figure = { $what }: { $figure }
patterns-hours-do-not-show = Das zeigt nicht, warum: Mahlzeiten, Spaziergänge und wer zu Hause ist, folgen auch der Uhr. Gesucht wird ein Auf und Ab am Tag, keine andere Form. Zur Essenszeit kann eine Vorliebe für Futter Hunger sein.
patterns-how-computed = Wie diese Zahlen berechnet werden
