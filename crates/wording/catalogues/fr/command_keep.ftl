command-keep-input-too-large = l’entrée standard contient plus de { $most } Mio ; utilise `sayso import` pour des fichiers
command-keep-input-line = entrée standard, ligne { $line } : { $why }
command-keep-input-no-array = entrée standard, ligne { $line }, colonne { $column } : une liste JSON d’entrées est attendue ; elle ne se lit plus à partir d’ici
command-keep-input-event = entrée standard, élément { $number } : { $why }
command-keep-kept = { $id } gardée
command-keep-known = { $id } déjà connue
command-keep-other-id = { $id } refusée : une autre entrée a cet identifiant ; pour la rectifier, envoie une correction
command-keep-refused = { $id } refusée : { $why }
command-keep-is-backup = { $file } est une sauvegarde ; utilise `sayso restore`
command-keep-preview = { $file } : { $rows ->
    [one] { $rows } ligne
   *[other] { $rows } lignes
}, nouvelles : { $new }, déjà connues : { $known }, avec des fautes : { $faults }.
command-keep-and-recordings = { $n ->
    [one] et { $n } enregistrement
   *[other] et { $n } enregistrements
}
command-keep-new-of-kind = nouvelles de type { $kind } : { $n }
command-keep-later = { $n ->
    [one] { $n } de type { $kind } n’est pas comprise : une version ultérieure l’a écrite. Elle est gardée, mais pas montrée.
   *[other] { $n } de type { $kind } ne sont pas comprises : une version ultérieure les a écrites. Elles sont gardées, mais pas montrées.
}
command-keep-of-home = { $n } de { $home }
command-keep-of-other-home = { $n } de { $home }, que ce carnet ne contient pas
command-keep-unnamed-home = un foyer sans nom ({ $id })
command-keep-from-to = de { $first } à { $last }
command-keep-more = ... et { $n } de plus
command-keep-not-imported-faults = Rien n’a été repris. Corrige ces lignes et recommence.
command-keep-not-imported-homes =
    Rien n’a été repris : ce carnet contiendrait alors plusieurs foyers. Le fichier apporte { $homes }.
    Pour avoir plusieurs foyers dans ce carnet, pour toujours, ajoute --take-in-other-home.
command-keep-not-imported-yet = Rien n’a encore été repris. Pour le faire, relance la même commande avec --yes.
command-keep-imported = { $n ->
    [one] { $n } entrée reprise
   *[other] { $n } entrées reprises
} ; déjà connues : { $known }.
command-keep-clips-stored = { $n ->
    [one] { $n } enregistrement rangé
   *[other] { $n } enregistrements rangés
} ; déjà ici : { $known } ; abîmés et laissés de côté : { $damaged }.
command-keep-archive-to = une archive va dans un fichier : ajoute --to all.tar
command-keep-archive-written = { $n ->
    [one] { $n } entrée
   *[other] { $n } entrées
} et { $recordings ->
    [one] { $recordings } enregistrement : écrits.
   *[other] { $recordings } enregistrements : écrits.
}
command-keep-damaged-left-out = { $n ->
    [one] { $n } enregistrement est abîmé et a été laissé de côté.
   *[other] { $n } enregistrements sont abîmés et ont été laissés de côté.
}
command-keep-written = { $n ->
    [one] { $n } entrée écrite.
   *[other] { $n } entrées écrites.
}
command-keep-backed-up = { $n ->
    [one] { $n } entrée
   *[other] { $n } entrées
} et { $recordings ->
    [one] { $recordings } enregistrement
   *[other] { $recordings } enregistrements
} sont dans { $file } ({ $bytes } octets).
command-keep-damaged-clip = Un enregistrement est abîmé et n’a pas été emporté : { $clip }
command-keep-take-in = { $why } : ajoute --take-in-other-home
command-keep-in-the-backup = { $home } : { $n ->
    [one] { $n } entrée dans la sauvegarde.
   *[other] { $n } entrées dans la sauvegarde.
}
command-keep-brought-back = { $n ->
    [one] { $n } entrée ramenée
   *[other] { $n } entrées ramenées
} ; déjà ici : { $known }.
command-keep-clips-brought-back = { $n ->
    [one] { $n } enregistrement ramené
   *[other] { $n } enregistrements ramenés
} ; déjà ici : { $known }.
command-keep-unsound = Laissée de côté, car déjà fautive quand elle a été sauvegardée : { $fault }
command-keep-conflict = L’entrée { $id } se trouve ici avec un autre contenu ; celle d’ici a été gardée.
command-keep-looked-at = { $n ->
    [one] { $n } entrée
   *[other] { $n } entrées
}, { $recordings ->
    [one] { $recordings } enregistrement
   *[other] { $recordings } enregistrements
} : tout a été regardé.
command-keep-snapshots = { $n ->
    [one] { $n } instantané contient ce que contient le journal.
   *[other] { $n } instantanés contiennent ce que contient le journal.
}
command-keep-amendments = { $n ->
    [one] { $n } rectifie une autre entrée ou la retire
   *[other] { $n } rectifient d’autres entrées ou les retirent
} ; dont sur des entrées absentes d’ici : { $waiting }.
command-keep-wrong = Faux : { $fault }
command-keep-all-well = Tout est tel que cela a été écrit.
command-keep-snapshots-wrong = Toutes les entrées et tous les enregistrements sont tels qu’ils ont été écrits : il n’y a rien à ramener. Arrête le programme là où il tourne encore, supprime ce qui est nommé plus haut et relance-le.
command-keep-restore-latest = Garde une copie de ce dossier, puis ramène la dernière sauvegarde dans un nouveau.
