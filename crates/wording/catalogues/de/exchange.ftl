exchange-title = Dateien hinein und heraus
exchange-title-taken = Aufgenommen
exchange-title-look = Sieh nach, bevor du es aufnimmst
exchange-gone = Diese Datei ist hier nicht mehr vorhanden. Wähle sie noch einmal.
exchange-bring = Eine Datei hereinholen
exchange-bring-intro = Zuerst siehst du, was darin ist. Nichts wird aufgenommen, bevor du es sagst, und nichts von dem, was hier ist, wird dadurch geändert oder geht verloren.
exchange-file = Die Datei
exchange-file-hint = Eine Tabelle (.csv), Zeilen in JSON (.jsonl), ein Archiv mit Aufnahmen (.tar) oder eine Sicherung (.sayso); höchstens { $most } MiB
exchange-file-hint-server = Eine Tabelle (.csv), Zeilen in JSON (.jsonl) oder ein Archiv mit Aufnahmen (.tar); höchstens { $most } MiB
exchange-look = Ansehen
exchange-columns = Was eine Tabelle enthalten darf und mit welchen Spalten: { $page }.
exchange-columns-title = Dateien im Einzelnen
exchange-out = Alles herausholen
exchange-out-intro = Jede enthält jeden Eintrag, wie er zuerst notiert wurde. Bewahre Kopien da auf, wo nur du sie lesen kannst: Sie erzählen von deinen Tagen.
exchange-backup = Sicherung
exchange-backup-hint = Einträge und Aufnahmen, mit Prüfung, dass sie ganz ist; zum Aufbewahren und Zurückholen
exchange-backup-save = Sicherung speichern
exchange-archive = Archiv
exchange-archive-hint = Einträge und Aufnahmen als einfache Dateien, die jedes System auspackt
exchange-archive-save = Archiv speichern
exchange-table = Tabelle
exchange-table-hint = nur Einträge, für eine Tabellenkalkulation (CSV)
exchange-table-save = Tabelle speichern
exchange-lines = Zeilen in JSON
exchange-lines-hint = nur Einträge, für ein anderes Programm
exchange-lines-save = Zeilen speichern
exchange-to-people = Zurück zu Menschen
exchange-begin-new = Stattdessen ein neues Notizbuch beginnen
exchange-several-box = Mit allen in einem Notizbuch beginnen
exchange-other-box = Auch ein anderes Zuhause aufnehmen
exchange-leave-out-box = Zeilen mit Fehlern weglassen
exchange-leave-out-hint = { $count ->
    [one] eine Zeile kommt nicht herein
   *[other] { $count } Zeilen kommen nicht herein
}
exchange-nothing-taken = „{ $name }“: noch nichts davon ist aufgenommen.
exchange-several = Mehrere Zuhause
exchange-several-intro = Dieses Notizbuch ist leer, und die Datei enthält mehrere Zuhause: { $homes }.
exchange-another = Ein anderes Zuhause
exchange-another-intro = Die Datei enthält Einträge eines Zuhauses, das dieses Notizbuch nicht hat: { $homes }.
exchange-for-good = Jedes Zuhause behält seine Tiere, Wörter und Zahlen, aber einmal in einem Notizbuch lassen sie sich nicht mehr trennen.
exchange-faults = Fehler
exchange-faults-intro = Am besten berichtigst du sie in der Datei und bringst sie noch einmal: Zeilen, die schon da sind, sind dann bekannt.
exchange-take-in = Aufnehmen
exchange-nothing-new = Es ist nichts darin, was aufzunehmen wäre.
exchange-away = Nicht aufnehmen
exchange-rows = Zeilen
exchange-new = Neu
exchange-known = Schon bekannt
exchange-other-id = Ein anderer Eintrag hat ihre Kennung
exchange-other-faults = Mit anderen Fehlern
exchange-recordings = Aufnahmen
exchange-days = Tage
exchange-from-to = { $from } bis { $to }
exchange-by-kind = Neue Einträge nach Art
exchange-later = { $count ->
    [one] Ein Eintrag der Art { $kind }: Eine spätere Version hat ihn geschrieben. Er bleibt erhalten, wird aber nicht gezeigt. Aktualisiere dieses Programm.
   *[other] { $count } Einträge der Art { $kind }: Eine spätere Version hat sie geschrieben. Sie bleiben erhalten, werden aber nicht gezeigt. Aktualisiere dieses Programm.
}
exchange-and-more = Und { $count } weitere.
exchange-times = { $count ->
    [one] einmal
   *[other] { $count }-mal
}
exchange-fault = { $times }{ $place }: erwartet wurde { $wanted }.
exchange-fault-found = { $times }{ $place }: gefunden „{ $found }“; erwartet wurde { $wanted }.
exchange-fault-found-one-of = { $times }{ $place }: gefunden zum Beispiel „{ $found }“; erwartet wurde { $wanted }.
exchange-fault-said = { $times }{ $place }: { $what }.
exchange-in-lines = { $count ->
    [one] (Zeile { $lines })
   *[other] (Zeilen { $lines })
}
exchange-in-more-lines = (Zeilen { $lines } und weitere)
exchange-whose = Wem sie gehören
exchange-unnamed = Ein Zuhause ohne Namen ({ $id })
exchange-share-new = { $count } neu
exchange-share-backup = { $count } in der Sicherung
exchange-not-here = { $share }, nicht in diesem Notizbuch
exchange-new-events = Neue Einträge
exchange-other-content = Hier mit anderem Inhalt
exchange-unsound = Fehlerhaft
exchange-new-recordings = Neue Aufnahmen
exchange-known-recordings = Bekannte Aufnahmen
exchange-damaged-recordings = Beschädigte Aufnahmen
exchange-conflicts = Wo ein Eintrag hier anders lautet als in der Sicherung, bleibt, was hier steht.
exchange-no-digest = Sie stammt von einer früheren Version und trägt keine Prüfsumme: Ein Schaden könnte unbemerkt sein.
exchange-report = „{ $name }“: { $counts }. Die Datei selbst wird hier nicht aufbewahrt.
exchange-counts = { $count ->
    [one] ein Eintrag neu, { $known } schon bekannt
   *[other] { $count } Einträge neu, { $known } schon bekannt
}
exchange-counts-recordings = { $count ->
    [one] eine Aufnahme neu, { $known } schon bekannt
   *[other] { $count } Aufnahmen neu, { $known } schon bekannt
}
exchange-damaged = { $count ->
    [one] Eine Aufnahme darin ist beschädigt und bleibt draußen.
   *[other] { $count } Aufnahmen darin sind beschädigt und bleiben draußen.
}
exchange-kept-here = { $count ->
    [one] Ein Eintrag hier lautet anders als in der Sicherung. Was hier steht, ist geblieben.
   *[other] { $count } Einträge hier lauten anders als in der Sicherung. Was hier steht, ist geblieben.
}
exchange-unsound-left = { $count ->
    [one] Weggelassen, weil schon beim Sichern fehlerhaft: ein Eintrag.
   *[other] Weggelassen, weil schon beim Sichern fehlerhaft: { $count } Einträge.
}
exchange-another-file = Eine andere Datei
exchange-nameless = die Datei
exchange-moves-in = Die Datei ist das Notizbuch eines anderen Zuhauses ({ $home }). Seine Einträge werden zu denen dieses Zuhauses, mit ihren Kennungen. Schreib von da an nur noch hier: Was später im alten Notizbuch dazukommt, kommt nur herüber, wenn seine Datei noch einmal gebracht wird.
exchange-diary = Als Tagebuch gelesen
exchange-diary-intro = Diese Tabelle hat eigene Spalten. So werden sie gelesen; stimmt das nicht, nimm sie nicht auf.
exchange-diary-column = { $part ->
    [day] „{ $column }“: der Tag
    [time] „{ $column }“: die Uhrzeit
    [word] „{ $column }“: das Wort, das das Tier gedrückt hat
    [who] „{ $column }“: welches Tier; bei einer Bemerkung auch welcher Mensch
   *[note] „{ $column }“: eine Bemerkung
}
exchange-diary-rules = Jedes Wort zählt als Druck des Tiers; ob gewollt, bleibt offen. Ein Tag ohne Uhrzeit steht auf 12 Uhr mittags.
exchange-diary-first = Ein Tagebuch braucht zuerst das Tier und seine Wörter. Fang mit ihnen an und bring die Datei dann unter „Dateien hinein und heraus“.
exchange-help = So kann eine Tabelle aussehen
exchange-help-found = Gefundene Spalten: { $columns }.
exchange-help-wanted = Gebraucht werden ein Tag oder eine Uhrzeit und ein Wort oder eine Bemerkung. Tage wie 2026-03-01, Zeiten wie 18:30. Wörter und Namen so, wie sie hier stehen. Nimm andere Spalten heraus.
exchange-help-save = Dieses Beispiel speichern
exchange-help-open = So kann ein Tagebuch aussehen
exchange-example =
    Datum,Uhrzeit,Wort,Wer,Notiz
    2026-03-01,18:30,Futter,Bo,kam vom Sofa
    2026-03-02,,,Bo,den ganzen Tag geschlafen
