command-norms-what-is-in = { $n ->
    [1] { $n } ligne
   *[other] { $n } lignes
}, une par animal et par mot montré : espèce, tranche d’âge, ce que le mot apporte, démonstrations et jours jusqu’au premier appui, invitations. Aucun nom, note, date, lieu ni mot n’y figure. Elles ne vont nulle part si tu ne les envoies pas.
command-norms-homes-agreed = { $agreed } sur { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} sont d’accord ; { $rows ->
    [1] { $rows } ligne
   *[other] { $rows } lignes
}.
command-norms-key-beside = la clé { $key } est dans le dossier des lignes : qui les reçoit la recevrait aussi. Garde-la ailleurs
command-norms-key-short = la clé { $key } a { $found ->
    [1] { $found } octet
   *[other] { $found } octets
} ; il en faut { $least } ou plus, de bon hasard
command-norms-imported = Édition « { $release } » du { $date } gardée : { $cells ->
    [1] { $cells } cellule
   *[other] { $cells } cellules
} (SHA-256 { $hash }).
command-norms-unusable = { $file } ne contient pas de valeurs de référence utilisables, et rien n’a été changé : { $why }
