pairing-title = Dieses Gerät koppeln
pairing-intro = Sayso wurde für das Heimnetz gestartet. Gib den Code ein, der auf dem Bildschirm steht, an dem es gestartet wurde.
pairing-not-paired = Nicht gekoppelt.
pairing-code = Code
pairing-code-hint = zehn Buchstaben und Ziffern
pairing-name = Name dieses Geräts
pairing-name-hint = wenn du magst, etwa: Annas Telefon
pairing-pair = Koppeln
pairing-taps-safe = Was auf diesem Gerät getippt und noch nicht gesendet wurde, ist sicher; es wird gesendet, sobald es gekoppelt ist.
pairing-no-script = Ohne JavaScript wird hier nicht gelöscht, was dieses Gerät vom Notizbuch behalten hat; lösche die Daten dieser Website in den Einstellungen des Browsers.
pairing-plain-http = Über unverschlüsseltes HTTP könnten andere im selben Netz mitlesen. Benutze es in einem Netz, dem du vertraust.
pairing-wrong = Das ist nicht der Code. Er steht dort, wo Sayso gestartet wurde: zehn Buchstaben und Ziffern.
pairing-expired = Dieser Code gilt nicht mehr. Ein neuer steht jetzt dort, wo Sayso gestartet wurde.
pairing-paired-title = Gekoppelt
pairing-paired = Dieses Gerät ist gekoppelt.
pairing-all-devices = Alle gekoppelten Geräte
pairing-machine-alone = Sayso wurde nur für diesen Rechner gestartet, daher muss kein Gerät gekoppelt werden.
pairing-devices = Geräte
pairing-devices-alone = Sayso wurde nur für diesen Rechner gestartet, daher darf kein anderes Gerät dieses Notizbuch lesen.
pairing-devices-intro = Diese Geräte dürfen dieses Notizbuch lesen und hineinschreiben. Beende eines, das verloren, verkauft oder verliehen ist.
pairing-this-device = (dieses Gerät)
pairing-device-times = Gekoppelt: { $paired }. Zuletzt gesehen: { $seen }.
pairing-end = Beenden
pairing-devices-note = Ein beendetes Gerät wird sofort abgewiesen. Was es für das Brett behalten hat, wird gelöscht, wenn es das Notizbuch das nächste Mal öffnet; eines, das nie wiederkommt, behält es. Geräte, die { $days } Tage nicht gesehen wurden, werden von selbst beendet.
pairing-forget-all = Alle Geräte vergessen, auch dieses
pairing-no-such-device = Ein solches Gerät ist nicht gekoppelt; vielleicht wurde es inzwischen beendet.
pairing-unnamed = Ein Gerät ohne Namen
pairing-kind = { $kind ->
    [iphone] Ein iPhone
    [ipad] Ein iPad
    [android] Ein Android-Gerät
    [windows] Ein Windows-Rechner
    [mac] Ein Mac
    [chromebook] Ein Chromebook
    [linux] Ein Linux-Rechner
   *[other] Ein Gerät
}
pairing-file = die gekoppelten Geräte in { $file }: { $why }; sorg dafür, dass dieses Programm die Datei lesen und schreiben darf
pairing-file-content = { $file } enthält keine gekoppelten Geräte ({ $why }). Hol sie aus einer Kopie zurück, oder lösche sie: Dann koppelt sich jedes Telefon neu; im Notizbuch geht nichts verloren
