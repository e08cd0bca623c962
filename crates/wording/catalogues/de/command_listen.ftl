command-listen-add-word = { $why }. Füge es zuerst auf der Seite Wörter hinzu
command-listen-the-recording = die Aufnahme
command-listen-name-a-file = nenne eine Tondatei, oder sage --record SECONDS
command-listen-enrolled = „{ $word }“: aufgenommen.
command-listen-enrolled-before = „{ $word }“: Genau diese Aufnahme war schon hinterlegt.
command-listen-clip-too-large = { $file }: { $bytes } Bytes; eine Aufnahme eines Wortes darf { $most } haben
command-listen-no-findings = Nichts zu beanstanden.
command-listen-quoted = „{ $word }“
command-listen-without = Ohne Aufnahme, darum wird nicht darauf gehört: { $words }.
command-listen-record-range = --record nimmt { $least } bis { $most } Sekunden
command-listen-recording = Aufnahme von { $seconds } über „{ $microphone }“. Spiele den Knopf einmal ab, leise und außer Hörweite des Tieres.
command-listen-sound-lost = ein Teil des Tons ging verloren, weil der Rechner zu beschäftigt war; nimm noch einmal auf
command-listen-nothing-heard = nichts war zu hören; spiele den Knopf ab, während aufgenommen wird
command-listen-lost = das Mikrofon „{ $microphone }“ ist verloren: { $why }
command-listen-lost-driver = das Mikrofon „{ $microphone }“ ist verloren: Sein Treiber hat geendet
command-listen-lost-silent = das Mikrofon „{ $microphone }“ ist verloren: Seit { $seconds } s kam kein Ton; ist es noch eingesteckt?
command-listen-built-without =
    dieses Programm wurde ohne das Mikrofon gebaut. Leite entweder einen Rekorder hinein:
    { "  " }arecord -q -f S16_LE -r 16000 -c 1 -t raw | sayso listen ... --pcm s16le --rate 16000 --channels 1 -
    oder baue es mit dem Mikrofon (unter Linux mit den Kopfdateien von ALSA, etwa libasound2-dev bei Debian):
    { "  " }cargo build --release -p sayso --features microphone
command-listen-no-microphone = dieser Rechner hat kein Mikrofon oder gibt diesem Programm keines; stecke eines ein oder erlaube es und versuche es noch einmal
command-listen-not-opened = das Mikrofon lässt sich nicht öffnen: { $why }
command-listen-samples = das Mikrofon „{ $microphone }“ gibt Werte als { $samples }, was nicht gelesen wird
command-listen-give-what = nenne --data DIR oder --clips DIR
command-listen-input-alone = die Standardeingabe (-) wird allein gehört, ohne andere Dateien
command-listen-input-samples = die Standardeingabe enthält bloße Werte: Sage welche, etwa --pcm s16le --rate 16000 --channels 1
command-listen-pcm-for-input = --pcm ist für die Standardeingabe; nenne - als Datei
command-listen-one-file = nenne mit --log eine Datei auf einmal, denn jede begann zu ihrer eigenen Zeit
command-listen-when-began = sage mit --log, wann die Aufnahme begann, etwa --started-at 2026-03-01T18:30:00Z
command-listen-checkpoint-one = --checkpoint gehört zu einer Datei
command-listen-least-range = --least ist eine Sicherheit von 0 bis 1
command-listen-other-checkpoint = { $file } gehört zu einer anderen Tondatei oder anderen Aufnahmen; entferne sie, um neu zu beginnen
command-listen-no-checkpoint = { $file } ist kein Zwischenstand dieses Programms ({ $why })
command-listen-going-on = { $file }: weiter bei { $seconds } s; was vorher gehört wurde, wird nicht noch einmal ausgegeben
command-listen-progress = { $file }: { $share } gelesen, { $seconds } s untersucht, Drücke: { $n }
command-listen-damaged-parts = { $file }: { $n ->
    [one] { $n } beschädigter Teil wurde ausgelassen; Zeiten danach können zu früh sein
   *[other] { $n } beschädigte Teile wurden ausgelassen; Zeiten danach können zu früh sein
}
command-listen-listening = Gehört wird über „{ $microphone }“ ({ $rate } Hz, Kanäle: { $channels }) auf { $n ->
    [one] { $n } Wort
   *[other] { $n } Wörter
}. Der Ton wird nicht behalten. Strg-C beendet es.
command-listen-missed = { $seconds } s Ton gingen verloren, weil der Rechner zu beschäftigt war; Drücke darin wurden nicht gehört.
command-listen-no-ctrl-c = sayso: Strg-C wird nicht bemerkt ({ $why }); beende das Programm anders
command-listen-cut-off = die Standardeingabe endete mitten in einem Wert: abgeschnitten, oder nicht { $samples }?
command-listen-left-out = auf „{ $word }“ wird nicht gehört: { $why }
command-listen-nothing-enrolled = keine Aufnahme ist hinterlegt, also gibt es nichts, worauf zu hören wäre; siehe `sayso enrol --help`
command-listen-second-clip = { $file }: eine zweite Aufnahme von „{ $word }“
command-listen-no-sound-files = { $dir }: keine Tondatei ({ $endings }) darin
command-listen-presses-heard = { $n ->
    [one] { $n } Druck
   *[other] { $n } Drücke
} in { $minutes } Minuten gehört.
command-listen-logged = Davon ins Protokoll: { $n }; schon im Protokoll: { $known }.
command-listen-slowed = „{ $word }“ ist { $slowed } langsamer geworden (Standardfehler { $error }, { $n } Drücke; Wahrscheinlichkeit, dass sie stärker nachlässt als gesunde Knöpfe: { $probability }): Ihre Batterie könnte zur Neige gehen.
command-listen-never = Gar nicht gehört (andere Wörter: { $n ->
    [one] einmal
   *[other] { $n }-mal
}): { $words }. Vielleicht hat niemand sie gedrückt; auch eine leere Batterie oder eine alte Aufnahme ist möglich.
command-listen-home = Zuhause
command-listen-begun = In { $folder } wurde ein neues Notizbuch begonnen. Zeiten stehen in UTC, bis seine Seite Personen eine Zeitzone nennt.
command-listen-added = „{ $word }“ ist ein neues Wort dieses Notizbuchs.
