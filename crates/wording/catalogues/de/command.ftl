command-no-home = { $dir } enthält noch kein Zuhause; starte `sayso serve --data { $dir }` und richte eines ein
command-no-animal = kein Tier heißt „{ $asked }“; es gibt: { $known }
command-no-animal-yet = kein Tier heißt „{ $asked }“; es gibt noch keines
command-no-word = kein Wort sagt „{ $asked }“; es gibt: { $known }
command-no-word-yet = kein Wort sagt „{ $asked }“; es gibt noch keines
command-several-words = mehrere Wörter sagen „{ $asked }“; nenne eine ihrer Kennungen: { $ids }
command-not-understood = { $n ->
    [one] { $n } Eintrag der Art { $kind } wird nicht verstanden: Eine spätere Version hat ihn geschrieben. Er bleibt erhalten, zählt hier aber nicht.
   *[other] { $n } Einträge der Art { $kind } werden nicht verstanden: Eine spätere Version hat sie geschrieben. Sie bleiben erhalten, zählen hier aber nicht.
}
command-no-language = SAYSO_LANGUAGE ist „{ $given }“, das ist keine von: { $known }
command-manual = Die Handbuchseiten sind in { $dir }; fang an mit: man { $first }
command-no-reward = keine Belohnung heißt „{ $asked }“; es gibt: { $known }
command-no-reward-yet = keine Belohnung heißt „{ $asked }“; es gibt noch keine
command-several-rewards = mehrere Belohnungen heißen „{ $asked }“; nenne eine ihrer Kennungen: { $ids }
