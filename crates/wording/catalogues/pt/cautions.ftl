cautions-whom = { $species ->
    [dog] para um cão
    [cat] para um gato
    [parrot] para um papagaio
    [rabbit] para um coelho
   *[other] para este animal
}
cautions-food = { $level ->
    [never] { $item }: nunca { $whom } – { $why } ({ $source })
    [avoid] { $item }: evite { $whom } – { $why } ({ $source })
   *[little] { $item }: só um pouco { $whom } – { $why } ({ $source })
}
cautions-may-hold = { $level ->
    [never] { $item }: nunca { $whom } (pode conter: veja o que tem dentro) – { $why } ({ $source })
    [avoid] { $item }: evite { $whom } (pode conter: veja o que tem dentro) – { $why } ({ $source })
   *[little] { $item }: só um pouco { $whom } (pode conter: veja o que tem dentro) – { $why } ({ $source })
}
cautions-brief = { $level ->
    [never] nunca
    [avoid] melhor não
   *[little] só um pouco
}{ $sure ->
    [yes] { "" }
   *[no] { " " }(veja o que contém)
} – { $why }
cautions-never = Nunca dê isto a { $name }.
cautions-eaten = { $why }. Já comeu? Ligue agora para um veterinário.
cautions-care = Cuidado, para { $name }:
cautions-checked = O nome é comparado, quando você salva, com uma lista de alimentos perigosos, em inglês, espanhol, alemão, francês e português. { $note }
