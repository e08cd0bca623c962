command-norms-what-is-in = { $n ->
    [one] { $n } Zeile
   *[other] { $n } Zeilen
}, eine je Tier und gezeigtem Wort: Tierart, Altersgruppe, was das Wort bringt, Zeigen und Tage bis zum ersten Druck, Einladungen. Kein Name, keine Notiz, kein Datum, kein Ort und kein Wort steht darin. Sie gehen nirgendwohin, wenn du sie nicht schickst.
command-norms-homes-agreed = { $agreed } von { $homes ->
    [one] { $homes } Zuhause
   *[other] { $homes } Zuhause
} stimmen zu; { $rows ->
    [one] { $rows } Zeile
   *[other] { $rows } Zeilen
}.
command-norms-key-beside = der Schlüssel { $key } liegt im Ordner der Zeilen: Wer sie bekommt, bekäme auch ihn. Lege ihn woandershin
command-norms-key-short = der Schlüssel { $key } hat { $found ->
    [one] { $found } Byte
   *[other] { $found } Byte
}; nötig sind { $least } oder mehr aus gutem Zufall
command-norms-imported = Ausgabe „{ $release }“ vom { $date } ist da: { $cells ->
    [one] { $cells } Zelle
   *[other] { $cells } Zellen
} (SHA-256 { $hash }).
command-norms-unusable = { $file } sind keine brauchbaren Vergleichswerte, und nichts wurde geändert: { $why }
