# Trials of a change. $name is the animal's; $question, $design, $measure, $unit and $reason are names of the plan.
designs-title = Does a change help?
designs-no-such = This notebook knows no such trial of this animal.
designs-cannot-draw = The order of this trial cannot be drawn from its plan: { $why }.
designs-design = { $design ->
    [reversal] Back and forth, some days each (reversal, ABAB)
    [multiple_baseline] One after the other (multiple baseline)
    [alternating_treatments] In quick turn (alternating treatments)
   *[changing_criterion] Step by step (changing criterion)
}
designs-from-a-day = From a drawn day on (AB, the start drawn)
designs-question = { $question ->
    [quieter_button] Does a quieter button help?
    [new_place] Does a new place help?
    [faster_delivery] Does a faster delivery help?
    [another_word] Does another word help?
   *[other] Does a change help?
}
designs-question-own = Does this help: { $label }?
designs-question-word = Does another word help: “{ $label }”?
designs-with = { $question ->
    [quieter_button] with the quieter button
    [new_place] with the new place
    [faster_delivery] with the faster delivery
    [another_word] with the other word
   *[other] with the change
}
designs-with-own = with this: { $label }
designs-as-usual = as usual
designs-measure = { $measure ->
    [own_presses] Own presses
    [joined_share] Share of sessions joined
    [time_to_press] Seconds to press when invited and wanted
    [pressed_share] Share pressed when invited and wanted
    [stress_signs] Signs of stress
   *[delivery_delay] Seconds from press to delivery
}
designs-unit = { $unit ->
    [session] session
   *[day] day
}
designs-meets = meets the standards
designs-meets-with-reservations = meets the standards with reservations
designs-does-not-meet = does not meet the standards
designs-phase-usual = usual
designs-phase-usual-turn = usual { $turn }
designs-phase-changed = changed
designs-phase-changed-turn = changed { $turn }
designs-phase-goal = goal { $seconds } s
designs-changed-against-usual = changed against usual
designs-one-after-other = { $after } after { $before }
designs-not-drawn-before = the order was not drawn before the first point, or the plan was changed later
designs-was-stopped = the trial was stopped before its end
designs-not-finished = the trial is not finished
designs-too-short = { $points ->
    [one] one point cannot hold this design; it needs at least { $needed }
   *[other] { $points } points cannot hold this design; it needs at least { $needed }
}
designs-empty-condition = a condition has no observation yet, so there is nothing to compare
designs-no-figure = no figure for this phase: too few points, or all at one time
designs-other-condition = { $points ->
    [one] 1 point with another condition than the one drawn; the test goes by the draw.
   *[other] { $points } points with another condition than the one drawn; the test goes by the draw.
}
designs-drawn-late = The order was not drawn before the first point, or the plan was changed later.
designs-more-than = more than { $number }
designs-percentage-points = { $value } percentage points
designs-a-session = { $value } a session

