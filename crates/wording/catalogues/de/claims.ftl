claims-asking = um die Sache bitten
claims-hearing = das gesprochene Wort kennen
claims-nothing-asking = noch lässt sich nichts sagen: nichts wurde gelost; eine Runde vom Notizbuch geloster Einladungen könnte es zeigen
claims-nothing-hearing = noch lässt sich nichts sagen: keine Prüfung wurde begonnen; eine Prüfung mit Wählen von Sachen könnte es zeigen
claims-chance = was bisher gelost wurde, käme auch durch Zufall ({ $n ->
    [one] { $n } geloster Durchgang
   *[other] { $n } geloste Durchgänge
}); das spricht weder dafür noch dagegen
claims-differs = das Drücken folgt dem, wozu gerufen wurde, mehr als der Zufall erlaubt ({ $n } Drücke in gelosten Runden{ $since ->
    [none] { "" }
   *[other] , seit { $since }
}); Gewohnheit, Vorliebe oder Hinweise können es noch erklären
claims-open-asking = mit unter Hauben vertauschten Knöpfen bittet es öfter um die Sache, als der Zufall erlaubt ({ $n ->
    [one] { $n } geloster Durchgang
   *[other] { $n } geloste Durchgänge
}{ $since ->
    [none] { "" }
   *[other] , seit { $since }
}); jemand kannte die Antwort, Hinweise können es also noch erklären
claims-open-hearing = es wählt die Sache zum Wort öfter, als der Zufall erlaubt ({ $n ->
    [one] { $n } geloster Durchgang
   *[other] { $n } geloste Durchgänge
}{ $since ->
    [none] { "" }
   *[other] , seit { $since }
}); jemand kannte die Antwort, Hinweise können es also noch erklären
claims-blind-asking = das Bitten hält einer blinden Prüfung stand: der richtige Knopf, die Knöpfe unter Hauben vertauscht und niemand in der Nähe, der es wusste ({ $n ->
    [one] { $n } geloster Durchgang
   *[other] { $n } geloste Durchgänge
}{ $since ->
    [none] { "" }
   *[other] , seit { $since }
})
claims-blind-hearing = das Kennen des Wortes hält einer blinden Prüfung stand: es wählt die Sache, ohne dass jemand in der Nähe es wusste ({ $n ->
    [one] { $n } geloster Durchgang
   *[other] { $n } geloste Durchgänge
}{ $since ->
    [none] { "" }
   *[other] , seit { $since }
})
claims-lapsed = { $said }. Bis { $until } wurde mehr behauptet; dann kamen Wörter oder Prüfungen dazu: Alle werden zusammen beurteilt, und seither wird von jeder mehr verlangt
claims-animal-nothing = über alle Wörter zusammen lässt sich noch nichts sagen; eine Zeit verabredeter Tausche könnte es zeigen
claims-animal-chance = über alle Wörter käme, was auf Tausche folgte, auch durch Zufall oder Gewohnheit ({ $n } geloste Antworten); das spricht weder dafür noch dagegen
claims-animal-holds = über alle Wörter zusammen drückt es noch einmal, wo etwas anderes kam als erbeten; durch Vorliebe, Häufigkeit, Platzgewohnheit und Uhrzeit allein wäre das unwahrscheinlich ({ $n } geloste Antworten{ $since ->
    [none] { "" }
   *[other] , seit { $since }
}); Hinweise könnten es noch erklären
claims-test = { $what }: Beleg jetzt { $now }, höchstens { $most }; gesagt ab { $bar } (n = { $n })
claims-test-rounds = geloste Runden von Einladungen
claims-test-open = { $side ->
    [asking] Drücken unter Hauben
   *[other] Wählen von Sachen
}, offene Prüfungen zusammen
claims-test-blind = { $side ->
    [asking] Drücken unter Hauben
   *[other] Wählen von Sachen
}, blinde Prüfungen zusammen
claims-times = { $times } zu 1
claims-times-most = mehr als { $times } zu 1
claims-times-none = keiner
claims-rival = { $rival ->
    [cueing] Hinweise: Ein Mensch, der die Antwort kennt, verrät sie
    [place] Platzgewohnheit: Es geht an einen Platz, nicht zu einem Wort
    [frequency] Häufigkeit: Manche Wörter werden einfach öfter gedrückt
    [liking] Vorliebe: Manche Sachen sind einfach beliebter
    [clock] Uhrzeit und Schübe: Was Menschen anbieten und geben, folgt der Stunde, und ebenso, was gedrückt wird
   *[other] Wunschdenken: Menschen sehen, was sie hoffen
}
claims-nothing-to-explain = Nichts wird behauptet, also ist nichts zu erklären.
claims-ruled-out = { $why ->
    [blind] unwahrscheinlich: In blinden Prüfungen kannte niemand in der Nähe die Antwort; es bleibt ein Hinweis, an den niemand dachte
    [places] unwahrscheinlich: Die Plätze waren gelost; es bleibt Glück, so klein, wie die Zahlen sagen
    [frequencies] unwahrscheinlich: Der Vergleich erhält, wie oft jedes Wort gedrückt wird; es bleibt Glück, so klein, wie die Zahlen sagen
    [thing] unwahrscheinlich: Wort und Sache wurden über Kreuz verglichen, die Sache war gelost; es bleibt ein Hinweis
    [drawn] unwahrscheinlich: Das Notizbuch loste, kein Mensch wählte; es bleibt ein Moment, der verschoben oder ausgelassen wurde
    [next] unwahrscheinlich: Es zählte der nächste Druck, den niemand bewertet; es bleibt ein Druck, der übersehen wurde
    [two] unwahrscheinlich: Zwei Menschen bewerteten getrennt und stimmen überein; es bleibt, was beide hofften
   *[other] unwahrscheinlich: Wer bewertete, konnte es nicht wissen; es bleibt ein Zeichen davon auf der Aufnahme
}
claims-still-open = offen; mehr sagen würde { $remedy ->
    [blind] eine Prüfung, bei der der Mensch beim Tier die Antwort nicht kennt
    [places] eine Prüfung mit gelosten Plätzen
    [thing] eine Zeit verabredeter Tausche oder eine Prüfung
   *[other] ein zweiter Mensch, der dieselben Aufzeichnungen getrennt bewertet
}
