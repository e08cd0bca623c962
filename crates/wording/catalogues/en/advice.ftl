# What an advice is about.
advice-topic-welfare = Wellbeing first
advice-topic-ration = Food
advice-topic-set-up = Set up
advice-topic-likes = Likes
advice-topic-stuck = Stuck
advice-topic-show = Show
advice-topic-invite = Invite
advice-topic-converse = Answer
advice-topic-probe = Check
advice-sure-little = a guess so far
advice-sure-fairly = fairly sure
advice-sure-very = sure

# What may hold a word up, and how the records bear on it.
advice-cause-hard-to-make-out = The recorded word may be hard to make out
advice-cause-not-wanted = What it brings is not wanted just now
advice-cause-too-little = Too little showing
advice-cause-too-late = The thing comes too late
advice-cause-avoided = { $name } keeps away from the button
advice-cause-time-or-place = The time, place or noise
advice-cause-health = { $name } may not be well
advice-cause-sounds-alike = It sounds like another word
advice-cause-people-differ = People answer it differently
advice-bearing-for = the records speak for it
advice-bearing-perhaps = possible
advice-bearing-unknown = too few records to say
advice-bearing-against = the records speak against it

# The one next thing to do.
advice-next-rest = No session for now. Give { $name } space, and answer presses.
advice-next-session = { $minutes } min at most: show { $words }.
advice-next-words-shown = “{ $word }” { $times ->
    [one] once
   *[other] { $times } times
}
advice-so-far = { $planned } ({ $shown } of { $of } shown so far)
advice-next-words-invited = “{ $word }” { $times ->
    [one] once, invited
   *[other] { $times } times, { $invited } of them invited
}
advice-next-answer = Answer whatever { $name } presses.
advice-held = { $sessions ->
    [one] One session today, over at { $time }
   *[other] { $sessions } sessions today, the last over at { $time }
}: { $showings ->
    [0] no showing
    [one] one showing
   *[other] { $showings } showings
}{ $bare ->
    [0] { "" }
    [one] , one press without its thing
   *[other] , { $bare } presses without the thing
}.
advice-running = A session is running, since { $time }. Go to the Board.
advice-next-pause = Rest until { $time }. Then another short session fits, if { $name } likes. Answer whatever { $name } presses.
advice-next-enough = Nothing more is needed today. Answer whatever { $name } presses.
advice-length-few-sessions = Common practice: { $timed ->
    [0] no timed session
    [one] only one timed session
   *[other] only { $timed } timed sessions
} in four weeks.
advice-length-few-left = Common practice: fewer than a quarter of { $timed } timed sessions were left early.
advice-length-quarter-left = A quarter of { $timed } timed sessions had been left by { $minutes } min; end before that.

# What the last seven days hold.
advice-lately-first-press = First press of “{ $word }” by { $name } alone, { $day }.
advice-lately-more-presses = “{ $word }”: { $now ->
    [one] one own press
   *[other] { $now } own presses
} in seven days, { $before } in the four weeks before.
advice-lately-check-passed = Check passed: { $words }, right { $right } of { $of } times.
advice-lately-joined = { $name } joined { $joined } of { $of } sessions.
advice-lately-taken = { $name } took { $taken } of { $of } things given.

# Rhythm, readiness, demand, likes.
advice-lean-left = { $name } leans to { $name }’s own left: mix sides well and test on. The ranking allows for it.
advice-lean-right = { $name } leans to { $name }’s own right: mix sides well and test on. The ranking allows for it.
advice-lean-too-few = Too few choices to say anything about sides.
advice-lean-none = No sign of a lean to one side beyond chance.
advice-known-well-enough = Clear favourites for now: { $best } ({ $sure } sure, { $n ->
    [one] one trial of choosing
   *[other] { $n } trials of choosing
}).
advice-known-enough-for-now = Not settled, but enough for now; best so far: { $best } ({ $sure } sure, { $n ->
    [one] one trial of choosing
   *[other] { $n } trials of choosing
}).
advice-known-not-yet = Not clear yet; best so far: { $best } ({ $sure } sure, { $n ->
    [one] one trial of choosing
   *[other] { $n } trials of choosing
}).
advice-next-pair = This pair would tell most about which few are best; sides balance earlier ones.

# Where a word stands.
advice-stage-prepare = prepare
advice-stage-show = show
advice-stage-invite = invite
advice-stage-converse = converse