# What may be said.
designs-not-yet = It begins on { $day }; until then everything is as usual.
designs-running = Points over: { $done } of { $points }. Nothing is claimed before the end.
designs-strong-sign = Stopped: a strong sign of stress was seen on { $day } while the change was in force. Everything goes back to the usual; nothing is claimed for the change.
designs-stopped = { $reason ->
    [strong_sign] Stopped on { $day }: a strong sign of stress. Nothing is tested, for a trial that may end at any time can end while ahead.
    [not_good] Stopped on { $day }: the change did no good. Nothing is tested, for a trial that may end at any time can end while ahead.
    [not_kept] Stopped on { $day }: it could not be kept up. Nothing is tested, for a trial that may end at any time can end while ahead.
   *[other] Stopped on { $day }: another reason. Nothing is tested, for a trial that may end at any time can end while ahead.
}
designs-untested = Finished, but nothing can be tested: { $why }. The figures only describe these points.
designs-seen = { $measure }: { $way ->
    [higher] higher by { $amount }
   *[lower] lower by { $amount }
    } { $with } ({ $usual } usual and { $changed } changed points). With the order drawn by chance, a difference this large comes up in { $exact ->
    [yes] { $extreme } of { $orders } possible orders ({ $p }).
   *[no] { $extreme } of { $orders } orders drawn anew ({ $p }).
}
designs-seen-goal = { $points ->
    [one] People came within { $seconds } s of the goal (one point).
   *[other] People came within { $seconds } s of the goal on average ({ $points } points).
    } With the steps drawn by chance, a fit this close comes up in { $exact ->
    [yes] { $extreme } of { $orders } possible orders ({ $p }).
   *[no] { $extreme } of { $orders } orders drawn anew ({ $p }).
}
designs-too-few-orders = { $orders ->
    [one] With only one possible order this trial could not tell any effect from chance.
   *[other] With only { $orders } possible orders this trial could not tell any effect from chance.
}
designs-rare = That would be rare if the change made no difference: it speaks for one, with { $name }, in these weeks.
designs-rare-goals = That would be rare if the goals made no difference: it speaks for one, with { $name }, in these weeks.
designs-may-be-chance = So it may well be chance. That does not show that the change does nothing.
designs-weak = The design itself is too small by the standards of the field; take it as a hint.
designs-change-again = The same trial again, planned anew, by other people or in other weeks.
designs-change-gentler = Nothing from this trial; a gentler change, planned anew.
designs-change-points = The points still to come.
designs-change-by-hand = Presses heard by a microphone are harder to hear from a quieter button: log them by hand in this trial.

# The list.
designs-intro = A quieter button, a new place, a faster delivery: does it help { $name }? A trial (a single-case design, in the trade) lets chance decide when the change is in force, and compares.
designs-none-today = No new trial today: strong signs of stress were noted. Give space; everything as usual.
designs-plan = Plan a trial
designs-so-far = Trials so far
designs-none = None yet.
designs-open = Open
designs-undrawable = cannot be drawn
designs-begins = begins on { $day }
designs-going-on = going on
designs-finished = finished
designs-stopped-on = stopped on { $day }
designs-ended-by-sign = ended by a strong sign of stress on { $day }
designs-checks = Planned checks of understanding ask another question: { $link }.
designs-checks-link = Checks
designs-how = How trials are drawn and tested

# One trial.
designs-kindly = { $lead } Only the surroundings and what people do are changed: { $name } may leave at any time, nothing is held back that { $name } asks for, and no day needs a press. A strong sign of stress under the change ends the trial. Try nothing that hurts, frightens or withholds; ask a veterinarian or a qualified behaviour professional where you are not sure.
designs-kindly-lead = A trial is for { $name }, not the other way round.
designs-not-as-planned = Not as planned:
designs-the-plan = The plan
designs-all = All trials
designs-today = Today
designs-of-lane = { $lane }:
designs-rest = Rest today, everything as usual: strong signs of stress were noted. Give space and do not lure back.
designs-everything-usual = Everything as usual.
designs-now = { $unit ->
    [session] This or the next session (point { $point } of { $points }): { $what }
   *[day] Today (point { $point } of { $points }): { $what }
}
designs-deliver-within = deliver within { $seconds } s
designs-later-hidden = Later days are not shown on purpose: knowing them changes what people do. Answer every press as always.
designs-fact-design = Design
designs-fact-measured = Measured
designs-measured = { $unit ->
    [session] { $measure }, each session: { $words }
   *[day] { $measure }, each day: { $words }
}
designs-all-words = all words
designs-fact-expected = Expected
designs-expected = { $expected ->
    [more] more
    [less] less
   *[either] either way
}
designs-fact-first = First day, points
designs-first = { $points ->
    [one] { $day }, one point
   *[other] { $day }, { $points } points
}
designs-fact-orders = Possible orders
designs-planned-on = Planned on { $day }; the order follows from a seed drawn then.
designs-other-in-force = Something else was in force than drawn?
designs-this-trial = this trial
designs-field-lane = Where
designs-field-point = Point
designs-field-point-hint = counted from 1
designs-field-in-force = In force was
designs-with-the-change = with the change
designs-field-because = Why
designs-may-be-left-out = may be left out
designs-note-it = Note it
designs-honest-note = The test goes by the order drawn, so an honest note never spoils it; the page says how many points differed.
designs-stop = Stop
designs-reason = { $reason ->
    [strong_sign] a strong sign of stress
    [not_good] the change does no good
    [not_kept] it cannot be kept up
   *[other] another reason
}
designs-field-in-words = In words
designs-stop-now = Stop this trial now
designs-stop-right = Stopping is always right when in doubt. Put everything back as it was; what was logged is kept.

