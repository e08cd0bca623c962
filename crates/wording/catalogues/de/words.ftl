words-first = Erste Wörter
words-further = Weitere Wörter vorschlagen
words-none-yet = Noch kein Wort. Zwei oder drei reichen für den Anfang (üblich, ohne Quelle).
words-take = Diese Wörter nehmen
words-button-says = Der Knopf sagt
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
words-how-much = { $basis ->
    [measured] Bisher etwa { $times ->
        [one] einmal
       *[other] { $times }-mal
    } am Tag gegeben
   *[most] Höchstens etwa { $times ->
        [one] einmal
       *[other] { $times }-mal
    } am Tag
}{ $guess ->
    [yes] , geschätzt
   *[no] { "" }
}
words-how-much-by = { $by ->
    [time] Mehr passt nicht in fünf Minuten am Brett.
    [food] Mehr lässt das Futter des Tages nicht zu.
    [card] Mehr lässt die Karte nicht zu.
   *[usual] Mehr ist für diese Art nicht üblich; gib es so oft, wie es passt.
}{ $guess ->
    [yes] { " " }Bisher ist das eine Vermutung; deine Aufzeichnungen treten an ihre Stelle.
   *[no] { "" }
}
words-not-tested = Noch nicht getestet: ob { $name } es mag, ist eine Vermutung.
words-picked = Wahrscheinlichkeit, dass { $name } es etwas Mittlerem vorzieht: { $figure }.
words-scored = { $format ->
    [free_access] Damit beschäftigt im Test mit Stoppuhr: { $figure }.
   *[other] Im Test genommen: { $figure }.
}
words-seconds-measured = Das Geben dauert etwa { $seconds } s: zu Hause gemessen, n = { $n }.
words-seconds-kind = Das Geben dauert etwa { $seconds } s: wie bei anderem dieser Art zu Hause, n = { $n }, bis es eine eigene Zahl hat.
words-seconds-card = Das Geben dauert { $seconds } s, wie auf der Karte steht.
words-seconds-usual = Das Geben dauert etwa { $seconds } s: bei dieser Art üblich (ohne Quelle), bis es fünfmal gegeben wurde.
words-a-day-measured = An einem üblichen Tag { $times ->
    [one] einmal
   *[other] { $times }-mal
} gegeben: an { $days ->
    [one] einem Tag
   *[other] { $days } Tagen
} gemessen.
words-a-day-card = Höchstens { $times ->
    [one] einmal
   *[other] { $times }-mal
} am Tag, wie auf der Karte steht.
words-a-day-usual = Höchstens { $times ->
    [one] einmal
   *[other] { $times }-mal
} am Tag: bei dieser Art üblich (ohne Quelle).
words-pieces = { $pieces ->
    [one] Ein Stück am Tag passt in die Futtermenge, wenn sonst nichts als Belohnung gegeben wird.
   *[other] { $pieces } Stücke am Tag passen in die Futtermenge, wenn sonst nichts als Belohnung gegeben wird.
}
words-already-said = Ihr sagt dieses Wort schon oft.
words-sounds-like-one = Klingt fast wie „{ $other }“: ein anderes Wort ist leichter zu unterscheiden.
words-how-many = müssen für den Anfang 1 bis { $most } Wörter sein, nicht { $ticked }
words-must-not = Darf nicht gegeben werden: { $why }.
words-twice = „{ $says }“ ist schon auf einem anderen Knopf; wähle ein anderes Wort
words-no-set = Noch kein Vorschlag: Von den genannten Sachen eignen sich { $usable } als erste Wörter, nötig sind { $needed }.
words-too-many = Kein Vorschlag: zu viele Sachen zum Vergleichen. Lege zuerst einige weg.
words-no-allowance = Wie viel Futter { $name } haben darf, ist nicht festgelegt; so lässt es sich nicht einteilen.
words-bad-figure = Eine Zahl auf der Karte kann nicht stimmen.
words-not-at-board = Man kann es nicht immer wieder am Brett geben, und ein erstes Wort braucht viele schnelle Wiederholungen. Geht es doch, sag es auf der Karte.
words-no-piece = Die Futtermenge des Tages lässt kein Stück davon übrig.
words-too-slow = Dauert am Brett { $seconds } s, mehr als { $slowest } s: zu wenige Wiederholungen.
words-too-seldom = Kann { $times } Mal am Tag gegeben werden, weniger als { $fewest }.
words-no-company = Passt zu keinem anderen: { $needed } Wörter werden zusammen gebraucht.
words-as-good = { $cautioned ->
    [yes] Ebenso gut; was nur wenig gegeben werden soll, steht zurück. Du kannst es stattdessen nehmen.
   *[no] Ebenso gut; du kannst es stattdessen nehmen.
}
words-outscored = { $by ->
    [liking] Weniger beliebt als die gewählten (Wert { $behind } niedriger).
    [uncertainty] Wie beliebt es ist, ist weniger sicher: teste es öfter (Wert { $behind } niedriger).
    [deliveries] Kann seltener gegeben werden als die gewählten (Wert { $behind } niedriger).
    [spread] Bringt keine neue Art dazu (Wert { $behind } niedriger).
    [apart] Klingt den anderen ähnlicher als die gewählten (Wert { $behind } niedriger).
   *[said] Ihr sagt es noch nicht, anders als die gewählten (Wert { $behind } niedriger).
}
words-give = Gib, worum „{ $says }“ bittet.
words-asks-for = bittet um: { $name }
words-not-now = „{ $said }“, einmal und ruhig; etwas anderes anbieten.
words-not-now-said = Jetzt nicht
words-size-leaves-out = und Plätze je Reihe lassen einen Platz mit Wort weg; ändere erst die Größe und sieh nach
words-cannot-give = darf { $name } nicht gegeben werden: { $why }. Wähle etwas anderes
words-page-title = Wörter von { $name }
words-add = Ein Wort hinzufügen
words-labels = Etiketten
words-where-they-are = Wo sie liegen
words-not-drawn = Das Brett ist noch nicht gezeichnet. Damit lässt sich ein Druck am Ort erkennen.
words-edit-board = Das Brett ändern
words-closing-word = Schlusswort
words-means = Heißt
words-answer = Antwort
words-not-now-title = Jetzt nicht
words-not-written = noch nicht geschrieben
words-given = Gegeben wird
words-card-and-stage = Karte und Stufe
words-of = von { $says }
words-these-alike = Diese klingen sehr ähnlich:
words-different = Ein anderes Wort für eines davon ist leichter zu unterscheiden.
words-off = Weggenommen, oder für andere ({ $words })
words-to-others = für andere
words-shown = { $shown ->
    [0] noch nicht gezeigt
    [one] einmal gezeigt
   *[other] { $shown }-mal gezeigt
} · in 28 Tagen { $own ->
    [0] nie
    [one] einmal
   *[other] { $own }-mal
} von selbst gedrückt
words-stage = { $stage ->
    [prepare] vorbereiten
    [show] zeigen
    [invite] einladen
   *[converse] sich unterhalten
}
words-on-another = ist schon auf einem anderen Knopf; wähle ein anderes Wort, oder öffne jene Karte
words-gives-nothing = nichts: es sagt nur etwas
words-new-title = Ein neues Wort
words-quoted = „{ $says }“
words-kept = Gespeichert.
words-alike-here = Klingt fast wie ein anderes Wort hier und ist vielleicht schwer zu unterscheiden: { $how }. Ein anderes Wort für eines davon ist sicherer.
words-says-hint = kurz, und anders als die anderen
words-means-here = Es heißt hier
words-means-hint = was es erbittet oder sagt
words-answer-by = Alle antworten so
words-answer-hint = jedes Mal gleich, etwa: ein Stück in drei Sekunden geben
words-when-not-now = Wenn die Antwort „jetzt nicht“ ist, tun alle
words-not-now-hint = dies
words-what-given = Was gegeben wird
words-is-closing = ein Schlusswort: es beendet die Sitzung und beruhigt
words-taught-to = Für
words-on-board = auf dem Brett (abwählen nimmt es weg; Notiertes bleibt)
words-back = Zurück zu Wörtern
words-rules-for = Hausregeln dafür
words-rules-none = Keine eigenen.
words-no-such = Dieses Notizbuch kennt dieses Wort nicht.
words-board-title = Das Brett
words-would-move = Ein Wort, das wandert, muss neu gefunden werden: lass bekannte Wörter, wo sie sind, wenn du kannst. Das würde wandern:
words-rows = Reihen
words-columns = Plätze je Reihe
words-change-size = Größe ändern
words-board-language = Sprache der Wörter
words-board-language-hint = die der Knöpfe; ähnlich klingende Wörter werden nach ihrer Schreibung gefunden
words-not-on-it = Nicht darauf: { $words }.
words-propose-places = Plätze dafür vorschlagen
words-places-stay = Wörter auf dem Brett bleiben. Ähnlich klingende liegen getrennt, viel genutzte in Reichweite.
words-yes-move = Ja, verschieben
words-mat = Lass neben dem meistgedrückten Wort einen Platz frei, trenne ähnlich klingende Wörter und lege das Brett auf eine griffige Matte: ein Brett, das rutscht oder klappert, wird gemieden. Verschraube die Batteriedeckel.
words-to-place = „{ $says }“ in Reihe { $row }, Platz { $place }
words-off-board = „{ $says }“ vom Brett
words-move-unticked = ist nicht angekreuzt: genutzte Wörter würden den Platz wechseln
words-size-missing = fehlen; gib 1 bis 20 an
words-no-places = können nicht vorgeschlagen werden: { $why }
words-as-you-stand = Wie du davor stehst.
words-taken-off = weggenommen
words-which-where = Welches Wort wo, wie du davor stehst
words-places = Plätze
words-place = Reihe { $row }, Platz { $place }
words-place-taken = hat ein Wort, das schon in Reihe { $row }, Platz { $place } steht; wähle eines von beiden
words-recording = Aufnahme
words-no-recording = Hier ist keine Aufnahme gespeichert. Für den Anfang genügt die auf dem Knopf: sprich sie leise auf, ein Wort, mit gewohnter Stimme, ohne Lärm. Ist derselbe Klang auch hier, kann ein Mikrofon Drücke hören.
words-sound-file = Tondatei
words-sound-file-hint = WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF oder WebM; genau der Klang, der auf dem Knopf ist
words-keep-and-check = Speichern und prüfen
words-record-softly = Lautes Abspielen nah am Ohr kann erschrecken oder schaden: sprich leise auf und lass { $name } herankommen.
words-check-nothing = Nichts zu beanstanden.
words-check-found = Die Prüfung fand:
words-recording-of = Aufnahme von { $says }
words-play-unheard = Spiel es ab, wo { $name } es nicht hört: ein Wort, das klingt und nichts bringt, lehrt, dass es nichts bedeutet.
words-sound-not-stored = { $seconds } s lang. Die Tondatei ist hier nicht gespeichert.
words-sound-not-stored-lufs = { $seconds } s lang, Lautheit { $lufs } LUFS. Die Tondatei ist hier nicht gespeichert.
words-sound-unreadable = Der Klang ist nicht lesbar: { $why }.
words-no-such-recording = Hier gibt es keine solche Aufnahme.
words-picture-told = Wellenform, darunter die Stärke jeder Tonhöhe über die Zeit
words-picture-label = Bild der Aufnahme, { $seconds } Sekunden lang
words-stage-means = { $stage ->
    [prepare] Karte, Aufnahme und Platz werden geklärt; noch kein Zeigen
    [show] Menschen drücken, sagen und geben; nichts wird verlangt
    [invite] ein Angebot, eine Wartezeit, dann zeigen und trotzdem geben
   *[converse] { $name } drückt ungefragt; alle antworten
}
words-stage-with = Stufe mit { $name }
words-stage-now = Jetzt: { $stage }, { $means }.
words-figures-agree = Die Zahlen sprechen für dasselbe.
words-figures-differ = Die Zahlen sprechen für { $stage }: { $means }.
words-figures-behind = Weshalb
words-because = Weil:
words-would-change = Was es ändern würde:
words-fact-shown = Gezeigt
words-fact-shown-times = { $times ->
    [0] noch nicht
    [one] einmal
   *[other] { $times }-mal
}{ $week ->
    [0] , nicht in den letzten sieben Tagen
    [one] , einmal in den letzten sieben Tagen
   *[other] , { $week }-mal in den letzten sieben Tagen
}
words-fact-delay = Vom Druck bis zum Geben
words-fact-response = Gedrückt, wenn eingeladen und gewollt
words-fact-own = Eigene Drücke in 28 Tagen
words-never-counted = Nicht zu drücken zählt nie als Nichtverstehen.
words-work-at = Daran arbeiten als
words-back-no-loss = Eine Stufe zurück ist kein Verlust.
words-stage-why = Warum
words-stage-why-hint = wenn du magst
words-stage-set = Stufe festlegen
