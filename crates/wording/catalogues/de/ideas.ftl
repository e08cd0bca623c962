ideas-name = { $key ->
    [chicken] Huhn, gekocht, erbsengroß
    [cheese] Käse, erbsengroß
    [carrot] Möhre, eine dünne Scheibe
    [apple] Apfel ohne Kerngehäuse, ein kleiner Würfel
    [beans] Bohne, grün und gekocht, eine
    [beef] Rind, mager und gekocht, erbsengroß
    [turkey] Pute, gekocht, erbsengroß
    [egg] Ei, gekocht, erbsengroß
    [salmon] Lachs, gekocht, eine kleine Flocke
    [kibble] Brocken vom Trockenfutter, einer
    [pellet] Pellet vom üblichen Futter, eines
    [sunflower] Kern der Sonnenblume, ungesalzen, einer
    [millet] Hirse, eine Prise
    [pepper] Paprika, rot, ein kleiner Streifen
    [dandelion] Löwenzahn, ein Blatt
    [parsley] Petersilie, ein Zweig
    [coriander] Koriander, ein Zweig
    [hay] Heu, ein süßer Halm
    [tug] Zerren
    [ball] Ball
    [chase] Fangen
    [squeak] Quietschtier
    [wand] Angel mit Feder
    [crinkle] Knisterball
    [toss] Stoffmaus
    [bell] Glocke
    [shred] Papier zum Zerreißen
    [peekaboo] Kuckuck
    [willow] Weidenball
    [tunnel] Tunnel
    [rub] Bauch kraulen
    [scratch] Brust kratzen
    [brush] Bürste
    [cheek] Wange streicheln
    [head] Kopf kraulen
    [forehead] Stirn streicheln, am Boden
    [paw] Pfote geben
    [spin] Drehen
    [touch_hand] Hand berühren
    [high_five] Einschlagen
    [step_up] Aufsteigen
    [turn] Umdrehen
    [target] Stab berühren
    [up] Männchen
    [garden] Garten
    [walk] Spaziergang
    [sniff] Schnüffeln in einer Kiste mit Laub
    [window] Fenster
    [box] Karton
    [room] Zimmer nebenan, mit dir
    [pen] Auslauf
    [bed] Bett
    [sofa] Sofa, neben dir
    [perch] Sitzstange, ruhig
    [hide] Häuschen
   *[other] { $key }
}
ideas-label = { $key ->
    [chicken] Huhn
    [cheese] Käse
    [carrot] Möhre
    [apple] Apfel
    [beans] Bohne
    [beef] Rind
    [turkey] Pute
    [egg] Ei
    [salmon] Lachs
    [kibble] Brocken
    [pellet] Pellet
    [sunflower] Kern
    [millet] Hirse
    [pepper] Paprika
    [dandelion] Blatt
    [parsley] Petersilie
    [coriander] Koriander
    [hay] Heu
    [tug] Zerren
    [ball] Ball
    [chase] Fangen
    [squeak] Quietschtier
    [wand] Feder
    [crinkle] Knistern
    [toss] Maus
    [bell] Glocke
    [shred] Papier
    [peekaboo] Kuckuck
    [willow] Weide
    [tunnel] Tunnel
    [rub] Kraulen
    [scratch] Kratzen
    [brush] Bürste
    [cheek] Wange
    [head] Kraulen
    [forehead] Stirn
    [paw] Pfote
    [spin] Drehen
    [touch_hand] Hand
    [high_five] Fünf
    [step_up] Auf
    [turn] Dreh
    [target] Stab
    [up] Männchen
    [garden] Garten
    [walk] Gassi
    [sniff] Schnüffeln
    [window] Fenster
    [box] Karton
    [room] Zimmer
    [pen] Auslauf
    [bed] Bett
    [sofa] Sofa
    [perch] Stange
    [hide] Häuschen
   *[other] { $key }
}
ideas-title = Was könnte { $name } mögen?
ideas-four = Tippe vier oder mehr Sachen an, von mehreren Arten. { $name } entscheidet später.
ideas-health = Gesundheit:
ideas-other-kinds = Sachen anderer Arten
ideas-figures = kcal: übliche Werte für ein Stück (USDA und aus dem Gedächtnis); sieh auf die Packung. Die Ideen: üblich, ohne Quelle.
ideas-add = Hinzufügen
ideas-own = Etwas Eigenes
ideas-kind = { $kind ->
    [food] Futter
    [play] Spiel
    [touch] Berührung
    [training] eine Übung
    [exploring] Erkunden
   *[rest] Ruhe
}
ideas-care = { $care ->
    [guarding] Nicht für ein Tier, das Futter oder Spielzeug bewacht. Wird { $name } steif oder knurrt, gib Raum und frage eine qualifizierte Fachperson für Tierverhalten.
    [slipping] Auf einem Boden, der nicht rutscht; bei steifen oder jungen Beinen erst in der Tierarztpraxis fragen.
    [small_parts] Nichts, was abgebissen und verschluckt werden kann; danach wegräumen.
    [size] So groß, dass { $name } nichts verschluckt und nichts im Rachen stecken bleibt; abgenutzt kommt es weg.
   *[hands_off] Nur solange { $name } darum kommt: nie festgehalten, nie gegen den Willen auf dem Schoß.
}
ideas-none-ticked = sind nicht angetippt; tippe eine an, oder wähle Später
ideas-unknown = enthalten eine, die das Programm nicht kennt; lade die Seite neu
ideas-instead = { $name } wählt { $thing } selten. Ideen stattdessen: { $ideas }
ideas-instead-of = { $name } will { $thing } kaum. Versuche etwas anderes dieser Art und lass { $name } wählen.
ideas-see = Alle Ideen ansehen
ideas-for-animal = Ideen für { $name }: { $ideas }
