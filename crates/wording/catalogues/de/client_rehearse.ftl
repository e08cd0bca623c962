client-rehearse-press = Drücken und sagen
client-rehearse-give = Geben
client-rehearse-asked = { $name } drückte: geben
client-rehearse-offer = Damit einladen
client-rehearse-instead = Stattdessen geben
client-rehearse-ready = Noch läuft nichts. Alles bewegt sich, sobald du anfängst.
client-rehearse-begun = Es beginnt.
client-rehearse-wait = Warte: { $seconds } s
client-rehearse-then = Jetzt drück, sag und gib.
client-rehearse-pause = Ein mildes Zeichen: mach Pause und lass Raum.
client-rehearse-of = { $passed } von { $most }
client-rehearse-invited = Einladung { $n } von { $all }
client-rehearse-treats = { $count ->
    [one] { $count } Leckerchen übrig
   *[other] { $count } Leckerchen übrig
}
client-rehearse-paused = Angehalten, solange die Seite nicht zu sehen war.
client-rehearse-away = Das Notizbuch antwortet nicht. Was du tust, steht hier und wird gesendet, sobald es wieder da ist; was daraus wird, zeigt sich dann.
client-rehearse-which = Was? Tipp auf den Knopf.
client-rehearse-hold = Halt still, bis eins gewählt ist.
client-rehearse-waits = Warte
client-rehearse-now-press = Jetzt drücken und sagen
client-rehearse-end-again = Drück { $key } noch einmal, um zu beenden.
client-rehearse-none = Keine mehr: jetzt nicht, oder etwas anderes
client-rehearse-none-here = Keine mehr
