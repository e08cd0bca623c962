command-keep-input-too-large = die Standardeingabe enthält mehr als { $most } MiB; nimm `sayso import` für Dateien
command-keep-input-line = Standardeingabe, Zeile { $line }: { $why }
command-keep-input-no-array = Standardeingabe, Zeile { $line }, Spalte { $column }: erwartet wird eine JSON-Liste von Einträgen; ab hier ist sie nicht zu lesen
command-keep-input-event = Standardeingabe, Eintrag { $number }: { $why }
command-keep-kept = { $id } aufgenommen
command-keep-known = { $id } schon bekannt
command-keep-other-id = { $id } abgelehnt: Ein anderer Eintrag hat diese Kennung; um ihn zu berichtigen, schicke eine Korrektur
command-keep-refused = { $id } abgelehnt: { $why }
command-keep-is-backup = { $file } ist eine Sicherung; nimm `sayso restore`
command-keep-preview = { $file }: { $rows ->
    [one] { $rows } Zeile
   *[other] { $rows } Zeilen
}, { $new } neu, { $known } schon bekannt, { $faults } mit Fehlern.
command-keep-and-recordings = { $n ->
    [one] und { $n } Aufnahme
   *[other] und { $n } Aufnahmen
}
command-keep-new-of-kind = { $n } neu der Art { $kind }
command-keep-later = { $n ->
    [one] { $n } der Art { $kind } wird nicht verstanden: Eine spätere Version hat ihn geschrieben. Er bleibt erhalten, wird aber nicht gezeigt.
   *[other] { $n } der Art { $kind } werden nicht verstanden: Eine spätere Version hat sie geschrieben. Sie bleiben erhalten, werden aber nicht gezeigt.
}
command-keep-of-home = { $n } von { $home }
command-keep-of-other-home = { $n } von { $home }, das dieses Notizbuch nicht hat
command-keep-unnamed-home = einem Zuhause ohne Namen ({ $id })
command-keep-from-to = von { $first } bis { $last }
command-keep-more = ... und { $n } weitere
command-keep-not-imported-faults = Nichts wurde aufgenommen. Bring diese Zeilen in Ordnung und versuche es noch einmal.
command-keep-not-imported-homes =
    Nichts wurde aufgenommen: Dieses Notizbuch hätte sonst mehrere Zuhause. Die Datei bringt { $homes }.
    Um für immer mehrere Zuhause in diesem Notizbuch zu haben, füge --take-in-other-home hinzu.
command-keep-not-imported-yet = Noch wurde nichts aufgenommen. Um es zu tun, gib denselben Befehl mit --yes.
command-keep-imported = { $n ->
    [one] { $n } Eintrag aufgenommen
   *[other] { $n } Einträge aufgenommen
}; schon bekannt: { $known }.
command-keep-clips-stored = { $n ->
    [one] { $n } Aufnahme gespeichert
   *[other] { $n } Aufnahmen gespeichert
}; schon hier: { $known }; beschädigt und ausgelassen: { $damaged }.
command-keep-archive-to = ein Archiv braucht eine Datei: füge --to all.tar hinzu
command-keep-archive-written = { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträge
} und { $recordings ->
    [one] { $recordings } Aufnahme
   *[other] { $recordings } Aufnahmen
} geschrieben.
command-keep-damaged-left-out = { $n ->
    [one] { $n } Aufnahme ist beschädigt und wurde ausgelassen.
   *[other] { $n } Aufnahmen sind beschädigt und wurden ausgelassen.
}
command-keep-written = { $n ->
    [one] { $n } Eintrag geschrieben.
   *[other] { $n } Einträge geschrieben.
}
command-keep-backed-up = { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträge
} und { $recordings ->
    [one] { $recordings } Aufnahme
   *[other] { $recordings } Aufnahmen
} sind in { $file } ({ $bytes } Bytes).
command-keep-damaged-clip = Eine Aufnahme ist beschädigt und wurde nicht mitgenommen: { $clip }
command-keep-take-in = { $why }: füge --take-in-other-home hinzu
command-keep-in-the-backup = { $home }: { $n ->
    [one] { $n } Eintrag in der Sicherung.
   *[other] { $n } Einträge in der Sicherung.
}
command-keep-brought-back = { $n ->
    [one] { $n } Eintrag zurückgeholt
   *[other] { $n } Einträge zurückgeholt
}; schon hier: { $known }.
command-keep-clips-brought-back = { $n ->
    [one] { $n } Aufnahme zurückgeholt
   *[other] { $n } Aufnahmen zurückgeholt
}; schon hier: { $known }.
command-keep-unsound = Ausgelassen, da schon fehlerhaft, als es gesichert wurde: { $fault }
command-keep-conflict = Eintrag { $id } steht hier mit anderem Inhalt; der von hier wurde behalten.
command-keep-looked-at = { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträge
}, { $recordings ->
    [one] { $recordings } Aufnahme
   *[other] { $recordings } Aufnahmen
} durchgesehen.
command-keep-snapshots = { $n ->
    [one] { $n } Zwischenstand enthält, was das Protokoll enthält.
   *[other] { $n } Zwischenstände enthalten, was das Protokoll enthält.
}
command-keep-amendments = { $n ->
    [one] { $n } berichtigt einen anderen Eintrag oder nimmt ihn zurück
   *[other] { $n } berichtigen andere Einträge oder nehmen sie zurück
}; davon über Einträge, die nicht hier sind: { $waiting }.
command-keep-wrong = Falsch: { $fault }
command-keep-all-well = Alles ist, wie es geschrieben wurde.
command-keep-snapshots-wrong = Alle Einträge und Aufnahmen sind, wie sie geschrieben wurden: Es gibt nichts zurückzuholen. Beende das Programm, wo es noch läuft, entferne, was oben genannt ist, und starte es neu.
command-keep-restore-latest = Behalte eine Kopie dieses Ordners, dann hole die letzte Sicherung in einen neuen zurück.
