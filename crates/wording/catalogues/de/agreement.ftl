agreement-title = Sehen wir dasselbe?
agreement-intro = Was zwei Menschen, jeder für sich, notieren, sagt, ob die Zahlen dieses Notizbuchs gleich herauskämen, wer auch tippt.
agreement-records = Aus dem Protokoll: was zwei Menschen beide notiert haben
agreement-no-records = Noch haben keine zwei Menschen dieselbe Sitzung oder Prüfung notiert. Lass zwei Menschen, jeder mit eigenem Gerät, eine Sitzung notieren, ohne beim anderen zu schauen; dann stehen sie hier.
agreement-pair = { $first } und { $second }, { $animal }: { $kind ->
    [presses] { $n ->
        [one] { $n } Druck
       *[other] { $n } Drücke
    }
   *[other] { $n ->
        [one] { $n } Prüfdurchgang
       *[other] { $n } Prüfdurchgänge
    }
}
agreement-which = Was vergleichen
agreement-group = { $kind ->
    [presses] Sitzung
   *[other] Prüfung
} vom { $when }: { $n }
agreement-compare = Vergleichen
agreement-compare-these = Nur diese vergleichen
agreement-paired = { $kind ->
    [presses] Drücke einer Sitzung gelten als derselbe, wenn beide binnen { $seconds } einen notierten; was nur einer notierte, ist „{ $none }“ beim anderen.
   *[other] Durchgänge einer Prüfung werden nach ihrer Nummer verglichen.
}
agreement-not-noted = nicht notiert
agreement-paste = Aus einem Film: Bewertungen eintippen oder einfügen
agreement-paste-intro = Zwei Menschen sehen denselben Film, jeder für sich, und schreiben auf, was sie sehen.
agreement-scores = Bewertungen
agreement-scores-hint = Eine Zeile für jede bewertete Sache, eine Spalte für jeden Menschen, durch Kommas getrennt: press,brush. Lass eine Spalte leer, wo jemand nichts bewertete.
agreement-scores-wrong = Bewertungen: { $what }.
agreement-scale = Was die Bewertungen sind
agreement-scale-names = Namen, wie Drücken und Streifen
agreement-scale-steps = Zahlen, bei denen nur die Ordnung zählt, wie 1 ruhig bis 3 angespannt
agreement-scale-numbers = Zahlen, deren Abstände zählen, wie Sekunden
agreement-headed = Die erste Zeile enthält die Namen
agreement-not-stored = Nichts hier Eingetipptes wird gespeichert. { $link }.
agreement-how-computed = Wie es berechnet wird
agreement-what-scores-say = Was die Bewertungen sagen
agreement-sentence = { $alike ->
    [none] { "" }
   *[other] Gleich bewertet: { $alike }.{ " " }
}{ $beyond ->
    [well] Über den Zufall hinaus stimmen sie gut überein.
    [little] Über den Zufall hinaus ist das zu wenig, um darauf zu bauen: Klärt zuerst, was als was zählt.
    [some] Sie stimmen über den Zufall hinaus überein; wie gut, ist noch nicht genau genug bekannt.
    [chance] Das könnte Zufall allein sein.
   *[other] Wie weit das über den Zufall hinausgeht, lässt sich noch nicht beurteilen.
}
agreement-sentence-nothing = Nichts wurde von zwei Menschen bewertet, über Übereinstimmung lässt sich also nichts sagen.
agreement-scored-alike = Gleich bewertet
agreement-kappa = Cohens Kappa
agreement-alpha = Krippendorffs Alpha
agreement-shared = Von mindestens zwei von { $people } Menschen bewertet
agreement-differing = Am häufigsten verschieden gesehen:
agreement-differs = { $one } „{ $first }“, { $two } „{ $second }“: { $n ->
    [one] einmal
   *[other] { $n }-mal
}
agreement-would-change = Was es ändern würde: mehr von beiden Bewertetes, ohne die Bewertung des anderen zu kennen; und klarere Worte, was als was zählt, an neuem Film erprobt.
agreement-no-interval = { $value } (kein Intervall, n = { $n })
agreement-none = keines (n = { $n })
agreement-lacking = { $figure }; { $why }
agreement-few = unter { $least } Bewertungen ist das Intervall zu kurz
agreement-wrong-empty = keine Bewertungen: Schreib eine Zeile je Sache, mit einer Spalte je Mensch, wie „press,brush“
agreement-wrong-ragged = Zeile { $line } hat { $got ->
    [one] { $got } Spalte
   *[other] { $got } Spalten
}, Zeile { $first } aber { $wanted }; lass eine Spalte leer, wo jemand nichts bewertete
agreement-wrong-people = { $n ->
    [one] { $n } Spalte
   *[other] { $n } Spalten
}; zwei bis zwanzig Menschen werden verglichen, je eine Spalte, getrennt durch Kommas, Semikolons oder Tabulatoren
agreement-wrong-long = zu viele Zeilen
agreement-wrong-number = Zeile { $line }, { $person }: „{ $got }“ ist keine Zahl; Zahlen sind nötig, wenn die Bewertungen keine Namen sind
agreement-wrong-names = zu viele verschiedene Namen; sind das Zahlen?
agreement-person = Mensch { $number }
