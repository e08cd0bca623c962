designs-title = Hilft eine Änderung?
designs-no-such = Dieses Notizbuch kennt keinen solchen Versuch mit diesem Tier.
designs-cannot-draw = Die Reihenfolge dieses Versuchs lässt sich aus seinem Plan nicht auslosen: { $why }.
designs-design = { $design ->
    [reversal] Hin und zurück, je einige Tage (Umkehrplan, ABAB)
    [multiple_baseline] Eins nach dem anderen (multiple Grundraten)
    [alternating_treatments] In raschem Wechsel (alternierende Bedingungen)
   *[changing_criterion] Schritt für Schritt (Kriteriumswechsel)
}
designs-from-a-day = Ab einem ausgelosten Tag (AB, Beginn ausgelost)
designs-question = { $question ->
    [quieter_button] Hilft ein leiserer Knopf?
    [new_place] Hilft ein neuer Platz?
    [faster_delivery] Hilft es, schneller zu geben?
    [another_word] Hilft ein anderes Wort?
   *[other] Hilft eine Änderung?
}
designs-question-own = Hilft das: { $label }?
designs-question-word = Hilft ein anderes Wort: „{ $label }“?
designs-with = { $question ->
    [quieter_button] mit dem leiseren Knopf
    [new_place] am neuen Platz
    [faster_delivery] bei schnellerem Geben
    [another_word] mit dem anderen Wort
   *[other] mit der Änderung
}
designs-with-own = hiermit: { $label }
designs-as-usual = wie immer
designs-measure = { $measure ->
    [own_presses] Eigenes Drücken
    [joined_share] Anteil der Sitzungen mitgemacht
    [time_to_press] Sekunden bis zum Drücken, wenn eingeladen und gewollt
    [pressed_share] Anteil gedrückt, wenn eingeladen und gewollt
    [stress_signs] Stresszeichen
   *[delivery_delay] Sekunden vom Drücken bis zum Geben
}
designs-unit = { $unit ->
    [session] Sitzung
   *[day] Tag
}
designs-meets = erfüllt die Standards
designs-meets-with-reservations = erfüllt die Standards mit Vorbehalt
designs-does-not-meet = erfüllt die Standards nicht
designs-phase-usual = wie immer
designs-phase-usual-turn = wie immer { $turn }
designs-phase-changed = geändert
designs-phase-changed-turn = geändert { $turn }
designs-phase-goal = Ziel { $seconds } s
designs-changed-against-usual = geändert gegen wie immer
designs-one-after-other = { $after } nach { $before }
designs-not-drawn-before = die Reihenfolge wurde nicht vor dem ersten Punkt ausgelost, oder der Plan wurde später geändert
designs-was-stopped = der Versuch wurde vor seinem Ende abgebrochen
designs-not-finished = der Versuch ist nicht beendet
designs-too-short = { $points ->
    [one] ein Punkt reicht für diesen Plan nicht; er braucht mindestens { $needed }
   *[other] { $points } Punkte reichen für diesen Plan nicht; er braucht mindestens { $needed }
}
designs-empty-condition = eine Bedingung hat noch keine Beobachtung, also gibt es nichts zu vergleichen
designs-no-figure = keine Zahl für diese Phase: zu wenige Punkte, oder alle zur selben Zeit
designs-other-condition = { $points ->
    [one] 1 Punkt mit einer anderen Bedingung als der ausgelosten; der Test geht nach der Auslosung.
   *[other] { $points } Punkte mit einer anderen Bedingung als der ausgelosten; der Test geht nach der Auslosung.
}
designs-drawn-late = Die Reihenfolge wurde nicht vor dem ersten Punkt ausgelost, oder der Plan wurde später geändert.
designs-more-than = mehr als { $number }
designs-percentage-points = { $value } Prozentpunkte
designs-a-session = { $value } je Sitzung
designs-not-yet = Er beginnt am { $day }; bis dahin ist alles wie immer.
designs-running = Vergangene Punkte: { $done } von { $points }. Vor dem Ende wird nichts behauptet.
designs-strong-sign = Abgebrochen: Am { $day } wurde ein starkes Stresszeichen gesehen, während die Änderung galt. Alles wird wieder wie immer; für die Änderung wird nichts behauptet.
designs-stopped = { $reason ->
    [strong_sign] Abgebrochen am { $day }: ein starkes Stresszeichen. Nichts wird getestet, denn ein Versuch, der jederzeit enden darf, kann enden, während er vorn liegt.
    [not_good] Abgebrochen am { $day }: Die Änderung tat nicht gut. Nichts wird getestet, denn ein Versuch, der jederzeit enden darf, kann enden, während er vorn liegt.
    [not_kept] Abgebrochen am { $day }: Er ließ sich nicht durchhalten. Nichts wird getestet, denn ein Versuch, der jederzeit enden darf, kann enden, während er vorn liegt.
   *[other] Abgebrochen am { $day }: ein anderer Grund. Nichts wird getestet, denn ein Versuch, der jederzeit enden darf, kann enden, während er vorn liegt.
}
designs-untested = Beendet, aber nichts lässt sich testen: { $why }. Die Zahlen beschreiben nur diese Punkte.
designs-seen = { $measure }: { $with } um { $amount } { $way ->
    [higher] höher
   *[lower] niedriger
    } ({ $usual } Punkte wie immer und { $changed } geänderte). Wird die Reihenfolge zufällig ausgelost, kommt ein so großer Unterschied in { $exact ->
    [yes] { $extreme } von { $orders } möglichen Reihenfolgen vor ({ $p }).
   *[no] { $extreme } von { $orders } neu ausgelosten Reihenfolgen vor ({ $p }).
}
designs-seen-goal = { $points ->
    [one] Die Menschen kamen auf { $seconds } s an das Ziel heran (ein Punkt).
   *[other] Die Menschen kamen im Mittel auf { $seconds } s an das Ziel heran ({ $points } Punkte).
    } Werden die Schritte zufällig ausgelost, kommt eine so gute Übereinstimmung in { $exact ->
    [yes] { $extreme } von { $orders } möglichen Reihenfolgen vor ({ $p }).
   *[no] { $extreme } von { $orders } neu ausgelosten Reihenfolgen vor ({ $p }).
}
designs-too-few-orders = { $orders ->
    [one] Mit nur einer möglichen Reihenfolge könnte dieser Versuch keine Wirkung vom Zufall unterscheiden.
   *[other] Mit nur { $orders } möglichen Reihenfolgen könnte dieser Versuch keine Wirkung vom Zufall unterscheiden.
}
designs-rare = Das wäre selten, wenn die Änderung nichts bewirkte: Es spricht für eine Wirkung, bei { $name }, in diesen Wochen.
designs-rare-goals = Das wäre selten, wenn die Ziele nichts bewirkten: Es spricht für eine Wirkung, bei { $name }, in diesen Wochen.
designs-may-be-chance = Es kann also gut Zufall sein. Das zeigt nicht, dass die Änderung nichts bewirkt.
designs-weak = Der Plan selbst ist nach den Standards des Fachs zu klein; nimm es als Hinweis.
designs-change-again = Derselbe Versuch noch einmal, neu geplant, mit anderen Menschen oder in anderen Wochen.
designs-change-gentler = Nichts aus diesem Versuch; eine sanftere Änderung, neu geplant.
designs-change-points = Die Punkte, die noch kommen.
designs-change-by-hand = Drücken, das ein Mikrofon hört, ist bei einem leiseren Knopf schwerer zu hören: Notiere es in diesem Versuch von Hand.
designs-intro = Ein leiserer Knopf, ein neuer Platz, schnelleres Geben: Hilft es { $name }? Ein Versuch (in der Fachsprache: Einzelfallplan) lässt den Zufall entscheiden, wann die Änderung gilt, und vergleicht.
designs-none-today = Heute kein neuer Versuch: Es wurden starke Stresszeichen notiert. Gib Raum; alles wie immer.
designs-plan = Einen Versuch planen
designs-so-far = Bisherige Versuche
designs-none = Noch keine.
designs-open = Öffnen
designs-undrawable = lässt sich nicht auslosen
designs-begins = beginnt am { $day }
designs-going-on = läuft
designs-finished = beendet
designs-stopped-on = abgebrochen am { $day }
designs-ended-by-sign = durch ein starkes Stresszeichen am { $day } beendet
designs-checks = Geplante Prüfungen des Verstehens stellen eine andere Frage: { $link }.
designs-checks-link = Prüfungen
designs-how = Wie Versuche ausgelost und getestet werden
designs-kindly = { $lead } Geändert werden nur die Umgebung und was Menschen tun: { $name } darf jederzeit gehen, nichts wird vorenthalten, worum { $name } bittet, und kein Tag braucht ein Drücken. Ein starkes Stresszeichen unter der Änderung beendet den Versuch. Versuche nichts, was wehtut, erschreckt oder vorenthält; frage eine Tierärztin oder einen Tierarzt oder eine qualifizierte Fachperson für Tierverhalten, wo du unsicher bist.
designs-kindly-lead = Ein Versuch ist für { $name } da, nicht umgekehrt.
designs-not-as-planned = Nicht wie geplant:
designs-the-plan = Der Plan
designs-all = Alle Versuche
designs-today = Heute
designs-of-lane = { $lane }:
designs-rest = Heute Ruhe, alles wie immer: Es wurden starke Stresszeichen notiert. Gib Raum und locke nicht zurück.
designs-everything-usual = Alles wie immer.
designs-now = { $unit ->
    [session] Diese oder die nächste Sitzung (Punkt { $point } von { $points }): { $what }
   *[day] Heute (Punkt { $point } von { $points }): { $what }
}
designs-deliver-within = innerhalb von { $seconds } s geben
designs-later-hidden = Spätere Tage werden absichtlich nicht gezeigt: Sie zu kennen ändert, was Menschen tun. Beantworte jeden Druck wie immer.
designs-fact-design = Plan
designs-fact-measured = Gemessen
designs-measured = { $unit ->
    [session] { $measure }, jede Sitzung: { $words }
   *[day] { $measure }, jeden Tag: { $words }
}
designs-all-words = alle Wörter
designs-fact-expected = Erwartet
designs-expected = { $expected ->
    [more] mehr
    [less] weniger
   *[either] in beide Richtungen
}
designs-fact-first = Erster Tag, Punkte
designs-first = { $points ->
    [one] { $day }, ein Punkt
   *[other] { $day }, { $points } Punkte
}
designs-fact-orders = Mögliche Reihenfolgen
designs-planned-on = Geplant am { $day }; die Reihenfolge folgt aus einer damals gezogenen Startzahl.
designs-other-in-force = Galt etwas anderes als ausgelost?
designs-this-trial = dieser Versuch
designs-field-lane = Wo
designs-field-point = Punkt
designs-field-point-hint = von 1 an gezählt
designs-field-in-force = Es galt
designs-with-the-change = mit der Änderung
designs-field-because = Warum
designs-may-be-left-out = darf leer bleiben
designs-note-it = Notieren
designs-honest-note = Der Test geht nach der ausgelosten Reihenfolge, also verdirbt eine ehrliche Notiz ihn nie; die Seite sagt, wie viele Punkte abwichen.
designs-stop = Abbrechen
designs-reason = { $reason ->
    [strong_sign] ein starkes Stresszeichen
    [not_good] die Änderung tut nicht gut
    [not_kept] er lässt sich nicht durchhalten
   *[other] ein anderer Grund
}
designs-field-in-words = In Worten
designs-stop-now = Diesen Versuch jetzt abbrechen
designs-stop-right = Abbrechen ist im Zweifel immer richtig. Stelle alles wieder her, wie es war; was notiert wurde, bleibt.
designs-plan-title = Einen Versuch mit einer Änderung planen
designs-not-today = Heute nicht: Es wurden starke Stresszeichen notiert. Gib { $name } Raum und plane an einem ruhigen Tag.
designs-back = Zurück zu den Versuchen
designs-why = Eine Änderung und eine bessere Woche treffen oft zufällig zusammen. Wenn der Zufall die Tage bestimmt, an denen die Änderung gilt, lässt sich der Unterschied mit allen Reihenfolgen vergleichen, die hätten ausgelost werden können.
designs-change = { $question ->
    [quieter_button] Ein leiserer Knopf
    [new_place] Ein neuer Platz
    [faster_delivery] Schnelleres Geben
    [another_word] Ein anderes Wort
   *[other] Etwas anderes
}
designs-proposed-for = vorgeschlagen: { $design }
designs-the-proposed = der vorgeschlagene
designs-expect = { $expected ->
    [more] mehr davon
    [less] weniger davon
   *[either] in beide Richtungen
}
designs-expect-either-hint = braucht mehr Punkte
designs-point-unit = { $unit ->
    [session] eine Sitzung
   *[day] ein Tag
}
designs-point-session-hint = Zeigen oder Einladen
designs-field-question = Was geändert wird
designs-field-question-hint = nur eines; alles andere bleibt, wie es ist
designs-field-label = Etwas anderes: was
designs-field-label-hint = nur für „etwas anderes“
designs-field-measure = Was gemessen wird
designs-field-measure-hint = wähle, bevor es beginnt; es wird aus dem gelesen, was du ohnehin notierst
designs-field-expected = Was du davon erwartest
designs-field-expected-hint = jetzt gesagt, damit das Ergebnis nicht wählen kann
designs-field-words = Wörter
designs-field-words-hint = keines angekreuzt: alle. Eins nach dem anderen: Jedes angekreuzte Wort ist eine Reihe; 3 erfüllen die Standards
designs-field-unit = Ein Punkt ist
designs-field-first = Erster Tag
designs-field-first-hint = bei Tagen morgen oder später
designs-field-points = Punkte insgesamt
designs-field-points-hint = Tage oder Sitzungen; höchstens 120
designs-numbers = Plan und seine Zahlen
designs-field-design = Plan
designs-field-least = Mindestzahl Punkte je Phase
designs-field-least-hint = 5 erfüllen die Standards, 3 mit Vorbehalt
designs-field-phases = Phasen
designs-field-phases-hint = hin und zurück und Schritt für Schritt: 4 oder mehr
designs-field-apart = Punkte zwischen zwei Änderungen
designs-field-apart-hint = eins nach dem anderen: mindestens so viele
designs-field-animals = Tiere
designs-field-animals-hint = eins nach dem anderen über Tiere statt über Wörter
designs-field-criteria = Ziele für Menschen, in Sekunden
designs-field-criteria-hint = Schritt für Schritt: eines je Phase nach der ersten, etwa 6; 4; 2,5. Für ein Tier werden nie Ziele gesetzt
designs-see = Sehen, was er zeigen kann
designs-proposed = Vorgeschlagen: { $design }
designs-your-choice = Deine Wahl: { $design }
designs-because = { $question ->
    [quieter_button] Denn der Ton lässt sich leiser und wieder lauter stellen, und ein Tier braucht einige Tage, um sich an beides zu gewöhnen.
    [new_place] Denn einen Knopf hin und her zu rücken würde verwirren: Jedes Wort zieht einmal um, eins nach dem anderen.
    [faster_delivery] Denn Menschen können an einem Tag sofort und am nächsten wie immer geben, und die Wirkung kommt und geht schnell.
    [another_word] Denn ein Wort bleibt, wenn es einmal da ist: Nimm zwei Phasen, dann wird nur sein erster Tag ausgelost.
   *[other] Denn das passt, wo sich die Änderung zurücknehmen lässt; wo nicht, nimm „eins nach dem anderen“.
}
designs-usual-here = Üblich für diese Frage: { $design }.
designs-undrawn = Das lässt sich nicht auslosen: { $why }.
designs-orders = { $orders } mögliche Reihenfolgen; eine wird zufällig gezogen, wenn du planst. Du siehst nur die Bedingung des Tages.
designs-smallest-p = Das kleinste p, das er erreichen kann, ist { $p }.
designs-fewer-than-20 = Mit weniger als 20 Reihenfolgen kommt es nie unter { $level }: Nimm mehr Punkte oder weniger in jeder Phase.
designs-verdict-ahead = Ist jeder Punkt da, gilt: Er { $verdict } ({ $chances ->
    [0] keine Gelegenheit
    [one] eine Gelegenheit
   *[other] { $chances } Gelegenheiten
}, eine Wirkung zu zeigen, mindestens { $fewest ->
    [one] ein Punkt
   *[other] { $fewest } Punkte
} je Phase; Kratochwill u. a. 2010).
designs-plan-and-draw = Planen und die Reihenfolge auslosen
designs-figures = Zahlen bisher
designs-not-finished-yet = Nicht beendet: Aus diesen Zahlen wird nichts behauptet, und Hinsehen verleitet zum Aufhören. Getestet wird am Ende.
designs-came-out = Was herauskam
designs-would-change = Was es ändern würde: { $what }
designs-about-one = Das betrifft nur { $name }. Über andere Tiere sagt es nichts.
designs-no-test = Kein Test: { $why }.
designs-difference = Unterschied, geändert minus wie immer
designs-difference-none = { $points ->
    [one] { $value } (kein 95-%-Bereich: zu wenige Reihenfolgen; ein Punkt)
   *[other] { $value } (kein 95-%-Bereich: zu wenige Reihenfolgen; { $points } Punkte)
}
designs-difference-interval = { $points ->
    [one] { $value } (95-%-Bereich { $low } bis { $high }, ein Punkt)
   *[other] { $value } (95-%-Bereich { $low } bis { $high }, { $points } Punkte)
}
designs-open-end = offen
designs-distance = Mittlerer Abstand vom Ziel
designs-extreme = So extreme Reihenfolgen
designs-extreme-of = { $exact ->
    [yes] { $extreme } von { $orders }, alle gezählt
   *[no] { $extreme } von { $orders }, neu ausgelost
}
designs-orders-left-out = Ausgelassene Reihenfolgen
designs-orders-undefined = { $orders } (durch fehlende Punkte wäre eine Bedingung leer geblieben)
designs-verdict = Der Plan { $verdict }: { $chances ->
    [0] keine Gelegenheit
    [one] eine Gelegenheit
   *[other] { $chances } Gelegenheiten
}, eine Wirkung zu zeigen (3 sind gewünscht), mindestens { $fewest ->
    [one] ein beobachteter Punkt
   *[other] { $fewest } beobachtete Punkte
} je Phase (5 sind gewünscht, 3 mit Vorbehalt; Kratochwill u. a. 2010).
designs-missing = { $missing ->
    [one] 1 von { $points } vergangenen Punkten hat keinen Wert: Es wurde nichts notiert, woraus sich dieses Maß lesen ließe. Er wird ausgelassen, nicht als null gezählt.
   *[other] { $missing } von { $points } vergangenen Punkten haben keinen Wert: Es wurde nichts notiert, woraus sich dieses Maß lesen ließe. Sie werden ausgelassen, nicht als null gezählt.
}
designs-no-point = Noch kein Punkt.
designs-chart = { $unit ->
    [session] { $measure }, nach Sitzung
   *[day] { $measure }, nach Tag
}
designs-chart-told = { $question } { $phases }.
designs-chart-read = Hohle Punkte: wie immer (A). Volle Punkte: mit der Änderung (B). Gestrichelte Linien: Die Phase wechselte. Lücken: fehlend.
designs-mean = Mittel: { $mean }
designs-independent = Die Bereiche von Mitteln, NAP, Niveau und Trend nehmen Punkte als unabhängig an, was Tage eines Tiers nicht ganz sind. Der Test oben beruht nicht darauf.
designs-times-a-week = Beschleunigung × { $factor } je Woche
designs-divided-a-week = Beschleunigung ÷ { $factor } je Woche
designs-weekly = { $turn } (90-%-Bereich × { $low } bis × { $high }, n = { $n })
designs-weekly-no-interval = { $turn } (noch kein Bereich, n = { $n })
designs-nap = NAP (Paare, in denen die Änderung besser abschnitt)
designs-nap-value = { $share } (90-%-Bereich { $low } bis { $high }, n = { $usual } und { $changed })
designs-tau = Tau-U (ohne den Trend davor)
designs-tau-value = { $share } ({ $p }, n = { $usual } und { $changed }; ein Bereich ist nicht veröffentlicht)
designs-level = Sprung des Niveaus
designs-trend = Änderung des Trends, am Tag
designs-change-value = { $value } (95-%-Bereich { $low } bis { $high })
designs-change-value-no-interval = { $value } (noch kein Bereich)
designs-small = { $way ->
    [once] Ein Versuch über { $days } Tage: Ausgelost wird der Tag, ab dem es gilt.
    [back] Ein Versuch über { $days } Tage, hin und zurück: Die Tage werden ausgelost.
   *[turn] Ein Versuch über { $days } Tage, Tag für Tag: Ausgelost wird, an welchen.
}
designs-measured-by = { $measure } ({ $words }); erwartet: { $expected ->
    [more] mehr
    [less] weniger
   *[either] mehr oder weniger
}

