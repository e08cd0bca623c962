client-enrol-prove = Jetzt drücken
client-enrol-prove-now = Drück „{ $says }“ einmal. Noch { $seconds } s.
client-enrol-judging = Wird mit den Aufnahmen verglichen…
client-enrol-heard = Gehört. Bereit.
client-enrol-heard-more = { $sure } % sicher, einmal gedrückt.
client-enrol-unsure = Als „{ $says }“ gehört, aber nur zu { $sure } % sicher. Bring das Gerät näher oder mach den Raum stiller und mach die Probe noch einmal. Bleibt es so, nimm neu auf.
client-enrol-nothing = Nichts war zu hören. Ist das Mikrofon verdeckt oder die Batterie des Knopfs leer? Dann mach die Probe noch einmal.
client-enrol-too-quiet = Zu leise: nur { $db } dB über dem Raum. Schalte aus, was brummt, oder bring das Gerät näher und mach die Probe noch einmal.
client-enrol-too-far = Zu weit weg: { $db } dB schwächer als die Aufnahme. Stell das Gerät höchstens drei Meter vom Brett auf und mach die Probe noch einmal.
client-enrol-wrong-speed = Er spielte { $percent } % { $way ->
    [slower] langsamer
   *[faster] schneller
} als aufgenommen, mehr als gehört wird. Prüf die Batterie, dann nimm den Knopf auf, wie er jetzt spielt.
client-enrol-another-word = Als „{ $other }“ gehört ({ $sure } % sicher). Hast du „{ $says }“ gedrückt, klingen die beiden zu ähnlich, oder eine Aufnahme ist vom anderen Knopf: Nimm neu auf.
client-enrol-another-sound = Es kam ein Klang, aber nicht diese Aufnahme. War es der Knopf und keine Stimme? Vielleicht wurde er neu besprochen: Dann nimm den Knopf neu auf.
client-enrol-again = Noch eine Probe
client-enrol-skip = Überspringen
client-enrol-skipped = Ohne Probe. Es wird trotzdem darauf gehört; mach sie, wann du willst.
client-enrol-no-way = Dieser Browser kann nicht selbst hören, und dieses Notizbuch nimmt keinen Ton an. Mach die Probe mit einem neueren; die Aufnahme ist behalten.
client-enrol-failed = Das ließ sich nicht beurteilen ({ $why }). Versuch es noch einmal.
client-enrol-begin = Aufnahme beginnen
client-enrol-running = Jetzt drücken: „{ $next }“, dann zwei Sekunden Stille. Bisher { $heard } von { $words }; noch { $seconds } s.
client-enrol-running-all = { $heard } Klänge für { $words } Wörter. Jetzt stoppen.
client-enrol-end = Das war der letzte
client-enrol-cutting = Wird an den Pausen geschnitten…
client-enrol-none = Kein Klang hob sich ab. Halte das Gerät eine Handbreit vor jeden Knopf, in einem stillen Raum, und fang neu an.
client-enrol-match = So viele Klänge wie Wörter ({ $words }). Hör jeden an, dann behalte sie.
client-enrol-fewer = Weniger Klänge ({ $sounds }) als Wörter ({ $words }). Tipp „wurde nicht gedrückt“, wo ein Wort fehlt, oder fang mit längeren Pausen neu an.
client-enrol-more = Mehr Klänge ({ $sounds }) als Wörter ({ $words }). Tipp „Kein Knopf“ bei einer Stimme oder einem Klopfen; die Namen danach rücken nach.
client-enrol-sound = Klang { $number }
client-enrol-says = Er sagt
client-enrol-no-word = Nichts: wird weggelassen
client-enrol-drop = Kein Knopf
client-enrol-not-pressed = „{ $says }“ wurde nicht gedrückt
client-enrol-play = Abspielen
client-enrol-picture = Bild des Klangs, { $seconds } s lang
client-enrol-beep = Ein Piepton davor wurde abgeschnitten.
client-enrol-long = Lang: Vielleicht sind zwei Knöpfe zusammengelaufen. Fang mit längeren Pausen neu an, oder lass ihn weg und nimm die beiden auf ihren Karten auf.
client-enrol-quiet = Leise: nur { $db } dB über dem Raum. Nimm ihn näher noch einmal auf.
client-enrol-keep = { $count ->
    [1] Diese Aufnahme behalten
   *[other] Diese { $count } Aufnahmen behalten
}
client-enrol-keep-hint = Benutzte Aufnahmen dieser Wörter werden ersetzt; sie bleiben auf den Karten der Wörter.
client-enrol-keeping = Wird behalten: { $n } von { $count }…
client-enrol-not-kept = „{ $says }“ ließ sich nicht behalten: { $why }
client-enrol-kept = { $count ->
    [1] Eine Aufnahme ist behalten. Jetzt die Probe.
   *[other] { $count } Aufnahmen sind behalten. Jetzt eine nach der anderen proben.
}
client-enrol-next = Weiter: „{ $says }“
client-enrol-of = { $n } von { $count }: „{ $says }“
client-enrol-done = Probe vorbei: { $proved } von { $count } wurden sicher gehört.
client-enrol-not-proved = Noch nicht sicher gehört:
client-enrol-start-again = Neu anfangen
