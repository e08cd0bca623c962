homes-title = Quel foyer ?
homes-intro = { $count ->
    [1] Ce carnet contient un foyer.
   *[other] Ce carnet contient { $count } foyers. Chacun a ses animaux, ses mots et ses chiffres ; rien n’est compté entre eux.
}
homes-no-animal = pas encore d’animal
homes-holds = { $animals } ; { $count ->
    [1] une entrée
   *[other] { $count } entrées
}
homes-tail-since = { $name } (…{ $tail }, depuis { $day })
