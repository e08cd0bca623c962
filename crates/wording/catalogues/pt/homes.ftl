homes-title = Que casa?
homes-intro = { $count ->
    [one] Este caderno tem uma casa.
   *[other] Este caderno tem { $count } casas. Cada uma tem os seus animais, palavras e números; nada se conta entre elas.
}
homes-no-animal = ainda sem animal
homes-holds = { $animals }; { $count ->
    [one] um registo
   *[other] { $count } registos
}
homes-tail-since = { $name } (…{ $tail }, desde { $day })
