log-title = Protokoll
log-judge-heard = Gehörte Drücke beurteilen
log-about = Alles, was für { $name } notiert ist, das Neueste zuerst. Nichts wird je gelöscht: Was rückgängig gemacht oder bearbeitet wird, behält seinen ersten Eintrag.
log-filter = Auswählen
log-filtered = Gezeigt: { $what }
log-day = Tag
log-kind = Art
log-word = Wort
log-person = Notiert von
log-any = alle
log-show = Zeigen
log-show-all = Alles zeigen
log-kind-name = { $kind ->
    [presses] Drücke
    [answers] Antworten
    [sessions] Sitzungen
    [invitations] Einladungen und Runden
    [signs] Zeichen
    [food] Futter
    [likes] Vorlieben-Tests
    [checks] Prüfungen, Tausche, Versuche
    [cards] Karten, Brett und Regeln
   *[other] andere Notizen
}
log-nothing = Noch ist nichts notiert.
log-nothing-such = Hier ist nichts dergleichen notiert.
log-newest = Neueste
log-newer = Neuere
log-older = Ältere
log-pages = Seiten des Protokolls
log-undone = Rückgängig gemacht: { $what }
log-edited = Geändert. Zuerst notiert: { $what }, { $when }
log-when = { $day }, { $time }
log-noted = { $when }{ $who ->
    [none] { "" }
   *[other] { " " }· { $who }
}{ $how ->
    [heard] { " " }· gehört
    [device] { " " }· von einem Gerät
    [import] { " " }· importiert
   *[other] { "" }
}{ $twice ->
    [no] { "" }
   *[other] ; auch getippt, zählt also einmal
}
log-edit = Ändern
log-edit-this = Ändern: { $what }, { $when }
log-undo = Rückgängig
log-undo-this = Rückgängig: { $what }, { $when }
log-bring-back = Zurückholen
log-bring-back-this = Zurückholen: { $what }, { $when }
log-time = Uhrzeit
log-time-zone = in { $zone }
log-time-wrong = Die Uhrzeit { $what }.
log-time-form = muss eine Zeit sein wie 18:30 oder 18:30:05
log-time-ahead = liegt in der Zukunft; sie muss jetzt oder früher sein
log-who-pressed = Wer hat gedrückt?
log-by = { $by ->
    [animal] { $name }
    [person] ein Mensch, zum Zeigen
   *[other] niemand sah es
}
log-meant = Sah es gewollt aus?
log-accident = { $accident ->
    [no] es sah gewollt aus
    [likely] es sah nach Versehen aus
   *[other] nicht zu sagen
}
log-how-answered = Wie wurde geantwortet?
log-what-then = Was { $name } dann tat
log-how-strong = Wie stark?
log-took = Nahm { $name } die Sache?
log-yes = ja
log-no = nein
log-not-seen = nicht gesehen
log-back = Zurück zum Protokoll
log-ahead = { $n ->
    [one] 1 Ereignis trägt eine Zeit nach jetzt.
   *[other] { $n } Ereignisse tragen eine Zeit nach jetzt.
}
log-ahead-why = { $n ->
    [one] Es ist von { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
   *[other] Das erste ist von { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
} Die Uhr des Geräts, das dies notierte, ging vor. Karten und Aufnahmen zählen schon; alles andere zählt ab seiner Zeit. Stell die Uhr richtig und bearbeite die Zeiten im Protokoll.
log-no-such-event = Das Protokoll kennt kein solches Ereignis.
log-took-choice = muss ja, nein oder offen sein
log-id-without-time = Die Adresse nennt eine id, aber nicht, vor welcher Zeit: ?before=<time>&id=<id>
log-on-its-own-page = wird auf der eigenen Seite geändert: Karten unter Menschen, Einwilligung unter Wer das sehen kann
log-about-server = Alles, was für { $name } notiert ist, das Neueste zuerst. Was zurückgenommen oder geändert wird, behält seinen ersten Eintrag. Alles geht nur, wenn das ganze Zuhause gelöscht wird.
