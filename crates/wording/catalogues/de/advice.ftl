advice-topic-welfare = Wohlergehen zuerst
advice-topic-ration = Futter
advice-topic-set-up = Einrichten
advice-topic-likes = Vorlieben
advice-topic-stuck = Kommt nicht voran
advice-topic-show = Zeigen
advice-topic-invite = Einladen
advice-topic-converse = Antworten
advice-topic-probe = Prüfen
advice-sure-little = bisher geraten
advice-sure-fairly = ziemlich sicher
advice-sure-very = sicher

advice-cause-hard-to-make-out = Das aufgenommene Wort ist vielleicht schwer zu verstehen
advice-cause-not-wanted = Was es bringt, ist gerade nicht gewollt
advice-cause-too-little = Zu wenig Zeigen
advice-cause-too-late = Die Sache kommt zu spät
advice-cause-avoided = { $name } meidet den Knopf
advice-cause-time-or-place = Zeit, Ort oder Lärm
advice-cause-health = { $name } geht es vielleicht nicht gut
advice-cause-sounds-alike = Es klingt wie ein anderes Wort
advice-cause-people-differ = Die Menschen antworten verschieden
advice-bearing-for = die Aufzeichnungen sprechen dafür
advice-bearing-perhaps = möglich
advice-bearing-unknown = zu wenige Aufzeichnungen
advice-bearing-against = die Aufzeichnungen sprechen dagegen

advice-next-rest = Vorerst keine Sitzung. Gib { $name } Raum und antworte auf jeden Druck.
advice-next-session = Höchstens { $minutes } min: zeige { $words }.
advice-next-words-shown = „{ $word }“ { $times ->
    [one] einmal
   *[other] { $times }-mal
}
advice-so-far = { $planned } (bisher { $shown } von { $of } gezeigt)
advice-next-words-invited = „{ $word }“ { $times ->
    [one] einmal, mit Einladung
   *[other] { $times }-mal, davon { $invited } mit Einladung
}
advice-next-answer = Antworte auf alles, was { $name } drückt.
advice-held = { $sessions ->
    [one] Heute eine Sitzung, um { $time } zu Ende
   *[other] Heute { $sessions } Sitzungen, die letzte um { $time } zu Ende
}: { $showings ->
    [0] nichts gezeigt
    [one] einmal gezeigt
   *[other] { $showings }-mal gezeigt
}{ $bare ->
    [0] { "" }
    [one] , einmal gedrückt ohne die Sache
   *[other] , { $bare }-mal gedrückt ohne die Sache
}.
advice-running = Eine Sitzung läuft, seit { $time }. Geh zum Brett.
advice-next-pause = Pause bis { $time }. Danach passt noch eine kurze Sitzung, wenn { $name } mag. Antworte auf alles, was { $name } drückt.
advice-next-enough = Mehr ist heute nicht nötig. Antworte auf alles, was { $name } drückt.
advice-length-few-sessions = Üblich: { $timed ->
    [0] keine Sitzung mit gestoppter Zeit
    [one] nur eine Sitzung mit gestoppter Zeit
   *[other] nur { $timed } Sitzungen mit gestoppter Zeit
} in vier Wochen.
advice-length-few-left = Üblich: Weniger als ein Viertel der { $timed } Sitzungen mit gestoppter Zeit wurde früh verlassen.
advice-length-quarter-left = Ein Viertel der { $timed } Sitzungen mit gestoppter Zeit wurde vor { $minutes } min verlassen; hör vorher auf.

advice-lately-first-press = { $name } hat „{ $word }“ zum ersten Mal selbst gedrückt, { $day }.
advice-lately-more-presses = „{ $word }“: { $now ->
    [one] einmal selbst gedrückt
   *[other] { $now }-mal selbst gedrückt
} in sieben Tagen, { $before }-mal in den vier Wochen davor.
advice-lately-check-passed = Prüfung bestanden: { $words }, { $right } von { $of } richtig.
advice-lately-joined = { $name } machte bei { $joined } von { $of } Sitzungen mit.
advice-lately-taken = { $name } nahm { $taken } von { $of } gegebenen Sachen.

advice-lean-left = { $name } wählt öfter links von { $name } aus: Misch die Seiten gut und teste weiter. Die Reihenfolge berücksichtigt es.
advice-lean-right = { $name } wählt öfter rechts von { $name } aus: Misch die Seiten gut und teste weiter. Die Reihenfolge berücksichtigt es.
advice-lean-too-few = Zu selten gewählt, um etwas über Seiten zu sagen.
advice-lean-none = Keine Seite öfter gewählt, als Zufall erklärt.
advice-known-well-enough = Klare Lieblinge vorerst: { $best } ({ $sure } sicher, { $n ->
    [one] ein Durchgang mit Auswahl
   *[other] { $n } Durchgänge mit Auswahl
}).
advice-known-enough-for-now = Nicht entschieden, aber vorerst genug; bisher am besten: { $best } ({ $sure } sicher, { $n ->
    [one] ein Durchgang mit Auswahl
   *[other] { $n } Durchgänge mit Auswahl
}).
advice-known-not-yet = Noch nicht klar; bisher am besten: { $best } ({ $sure } sicher, { $n ->
    [one] ein Durchgang mit Auswahl
   *[other] { $n } Durchgänge mit Auswahl
}).
advice-next-pair = Dieses Paar sagt am meisten darüber, was am beliebtesten ist; die Seiten gleichen frühere aus.

# Where a word stands.
advice-stage-prepare = vorbereiten
advice-stage-show = zeigen
advice-stage-invite = einladen
advice-stage-converse = sich unterhalten
