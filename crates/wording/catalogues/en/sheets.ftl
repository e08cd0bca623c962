# Sheets to print, as pages and as PDF. Figures come written with their interval and count.
sheets-title = Sheets
sheets-intro = Each prints on A4 or Letter, without the menus, and comes as a PDF that screen readers can read.
sheets-fridge = For the fridge
sheets-fridge-what = What each word means, how everyone answers it, what everyone says for “not now”, and the rules of the house.
sheets-rules = House rules
sheets-buttons = For the buttons
sheets-buttons-what = Plain labels with the word.
sheets-labels = Labels
sheets-animal-what = For the family, a veterinarian or a behaviour professional.
sheets-progress = Progress report
sheets-likes-of = What { $name } likes
sheets-print = Print
sheets-print-menu = or print from the browser’s menu
sheets-all = All sheets
sheets-pdf-a4 = PDF, A4
sheets-pdf-letter = PDF, US Letter
sheets-foot = Sayso · { $home } · { $day }
sheets-foot-page = Sayso · { $home } · { $day } · page { $page } of { $of }

sheets-period = Period
sheets-days = { $days ->
    [one] One day
   *[other] { $days } days
}
sheets-progress-of = Progress of { $name }
sheets-not-a-diagnosis = Not a diagnosis.
sheets-own-records = A home’s own records, counted by a program. Nobody checked them. They cannot tell what an animal understands, feels or suffers from; for that ask a veterinarian or a qualified behaviour professional.
sheets-animal = Animal
sheets-species = { $species ->
    [dog] dog
    [cat] cat
    [parrot] parrot
    [rabbit] rabbit
   *[other] another species
}
sheets-age-weeks = { $weeks ->
    [one] one week old
   *[other] { $weeks } weeks old
}
sheets-age-months = { $months ->
    [one] one month old
   *[other] { $months } months old
}
sheets-age-years = { $years ->
    [one] one year old
   *[other] { $years } years old
}
sheets-age-about = about { $age }
sheets-from-to = { $first } to { $last } ({ $zone })
sheets-printed-by = Printed by
sheets-limits = Limits
sheets-health = Health cautions

sheets-in-short = In short
sheets-noted = Days with anything noted: { $noted } of { $days }. What nobody noted is not in here.
sheets-joined = Sessions { $name } joined: { $share }.
sheets-counts = Showings by people: { $showings }. { $name }’s own presses: { $presses }.
sheets-welfare = Welfare:

sheets-words = Words
sheets-none-taught = No word is taught yet.
sheets-since = since the beginning; own presses in the period above
sheets-word = Word
sheets-stage = Stage
sheets-shown = Shown
sheets-to-giving = Press to giving
sheets-when-invited = Pressed when invited and wanting it
sheets-own-presses = Own presses
sheets-presses-rest = Besides, own presses in the period of words that { $name } is not taught now: { $words }.
sheets-presses-of = “{ $word }” { $presses }
sheets-n = { $n }
sheets-n-of = (from { $n })
sheets-stages = Stages: prepare, show (people press and give), invite (an offer, a wait, and the thing in any case), converse ({ $name } presses unasked). Not pressing is never counted as not understanding.

sheets-showings-a-week = Showings a week
sheets-joined-by-week = Sessions joined, by week
sheets-week-from = week from { $day }
sheets-axis-week = week from
sheets-axis-showings = showings
sheets-axis-joined = joined
sheets-axis-pressed = pressed
sheets-told = { $what }: { $figure }

sheets-answered = How { $name }’s own presses were answered
sheets-given = Given: { $share }.
sheets-given-partly = Given: { $share }, partly: { $partly }.
sheets-not-now = Not now: { $declined }, another thing: { $other }.
sheets-missed = Missed, or no answer noted: { $share }.

sheets-body-language = Body language noted
sheets-signs = Taking part: { $joining }. Mild signs of stress: { $mild }. Strong signs: { $strong }.
sheets-strong-sign = { $day }: { $sign }
sheets-signs-note = As seen by the people there. A single sign means little; read the whole body and the situation.

sheets-food = Food rewards
sheets-reckoned = Reckoned with { $day } kcal a day, of which rewards at most { $rewards } kcal. Basis: { $basis }.
sheets-reckoned-range = Reckoned with { $day } kcal a day (individuals: { $low } to { $high }), of which rewards at most { $rewards } kcal. Basis: { $basis }.
sheets-no-allowance = No allowance is computed: { $why }.
sheets-why-unknown = it is not known

