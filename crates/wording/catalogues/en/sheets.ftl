# Sheets to print. $name is the animal's.
sheets-title = Sheets
sheets-intro = Each prints on A4 or Letter, without the menus.
sheets-print = Print
sheets-print-menu = or print from the browser’s menu
sheets-all = All sheets
sheets-fridge = For the fridge
sheets-fridge-what = What each word means, how everyone answers it, what everyone says for “not now”, and the rules of the house.
sheets-rules = House rules
sheets-buttons = For the buttons
sheets-buttons-what = Plain labels with the word.
sheets-labels = Labels
sheets-report-for = For the family, a veterinarian or a behaviour professional.
sheets-report = Progress report
sheets-likes = What { $name } likes

# Labels.
sheets-size = Size
sheets-size-of = { $size ->
    [small] small, 40 × 25 mm
    [large] large, 90 × 60 mm
   *[middle] middle, 60 × 40 mm
}
sheets-no-word = No word is on the board yet.
sheets-labels-note = Labels help people. Small torn-off parts can be swallowed: glue them flat, and use none where an animal chews.

# House rules.
sheets-button = Button
sheets-means = Means
sheets-everyone-answers = Everyone answers
sheets-not-now = Not now
sheets-ends-session = ends a session
sheets-for-all = all
sheets-answer-every-press = Answer every press, also one that looks like a stumble.
sheets-may-come-and-go = { $name } may come and go; never call or lure { $name } to the board.
sheets-any-may-come-and-go = Every animal may come and go; never call or lure one to the board.
sheets-batteries = Close battery covers with their screws. { $emergency }
sheets-of-animal = { $name }:

# Likes.
sheets-nothing-tested = Nothing has been tested yet.
sheets-tested = { $trials ->
    [one] From one trial, on { $day }; without a choice: { $none }.
   *[other] From { $trials } trials, the last on { $day }; without a choice: { $none }.
}
sheets-test-again = Test again:
sheets-likes-note = Likes change with hunger, hour and day; this is what { $name } chose when asked. A line is the 95% interval; the count is of offers.

# Progress.
sheets-progress = Progress of { $name }
sheets-period = Period
sheets-days = { $days ->
    [one] One day
   *[other] { $days } days
}
sheets-no-diagnosis = { $lead } A household’s own records, counted by a program. Nobody checked them. They cannot tell what an animal understands, feels or suffers from; for that ask a veterinarian or a qualified behaviour professional.
sheets-no-diagnosis-lead = Not a diagnosis.
sheets-animal = Animal
sheets-about = about { $age }
sheets-dates = { $from } to { $to } ({ $zone })
sheets-printed-by = Printed by
sheets-limits = Limits
sheets-cautions = Health cautions
sheets-in-short = In short
sheets-days-noted = Days with anything noted: { $days } of { $all }. What nobody noted is not in here.
sheets-joined = Sessions { $name } joined: { $share }.
sheets-presses = Showings by people: { $showings }. Own presses: { $presses }.
sheets-welfare = Welfare:
sheets-words = Words
sheets-none-taught = No word is taught yet.
sheets-words-caption = since the beginning; own presses in the last 28 days
sheets-word = Word
sheets-stage = Stage
sheets-figures-say = figures: { $stage }
sheets-shown = Shown
sheets-press-to-giving = Press to giving
sheets-pressed = Pressed when invited and wanting it
sheets-own-presses = Own presses
sheets-times = { $times ->
    [one] once
   *[other] { $times } times
}
sheets-stages = Stages: prepare, show (people press and give), invite (an offer, a wait, and the thing in any case), converse ({ $name } presses unasked). No press is never counted as no understanding.
sheets-showings-a-week = Showings a week
sheets-week-from = week from
sheets-showings = showings
sheets-week-of = week from { $day }
sheets-joined-by-week = Sessions joined, by week
sheets-axis-joined = joined
sheets-axis-pressed = pressed
sheets-answered = How { $name }’s own presses were answered
sheets-given = Given: { $share }.
sheets-given-partly = Given: { $share }, partly: { $partly }.
sheets-declined = Not now: { $share }, another thing: { $other }.
sheets-missed = Missed, or no answer noted: { $share }.
sheets-signs = Body language noted
sheets-signs-counts = Taking part: { $joining }. Mild signs of stress: { $mild }. Strong signs: { $strong }.
sheets-sign-of = { $day }: { $sign }
sheets-signs-note = As seen by the people there. A single sign means little; read the whole body and the situation.
sheets-food = Food rewards
sheets-food-budget = Reckoned with { $day } a day, of which rewards at most { $budget }. Basis: { $basis }.
sheets-food-budget-range = Reckoned with { $day } a day (individuals: { $low } to { $high }), of which rewards at most { $budget }. Basis: { $basis }.
sheets-food-none = No allowance is computed: { $why }.
sheets-food-unknown = it is not known
sheets-likes-heading = Likes
sheets-last-tested = Last tested on { $day }.
sheets-not-tested-enough = { $trials ->
    [one] Not tested enough to say anything (one trial).
   *[other] Not tested enough to say anything ({ $trials } trials).
}
sheets-not-known = What is not known
sheets-no-check = Whether { $name } understands any word: no planned check was held. Pressing can also come from habit of place, from cues people give without knowing, or from what paid off before.
sheets-check-elsewhere = { $trials ->
    [one] Whether { $name } understands a word is not settled by this sheet: the one trial of planned checks is told on the Evidence page.
   *[other] Whether { $name } understands a word is not settled by this sheet: { $trials } trials of planned checks are told on the Evidence page.
}
sheets-not-invited = How “{ $word }” is answered when invited: never invited and wanted so far.
sheets-little-invited = { $times ->
    [one] Little about “{ $word }” when invited: one time.
   *[other] Little about “{ $word }” when invited: { $times } times.
}
sheets-no-session = How gladly { $name } joins: no session was noted in this period.
sheets-no-likes-test = What { $name } likes best: no likes test was held.
