checks-title = Prüfungen
checks-one = Eine Prüfung
checks-no-such = Dieses Notizbuch kennt keine solche Prüfung dieses Tiers.
checks-design = { $design ->
    [pick_for_word] Ein Wort hören, die Sache wählen
    [press_under_covers] Eine Sache verschwinden sehen, ihren Knopf drücken; Knöpfe unter Deckeln getauscht
    [wrong_delivery] Eine andere Sache als verlangt
   *[press_for_thing] Eine Sache verschwinden sehen, ihren Knopf drücken
}
checks-place = { $kind ->
    [button] Knopf { $number }
   *[place] Platz { $number }
}
checks-left = links von { $name } aus
checks-right = rechts von { $name } aus
checks-whose-left = So gezeichnet, wie { $name } es sieht. Stehst du { $name } gegenüber, ist links von { $name } aus rechts von dir.
checks-mark-asked-for = { $mark } steht bei dem, wonach gefragt wird.
checks-quoted = „{ $word }“
checks-health = Gesundheit:
checks-trials = { $trials ->
    [one] Ein Durchgang
   *[other] { $trials } Durchgänge
}
checks-blind = blind
checks-not-blind = nicht blind
checks-intro = Eine Prüfung (in der Fachsprache: Probe) fragt, ob sich { $name } nach dem Wort selbst richtet: vorher geplant, in zufälliger Reihenfolge, mit einer Person dabei, die die Antwort nicht verraten kann.
checks-none-today = Heute keine Prüfung: Es wurden starke Stresszeichen notiert. Gib Raum; ein ruhiger Tag wird kommen.
checks-plan = Eine Prüfung planen
checks-so-far = Bisherige Prüfungen
checks-none = Noch keine.
checks-open = Öffnen
checks-to-designs = Hilft eine Änderung? Versuche mit einer Änderung
checks-cannot-show = Eine Prüfung kann zeigen, wonach sich ein Tier richtet; sie kann nicht zeigen, dass ein Tier etwas nicht versteht. Keine Wahl und Weggehen werden getrennt geführt und sind nie falsch.
checks-finished = { $trials ->
    [one] Wie geplant beendet, ein Durchgang
   *[other] Wie geplant beendet, { $trials } Durchgänge
}
checks-finished-otherwise = { $trials ->
    [one] Beendet, ein Durchgang, aber nicht wie geplant
   *[other] Beendet, { $trials } Durchgänge, aber nicht wie geplant
}
checks-going = { $trials ->
    [one] { $done } von einem Durchgang
   *[other] { $done } von { $trials } Durchgängen
}
checks-nothing-worked-out = Aus dieser Prüfung lässt sich nichts berechnen: { $why }.
checks-finds = Bei dieser Länge wird ein Tier, das in { $share } oder mehr richtig liegt, in vier von fünf Prüfungen gefunden, Wort für Wort.
checks-finds-none = Das ist zu kurz, um auch nur ein Tier zu finden, das in { $share } richtig liegt, Wort für Wort; das kann nur eine längere Prüfung.
checks-not-as-planned = Nicht wie geplant:
checks-taken-back = { $trials ->
    [one] 1 Durchgang rückgängig gemacht: zählt als falsch.
   *[other] { $trials } Durchgänge rückgängig gemacht: zählen als falsch.
}
checks-changed = { $trials ->
    [one] 1 Durchgang nach der ersten Antwort geändert: zählt als falsch.
   *[other] { $trials } Durchgänge nach der ersten Antwort geändert: zählen als falsch.
}
checks-again = { $trials ->
    [one] 1 Durchgang unter einer schon benutzten Nummer noch einmal beantwortet: Die erste Antwort zählt.
   *[other] { $trials } Durchgänge unter einer schon benutzten Nummer noch einmal beantwortet: Die erste Antwort zählt.
}
checks-left-out = { $trials ->
    [one] 1 Durchgang zwischen anderen ausgelassen: zählt als falsch.
   *[other] { $trials } Durchgänge zwischen anderen ausgelassen: zählen als falsch.
}
checks-not-as-drawn = { $trials ->
    [one] 1 Durchgang mit einem anderen Wort oder einer anderen Sache, als die Startzahl dieses Plans auslost: zählt als falsch.
   *[other] { $trials } Durchgänge mit einem anderen Wort oder einer anderen Sache, als die Startzahl dieses Plans auslost: zählen als falsch.
}
checks-beyond = { $trials ->
    [one] 1 Durchgang mit einer Nummer, die der Plan nicht hat: zählt nicht.
   *[other] { $trials } Durchgänge mit einer Nummer, die der Plan nicht hat: zählen nicht.
}
checks-knew-answer = { $trials ->
    [one] 1 Durchgang, in dem die Person beim Tier die Antwort wusste: Ein richtiger zählt nicht als blind, ein falscher schon.
   *[other] { $trials } Durchgänge, in denen die Person beim Tier die Antwort wusste: Ein richtiger zählt nicht als blind, ein falscher schon.
}
checks-earlier-rule = Nach einer früheren Regel ausgelost, bei der das zuletzt Verlangte etwas verriet: Die Prüfung wird gezeigt und hebt nichts.
checks-given-up = Eine andere Prüfung wurde geplant, bevor diese beendet war: Sie bleibt in der Rechnung, und die Antwort, die als nächste gekommen wäre, zählt als falsch.
checks-things-a-trial = { $choices } Sachen je Durchgang
checks-buttons-a-trial = { $choices } Knöpfe je Durchgang
checks-not-today-space = Heute nicht: Es wurden starke Stresszeichen notiert. Gib Raum.
checks-i-set-up = Ich baue auf
checks-i-am-with = Ich bin bei { $name }
checks-go-on-alone = Zum nächsten Durchgang
checks-two-phones = Zwei Telefone sind am besten. Hast du nur eines, drucke das Blatt fürs Aufbauen und gib das Telefon der Person, die beim Tier ist.
checks-setters-sheet = Blatt fürs Aufbauen
checks-scorers-sheet = Blatt fürs Aufschreiben
checks-who-does-what = Wer macht was, und wer darf was wissen
checks-all = Alle Prüfungen
checks-setter = Aufbauen
checks-setter-knows = kennt die Antwort
checks-setter-picks = Legt die Sachen nach der Liste aus, alle gleich nah, und geht dann dorthin, wo { $name } niemanden sehen kann. Spielt von dort das Wort einmal ab. Sagt sonst nichts.
checks-setter-covers = Deckt das Brett zu und legt die Knöpfe nach der Liste unter die Deckel. Lässt { $name } die Sache sehen, schließt sie außer Sicht weg und geht dorthin, wo { $name } niemanden sehen kann.
checks-setter-shows = Lässt { $name } die Sache sehen, schließt sie weg und geht dorthin, wo { $name } niemanden sehen kann. Lässt jeden Knopf, wo er immer ist.
checks-presenter = Dabeisein
checks-alone = Die Prüfung, allein
checks-must-not-know = darf sie nicht kennen
checks-presenter-knows = kennt sie hier, also ist es nicht blind
checks-presenter-picks = Ist bei { $name }; abgewandt oder mit dunkler Brille, während die Sachen ausgelegt werden und bis die Wahl gefallen ist. Zeigt, nickt, spricht und drängt nicht.
checks-presenter-covers = Kommt herein, wenn die Sache fort ist; nimmt die Deckel von hinten ab, ohne auf die Knöpfe zu sehen. Weiß nicht, welcher Knopf wo liegt. Zeigt, nickt, spricht und drängt nicht.
checks-presenter-stands = Kommt herein, wenn die Sache fort ist. Steht hinter der Mitte des Bretts und sieht geradeaus. Zeigt, nickt, spricht und drängt nicht.
checks-scorer = Aufschreiben
checks-scorer-notes = Notiert die Nummer dessen, was zuerst gewählt wurde, ohne zu wissen, was richtig war: die Person beim Tier auf dem Telefon oder eine dritte Person nach einer Aufnahme ohne Ton.
checks-goes-by-place = Nur für ein Tier, das seine Knöpfe an Aussehen, Bild oder Geruch erkennt. Eines, das nach dem Platz geht, liegt hier beim Zufall, und das ist kein Versagen.
checks-kindly = { $stop } ({ $signs }), bei einem starken sofort und spätestens nach zehn Durchgängen. { $name } darf jederzeit gehen; rufe { $name } nie zurück. Was { $name } wählt, bekommt { $name }: Eine Prüfung ist kein Unterricht, und für ein Tier ist nie etwas falsch.
checks-kindly-stop = Hör bei jedem Zeichen von Stress auf
checks-not-today = Heute nicht: Es wurden starke Stresszeichen notiert. Gib { $name } Raum und prüfe an einem ruhigen Tag.
checks-back-to-all = Zurück zu den Prüfungen
checks-too-few-words = { $words ->
    [0] Eine Prüfung braucht mindestens zwei Wörter; { $name } hat keines.
   *[other] Eine Prüfung braucht mindestens zwei Wörter; { $name } hat { $words }.
}
checks-to-words = Zu den Wörtern
checks-why = Alltägliches Drücken lässt andere Erklärungen zu: ein Blick, ein Lieblingsplatz, ein Lieblingsding. Eine Prüfung schließt diese Lücke, wenn sie zuerst geplant und dann wie geplant durchgeführt wird.
checks-field-design = Was { $name } tut
checks-field-words = Wörter
checks-field-words-hint = üblich sind zwei bis vier; jedes mit einer eigenen Sache
checks-field-choices = Sachen oder verdeckte Knöpfe auf einmal
checks-field-choices-hint = 2 sind am leichtesten, mehr brauchen weniger Durchgänge. Wo Knöpfe an ihrem Platz bleiben, zählen alle angekreuzten
checks-field-rate = Mindestens richtig, in %
checks-field-rate-hint = wie oft { $name } richtig liegen muss, damit es dir wichtig ist; weniger braucht viel mehr Durchgänge
checks-field-who = Wer ist da
checks-who-two = Zwei Personen oder mehr
checks-who-two-hint = Eine baut auf, die andere ist bei { $name } und kennt die Antwort nicht: eine blinde Prüfung.
checks-who-one = Ich bin allein
checks-who-one-hint = Du kennst die Antwort, also bleiben unbewusste Hinweise eine mögliche Erklärung, was auch herauskommt.
checks-about-picks = Fürs Hören: Sachen liegen an zufälligen Plätzen; ein Wort ertönt; zu welcher Sache geht { $name }? Zufällige Reihenfolge und Plätze schließen die meisten anderen Erklärungen aus.
checks-about-covers = Fürs Bitten: Vor jedem Durchgang werden die Knöpfe unter Deckeln getauscht, wie ausgelost; die Sache ist außer Sicht; wer antwortet, weiß nicht, welcher Knopf wo liegt.
checks-suggests = Die Knöpfe bleiben an ihrem Platz, also sähe eine Gewohnheit des Platzes genauso aus: Das kann etwas nahelegen und nicht mehr. Unter Deckeln getauscht könnte es das zeigen.
checks-count = Wie viele Durchgänge?
checks-count-each = { $sittings ->
    [one] { $each } für jedes der { $words } Wörter, in etwa einem Termin.
   *[other] { $each } für jedes der { $words } Wörter, in etwa { $sittings } Terminen zu { $most } an verschiedenen Tagen oder Stunden.
}
checks-count-chance = Durch Zufall läge { $name } in { $share } richtig.
checks-count-false-alarm = Der Zufall allein bringt ein Wort in { $share } der Prüfungen nach ganz oben ({ $alpha }, geteilt durch die Wörter).
checks-count-power = Ist { $name } so gut, wie du hoffst, kommt ein Wort in { $share } der Prüfungen dorthin.
checks-count-top = Ein Wort ist ganz oben ab { $right }; weniger genügen, wenn sie früh kommen. Exakte Binomialzahlen.
checks-count-right = { $right } richtigen von { $each }
checks-count-by-lot = Welches Wort kommt, wird jedes Mal ausgelost, damit das letzte nichts über das nächste verrät: { $each } ist der Durchschnitt, und ein Wort, das seltener kam, braucht vielleicht mehr Durchgänge.
checks-plan-these = { $trials ->
    [one] Diesen Durchgang planen
   *[other] Diese { $trials } Durchgänge planen
}
checks-unfinished = Nicht beendet:
checks-unfinished-count = Was begonnen wurde, bleibt in der Rechnung. Planst du eine weitere dieser Art, wird für die nicht notierte Antwort eine falsche angerechnet.
checks-stop-here = Hör hier auf: Es wurden starke Stresszeichen notiert. Gib Raum und locke { $name } nicht zurück. Die Prüfung kann an einem anderen Tag weitergehen.
checks-sitting-done = { $trials } Durchgänge heute: Das ist ein Termin. Ruht jetzt; macht in einigen Stunden oder an einem anderen Tag weiter.
checks-setter-only = Nur für die Person, die aufbaut. Wer beim Tier ist, darf diese Seite und das Protokoll nicht sehen.
checks-cannot-run = Diese Prüfung kann von hier aus nicht durchgeführt werden: { $why }.
checks-all-done = { $trials ->
    [one] Der eine Durchgang ist fertig.
   *[other] Alle { $trials } Durchgänge sind fertig.
}
checks-at-board = Diese Art wird am Brett notiert, wie jede Antwort.
checks-back-to-one = Zurück zur Prüfung
checks-trial-of = Durchgang { $number } von { $trials }
checks-lay-out = Lege aus, von { $name } aus links beginnend
checks-asked-for = – das verlangte
checks-then-play = Geh dann außer Sicht und spiele { $word } einmal ab.
checks-then-play-alone = Dann tritt zurück, schau geradeaus und spiel { $word } ab, einmal. Sag sonst nichts und zeig auf nichts.
checks-under-covers = Unter den Deckeln, von { $name } aus links beginnend
checks-show-thing = Zeige es, dann schließe es weg: { $thing }
checks-lies-in = Sein Knopf liegt auf Platz { $place }. Rufe die Person herein, wenn du außer Sicht bist. Lege jeden Knopf beiseite, der nicht auf der Liste steht.
checks-lies-in-alone = Sein Knopf liegt auf Platz { $place }. Leg Knöpfe beiseite, die nicht in der Liste stehen. Nimm die Abdeckungen von hinten ab, schau geradeaus und sag nichts.
checks-its-number = Rufe die Person herein, wenn du außer Sicht bist. Sein Knopf ist Nummer { $place }.
checks-its-number-alone = Sein Knopf ist Nummer { $place }. Steh hinter der Mitte des Bretts, schau geradeaus und sag nichts.
checks-numbers = Nummern der Knöpfe
checks-numbers-how = Lege eine kleine Nummer neben jeden Knopf, damit die Person sagen kann, welcher gedrückt wurde:
checks-next = Notiert? Zeige den nächsten
checks-next-how = Es wechselt, sobald getippt wurde, was kam. Etwas falsch ausgelegt? Spiele das Wort nicht ab; lege neu aus.
checks-laid = Fertig. Was tat { $name }?
checks-noted-already = Das war schon notiert; nichts wurde geändert. Rückgängig nimmt die letzte Antwort zurück; sie zählt dann als falsch.
checks-thanks = Danke, { $name }.
checks-see = Sehen, was herauskam
checks-stop-for-now = Für jetzt aufhören
checks-stop-for-now-kept = – was notiert wurde, bleibt; mach später weiter.
checks-go-on = Trotzdem weitermachen
checks-note-sign = Ein Anzeichen von Stress? Notier es auf dem Brett von { $name }
checks-which = { $kind ->
    [picks] Zu welchem Platz ging { $name } zuerst?
    [place] Auf welchem Platz drückte { $name } zuerst?
   *[button] Welchen Knopf drückte { $name } zuerst?
}
checks-nothing = Nichts
checks-away = Weggegangen
checks-before-tap = { $blind ->
    [yes] Gestoppt? Antwort gewusst? Sag es zuerst
   *[other] Gestoppt? Sag es zuerst
}
checks-field-seconds = Sekunden bis zur Wahl
checks-field-seconds-hint = nur, wenn jemand gestoppt hat
checks-field-knew = Ich kannte diesmal die Antwort (gesehen oder gehört)
checks-how-to-note = Sieh weg, bis die Wahl gefallen ist. Keine Wahl in etwa einer halben Minute ist „nichts“; Weggehen ist „weggegangen“. Beides ist nicht falsch. { $name } bekommt, was { $name } gewählt hat; ein Stück Futter wird mitgezählt.
checks-stop-and-cautions = Hör bei jedem Zeichen von Stress auf. Hinweise zu Gesundheit und Futter stehen auf der Seite fürs Aufbauen: Lass sie dort zuerst lesen.
checks-last-trial = Durchgang { $number }:
checks-a-choice = eine Wahl
checks-undo = Rückgängig
checks-undo-counts = Rückgängig: Die Antwort bleibt in den Aufzeichnungen und zählt als falsch; der Durchgang kommt nicht wieder.
checks-went-away = { $name } ist gegangen, und das ist eine Antwort. Lass { $name } gehen; macht weiter, wenn { $name } von selbst zurückkommt, oder an einem anderen Tag.
checks-for-setter = { $only } Falte es so, dass die anderen es nicht sehen.
checks-for-setter-only = Nur fürs Aufbauen.
checks-column-number = Nr.
checks-column-play = Abspielen
checks-column-hide = Wegschließen
checks-column-button = Knopf
checks-column-seconds = Sekunden
checks-cross = Kreuze an, was { $name } zuerst gewählt hat. Keine Wahl in etwa einer halben Minute ist { $nothing }, Weggehen ist { $away }; beides ist nicht falsch. Sekunden nur, wenn gestoppt.
checks-do-not-look = Sieh nicht auf das Blatt fürs Aufbauen und rate nicht, was verlangt war.
checks-cannot-draw = Die Reihenfolge lässt sich aus diesem Plan nicht auslosen: { $why }.
checks-sitting = Termin { $number }
checks-date-and-who = Tag und Stunde, wer da war:
checks-prints-again = Startzahl { $seed }: Derselbe Plan druckt diese Reihenfolge wieder.
checks-nothing-done = Noch nichts wurde durchgeführt.
checks-came-out = Was herauskam
checks-this-not-blind = Diese Prüfung war nicht blind: Wer notierte, kannte die Antwort. Wo unten eine blinde Prüfung steht, ist es eine frühere.
checks-figures = Zahlen bisher
checks-read-any-time = Lies es, wann du willst, mach weiter oder lass es hier: Geschlossen werden muss nichts. Dafür sind die Belege gemacht. Was begonnen wurde, bleibt in der Rechnung.
checks-chart = Richtig, von getroffenen Wahlen
checks-chart-axis = Anteil richtig
checks-chart-read = Senkrechte Linie: Zufall, { $chance }. Balken: 95-%-Bereiche, die gelten, wann immer sie gelesen werden. Für jedes Wort: von den Malen, die { $name } dorthin ging, wie oft es das verlangte war; ein Liebling ist nur durch Zufall richtig. Es zählen erste Antworten; zurückgenommene zählen als falsch.
checks-no-choice = Es wurde keine Wahl getroffen; das sagt weder das eine noch das andere.
checks-went-for = { $times ->
    [one] { $name } ging einmal dorthin, und es war das verlangte in { $right }: { $share } ({ $low } bis { $high }).
   *[other] { $name } ging { $times }-mal dorthin, und es war das verlangte in { $right }: { $share } ({ $low } bis { $high }).
}
checks-never-wrong = Nichts: { $nothing }. Weggegangen: { $away }. Beides zählt nicht als falsch.
checks-p-rearranged = Passt dieser Knopf zu dem, was gezeigt wurde (Sachen zufällig neu verteilt, Drücken so belassen)? { $p }. Lies es zusammen mit dem Anteil richtig.
checks-p-chance = { $times ->
    [one] Gegen den Zufall ({ $chance }, exakt binomial, einseitig): { $p }, aus einer Wahl.
   *[other] Gegen den Zufall ({ $chance }, exakt binomial, einseitig): { $p }, aus { $times } Wahlen.
}
checks-bayes-above = Bayes-Faktor { $factor }: so viele Male wahrscheinlicher, wenn der Anteil richtig irgendwo über dem Zufall liegt, als durch Zufall.
checks-bayes-below = Bayes-Faktor 1 zu { $factor }: so viele Male wahrscheinlicher durch Zufall, als wenn der Anteil richtig irgendwo über dem Zufall liegt.
checks-more-than = mehr als { $number }
checks-seconds-right = { $timed ->
    [one] Die eine gestoppte richtige Wahl kam innerhalb von { $seconds } s.
   *[other] Die Hälfte der { $timed } gestoppten richtigen Wahlen kam innerhalb von { $seconds } s.
}
checks-seconds-wrong = { $timed ->
    [one] Die eine gestoppte falsche Wahl kam innerhalb von { $seconds } s.
   *[other] Die Hälfte der { $timed } gestoppten falschen Wahlen kam innerhalb von { $seconds } s.
}
checks-latency = Richtig gegen falsch, Rangsumme, zweiseitig: { $p }.
checks-may-be-said = Was man sagen darf
checks-said-of-word = { $word }: { $said }.
checks-judged = Beurteilt über alle Wörter und alle je begonnenen Prüfungen zusammen, damit viele Tests und häufiges Nachsehen nicht zu einer falschen Behauptung führen.
