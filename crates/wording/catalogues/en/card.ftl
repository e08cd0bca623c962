card-animal = An animal
card-new-animal = A new animal
card-name = Name
card-species = Species
card-species-hint = Body language, dangerous foods and the energy formula depend on it.
card-age = Age
card-born = Birth date
card-if-known = if known
card-estimated = this date is an estimate
card-or-age = Not known? Give an age instead; a birth date is worked out and marked as an estimate.
card-years = Age, years
card-months = and months
card-months-hint = 0 to 11
card-food = Food
card-weight-hint = such as 4.5
card-grown-hint = A puppy’s need goes by how much of the weight once grown is there already. Ask the breeder or a veterinarian; without it nothing is computed.
card-day-hint = Leave empty for dogs and cats to have a starting point computed. Where nothing can be computed, ask a veterinarian and type it in; it replaces any formula.
card-share = Share of it for rewards, per cent
card-share-hint = at most 10; empty means 10
card-allow = To allow for
card-limits = Limits
card-limits-hint = hearing, sight, movement and the like: poor hearing or sight, stiff legs, a cleft paw
card-cautions = Health cautions
card-cautions-hint = allergies, pain, medicines, guarding of food or places; shown wherever food is offered
card-takes-part = still takes part
card-versions = Nothing here replaces a veterinarian. Each change is kept as a new version; earlier ones stay in the log.
card-back = Back to People
card-stage = { $stage ->
    [neutered_adult] grown, neutered
    [intact_adult] grown, not neutered
    [obese_prone] grown, gains easily
    [weight_loss] on a weight-loss plan (enter the target weight)
    [kitten] kitten
   *[puppy] puppy
}
card-whose = { $species ->
    [dog] { $stage } (dogs)
   *[cat] { $stage } (cats)
}
card-choose-one = is missing; choose one
card-stage-no-fit = “{ $stage }” does not fit a { $species }
card-less-than-now = is less than the { $weight } of today; correct one, or choose a grown stage
card-share-wrong = must be more than 0 and at most 10; ask a veterinarian for more
card-born-twice = and an age were both given; give one of them
card-born-later = lies in the future
card-born-long-ago = lies more than 120 years back
card-weeks-old = { $weeks ->
    [one] one week old
   *[other] { $weeks } weeks old
}
card-months-old = { $months } months old
card-years-old = { $years ->
    [one] one year old
   *[other] { $years } years old
}
card-home = Home
card-home-name-hint = as you call it
card-zone-hint = A name such as Europe/Berlin. A day is the home’s own day, also when clocks change.
card-zone-moves = Changing it moves past days’ borders too: every figure by day or hour is computed anew.
card-person = A person
card-new-person = A new person
card-name-at-home = as used at home
card-role-title = What they are to the home
card-role = { $role ->
    [home] lives here: shows and answers
    [coach] coaches from outside
   *[visitor] comes now and then: a sitter, a walker, a friend
}
card-no-such-person = This notebook knows no such person.
card-rule = A rule of the house
card-new-rule = A new rule of the house
card-rules-how = Rules stand on the sheet for the fridge. Short ones are kept best, such as: answer every press, also with “not now”.
card-the-rule = The rule
card-rule-for = For
card-every-word = every word
card-still-holds = still holds
card-rule-missing = is missing; write the rule
card-no-such-rule = This notebook knows no such rule.
card-people = People
card-animals = Animals
card-add-animal = Add an animal
card-add-person = Add a person
card-edit = Edit
card-edit-it = Edit { $what }
card-not-named = not named yet
card-files = Files in and out
card-devices = Devices that may read this
card-about-age = about { $age }
card-weight = Weight
card-grown = Expected grown
card-stage-title = Stage
card-food-today = Food today
card-budget = { $budget } for rewards, of about { $day } kcal a day.
card-range = Animals of this weight: { $low } to { $high } kcal a day.
card-given = { $feeds ->
    [one] Given { $given } kcal in one feed, left { $left } kcal.
   *[other] Given { $given } kcal in { $feeds } feeds, left { $left } kcal.
}
card-nobody = nobody named
card-basis = Basis: { $basis }.
card-not-computed = Nothing is computed: { $why }. { $link }
card-type-in = Type it in
card-wants = What they may want
card-wants-none = Nothing listed yet. Four or more things of several kinds make a good likes test.
card-examples = { $kind ->
    [food] anything eaten or licked
    [play] a toy, tug, chasing, a bell
    [touch] stroking, brushing, a lap
    [training] a well-liked exercise
    [exploring] outside, sniffing, the window
   *[rest] a bed, a quiet room, sleep
}
card-add-want = Add something
card-kcal-piece = { $kcal } kcal a piece
card-s-to-give = { $seconds } s to give
card-at-most = at most { $times } a day
card-says = says “{ $says }”
card-said-often = said often already
card-at-board = { $at_board ->
    [yes] can be given at the board
   *[no] not at the board
}
card-stands-for = { $stand_in } stands for it
card-for-whom = for { $names }
card-rules = Rules of the house
card-rules-none = None yet. What does everyone do when a button sounds and there is no time?
card-edit-rule = Edit the rule: { $rule }
card-add-rule = Add a rule
card-fridge = Sheet for the fridge
card-put-away = No longer in use ({ $things })
