brief-fill-card = Fill in its card
brief-batteries = Check the battery
brief-silent = Check battery and button
brief-hard-to-make-out = Listen to its recording from afar
brief-not-wanted = Change what it brings
brief-too-little = Show it more often
brief-too-late = Give faster
brief-avoided = Leave its button alone for now
brief-time-or-place = Another hour, a quieter place
brief-health = See a veterinarian first
brief-sounds-alike = Another word
brief-people-differ = Agree on one answer
brief-step-back = { $to ->
    [invite] Back to inviting, no loss
   *[other] Back to showing, no loss
}
brief-back-because = { $why ->
    [strain] Strong signs of stress in sessions with it
    [card] What it brings or its answer is not settled
    [faded] It faded after some weeks
    [shown] Not shown often enough yet
    [seldom] Seldom pressed when invited
    [joins] Few sessions are joined
   *[other] Not sure yet when invited
}
brief-begin-inviting = Begin inviting
brief-invite = Invite once or twice
brief-show = Show it
brief-show-at-end = Show it at the end
brief-leave-to-animal = Leave it to { $name }, answer every press
brief-answer = Answer every press
brief-signal-times = Signal when it is to be had
brief-rest = Teach nothing today
brief-agreed = { $way ->
    [show] Show it
    [offer_in_view] Invite, the thing in view
    [ask_and_point] Invite, ask and point
   *[ask_between_two] Invite, “this or that”
}
