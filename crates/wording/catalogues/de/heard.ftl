heard-title = Gehörtes Drücken
heard-nothing = Hier wartet nichts.
heard-intro = Ein Mikrofon sagt, welcher Knopf getönt hat, nicht, wer ihn gedrückt hat. Sag, was du gesehen hast; lass stehen, was niemand gesehen hat.
heard-did-it-sound = Hat er getönt?
heard-did-it-sound-hint = Mit weniger Sicherheit gehört. „Hat nicht getönt“ nimmt es zurück.
heard-who-pressed = Wer hat gedrückt?
heard-count = { $title } ({ $count })
heard-listen = Mit dem Mikrofon dieses Geräts zuhören
heard-log = Was rückgängig gemacht wurde, bleibt im Protokoll
heard-a-word = ein Wort
heard-older = { $count ->
    [one] Ein älteres folgt, wenn diese beurteilt sind.
   *[other] { $count } ältere folgen, wenn diese beurteilt sind.
}
heard-chance = Wahrscheinlichkeit, dass er getönt hat: { $share }
heard-play = Abspielen
heard-play-of = den Ton von { $word }
heard-yes = Hat getönt, niemand sah es
heard-no = Hat nicht getönt
heard-animal = { $name } hat gedrückt
heard-person = Eine Person hat gedrückt
heard-not-kept = Der Ton dieses Drückens ist nicht aufbewahrt.
heard-gone = Ein solches Drücken wartet hier nicht; vielleicht wurde es inzwischen beurteilt.
