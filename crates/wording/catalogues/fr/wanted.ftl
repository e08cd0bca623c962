# Ce qui devrait se trouver à un endroit d'un fichier ou d'une entrée, dit après « attendu » ; et ce qui n'y va pas.
wanted-at = { $line ->
    [0] { $field } : { $what }
   *[other] ligne { $line }, { $field } : { $what }
}
wanted-place = { $place ->
    [file] le fichier
    [line] la ligne
    [row] la rangée
    [column] la colonne
   *[other] l’entrée
}
wanted-missing = attendu : { $wanted }
wanted-found = trouvé « { $found } » ; attendu : { $wanted }
wanted-text = un texte
wanted-number = un nombre comme 1.5
wanted-point = un nombre avec un point, comme 1.5
wanted-whole = un nombre entier de { $low } à { $high }
wanted-flag = true ou false
wanted-list = une liste
wanted-json-list = une liste JSON comme ["walk","food"]
wanted-object = un objet avec { $names }
wanted-tagged = un objet JSON avec "{ $tag }", au choix : { $names }
wanted-object-not-list = un objet JSON, de {"{"} à {"}"}, pas une liste
wanted-one-of = au choix : { $names }
wanted-needed = une valeur : il en faut une
wanted-needed-one-of = une valeur : il en faut une, au choix : { $names }
wanted-no-such-field = rien : ce champ n’existe pas ; il y a : { $names }
wanted-empty-cell = une cellule vide : { $kind } n’a pas ce champ
wanted-parts = rien : prends des colonnes pour ses parties, comme { $part }
wanted-body-columns = rien : prends des colonnes qui commencent par "body."
wanted-fitting = une valeur qui va dans ce champ, donnée une fois
wanted-id = un identifiant (un UUID comme 0198a2b4-7c11-7000-8000-000000000001)
wanted-home-id = l’identifiant d’un foyer (un UUID)
wanted-first-home-id = l’identifiant d’un foyer (un UUID) : ce carnet n’en a pas encore ; commence par un foyer ou importe un export
wanted-no-name-yet = un identifiant : aucun nom n’est encore connu ici
wanted-known-name = un identifiant ou l’un des noms connus : { $names }
wanted-known-name-of-many = un identifiant ou l’un des noms connus : { $names } et { $more } autres
wanted-one-of-ids = un identifiant, car { $count } portent ce nom : { $ids }
wanted-time = une heure comme 2026-03-01 18:30 ou 2026-03-01T18:30:00+01:00, dans les années 2000 à 2199
wanted-offset = un décalage par rapport à UTC, comme { $local }+01:00 : ce foyer n’a pas encore de fuseau horaire
wanted-twice = { $first } ou { $second } : les horloges reculent à { $zone }, et cette heure vient deux fois
wanted-skipped = { $first } ou { $second } : les horloges avancent à { $zone }, et cette heure est sautée
wanted-event = une entrée comme objet JSON, de {"{"} à {"}"}
wanted-json = une entrée en JSON ; elle ne se lit plus à partir de la colonne { $column }
wanted-own-id = un identifiant à elle : une autre entrée a celui-ci ; pour corriger une entrée, ajoute une correction
wanted-smaller-file = au plus { $most } octets : coupe-le en plusieurs fichiers entre deux lignes
wanted-shorter-line = au plus { $most } octets
wanted-utf8 = UTF-8, pas UTF-16, Latin-1 ni Windows-1252 : enregistre-le de nouveau en "UTF-8" ou "CSV UTF-8"
wanted-closed-quotes = chaque " fermé ; un " dans une cellule s’écrit deux fois
wanted-table = un fichier CSV
wanted-cells = { $count } cellules, comme dans la première ligne
wanted-header = une première ligne avec les noms des colonnes
wanted-column-once = chaque colonne une fois
wanted-column = une colonne comme { $names }, word, by, answer ou result.outcome
wanted-this-column = une colonne { $name }
wanted-by-hand = aucun accord : ce qu’un fichier en dit n’ouvre rien. Qui tient le foyer le donne ou le retire sous « Qui peut voir ceci »
