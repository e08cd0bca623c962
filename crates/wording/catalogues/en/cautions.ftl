cautions-whom = { $species ->
    [dog] for a dog
    [cat] for a cat
    [parrot] for a parrot
    [rabbit] for a rabbit
   *[other] for this animal
}
cautions-food = { $level ->
    [never] { $item }: never { $whom } – { $why } ({ $source })
    [avoid] { $item }: avoid { $whom } – { $why } ({ $source })
   *[little] { $item }: only a little { $whom } – { $why } ({ $source })
}
cautions-may-hold = { $level ->
    [never] { $item }: never { $whom } (may hold it: check what is in it) – { $why } ({ $source })
    [avoid] { $item }: avoid { $whom } (may hold it: check what is in it) – { $why } ({ $source })
   *[little] { $item }: only a little { $whom } (may hold it: check what is in it) – { $why } ({ $source })
}
cautions-brief = { $level ->
    [never] never
    [avoid] better not
   *[little] only a little
}{ $sure ->
    [yes] { "" }
   *[no] { " " }(check what is in it)
} – { $why }
cautions-never = Never give this to { $name }.
cautions-eaten = { $why }. Eaten already? Call a veterinarian now.
cautions-care = Care, for { $name }:
cautions-checked = The name is checked against a list of dangerous foods when you save it, in English, Spanish, German, French and Portuguese. { $note }
