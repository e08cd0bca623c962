# Was an einer Stelle einer Datei oder eines Eintrags stehen sollte, nach „erwartet“ gesagt; und was dort falsch ist.
wanted-at = { $line ->
    [0] { $field }: { $what }
   *[other] Zeile { $line }, { $field }: { $what }
}
wanted-place = { $place ->
    [file] die Datei
    [line] die Zeile
    [row] die Tabellenzeile
    [column] die Spalte
   *[other] der Eintrag
}
wanted-missing = erwartet: { $wanted }
wanted-found = gefunden „{ $found }“; erwartet: { $wanted }
wanted-text = ein Text
wanted-number = eine Zahl wie 1.5
wanted-point = eine Zahl mit Punkt, wie 1.5
wanted-whole = eine ganze Zahl von { $low } bis { $high }
wanted-flag = true oder false
wanted-list = eine Liste
wanted-json-list = eine JSON-Liste wie ["walk","food"]
wanted-object = ein Objekt mit { $names }
wanted-tagged = ein JSON-Objekt mit "{ $tag }", eines von: { $names }
wanted-object-not-list = ein JSON-Objekt, von {"{"} bis {"}"}, keine Liste
wanted-one-of = eines von: { $names }
wanted-needed = ein Wert: er ist nötig
wanted-needed-one-of = ein Wert: er ist nötig, eines von: { $names }
wanted-no-such-field = nichts: dieses Feld gibt es nicht; es gibt: { $names }
wanted-empty-cell = eine leere Zelle: { $kind } hat dieses Feld nicht
wanted-parts = nichts: nimm Spalten für die Teile, etwa { $part }
wanted-body-columns = nichts: nimm Spalten, die mit "body." beginnen
wanted-fitting = ein Wert, der in dieses Feld passt, einmal gegeben
wanted-id = eine Kennung (eine UUID wie 0198a2b4-7c11-7000-8000-000000000001)
wanted-home-id = die Kennung eines Zuhauses (eine UUID)
wanted-first-home-id = die Kennung eines Zuhauses (eine UUID): dieses Notizbuch hat noch keines; beginne mit einem oder lies eine Ausfuhr ein
wanted-no-name-yet = eine Kennung: hier sind noch keine Namen bekannt
wanted-known-name = eine Kennung oder einer der bekannten Namen: { $names }
wanted-known-name-of-many = eine Kennung oder einer der bekannten Namen: { $names } und { $more } weitere
wanted-one-of-ids = eine Kennung, denn { $count } haben diesen Namen: { $ids }
wanted-time = eine Zeit wie 2026-03-01 18:30 oder 2026-03-01T18:30:00+01:00, in den Jahren 2000 bis 2199
wanted-offset = ein Abstand zu UTC, etwa { $local }+01:00: dieses Zuhause hat noch keine Zeitzone
wanted-twice = { $first } oder { $second }: in { $zone } werden die Uhren zurückgestellt, und diese Zeit kommt zweimal
wanted-skipped = { $first } oder { $second }: in { $zone } werden die Uhren vorgestellt, und diese Zeit fällt aus
wanted-event = ein Eintrag als JSON-Objekt, von {"{"} bis {"}"}
wanted-json = ein Eintrag als JSON; ab Spalte { $column } ist er nicht zu lesen
wanted-own-id = eine eigene Kennung: diese hat ein anderer Eintrag; um einen Eintrag zu berichtigen, füge eine Berichtigung hinzu
wanted-smaller-file = höchstens { $most } Bytes: teile sie zwischen zwei Zeilen in mehrere Dateien
wanted-shorter-line = höchstens { $most } Bytes
wanted-utf8 = UTF-8, nicht UTF-16, Latin-1 oder Windows-1252: speichere sie noch einmal als "UTF-8" oder "CSV UTF-8"
wanted-closed-quotes = jedes " geschlossen; ein " in einer Zelle wird doppelt geschrieben
wanted-table = eine CSV-Datei
wanted-cells = { $count } Zellen, wie in der ersten Tabellenzeile
wanted-header = eine erste Zeile mit den Namen der Spalten
wanted-column-once = jede Spalte einmal
wanted-column = eine Spalte wie { $names }, word, by, answer oder result.outcome
wanted-this-column = eine Spalte { $name }
wanted-by-hand = keine Einwilligung: Was eine Datei davon sagt, öffnet nichts. Wer das Zuhause verwaltet, gibt sie oder nimmt sie zurück unter „Wer das sehen kann“
