client-kit-first = Willige zuerst oben ein und fülle aus, was der Knopf sagt, was für einer es ist und welches Telefon dies ist.
client-kit-clip = Den Knopf aus der Nähe aufnehmen
client-kit-clip-now = Drück den Knopf einmal. Noch { $seconds } s.
client-kit-clip-kept = „{ $word }“ aus der Nähe: { $seconds } s, Stille an beiden Enden abgeschnitten.
client-kit-clip-first = Nimm zuerst „{ $word }“ aus der Nähe auf.
client-kit-presses = { $count } Drücke aufnehmen
client-kit-without = 3 Minuten ohne Druck aufnehmen
client-kit-press-now = Jetzt drücken
client-kit-tap-now = Drück den Knopf und tipp im selben Moment auf „{ $mark }“.
client-kit-mark = Gedrückt
client-kit-marked = { $count ->
    [0] Noch kein Druck markiert.
    [one] Ein Druck markiert.
   *[other] { $count } Drücke markiert.
}
client-kit-no-press = Noch { $seconds } s nichts drücken.
client-kit-stop = Beenden und behalten
client-kit-interrupted = Der Ton war unterbrochen, die Aufnahme wurde verworfen. Lass die Seite vorne und nimm noch einmal auf.
client-kit-too-short = Zu kurz, um zu nützen; sie wurde verworfen.
client-kit-take = „{ $word }“, { $metres } m, { $room }, { $noise }: { $count ->
    [one] ein Druck
   *[other] { $count } Drücke
} in { $seconds } s
client-kit-take-without = Kein Druck, { $metres } m, { $room }, { $noise }: { $seconds } s
client-kit-undo = Rückgängig
client-kit-save = Die Datei sichern
client-kit-nothing = Noch nichts zu sichern: Nimm den Knopf aus der Nähe auf und dann Drücke.
client-kit-saved = Gesichert als { $file } ({ $megabytes } MB). Sie ist nur auf diesem Gerät; nichts wurde verschickt.
