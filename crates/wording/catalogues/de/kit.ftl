# Recording real buttons: the sheet that says how, and the page that records.
kit-title = Echte Knöpfe aufnehmen
kit-why = Das Hören von Sayso wurde an gemachten Klängen gemessen; ein echter Knopf wurde noch nicht aufgenommen. Aufnahmen echter Knöpfe zeigen, wie weit man ihm trauen kann.
kit-stays = Nichts wird verschickt: Du sicherst eine Datei auf diesem Gerät und entscheidest, wer sie bekommt.
kit-print = Anleitung drucken
kit-no-script = Zum Aufnehmen braucht es JavaScript; in diesem Browser ist es ausgeschaltet.
kit-before = Bevor du beginnst
kit-away = Kein Tier im Raum oder in Hörweite: Ein Wort, das erklingt und nichts bringt, lehrt, dass es nichts bedeutet.
kit-loud = Lass den Knopf so laut, wie er ist, und halte ihn von Ohren fern: Laut und nah kann er schaden.
kit-people = Sag es allen, die zu hören sind. Nennt keine Namen, solange aufgenommen wird.
kit-need = Du brauchst
kit-need-things = Einen oder mehrere Knöpfe, ein Telefon, ein Maßband und etwa 15 Minuten je Knopf.
kit-steps = Schritt für Schritt
kit-step = Schritt
kit-what-to-do = Was zu tun ist
kit-step-open = Öffne auf dem Telefon die Seite „{ $page }“ von der Seite Zuhören aus.
kit-step-agree = Lies, worin du einwilligst, und kreuze es an.
kit-step-say = Sag, was für ein Knopf und was für ein Telefon es ist: Größe, Form, Alter. Keine Namen von Herstellern oder Menschen.
kit-step-close = Ruhiger Raum: Halte das Telefon eine Handbreit vom Knopf und nimm einen Druck auf.
kit-step-presses = Leg das Telefon { $metres } m vom Knopf entfernt hin. Drück zehnmal, jedes Mal, wenn die Seite „Jetzt drücken“ sagt: alle sechs Sekunden.
kit-step-further = Mach dasselbe bei { $distances } m, mit nichts zwischen Knopf und Telefon.
kit-step-without = Nimm drei Minuten ohne Druck auf: Redet, geht umher, lasst das Radio laufen.
kit-step-again = Wenn du kannst, alles noch einmal in einem anderen Raum, mit anderem Geräusch oder mit einem anderen Telefon.
kit-step-save = Sichere die Datei, bevor du die Seite schließt.
kit-to-fill-in = Zum Ausfüllen von Hand, wenn du magst
kit-distance = Abstand
kit-metres = { $metres } m
kit-room = Raum
kit-noise = Was sonst klingt
kit-phone = Telefon
kit-presses = Drücke
kit-without = keiner, 3 Minuten
kit-agree = Worin du einwilligst
kit-consent = Alle, die zu hören sind, sind mit der Aufnahme einverstanden. Die Datei darf an Menschen gegeben werden, die messen und verbessern, wie Drücke gehört werden. Sie enthält Klang und was unten ausgefüllt wird, keine Namen.
kit-agreed = Wir sind einverstanden
kit-publish = Die Datei darf auch als Prüfklang veröffentlicht werden
kit-publish-hint = im Zweifel leer lassen
kit-about = Der Knopf und das Telefon
kit-word = Was der Knopf sagt
kit-button = Was für ein Knopf
kit-button-hint = Größe, Form, Alter, wie voll die Batterie ist; kein Name eines Herstellers
kit-phone-hint = Größe und Alter; kein Name eines Herstellers oder Menschen
kit-close = Der Knopf aus der Nähe
kit-close-how = Halte das Telefon in einem ruhigen Raum eine Handbreit vom Knopf und drück einmal. An diesem Klang wird der Knopf erkannt.
kit-take = Drücke aus der Entfernung
kit-rooms = { $room ->
    [kitchen] Küche
    [living] Wohnzimmer
    [bedroom] Schlafzimmer
    [hall] Flur oder Treppe
    [outdoors] im Freien
   *[other] ein anderer Raum
}
kit-noises = { $noise ->
    [quiet] still
    [talk] Leute reden
    [media] Radio, Musik oder Fernseher
    [machine] eine Maschine im Haus
    [outside] Straße oder Wetter
   *[other] etwas anderes
}
kit-marked = Wie Drücke markiert werden
kit-countdown = Durch Herunterzählen: drück, wenn die Seite es sagt
kit-tap = Durch Tippen: Jemand tippt, wenn der Knopf gedrückt wird
kit-recorded = Aufgenommen
kit-save = Sichern
kit-save-how = Eine Datei: die Klänge, was du ausgefüllt hast und worin ihr eingewilligt habt.
kit-lead = Hilf, das Hören zu messen: Nimm deine Knöpfe auf
