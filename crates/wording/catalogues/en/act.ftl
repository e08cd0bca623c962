# What to do. $name is the animal's, $word what a button says.
act-give-space = No session for now. Give { $name } space and distance, and do not lure back.
act-pause-sessions = Pause showing and inviting for a few days. Go on answering presses, and do not lure { $name } back.
act-no-more-today = No more sessions today. Give { $name } space, and go on answering presses.
act-ask-about-threats = Talk to a veterinarian and a qualified behaviour professional. Keep sessions short, and stop at the first tense sign.
act-ask-about-guarding = Take nothing from { $name }. Talk to a veterinarian and a qualified behaviour professional.
act-ask-about-swallowing = { $today ->
    [yes] Call a veterinarian now.
   *[other] Something was swallowed. Ask a veterinarian if none has seen { $name } since.
}
act-shorten-sessions = Make sessions much shorter and end them before { $name } wants to go. Try another reward.
act-ease-sessions = Change something before the next session: a quieter time or place, fewer words, more distance.
act-look-at-health = Look at { $name } first, not at the training: eating, drinking, toileting, sleep, movement.
act-stop-food = No more food rewards today. Use play, touch or exploring.
act-list-rewards = What might { $name } like? Add at least two things: food, play, touch, exploring, rest.
act-test-likes = Hold a likes test.
act-choose-first-words = Choose two or three first words.
act-set-allowance = Settle how much food { $name } may have in a day.
act-fill-card = Fill in the card of “{ $word }”: { $lacks }.
act-lack-reward = what it brings
act-lack-answer = how everyone answers it
act-lack-not-now = what to say for “not now”
act-check-batteries = Check the battery of { $words }: a replay that slows down often means a tired one.
act-check-silent = Check the battery and the button of { $words }, where no animal hears it. Leave it if there is no use for the word just now.
act-retest-likes = Hold a short likes test before the next sessions.
act-mend-hard-to-make-out = Play the button of “{ $word }” from another room. Record it again, clear and soft, unless you know the word at once.
act-mend-not-wanted = Test likes again and change what “{ $word }” brings, or show it when { $name } wants it.
act-mend-too-little = Show “{ $word }” more often, a little every day.
act-mend-too-late = Give faster for “{ $word }”: keep the thing by the board, so that it comes within two seconds.
act-mend-avoided = Leave the button of “{ $word }” alone. Move it or try a softer one, and wait until { $name } comes to it.
act-mend-time-or-place = Hold sessions at the hours { $name } joins, in a quieter place.
act-mend-health = See a veterinarian before training on.
act-mend-sounds-alike = Record another word for “{ $word }”, one that sounds different.
act-mend-people-differ = Agree on one answer to “{ $word }” and one delay. Put the house rules where all see them.
act-step-back = { $to ->
    [invite] Go back to inviting “{ $word }”. That is no loss.
   *[other] Go back to showing “{ $word }”. That is no loss.
}
act-begin-inviting = Begin inviting “{ $word }”: offer, wait { $seconds } s, then show it yourself and give it.
act-invite = Invite “{ $word }” once or twice among the showings. Whatever comes, show it and give it.
act-show = Show “{ $word }”: press, say, give.
act-show-at-end = Show “{ $word }” at the end of each session.
act-leave-to-animal = “{ $word }” is ready for conversation: leave it to { $name }, and answer every press.
act-answer = Answer every press of “{ $word }”, also with “not now”.
act-signal-times = { $name } asks for “{ $word }” more than you can give. Put up a sign all can see: for { $available } s answer every press with the thing, then for { $unavailable } s say “not now” and offer something else, and again.
act-rest = Teach nothing today. Answer presses of “{ $word }”.
act-plan-check = Plan a check of { $words }.
act-go-on-with-check = Go on with the check: { $done } of { $of } trials done.
act-quoted = “{ $word }”

