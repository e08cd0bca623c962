# What the command line says. Where a text names a command or a flag, it stays as it is typed.
command-no-home = { $dir } holds no home yet; run `sayso serve --data { $dir }` and set one up
command-no-animal = no animal is called "{ $asked }"; there are: { $known }
command-no-animal-yet = no animal is called "{ $asked }"; there are none yet
command-no-word = no word says "{ $asked }"; there are: { $known }
command-no-word-yet = no word says "{ $asked }"; there are none yet
command-several-words = several words say "{ $asked }"; give one of their ids: { $ids }
command-not-understood = { $n ->
    [one] { $n } event of kind { $kind } is not understood: a later version wrote it. It is kept, not counted here.
   *[other] { $n } events of kind { $kind } are not understood: a later version wrote them. They are kept, not counted here.
}
command-no-language = SAYSO_LANGUAGE is "{ $given }", which is none of: { $known }
command-manual = The manual pages are in { $dir }; begin with: man { $first }
command-no-reward = no reward is called "{ $asked }"; there are: { $known }
command-no-reward-yet = no reward is called "{ $asked }"; there are none yet
command-several-rewards = several rewards are called "{ $asked }"; give one of their ids: { $ids }
