# Die Seite mit dem Pult einer Coachs. Was darauf steht, sagt desk.ftl.
desk-page-title = Wer dich zuerst braucht
desk-page-needs = Anliegen
desk-page-week = Was sich geändert hat
desk-page-more-pages = Weitere Seiten
desk-page-week-how = Seit du notiert hast, dass ihr gesprochen habt, sonst seit einer Woche. Tatsachen, und Zahlen, die sich mehr als zufällig bewegt haben; was der Zufall bewegt, ist keine Neuigkeit.
desk-page-no-diagnosis = Diese Seite ordnet, was aufgeschrieben wurde. Sie stellt keine Diagnose: Wo es einem Tier nicht gut gehen oder etwas unsicher sein kann, nennt sie, wen man fragt.
desk-page-how-many = { $shown } gezeigt von { $animals ->
    [one] { $animals } Tier
   *[other] { $animals } Tieren
} in { $homes ->
    [one] { $homes } Zuhause
   *[other] { $homes } Zuhause
}. Wer ein Zuhause verwaltet, kann lesen, dass du heute hingesehen hast.
desk-page-none = Hier braucht dich gerade nichts.
desk-page-none-found = Kein Zuhause, kein Tier und kein Wort heißt so: „{ $find }“.
desk-page-no-news = Nichts hat sich mehr als zufällig geändert.
desk-page-keys = Tasten: j und k gehen von Zeile zu Zeile; in der Liste auch die Pfeiltasten, Enter öffnet, a legt beiseite. Tab erreicht alles.
desk-page-keys-week = Tasten: j und k gehen von Zeile zu Zeile; in der Liste auch die Pfeiltasten, Enter öffnet. Tab erreicht alles.
desk-page-keys-anywhere = j und k überall auf der Seite
desk-page-behind = { $behind ->
    [one] { $behind } Zuhause hat Neueres geschrieben, als hier steht.
   *[other] { $behind } Zuhause haben Neueres geschrieben, als hier steht.
}
desk-page-unread = { $unread ->
    [one] { $unread } Zuhause wird noch gelesen.
   *[other] { $unread } Zuhause werden noch gelesen.
}
desk-page-look-again = Noch einmal nachsehen
desk-page-gone = Dieses Zuhause teilt seine Zahlen nicht mehr mit dir. Es wurde nichts behalten.
desk-page-was-put = Für { $name } beiseitegelegt. Es kommt nach diesen Tagen wieder, und sofort, wenn es schlimmer wird oder neu beginnt.
desk-page-filter = Nur einige zeigen
desk-page-show = Zeigen
desk-page-all-needs = Alle Anliegen
desk-page-kind = { $kind ->
    [safety] Sicherheit
    [taken_back] Zurückgenommen
    [change] Plötzliche Änderung
    [leaves] Verlässt Sitzungen
    [silent] Still
    [held] Ein Wort kommt nicht voran
    [ration] Futter
    [ready] Bereit zum Einladen
    [check] Prüfungen
    [little] Wenig aufgeschrieben
    [outside] Neben anderen Haushalten
    [answers] Antworten
    [aside] Beiseitegelegt
   *[none] Nichts nötig
} ({ $count })
desk-page-own-mark = Dein Zeichen
desk-page-any-mark = Alle
desk-page-own-mark-hint = Nur du siehst es. Leer lassen nimmt es weg.
desk-page-keep-mark = Zeichen speichern
desk-page-mark-wrong = bis zu 40 Buchstaben in einer Zeile
desk-page-find = Zuhause, Tier oder Wort
desk-page-apply = Diese zeigen
desk-page-nothing-needed = Gerade ist nichts nötig.
desk-page-more = { $count ->
    [0] Mehr zu tun
    [one] { $count } weiteres Anliegen und mehr zu tun
   *[other] { $count } weitere Anliegen und mehr zu tun
}
desk-page-whose-figures = Wessen Zahlen das sind
desk-page-since = Seit { $day }, aus { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträgen
}: { $sure }.
desk-page-at-least-since = Mindestens seit { $day }, aus { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträgen
}: { $sure }.
desk-page-first-seen = Hier zuerst gesehen am { $day }, aus { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträgen
}: { $sure }.
desk-page-from = Aus { $n ->
    [one] { $n } Eintrag
   *[other] { $n } Einträgen
}: { $sure }.
desk-page-until = Was es ändern würde: { $what }
desk-page-kept = Vereinbart: { $words ->
    [one] { $words } Wort
   *[other] { $words } Wörter
}. Gehalten, so viele der bisherigen Tage: { $days }.
desk-page-kept-not-yet = Vereinbart: { $words ->
    [one] { $words } Wort
   *[other] { $words } Wörter
}. Noch ist kein Tag vergangen.
desk-page-kept-no-record = { $days ->
    [one] { $days } Tag hat gar keinen Eintrag: Darüber lässt sich nichts sagen.
   *[other] { $days } Tage haben gar keinen Eintrag: Darüber lässt sich nichts sagen.
}
desk-page-put-aside-days = { $days ->
    [one] Für { $days } Tag beiseitelegen
   *[other] Für { $days } Tage beiseitelegen
}
desk-page-aside-ends = Was schlimmer wird, neu beginnt oder eine andere Ursache zeigt, ist sofort wieder da.
desk-page-bring-back = Zurückholen
desk-page-safety-stays = was die Sicherheit betrifft, lässt sich nicht beiseitelegen
desk-page-unclear = öffne das Pult noch einmal: dieses Anliegen gibt es nicht
desk-page-spoken = Wir haben heute gesprochen
desk-page-since-spoken = Gesprochen am { $day }
desk-page-since-week = Seit { $day }
desk-page-same = { $count ->
    [one] { $count } Tier ohne Neues
   *[other] { $count } Tiere ohne Neues
}
desk-page-same-more = Und { $count } weitere.
desk-page-presses = Eigene Drücke
desk-page-joined = Mitgemachte Sitzungen
desk-page-weeks = { $what } je Woche, die älteste zuerst: { $counts }
desk-page-key = Wie man die kleinen Bilder liest
desk-page-key-says = Ein Balken je Woche, { $weeks } Wochen, die letzte rechts und in anderer Farbe. Ein blasser Balken dahinter zeigt, von wie vielen. Die Zahlen daneben sind der Maßstab; die Zahl darüber gilt für die letzten sieben Tage.
desk-page-nameless = ein Wort ohne Karte
desk-page-nameless-home = Ein Zuhause ohne Namen
desk-page-not-begun = Noch nichts begonnen
desk-page-not-begun-since = Seit { $day } nichts begonnen: Kein Tier ist eingetragen.
desk-page-put-away = Kein Tier macht gerade mit
desk-page-put-away-all = Dort sind Tiere eingetragen; keines macht mehr mit.
desk-page-pages = Seiten
desk-page-page = Seite { $at } von { $pages }
desk-page-before = Zurück
desk-page-after = Weiter
desk-page-practice = Zum Üben: { $read } von { $of } Lektionen als gelesen gezeigt, geteilte Proben: { $shared }
desk-page-in-seven = { $count } in 7 Tagen
desk-page-days-written = Tage notiert
desk-page-of = { $part } von { $whole }
desk-page-of-within = { $part } von { $whole } ({ $low } bis { $high })
desk-page-of-none = keine
desk-page-answered = { $homes ->
    [one] { $homes } Zuhause hat geantwortet, seit du dort zuletzt nachgesehen hast
   *[other] { $homes } Zuhause haben geantwortet, seit du dort zuletzt nachgesehen hast
}
desk-page-answer = { $reply ->
    [accepted] Angenommen: { $what }, { $day }
    [declined] Abgelehnt: { $what }, { $day }
    [shared] Geteilt: { $what }, { $day }
   *[said] Beantwortet: { $what }, { $day }
}
desk-page-answer-what = { $kind ->
    [plan] Plan für { $words }
    [stage] Stufe von { $words }
    [word] ein neues Wort
    [likes] Vorlieben-Test
    [check] Prüfung des Verstehens von { $words }
    [a_note] eine Notiz
    [a_question] eine Frage
    [note] deine Notiz
    [question] deine Frage
    [meeting] Treffen
    [change] Änderung zum Ausprobieren
    [programme] Programm
    [practice] etwas zum Üben
    [hand_over] Übergabe
   *[cover] Vertretung
}
desk-page-answers-more = { $count ->
    [one] { $count } weitere Antwort
   *[other] { $count } weitere Antworten
}
desk-page-changes-more = { $count ->
    [one] { $count } weitere Änderung
   *[other] { $count } weitere Änderungen
}
desk-page-changes-folded = { $count ->
    [one] { $count } Änderung
   *[other] { $count } Änderungen
}
desk-page-stood-in = { $name } in deiner Vertretung: { $what }, { $day }
desk-page-stood-in-more = { $count ->
    [one] { $count } weiteres in deiner Vertretung geschrieben
   *[other] { $count } weitere in deiner Vertretung geschrieben
}
