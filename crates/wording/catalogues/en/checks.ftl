# Planned checks of understanding. $name is the animal's.
checks-title = Checks
checks-one = A check
checks-no-such = This notebook knows no such check of this animal.
checks-design = { $design ->
    [pick_for_word] Hear a word, pick the thing
    [press_under_covers] See a thing go, press its button; buttons swapped under covers
    [wrong_delivery] Another thing than asked for
   *[press_for_thing] See a thing go, press its button
}
checks-place = { $kind ->
    [button] Button { $number }
   *[place] Place { $number }
}
checks-left = { $name }’s left
checks-right = { $name }’s right
checks-whose-left = Drawn as { $name } sees it. If you face { $name }, { $name }’s left is on your right.
checks-mark-asked-for = { $mark } marks what is asked for.
checks-quoted = “{ $word }”
checks-health = Health:
checks-trials = { $trials ->
    [one] One trial
   *[other] { $trials } trials
}
checks-blind = blind
checks-not-blind = not blind

# The list.
checks-intro = A check (a probe, in the trade) asks whether { $name } goes by the word itself: planned before, in random order, with a person beside { $name } who cannot give the answer away.
checks-none-today = No check today: strong signs of stress were noted. Give space; a calm day will come.
checks-plan = Plan a check
checks-so-far = Checks so far
checks-none = None yet.
checks-open = Open
checks-to-designs = Does a change help? Trials of a change
checks-cannot-show = A check can show what an animal goes by; it cannot show that an animal does not understand. No choice and going away are kept apart and are never wrong.
checks-finished = { $trials ->
    [one] Finished as planned, one trial
   *[other] Finished as planned, { $trials } trials
}
checks-finished-otherwise = { $trials ->
    [one] Finished, one trial, but not as planned
   *[other] Finished, { $trials } trials, but not as planned
}
checks-going = { $trials ->
    [one] { $done } of one trial
   *[other] { $done } of { $trials } trials
}

# One check.
checks-nothing-worked-out = Nothing can be worked out from this check: { $why }.
checks-finds = This length finds an animal that is right in { $share } or more in four checks of five, word by word.
checks-finds-none = This is too short to find even an animal that is right in { $share }, word by word; only a longer check can.
checks-not-as-planned = Not as planned:
checks-taken-back = { $trials ->
    [one] 1 trial taken back: counted as wrong.
   *[other] { $trials } trials taken back: counted as wrong.
}
checks-changed = { $trials ->
    [one] 1 trial changed after the first answer: counted as wrong.
   *[other] { $trials } trials changed after the first answer: counted as wrong.
}
checks-again = { $trials ->
    [one] 1 trial answered again under a used number: the first answer counts.
   *[other] { $trials } trials answered again under a used number: the first answer counts.
}
checks-left-out = { $trials ->
    [one] 1 trial left out between others: counted as wrong.
   *[other] { $trials } trials left out between others: counted as wrong.
}
checks-not-as-drawn = { $trials ->
    [one] 1 trial about another word or thing than this plan’s seed draws: counted as wrong.
   *[other] { $trials } trials about another word or thing than this plan’s seed draws: counted as wrong.
}
checks-beyond = { $trials ->
    [one] 1 trial with a number that the plan does not have: not counted.
   *[other] { $trials } trials with a number that the plan does not have: not counted.
}
checks-knew-answer = { $trials ->
    [one] 1 trial in which the person with the animal knew the answer: a right one is not counted as blind, a wrong one is.
   *[other] { $trials } trials in which the person with the animal knew the answer: a right one is not counted as blind, a wrong one is.
}
checks-earlier-rule = Drawn by an earlier rule, in which what was asked for last gave something away: shown, and climbs nothing.
checks-given-up = Another check was planned before this one was finished: it stays in the pool, and the answer that would have been next counts as wrong.
checks-things-a-trial = { $choices } things a trial
checks-buttons-a-trial = { $choices } buttons a trial
checks-not-today-space = Not today: strong signs of stress were noted. Give space.
checks-i-set-up = I set up
checks-i-am-with = I am with { $name }
checks-go-on-alone = Go to the next trial
checks-two-phones = Two phones are best. With one, print the setter’s sheet and give the phone to the presenter.
checks-setters-sheet = Setter’s sheet
checks-scorers-sheet = Scorer’s sheet
checks-who-does-what = Who does what, and who may know what
checks-all = All checks

