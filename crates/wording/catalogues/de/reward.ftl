reward-poison = { $species ->
    [dog] { $food } kann Hunde vergiften. Nicht hinzugefügt.
    [cat] { $food } kann Katzen vergiften. Nicht hinzugefügt.
    [parrot] { $food } kann Papageien vergiften. Nicht hinzugefügt.
    [rabbit] { $food } kann Kaninchen vergiften. Nicht hinzugefügt.
   *[other] { $food } kann dieses Tier vergiften. Nicht hinzugefügt.
}
reward-says = Was du schon dafür sagst
reward-says-hint = ein kurzes Wort; der Knopf kann dasselbe sagen
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
reward-stand-in-hint = was man hinhalten kann: die Leine oder der Schlüssel fürs Hinausgehen, die Bürste fürs Streicheln
reward-keep-another = Speichern und noch etwas hinzufügen
reward-new = Neu: { $kind }
reward-title = Etwas, das sie wollen könnten
reward-which-kind = Welche Art? Eine Mischung ergibt ein besseres Brett als Futter allein.
reward-kind = Art
reward-kind-missing = fehlt; wähle eine
reward-exact = so genau wie möglich, etwa: Huhn, gekocht, ungewürzt
reward-only-food = ist nur für Futter; leer lassen, oder die Art Futter wählen
reward-not-added = nennt ein Lebensmittel, das nicht hinzugefügt wurde; wähle ein anderes
reward-not-added-tick = nennt ein Lebensmittel, das nicht hinzugefügt wurde; wähle ein anderes, oder nur die Tiere, für die es ist
reward-none-means-all = keines angekreuzt heißt alle
reward-still-used = noch in Gebrauch
reward-energy = Energie eines Stücks
reward-kcal = kcal je Stück
reward-kcal-hint = von der Packung, wenn es dort steht
reward-not-known = Nicht bekannt? Leer lassen und das Gewicht eines Stücks angeben, mit der Zahl der Packung oder einem Futter der Tabelle.
reward-grams = Gramm je Stück
reward-grams-hint = wiege zehn und teile durch zehn
reward-per-100 = kcal je 100 g
reward-per-100-hint = von der Packung; das ist die bessere Zahl
reward-table = oder ein reines Futter
reward-table-hint = aus der USDA-Tabelle, ohne Salz, Fett oder Gewürz; übliche Werte: sieh auf die Packung
reward-kept = Gespeichert.
reward-kept-kcal = { $name }: { $kcal } kcal je Stück.
reward-fits = { $name }: höchstens { $pieces } am Tag{ $by ->
    [card] , wie auf der Karte steht.
   *[food] , wenn es sonst nichts gibt: Die Futterbelohnungen eines Tages sind { $budget } kcal.
}
reward-fits-unknown = { $name }: wie viele am Tag, lässt sich nicht sagen. { $why }
reward-no-such = Dieses Notizbuch kennt diese Belohnung nicht.
reward-none-of-these = keines davon
reward-food-line = { $food }: { $kcal } kcal je 100 g
reward-food-name = { $food ->
    [chicken_breast_cooked] Hühnerbrust, gekocht
    [cheddar] Cheddar
    [carrot_raw] Möhre, roh
    [apple_raw] Apfel, roh
    [egg_cooked] Ei, gekocht
    [salmon_farmed_cooked] Zuchtlachs, gekocht
    [banana] Banane
    [green_beans] grüne Bohnen
    [turkey_breast_cooked] Putenbrust, gekocht
    [beef_lean_cooked] Rind, mager, gekocht
   *[other] { $food }
}
reward-kcal-more = muss über 0 liegen, sonst zählt es nicht zum Tag
reward-grams-missing = fehlt; wiege zehn Stücke und teile durch zehn
reward-kcal-missing = fehlt; gib es an, oder die Gramm eines Stücks und die Energie von 100 g
reward-not-in-list = steht nicht in der Liste; wähle daraus, oder gib die Energie selbst an
reward-called-like-food = nennt ein Lebensmittel, das nie gegeben werden darf. Ist es dieses Lebensmittel, gib es nicht. Ist es etwas anderes, nenn es anders