# Zwei Versuche zugleich.
designs-beside-planned = Ein anderer Versuch misst an denselben Tagen dasselbe ({ $measure }):
designs-beside-going = An den kommenden Tagen misst ein anderer Versuch dies ({ $measure }):
designs-beside-kept = An einigen derselben Tage maß ein anderer Versuch dasselbe ({ $measure }):
designs-beside-plan = An denselben Tagen wie dieser Plan läuft ein Versuch mit einer Änderung:
designs-beside-agreed = Für Tage, an denen das versucht würde, ist ein Plan vereinbart:
designs-beside-agreed-wait = Mit zwei Änderungen zugleich lässt sich keine von der anderen trennen: Ein Unterschied kann von jeder kommen. Beginne nach dem letzten Tag des Plans. Oder nimm das in Kauf.
designs-beside-days = { $question } { $first } bis { $last }
designs-beside-sessions = { $question } Ab { $first }, bis seine Sitzungen vorbei sind
designs-beside-wait = Bei zwei Änderungen zugleich lassen sich beide nicht auseinanderhalten: Ein Unterschied kann von jeder kommen. Warte, bis der andere endet, und beginne am { $day } oder später. Oder nimm das in Kauf.
designs-beside-wait-sessions = Bei zwei Änderungen zugleich lassen sich beide nicht auseinanderhalten: Ein Unterschied kann von jeder kommen. Warte, bis der andere endet. Oder nimm das in Kauf.
designs-beside-read = Beide lassen sich nicht auseinanderhalten: Was hier von der einen Änderung gesagt wird, kann von der anderen kommen. Eine davon noch einmal, allein, könnte mehr sagen.