# Roles and the animal's rules.
checks-setter = Setter
checks-setter-knows = knows the answer
checks-setter-picks = Lays the things out by the list, equally near, then goes where { $name } cannot see anyone. Plays the word from there, once. Says nothing else.
checks-setter-covers = Covers the board and puts the buttons under the covers by the list. Lets { $name } see the thing, shuts it away out of sight, and goes where { $name } cannot see anyone.
checks-setter-shows = Lets { $name } see the thing, shuts it away, and goes where { $name } cannot see anyone. Leaves every button where it always is.
checks-presenter = Presenter
checks-alone = The check, alone
checks-must-not-know = must not know
checks-presenter-knows = here: knows, so it is not blind
checks-presenter-picks = Is with { $name }; turned away, or in dark glasses, while things are laid out and until the choice is made. Does not point, nod, speak or hurry.
checks-presenter-covers = Comes in once the thing is gone; takes the covers off from behind, without looking at the buttons. Does not know which button lies where. Does not point, nod, speak or hurry.
checks-presenter-stands = Comes in once the thing is gone. Stands behind the middle of the board, looks straight ahead. Does not point, nod, speak or hurry.
checks-scorer = Scorer
checks-scorer-notes = Notes the number of what was chosen first, without knowing which was right: the presenter on the phone, or a third person from a recording without sound.
checks-goes-by-place = Only for an animal that tells its buttons by look, picture or smell. One that goes by place will be at chance here, and that is no failure.
checks-kindly = { $stop } ({ $signs }), at a strong one at once, and after ten trials at most. { $name } may leave at any time; never call { $name } back. Whatever { $name } chooses, { $name } gets: a check is no lesson, and nothing is ever wrong for an animal.
checks-kindly-stop = Stop at any sign of stress

# Planning.
checks-not-today = Not today: strong signs of stress were noted. Give { $name } space, and check on a calm day.
checks-back-to-all = Back to checks
checks-too-few-words = { $words ->
    [0] A check needs two words or more; { $name } has none.
   *[other] A check needs two words or more; { $name } has { $words }.
}
checks-to-words = To the words
checks-why = Everyday presses leave room for other explanations: a glance, a favourite place, a favourite thing. A check closes that room, if it is planned first and then carried out as planned.
checks-field-design = What { $name } does
checks-field-words = Words
checks-field-words-hint = two to four are usual; each with a thing of its own
checks-field-choices = Things or covered buttons at a time
checks-field-choices-hint = 2 is easiest, more need fewer trials. Where buttons keep their places, all ticked count
checks-field-rate = Right at least, in %
checks-field-rate-hint = how often { $name } must be right for you to care; lower takes many more trials
checks-field-who = Who is there
checks-who-two = Two people or more
checks-who-two-hint = One sets up, the other is with { $name } and does not know the answer: a blind check.
checks-who-one = I am alone
checks-who-one-hint = You know the answer, so cues stay a possible explanation, whatever comes out.
checks-about-picks = For hearing: things lie in random places; a word sounds; which thing does { $name } go to? Random order and places rule most other explanations out.
checks-about-covers = For asking: the buttons are swapped under covers as drawn before each trial, the thing is out of sight; who answers does not know which button lies where.
checks-suggests = Buttons keep their places, so a habit of place looks the same: it may suggest and no more. Swapped under covers, it could show it.
checks-count = How many trials?
checks-count-each = { $sittings ->
    [one] { $each } for each of { $words } words, in about one sitting.
   *[other] { $each } for each of { $words } words, in about { $sittings } sittings of { $most } on different days or hours.
}
checks-count-chance = By chance { $name } would be right in { $share }.
checks-count-false-alarm = Chance alone gets a word to the top in { $share } of checks ({ $alpha } shared by the words).
checks-count-power = If { $name } is as good as you hope, a word gets there in { $share } of checks.
checks-count-top = A word is at the top from { $right }; fewer are enough if they come early. Exact binomial counts.
checks-count-right = { $right } right of { $each }
checks-count-by-lot = Which word comes is drawn by lot each time, so that the last one tells nothing of the next: { $each } is the average, and a word that came less often may need more trials.
checks-plan-these = { $trials ->
    [one] Plan this trial
   *[other] Plan these { $trials } trials
}
checks-unfinished = Not finished:
checks-unfinished-count = What was begun stays in the pool. Plan another of its kind, and one wrong is charged for the answer not recorded.

