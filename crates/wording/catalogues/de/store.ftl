store-not-a-database = { $path } ist kein Notizbuch: Es ist überhaupt keine Datenbank
store-not-ours = { $path } ist eine Datenbank, aber kein Notizbuch dieses Programms
store-newer = { $path } stammt von einer neueren Version (Schema { $found }; diese Version kennt bis { $known }); aktualisiere dieses Programm
store-corrupt = { $path } ist beschädigt ({ $what }); hebe eine Kopie auf und stelle die letzte Sicherung in einem neuen Ordner wieder her
store-unwritable = in { $path } kann nicht geschrieben werden: { $what }
store-cannot-hold = in { $path } kann nicht geschrieben werden: { $what }. Eine Datei, die gebracht oder zum Senden gemacht wird, liegt eine Weile in diesem Ordner: Lass den Benutzer, der dieses Programm ausführt, dort schreiben
store-full = der Datenträger des Notizbuchs ist voll; nichts davon wurde gespeichert. Schaff Platz und versuch es noch einmal
store-busy = das Notizbuch ist belegt: Ein anderer Vorgang hielt es gesperrt; versuch es noch einmal
store-closed = das Notizbuch wurde geschlossen
store-exists = { $path } gibt es schon; wähle einen anderen Namen
store-bad-backup = { $path } ist nicht als Sicherung verwendbar: { $what }
store-backup-no-file = eine solche Datei gibt es nicht
store-backup-itself = es ist das Notizbuch selbst
store-backup-other-digest = sie ist beschädigt: Ihr Inhalt hat nicht die Prüfsumme, die sie nennt
store-backup-no-digest = sie ist beschädigt: Ihre Prüfsumme fehlt
store-backup-row = sie ist beschädigt: { $what }
store-backup-not-the-log = sie enthält nicht, was das Notizbuch enthält; vielleicht versagt der Datenträger
store-backup-loose = { $rows ->
    [one] eine Zeile verweist auf nichts
   *[other] { $rows } Zeilen verweisen auf nichts
}
store-bad-archive = { $path } ist nicht als Archiv eines Notizbuchs lesbar: { $what }
store-archive-lacks = { $file } fehlt darin
store-unknown-file = { $name } ist keine Datei, die aufgenommen werden kann: eine Tabelle (.csv), Zeilen in JSON (.jsonl oder .ndjson), ein Archiv (.tar) oder eine Sicherung (.sayso)
store-other-home = { $path } würde mehrere Zuhause in dieses Notizbuch bringen: { $homes }. Nichts wurde gespeichert; um auf Dauer mehrere in einem Notizbuch zu halten, sag es ausdrücklich
store-home-brings = { $home }: { $events ->
    [one] ein Eintrag
   *[other] { $events } Einträge
}
store-bad-clip = Aufnahme { $hash }: { $what }
store-clip-not-a-hash = ihr Name besteht nicht aus 64 hexadezimalen Ziffern
store-clip-size = sie hat { $found } Bytes; erlaubt sind 1 bis { $most }
store-clip-other-content = sie ist beschädigt: Ihre Bytes haben nicht diese Prüfsumme; speichere die Aufnahme noch einmal
store-not-imported = nichts wurde importiert: { $why }
store-import-faults = { $count ->
    [one] ein Fehler: { $first }
   *[other] { $count } Fehler, der erste: { $first }
}
store-import-other-homes = die Datei würde mehrere Zuhause in dieses Notizbuch bringen: { $homes }. Um auf Dauer mehrere in einem Notizbuch zu halten, sag es ausdrücklich
store-import-not-its-own = ein Zuhause auf einem Server nimmt nur eine Datei eines einzigen Zuhauses auf. Diese bringt { $homes }. Exportiere jedes für sich und bring seine eigene Datei
store-import-not-empty = die Datei ist von einem anderen Zuhause ({ $home }), und dieses hat schon Einträge. Ein anderes Notizbuch zieht nur dort ein, wo noch nichts aufgeschrieben ist: frag, wer den Server verwaltet, nach einem neuen
store-import-taken = ein anderer Eintrag mit der id { $id } ist schon gespeichert
store-database = Datenbank: { $why }
store-no-home-yet = { $dir } enthält noch kein Zuhause
store-damaged-row = Eintrag { $id } (Zeile { $row }): { $what }
store-row-no-event = ihr Inhalt ist kein Eintrag
store-row-column = ihre Spalte { $column } sagt etwas anderes als ihr Inhalt
store-log-left = sie ist weg, aber { $file } daneben nicht; darin können Einträge sein
store-other-schema = ihr Schema { $schema } ist nicht das, das dieses Programm gemacht hat
store-snapshot = der Schnappschuss von { $home } { $what }; entferne die Datei { $file } und beginne neu: das Protokoll ist die Wahrheit, und daraus wird ein anderer gemacht
store-snapshot-differs = weicht bei Eintrag { $id } (Zeile { $row }) vom Protokoll ab
store-snapshot-more = enthält Eintrag { $id }, den das Protokoll nicht hat
store-unreachable = die Datenbank ist nicht zu erreichen ({ $what }); ob etwas hiervon gespeichert ist, ist nicht bekannt. Prüfe ihre Adresse und ob sie läuft, dann versuche es noch einmal
store-old-database = der Datenbankserver ist PostgreSQL { $found }; dieses Programm braucht { $least } oder neuer
store-newer-database = eine neuere Version hat die Datenbank angelegt (Schema { $found }; diese Version kennt bis { $known }); aktualisiere dieses Programm
store-no-rights = die Datenbank weist dieses Programm ab ({ $what }); wem sie gehört, der gebe dem Benutzer, der sich verbindet, die Rolle sayso_server
store-not-let-in = die Datenbank lässt diesen Benutzer nicht ein ({ $what }); prüfe Benutzer und Passwort in SAYSO_DATABASE (für den Eigentümer in SAYSO_DATABASE_OWNER)
store-needs-owner = die Tabellen fehlen noch oder sind von einer früheren Version, und der Benutzer, der sich verbindet, darf sie nicht anlegen ({ $what }); nenne den, dem sie gehören, mit --database-owner oder in der Variablen SAYSO_DATABASE_OWNER
store-database-damaged = die Datenbank ist beschädigt ({ $what }); behalte eine Kopie davon und spiele ihre letzte Sicherung zurück
store-no-such-home = hier gibt es kein Zuhause { $home }
store-home-left = dieses Zuhause ist gegangen: Alles davon wurde hier gelöscht, und nichts weiter davon wird aufbewahrt
store-only-folder-backup = ein Zuhause auf einem Server hat keine eigene Sicherungsdatei; nimm stattdessen ein Archiv davon
store-only-folder-restore = eine Sicherungsdatei lässt sich nicht auf einen Server bringen; stelle sie in einem Ordner wieder her, nimm dort ein Archiv und bring dieses
store-only-folder-check = ein Zuhause auf einem Server hat keine Datei, die zu prüfen wäre; nimm ein Archiv davon und prüfe es in einem Ordner
store-only-folder-snippets = Ton rund um das Drücken eines Knopfs wird auf einem Server nicht aufbewahrt; höre mit einem Notizbuch in einem Ordner zu, um nach Gehör zu urteilen
