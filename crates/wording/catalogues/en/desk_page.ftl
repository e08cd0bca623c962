# The page of a coach's desk. What stands on it is said in desk.ftl.
desk-page-title = Who needs you first
desk-page-needs = Needs
desk-page-week = What changed
desk-page-more-pages = More pages
desk-page-week-how = Since you marked that you spoke, else since a week ago. Facts, and figures that moved beyond chance; what chance moves is not news.
desk-page-no-diagnosis = This page sorts what was written down. It diagnoses nothing: where an animal may be unwell or unsafe, it names whom to ask.
desk-page-how-many = { $shown } shown of { $animals ->
    [one] { $animals } animal
   *[other] { $animals } animals
} in { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
}. Each home’s keepers can read that you looked today.
desk-page-none = Nothing here needs you just now.
desk-page-none-found = No home, animal or word is called so: “{ $find }”.
desk-page-no-news = Nothing changed beyond chance.
desk-page-keys = Keys: j and k go from row to row; in the list the arrow keys as well, Enter opens, a puts aside. Tab reaches everything.
desk-page-keys-week = Keys: j and k go from row to row; in the list the arrow keys as well, Enter opens. Tab reaches everything.
desk-page-keys-anywhere = j and k anywhere on the page
desk-page-behind = { $behind ->
    [one] { $behind } home wrote something newer than stands here.
   *[other] { $behind } homes wrote something newer than stands here.
}
desk-page-unread = { $unread ->
    [one] { $unread } home is still being read.
   *[other] { $unread } homes are still being read.
}
desk-page-look-again = Look again
desk-page-gone = This home shares its figures with you no more. Nothing was kept.
desk-page-was-put = Put aside for { $name }. It is back by its day, and at once when it gets worse or begins anew.
desk-page-filter = Show only some
desk-page-show = Show
desk-page-all-needs = All needs
desk-page-kind = { $kind ->
    [safety] Safety
    [taken_back] Taken back
    [change] Sudden change
    [leaves] Leaves sessions
    [silent] Silent
    [held] A word held up
    [ration] Food
    [ready] Ready to invite
    [check] Checks
    [little] Little written
    [outside] Beside other homes
    [answers] Answers
    [aside] Put aside
   *[none] Nothing needed
} ({ $count })
desk-page-own-mark = Your mark
desk-page-any-mark = Any
desk-page-own-mark-hint = Only you see it. Leave it empty to take it away.
desk-page-keep-mark = Save mark
desk-page-mark-wrong = use up to 40 letters, in one line
desk-page-find = Home, animal or word
desk-page-apply = Show these
desk-page-nothing-needed = Nothing needed just now.
desk-page-more = { $count ->
    [0] More to do here
    [one] { $count } further need, and more to do here
   *[other] { $count } further needs, and more to do here
}
desk-page-whose-figures = Whose figures these are
desk-page-since = Since { $day }, from { $n ->
    [one] { $n } record
   *[other] { $n } records
}: { $sure }.
desk-page-at-least-since = Since { $day } at least, from { $n ->
    [one] { $n } record
   *[other] { $n } records
}: { $sure }.
desk-page-first-seen = First seen here on { $day }, from { $n ->
    [one] { $n } record
   *[other] { $n } records
}: { $sure }.
desk-page-from = From { $n ->
    [one] { $n } record
   *[other] { $n } records
}: { $sure }.
desk-page-until = What would change it: { $what }
desk-page-kept = Agreed: { $words ->
    [one] { $words } word
   *[other] { $words } words
}. Kept, so many of the days so far: { $days }.
desk-page-kept-not-yet = Agreed: { $words ->
    [one] { $words } word
   *[other] { $words } words
}. No day has passed yet.
desk-page-kept-no-record = { $days ->
    [one] { $days } day has no record at all: nothing can be said of it.
   *[other] { $days } days have no record at all: nothing can be said of them.
}
desk-page-put-aside-days = { $days ->
    [one] Put aside for { $days } day
   *[other] Put aside for { $days } days
}
desk-page-aside-ends = What gets worse, begins anew or turns out to have another cause is back at once.
desk-page-bring-back = Bring back
desk-page-safety-stays = what is about safety cannot be put aside
desk-page-unclear = open the desk again: this need is not there
desk-page-spoken = We spoke today
desk-page-since-spoken = Since you spoke on { $day }
desk-page-since-week = Since { $day }
desk-page-same = { $count ->
    [one] { $count } animal without news
   *[other] { $count } animals without news
}
desk-page-same-more = And { $count } more.
desk-page-presses = Own presses
desk-page-joined = Sessions joined
desk-page-weeks = { $what }, a week, oldest first: { $counts }
desk-page-key = How to read the small charts
desk-page-key-says = A bar a week, { $weeks } weeks, the latest on the right and in another colour. A pale bar behind is of how many. The numbers beside it are the scale; the figure above is that of the latest seven days.
desk-page-nameless = a word without a card
desk-page-nameless-home = A home without a name
desk-page-not-begun = Nothing begun yet
desk-page-not-begun-since = Nothing begun since { $day }: no animal is written down.
desk-page-put-away = No animal takes part now
desk-page-put-away-all = Animals are written down there; none of them takes part any more.
desk-page-pages = Pages
desk-page-page = Page { $at } of { $pages }
desk-page-before = Previous
desk-page-after = Next
desk-page-practice = To practise: { $read } of { $of } lessons shown as read, rehearsals shared: { $shared }
desk-page-in-seven = { $count } in 7 days
desk-page-days-written = Days recorded
desk-page-of = { $part } of { $whole }
desk-page-of-within = { $part } of { $whole } ({ $low } to { $high })
desk-page-of-none = none
desk-page-answered = { $homes ->
    [one] { $homes } home answered since you last looked there
   *[other] { $homes } homes answered since you last looked there
}
desk-page-answer = { $reply ->
    [accepted] Accepted: { $what }, { $day }
    [declined] Declined: { $what }, { $day }
    [shared] Shared: { $what }, { $day }
   *[said] Answered: { $what }, { $day }
}
desk-page-answer-what = { $kind ->
    [plan] plan for { $words }
    [stage] stage of { $words }
    [word] a new word
    [likes] likes test
    [check] check of { $words }
    [a_note] a note
    [a_question] a question
    [note] your note
    [question] your question
    [meeting] meeting
    [change] change to try
    [programme] programme
    [practice] something to practise
    [hand_over] hand-over
   *[cover] cover
}
desk-page-answers-more = { $count ->
    [one] { $count } more answer
   *[other] { $count } more answers
}
desk-page-changes-more = { $count ->
    [one] { $count } more change
   *[other] { $count } more changes
}
desk-page-changes-folded = { $count ->
    [one] { $count } change
   *[other] { $count } changes
}
desk-page-stood-in = { $name } in your place: { $what }, { $day }
desk-page-stood-in-more = { $count ->
    [one] { $count } more thing written in your place
   *[other] { $count } more things written in your place
}
