command-serve-simulating = Zehn Wochen eines erfundenen Zuhauses werden simuliert ...
command-serve-invented = { $n ->
    [one] { $n } Eintrag, erfunden.
   *[other] { $n } Einträge, alle erfunden.
} Nichts hier sagt etwas über wirkliche Tiere.
command-serve-holds-home = { $dir } enthält schon ein Zuhause; es wird bereitgestellt.
command-serve-code = Kopplungscode für ein Telefon (gültig { $minutes ->
    [one] eine Minute
   *[other] { $minutes } Minuten
}): { $code }
command-serve-open = Sayso ist offen unter { $url }
command-serve-no-address = Dieser Rechner hat keine Adresse in einem Heimnetz, daher erreicht ihn kein Telefon.
command-serve-from-phone = Von einem Telefon im selben Netz: { $url } (dann den Kopplungscode eingeben)
command-serve-certificate = Einmal auf jedem Telefon installiert die Seite dort das Zertifikat dieses Zuhauses; sein Fingerabdruck (SHA-256) muss sein
command-serve-strange-address =
    Die Adresse dieses Rechners ist keine, wie Heimnetze sie haben; das Zertifikat kann nicht für sie bürgen.
    Öffne stattdessen den Namen dieses Rechners im Netz, der auf .local endet.
command-serve-this-machine =
    Nur dieser Rechner bekommt Antwort. Für ein Telefon beende mit Strg-C und starte neu mit --lan;
    dieser Code öffnet dann { $url } auf dem Telefon:
command-serve-no-qr = (kein QR-Code: { $why })
command-serve-stop = Beenden mit Strg-C.
command-serve-no-folder = { $dir } ist kein Ordner; nenne den des Notizbuchs
command-serve-device = { $id }  { $name } ({ $how ->
    [plain] über unverschlüsseltes HTTP
   *[safe] über HTTPS
}), gekoppelt { $paired }, zuletzt gesehen { $seen }
command-serve-no-device = Kein Gerät ist gekoppelt.
command-serve-no-such-device = kein gekoppeltes Gerät hat die Kennung { $id }; die Liste zeigt, welche es gibt
command-serve-port-taken = { $at } lässt sich nicht öffnen: { $why }; läuft Sayso schon? Wähle einen anderen Port oder eine Adresse dieses Rechners
command-serve-cannot-open = das Notizbuch lässt sich nicht öffnen: { $why }
command-serve-not-safe = HTTPS geht nicht: { $why }
command-serve-certificate-content = { $file } enthält kein Zertifikat mit Schlüssel: { $why }. Hol sie aus einer Kopie zurück, oder lösche sie: Dann wird ein neues gemacht, und jedes Telefon muss es installieren
command-serve-certificate-making = kein Zertifikat konnte gemacht werden: { $why }
command-serve-certificate-using = das Zertifikat ist nicht verwendbar: { $why }
