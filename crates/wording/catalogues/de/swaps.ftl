swaps-title = Vereinbarte Tausche
swaps-earlier = Frühere Zeiten
swaps-choice = { $lead } Absichtlich etwas anderes zu geben kann enttäuschen. Lass es bei einem Tier, das neu, krank oder ängstlich ist oder Sachen bewacht. Hör bei Stresszeichen auf ({ $signs }); ein starkes Zeichen beendet es sofort.
swaps-choice-lead = Deine Entscheidung, { $name } zuliebe.
swaps-thing-food = { $thing } – Futter
swaps-why = Drückt { $name } für genau diese Sache, oder ist jede gute Sache recht? Nur ein Weg zeigt es: Ab und zu kommt zufällig etwas anderes, und wir sehen, ob { $name } weiterdrückt.
swaps-how = Du antwortest wie immer: Wenn du etwas geben willst, sagt das Brett, was. Eines von acht Malen ist es die Sache eines anderen Worts. Was { $name } danach tut, zählt, nicht was du davon hältst.
swaps-not-now = Jetzt nicht: Es wurden starke Stresszeichen notiert. Gib { $name } Raum; vereinbart es an einem ruhigen Tag.
swaps-too-few-words = { $words ->
    [0] Tausche brauchen mindestens zwei Wörter, jedes mit einer eigenen Sache; { $name } hat keines.
   *[other] Tausche brauchen mindestens zwei Wörter, jedes mit einer eigenen Sache; { $name } hat { $words }.
}
swaps-to-words = Zu den Wörtern
swaps-field-words = Wörter, die mitmachen
swaps-field-words-hint = Futter ist nicht angekreuzt: nie bei Futter, auf das { $name } mit Stresszeichen wartet. Wörter, die eine Sitzung beenden, machen nicht mit.
swaps-field-days = Tage
swaps-field-days-hint = 28 sind üblich; du kannst jederzeit aufhören
swaps-field-one-in = Eine Antwort von so vielen
swaps-field-one-in-hint = 8 ist üblich, 4 das Häufigste
swaps-agreed = Vereinbart
swaps-agreed-wrong = Alle müssen einverstanden sein: Wer antwortet, gibt, was ausgelost ist, oder beendet die Tausche.
swaps-agreed-everyone = Alle, die { $name } antworten, sind einverstanden
swaps-begin = Mit den Tauschen beginnen
swaps-running = { $lead }: { $words }.
swaps-running-lead = Tausche laufen
swaps-drawn = Ausgeloste Antworten
swaps-swapped = Davon eine andere Sache
swaps-as-drawn = Wie ausgelost gegeben
swaps-of = { $some } von { $all }
swaps-against = Ein Abschnitt von vier Tagen mit einer Antwort, die nicht wie ausgelost gegeben wurde, kann dagegen zählen, nie dafür.
swaps-rate = Eine Antwort von { $number }, seit { $day }. Tage noch: { $days }.
swaps-stop-signs = Beenden: Stresszeichen
swaps-stop-home = Beenden: Wir wollen es nicht mehr
swaps-answer-how = Antworte auf dem Brett unter „Antworten“. Nichts zu geben ist immer in Ordnung und lost nichts aus. Beenden ist auch in Ordnung; was ausgelost wurde, bleibt.
swaps-to-board = Zum Brett
swaps-dates = { $from } bis { $to }
swaps-past = { $drawn ->
    [one] { $dates }: { $words }. Eine Antwort ausgelost, eine andere Sache { $swapped }, wie ausgelost gegeben { $given }.
   *[other] { $dates }: { $words }. { $drawn } Antworten ausgelost, eine andere Sache { $swapped }, wie ausgelost gegeben { $given }.
}
swaps-stopped = Beendet.
swaps-stopped-signs = Wegen Stresszeichen beendet.
