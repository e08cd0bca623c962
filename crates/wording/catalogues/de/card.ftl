card-animal = Ein Tier
card-new-animal = Ein neues Tier
card-name = Name
card-species = Art
card-species-hint = Davon hängen Körpersprache, gefährliches Futter und die Energieformel ab.
card-age = Alter
card-born = Geburtstag
card-if-known = wenn bekannt
card-estimated = dieses Datum ist geschätzt
card-or-age = Nicht bekannt? Gib ein Alter an; daraus wird ein geschätzter Geburtstag.
card-years = Alter, Jahre
card-months = und Monate
card-months-hint = 0 bis 11
card-food = Futter
card-weight-hint = etwa 4,5
card-grown-hint = Der Bedarf eines Welpen richtet sich danach, wie viel vom Endgewicht schon da ist. Frage in der Zucht oder Tierarztpraxis; ohne es wird nichts berechnet.
card-day-hint = Bei Hunden und Katzen leer lassen, dann wird ein Anfangswert berechnet. Wo nichts berechnet werden kann, frage in der Tierarztpraxis und trage es ein; es ersetzt jede Formel.
card-share = Anteil für Belohnungen, Prozent
card-share-hint = höchstens 10; leer heißt 10
card-allow = Zu berücksichtigen
card-limits = Einschränkungen
card-limits-hint = Gehör, Augen, Bewegung: hört oder sieht schlecht, steife Beine
card-cautions = Gesundheit: Vorsicht bei
card-cautions-hint = Allergien, Schmerzen, Medikamente, bewacht Futter oder Plätze; steht überall, wo Futter angeboten wird
card-takes-part = macht noch mit
card-versions = Nichts hiervon ersetzt die Tierarztpraxis. Jede Änderung ist eine neue Fassung; frühere bleiben im Protokoll.
card-back = Zurück zu Menschen
card-stage = { $stage ->
    [neutered_adult] ausgewachsen, kastriert
    [intact_adult] ausgewachsen, nicht kastriert
    [obese_prone] ausgewachsen, nimmt leicht zu
    [weight_loss] auf Diät (Zielgewicht angeben)
    [kitten] Kätzchen
   *[puppy] Welpe
}
card-whose = { $species ->
    [dog] { $stage } (Hunde)
   *[cat] { $stage } (Katzen)
}
card-choose-one = fehlt; wähle eine
card-stage-no-fit = „{ $stage }“ passt nicht zu: { $species }
card-less-than-now = ist weniger als die { $weight } von heute; berichtige eines, oder wähle ausgewachsen
card-share-wrong = muss über 0 und höchstens 10 sein; für mehr frage in der Tierarztpraxis
card-born-twice = und ein Alter wurden beide angegeben; gib eines an
card-born-later = liegt in der Zukunft
card-born-long-ago = liegt mehr als 120 Jahre zurück
card-weeks-old = { $weeks ->
    [one] eine Woche alt
   *[other] { $weeks } Wochen alt
}
card-months-old = { $months } Monate alt
card-years-old = { $years ->
    [one] ein Jahr alt
   *[other] { $years } Jahre alt
}
card-home = Zuhause
card-home-name-hint = wie ihr es nennt
card-zone-hint = Ein Name wie Europe/Berlin. Ein Tag ist der Tag zu Hause, auch bei der Zeitumstellung.
card-zone-moves = Eine Änderung verschiebt auch die Grenzen vergangener Tage: alle Zahlen nach Tag oder Stunde werden neu berechnet.
card-person = Ein Mensch
card-new-person = Ein neuer Mensch
card-name-at-home = wie zu Hause üblich
card-role-title = Was er oder sie fürs Zuhause ist
card-role = { $role ->
    [home] wohnt hier: zeigt und antwortet
    [coach] begleitet von außen
   *[visitor] kommt ab und zu: hütet, geht spazieren, befreundet
}
card-no-such-person = Dieses Notizbuch kennt diese Person nicht.
card-rule = Eine Hausregel
card-new-rule = Eine neue Hausregel
card-rules-how = Regeln stehen auf dem Blatt für den Kühlschrank. Kurze hält man am besten ein, etwa: auf jeden Druck antworten, auch mit „jetzt nicht“.
card-the-rule = Die Regel
card-rule-for = Für
card-every-word = jedes Wort
card-still-holds = gilt noch
card-rule-missing = fehlt; schreibe die Regel
card-no-such-rule = Dieses Notizbuch kennt diese Regel nicht.
card-people = Menschen
card-animals = Tiere
card-add-animal = Ein Tier hinzufügen
card-add-person = Einen Menschen hinzufügen
card-edit = Ändern
card-edit-it = { $what } ändern
card-not-named = noch ohne Namen
card-files = Dateien ein und aus
card-devices = Geräte, die dies lesen dürfen
card-about-age = etwa { $age }
card-weight = Gewicht
card-grown = Ausgewachsen erwartet
card-stage-title = Alter und Körper
card-food-today = Futter heute
card-budget = { $budget } für Belohnungen, von etwa { $day } kcal am Tag.
card-range = Tiere dieses Gewichts: { $low } bis { $high } kcal am Tag.
card-given = { $feeds ->
    [one] { $given } kcal in einer Gabe gegeben, { $left } kcal übrig.
   *[other] { $given } kcal in { $feeds } Gaben gegeben, { $left } kcal übrig.
}
card-nobody = niemand genannt
card-basis = Grundlage: { $basis }.
card-not-computed = Nichts wird berechnet: { $why }. { $link }
card-type-in = Trage es ein
card-wants = Was sie wollen könnten
card-wants-none = Noch nichts genannt. Vier oder mehr Sachen mehrerer Arten ergeben einen guten Vorlieben-Test.
card-examples = { $kind ->
    [food] alles, was gefressen oder geleckt wird
    [play] Spielzeug, Zerren, Fangen, eine Glocke
    [touch] Streicheln, Bürsten, ein Schoß
    [training] eine beliebte Übung
    [exploring] draußen, Schnüffeln, das Fenster
   *[rest] ein Bett, ein ruhiges Zimmer, Schlaf
}
card-add-want = Etwas hinzufügen
card-kcal-piece = { $kcal } kcal je Stück
card-s-to-give = { $seconds } s zum Geben
card-at-most = höchstens { $times } am Tag
card-says = sagt „{ $says }“
card-said-often = wird schon oft gesagt
card-at-board = { $at_board ->
    [yes] kann am Brett gegeben werden
   *[no] nicht am Brett
}
card-stands-for = { $stand_in } steht dafür
card-for-whom = für { $names }
card-rules = Hausregeln
card-rules-none = Noch keine. Was tun alle, wenn ein Knopf klingt und keine Zeit ist?
card-edit-rule = Die Regel ändern: { $rule }
card-add-rule = Eine Regel hinzufügen
card-fridge = Blatt für den Kühlschrank
card-put-away = Nicht mehr in Gebrauch ({ $things })
