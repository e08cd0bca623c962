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
reward-stand-in-hint = what can be held up: the lead or the key for going out, the brush for a stroke
reward-keep-another = Save and add another
reward-new = New: { $kind }
reward-title = Something they may want
reward-which-kind = Which kind? A mix of kinds makes a better board than food alone.
reward-kind = Kind
reward-kind-missing = is missing; choose one
reward-exact = as exact as you can, such as: cooked chicken, plain
reward-only-food = is only for food; leave it empty, or choose the kind food
reward-not-added = names a food that was not added; choose another one
reward-not-added-tick = names a food that was not added; choose another one, or tick only the animals it is for
reward-none-means-all = none ticked means all
reward-still-used = still used
reward-energy = Energy of one piece
reward-kcal = kcal a piece
reward-kcal-hint = from the package, if it says so
reward-not-known = Not known? Leave it empty and give the weight of a piece, with the package’s figure or a food of the table.
reward-grams = Grams a piece
reward-grams-hint = weigh ten and divide by ten
reward-per-100 = kcal per 100 g
reward-per-100-hint = from the package; this is the better figure
reward-table = or a plain food
reward-table-hint = from the USDA table, without salt, fat or seasoning; typical values: check the packet
reward-kept = Saved.
reward-kept-kcal = { $name }: { $kcal } kcal a piece.
reward-fits = { $name }: at most { $pieces } a day{ $by ->
    [card] , as its card says.
   *[food] , if nothing else is given: the day’s food rewards are { $budget } kcal.
}
reward-fits-unknown = { $name }: how many a day cannot be said. { $why }
reward-no-such = This notebook knows no such reward.
reward-none-of-these = none of these
reward-food-line = { $food }: { $kcal } kcal per 100 g
reward-food-name = { $food ->
    [chicken_breast_cooked] chicken breast, cooked
    [cheddar] cheddar
    [carrot_raw] carrot, raw
    [apple_raw] apple, raw
    [egg_cooked] egg, cooked
    [salmon_farmed_cooked] salmon, farmed, cooked
    [banana] banana
    [green_beans] green beans
    [turkey_breast_cooked] turkey breast, cooked
    [beef_lean_cooked] beef, lean, cooked
   *[other] { $food }
}
reward-kcal-more = must be more than 0, or it cannot be counted against the day
reward-grams-missing = is missing; weigh ten pieces and divide by ten
reward-kcal-missing = is missing; give it, or the grams of a piece and how much energy 100 g have
reward-not-in-list = is not in the list; choose one of it, or give the energy yourself
reward-called-like-food = names a food that must never be given. If it is that food, do not give it. If it is not, call it something else