sheets-likes = Likes
sheets-last-tested = Last tested on { $day }.
sheets-not-tested = Not tested enough to say anything ({ $trials ->
    [0] no trial
    [one] one trial
   *[other] { $trials } trials
}).

sheets-not-known = What is not known
sheets-open-no-check = Whether { $name } understands any word: no planned check was held. Pressing can also come from habit of place, from cues people give without knowing, or from what paid off before.
sheets-open-checks = Whether { $name } understands a word is not settled by this sheet: { $checks ->
    [one] one trial
   *[other] { $checks } trials
} of planned checks, told on the Evidence page.
sheets-open-word = How “{ $word }” is answered when invited.
sheets-open-little = Little about “{ $word }” when invited ({ $n ->
    [one] once
   *[other] { $n } times
}).
sheets-open-sessions = How gladly { $name } joins: no session was noted in this period.
sheets-open-likes = What { $name } likes best: no likes test was held.

sheets-nothing-tested = Nothing has been tested yet.
sheets-trials = From { $trials ->
    [one] one trial
   *[other] { $trials } trials
}, of these without a choice: { $none }.
sheets-trials-last = From { $trials ->
    [one] one trial
   *[other] { $trials } trials
}, the last on { $day }, of these without a choice: { $none }.
sheets-test-again = Test again:
sheets-over-middling = Probability of being taken over a thing of average liking
sheets-chance = probability
sheets-consistency = { $circular ->
    [0] The choices agree with each other: no circle such as A over B, B over C, C over A
    [one] The choices hold one circle such as A over B, B over C, C over A, of at most { $most }
   *[other] The choices hold { $circular } circles such as A over B, B over C, C over A, of at most { $most }
} ({ $items } things compared, two at a time; consistency { $zeta }, where 1 is without a circle).
sheets-side = Taken from { $name }’s left: { $share }.
sheets-scores = Scores by kind of test
sheets-thing = Thing
sheets-score = { $format ->
    [single] One at a time: share of offers { $name } came to
    [paired] Two at a time: share of offers in which it was taken
    [multiple] All in a row: share of offers in which it was taken
   *[free_access] Stopwatch: share of the time busy with it
}
sheets-likes-note = Likes change with hunger, hour and day; this is what { $name } chose when asked. A line is the 95% interval; “from” counts the offers.
sheets-never-give = Never give this to { $name }.
sheets-eaten = { $thing }: { $why }. Eaten already? Call a veterinarian now.
sheets-care = Care, for { $name }:

sheets-none-on-board = No word is on the board yet.
sheets-button = Button
sheets-means = Means
sheets-answers = Everyone answers
sheets-not-now-said = Not now
sheets-ends-session = ends a session
sheets-for-all = all
sheets-every-press = Answer every press, also one that looks like a stumble.
sheets-come-and-go = Every animal may come and go; never call or lure one to the board.
sheets-batteries = Close battery covers with their screws. A swallowed or bitten battery is an emergency. An animal: call a veterinarian at once. A child who swallowed a button cell or put one in the nose or ear: go to the emergency department at once.
sheets-of-animal = { $name }:

sheets-size = Size
sheets-size-of = { $size ->
    [small] small, { $width } × { $height } mm
    [middle] middle, { $width } × { $height } mm
   *[large] large, { $width } × { $height } mm
}
sheets-glue = Labels help people. Small torn-off parts can be swallowed: glue them flat, and use none where an animal chews. Print at 100%, without fitting to the page.

sheets-written = Written: { $file } ({ $pages ->
    [one] one page
   *[other] { $pages } pages
}).
sheets-no-animal-needed = The sheet “{ $sheet }” is about the whole home: leave out --animal.
sheets-many-animals = Several animals live here: say which by --animal, one of { $names }.
sheets-no-animal = No animal lives here yet: add one on the page People.
sheets-no-check = { $name } has no such check: plan one on the page Checks.
sheets-picture-unread = The picture of “{ $word }” cannot be read: the sheet goes without it. Take it anew on the word’s card.
sheets-no-typeface = the typeface cannot be read
sheets-pdf-refused = the PDF could not be written: { $why }
