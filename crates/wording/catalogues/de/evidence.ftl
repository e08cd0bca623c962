evidence-title = Belege
evidence-of-word = Belege: { $word }
evidence-no-words = Noch keine Wörter. { $link }.
evidence-choose-words = Erste Wörter wählen
evidence-picture = Was sich über { $name }s Wörter sagen lässt
evidence-picture-told = { $claimed ->
    [0] Über keines lässt sich schon mehr sagen, als der Zufall erklärt.
   *[other] { $claimed ->
        [one] { $claimed } Wort geht über das hinaus, was der Zufall erklärt.
       *[other] { $claimed } Wörter gehen über das hinaus, was der Zufall erklärt.
    }
} Nicht drücken wird nie als nicht verstehen gelesen.
evidence-rung = { $rung ->
    [nothing] Noch lässt sich nichts sagen
    [chance] Passt bisher zum Zufall
    [differs] Das Drücken folgt dem Ruf
    [open] Besteht eine offene Prüfung
   *[other] Hält einer blinden Prüfung stand
}
evidence-step = Sprosse { $step } von { $steps }
evidence-behind = { $n ->
    [one] aus { $n } gelosten Durchgang
   *[other] aus { $n } gelosten Durchgängen
}
evidence-behind-nothing = noch nichts gelost, { $shown ->
    [0] auch nicht gezeigt
    [one] einmal gezeigt
   *[other] { $shown }-mal gezeigt
}
evidence-trend = Eigene Drücke je Woche über acht Wochen, die älteste zuerst: { $list }
evidence-trend-before = noch nicht da
evidence-this-week = { $n } in sieben Tagen
evidence-legend = Sprossen: wie weit die Aufzeichnungen tragen; eine gefüllte ist erreicht. Kleine Balken: eigene Drücke je Woche über acht Wochen, jedes Wort in eigenem Maß, die letzten sieben Tage zuletzt; ein Punkt ist eine Woche ohne, eine Lücke liegt vor dem Wort.
evidence-how-to-climb = Was die Sprossen bedeuten
evidence-step-1 = 1. Das Notizbuch hat etwas gelost, und was daraus wurde, passt zum Zufall.
evidence-step-2 = 2. In Runden, die das Notizbuch loste, folgt das Drücken dem, wozu gerufen wurde.
evidence-step-3 = 3. In geplanten Prüfungen liegt { $name } öfter richtig, als der Zufall erlaubt, aber jemand kannte die Antwort.
evidence-step-4 = 4. Dasselbe in blinden Prüfungen: Niemand in der Nähe kannte die Antwort.
evidence-step-rule = Alle Wörter eines Tiers werden zusammen beurteilt, damit viele Wörter und viele Blicke keine falsche Behauptung ergeben.
evidence-climb-round = Eine vom Notizbuch geloste Runde auf dem Brett ist der erste Weg nach oben.
evidence-checks = Geplante Prüfungen des Verstehens
evidence-trials = Hilft eine Änderung? Versuche mit einer Änderung
evidence-two-people = Sehen zwei Menschen dasselbe?
evidence-compared = Gedrückt und richtig, Wort neben Wort
evidence-pressed-of-wanted = Gedrückt, wenn { $name } die Sache wollte
evidence-pressed-told = Für jedes Wort der Anteil der Einladungen mit einem Druck auf irgendeinen Knopf, von denen, bei denen { $name } die Sache wollte, mit 95-%-Intervallen.
evidence-share-pressed = Anteil gedrückt
evidence-right-of-presses = Richtig, von den Drücken
evidence-right-told = Für jedes Wort der Anteil der Drücke bei seinen Einladungen, die dieses Wort waren, mit 95-%-Intervallen. Wer zufällig drückt, drückt so viel wie jeder und liegt zufällig richtig.
evidence-share-right = Anteil richtig
evidence-chance-line = Senkrechte Linie: Zufall, eins von { $words }. Wörter mit weniger als fünf Durchgängen fehlen. Die Intervalle gelten, wann immer man sie liest.
evidence-no-such-word = { $name } lernt kein solches Wort.
evidence-sentence-shown = { $times ->
    [0] Noch nicht
    [one] Einmal
   *[other] { $times }-mal
} gezeigt; noch lässt sich nicht sagen, was „{ $word }“ für { $name } bedeutet.
evidence-sentence-own = { $name } drückte „{ $word }“ in vier Wochen { $times ->
    [one] einmal
   *[other] { $times }-mal
} von selbst; ohne Einladungen oder eine Prüfung sagt das allein nicht, was das Wort bedeutet.
evidence-sentence-invited = { $wanted ->
    [0] Noch zählt keine Einladung, bei der { $name } die Sache wollte.
    [one] Eingeladen, als { $name } die Sache wollte, gab es { $pressed } von { $wanted } Mal einen Druck.
   *[other] Eingeladen, als { $name } die Sache wollte, gab es { $pressed } von { $wanted } Malen einen Druck.
} { $presses ->
    [0] Noch kein Druck bei einer Einladung zu „{ $word }“.
   *[other] Von { $presses ->
        [one] { $presses } Druck
       *[other] { $presses } Drücken
    } bei Einladungen zu „{ $word }“ { $right ->
        [one] war { $right } dieses Wort
       *[other] waren { $right } dieses Wort
    }: { $above ->
        [few] noch zu früh, um etwas zu sagen
        [yes] mehr als Zufall
        [chosen] mehr, als Zufall brächte, doch das kann an der Wahl der Momente liegen
       *[other] bisher nicht mehr als Zufall
    }.
}
evidence-presses-more = { $more ->
    [one] Einer dieser { $presses } Drücke kam, als { $name } die Sache nicht wollte oder niemand es notierte: Unter den { $wanted } fehlt er.
   *[other] { $more } dieser { $presses } Drücke kamen, als { $name } die Sache nicht wollte oder niemand es notierte: Unter den { $wanted } fehlen sie.
}
evidence-stage = Stufe: { $stage }
evidence-figures-point = Die Zahlen sprechen für { $stage }.
evidence-invitations = Einladungen
evidence-no-curve = Lernkurve: { $why }.
evidence-waiting = Zeit bis zum Druck, die Mitte: { $median }. Einladungen ohne Druck zählen bis zum Ende der Wartezeit (Kaplan–Meier).
evidence-waiting-open = nicht erreicht: auf zu wenige folgte ein Druck innerhalb der Wartezeit ({ $n ->
    [one] { $n } Einladung
   *[other] { $n } Einladungen
})
evidence-showings-presses = Zeigen und eigene Drücke
evidence-showings-a-day = Zeigen am Tag
evidence-showings = Zeigen
evidence-presses-a-day = Eigene Drücke am Tag
evidence-presses = Drücke
evidence-by-day-told = { $n } im Ganzen; { $began ->
    [before] die letzten sechs Wochen nach Tagen.
   *[other] nach Tagen, ab der ersten Aufzeichnung zum Wort am { $began }.
}
evidence-day-axis = Tag (montags benannt)
evidence-delivered = Gegeben nach dem Druck (mittlerer Wert): { $delay }.
evidence-then = Was { $name } dann tat
evidence-uptake = Nahm, was für dieses Wort gegeben wurde: { $this }; für die anderen Wörter: { $others }.
evidence-fisher = Exakter Test nach Fisher, zweiseitig: { $p }.
evidence-left-out = { $n ->
    [one] { $n } Druck, der nach Versehen aussah, zählt hier nicht mit.
   *[other] { $n } Drücke, die nach Versehen aussahen, zählen hier nicht mit.
}
evidence-stumbles = Eigene Drücke, die nach Versehen aussahen, von den beurteilten: { $share }.
evidence-causes = Wenn es nicht vorangeht: was dahinterstecken kann
evidence-how-computed = Wie diese Zahlen berechnet werden
evidence-may-be-said = Was sich sagen lässt
evidence-claim = „{ $word }“, { $what }: { $said }.
evidence-fidelity = Lehren wie verabredet, binnen { $seconds } nach dem Druck gegeben: { $share }.
evidence-claim-animal = { $name }: { $said }.
evidence-not-ruled-out = Was es stattdessen erklären kann:
evidence-made-unlikely = Was gegen andere Erklärungen getan ist und was von jeder bleibt:
evidence-rival = { $rival } ({ $standing })
evidence-plan-check = Eine Prüfung planen
evidence-behind-it = Was dahintersteht
evidence-nothing-drawn = Noch wurde nichts gelost. Was ein Mensch einzuladen oder zu geben wählte, kann etwas nahelegen; es beweist nichts, denn eine Wahl folgt der Stunde und der Hoffnung.
evidence-a-bet = Der Beleg ist, worauf eine Wette gegen den Zufall gewachsen wäre; er darf jederzeit gelesen werden. Alle Wörter eines Tiers werden zusammen beurteilt.
evidence-elsewhere = Gilt es auch anderswo?
evidence-settings = Die beiden Zahlen in verschiedenen Lagen
evidence-compared-what = Verglichen
evidence-which = Welches
evidence-settings-note = Nachdem ein Knopf verlegt wurde, drückt eine Platzgewohnheit den alten Platz: Die richtigen Drücke sinken. Kleine Zahlen sagen wenig; keine Zeile allein beweist etwas.
evidence-k-of-n = { $k } von { $n } – { $figure }
evidence-chance = Zufall
evidence-chance-even = eins von { $words } Wörtern wären { $share }
evidence-chance-habit = eins von { $words } Wörtern wären { $share }; wird zu anderen eingeladen, wird dieses gedrückt in { $elsewhere }
evidence-above-chance = { $above ->
    [yes] Bisher mehr als Zufall.
    [chosen] Mehr als Zufall bei Einladungen, deren Moment ein Mensch gewählt haben kann. Das hilft, den nächsten Schritt zu wählen; was sich sagen lässt, beruht auf Gelostem und verlangt mehr.
   *[other] Bisher nicht mehr als Zufall.
}
evidence-without-button = Wollte es: ohne Knopf gebeten
evidence-not-wanted = Wollte es da nicht oder ging weg
evidence-not-counted = { $n } (nicht gezählt)
evidence-unrecorded = Nicht notiert, ob genommen
evidence-not-counted-wanted = { $n } (nicht als gewollt gezählt)
evidence-curve = Lernkurve
evidence-curve-told = Wie oft es von Druck zu Druck richtig war, und wie weit das danebenliegen kann ({ $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
}). Ob es mehr als Zufall ist, wird einmal beurteilt: unter „Was sich sagen lässt“.
evidence-curve-few = { $n ->
    [0] Lernkurve: noch kein Druck bei einer Einladung.
   *[other] Lernkurve: zu wenige Drücke ({ $n ->
        [one] { $n } Druck
       *[other] { $n } Drücke
    }).
}
evidence-press-axis = Druck bei einer Einladung
evidence-band = 95-%-Band
evidence-after = { $after ->
    [after] Nach
    [given] gegeben
    [declined] jetzt nicht
    [took] nahm
    [ignored] ließ liegen
    [left] ging
    [again] wieder
   *[other] nicht gesehen
}
evidence-after-region = Was { $name } nach Antworten tat
evidence-answers = Eigene Drücke beantwortet: { $parts }. Eine Antwort zählt für den Druck, zu dem sie notiert ist, wenn ihre Zeiten keine drei Tage auseinanderliegen; eine ohne Druck für den letzten ihres Wortes in den zwei Minuten davor.
evidence-answer-times = { $answer ->
    [given] gegeben
    [partly] teilweise gegeben
    [declined] „jetzt nicht“
    [alternative] etwas anderes
   *[other] verpasst oder nicht notiert
} { $times ->
    [one] einmal
   *[other] { $times }-mal
}
evidence-step-on-today = Welcher eine Schritt daraus folgt, steht auf Heute
