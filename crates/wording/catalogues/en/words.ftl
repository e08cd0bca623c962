words-first = First words
words-further = Propose further words
words-none-yet = No word yet. Two or three are enough to begin with (common practice, no source).
words-take = Take these words
words-button-says = The button says
words-says = “{ $says }”:
words-untested = No likes test yet: what { $name } likes is a guess here.
words-test-first = Test first, about ten minutes
words-tested = { $trials ->
    [one] From one trial of a likes test, the day’s food, how long giving takes, and how the words sound.
   *[other] From { $trials } trials of likes tests, the day’s food, how long giving takes, and how the words sound.
}
words-other-sets = Other sets ({ $sets })
words-left-out = Left out, and why ({ $things })
words-why-these = Why these?
words-score = Best mix: liked, quick to give, easy to tell apart. Score { $total }: liking and deliveries { $liked }, kinds { $kinds }, sounding apart { $apart }, already said { $said }.
words-best-in = The best of all sets in { $share } of { $draws } draws from what is not known yet.
words-how-much = { $basis ->
    [measured] Given about { $times ->
        [one] once
       *[other] { $times } times
    } a day so far
   *[most] At most about { $times ->
        [one] once
       *[other] { $times } times
    } a day
}{ $guess ->
    [yes] , a guess
   *[no] { "" }
}
words-how-much-by = { $by ->
    [time] More does not fit into five minutes at the board.
    [food] The day’s food allows no more.
    [card] Its card allows no more.
   *[usual] More is unusual for its kind; give it as often as suits.
}{ $guess ->
    [yes] { " " }So far that is a guess; your own records replace it.
   *[no] { "" }
}
words-not-tested = Not tested yet: whether { $name } likes it is a guess.
words-picked = Probability that { $name } picks it over something middling: { $figure }.
words-scored = { $format ->
    [free_access] Busy with it in a timed test: { $figure }.
   *[other] Taken in a test: { $figure }.
}
words-seconds-measured = Giving it takes about { $seconds } s: measured at home, n = { $n }.
words-seconds-kind = Giving it takes about { $seconds } s: as with other things of its kind at home, n = { $n }, until it has its own figure.
words-seconds-card = Giving it takes { $seconds } s, as its card says.
words-seconds-usual = Giving it takes about { $seconds } s: usual for its kind (common practice, no source), until given five times.
words-a-day-measured = Given { $times ->
    [one] once
   *[other] { $times } times
} on a usual day: measured on { $days ->
    [one] one day
   *[other] { $days } days
}.
words-a-day-card = At most { $times ->
    [one] once
   *[other] { $times } times
} a day, as its card says.
words-a-day-usual = At most { $times ->
    [one] once
   *[other] { $times } times
} a day: usual for its kind (common practice, no source).
words-pieces = { $pieces ->
    [one] One piece a day fits the food allowance, if nothing else is fed as reward.
   *[other] { $pieces } pieces a day fit the food allowance, if nothing else is fed as reward.
}
words-already-said = You already say this word often.
words-sounds-like-one = Sounds much like “{ $other }”: a different word is easier to tell apart.
words-how-many = must be 1 to { $most } words to begin with, not { $ticked }
words-must-not = Must not be given: { $why }.
words-twice = “{ $says }” is on another button already; choose another word
words-no-set = No proposal yet: { $usable } of the things listed can be first words, and { $needed } are needed.
words-too-many = No proposal: too many things to compare. Put some away first.
words-no-allowance = How much food { $name } may have is not set, so it cannot be portioned.
words-bad-figure = A figure on its card cannot be right.
words-not-at-board = It cannot be given at the board again and again, and a first word needs many quick repetitions. If it can, say so on its card.
words-no-piece = The day’s food allowance leaves no piece of it.
words-too-slow = Takes { $seconds } s at the board, more than { $slowest } s: too few repetitions.
words-too-seldom = Can be given { $times } times a day, fewer than { $fewest }.
words-no-company = Goes with no other: { $needed } words are needed together.
words-as-good = { $cautioned ->
    [yes] As good; a food for only a little gives way. You can take it instead.
   *[no] As good; you can take it instead.
}
words-outscored = { $by ->
    [liking] Liked less than the chosen ones (score { $behind } lower).
    [uncertainty] How much it is liked is less sure: test it more (score { $behind } lower).
    [deliveries] Can be given less often than the chosen ones (score { $behind } lower).
    [spread] Adds no new kind of reward (score { $behind } lower).
    [apart] Sounds closer to the others than the chosen ones do (score { $behind } lower).
   *[said] You do not say it yet, unlike the chosen ones (score { $behind } lower).
}
words-give = Give what “{ $says }” asks for.
words-asks-for = asks for: { $name }
words-not-now = “{ $said }”, once and calmly; offer something else.
words-not-now-said = Not now
words-size-leaves-out = and places a row leave out a place that holds a word; change the size first and look
words-cannot-give = cannot be given to { $name }: { $why }. Choose another
words-page-title = Words of { $name }
words-add = Add a word
words-labels = Labels
words-where-they-are = Where they are
words-not-drawn = The board is not drawn yet. With it, presses can be read by place.
words-edit-board = Edit the board
words-closing-word = closing word
words-means = Means
words-answer = Answer
words-not-now-title = Not now
words-not-written = not written yet
words-given = Given
words-card-and-stage = Card and stage
words-of = of { $says }
words-these-alike = These sound much alike:
words-different = A different word for one of them is easier to tell apart.
words-off = Taken off, or taught to others ({ $words })
words-to-others = taught to others
words-shown = { $shown ->
    [0] not shown yet
    [one] shown once
   *[other] shown { $shown } times
} · { $own ->
    [0] no own press
    [one] one own press
   *[other] { $own } own presses
} in 28 days
words-stage = { $stage ->
    [prepare] prepare
    [show] show
    [invite] invite
   *[converse] converse
}
words-on-another = is on another button already; choose another word, or open that card
words-gives-nothing = nothing: it only says something
words-new-title = A new word
words-quoted = “{ $says }”
words-kept = Saved.
words-alike-here = Sounds much like another word here and may be hard to tell apart: { $how }. A different word for one of them is safer.
words-says-hint = short, and unlike the other words
words-means-here = It means here
words-means-hint = what it asks for or tells
words-answer-by = Everyone answers by
words-answer-hint = the same each time, such as: give one piece within three seconds
words-when-not-now = When the answer is “not now”, everyone
words-not-now-hint = says and does this
words-what-given = What is given
words-is-closing = a closing word: it ends a session and calms
words-taught-to = Taught to
words-on-board = on the board (untick to take it off; what was noted stays)
words-back = Back to Words
words-rules-for = Rules of the house for it
words-rules-none = None of its own.
words-no-such = This notebook knows no such word.
words-board-title = The board
words-would-move = A word that moves must be found anew: leave known words where they are if you can. This would move:
words-rows = Rows
words-columns = Places a row
words-change-size = Change the size
words-board-language = Language of the words
words-board-language-hint = the one the buttons speak; words that sound alike are found by its spelling
words-not-on-it = Not on it: { $words }.
words-propose-places = Propose places for these
words-places-stay = Words on the board stay. Those that sound alike are kept apart, and busy ones within reach.
words-yes-move = Yes, move them
words-mat = Leave a place free beside a word that is pressed most, keep words that sound alike apart, and fix the board on a grippy mat: a board that slides or rattles is avoided. Close battery covers with their screws.
words-to-place = “{ $says }” to row { $row }, place { $place }
words-off-board = “{ $says }” off the board
words-move-unticked = is not ticked: words that are in use would change their place
words-size-missing = are missing; give 1 to 20
words-no-places = cannot be proposed: { $why }
words-as-you-stand = As you stand before it.
words-taken-off = taken off
words-which-where = Which word where, as you stand before it
words-places = Places
words-place = Row { $row }, place { $place }
words-place-taken = holds a word that stands in row { $row }, place { $place } already; choose one of the two
words-recording = Recording
words-no-recording = No recording is kept here. The one on the button is enough to begin: record softly, one word, in a usual voice, away from noise. With the same sound kept here, presses can be heard by a microphone.
words-sound-file = Sound file
words-sound-file-hint = WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF or WebM; the very sound that is on the button
words-keep-and-check = Keep and check it
words-record-softly = A loud replay close to the ear can frighten or harm: record softly and let { $name } approach.
words-check-nothing = Nothing to object to.
words-check-found = The check found:
words-recording-of = Recording of { $says }
words-play-unheard = Play it where { $name } does not hear it: a word that sounds and brings nothing teaches that it means nothing.
words-sound-not-stored = { $seconds } s long. Its sound file is not stored here.
words-sound-not-stored-lufs = { $seconds } s long, loudness { $lufs } LUFS. Its sound file is not stored here.
words-sound-unreadable = Its sound cannot be read: { $why }.
words-no-such-recording = There is no such recording here.
words-picture-told = Waveform, and below it the strength of each pitch over time
words-picture-label = Picture of the recording, { $seconds } seconds long
words-stage-means = { $stage ->
    [prepare] card, recording and place are being settled; no showing yet
    [show] people press, say and give; nothing is asked
    [invite] an offer, a wait, then show it and give it all the same
   *[converse] { $name } presses unasked; everyone answers
}
words-stage-with = Stage with { $name }
words-stage-now = Now: { $stage }, { $means }.
words-figures-agree = The figures point to the same.
words-figures-differ = The figures point to { $stage }: { $means }.
words-figures-behind = Because of what
words-because = Because:
words-would-change = What would change it:
words-fact-shown = Shown
words-fact-shown-times = { $times ->
    [0] not yet
    [one] once
   *[other] { $times } times
}{ $week ->
    [0] , not in the last seven days
    [one] , once in the last seven days
   *[other] , { $week } times in the last seven days
}
words-fact-delay = From press to giving
words-fact-response = Pressed when invited and wanting it
words-fact-own = Own presses in 28 days
words-never-counted = Not pressing is never counted as not understanding.
words-work-at = Work at it as
words-back-no-loss = Going back a stage is no loss.
words-stage-why = Why
words-stage-why-hint = if you like
words-stage-set = Set the stage
