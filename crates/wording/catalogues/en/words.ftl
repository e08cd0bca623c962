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
words-how-much = { $guess ->
    [yes] about { $times } times a day at the board (a guess so far)
   *[no] about { $times } times a day at the board
}
words-not-tested = Not tested yet: whether { $name } likes it is a guess.
words-picked = Chance { $name } picks it over something middling: { $figure }.
words-scored = { $format ->
    [free_access] Busy with it in a timed test: { $figure }.
   *[other] Taken in a test: { $figure }.
}
words-seconds-measured = Giving it takes about { $seconds } s: measured at home, n = { $n }.
words-seconds-kind = Giving it takes about { $seconds } s: as with other things of its kind at home, n = { $n }, until it has its own figure.
words-seconds-card = Giving it takes { $seconds } s, as its card says.
words-seconds-usual = Giving it takes about { $seconds } s: usual for its kind (common practice, no source), until given five times.
words-a-day-measured = Given { $times } times on a usual day: measured on { $days } days.
words-a-day-card = At most { $times } times a day, as its card says.
words-a-day-usual = At most { $times } times a day: usual for its kind (common practice, no source).
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
words-outscored = { $by ->
    [liking] Liked less than the chosen ones (score { $behind } lower).
    [uncertainty] How much it is liked is less sure: test it more (score { $behind } lower).
    [deliveries] Can be given less often than the chosen ones (score { $behind } lower).
    [spread] Adds no new kind of reward (score { $behind } lower).
    [apart] Sounds closer to the others than the chosen ones do (score { $behind } lower).
   *[said] You do not say it yet, unlike the chosen ones (score { $behind } lower).
}
words-give = Give { $says }.
words-asks-for = asks for: { $name }
words-not-now = “Not now”, once and calmly; offer something else.
