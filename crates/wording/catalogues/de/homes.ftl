homes-title = Welches Zuhause?
homes-intro = { $count ->
    [one] Dieses Notizbuch enthält ein Zuhause.
   *[other] Dieses Notizbuch enthält { $count } Zuhause. Jedes hat eigene Tiere, Wörter und Zahlen; nichts wird über sie hinweg gezählt.
}
homes-no-animal = noch kein Tier
homes-holds = { $animals }; { $count ->
    [one] ein Eintrag
   *[other] { $count } Einträge
}
homes-tail-since = { $name } (…{ $tail }, seit { $day })
