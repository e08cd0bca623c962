# What a coach and a home say to each other through the work: plans, notes, questions, answers.
talk-title = Agreed
talk-intro = What you and your coach agree on, and how it goes.
talk-intro-coach = What you wrote to this home, and what came of it.
talk-not-a-vet = A coach is not a vet. For pain, illness, fear or bites, ask a veterinarian or a qualified behaviour professional.
talk-rest = Sessions with { $name } rest first. Nothing of this is to be done until Today says so.
talk-none = Nothing here yet. What a coach proposes or asks comes here and to Today.
talk-none-coach = You have written nothing to this home yet.
talk-open = To answer
talk-open-coach = Waiting for an answer
talk-now = Agreed now
talk-before = Before ({ $count })
talk-from = From { $name }
talk-from-file = Read from a file: nobody here saw { $name } write it.
talk-plan = Plan up to { $day }: { $words }
talk-line = { $way ->
    [show] “{ $word }”: show it, { $dose }
    [offer_in_view] “{ $word }”: invite with the thing in view, { $dose }
    [ask_and_point] “{ $word }”: ask and point, { $dose }
    [ask_between_two] “{ $word }”: ask “this or that”, { $dose }
   *[any] “{ $word }”: { $dose }
}
talk-dose = { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}, { $times ->
    [1] once a day
    [2] twice a day
   *[other] { $times } times a day
}
talk-stage = Stage { $stage } for “{ $word }”
talk-word = A new word: “{ $word }”
talk-likes = A likes test
talk-check = A check of understanding of “{ $word }”
talk-note = A note
talk-note-on = A note on { $about }
talk-question = A question
talk-practice = Something to practise
talk-question-on = A question on { $about }
talk-about-word = “{ $word }”
talk-about-session = the session of { $when }
talk-about-page = the page { $page }
talk-takes-up = Takes up again: { $what }
talk-accept = Accept
talk-noted = Noted
talk-decline = Decline
talk-not-any-more = Not any more
talk-answer = Answer
talk-your-answer = Your answer
talk-add-words = Add words
talk-most = At most { $most } characters.
talk-if-you-like = If you like. At most { $most } characters.
talk-reply = { $reply ->
    [accepted] { $who } accepted, { $when }
    [declined] { $who } declined, { $when }
    [ended] { $who } ended this, { $when }
   *[said] { $who } answered, { $when }
}
talk-goes-on = { $name } goes on with this, since { $day }.
talk-stands-in = { $name } stands in for this, up to { $day }.
talk-someone = Someone of the home
talk-standing = { $standing ->
    [declined] declined
    [answered] answered
    [ended] its last day has passed
    [over] over without an answer
   *[withdrawn] taken back
}
talk-since = Since { $since }. Last day: { $last }.
talk-kept = { $way ->
    [show] “{ $word }” was shown
    [any] “{ $word }” was shown or invited
   *[other] “{ $word }” was invited
} on { $on } of { $days ->
    [one] { $days } day
   *[other] { $days } days
}, { $times ->
    [1] once
    [2] twice
   *[other] { $times } times
}. Agreed: { $dose }.
talk-not-begun = “{ $word }”: no day has passed yet. Agreed: { $dose }.
talk-sessions = { $sessions ->
    [one] In { $sessions } session.
   *[other] In { $sessions } sessions.
}
talk-sessions-timed = { $sessions ->
    [one] In { $sessions } session, { $minutes } min.
   *[other] In { $sessions } sessions, { $minutes } min together.
}
talk-no-record = { $days ->
    [one] { $days } day has no record at all: nothing can be said of it.
   *[other] { $days } days have no record at all: nothing can be said of them.
}
talk-does-it-help = Does it help?
talk-pressed = “{ $word }”, pressed of wanted invitations. Since then: { $since }. In the { $days } days before: { $before }.
talk-right = “{ $word }”, right of presses. Since then: { $since }. In the { $days } days before: { $before }.
talk-other-causes = Other things change too. Whether the plan did it, these figures cannot tell. A trial of a change can tell more.
talk-to-trial = Plan a trial of a change
talk-do-word = Add the word
talk-card = From { $name }: { $what }
talk-agreed-with = Agreed with { $name }: { $what }
talk-card-more = From { $names }: { $count } to answer
talk-now-with = { $to } is your coach now, in place of { $from }. What was agreed goes on.
talk-now-covered = { $to } stands in for { $from } up to { $day }. What was agreed goes on.
talk-row = Agreed: { $dose }
talk-row-waits = Agreed: { $dose }. It waits: the step here comes first.
talk-row-never = Agreed: { $dose }. It is not done: nobody waits for a word that ends sessions.
talk-first-head = What Today says first, before any inviting:
talk-first = “{ $word }”: Today says: { $step }. { $why }. That comes first; the plan waits for it.
talk-first-ends = “{ $word }” ends sessions: it is shown then, and nobody waits for it. No inviting can be planned.
talk-ends-sessions = { $word } (ends sessions)
talk-write = Write to this home
talk-write-about = Write about this
talk-write-again = Write again
talk-take-back = Take back
talk-end = End this
talk-write-intro = One thing at a time, under your name: { $name }. The home accepts, declines or answers.
talk-which = What?
talk-kind = { $kind ->
    [plan] A plan for some days
    [change] A change to try
    [stage] A stage for a word
    [word] A word to add
    [likes] A likes test
    [check] A check of understanding
    [meeting] A meeting
    [note] A note
    [practice] Something to practise
   *[question] A question
}
talk-rests = A strong sign rests { $name }’s sessions. Until Today lifts that, no session can be proposed. A note or a question can.
talk-rests-still = cannot be proposed now: a strong sign rests { $name }’s sessions
talk-with = With { $name }
talk-instead = { $name } instead
talk-something-else = Something else
talk-no-words = { $name } has no word yet.
talk-line-of = Word { $number }
talk-more-lines = More words
talk-field-word = Word
talk-field-way = How
talk-way = { $way ->
    [show] show it
    [offer_in_view] invite, the thing in view
    [ask_and_point] invite, ask and point
    [ask_between_two] invite, “this or that”
   *[any] as it fits
}
talk-field-minutes = Minutes
talk-field-times = Times a day
talk-field-last-day = Last day
talk-field-stage = Stage
talk-field-says = What it would say
talk-field-about = About
talk-about-all = everything
talk-field-text = In your words
talk-send = Send
talk-no-line = is missing; choose at least one word
talk-way-of-closing = invites a word that ends sessions: nobody waits for that one; choose “show it” or “as it fits”
talk-stage-of-closing = is not for a word that ends sessions: nobody waits for that one; choose another stage
talk-last-day-wrong = must be a day from today to { $last }
talk-no-such = There is no such proposal here.
talk-over = is over or taken back: there is nothing left to accept or decline
talk-meeting = A meeting on { $when }, { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}
talk-field-day = Day
talk-field-time = Time
talk-time-zone = As the home’s clocks show it ({ $zone }), such as 18:30.
talk-time-wrong = must be a time to come that is on the clocks that day, such as 18:30
talk-filled = { $by ->
    [plan] Filled in from the last plan. Change what no longer fits.
   *[steps] Filled in with the steps that Today chose. Change what does not fit.
}
talk-own = A plan of our own
talk-own-intro = For some days with { $name }, as you settled it at a meeting or among yourselves. Today shows it beside each word’s step.
talk-own-title = Our own plan
talk-own-of-home = The home’s own plan
talk-own-make = Make a plan of our own with { $name }
talk-own-keep = Keep this plan
talk-own-stop = Stop this plan
talk-change = To try: { $change }
talk-change-words = To try for { $words }: { $change }
talk-field-change = In words, what changes
talk-field-change-hint = needed for “something else”; for another word: which
talk-field-change-words-hint = none ticked: all
talk-change-measured = What is measured
talk-change-how = If the home accepts, one more tap draws by lot when the change begins. It is judged at its end.
talk-as-trial = { $what } Measured: { $measure }.
talk-draw = Draw the days
talk-draw-hint = From tomorrow on. Only the day’s condition is shown. A strong sign of stress ends it, and stopping is always right.
talk-other-numbers = Choose the numbers
talk-trial-lead = Tried by lot:
talk-to-the-trial = The trial
talk-not-agreed = is not agreed: only what was accepted can be tried
talk-trial-today = Trial: { $question } Today { $what }.
talk-hand-over = Another coach: { $name }
talk-cover = Cover by { $name }, { $first } to { $last }
talk-for-club = Written for the club: its other coaches read it, and your answers.
talk-for-club-coach = Written for the club: its other coaches read it, and what the home answers.
talk-not-read = This, and what you answer, is no longer read by { $name }: sharing ended on { $day }.
talk-not-read-now = This, and what you answer, is not read by { $name }: nothing is shared now.
talk-today-not-read = What you do and answer here is no longer read by { $name }, since { $day }.
talk-today-not-read-now = What you do and answer here is not read by { $name }: nothing is shared now.
talk-club-reads = This home shares with your whole club. Its other coaches read what you write here, and the answers.
talk-opens = is decided on a page of its own: it opens the home to somebody
talk-look-and-decide = Look and decide
talk-a-keeper-decides = A keeper of the home decides this.
talk-see-sharing = Who can see this home
talk-field-exercise = Exercise to rehearse
talk-field-character = With whom
talk-field-lessons = Lessons to read
talk-practice-none = None
talk-practice-nothing = Choose an exercise or a lesson.
talk-rehearse-it = Rehearse it: { $exercise }
talk-is-read = read
talk-lessons-read = Lessons read by somebody of the home: { $read } of { $of }
talk-shared-count = Rehearsals shared: { $count }
talk-may-share = After a rehearsal you may share its figures with { $name }. Of a rehearsal nothing is shared by itself.
talk-lessons-shown = Lessons that the home shows as read: { $read } of { $of }. Others may have been read, too.
talk-lessons-seen = { $club ->
    [yes] { $name } and other coaches of the club see only those of these lessons that somebody of the home shows: by a tick at the lesson, off at first.
   *[no] { $name } sees only those of these lessons that somebody of the home shows: by a tick at the lesson, off at first.
}
talk-nothing-to-share = Of this rehearsal there is nothing to share: too little happened.
talk-shared = From a rehearsal of “{ $exercise }” with { $name }, a simulated animal:
talk-word-there = is on a button here already: propose a stage or a plan for it, or something else
talk-word-is-there = “{ $word }” is on a button here already. To its card
talk-word-how = A word alone: the home adds it and chooses what it brings. Nothing is drawn by lot. On buttons here: { $words }.
talk-word-how-none = A word alone: the home adds it and chooses what it brings. Nothing is drawn by lot.
talk-word-by-lot = To see by lot whether another word helps, propose a change to try
talk-today-meeting = Meeting with { $name }: { $when }
talk-today-course-begins = “{ $course }” begins { $day }
talk-today-course = “{ $course }”: week { $week } of { $weeks }, the next from { $day }
talk-today-course-last = “{ $course }”: week { $week } of { $weeks }, up to { $day }
talk-trial-today-until = Trial up to { $last }: { $question } Today { $what }.
talk-trial-begins = Trial from { $day }: { $question }
talk-in-place = { $name } wrote this in the place of { $of }, who goes on with it.
talk-cover-reads = You stand in for { $name }, who reads what you write here and goes on with it.
talk-about-word-chart = the chart “{ $chart }” of “{ $word }”
talk-about-chart = the chart “{ $chart }”
talk-look-at = Look at { $what }
talk-write-about-chart = Write about this chart
