start-title = Wer wohnt hier?
start-all-stays = Alles lässt sich später ändern. Es bleibt alles auf diesem Gerät.
start-on-server = Du kannst später alles ändern. Es liegt auf diesem Server. Nur die Menschen deines Zuhauses sehen es, bis du es teilst. Wer die Maschine des Servers betreibt, könnte ihre Platte lesen.
start-you = Dein Name
start-you-hint = wie du zu Hause heißt
start-animal = Name deines Tieres
start-species = Was für ein Tier?
start-species-name = { $species ->
    [dog] Hund
    [cat] Katze
    [parrot] Papagei
    [rabbit] Kaninchen
   *[other] ein anderes Tier
}
start-species-missing = fehlt; wähle eine
start-others = Wer wohnt noch hier?
start-others-hint = Namen mit Kommas dazwischen; leer lassen, wenn du allein wohnst
start-zone = Wo du wohnst (bestimmt Mitternacht)
start-home = Wie euer Zuhause heißt
start-home-hint = nur wenn du magst, etwa: das Haus am Park
start-home-of = Zuhause von { $name }
start-zone-field = Zeitzone
start-bring = Schon ein Notizbuch oder Tagebuch geführt? { $link }
start-bring-link = Eine Datei einlesen
start-no-vet = Sayso hilft beim Hinsehen und Zählen. Es ersetzt weder die Tierarztpraxis noch eine qualifizierte Fachperson für Tierverhalten.
start-linked = Ist dein Zuhause schon auf einem Server? { $link }
start-linked-link = Dieses Notizbuch damit verbinden
start-notebook = Gibt es zu Hause schon ein Notizbuch? Lass diese Seite leer. { $link }
start-notebook-link = Das Notizbuch verbinden
start-before = Noch keine Knöpfe? { $lessons } und { $rehearse }: Nichts davon wird aufgeschrieben.
start-before-read = Lies die Lektionen
start-before-rehearse = probe an einem simulierten Tier
