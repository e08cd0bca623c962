homes-title = Which home?
homes-intro = { $count ->
    [one] This notebook holds one home.
   *[other] This notebook holds { $count } homes. Each has its own animals, words and figures; nothing is counted across them.
}
homes-no-animal = no animal yet
homes-holds = { $animals }; { $count ->
    [one] one event
   *[other] { $count } events
}
homes-tail-since = { $name } (…{ $tail }, since { $day })
