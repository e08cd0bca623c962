# What a coach and a home say to each other through the work: plans, notes, questions, answers.
talk-title = Abgemacht
talk-intro = Was du und dein Coach abmacht, und wie es läuft.
talk-intro-coach = Was du diesem Zuhause geschrieben hast, und was daraus wurde.
talk-not-a-vet = Ein Coach ist keine Tierärztin und kein Tierarzt. Bei Schmerz, Krankheit, Angst oder Bissen frag in der Tierarztpraxis oder eine qualifizierte Fachperson für Tierverhalten.
talk-rest = Mit { $name } ruhen die Sitzungen zuerst. Nichts hiervon ist zu tun, bis Heute es sagt.
talk-none = Hier ist noch nichts. Was ein Coach vorschlägt oder fragt, kommt hierher und zu Heute.
talk-none-coach = Du hast diesem Zuhause noch nichts geschrieben.
talk-open = Zu beantworten
talk-open-coach = Wartet auf Antwort
talk-now = Jetzt abgemacht
talk-before = Früher ({ $count })
talk-from = Von { $name }
talk-from-file = Aus einer Datei gelesen: Niemand hier hat gesehen, dass { $name } es schrieb.
talk-plan = Plan bis { $day }: { $words }
talk-line = { $way ->
    [show] „{ $word }“: zeigen, { $dose }
    [offer_in_view] „{ $word }“: einladen mit der Sache in Sicht, { $dose }
    [ask_and_point] „{ $word }“: fragen und hinzeigen, { $dose }
    [ask_between_two] „{ $word }“: „dies oder das“ fragen, { $dose }
   *[any] „{ $word }“: { $dose }
}
talk-dose = { $minutes ->
    [one] { $minutes } Minute
   *[other] { $minutes } Minuten
}, { $times ->
    [1] einmal am Tag
    [2] zweimal am Tag
   *[other] { $times }-mal am Tag
}
talk-stage = Stufe { $stage } für „{ $word }“
talk-word = Ein neues Wort: „{ $word }“
talk-likes = Ein Vorlieben-Test
talk-check = Eine Prüfung des Verstehens von „{ $word }“
talk-note = Eine Notiz
talk-note-on = Eine Notiz zu { $about }
talk-question = Eine Frage
talk-practice = Etwas zum Üben
talk-question-on = Eine Frage zu { $about }
talk-about-word = „{ $word }“
talk-about-session = der Sitzung vom { $when }
talk-about-page = der Seite { $page }
talk-takes-up = Nimmt wieder auf: { $what }
talk-accept = Annehmen
talk-noted = Gelesen
talk-decline = Ablehnen
talk-not-any-more = Nicht mehr
talk-answer = Antworten
talk-your-answer = Deine Antwort
talk-add-words = Worte dazu
talk-most = Höchstens { $most } Zeichen.
talk-if-you-like = Wenn du magst. Höchstens { $most } Zeichen.
talk-reply = { $reply ->
    [accepted] { $who } hat angenommen, { $when }
    [declined] { $who } hat abgelehnt, { $when }
    [ended] { $who } hat das beendet, { $when }
   *[said] { $who } hat geantwortet, { $when }
}
talk-goes-on = { $name } macht damit weiter, seit { $day }.
talk-stands-in = { $name } vertritt hier, bis { $day }.
talk-someone = Jemand aus dem Zuhause
talk-standing = { $standing ->
    [declined] abgelehnt
    [answered] beantwortet
    [ended] der letzte Tag ist vorbei
    [over] vorbei ohne Antwort
   *[withdrawn] zurückgenommen
}
talk-since = Seit { $since }. Letzter Tag: { $last }.
talk-kept = { $way ->
    [show] „{ $word }“ wurde gezeigt
    [any] „{ $word }“ wurde gezeigt oder eingeladen
   *[other] Zu „{ $word }“ wurde eingeladen
} an { $on } von { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}, { $times ->
    [1] einmal
    [2] zweimal
   *[other] { $times }-mal
}. Abgemacht: { $dose }.
talk-not-begun = „{ $word }“: Noch ist kein Tag vorbei. Abgemacht: { $dose }.
talk-sessions = { $sessions ->
    [one] In { $sessions } Sitzung.
   *[other] In { $sessions } Sitzungen.
}
talk-sessions-timed = { $sessions ->
    [one] In { $sessions } Sitzung, { $minutes } min.
   *[other] In { $sessions } Sitzungen, zusammen { $minutes } min.
}
talk-no-record = { $days ->
    [one] { $days } Tag ist ganz ohne Eintrag: Über ihn lässt sich nichts sagen.
   *[other] { $days } Tage sind ganz ohne Eintrag: Über sie lässt sich nichts sagen.
}
talk-does-it-help = Hilft es?
talk-pressed = „{ $word }“, gedrückt bei gewollten Einladungen. Seitdem: { $since }. In den { $days } Tagen davor: { $before }.
talk-right = „{ $word }“, richtig unter allem, was gedrückt wurde. Seitdem: { $since }. In den { $days } Tagen davor: { $before }.
talk-other-causes = Auch anderes ändert sich. Ob es am Plan lag, sagen diese Zahlen nicht. Ein Versuch mit einer Änderung sagt mehr.
talk-to-trial = Einen Versuch mit einer Änderung planen
talk-do-word = Wort anlegen
talk-card = Von { $name }: { $what }
talk-agreed-with = Vereinbart mit { $name }: { $what }
talk-card-more = Von { $names }: { $count } zu beantworten
talk-now-with = { $to } ist jetzt euer Coach, an der Stelle von { $from }. Was abgemacht ist, geht weiter.
talk-now-covered = { $to } vertritt { $from } bis { $day }. Was abgemacht ist, geht weiter.
talk-row = Abgemacht: { $dose }
talk-row-waits = Abgemacht: { $dose }. Das wartet: Der Schritt hier kommt zuerst.
talk-row-never = Abgemacht: { $dose }. Das wird nicht getan: Auf ein Wort, das Sitzungen beendet, wartet niemand.
talk-first-head = Was Heute zuerst sagt, vor allem Einladen:
talk-first = „{ $word }“: Heute sagt: { $step }. { $why }. Das kommt zuerst; der Plan wartet darauf.
talk-first-ends = „{ $word }“ beendet Sitzungen: Es wird dann gezeigt, und niemand wartet darauf. Einladen lässt sich nicht planen.
talk-ends-sessions = { $word } (beendet Sitzungen)
talk-write = Diesem Zuhause schreiben
talk-write-about = Hierzu schreiben
talk-write-again = Noch einmal schreiben
talk-take-back = Zurücknehmen
talk-end = Das beenden
talk-write-intro = Eins nach dem anderen, unter deinem Namen: { $name }. Das Zuhause nimmt an, lehnt ab oder antwortet.
talk-which = Was?
talk-kind = { $kind ->
    [plan] Ein Plan für einige Tage
    [change] Eine Änderung zum Ausprobieren
    [stage] Eine Stufe für ein Wort
    [word] Ein Wort zum Anlegen
    [likes] Ein Vorlieben-Test
    [check] Eine Prüfung des Verstehens
    [meeting] Ein Treffen
    [note] Eine Notiz
    [practice] Etwas zum Üben
   *[question] Eine Frage
}
talk-rests = Wegen eines starken Zeichens ruhen die Sitzungen mit { $name }. Bis Heute das aufhebt, lässt sich keine Sitzung vorschlagen. Eine Notiz oder Frage schon.
talk-rests-still = lässt sich jetzt nicht vorschlagen: Wegen eines starken Zeichens ruhen die Sitzungen mit { $name }
talk-with = Mit { $name }
talk-instead = Stattdessen { $name }
talk-something-else = Etwas anderes
talk-no-words = { $name } hat noch kein Wort.
talk-line-of = Wort { $number }
talk-more-lines = Weitere Wörter
talk-field-word = Wort
talk-field-way = Wie
talk-way = { $way ->
    [show] zeigen
    [offer_in_view] einladen, die Sache in Sicht
    [ask_and_point] einladen, fragen und hinzeigen
    [ask_between_two] einladen, „dies oder das“
   *[any] wie es passt
}
talk-field-minutes = Minuten
talk-field-times = Mal am Tag
talk-field-last-day = Letzter Tag
talk-field-stage = Stufe
talk-field-says = Was es sagen würde
talk-field-about = Zu
talk-about-all = allem
talk-field-text = In deinen Worten
talk-send = Abschicken
talk-no-line = fehlt; wähl mindestens ein Wort
talk-way-of-closing = lädt zu einem Wort ein, das Sitzungen beendet: Darauf wartet niemand; wähl „zeigen“ oder „wie es passt“
talk-stage-of-closing = ist nichts für ein Wort, das Sitzungen beendet: Darauf wartet niemand; wähl eine andere Stufe
talk-last-day-wrong = muss ein Tag von heute bis { $last } sein
talk-no-such = So einen Vorschlag gibt es hier nicht.
talk-over = ist vorbei oder zurückgenommen: Es gibt nichts mehr anzunehmen oder abzulehnen
talk-meeting = Ein Treffen am { $when }, { $minutes ->
    [one] { $minutes } Minute
   *[other] { $minutes } Minuten
}
talk-field-day = Tag
talk-field-time = Uhrzeit
talk-time-zone = Wie die Uhren des Zuhauses sie zeigen ({ $zone }), etwa 18:30.
talk-time-wrong = muss eine künftige Zeit sein, die es an dem Tag auf der Uhr gibt, etwa 18:30
talk-filled = { $by ->
    [plan] Ausgefüllt nach dem letzten Plan. Ändere, was nicht mehr passt.
   *[steps] Ausgefüllt mit den Schritten, die Heute gewählt hat. Ändere, was nicht passt.
}
talk-own = Ein eigener Plan
talk-own-intro = Für einige Tage mit { $name }, wie ihr es bei einem Treffen oder unter euch ausgemacht habt. Heute zeigt ihn beim Schritt jedes Wortes.
talk-own-title = Unser eigener Plan
talk-own-of-home = Eigener Plan des Zuhauses
talk-own-make = Einen eigenen Plan mit { $name } machen
talk-own-keep = Diesen Plan behalten
talk-own-stop = Diesen Plan beenden
talk-change = Zum Ausprobieren: { $change }
talk-change-words = Zum Ausprobieren bei { $words }: { $change }
talk-field-change = In Worten, was sich ändert
talk-field-change-hint = nötig bei „etwas anderes“; bei einem anderen Wort: welches
talk-field-change-words-hint = nichts angekreuzt: alle
talk-change-measured = Was gemessen wird
talk-change-how = Nimmt das Zuhause an, lost ein weiterer Tipp aus, wann die Änderung beginnt. Beurteilt wird sie am Ende.
talk-as-trial = { $what } Gemessen: { $measure }.
talk-draw = Die Tage auslosen
talk-draw-hint = Ab morgen. Gezeigt wird nur, was am Tag gilt. Ein starkes Stresszeichen beendet den Versuch, und Abbrechen ist immer richtig.
talk-other-numbers = Die Zahlen wählen
talk-trial-lead = Ausgelost versucht:
talk-to-the-trial = Der Versuch
talk-not-agreed = ist nicht abgemacht: Nur was angenommen wurde, lässt sich versuchen
talk-trial-today = Versuch: { $question } Heute { $what }.
talk-hand-over = Eine andere Person als Coach: { $name }
talk-cover = Vertretung durch { $name }, { $first } bis { $last }
talk-for-club = Für den Verein geschrieben: Die anderen Coachs dort lesen es und eure Antworten.
talk-for-club-coach = Für den Verein geschrieben: Die anderen Coachs dort lesen es und was das Zuhause antwortet.
talk-not-read = Das hier und was du antwortest, wird von { $name } nicht mehr gelesen: Das Teilen endete am { $day }.
talk-not-read-now = Das hier und was du antwortest, liest { $name } nicht: Jetzt ist nichts geteilt.
talk-today-not-read = Was du hier tust und antwortest, wird seit { $day } von { $name } nicht mehr gelesen.
talk-today-not-read-now = Was du hier tust und antwortest, liest { $name } nicht: Jetzt ist nichts geteilt.
talk-club-reads = Dieses Zuhause teilt mit deinem ganzen Verein. Die anderen Coachs dort lesen, was du hier schreibst, und die Antworten.
talk-opens = wird auf einer eigenen Seite entschieden: Es öffnet das Zuhause für jemanden
talk-look-and-decide = Ansehen und entscheiden
talk-a-keeper-decides = Darüber entscheidet, wer das Zuhause verwaltet.
talk-see-sharing = Wer dieses Zuhause sehen kann
talk-field-exercise = Übung zum Proben
talk-field-character = Mit wem
talk-field-lessons = Lektionen zum Lesen
talk-practice-none = Keine
talk-practice-nothing = Wähl eine Übung oder eine Lektion.
talk-rehearse-it = Probe es: { $exercise }
talk-is-read = gelesen
talk-lessons-read = Lektionen, die jemand im Zuhause gelesen hat: { $read } von { $of }
talk-shared-count = Geteilte Proben: { $count }
talk-may-share = Nach einer Probe kannst du ihre Zahlen mit { $name } teilen. Von einer Probe wird von selbst nichts geteilt.
talk-lessons-shown = Lektionen, die das Zuhause als gelesen zeigt: { $read } von { $of }. Auch andere können gelesen sein.
talk-lessons-seen = { $club ->
    [yes] { $name } und andere Coachs des Vereins sehen von diesen Lektionen nur, was jemand im Zuhause zeigt: mit einem Haken bei der Lektion, zuerst nicht gesetzt.
   *[no] { $name } sieht von diesen Lektionen nur, was jemand im Zuhause zeigt: mit einem Haken bei der Lektion, zuerst nicht gesetzt.
}
talk-nothing-to-share = Von dieser Probe gibt es nichts zu teilen: Es geschah zu wenig.
talk-shared = Aus einer Probe von „{ $exercise }“ mit { $name }, einem simulierten Tier:
talk-word-there = ist hier schon auf einem Knopf: schlag eine Stufe oder einen Plan dafür vor, oder etwas anderes
talk-word-is-there = „{ $word }“ ist hier schon auf einem Knopf. Zu seiner Karte
talk-word-how = Nur ein Wort: Das Zuhause legt es an und wählt, was es bringt. Ausgelost wird nichts. Hier auf Knöpfen: { $words }.
talk-word-how-none = Nur ein Wort: Das Zuhause legt es an und wählt, was es bringt. Ausgelost wird nichts.
talk-word-by-lot = Um ausgelost zu sehen, ob ein anderes Wort hilft, schlag eine Änderung zum Ausprobieren vor
talk-today-meeting = Treffen mit { $name }: { $when }
talk-today-course-begins = „{ $course }“ beginnt { $day }
talk-today-course = „{ $course }“: Woche { $week } von { $weeks }, die nächste ab { $day }
talk-today-course-last = „{ $course }“: Woche { $week } von { $weeks }, bis { $day }
talk-trial-today-until = Versuch bis { $last }: { $question } Heute { $what }.
talk-trial-begins = Versuch ab { $day }: { $question }
talk-in-place = { $name } hat dies in Vertretung von { $of } geschrieben; dort geht es weiter.
talk-cover-reads = Du vertrittst { $name }: Was du hier schreibst, wird dort gelesen und weitergeführt.
talk-about-word-chart = die Grafik „{ $chart }“ von „{ $word }“
talk-about-chart = die Grafik „{ $chart }“
talk-look-at = Ansehen: { $what }
talk-write-about-chart = Zu dieser Grafik schreiben
