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
likes-away-is-an-answer = { $name } ist weggegangen, und das ist eine Antwort. Weiter, wenn { $name } von selbst zurückkommt, oder an einem anderen Tag.
likes-stand-in = { $thing } kann man nicht hinhalten: biete dafür { $stand_in } an. Wählt { $name } das, geht sofort hin.
likes-no-stand-in = { $thing } kann man nicht neben etwas anderes halten. Biete an, was zu Hause dafür steht, immer dasselbe, etwa die Leine; oder nimm die Zeit frei.
likes-name-stand-in = Auf der Karte nennen
likes-time-freely = Frei die Zeit nehmen
likes-needs-stand-in = kann man nicht hinhalten: nenne auf der Karte, was dafür steht, oder nimm die Stoppuhr
likes-shown-as = gezeigt als: { $stand_in }
likes-pieces = { $pieces } × { $thing }
likes-food-left = Futterbelohnungen heute übrig: { $kcal } kcal ({ $pieces }). Ein genommenes Stück wird gezählt.
likes-food-short = Es reicht nicht für ein Stück von allem hier. Für heute aufhören, oder kleiner schneiden und die Karte ändern.
likes-food-unknown = Wie viel Futter { $name } heute haben darf, ist nicht bekannt. Ein genommenes Stück wird trotzdem gezählt.
likes-in-front = vor { $name }
likes-to-the-left = links von { $name }
likes-to-the-right = rechts von { $name }
likes-far-left = 1, ganz links von { $name }
likes-far-right = { $place }, ganz rechts von { $name }
likes-lay-one = Lege das hin; tippe es an, wenn { $name } kommt
likes-lay = Lege sie hin, wie { $name } sie sieht; tippe an, was { $name } nimmt
likes-lay-all = Lege alle hin, in dieser Reihenfolge von links, wie { $name } sie sieht
likes-did-not-come = Kam nicht
likes-chose-none = Nichts gewählt
likes-walked-away = Weggegangen
likes-how-to-hold = Steh hinter der Mitte, halte beide gleich, sieh keines an. Lass das Genommene genießen; räume die anderen weg.
likes-two-at-once = Werden zwei zugleich genommen, notiere nichts und biete sie noch einmal an.
likes-half-a-minute = Keine Wahl in etwa einer halben Minute heißt „nichts“.
likes-move-freely = Lass { $name } sich frei bewegen; fünf Minuten sind üblich. Nimm die Zeit, womit { $name } sich beschäftigt, eines nach dem anderen.
likes-begin = Anfangen
likes-times = Zeiten in Sekunden
likes-seconds-there = Sekunden, die die Dinge da waren
likes-seconds-busy = { $thing }: Sekunden damit beschäftigt
likes-pieces-eaten = { $thing }: gefressene Stücke
likes-note-times = Diese Zeiten notieren
likes-away-at-once = Ging sofort weg