# Planning.
designs-plan-title = Plan a trial of a change
designs-not-today = Not today: strong signs of stress were noted. Give { $name } space, and plan on a calm day.
designs-back = Back to the trials
designs-why = A change and a better week often meet by accident. When chance decides the days on which the change is in force, the difference can be held against all orders that might have been drawn.
designs-change = { $question ->
    [quieter_button] A quieter button
    [new_place] A new place
    [faster_delivery] A faster delivery
    [another_word] Another word
   *[other] Something else
}
designs-proposed-for = proposed: { $design }
designs-the-proposed = the proposed one
designs-expect = { $expected ->
    [more] more of it
    [less] less of it
   *[either] either way
}
designs-expect-either-hint = asks for more points
designs-point-unit = { $unit ->
    [session] a session
   *[day] a day
}
designs-point-session-hint = showing or inviting
designs-field-question = What is changed
designs-field-question-hint = one thing only; all else stays as it is
designs-field-label = Something else: what
designs-field-label-hint = only for “something else”
designs-field-measure = What is measured
designs-field-measure-hint = choose before it begins; it is read from what you log anyway
designs-field-expected = What you expect of it
designs-field-expected-hint = said now, so that the result cannot choose
designs-field-words = Words
designs-field-words-hint = none ticked: all. One after the other: each word ticked is a series; 3 meet the standards
designs-field-unit = One point is
designs-field-first = First day
designs-field-first-hint = tomorrow or later, for days
designs-field-points = Points in all
designs-field-points-hint = days or sessions; at most 120
designs-numbers = Design and its numbers
designs-field-design = Design
designs-field-least = Least points a phase
designs-field-least-hint = 5 meet the standards, 3 with reservations
designs-field-phases = Phases
designs-field-phases-hint = back and forth, and step by step: 4 or more
designs-field-apart = Points between two changes
designs-field-apart-hint = one after the other: at least so many
designs-field-animals = Animals
designs-field-animals-hint = one after the other over animals instead of words
designs-field-criteria = Goals for people, in seconds
designs-field-criteria-hint = step by step: one a phase after the first, such as 6; 4; 2.5. Goals are never set for an animal
designs-see = See what it can show
designs-proposed = Proposed: { $design }
designs-your-choice = Your choice: { $design }
designs-because = { $question ->
    [quieter_button] Because the sound can be turned down and up again, and an animal needs some days to get used to either.
    [new_place] Because moving a button back and forth would confuse: each word moves once, one after the other.
    [faster_delivery] Because people can deliver at once on one day and as always on the next, and the effect comes and goes quickly.
    [another_word] Because a word stays once it is there: take two phases, so that only its first day is drawn.
   *[other] Because it is right where the change can be taken back; where it cannot, take one after the other.
}
designs-usual-here = Usual for this question: { $design }.
designs-undrawn = This cannot be drawn: { $why }.
designs-orders = { $orders } possible orders; one is drawn by chance when you plan it. You see only the condition of the day.
designs-smallest-p = The smallest p it can reach is { $p }.
designs-fewer-than-20 = Fewer than 20 orders can never come below { $level }: take more points or fewer in each phase.
designs-verdict-ahead = With every point there it { $verdict } ({ $chances ->
    [0] no chance
    [one] one chance
   *[other] { $chances } chances
} to show an effect, at least { $fewest ->
    [one] one point
   *[other] { $fewest } points
} each; Kratochwill et al. 2010).
designs-plan-and-draw = Plan it and draw the order

