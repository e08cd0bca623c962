# One page before a meeting with a coach. Figures come written with their interval and count.
meeting-title = Vor einem Treffen: { $name }
meeting-link = Vor einem Treffen
meeting-told-since = Erzählt seit
meeting-show = Zeigen
meeting-write-plan = Den nächsten Plan schreiben
meeting-own-plan = Daraus einen eigenen Plan machen
meeting-safety = Sicherheit zuerst
meeting-new = Neu seit { $day }
meeting-counts = Sitzungen: { $sessions }. Gezeigt von Menschen: { $showings }. Eigene Drücke von { $name }: { $presses }.
meeting-new-word = Ein neues Wort: „{ $word }“.
meeting-new-stage = „{ $word }“ ist jetzt auf der Stufe { $stage }.
meeting-first-press = Zum ersten Mal von selbst „{ $word }“ gedrückt: { $day }.
meeting-likes-test = Ein Vorlieben-Test: { $day }.
meeting-check = Eine Prüfung des Verstehens von { $words }, geplant am { $day }.
meeting-nothing-new = Kein neues Wort, keine neue Stufe, kein erstes Drücken, kein Test, keine Prüfung.
meeting-more = { $count } weitere, nicht auf diesem Blatt.
meeting-agreed = Was abgemacht war
meeting-from = Von { $name }, abgemacht am { $day }: { $what }
meeting-own = Eigener Plan des Zuhauses vom { $day }, bis { $last }
meeting-nothing-agreed = Für diese Zeit war nichts abgemacht.
meeting-figures = Drei Zahlen
meeting-figure = Zahl
meeting-since = Seit { $day }
meeting-before = { $days ->
    [one] Der Tag davor
   *[other] Die { $days } Tage davor
}
meeting-measure = { $measure ->
    [pressed] Gedrückt, unter gewollten Einladungen
    [right] Richtig, unter allem Gedrückten bei Einladungen
    [presses] Eigene Drücke am Tag
    [joining] Sitzungen mitgemacht
   *[delay] Vom Drücken eines Menschen bis zum Geben
}
meeting-open = Offene Fragen
meeting-said = { $reply ->
    [accepted] Das Zuhause hat am { $day } angenommen: { $what }
    [declined] Das Zuhause hat am { $day } abgelehnt: { $what }
   *[said] Das Zuhause hat am { $day } geantwortet: { $what }
}
meeting-next = Beim Treffen abgemacht
meeting-line = Zeile
meeting-to-write = von Hand auszufüllen
