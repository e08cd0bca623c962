ration-used-up = Die Futterbelohnungen von heute sind aufgebraucht. Nimm Spiel, Berührung oder Erkunden, und gib eine kleinere Mahlzeit, wenn die Tierarztpraxis zustimmt.
ration-starting-point = Ein Ausgangswert für ein gesundes Tier: Bei gleichem Gewicht brauchen manche bis zu dreimal so viel wie andere. Achte auf die Körperverfassung und frag in der Tierarztpraxis.
ration-growing = Der Bedarf eines wachsenden Tiers ändert sich von Woche zu Woche: wiege oft, nimm wo möglich das eigene Futter als Belohnung und frag in der Tierarztpraxis.
ration-weight-loss = Nach dem Zielgewicht berechnet. Abnehmen braucht einen Plan der Tierarztpraxis; bei Katzen ist zu wenig zu fressen selbst gefährlich.
ration-typed-in = Eingetippt, von diesem Programm nicht geprüft: Es steht so da, wie die Tierarztpraxis es gab.
ration-basis-typed-in = eingetippt, wie eine Tierarztpraxis es festgelegt hat
ration-basis-formula = Ruheenergie (70 mal das Gewicht in kg hoch 0,75) = { $resting } kcal, mal { $factor } für das Lebensalter ({ $source })
ration-factor-source = { $source ->
    [charts] wie in veröffentlichten tierärztlichen Tabellen, aus zweiter Hand; nur ein Ausgangswert
    [home_dogs] wie in veröffentlichten tierärztlichen Tabellen, aus zweiter Hand; Familienhunde mit Idealgewicht brauchten 1,83 (Divol & Priymenko 2017); nur ein Ausgangswert
    [slimming] 80 % der Ruheenergie beim Idealgewicht, AAHA-Leitlinie 2014; nur ein Ausgangswert
    [growth_half] FEDIAF 2021, unter der Hälfte des Endgewichts; nur ein Ausgangswert
    [growth_most] FEDIAF 2021, von der Hälfte bis vier Fünftel des Endgewichts; nur ein Ausgangswert
   *[growth_end] FEDIAF 2021, ab vier Fünfteln des Endgewichts; nur ein Ausgangswert
}
ration-no-formula = hier gibt es keine Formel { $whom }: frag in der Tierarztpraxis, wie viel { $name } am Tag haben darf, und tippe es ein
ration-weight = { $weight } ist kein Gewicht { $whom } ({ $low } bis { $high }): prüfe es, oder frag in der Tierarztpraxis, wie viel { $name } am Tag haben darf, und tippe es ein
ration-stage = „{ $stage }“ ist kein Lebensalter { $whom }: wähle ein anderes, oder frag in der Tierarztpraxis, wie viel { $name } am Tag haben darf, und tippe es ein
ration-no-weight = das Gewicht von { $name } ist nicht bekannt: wiege { $name }, oder frag in der Tierarztpraxis, wie viel { $name } am Tag haben darf, und tippe es ein
ration-no-grown-weight = der Bedarf eines Welpen geht nach seinem Anteil am Endgewicht, und das von { $name } ist nicht bekannt: frag die Zuchtstätte oder eine Tierarztpraxis und tippe es ein, oder tippe ein, wie viel { $name } nach Auskunft einer Tierarztpraxis am Tag haben darf
ration-outgrown = { $weight } ist mehr als die { $grown }, die { $name } ausgewachsen haben soll: berichtige eines davon, wähle ein ausgewachsenes Lebensalter, oder frag in der Tierarztpraxis, wie viel { $name } am Tag haben darf, und tippe es ein
ration-no-stage = das Lebensalter von { $name } ist nicht bekannt: wähle eines, oder frag in der Tierarztpraxis, wie viel { $name } am Tag haben darf, und tippe es ein
