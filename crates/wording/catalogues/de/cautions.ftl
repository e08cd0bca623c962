cautions-whom = { $species ->
    [dog] für einen Hund
    [cat] für eine Katze
    [parrot] für einen Papagei
    [rabbit] für ein Kaninchen
   *[other] für dieses Tier
}
cautions-food = { $level ->
    [never] { $item }: nie { $whom } – { $why } ({ $source })
    [avoid] { $item }: meiden { $whom } – { $why } ({ $source })
   *[little] { $item }: nur wenig { $whom } – { $why } ({ $source })
}
cautions-may-hold = { $level ->
    [never] { $item }: nie { $whom } (kann es enthalten: sieh nach, was darin ist) – { $why } ({ $source })
    [avoid] { $item }: meiden { $whom } (kann es enthalten: sieh nach, was darin ist) – { $why } ({ $source })
   *[little] { $item }: nur wenig { $whom } (kann es enthalten: sieh nach, was darin ist) – { $why } ({ $source })
}
cautions-brief = { $level ->
    [never] nie
    [avoid] besser nicht
   *[little] nur wenig
}{ $sure ->
    [yes] { "" }
   *[no] { " " }(sieh nach, was darin ist)
} – { $why }
cautions-never = Gib das { $name } nie.
cautions-eaten = { $why }. Schon gefressen? Ruf jetzt in der Tierarztpraxis an.
cautions-care = Vorsicht, für { $name }:
cautions-checked = Der Name wird, wenn du ihn speicherst, mit einer Liste gefährlicher Lebensmittel verglichen, auf Englisch, Spanisch, Deutsch, Französisch und Portugiesisch. { $note }
