patterns-of-animal = Patterns: { $name }
patterns-no-animal = There is no such animal.
patterns-intro = What shows in { $name }’s own presses and choices, and what it does not show. { $link } tells what happened when. Looked at are the last { $days } days.
patterns-days = Days
patterns-pace = Do presses grow or fade?
patterns-no-press = No own press yet.
patterns-factor = Factor a week
patterns-factor-told = Each dot is the factor by which presses multiply a week, with its 90% interval; the line is no change.
patterns-factor-interval = 90% interval
patterns-times-a-week = times a week
patterns-pace-does-not-show = A factor of 1 is no change. A growing number does not show that a word is understood, nor a fading one that it was forgotten: what it wants, how soon people answer and how long the board is within reach change it as well. With several words, an interval of one that leaves out 1 is no surprise.
patterns-by-week = Own presses by week
patterns-by-week-told = { $n ->
    [one] { $n } own press
   *[other] { $n } own presses
} in { $days } days, by week up to today; the first week may be cut short.
patterns-week-ago = { $ago ->
    [0] the last seven days
   *[other] { $ago ->
        [one] { $ago } week before
       *[other] { $ago } weeks before
    }
}
patterns-weeks-axis = weeks before now
patterns-presses = presses
patterns-all-words = all words
patterns-paced = { $name }’s presses of { $word ->
    [none] all words
   *[other] “{ $word }”
} { $turn ->
    [times] multiplied
   *[other] divided
} by { $by } a week{ $low ->
    [none] { " " }(no interval yet
   *[other] { " " }(factor { $factor }; 90% interval { $low } to { $high }
}; { $weeks ->
    [one] { $weeks } week
   *[other] { $weeks } weeks
}, { $n ->
    [one] { $n } press
   *[other] { $n } presses
}).
patterns-paced-few = { $name }’s presses of { $word ->
    [none] all words
   *[other] “{ $word }”
}: too little to say how they change ({ $days ->
    [one] { $days } day
   *[other] { $days } days
}, { $n ->
    [one] { $n } press
   *[other] { $n } presses
}; it takes { $least_days } days and { $least } presses).
patterns-lines = Before and after a change
patterns-no-lines = No change with at least five days on both sides yet: buttons moved, a word or a rule that came.
patterns-lines-do-not-show = This does not show that the change did it: other things changed in those days too, presses were already going up or down, and one of several changes looks large by chance. Days of one animal hang together, so the interval is rather too short. A trial of the change, with its days drawn by chance, can tell.
patterns-trials = Trials of a change
patterns-change-moved = buttons were moved
patterns-change-word = “{ $word }” came
patterns-change-rule = a rule of the house came
patterns-line = When { $what } ({ $day }): { $name } pressed { $before } before and { $after } after. A day after had more presses than a day before in { $share } of pairs (90% interval { $low } to { $high }, { $n_before } and { $n_after } days, { $p }; 50% is no difference).
patterns-line-title = Own presses a day around { $day }
patterns-line-told = { $what }: before { $before }, after { $after }.
patterns-before = before
patterns-after = after
patterns-days-from-change = days from the change
patterns-presses-a-day = presses a day
patterns-order = One word after another
patterns-order-no-board = Without a drawn board a slip to the next button cannot be told from a second word.
patterns-since-why = Since the buttons lie where they lie: { $why }.
patterns-order-never = { $name } never pressed two buttons within ten seconds ({ $n ->
    [one] { $n } press
   *[other] { $n } presses
}).
patterns-order-none = No word follows another more often than { $name }’s habits explain ({ $n ->
    [one] { $n } pair
   *[other] { $n } pairs
} of presses within ten seconds).
patterns-order-found = { $pairs } ({ $n } pairs of presses within ten seconds).
patterns-pair = “{ $first }” then “{ $second }” { $times } times, { $expected } expected from habits (adjusted { $p }{ $beside ->
    [yes] , side by side: it may be a slip
   *[other] { "" }
})
patterns-draw-board = Draw the board
patterns-order-since = { $n ->
    [one] { $n } own press
   *[other] { $n } own presses
} of { $words ->
    [one] one word
   *[other] { $words } words
} since { $day }, when the buttons came to lie where they lie.
patterns-pairs-caption = Pairs pressed within ten seconds, five times or more, the least expected first
patterns-first = First
patterns-next = Next
patterns-times = Times
patterns-expected = Expected from habits
patterns-adjusted-p = Adjusted p
patterns-beside = Side by side
patterns-beside-told = { $beside ->
    [yes] yes: it may be a slip
   *[other] no
}
patterns-order-does-not-show = Compared with habits: how often each word is pressed in a sitting, pressed again, pressed next to the one before, and followed by a pause. A pair that stands out does not show that the two words mean something together: a routine, an answer in between, or one want after the other would give the same. Nor does “no word follows another” show that none does: of simulated animals with a true pair, pressed in short sittings, three in four were not told of it. Every own press counts, those taken for slips too.
patterns-slips = Presses that look like slips
patterns-slips-no-board = Without a drawn board nobody can tell which buttons lie side by side.
patterns-slips-none = No press of { $name }’s came within { $seconds } of another contact, so none looks like a slip ({ $n ->
    [one] { $n } press
   *[other] { $n } presses
}).
patterns-slips-found = Explained by a slip from the button beside or by a brush, of { $name }’s own presses: { $share }. Within { $seconds } of another contact: { $quick }.
patterns-by-button = Explained by slips, by button
patterns-by-button-told = Each dot is the share of a button’s presses that slips explain, with its 95% interval.
patterns-share-of-presses = share of its presses
patterns-judged = Taken for a slip by somebody who was there, of the presses somebody judged: { $share }.
patterns-slips-do-not-show = Of simulated animals that never slipped, one in ten was told of some slips. And this does not show which presses to leave unanswered: an animal that means two words whose buttons lie side by side looks like one that slips. Read a large share as “look at the board”: lay those two farther apart.
patterns-hours = Likes by the hour
patterns-hours-cannot = Whether what { $name } likes depends on the hour cannot be told yet: { $why } ({ $n ->
    [one] { $n } choice
   *[other] { $n } choices
} in { $sittings ->
    [one] { $sittings } sitting
   *[other] { $sittings } sittings
} of the last { $days } days).
patterns-hours-matter = What { $name } likes depends on the hour ({ $p }, { $n ->
    [one] { $n } choice
   *[other] { $n } choices
} in { $sittings ->
    [one] { $sittings } sitting
   *[other] { $sittings } sittings
}). Offer first what is liked best then: { $best }.
patterns-hours-no-sign = No sign that what { $name } likes depends on the hour ({ $p }, { $n ->
    [one] { $n } choice
   *[other] { $n } choices
} in { $sittings ->
    [one] { $sittings } sitting
   *[other] { $sittings } sittings
}); that does not show that it does not.
patterns-best-at = { $what } at { $hour }
patterns-at-hour = Probability of being taken rather than a thing of average liking at that hour:
patterns-named-figure = { $what }: { $figure }
patterns-hours-do-not-show = This does not show why: meals, walks and who is at home follow the clock too. One rise and fall a day is looked for, no other shape. At a meal hour a liking for food may be hunger.
patterns-how-computed = How these figures are computed
