homes-title = ¿Qué hogar?
homes-intro = { $count ->
    [one] Este cuaderno contiene un hogar.
   *[other] Este cuaderno contiene { $count } hogares. Cada uno tiene sus animales, palabras y cifras; nada se cuenta entre ellos.
}
homes-no-animal = aún sin animal
homes-holds = { $animals }; { $count ->
    [one] un registro
   *[other] { $count } registros
}
homes-tail-since = { $name } (…{ $tail }, desde { $day })
