today-title = Today with { $name }
today-now = Now
today-start = Start
today-why = Why? ({ $sure })
today-why-plan = Why this much?
today-pause-why = { $a_day ->
    [one] Usually one session a day here
   *[other] Usually { $a_day } sessions a day here
}, or common practice where there are few; two hours of rest between them (common practice, no source).
today-care = Take care:
today-take-care = { $care } { $what }
today-change-our-mind = We’d change our mind if:
today-records = the records
today-also = What also holds:
today-alike = “{ $word }” sounds much like { $others }. A different word for one of them is easier to tell apart.
today-alike-first = “{ $word }” sounds much like { $others } and was not shown yet: choose another word first.
today-best-time = Best time so far: { $from } to { $to }. Joined then: { $joined }.
today-shown-today = “{ $word }” { $times ->
    [0] has not been shown yet today.
    [one] was shown once today.
   *[other] was shown { $times } times today.
}
today-words = Words
today-more-words = { $count ->
    [one] One more word: { $words }
   *[other] { $count } more words: { $words }
}
today-many-more-words = { $count } more words
today-trend = Own presses in the last eight weeks: { $counts }
today-evidence = What presses of “{ $word }” tell
today-lately = In the last seven days
today-later = Later
today-joining = How often sessions were joined in four weeks
today-pieces = { $count } × “{ $name }”
today-food-left-pieces = Food left today: { $pieces }
today-food-left = Food rewards left today: { $left } of { $of }.
today-food-over = No food rewards left today: { $over } over { $of }
today-feeds = { $count ->
    [one] Given once so far.
   *[other] Given { $count } times so far.
}
today-given = Given so far: { $kcal }.
today-energy-unknown = { $name }: the energy of a piece is not known.
today-how-computed = How this is computed
today-whole-day = The whole day: { $kcal }, { $basis }.
today-individuals = Individuals of this weight: about { $low } to { $high }.
today-do-rewards = Add what may be wanted
today-do-likes = To the likes tests
today-do-words = Choose words
today-do-allowance = Settle the food
today-do-card = Open the card
today-do-heard = What was heard
today-do-rules = House rules
today-do-days = Days and hours
today-do-places = Where the buttons are
today-do-board = To the board
today-do-stage = Change the stage
today-do-checks = To the checks
today-session = { $minutes ->
    [one] One minute at most. Show:
   *[other] { $minutes } minutes at most. Show:
}
today-planned = { $planned }. { $hint }
today-hint-for = For { $words }: { $hint }
today-rests-until = No session until { $until }.
today-ask-keeper = Something is still to be set up for { $name }. Ask a keeper of the home what to do today.
today-ask-card = Its card is for a keeper to fill in
today-ask-food = How much food { $name } may have in a day is not settled here. Ask a keeper of the home before you give any.
today-answer-only = Answer what { $name } presses.
today-without-agreed = Without what was agreed: { $step }. { $why }
