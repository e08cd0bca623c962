recording-make-it-out = Hör selbst: Spiele es auf seinem Knopf aus einem anderen Zimmer ab. Würdest du es nicht für deine eigene Stimme halten und das Wort sofort erkennen, nimm es noch einmal auf, nah am Mikrofon, klar und leise. Aufgenommene Wörter sind oft schwer zu verstehen: Familienhunde folgten etwa { $share } der gelernten Signale von Knöpfen mit aufgenommenen Wörtern, fast { $live } der gesprochenen (17 Hunde; Higaki 2025, Zahlen aus einem Pressetext). Sag das Wort auch weiter selbst.
recording-length = { $seconds } s lang.
recording-loudness = Lautheit { $lufs } LUFS.
recording-loudness-over = { $others ->
    [one] Lautheit { $lufs } LUFS, { $by } LU über der anderen.
   *[other] Lautheit { $lufs } LUFS, { $by } LU über der Mitte der { $others } anderen.
}
recording-loudness-under = { $others ->
    [one] Lautheit { $lufs } LUFS, { $by } LU unter der anderen.
   *[other] Lautheit { $lufs } LUFS, { $by } LU unter der Mitte der { $others } anderen.
}
recording-too-quiet = Zu leise, um die Lautheit zu messen.
recording-peak = Höchster Punkt { $db } dB unter Vollaussteuerung.
recording-contrast = Die lauten Teile liegen { $db } dB über den leisen.
recording-most-like = Am ähnlichsten „{ $word }“ ({ $like } auf einer Skala von 0 bis 1).
recording-too-long = Länger als 3 s: Nimm nur das eine Wort auf, ohne lange Pause (übliche Praxis, ohne Quelle).
recording-too-short = Kürzer als 0,3 s: Sprich das ganze Wort, etwas langsamer; ein so kurzer Laut ist schwer von anderen zu unterscheiden (übliche Praxis, ohne Quelle).
recording-clipped = Übersteuert, also zu laut aufgenommen: Halte das Gerät weiter weg oder sprich leiser, und nimm es noch einmal auf.
recording-quieter = Mehr als 6 LU leiser als die anderen: Nimm es etwas näher noch einmal auf, so laut wie die anderen.
recording-louder = Mehr als 6 LU lauter als die anderen: Ein plötzlicher lauter Ton nah am Ohr kann erschrecken oder schaden. Nimm es leiser noch einmal auf, bevor das Tier es hört.
recording-noisy = Geräusche im Hintergrund, oder keine Pause an den Enden: Nimm es in einem ruhigen Zimmer noch einmal auf.
recording-too-like = Klingt fast wie „{ $other }“: Das Drücken der beiden könnte verwechselt werden. Prüfe, ob die richtige Datei genommen wurde, oder nimm eines mit einer anderen Stimme auf.
