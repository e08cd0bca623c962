evidence-title = Evidence
evidence-of-word = Evidence: { $word }
evidence-no-words = No words yet. { $link }.
evidence-choose-words = Choose first words
evidence-picture = What may be said of { $name }’s words
evidence-picture-told = { $claimed ->
    [0] Of none of them more can be said yet than chance explains.
   *[other] { $claimed ->
        [one] { $claimed } word goes beyond what chance explains.
       *[other] { $claimed } words go beyond what chance explains.
    }
} Not pressing is never read as not understanding.
evidence-rung = { $rung ->
    [nothing] Nothing can be said yet
    [chance] Fits chance so far
    [differs] Pressing goes with the call
    [open] Passes an open check
   *[other] Stands up to a blind check
}
evidence-step = Step { $step } of { $steps }
evidence-behind = { $n ->
    [one] from { $n } drawn trial
   *[other] from { $n } drawn trials
}
evidence-behind-nothing = nothing drawn yet, { $shown ->
    [0] not shown either
    [one] shown once
   *[other] shown { $shown } times
}
evidence-trend = Own presses a week over eight weeks, oldest first: { $list }
evidence-trend-before = not there yet
evidence-this-week = { $n } in seven days
evidence-legend = Steps: how far the records carry; a filled step is reached. Small bars: own presses a week over eight weeks, each word on its own scale, the last seven days last; a dot is a week without, a gap is before the word came.
evidence-how-to-climb = What the steps mean
evidence-step-1 = 1. Something was drawn by the notebook, and what came of it fits chance.
evidence-step-2 = 2. In rounds that the notebook drew, pressing goes with what was called for.
evidence-step-3 = 3. In planned checks { $name } is right more than chance allows, but somebody knew the answer.
evidence-step-4 = 4. The same in blind checks: nobody near knew the answer.
evidence-step-rule = All words of an animal are judged together, so that many words and many readings do not add up to a false claim.
evidence-climb-round = A round drawn by the notebook, on the Board, is the first way up.
evidence-checks = Planned checks of understanding
evidence-trials = Does a change help? Trials of a change
evidence-two-people = Do two people see the same?
evidence-compared = Pressed and right, word beside word
evidence-pressed-of-wanted = Pressed, when { $name } wanted the thing
evidence-pressed-told = For each word the share of invitations with a press of any button, of those in which { $name } wanted the thing, with 95% intervals.
evidence-share-pressed = share pressed
evidence-right-of-presses = Right, of presses
evidence-right-told = For each word the share of presses at its invitations that were of this word, with 95% intervals. One that presses at random presses as much as any, and is right by chance.
evidence-share-right = share right
evidence-chance-line = Upright line: chance, one in { $words }. Words with fewer than five trials are left out. Intervals hold whenever they are read.
evidence-no-such-word = { $name } is taught no such word.
evidence-sentence-shown = { $times ->
    [0] Not shown yet
    [one] Shown once
   *[other] Shown { $times } times
}; nothing can be said yet about what “{ $word }” means to { $name }.
evidence-sentence-own = { $name } pressed “{ $word }” { $times ->
    [one] once
   *[other] { $times } times
} unasked in four weeks; without invitations or a check, that alone does not say what the word means.
evidence-sentence-invited = { $wanted ->
    [0] No invitation counts yet in which { $name } wanted the thing.
    [one] Invited when wanting the thing, { $name } pressed a button { $pressed } of { $wanted } time.
   *[other] Invited when wanting the thing, { $name } pressed a button { $pressed } of { $wanted } times.
} { $presses ->
    [0] No press at an invitation of “{ $word }” yet.
   *[other] Of { $presses ->
        [one] { $presses } press
       *[other] { $presses } presses
    } at invitations of “{ $word }”, { $right } { $right ->
        [one] was of that word
       *[other] were of that word
    }: { $above ->
        [few] too early to say
        [yes] more than chance
        [chosen] more than chance would bring, but who chose the moments may explain it
       *[other] not more than chance so far
    }.
}
evidence-presses-more = { $more ->
    [one] One of these { $presses } presses came when { $name } did not want the thing, or nobody noted it: it is left out of the { $wanted }.
   *[other] { $more } of these { $presses } presses came when { $name } did not want the thing, or nobody noted it: they are left out of the { $wanted }.
}
evidence-stage = Stage: { $stage }
evidence-figures-point = The figures point to { $stage }.
evidence-invitations = Invitations
evidence-no-curve = Learning curve: { $why }.
evidence-waiting = Time to press, the middle: { $median }. Invitations without a press count up to the end of the wait (Kaplan–Meier).
evidence-waiting-open = not reached: too few were answered by a press within the wait ({ $n ->
    [one] { $n } invitation
   *[other] { $n } invitations
})
evidence-showings-presses = Showings and own presses
evidence-showings-a-day = Showings a day
evidence-showings = showings
evidence-presses-a-day = Own presses a day
evidence-presses = presses
evidence-by-day-told = { $n } in all; { $began ->
    [before] the last six weeks by day.
   *[other] by day, from the word’s first record on { $began }.
}
evidence-day-axis = day (Mondays named)
evidence-delivered = Delivered after the press (middle value): { $delay }.
evidence-then = What { $name } did then
evidence-uptake = Took what was given for this word: { $this }; for the other words: { $others }.
evidence-fisher = Fisher’s exact test, two-sided: { $p }.
evidence-left-out = { $n ->
    [one] { $n } press that looked like a stumble is left out.
   *[other] { $n } presses that looked like a stumble are left out.
}
evidence-stumbles = Own presses that looked like a stumble, of those judged: { $share }.
evidence-causes = If it does not get on: what may be behind it
evidence-how-computed = How these figures are computed
evidence-may-be-said = What may be said
evidence-claim = “{ $word }”, { $what }: { $said }.
evidence-fidelity = Teaching as agreed, given within { $seconds } of the press: { $share }.
evidence-claim-animal = { $name }: { $said }.
evidence-not-ruled-out = What may explain it instead:
evidence-made-unlikely = What was done about other explanations, and what remains of each:
evidence-rival = { $rival } ({ $standing })
evidence-plan-check = Plan a check
evidence-behind-it = What stands behind it
evidence-nothing-drawn = Nothing was drawn yet. What a person chose to invite or to give may suggest something; it proves nothing, for a choice follows the hour and the hope.
evidence-a-bet = Evidence is what a bet against chance would have grown to; it may be read at any time. All words of an animal are judged together.
evidence-elsewhere = Does it hold elsewhere?
evidence-settings = The two figures in different settings
evidence-compared-what = Compared
evidence-which = Which
evidence-settings-note = After a button was moved, a habit of place presses the old place: right presses fall. Small numbers say little; no row alone proves anything.
evidence-k-of-n = { $k } of { $n } – { $figure }
evidence-chance = Chance
evidence-chance-even = one in { $words } words would be { $share }
evidence-chance-habit = one in { $words } words would be { $share }; when others are invited, this one is pressed in { $elsewhere }
evidence-above-chance = { $above ->
    [yes] So far more than chance.
    [chosen] More than chance among invitations whose moments a person may have chosen. That helps to choose the next step; what may be said rests on what the notebook drew, and asks for more.
   *[other] So far not more than chance.
}
evidence-without-button = Wanted it: asked without a button
evidence-not-wanted = Did not want it then, or left
evidence-not-counted = { $n } (not counted)
evidence-unrecorded = Not recorded whether it was taken
evidence-not-counted-wanted = { $n } (not counted as wanted)
evidence-curve = Learning curve
evidence-curve-told = How often it was right from press to press, and how far off that may be ({ $n ->
    [one] { $n } press
   *[other] { $n } presses
}). Whether it is more than chance is judged once, under “What may be said”.
evidence-curve-few = { $n ->
    [0] Learning curve: no press at an invitation yet.
   *[other] Learning curve: too few presses to say ({ $n ->
        [one] { $n } press
       *[other] { $n } presses
    }).
}
evidence-press-axis = press at an invitation
evidence-band = 95% band
evidence-after = { $after ->
    [after] After
    [given] given
    [declined] not now
    [took] took
    [ignored] ignored
    [left] left
    [again] again
   *[other] not seen
}
evidence-after-region = What { $name } did after answers
evidence-answers = Own presses answered: { $parts }. An answer counts for the press it was noted for if their times lie within three days; one noted for none, for the last press of its word in the two minutes before.
evidence-answer-times = { $answer ->
    [given] given
    [partly] given in part
    [declined] “not now”
    [alternative] another thing
   *[other] missed or not recorded
} { $times ->
    [one] once
   *[other] { $times } times
}
evidence-step-on-today = Which one step that means now stands on Today
