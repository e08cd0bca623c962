client-ear-insecure = Diese Seite kam über unverschlüsseltes HTTP, und Browser geben das Mikrofon nur Seiten, die sicher kamen. Öffne sie auf dem Rechner, auf dem Sayso läuft, als http://localhost. Für ein Telefon starte Sayso mit --lan --secure und öffne die Adresse, die es dann zeigt.
client-ear-unable = Dieser Browser kann nicht zuhören. Nimm einen neueren oder führe „sayso listen“ auf dem Rechner aus, auf dem Sayso läuft.
client-ear-connected = Verbunden.
client-ear-waiting = Keine Antwort vom Notizbuch; { $seconds } s werden hier behalten und später gesendet.
client-ear-lost = { $seconds } s konnten nicht behalten werden und wurden nicht gehört.
client-ear-held = Gedrücktes wird gehört, kann aber gerade nicht gespeichert werden: { $why }
client-ear-silent = Am Mikrofon ist nichts zu hören: Ist es verdeckt oder ausgeschaltet?
client-ear-heard-now = { $count ->
    [0] Noch nichts gehört.
    [one] Einmal Drücken gehört.
   *[other] { $count }-mal Drücken gehört.
}
client-ear-listening = Hört seit { $time } auf { $count ->
    [one] ein Wort
   *[other] { $count } Wörter
}.
client-ear-words = Gehört wird auf: { $words }.
client-ear-left-out = Ihr Ton fehlt, darum nicht: { $words }.
client-ear-press = { $time }, { $sure } % sicher, { $state ->
    [tapped] notiert; es wurde auch getippt und zählt einmal
    [known] schon notiert
   *[new] notiert
}
client-ear-kept = sein Ton wird zum Beurteilen aufbewahrt
client-ear-busy = Eine andere Seite hört diesem Brett seit { $time } zu.
client-ear-take = Stattdessen hier zuhören
client-ear-taken = Aus: Jetzt hört eine andere Seite zu.
client-ear-off = Aus.
client-ear-off-heard = Aus. { $count ->
    [0] Nichts wurde gehört.
    [one] Einmal Drücken wurde gehört.
   *[other] { $count }-mal Drücken wurde gehört.
}
client-ear-asking = Das Mikrofon wird angefragt …
client-ear-connecting = Verbindet …
client-ear-ending = Hört den Rest …
client-ear-not-allowed = Das Mikrofon wurde nicht erlaubt. Erlaube es für diese Seite in den Einstellungen des Browsers und versuche es noch einmal.
client-ear-not-found = Dieses Gerät hat kein Mikrofon.
client-ear-in-use = Ein anderes Programm benutzt das Mikrofon. Schließe es und versuche es noch einmal.
client-ear-not-opened = Das Mikrofon ließ sich nicht öffnen ({ $why }).
client-ear-gone = Das Mikrofon wurde weggenommen oder ist nicht mehr erlaubt.
client-ear-stopped = Der Browser hat den Ton angehalten.
client-ear-sound-gone = Ton nicht mehr vorhanden
client-ear-not-noted = Keine Antwort vom Notizbuch; nichts wurde notiert. Versuche es noch einmal.
client-ear-noted = Notiert: { $word }, { $answer }.
client-ear-record-insecure = Zum Aufnehmen muss die Seite sicher gekommen sein: Öffne Sayso auf dem Rechner selbst oder starte es mit --lan --secure. Eine Tondatei geht in jedem Fall.
client-ear-record-unable = Dieser Browser kann nicht aufnehmen. Wähle eine Tondatei.
client-ear-loudness = Lautstärke am Mikrofon
client-ear-record = Mit diesem Gerät aufnehmen
client-ear-record-how = Halte das Gerät eine Handbreit vom Knopf entfernt, in einem ruhigen Raum, wo das Tier es nicht hört.
client-ear-recording = Aufnahme: Drück den Knopf einmal. Noch { $seconds } s.
client-ear-stop = Stopp
client-ear-record-again = Noch einmal aufnehmen
client-ear-record-nothing = Nichts war zu hören. Ist das Mikrofon verdeckt oder ausgeschaltet?
client-ear-recorded = { $seconds } s, Stille an beiden Enden abgeschnitten. Hör es an und behalte es, oder nimm noch einmal auf.
client-ear-what-recorded = Was aufgenommen wurde
client-ear-record-keep = Diese Aufnahme behalten und prüfen
client-ear-unsent = { $count ->
    [one] Ein Tippen auf diesem Gerät ist
   *[other] { $count }-mal Tippen auf diesem Gerät ist
} noch nicht im Notizbuch. Kopple es wieder, dann wird es gesendet. Soll es nicht wieder gekoppelt werden, sichere es in eine Datei, die „sayso import“ liest, und leere dieses Gerät.
client-ear-clear = Dieses Gerät leeren
client-ear-clear-sure = Alles löschen, was dieses Gerät behält, { $count ->
    [one] auch ein nicht gesendetes Tippen
   *[other] auch { $count }-mal nicht gesendetes Tippen
}? Prüfe zuerst, dass die Datei gesichert ist.
client-ear-cleared = Dieses Gerät behält nichts mehr vom Notizbuch.
client-ear-save-unsent = In eine Datei sichern
client-ear-pause = Pause
client-ear-go-on = Weiter
client-ear-here = Dieses Gerät hört selbst: Kein Ton verlässt es, nur Drücke.
client-ear-there = Dieser Browser kann nicht selbst hören: Während er zuhört, geht der Ton an den Rechner, auf dem Sayso läuft.
client-ear-no-way = Dieser Browser kann nicht selbst hören, und dieses Notizbuch nimmt keinen Ton an. Nimm einen neueren Browser.
client-ear-ready = Die Aufnahmen werden vorbereitet …
client-ear-not-ready = Das Zuhören konnte nicht beginnen ({ $why }). Öffne diese Seite einmal, während das Notizbuch antwortet, und versuche es dann noch einmal.
client-ear-broke = Das Zuhören ist auf diesem Gerät abgebrochen ({ $why }). Schalte es wieder ein.
client-ear-hearing = Dieses Gerät hört zu.
client-ear-behind = Dieses Gerät ist langsam: { $seconds } s zurück.
client-ear-gap = Nicht gehört: { $from } bis { $to }.
client-ear-no-sound = Seit { $time } kommt kein Ton: Ein anderes Programm oder ein Anruf hat vielleicht das Mikrofon.
client-ear-last = { $time }, { $sure } % sicher
client-ear-unsent-signed-out = { $count ->
    [one] Ein Tippen auf diesem Gerät ist
   *[other] { $count }-mal Tippen auf diesem Gerät ist
} noch nicht im Notizbuch. Melde dich wieder an und öffne das Brett, dann wird es gesendet. Soll sich hier niemand mehr anmelden, sichere es in eine Datei, die „sayso import“ liest, und leere dieses Gerät.
client-ear-unsent-left = { $count ->
    [one] Ein Tippen auf diesem Gerät gehört
   *[other] { $count }-mal Tippen auf diesem Gerät gehört
} zu einem Zuhause, das nicht mehr deines ist: Es hat diesen Server verlassen, oder deine Rolle dort ist beendet. Gesendet werden kann das nicht mehr. Sichere es in einer Datei, die „sayso import“ liest, und lösche es dann hier.
