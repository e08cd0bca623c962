cautions-whom = { $species ->
    [dog] para un perro
    [cat] para un gato
    [parrot] para un loro
    [rabbit] para un conejo
   *[other] para este animal
}
cautions-food = { $level ->
    [never] { $item }: nunca { $whom } – { $why } ({ $source })
    [avoid] { $item }: evítalo { $whom } – { $why } ({ $source })
   *[little] { $item }: solo un poco { $whom } – { $why } ({ $source })
}
cautions-may-hold = { $level ->
    [never] { $item }: nunca { $whom } (puede contenerlo: mira qué lleva) – { $why } ({ $source })
    [avoid] { $item }: evítalo { $whom } (puede contenerlo: mira qué lleva) – { $why } ({ $source })
   *[little] { $item }: solo un poco { $whom } (puede contenerlo: mira qué lleva) – { $why } ({ $source })
}
cautions-brief = { $level ->
    [never] nunca
    [avoid] mejor no
   *[little] solo un poco
}{ $sure ->
    [yes] { "" }
   *[no] { " " }(mira qué lleva)
} – { $why }
cautions-never = Nunca le des esto a { $name }.
cautions-eaten = { $why }. ¿Ya se lo ha comido? Llama ahora a un veterinario.
cautions-care = Cuidado, para { $name }:
cautions-checked = El nombre se compara, cuando lo guardas, con una lista de alimentos peligrosos, en inglés, español, alemán, francés y portugués. { $note }
