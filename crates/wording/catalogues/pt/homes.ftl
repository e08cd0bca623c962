homes-title = Que casa?
homes-intro = { $count ->
    [1] Este caderno tem uma casa.
   *[other] Este caderno tem { $count } casas. Cada uma tem seus animais, palavras e números; nada é contado entre elas.
}
homes-no-animal = ainda sem animal
homes-holds = { $animals }; { $count ->
    [1] um registro
   *[other] { $count } registros
}
homes-tail-since = { $name } (…{ $tail }, desde { $day })
