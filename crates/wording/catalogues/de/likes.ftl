likes-test-title = { $format ->
    [paired] Vorlieben-Test: je zwei
    [multiple] Vorlieben-Test: alles in einer Reihe
    [single] Vorlieben-Test: eins nach dem anderen
   *[free_access] Vorlieben-Test: alles auf einmal, mit Stoppuhr
}
likes-stop-here = Hier aufhören: starke Zeichen von Stress wurden notiert. Gib Raum und locke nicht zurück. Der Test kann an einem anderen Tag weitergehen.
likes-trial = Durchgang { $number } von { $of } · Runde { $round } von { $rounds }
likes-done = Alle Durchgänge sind gemacht. Danke, { $name }.
likes-see-ranking = Die Reihenfolge ansehen
likes-noted-already = Das war schon notiert; nichts wurde geändert. Ist die letzte Antwort falsch, nimm Rückgängig.
likes-stop-for-now = Für jetzt aufhören
likes-goes-on-later = – Notiertes bleibt; der Test kann später weitergehen.
likes-last-chose = Zuletzt: { $thing }
likes-last-none = Zuletzt: nichts gewählt
likes-last-away = Zuletzt: weggegangen
likes-last-watched = Zuletzt: { $seconds } s beobachtet
likes-undo = Rückgängig
likes-undo-this = Rückgängig: { $what }
likes-away-is-an-answer = { $name } ist weggegangen, und das ist eine Antwort. Weiter, wenn { $name } von selbst zurückkommt, oder an einem anderen Tag.
likes-stand-in = „{ $thing }“ kann man nicht hinhalten: biete dafür { $stand_in } an. Wählt { $name } das, { $kind ->
    [touch] gib es sofort
    [training] macht es sofort
   *[other] geht sofort hin
}.
likes-no-stand-in = „{ $thing }“ kann man nicht neben etwas anderes halten. Biete an, was zu Hause dafür steht, immer dasselbe, etwa { $kind ->
    [touch] die Bürste oder die offene Hand
    [training] was ihr dafür braucht
   *[other] die Leine
}; oder nimm die Zeit frei.
likes-name-stand-in = Auf der Karte nennen
likes-time-freely = Frei die Zeit nehmen
likes-needs-stand-in = kann man nicht hinhalten: nenne auf der Karte, was dafür steht, oder nimm die Stoppuhr
likes-to-card = Karte öffnen
likes-stands = Was dafür steht
likes-stands-wrong = { $things } lässt sich nicht hinhalten. Nenn auf jeder Karte, was dafür steht, nimm den Haken weg oder hak unten ab
likes-stands-tick = Ich biete etwas an, das immer dafür steht, jedes Mal dasselbe
likes-shown-as = gezeigt als: { $stand_in }
likes-pieces = { $pieces } × „{ $thing }“
likes-food-left = Futterbelohnungen heute übrig: { $kcal } kcal ({ $pieces }). Ein genommenes Stück wird gezählt.
likes-food-short = Es reicht nicht für ein Stück von allem hier. Für heute aufhören, oder kleiner schneiden und die Karte ändern.
likes-food-unknown = Wie viel Futter { $name } heute haben darf, ist nicht bekannt. Ein genommenes Stück wird trotzdem gezählt.
likes-in-front = vor { $name }
likes-far-left = 1, ganz links von { $name } aus
likes-far-right = { $place }, ganz rechts von { $name } aus
likes-lay-one = Lege das hin; tippe es an, wenn { $name } kommt
likes-lay = Tippe an, was { $name } nimmt
likes-whose-left = Lege sie hin wie gezeichnet, so wie { $name } sie sieht. Stehst du { $name } gegenüber, ist links von { $name } aus rechts von dir.
likes-lay-all = Lege alle hin, in dieser Reihenfolge von links, wie { $name } sie sieht
likes-did-not-come = Kam nicht
likes-chose-none = Nichts gewählt
likes-walked-away = Weggegangen
likes-how-to-hold = Steh hinter der Mitte, { $held ->
    [all] halte beide gleich, sieh keines an
   *[some] halte jede Sache, oder was dafür steht, gleich und sieh keine an
}. Lass das Genommene genießen; räume die anderen weg.
likes-two-at-once = Werden zwei zugleich genommen, notiere nichts und biete sie noch einmal an.
likes-half-a-minute = Keine Wahl in etwa einer halben Minute heißt „nichts“.
likes-move-freely = Lass { $name } sich frei bewegen; fünf Minuten sind üblich. Nimm die Zeit, womit { $name } sich beschäftigt, eines nach dem anderen.
likes-begin = Anfangen
likes-times = Zeiten in Sekunden
likes-seconds-there = Sekunden, die die Sachen da waren
likes-seconds-busy = { $thing }: Sekunden damit beschäftigt
likes-pieces-eaten = { $thing }: gefressene Stücke
likes-note-times = Diese Zeiten notieren
likes-away-at-once = Ging sofort weg
likes-format = { $format ->
    [paired] Je zwei
    [multiple] Alles in einer Reihe, ohne Zurücklegen
    [single] Eins nach dem anderen
   *[free_access] Alles auf einmal, mit Stoppuhr
}
likes-about = { $format ->
    [paired] Jedes Paar einmal je Runde, Seiten ausgeglichen. Am sichersten; am längsten: 6 Sachen ergeben 15 Durchgänge. (Fisher et al. 1992)
    [multiple] Sachen in einer Reihe; Genommenes wird nicht zurückgelegt. Schnell: 6 Sachen ergeben 6 Durchgänge. (DeLeon & Iwata 1996)
    [single] Kommt { $name } überhaupt? Für ein Tier, das nicht zwischen Sachen wählt. (Pace et al. 1985)
   *[free_access] Alles liegt fünf Minuten da; du nimmst die Zeit, womit { $name } sich beschäftigt. Gut für Spiel und Orte. (Roane et al. 1998)
}
likes-new-title = Ein Vorlieben-Test
likes-not-today = Heute nicht: starke Zeichen von Stress wurden notiert. Gib { $name } Raum und teste an einem ruhigen Tag.
likes-back = Zurück zu Vorlieben
likes-nothing-listed = Noch ist nichts genannt, was { $name } wollen könnte.
likes-how-to-offer = Wie anbieten
likes-compare = Was vergleichen
likes-compare-hint = bis zu 12; fünf bis acht sind üblich
likes-rounds = Runden
likes-rounds-hint = jedes Paar (oder jede Reihe) einmal je Runde; eine oder zwei am Tag genügen
likes-where-to-test = Teste am Ort und zur Tageszeit, in der die Wörter gebraucht werden; ein sattes Tier mag Futter weniger. { $name } darf jederzeit gehen.
likes-format-missing = fehlt; wähle eine
likes-how-many = müssen { $least } bis { $most } Sachen sein, nicht { $ticked }; kreuze mehr oder weniger an
likes-rounds-missing = fehlen; 1 ist ein guter Anfang
likes-page-title = Was { $name } mag
likes-no-test-today = Heute kein Test: starke Zeichen von Stress wurden notiert. Gib Raum; ein ruhiger Tag kommt.
likes-nothing-tested = Noch ist nichts getestet. Ein Test zeigt, was { $name } wählt; die ersten Wörter sollten das meistgewählte sein.
likes-from-trials = { $trials ->
    [one] Aus einem Durchgang
   *[other] Aus { $trials } Durchgängen
}{ $choosing ->
    [all] { "" }
   *[other] , { $choosing } davon mit Auswahl
}; ohne Wahl: { $none }. Nicht zu wählen ist auch eine Antwort und bleibt.
likes-test-again = Noch einmal testen:
likes-new-test = Neuer Test
likes-ranking = Reihenfolge
likes-sheet = Ein Blatt davon zum Drucken
likes-disagree = Testarten können sich widersprechen: Hunde ordneten Futter zu zweit und in der Reihe verschieden; nur das letzte stimmte überein (Cameron, Siddall & Bizo 2021). Vorlieben ändern sich mit Stunde und Tag; ältere Durchgänge zählen weniger.
likes-known-how = Wie sicher: die Wahrscheinlichkeit, dass nichts anderes klar besser ist. 90 % genügen; bei 60 Durchgängen mit Auswahl ist Schluss, { $name } zuliebe.
likes-next = Was als Nächstes anbieten
likes-next-pair = { $left } links von { $name }, { $right } rechts.
likes-offer-pair = Dieses Paar jetzt anbieten
likes-tests-so-far = Tests bisher
likes-none-yet = Noch keine.
likes-test-line = { $trials ->
    [one] { $things } Sachen · ein Durchgang
   *[other] { $things } Sachen · { $trials } Durchgänge
}
likes-begun-by = begonnen von { $name }
likes-go-on = Weiter
likes-see = Ansehen
likes-this-test = Dieser Test
likes-this-n = { $trials ->
    [one] ein Durchgang
   *[other] { $trials } Durchgänge
}, davon ohne Wahl: { $none }
likes-thing = Sache
likes-offered = angeboten
likes-in-seconds = Sekunden
likes-taken = genommen
likes-sides = Seiten: die Zahlen
likes-side = Von links genommen: { $share }, { $p }.
likes-over-middling = Wahrscheinlichkeit, es etwas Mittlerem vorzuziehen
likes-chance = Wahrscheinlichkeit
likes-scores = Werte: { $format }
likes-score-of = { $format ->
    [single] Anteil der Angebote, zu denen es kam
    [free_access] Anteil der Zeit, damit beschäftigt
   *[other] Anteil der Angebote, bei denen es genommen wurde
}
likes-no-such-test = Dieses Notizbuch kennt keinen solchen Test dieses Tieres.
likes-not-offered = ist nichts, was { $name } angeboten werden darf
likes-same-twice = muss etwas anderes sein als links
likes-answer-wrong = muss eine der Sachen dieses Durchgangs sein, nichts oder weg
likes-seconds-missing = fehlt; gib die Sekunden an, die die Sachen da waren
likes-more-than-none = muss über 0 liegen
likes-longer-than-there = sind mehr als die Zeit, die die Sachen da waren
