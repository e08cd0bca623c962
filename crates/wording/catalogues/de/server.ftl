server-title = Der Server
server-intro = Zahlen und Größen, nichts von dem, was in den Zuhause geschrieben wird.
server-homes = Zuhause
server-left = Gegangene Zuhause
server-clubs = Clubs
server-accounts = Konten
server-memory = Geschichten im Speicher, dieser Prozess
server-megabytes = { $value } MB
server-unfinished = { $count ->
    [one] { $count } Zuhause ist gegangen, aber sein Protokoll ist noch hier.
   *[other] { $count } Zuhause sind gegangen, aber ihre Protokolle sind noch hier.
}
server-sign-in-again = Neu anmelden, um etwas zu ändern
server-why-again = Was hier getan wird, braucht eine Anmeldung der letzten Minuten.
server-finish = Jetzt löschen
server-open-homes = Zuhause eröffnen
server-open-homes-what = Jedes bekommt ein leeres Notizbuch und einen Link für die erste Person, die es verwaltet. Du siehst davon nichts.
server-how-many = Wie viele, höchstens { $most }
server-how-many-wrong = muss eine ganze Zahl von 1 bis { $most } sein
server-open = Eröffnen und Links bekommen
server-waiting = { $count ->
    [one] { $count } Zuhause wartet auf die erste Person, die es verwaltet
   *[other] { $count } Zuhause warten auf die erste Person, die sie verwaltet
}
server-waiting-what = Ein verlorener oder abgelaufener Link wird durch einen neuen ersetzt. Der erste eingelöste zählt; die anderen gelten dann nicht mehr.
server-new-link = Neuer Link
server-members = { $count ->
    [one] { $count } Rolle
   *[other] { $count } Rollen
}
server-club-name = Name eines neuen Clubs
server-open-club = Club eröffnen
server-keepers = Wer den Server verwaltet
server-end-keeper = Beenden
server-invite-keeper = Noch jemanden zum Verwalten des Servers einladen
server-sessions = Sitzungen eines Kontos
server-sessions-what = Wenn ein Konto in falschen Händen ist: Alle seine Geräte werden sofort abgemeldet. Die Person meldet sich neu an.
server-account-id = Kennung des Kontos, wie seine Seite sie nennt
server-end-sessions = Alle seine Sitzungen beenden
server-links = { $count ->
    [one] { $count } Link
   *[other] { $count } Links
}
server-stopped = Nach { $made } angehalten: { $why } Die folgenden sind eröffnet.
server-number = Nummer
server-link = Link für die erste Person
server-until = Gilt bis
server-back = Zurück zum Server
server-club-name-missing = fehlt: Gib dem Club einen Namen
server-account-missing = ist keine Kennung eines Kontos: Kopiere sie von der Seite des Kontos
server-sessions-ended = { $count ->
    [one] { $count } Sitzung beendet.
   *[other] { $count } Sitzungen beendet.
}
server-anew = Ein Zuhause ohne Zugang
server-anew-what = Wenn alle, die es verwalten, Telefon, Post und Codes verloren haben, lade jemanden neu dazu ein. Sieh sicher nach, wer fragt: Wer den Link einlöst, hat das Zuhause.
server-anew-told = Das Zuhause erfährt, wer das wann getan hat. Wer noch hineinkommt, kann es ablehnen. Kein Konto, das den Server verwaltet, kommt damit hinein.
server-anew-whose = Kennung des Zuhauses; oder Kennung oder E-Mail-Adresse eines Kontos, das es verwaltet
server-anew-invite = Jemanden neu zum Verwalten einladen
server-anew-from = Er lässt jemanden hinein von { $from } bis { $until }, einmal.
server-anew-unknown = ist kein Zuhause hier, das schon jemand verwaltet hat: Kopiere die Kennung von der Seite eines Kontos oder von gedruckten Codes
server-anew-several = verwaltet mehrere Zuhause: Gib die Kennung des Zuhauses an
server-anew-open = wurde schon neu eingeladen: Der Link gilt noch
server-club-taken = heißt hier schon ein Club: Wähl einen anderen Namen
server-not-by-role = Deine Rolle reicht hier nicht so weit. Frag, wer den Server verwaltet.
server-account-unknown = ist hier kein Konto: Kopiere sie von der Seite des Kontos
server-utc = { $at } UTC