# What came out.
designs-figures = Figures so far
designs-not-finished-yet = Not finished: nothing is claimed from these, and looking tempts to stop. The test is made at the end.
designs-came-out = What came out
designs-would-change = What would change it: { $what }
designs-about-one = This is about { $name } alone. It says nothing of other animals.
designs-no-test = No test: { $why }.
designs-difference = Difference, changed less usual
designs-difference-none = { $points ->
    [one] { $value } (no 95% interval: too few orders; one point)
   *[other] { $value } (no 95% interval: too few orders; { $points } points)
}
designs-difference-interval = { $points ->
    [one] { $value } (95% interval { $low } to { $high }, one point)
   *[other] { $value } (95% interval { $low } to { $high }, { $points } points)
}
designs-open-end = open
designs-distance = Mean distance from the goal
designs-extreme = Orders as extreme
designs-extreme-of = { $exact ->
    [yes] { $extreme } of { $orders }, all counted
   *[no] { $extreme } of { $orders }, drawn anew
}
designs-orders-left-out = Orders left out
designs-orders-undefined = { $orders } (missing points would have left a condition empty)
designs-verdict = The design { $verdict }: { $chances ->
    [0] no chance
    [one] one chance
   *[other] { $chances } chances
} to show an effect (3 wanted), at least { $fewest ->
    [0] no observed point
    [one] one observed point
   *[other] { $fewest } observed points
} each (5 wanted, 3 with reservations; Kratochwill et al. 2010).
designs-missing = { $missing ->
    [one] 1 of { $points } points over have no value: nothing was logged that this measure could be read from. It is left out, not counted as zero.
   *[other] { $missing } of { $points } points over have no value: nothing was logged that this measure could be read from. They are left out, not counted as zero.
}
designs-no-point = No point yet.
designs-chart = { $unit ->
    [session] { $measure }, by session
   *[day] { $measure }, by day
}
designs-chart-told = { $question } { $phases }.
designs-chart-read = Hollow points: as usual (A). Filled points: with the change (B). Dashed lines: the phase changed. Gaps: missing.
designs-mean = mean: { $mean }
designs-independent = Intervals of means, NAP, level and trend take points as independent, which days of one animal are not quite. The test above does not rest on that.
designs-times-a-week = celeration × { $factor } a week
designs-divided-a-week = celeration ÷ { $factor } a week
designs-weekly = { $turn } (90% interval × { $low } to × { $high }, n = { $n })
designs-weekly-no-interval = { $turn } (no interval yet, n = { $n })
designs-nap = NAP (pairs in which the change did better)
designs-nap-value = { $share } (90% interval { $low } to { $high }, n = { $usual } and { $changed })
designs-tau = Tau-U (less the trend before)
designs-tau-value = { $share } ({ $p }, n = { $usual } and { $changed }; no interval is published)
designs-level = Step of the level
designs-trend = Change of the trend, a day
designs-change-value = { $value } (95% interval { $low } to { $high })
designs-change-value-no-interval = { $value } (no interval yet)
designs-small = { $way ->
    [once] A trial of { $days } days: the day from which it holds is drawn by lot.
    [back] A trial of { $days } days, back and forth: the days are drawn by lot.
   *[turn] A trial of { $days } days, day by day: which days is drawn by lot.
}
designs-measured-by = { $measure } ({ $words }); expected: { $expected ->
    [more] more
    [less] less
   *[either] either way
}

# Two trials at once.
designs-beside-planned = Another trial on the same days measures the same ({ $measure }):
designs-beside-going = On the days to come, another trial measures this ({ $measure }):
designs-beside-kept = On some of the same days another trial measured the same ({ $measure }):
designs-beside-plan = A trial of a change goes on on the same days as this plan:
designs-beside-agreed = A plan is agreed for days on which this would be tried:
designs-beside-agreed-wait = With two changes at once, neither can be told apart: a difference may come of either. Begin after the last day of the plan. Or accept that.
designs-beside-days = { $question } { $first } to { $last }
designs-beside-sessions = { $question } From { $first }, until its sessions are over
designs-beside-wait = With two changes at once, neither can be told apart: a difference may come of either. Wait until the other ends and begin on { $day } or later. Or accept that.
designs-beside-wait-sessions = With two changes at once, neither can be told apart: a difference may come of either. Wait until the other ends. Or accept that.
designs-beside-read = Neither can be told apart: what is said here of one change may be of the other. One of them again, alone, could tell more.
