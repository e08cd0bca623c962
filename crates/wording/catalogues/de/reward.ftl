reward-poison = { $species ->
    [dog] { $food } kann Hunde vergiften. Nicht hinzugefügt.
    [cat] { $food } kann Katzen vergiften. Nicht hinzugefügt.
    [parrot] { $food } kann Papageien vergiften. Nicht hinzugefügt.
    [rabbit] { $food } kann Kaninchen vergiften. Nicht hinzugefügt.
   *[other] { $food } kann dieses Tier vergiften. Nicht hinzugefügt.
}
reward-says = Was du schon dafür sagst
reward-says-hint = ein kurzes Wort; die Taste kann dasselbe sagen
reward-already-said = wir sagen dieses Wort schon oft am Tag
reward-at-board = Kann man es am Brett geben?
reward-at-board-hint = immer wieder, in Sekunden; Hinausgehen nicht
reward-as-usual = { $at_board ->
    [yes] wie bei dieser Art üblich: ja
   *[no] wie bei dieser Art üblich: nein
}
reward-at-board-yes = ja
reward-at-board-no = nein
reward-seconds = Wie lange das Geben dauert, Sekunden
reward-usual-seconds = vom Druck bis zum Ende; bei dieser Art üblich: etwa { $seconds } (üblich, ohne Quelle)
reward-most = Höchstens am Tag
reward-usual-times = bevor Menschen oder Tier genug haben; bei dieser Art üblich: { $times }
reward-stand-in = Was in einem Vorlieben-Test dafür steht
reward-stand-in-hint = was man hinhalten kann: die Leine oder der Schlüssel fürs Hinausgehen
