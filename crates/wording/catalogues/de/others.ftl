others-title = Andere
others-lead = Wie es in anderen Haushalten ging, neben dem, was von { $name } notiert ist. Üblich heißt nicht besser, und nichts hier ist ein Ziel.
others-press = Ein Druck sagt, dass ein Knopf gedrückt wurde, nicht warum. Langes Warten sagt nichts über { $name }.
others-late = Länger zu warten als üblich ist keine Krankheit und kein Versagen und sagt nichts darüber, was { $name } lernen kann. Kommen andere Anzeichen dazu, frag eine Tierarztpraxis oder eine qualifizierte Fachperson für Tierverhalten.
others-who = { $species ->
    [dog] Hunden
    [cat] Katzen
    [parrot] Papageien
    [rabbit] Kaninchen
   *[other] Tieren anderer Arten
}{ $age ->
    [under-two] { " " }unter zwei Jahren
    [two-to-seven] { " " }von zwei bis sieben Jahren
    [eight-or-more] { " " }von acht Jahren oder mehr
   *[every] { "" }
}
others-kind = { $kind ->
    [food] Wörtern für Futter
    [play] Wörtern für Spiel
    [touch] Wörtern für Berührung
    [training] Wörtern für Übungen
    [exploring] Wörtern fürs Erkunden
    [rest] Wörtern für Ruhe
    [closing] Wörtern, die eine Sitzung beenden,
    [other] Wörtern, von denen niemand sagte, was sie bringen,
   *[every] Wörtern
}
others-half = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who } wurde von allen { $kind } die Hälfte { $value ->
    [0] schon vor dem ersten Zeigen
   *[other] nach höchstens { $value } Zeigen
} zum ersten Mal vom Tier selbst gedrückt ({ $level }-Intervall: { $low } bis { $high }).
others-half-days = Nach Tagen: die Hälfte nach höchstens { $value ->
    [0] einem Tag
    [one] { $value } Tag
   *[other] { $value } Tagen
} ({ $level }-Intervall: { $low } bis { $high }).
others-half-open = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who } wurde von allen { $kind } in der notierten Zeit weniger als die Hälfte vom Tier selbst gedrückt.
others-half-open-days = Nach Tagen: weniger als die Hälfte in der notierten Zeit.
others-middle = Die mittlere Hälfte: { $low } bis { $high }.
others-middle-open = Ein Viertel: nach höchstens { $low }. Drei Viertel: nicht in der notierten Zeit.
others-beyond = nicht in der notierten Zeit
others-own-before = { $name } hat „{ $word }“ schon vor dem ersten Zeigen gedrückt.
others-own-pressed = { $name } hat „{ $word }“ zum ersten Mal nach { $shown } Zeigen gedrückt, in { $days ->
    [0] weniger als einem Tag
    [one] { $days } Tag
   *[other] { $days } Tagen
}.
others-own-open = Noch kein Druck von „{ $word }“ durch { $name }: bisher { $shown } Zeigen in { $days ->
    [0] weniger als einem Tag
    [one] { $days } Tag
   *[other] { $days } Tagen
}. Noch nicht heißt nicht nie.
others-any-age = Zu wenige Haushalte hatten Tiere dieses Alters: Jedes Alter ist dabei.
others-any-kind = Zu wenige Haushalte hatten solche Wörter: Wörter für alles sind dabei.
others-not-enough = Nicht genug wie bei euch: zu wenige Haushalte für eine Zahl, in der niemand zu erkennen ist.
others-closing-title = Wörter, die eine Sitzung beenden
others-closing = Ein Wort, das eine Sitzung beendet, wird gezeigt, wenn etwas aufhört. Es wird anders gelernt als ein Wort, das etwas bringt, und liegt darum nur neben seinesgleichen.
others-nothing-shown = Noch nichts, was sich neben andere legen lässt: Es beginnt mit dem ersten Zeigen.
others-chart-title = „{ $word }“: erste Drücke nach Zeigen
others-chart-share = Anteil gedrückt
others-chart-showings = Zeigen
others-chart-mark = { $name }: { $shown }
others-chart-mark-open = { $name }: { $shown }, noch nicht
others-band = { $level }-Intervall
others-joined-title = Mitmachen
others-joined = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who } machte das Tier im mittleren Haushalt bei { $value } der Einladungen mit ({ $level }-Intervall: { $low } bis { $high }). Die mittlere Hälfte der Haushalte: { $from } bis { $to }.
others-own-joined = { $name }: { $joined } von { $invited ->
    [one] { $invited } Einladung
   *[other] { $invited } Einladungen
}. Nicht mitmachen ist eine Antwort.
others-words-title = Was die ersten Wörter brachten
others-words = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who }.
others-nth = Wort
others-brings = Bringt
others-share = Anteil der Tiere
others-kind-name = { $kind ->
    [food] Futter
    [play] Spiel
    [touch] Berührung
    [training] Übung
    [exploring] Erkunden
    [rest] Ruhe
    [closing] Ende einer Sitzung
   *[other] nicht gesagt
}
others-hours-title = Stunden des Tages
others-hours = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who }, wo das Tier von selbst drückte: in welchen Stunden ein Drücken lag, je Haushalt eines gelost.
others-hours-most = Von { $from } bis { $to } lagen { $value } ({ $level }-Intervall: { $low } bis { $high }), der größte Anteil.
others-hours-caution = Tiere drücken, wenn Menschen zu Hause und die Knöpfe erreichbar sind. Das ist kein Zeitplan für { $name }.
others-hours-axis = Stunde des Tages
others-hours-share = % der Haushalte
others-hours-span = { $from } bis { $to }
others-stages-title = Zeit in jeder Stufe
others-stages = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who } kam die Hälfte der Wörter nach höchstens { $value ->
    [0] einem Tag
    [one] { $value } Tag
   *[other] { $value } Tagen
} über „{ $stage }“ hinaus ({ $level }-Intervall: { $low } bis { $high }).
others-stages-open = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who } kam in der notierten Zeit weniger als die Hälfte der Wörter über „{ $stage }“ hinaus.
others-stages-not-enough = „{ $stage }“: nicht genug wie bei euch.
others-stages-caution = Weiterzugehen ist die Wahl der Menschen, und ein Wort, für das niemand eine Stufe gewählt hat, zählt als gezeigt. Kein Tier muss an einem bestimmten Tag irgendwo sein: was { $name } tut, entscheidet.
others-stages-axis = Tage in der Stufe
others-stages-share = Anteil, der weiter ist
others-weeks-title = Drücken in einer Woche
others-weeks = In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who }: wie oft das Tier ein Wort in einer Woche seit dem ersten Zeigen von selbst drückte, aus jedem Haushalt ein Wort und eine Woche gelost.
others-weeks-line = { $span }: { $some } der Wörter überhaupt gedrückt ({ $level }-Intervall: { $somelow } bis { $somehigh }), { $daily } siebenmal oder öfter ({ $dailylow } bis { $dailyhigh }), aus { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
}.
others-weeks-span = { $to ->
    [1] Woche { $from }
   *[other] Wochen { $from } bis { $to }
}
others-weeks-caution = Gezählt ist, was notiert wurde: Wo mehr hingehört wird, ist es mehr. Öfter drücken heißt nicht mehr meinen, und kein Tier muss in einer bestimmten Woche so oft drücken: was { $name } tut, entscheidet.
others-weeks-axis = Wochen seit dem ersten Zeigen
others-weeks-share = Anteil der Wörter
others-weeks-some = überhaupt gedrückt
others-weeks-daily = siebenmal oder öfter
others-source-title = Woher das kommt
others-source = Aus der Ausgabe „{ $release }“ vom { $date }.
others-self-chosen = Diese Haushalte wollten Notizen führen und weitergeben. Das sind nicht alle Tiere und keine Stichprobe, die für alle stünde.
others-invented = Erfundene Haushalte aus einer Simulation: zum Ausprobieren dieser Seite, kein Beleg über Tiere.
others-noise = Zu jeder Zählung kam Rauschen, damit kein Haushalt zu erkennen ist. Die Intervalle rechnen damit.
others-club = Nur Haushalte von { $club }. Ohne Rauschen.
others-none = Hier sind noch keine Zahlen anderer Haushalte.
others-none-home = Wer dieses Notizbuch führt, kann Vergleichswerte hereinholen, auch ohne Netz. Im Terminal: sayso norms import FILE --data { $dir }
others-none-server = Wer diesen Server betreibt, kann ihm Vergleichswerte geben.
others-damaged = Die Vergleichswerte, die hier liegen, sind nicht zu lesen: { $why }. Hole sie noch einmal herein.
others-link = Wie es in anderen Haushalten ging
others-usual = Noch kein Druck von „{ $word }“ nach { $shown } Zeigen. In { $homes ->
    [one] { $homes } Haushalt
   *[other] { $homes } Haushalten
} mit { $who } brauchte von allen { $kind } { $part ->
    [quarter] ein Viertel
   *[half] die Hälfte
} mehr als { $more } ({ $level }-Intervall: { $low } bis { $high }).
