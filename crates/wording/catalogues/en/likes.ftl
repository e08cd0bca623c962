likes-test-title = { $format ->
    [paired] Likes test: two at a time
    [multiple] Likes test: all in a row
    [single] Likes test: one at a time
   *[free_access] Likes test: all at once, timed
}
likes-stop-here = Stop here: strong signs of stress were noted. Give space and do not lure back. The test can go on another day.
likes-trial = Trial { $number } of { $of } · round { $round } of { $rounds }
likes-done = All trials are done. Thank you, { $name }.
likes-see-ranking = See the ranking
likes-noted-already = That was noted already; nothing was changed. Use Undo if the last answer is wrong.
likes-stop-for-now = Stop for now
likes-goes-on-later = – what was noted is kept; the test can go on later.
likes-last-chose = Last: { $thing }
likes-last-none = Last: chose none
likes-last-away = Last: walked away
likes-last-watched = Last: watched { $seconds } s
likes-undo = Undo
likes-undo-this = Undo: { $what }
likes-away-is-an-answer = { $name } walked away, and that is an answer. Go on when { $name } comes back unasked, or another day.
likes-stand-in = “{ $thing }” cannot be held up: offer { $stand_in } for it. If { $name } picks it, { $kind ->
    [touch] give it at once
    [training] do it at once
   *[other] go there at once
}.
likes-no-stand-in = “{ $thing }” cannot be held up beside another thing. Offer what stands for it at home, always the same, such as { $kind ->
    [touch] the brush or an open hand
    [training] what you use for it
   *[other] the lead
}; or time it freely.
likes-name-stand-in = Name it on the card
likes-time-freely = Time it freely
likes-needs-stand-in = cannot be held up: name what stands for it on its card, or use the stopwatch
likes-to-card = Open its card
likes-stands = What stands for it
likes-stands-wrong = { $things } cannot be held up. Name on the card of each what stands for it, untick it, or tick below
likes-stands-tick = I offer something that always stands for it, the same each time
likes-shown-as = shown as: { $stand_in }
likes-pieces = { $pieces } × “{ $thing }”
likes-food-left = Food rewards left today: { $kcal } kcal ({ $pieces }). A piece that is taken is counted.
likes-food-short = Not enough is left for one piece of everything here. Stop for today, or cut smaller pieces and edit the card.
likes-food-unknown = How much food { $name } may have today is not known. A piece that is taken is counted all the same.
likes-in-front = in front of { $name }
likes-far-left = 1, { $name }’s far left
likes-far-right = { $place }, { $name }’s far right
likes-lay-one = Put this out; tap it if { $name } comes to it
likes-lay = Tap what { $name } takes
likes-whose-left = Put them out as drawn, as { $name } sees them. If you face { $name }, { $name }’s left is on your right.
likes-lay-all = Put all of these out, in this order from { $name }’s left
likes-did-not-come = Did not come
likes-chose-none = Chose none
likes-walked-away = Walked away
likes-how-to-hold = Stand behind the middle, { $held ->
    [all] hold both alike, look at neither
   *[some] hold each thing, or what stands for it, alike, and look at none
}. Let what was taken be enjoyed; put the others away.
likes-two-at-once = If two are taken at once, note nothing and offer them again.
likes-half-a-minute = No choice within about half a minute is “none”.
likes-move-freely = Let { $name } move freely; five minutes are usual. Time what { $name } is busy with, one thing at a time.
likes-begin = Begin
likes-times = Times in seconds
likes-seconds-there = Seconds the things were there
likes-seconds-busy = { $thing }: seconds busy with it
likes-pieces-eaten = { $thing }: pieces eaten
likes-note-times = Note these times
likes-away-at-once = Walked away at once
likes-format = { $format ->
    [paired] Two at a time
    [multiple] All in a row, without putting back
    [single] One at a time
   *[free_access] All at once, with a stopwatch
}
likes-about = { $format ->
    [paired] Every pair once a round, sides balanced. Surest; longest: 6 things make 15 trials a round. (Fisher et al. 1992)
    [multiple] Things in a row; what is taken is not put back. Quick: 6 things make 6 trials a round. (DeLeon & Iwata 1996)
    [single] Does { $name } come to it at all? For an animal that does not choose between things. (Pace et al. 1985)
   *[free_access] Everything is there for five minutes; you time what { $name } is busy with. Good for play and places. (Roane et al. 1998)
}
likes-new-title = A likes test
likes-not-today = Not today: strong signs of stress were noted. Give { $name } space, and test on a calm day.
likes-back = Back to Likes
likes-nothing-listed = Nothing that { $name } may want is listed yet.
likes-how-to-offer = How to offer
likes-compare = What to compare
likes-compare-hint = up to 12; five to eight are usual
likes-rounds = Rounds
likes-rounds-hint = every pair (or row) once a round; one or two a day are enough
likes-where-to-test = Test in the place and at the time of day in which the words will be used; a full animal likes food less. { $name } may leave at any time.
likes-format-missing = is missing; choose one
likes-how-many = must be { $least } to { $most } things, not { $ticked }; tick more or fewer
likes-rounds-missing = are missing; 1 is a good start
likes-page-title = What { $name } likes
likes-no-test-today = No test today: strong signs of stress were noted. Give space; a calm day will come.
likes-nothing-tested = Nothing has been tested yet. A test shows what { $name } picks with a choice; the first words should be what { $name } picks most.
likes-from-trials = { $trials ->
    [one] From one trial
   *[other] From { $trials } trials
}{ $choosing ->
    [all] { "" }
   *[other] , { $choosing } of choosing
}; without a choice: { $none }. Not choosing is an answer too and is kept.
likes-test-again = Test again:
likes-new-test = New test
likes-ranking = Ranking
likes-sheet = A sheet of this to print
likes-disagree = Ways of testing can disagree: dogs ranked foods differently two at a time and in a row; only the lowest agreed (Cameron, Siddall & Bizo 2021). Likes also change with the hour and the day, so older trials count for less.
likes-known-how = How sure: the probability that no other thing is clearly better. Enough is 90%; stop in any case at 60 trials of choosing, for { $name }’s sake.
likes-next = What to offer next
likes-next-pair = { $left } to { $name }’s left, { $right } to the right.
likes-offer-pair = Offer this pair now
likes-tests-so-far = Tests so far
likes-none-yet = None yet.
likes-test-line = { $trials ->
    [one] { $things } things · one trial
   *[other] { $things } things · { $trials } trials
}
likes-begun-by = begun by { $name }
likes-go-on = Go on
likes-see = See
likes-this-test = This test
likes-this-n = { $trials ->
    [one] one trial, { $none } without a choice
   *[other] { $trials } trials, { $none } of them without a choice
}
likes-thing = Thing
likes-offered = offered
likes-in-seconds = seconds
likes-taken = taken
likes-sides = Sides: the figures
likes-side = Taken from { $name }’s left: { $share }, { $p }.
likes-over-middling = Probability of picking it over something middling
likes-chance = probability
likes-scores = Scores: { $format }
likes-score-of = { $format ->
    [single] share of offers that were taken up
    [free_access] share of the time busy with it
   *[other] share of offers in which it was taken
}
likes-no-such-test = This notebook knows no such test of this animal.
likes-not-offered = is not something { $name } may be offered
likes-same-twice = must be another thing than the left one
likes-answer-wrong = must be one of the things offered in this trial, none, or away
likes-seconds-missing = is missing; give the seconds the things were there
likes-more-than-none = must be more than 0
likes-longer-than-there = are more than the time the things were there