# What would change it.
act-change-calm-days = { $days } days with at most one day of strong signs.
act-change-calm-start = A calm start tomorrow: { $name } comes to the board unasked.
act-change-days-without = { $days } days without such a sign.
act-change-fewer-left = { $name } leaves fewer than half of the next { $sessions } sessions.
act-change-fewer-mild = A week with mild signs in clearly fewer than { $share } of sessions.
act-change-usual-presses = Pressing back in its usual range, or a plain cause: visitors, travel, a dead battery, nobody logging.
act-change-next-day = Midnight, or an allowance a veterinarian sets.
act-change-rewards-listed = Two or more rewards listed.
act-change-test-recorded = A likes test recorded.
act-change-word-made = A word card made.
act-change-allowance-set = An allowance typed in, or what is missing filled in.
act-change-card-filled = The card filled in.
act-change-sounds-apart = Another word on the card, or this one shown all the same.
act-change-ends-no-session = Its card no longer says that it ends a session.
act-change-usual-speed = Presses at the usual speed again, such as after a new battery.
act-change-heard-again = A press of it that is heard, or its new recording enrolled.
act-change-test-agrees = A test whose ranking agrees with the one before.
act-change-more-presses = Clearly more presses when invited, { $days } days after the change.
act-change-shown-enough = Shown { $showings } times, on { $days } days.
act-change-joins-more = { $name } joins clearly more than { $share } of sessions.
act-change-right-more = Right presses become more than chance allows.
act-change-masters = { $share } or more pressed and right in { $sessions } sessions in a row, with { $people } different people.
act-change-more-when-invited = { $name } presses more often when invited and wanting the thing: no longer clearly below { $share }.
act-change-lasts-again = Two weeks and more after mastery, presses and right ones are no longer clearly below { $share }.
act-change-fades = Two weeks and more after mastery, presses or right ones fall clearly below { $share }.
act-change-longer-or-back = Longer waits once two sessions running hold few presses during “not now”. Back to answering every press at a strong sign, at leaving, or where presses do not fall over three sessions.
act-change-checked = The check planned, or carried out.

# What to watch out for.
act-caution-ask-both = Ask a veterinarian and a qualified behaviour professional, and follow local law on animals that bite.
act-caution-ask-if-back = If such signs come back, or come without a cause you can see, ask a veterinarian and a qualified behaviour professional.
act-caution-ask-now = Such signs came back: ask a veterinarian and a qualified behaviour professional.
act-caution-call-vet-now = Call a veterinarian at once, whatever was swallowed. Do not make { $name } vomit unless told to.
act-caution-ask-vet-unless-seen = Put small things out of reach. Call a veterinarian at once if { $name } is unwell in any way.
act-caution-take-nothing = Take nothing away by force, and keep children at a distance.
act-caution-leaving-is-answer = Leaving is an answer. Do not call or lure { $name } back to the board.
act-caution-single-sign = A single sign means little. Read the whole body and the situation.
act-caution-may-be-illness = A sudden change may be illness, not training: see a veterinarian.
act-caution-individuals-differ = Animals of one weight may need up to three times as much or as little. Watch the body, and ask a veterinarian.
act-caution-battery = Change batteries where no animal or child can reach them, keep old ones away as well, and screw the cover shut. A swallowed or bitten battery is an emergency. An animal: call a veterinarian at once. A child who swallowed a button cell or put one in the nose or ear: go to the emergency department at once. Make neither vomit unless told to.
act-caution-not-pressing = Not pressing says nothing about what { $name } understands. If anything about { $name } changed suddenly, see a veterinarian first.
act-caution-comes-and-goes = { $name } may come and go. Stop while { $name } still wants more.
act-caution-burst-may-come = When answers change, a burst of presses may come first: in 24% of cases in people, 12% where something else was offered (Lerman & Iwata 1995).
act-caution-never-for-needs = Never for water, toilet, pain or fear: those are answered. If { $name } guards, growls or bites, stop and ask a qualified behaviour professional.

# The one hint for a word now.
act-hint-give-faster = Give faster: now after { $seconds }, aim for { $aim }.
act-hint-show-only = Show it yourself and give it. Wait for nothing.
act-hint-wait-then-show = Offer, wait { $seconds } s, then show it and give it, whatever comes.
act-hint-when-wanted = Show it when { $name } wants it.
act-hint-little-every-day = A little every day.
act-hint-answer-alike = All of you answer alike, at once.
act-hint-good-hours = At the hours { $name } joins, in a quiet place.
act-hint-let-it-come = Wait until { $name } comes to the button.
act-hint-at-the-end = Last in the session.
act-hint-answer-every = Answer every press, also with “not now”.
