days-title = Days
days-how-many = How many days
days-length = { $n } days
days-length-wrong = days must be one of { $allowed }, not { $given }.
days-calendar = Weeks of { $name }
days-week-of = Week of { $day }
days-week = Week
days-cell = { $day }: { $presses ->
    [one] { $presses } own press
   *[other] { $presses } own presses
}{ $sessions ->
    [0] , no session
   *[other] , sessions joined: { $joined } of { $sessions }
}{ $signs ->
    [none] { "" }
    [mild] , mild signs of stress
   *[other] , strong sign of stress
}
days-legend = Number: own presses. ● session joined, ○ session held, not joined. ! mild signs of stress, !! a strong sign. A day opens its log.
days-earlier = Earlier weeks
days-side-by-side = Side by side
days-mini-presses = Own presses
days-mini-showings = Showings
days-mini-joined = Sessions joined, by week
days-mini-delay = Press to giving, by week
days-mini-hours = By hour
days-mini-weekdays = By day of the week
days-told-presses = { $n } in { $days } days
days-told-showings = { $n } in { $days } days{ $without ->
    [0] { "" }
   *[other] , { $without } without any
}
days-told-joined = { $joined } of { $sessions }
days-no-sessions = no session
days-told-delay = { $seconds } in the last seven days
days-too-few = too few to say
days-stands-out = more: { $which }
days-quiet = fewer: { $which }
days-none-stands-out = none stands out
days-figures-hours = Own presses by hour
days-figures-weekdays = Own presses by day of the week
days-hour-axis = hour of the day
days-weekday-axis = day of the week
days-presses-a-day = presses a day
days-no-presses = No own presses in this time.
days-too-few-presses = Too few own presses to compare ({ $n ->
    [one] { $n } press
   *[other] { $n } presses
}).
days-most = Most: { $which }, { $rate }; { $n } own presses in all.
days-outstanding = { $which } stands out: { $ratio } times the others (adjusted { $p }).
days-asleep = Hours in which nobody ever noted a press are taken for sleep or absence: they are no finding, and no other hour is compared with them.
days-trust = { $bursts ->
    [yes] Presses come in bursts, or on good and bad days: counts vary { $times } times as much as those of single presses would. These intervals, and what is said to stand out, allow for it.
   *[other] Presses come singly: counts vary { $times } times as much as chance alone would have it.
}
days-weeks-by-week = Week by week
days-joined-told = Sessions joined in the last seven days: { $share }.
days-sessions-joined = Sessions joined
days-joined = joined
days-weeks-axis = weeks before now
days-delay = From press to giving
days-delay-told = Press to giving, middle value of the last seven days: { $seconds }.
days-seconds = seconds
days-when-invited = Time to press when invited
days-answers = Answers to own presses
days-answer = { $answer ->
    [given] Given
    [partly] Partly
    [declined] Not now
    [alternative] Another thing offered
   *[other] Missed, or no answer recorded
}
days-day-by-day = Day by day
days-day = Day
days-shown = Shown
days-pressed = Pressed unasked
days-zone = Days and hours are those of { $zone }. { $link }.
days-all-events = All events
days-patterns = Patterns: do presses grow or fade, what follows what, slips, likes by the hour
days-readiness = Readiness
days-readiness-told = In the last session { $name } was most likely { $state ->
    [away] away
    [warming] warming up
   *[other] ready
}; probability of “ready”: { $share }.
days-readiness-open = Whether { $name } was ready in the last session cannot be told yet; probability of “ready”: { $share }.
days-readiness-title = Probability of being ready, by session
days-readiness-from = From joining, time to come and signs together (a hidden-state model).
days-session-axis = session, oldest first
days-ready = ready
days-demand = Demand
days-no-demand = No own presses in this time, so nothing can be said about demand.
days-stretches = Stretches in which { $name } pressed at a steady rate:
days-stretch = { $first } to { $last }: { $rate }
days-bursts = Bursts of the last four weeks, faster than usual.
days-burst-may-come = When answers change, a burst of presses may come first: in 24% of cases in people, 12% where something else was offered (Lerman & Iwata 1995).
days-burst = { $when }: { $presses } presses in { $seconds }
days-after-answers = What followed answers
days-after-each = After each kind of answer
days-answer-head = Answer
days-pressed-again = pressed again within ten minutes
days-against-given = next press against “given”
days-times-as-fast = { $times } times as fast
days-unvoiced = Asked for without a button, a week:
days-named-figure = { $what }: { $figure }
days-next-words = Words that could come next
days-hold = Words of the board in use: { $used } of { $all }. Let those grow before adding more (common practice, no source).
days-next-gap = { $word }: asked without a button { $asked ->
    [one] once
   *[other] { $asked } times
}, { $rate } a week ({ $low } to { $high })
days-next-demand = { $word }: { $rate } presses an hour ({ $low } to { $high }, { $n ->
    [one] { $n } press
   *[other] { $n } presses
}) and no word closes a session
days-next-arousal = { $word }: { $ended } of { $of } sessions ended in high arousal ({ $low } to { $high }) and no word closes them
days-zone-only = Days and hours are those of { $zone }.
