lacking-few = es braucht mindestens { $needed ->
    [one] einen Wert
   *[other] { $needed } Werte
}; es gibt { $got ->
    [0] keinen
    [one] einen
   *[other] { $got }
}
lacking-nothing = noch nichts wurde beobachtet
lacking-no-variation = alle Werte sind gleich
lacking-one-category = alle { $n } Wertungen sind gleich; Übereinstimmung über den Zufall hinaus lässt sich nicht beurteilen
lacking-nothing-shared = nichts wurde von mindestens zwei Menschen gewertet
lacking-disconnected = { $groups } Gruppen von Sachen wurden nie miteinander verglichen
lacking-separated = manche Sachen verloren nie gegen die anderen
lacking-unsettled = die Schätzung kam nicht zur Ruhe
lacking-no-span = alle { $n } Beobachtungen fallen auf eine Zeit; keine Änderung ist messbar
lacking-time-goes-back = die Aufzeichnungen stehen nicht in der Reihenfolge der Zeit
lacking-not-fit = die Aufzeichnungen passen nicht zu diesem Verfahren ({ $why })
lacking-choices = { $choices } zur Auswahl je Durchgang aus { $words } Wörtern; möglich sind 2 bis zur Zahl der Wörter
lacking-no-trials = eine Prüfung hat mindestens einen Durchgang
lacking-word-twice = ein Wort steht zweimal da
lacking-long-runs = keine Reihenfolge wurde gefunden, in der kein Wort zu oft hintereinander kommt
lacking-no-card = das Wort hat keine Karte
