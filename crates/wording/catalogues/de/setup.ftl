setup-what = { $step ->
    [food] Wie viel Futter darf { $name } haben?
    [wants] Was könnte { $name } mögen? Füge vier Sachen hinzu.
    [likes] Teste, was { $name } mag
    [words] Wähle die ersten Wörter für { $name }
    [record] Nimm die Wörter für { $name } auf, mit deiner Stimme
    [places] Zeige, wo die Knöpfe liegen
   *[people] Füge alle hinzu, die { $name } antworten
}
setup-why = { $step ->
    [food] damit Belohnungen darin bleiben
    [wants] von mehreren Arten: Futter, Spiel, Berührung
    [likes] etwa zehn Minuten; macht die Wahl der Wörter sicherer und kann später kommen
    [words] zwei oder drei, mit Gründen vorgeschlagen
    [record] damit jeder Knopf es gleich sagt und ein Druck gehört werden kann; kann später kommen
    [places] damit ein Druck an seinem Ort erkannt wird
   *[people] alle zeigen, und alle antworten gleich
}
setup-title = Einrichten für { $name }
setup-done-of = { $done } von { $of } nötigen Schritten erledigt
setup-is-done = – erledigt
setup-next = Weiter
setup-keep = Speichern
setup-later = Später
setup-along = Schritt { $number } von { $of }
setup-food-why = Futterbelohnungen nehmen höchstens ein Zehntel vom Tag von { $name }. Der Tag wird aus Gewicht und Alter geschätzt; die Zahl aus der Tierarztpraxis ist besser.
setup-weight = Gewicht, { $unit }
setup-stage = Alter und Körper
setup-stage-hint = dient zur Schätzung der Tagesenergie
setup-stage-unknown = nicht bekannt
setup-food-more = { $species ->
    [dog] Ein Welpe oder eine Zahl aus der Tierarztpraxis
   *[other] Eine Zahl aus der Tierarztpraxis
}
setup-grown-weight-asked = fehlt noch: tippe ein, was der Welpe ausgewachsen wiegen wird, oder speichere noch einmal ohne; dann wird nichts berechnet
setup-grown-weight = Bei einem Welpen: Gewicht ausgewachsen, { $unit }
setup-grown-weight-hint = frage in der Zucht oder Tierarztpraxis; ohne sie wird nichts berechnet
setup-day-kcal = Futter des ganzen Tages, kcal, laut Tierarztpraxis
setup-day-kcal-hint = ersetzt jede Formel
setup-day-kcal-more = muss über 0 liegen; leer lassen, um rechnen zu lassen
setup-food-later = Ohne das wird kein Futter als Wort vorgeschlagen.
setup-record-later = Die Knöpfe sprechen auch so. Heute behält eine Zeile dafür.
setup-no-vet = Nichts hiervon ersetzt die Tierarztpraxis.
