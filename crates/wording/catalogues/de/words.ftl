words-first = Erste Wörter
words-further = Weitere Wörter vorschlagen
words-none-yet = Noch kein Wort. Zwei oder drei reichen für den Anfang (üblich, ohne Quelle).
words-take = Diese Wörter nehmen
words-button-says = Die Taste sagt
words-says = „{ $says }“:
words-untested = Noch kein Vorlieben-Test: was { $name } mag, ist hier eine Vermutung.
words-test-first = Erst testen, etwa zehn Minuten
words-tested = { $trials ->
    [one] Aus einem Durchgang eines Vorlieben-Tests, dem Futter des Tages, der Dauer des Gebens und dem Klang der Wörter.
   *[other] Aus { $trials } Durchgängen von Vorlieben-Tests, dem Futter des Tages, der Dauer des Gebens und dem Klang der Wörter.
}
words-other-sets = Andere Zusammenstellungen ({ $sets })
words-left-out = Weggelassen, und warum ({ $things })
words-why-these = Warum diese?
words-score = Beste Mischung: beliebt, schnell gegeben, gut zu unterscheiden. Wert { $total }: Beliebtheit und Gaben { $liked }, Arten { $kinds }, Klangabstand { $apart }, schon gesagt { $said }.
words-best-in = In { $share } von { $draws } Ziehungen aus dem, was noch offen ist, die beste Zusammenstellung.
words-how-much = { $guess ->
    [yes] etwa { $times } Mal am Tag am Brett (bisher eine Vermutung)
   *[no] etwa { $times } Mal am Tag am Brett
}
words-not-tested = Noch nicht getestet: ob { $name } es mag, ist eine Vermutung.
words-picked = Chance, dass { $name } es etwas Mittlerem vorzieht: { $figure }.
words-scored = { $format ->
    [free_access] Damit beschäftigt im Test mit Stoppuhr: { $figure }.
   *[other] Im Test genommen: { $figure }.
}
words-seconds-measured = Das Geben dauert etwa { $seconds } s: zu Hause gemessen, n = { $n }.
words-seconds-kind = Das Geben dauert etwa { $seconds } s: wie bei anderem dieser Art zu Hause, n = { $n }, bis es eine eigene Zahl hat.
words-seconds-card = Das Geben dauert { $seconds } s, wie auf der Karte steht.
words-seconds-usual = Das Geben dauert etwa { $seconds } s: bei dieser Art üblich (ohne Quelle), bis es fünfmal gegeben wurde.
words-a-day-measured = An einem üblichen Tag { $times } Mal gegeben: an { $days } Tagen gemessen.
words-a-day-card = Höchstens { $times } Mal am Tag, wie auf der Karte steht.
words-a-day-usual = Höchstens { $times } Mal am Tag: bei dieser Art üblich (ohne Quelle).
words-pieces = { $pieces ->
    [one] Ein Stück am Tag passt in die Futtermenge, wenn sonst nichts als Belohnung gegeben wird.
   *[other] { $pieces } Stücke am Tag passen in die Futtermenge, wenn sonst nichts als Belohnung gegeben wird.
}
words-already-said = Ihr sagt dieses Wort schon oft.
words-sounds-like-one = Klingt fast wie „{ $other }“: ein anderes Wort ist leichter zu unterscheiden.
words-how-many = müssen für den Anfang 1 bis { $most } Wörter sein, nicht { $ticked }
words-must-not = Darf nicht gegeben werden: { $why }.
words-twice = „{ $says }“ ist schon auf einer anderen Taste; wähle ein anderes Wort
words-no-set = Noch kein Vorschlag: { $usable } der genannten Dinge können erste Wörter sein, { $needed } werden gebraucht.
words-too-many = Kein Vorschlag: zu viele Dinge zum Vergleichen. Lege zuerst einige weg.
words-no-allowance = Wie viel Futter { $name } haben darf, ist nicht festgelegt; so lässt es sich nicht einteilen.
words-bad-figure = Eine Zahl auf der Karte kann nicht stimmen.
words-not-at-board = Man kann es nicht immer wieder am Brett geben, und ein erstes Wort braucht viele schnelle Wiederholungen. Geht es doch, sag es auf der Karte.
words-no-piece = Die Futtermenge des Tages lässt kein Stück davon übrig.
words-too-slow = Dauert am Brett { $seconds } s, mehr als { $slowest } s: zu wenige Wiederholungen.
words-too-seldom = Kann { $times } Mal am Tag gegeben werden, weniger als { $fewest }.
words-no-company = Passt zu keinem anderen: { $needed } Wörter werden zusammen gebraucht.
words-outscored = { $by ->
    [liking] Weniger beliebt als die gewählten (Wert { $behind } niedriger).
    [uncertainty] Wie beliebt es ist, ist weniger sicher: teste es öfter (Wert { $behind } niedriger).
    [deliveries] Kann seltener gegeben werden als die gewählten (Wert { $behind } niedriger).
    [spread] Bringt keine neue Art dazu (Wert { $behind } niedriger).
    [apart] Klingt den anderen ähnlicher als die gewählten (Wert { $behind } niedriger).
   *[said] Ihr sagt es noch nicht, anders als die gewählten (Wert { $behind } niedriger).
}
words-give = { $says } geben.
words-asks-for = bittet um: { $name }
words-not-now = „Jetzt nicht“, einmal und ruhig; etwas anderes anbieten.
