generalise-compares = { $what ->
    [person] Person
    [room] Raum
    [time] Zeit
    [place] Platz des Knopfs
    [recording] Aufnahme
    [chooser] Wer das Wort wählte
   *[checks] Prüfungen
}
generalise-first-weeks = erste vier Wochen
generalise-next-weeks = Wochen 5 bis 12
generalise-later = später
generalise-after-move = zwei Wochen nach dem Umzug
generalise-after-recording = zwei Wochen nach einer neuen
generalise-otherwise = sonst
generalise-drawn = vom Notizbuch ausgelost
generalise-chosen = von einer Person gewählt
generalise-blind = blind
generalise-open = offen: jemand wusste es
