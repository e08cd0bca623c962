# One page before a meeting with a coach. Figures come written with their interval and count.
meeting-title = Before a meeting: { $name }
meeting-link = Before a meeting
meeting-told-since = Told since
meeting-show = Show
meeting-write-plan = Write the next plan
meeting-own-plan = Make it a plan of our own
meeting-safety = Safety first
meeting-new = New since { $day }
meeting-counts = Sessions: { $sessions }. Showings by people: { $showings }. { $name }’s own presses: { $presses }.
meeting-new-word = A new word: “{ $word }”.
meeting-new-stage = “{ $word }” is at the stage { $stage } now.
meeting-first-press = First own press of “{ $word }”: { $day }.
meeting-likes-test = A likes test: { $day }.
meeting-check = A check of understanding of { $words }, planned on { $day }.
meeting-nothing-new = No new word, stage, first press, test or check.
meeting-more = { $count } more, not on this page.
meeting-agreed = What was agreed
meeting-from = From { $name }, agreed on { $day }: { $what }
meeting-own = The home’s own plan of { $day }, up to { $last }
meeting-nothing-agreed = Nothing was agreed for this time.
meeting-figures = Three figures
meeting-figure = Figure
meeting-since = Since { $day }
meeting-before = { $days ->
    [one] The day before
   *[other] The { $days } days before
}
meeting-measure = { $measure ->
    [pressed] Pressed, of wanted invitations
    [right] Right, of presses at invitations
    [presses] Own presses a day
    [joining] Sessions joined
   *[delay] From a person’s press to giving
}
meeting-open = Open questions
meeting-said = { $reply ->
    [accepted] The home accepted on { $day }: { $what }
    [declined] The home said no on { $day }: { $what }
   *[said] The home answered on { $day }: { $what }
}
meeting-next = Agreed at the meeting
meeting-line = Line
meeting-to-write = to be filled in by hand
