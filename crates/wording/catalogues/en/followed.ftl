# Over all of a coach's homes: what followed when a change was agreed. $change is a kind of change, written.
followed-title = Does advice help?
followed-how = What followed when a change was agreed with you: own presses on days on which somebody watched, in { $days } days after it against { $days } before. Each home counts once, by its first such change.
followed-caution = Nobody drew lots here. A change is proposed when things go badly, and what goes badly often gets better by itself. So these shares do not show that a change did it.
followed-change = Change
followed-more = Pressed more after it
followed-early = Too early or too little written
followed-homes = { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
}
followed-share = { $share } ({ $low } to { $high }), { $more } of { $homes } homes
followed-share-early = Too early to say: { $more } of { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
}
followed-none = Nothing that changes something was agreed with you yet.
followed-nothing = For comparison, homes where nothing was agreed in eight weeks; the latest four weeks against the four before. Pressed more: { $share }.
followed-plan = { $way ->
    [show] Plan: show
    [offer_in_view] Plan: invite, the thing in view
    [ask_and_point] Plan: ask and point
    [ask_between_two] Plan: “this or that”
   *[any] Plan: as it fits
}
followed-stage = Stage: { $stage }
followed-drawn-title = Drawn by lot
followed-drawn-how = Here lots decided when the change began. Each trial is judged at its end against all orders that might have been drawn. Of twenty changes that do nothing, about one looks as if it did something. Trials beside another one that measures the same are counted apart.
followed-drawn = Change drawn by lot
followed-came-out = How it came out
followed-outcome = { $outcome ->
    [going] going on: { $count }
    [stopped] stopped: { $count }
    [rare] a difference rare by chance: { $count }
    [may_be_chance] may well be chance: { $count }
    [too_few_orders] too small to tell: { $count }
   *[untested] ended without a test: { $count }
}
followed-beside = Not counted above, as another trial measured the same on some of the same days: { $count ->
    [one] { $count } trial
   *[other] { $count } trials
} ({ $outcomes }). Neither can be told apart.
followed-was-beside = beside another trial
followed-none-alone = none alone yet
followed-no-drawn = No trial yet. What you propose under “A change to try” can be drawn by lot by the home.
followed-each = Each trial
followed-in-home = { $animal }, { $home }
