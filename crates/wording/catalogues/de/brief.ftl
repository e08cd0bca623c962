brief-fill-card = Karte ausfüllen
brief-batteries = Batterie prüfen
brief-silent = Batterie und Knopf prüfen
brief-hard-to-make-out = Aufnahme von weitem anhören
brief-not-wanted = Ändern, was es bringt
brief-too-little = Öfter zeigen
brief-too-late = Schneller geben
brief-avoided = Knopf vorerst in Ruhe lassen
brief-time-or-place = Andere Zeit, ruhigerer Ort
brief-health = Zuerst zum Tierarzt
brief-sounds-alike = Ein anderes Wort
brief-people-differ = Auf eine Antwort einigen
brief-step-back = { $to ->
    [invite] Wieder einladen, kein Verlust
   *[other] Wieder zeigen, kein Verlust
}
brief-back-because = { $why ->
    [strain] Starke Stresszeichen in Sitzungen damit
    [card] Belohnung oder Antwort steht nicht fest
    [faded] Nach einigen Wochen verblasst
    [shown] Noch nicht oft genug gezeigt
    [seldom] Auf Einladung selten gedrückt
    [joins] An wenigen Sitzungen beteiligt
   *[other] Auf Einladung noch nicht sicher
}
brief-begin-inviting = Mit Einladen beginnen
brief-invite = Ein- oder zweimal einladen
brief-show = Zeigen
brief-show-at-end = Am Ende zeigen
brief-leave-to-animal = { $name } überlassen, immer antworten
brief-answer = Auf jeden Druck antworten
brief-signal-times = Zeigen, wann es das gibt
brief-rest = Heute nichts üben
brief-agreed = { $way ->
    [show] Zeigen
    [offer_in_view] Einladen, die Sache in Sicht
    [ask_and_point] Einladen, fragen und zeigen
   *[ask_between_two] Einladen, „dies oder das“
}
