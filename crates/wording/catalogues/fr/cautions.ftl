cautions-whom = { $species ->
    [dog] pour un chien
    [cat] pour un chat
    [parrot] pour un perroquet
    [rabbit] pour un lapin
   *[other] pour cet animal
}
cautions-food = { $level ->
    [never] { $item } : jamais { $whom } – { $why } ({ $source })
    [avoid] { $item } : à éviter { $whom } – { $why } ({ $source })
   *[little] { $item } : seulement un peu { $whom } – { $why } ({ $source })
}
cautions-may-hold = { $level ->
    [never] { $item } : jamais { $whom } (peut en contenir : vérifie ce qu’il y a dedans) – { $why } ({ $source })
    [avoid] { $item } : à éviter { $whom } (peut en contenir : vérifie ce qu’il y a dedans) – { $why } ({ $source })
   *[little] { $item } : seulement un peu { $whom } (peut en contenir : vérifie ce qu’il y a dedans) – { $why } ({ $source })
}
cautions-brief = { $level ->
    [never] jamais
    [avoid] plutôt pas
   *[little] seulement un peu
}{ $sure ->
    [yes] { "" }
   *[no] { " " }(regarde ce qu’il y a dedans)
} – { $why }
cautions-never = Ne donne jamais cela à { $name }.
cautions-eaten = { $why }. Déjà mangé ? Appelle un vétérinaire maintenant.
cautions-care = Attention, pour { $name } :
cautions-checked = Le nom est comparé, quand tu l’enregistres, à une liste d’aliments dangereux, en anglais, espagnol, allemand, français et portugais. { $note }
