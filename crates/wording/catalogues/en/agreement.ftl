agreement-title = Do we see the same?
agreement-intro = What two people note, each alone, tells whether the figures of this notebook would come out alike whoever taps.
agreement-records = From the log: what two people both noted
agreement-no-records = No two people have noted the same session or check yet. Let two people, each with an own device, note one session without looking at each other’s; then they stand here.
agreement-pair = { $first } and { $second }, { $animal }: { $kind ->
    [presses] { $n ->
        [one] { $n } press
       *[other] { $n } presses
    }
   *[other] { $n ->
        [one] { $n } check trial
       *[other] { $n } check trials
    }
}
agreement-which = Which to compare
agreement-group = { $kind ->
    [presses] Session
   *[other] Check
} of { $when }: { $n }
agreement-compare = Compare
agreement-compare-these = Compare only these
agreement-paired = { $kind ->
    [presses] Presses of one session count as the same where both people noted one within { $seconds }; what only one noted is “{ $none }” for the other.
   *[other] Trials of one check are compared by their number.
}
agreement-not-noted = not noted
agreement-paste = From a film: type or paste scores
agreement-paste-intro = Two people watch the same film, each alone, and write down what they see.
agreement-scores = Scores
agreement-scores-hint = A line for each thing scored, a column for each person, parted by commas: press,brush. Leave a column empty where somebody gave no score.
agreement-scores-wrong = Scores: { $what }.
agreement-scale = What the scores are
agreement-scale-names = names, such as press and brush
agreement-scale-steps = numbers of which only the order counts, such as 1 calm to 3 tense
agreement-scale-numbers = numbers whose differences count, such as seconds
agreement-headed = The first line holds the people’s names
agreement-not-stored = Nothing of what is typed here is stored. { $link }.
agreement-how-computed = How it is computed
agreement-what-scores-say = What the scores say
agreement-sentence = { $alike ->
    [none] { "" }
   *[other] They scored { $alike } alike.{ " " }
}{ $beyond ->
    [well] Beyond chance they agree well.
    [little] Beyond chance that is too little to build on: settle first what counts as what.
    [some] They agree beyond chance; how well is not yet known closely enough to build on.
    [chance] That could be chance alone.
   *[other] How far that goes beyond chance cannot be judged yet.
}
agreement-sentence-nothing = Nothing was scored by two people, so nothing can be said about agreement.
agreement-scored-alike = Scored alike
agreement-kappa = Cohen’s kappa
agreement-alpha = Krippendorff’s alpha
agreement-shared = Scored by at least two of { $people } people
agreement-differing = Most often taken differently:
agreement-differs = { $one } “{ $first }”, { $two } “{ $second }”: { $n ->
    [one] once
   *[other] { $n } times
}
agreement-would-change = What would change it: more things scored by both without knowing each other’s scores; and a clearer wording of what counts as what, tried on new film.
agreement-no-interval = { $value } (no interval, n = { $n })
agreement-none = none (n = { $n })
agreement-lacking = { $figure }; { $why }
agreement-few = below { $least } scores its interval is too short
agreement-wrong-empty = no scores: write a line for each thing scored, with a column for each person, such as “press,brush”
agreement-wrong-ragged = line { $line } has { $got ->
    [one] { $got } column
   *[other] { $got } columns
} where line { $first } has { $wanted }; leave a column empty where somebody gave no score
agreement-wrong-people = { $n ->
    [one] { $n } column
   *[other] { $n } columns
}; two to twenty people are compared, a column for each, parted by commas, semicolons or tabs
agreement-wrong-long = too many lines
agreement-wrong-number = line { $line }, { $person }: “{ $got }” is no number; numbers are needed unless the scores are names
agreement-wrong-names = too many different names; are these numbers?
agreement-person = person { $number }
