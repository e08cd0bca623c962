reward-poison = { $species ->
    [dog] { $food } can poison dogs. Not added.
    [cat] { $food } can poison cats. Not added.
    [parrot] { $food } can poison parrots. Not added.
    [rabbit] { $food } can poison rabbits. Not added.
   *[other] { $food } can poison this animal. Not added.
}
reward-says = What you already say for it
reward-says-hint = one short word; the button can say the same
reward-already-said = we say this word many times a day already
reward-at-board = Can it be given at the board?
reward-at-board-hint = again and again, within seconds; going out cannot
reward-as-usual = { $at_board ->
    [yes] as usual for its kind: yes
   *[no] as usual for its kind: no
}
reward-at-board-yes = yes
reward-at-board-no = no
reward-seconds = How long giving it takes, seconds
reward-usual-seconds = from the press to the end; usual for its kind: about { $seconds } (common practice, no source)
reward-most = At most, each day
reward-usual-times = before people or the animal have had enough; usual for its kind: { $times }
reward-stand-in = What stands for it in a likes test
reward-stand-in-hint = what can be held up: the lead or the key for going out