# Carrying out.
checks-stop-here = Stop here: strong signs of stress were noted. Give space and do not lure { $name } back. The check can go on another day.
checks-sitting-done = { $trials } trials today: that is a sitting. Rest now; go on in some hours or another day.
checks-setter-only = Only for the one who sets up. The presenter must not see this page or the Log.
checks-cannot-run = This check cannot be run from here: { $why }.
checks-all-done = { $trials ->
    [one] The one trial is done.
   *[other] All { $trials } trials are done.
}
checks-at-board = This design is noted at the board, as any answer is.
checks-back-to-one = Back to the check
checks-trial-of = Trial { $number } of { $trials }
checks-lay-out = Lay out, from { $name }’s left
checks-asked-for = – the one asked for
checks-then-play = Then go out of sight and play { $word }, once.
checks-then-play-alone = Then step back, look straight ahead and play { $word }, once. Say nothing else, and do not point.
checks-under-covers = Under the covers, from { $name }’s left
checks-show-thing = Show it, then shut it away: { $thing }
checks-lies-in = Its button lies in place { $place }. Call the presenter when you are out of sight. Put aside any button not in the list.
checks-lies-in-alone = Its button lies in place { $place }. Put aside any button not in the list. Take the covers off from behind, look straight ahead and say nothing.
checks-its-number = Call the presenter when you are out of sight. Its button is number { $place }.
checks-its-number-alone = Its button is number { $place }. Stand behind the middle of the board, look straight ahead and say nothing.
checks-numbers = Numbers of the buttons
checks-numbers-how = Put a small number beside each button, so that the presenter can tell which was pressed:
checks-next = Noted? Show the next
checks-next-how = It changes once the presenter has tapped what came. Laid something wrongly? Do not play the word; lay it out again.
checks-laid = Done. What did { $name } do?
checks-noted-already = That was noted already; nothing was changed. Undo takes the last answer back; it then counts as wrong.
checks-thanks = Thank you, { $name }.
checks-see = See what came out
checks-stop-for-now = Stop for now
checks-stop-for-now-kept = – what was noted is kept; go on later.
checks-go-on = Go on all the same
checks-note-sign = A sign of stress? Note it on the Board of { $name }
checks-which = { $kind ->
    [picks] Which place did { $name } go to first?
    [place] In which place did { $name } press first?
   *[button] Which button did { $name } press first?
}
checks-nothing = Nothing
checks-away = Went away
checks-before-tap = { $blind ->
    [yes] Timed it? Knew the answer? Say so first
   *[other] Timed it? Say so first
}
checks-field-seconds = Seconds to the choice
checks-field-seconds-hint = only if somebody timed it
checks-field-knew = I knew the answer this time (saw or heard it)
checks-how-to-note = Look away until the choice is made. No choice within about half a minute is “nothing”; going away is “went away”. Neither is wrong. { $name } gets what { $name } chose; a piece of food is counted.
checks-stop-and-cautions = Stop at any sign of stress. Health and food cautions stand on the setter’s page: let the setter read them first.
checks-last-trial = Trial { $number }:
checks-a-choice = a choice
checks-undo = Undo
checks-undo-counts = Undo: the answer stays in the record and counts as wrong; the trial does not come again.
checks-went-away = { $name } went away, and that is an answer. Let { $name } go; go on when { $name } comes back unasked, or another day.

# Sheets to print.
checks-for-setter = { $only } Fold it away from the presenter and the scorer.
checks-for-setter-only = For the setter only.
checks-column-number = No.
checks-column-play = Play
checks-column-hide = Hide
checks-column-button = Button
checks-column-seconds = Seconds
checks-cross = Cross what { $name } chose first. No choice within about half a minute is { $nothing }, going away is { $away }; neither is wrong. Seconds only if timed.
checks-do-not-look = Do not look at the setter’s sheet, and do not guess what was asked.
checks-cannot-draw = The order cannot be drawn from this plan: { $why }.
checks-sitting = Sitting { $number }
checks-date-and-who = Date and hour, who was there:
checks-prints-again = seed { $seed }: the same plan prints this order again.

# What came out.
checks-nothing-done = Nothing was carried out yet.
checks-came-out = What came out
checks-this-not-blind = This check was not blind: whoever noted knew the answer. Where a line below names a blind check, it is an earlier one.
checks-figures = Figures so far
checks-read-any-time = Read it whenever you like, go on, or leave it here: nothing has to be closed. The evidence is made for that. What was begun stays in the pool.
checks-chart = Right, of choices made
checks-chart-axis = share right
checks-chart-read = Upright line: chance, { $chance }. Bars: 95% intervals that hold whenever they are read. For each word: of the times { $name } went for it, how often it was the one asked for; a favourite is right by chance only. First answers count; those taken back count as wrong.
checks-no-choice = No choice was made; that says nothing either way.
checks-went-for = { $times ->
    [one] { $name } went for this once, and it was the one asked for in { $right }: { $share } ({ $low } to { $high }).
   *[other] { $name } went for this { $times } times, and it was the one asked for in { $right }: { $share } ({ $low } to { $high }).
}
checks-never-wrong = Nothing: { $nothing }. Went away: { $away }. Neither counts as wrong.
checks-p-rearranged = Does this button go with what was shown (things dealt anew at random, presses kept as they were)? { $p }. Read it with the share right.
checks-p-chance = { $times ->
    [one] Against chance ({ $chance }, exact binomial, one-sided): { $p }, from one choice.
   *[other] Against chance ({ $chance }, exact binomial, one-sided): { $p }, from { $times } choices.
}
checks-bayes-above = Bayes factor { $factor }: so many times likelier if the share right is anywhere above chance than by chance.
checks-bayes-below = Bayes factor 1 to { $factor }: so many times likelier by chance than if the share right is anywhere above chance.
checks-more-than = more than { $number }
checks-seconds-right = { $timed ->
    [one] The one right choice that was timed came within { $seconds } s.
   *[other] Half of the { $timed } right choices timed came within { $seconds } s.
}
checks-seconds-wrong = { $timed ->
    [one] The one wrong choice that was timed came within { $seconds } s.
   *[other] Half of the { $timed } wrong choices timed came within { $seconds } s.
}
checks-latency = Right against wrong, rank sum, two-sided: { $p }.
checks-may-be-said = What may be said
checks-said-of-word = { $word }: { $said }.
checks-judged = Judged over all words and all checks ever begun together, so that many tests and many readings do not add up to a false claim.
