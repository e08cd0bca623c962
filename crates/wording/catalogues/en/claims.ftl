# What may be said, which rival explanations are open, what stands behind it. Never that the animal does not understand.
claims-asking = asking for the thing
claims-hearing = knowing the spoken word
claims-nothing-asking = nothing can be said yet: nothing was drawn; a round of invitations drawn by the notebook could tell
claims-nothing-hearing = nothing can be said yet: no check was begun; a check of picking things could tell
claims-chance = what was drawn so far would also come by chance ({ $n ->
    [one] { $n } drawn trial
   *[other] { $n } drawn trials
}); that speaks for nothing either way
claims-differs = pressing goes with what was called for, more than chance allows ({ $n } presses in drawn rounds{ $since ->
    [none] { "" }
   *[other] , since { $since }
}); habit, liking or cues may still explain it
claims-open-asking = it asks for the thing with buttons swapped under covers more than chance allows ({ $n ->
    [one] { $n } drawn trial
   *[other] { $n } drawn trials
}{ $since ->
    [none] { "" }
   *[other] , since { $since }
}); somebody knew the answer, so cues may still explain it
claims-open-hearing = it picks the thing for the word more than chance allows ({ $n ->
    [one] { $n } drawn trial
   *[other] { $n } drawn trials
}{ $since ->
    [none] { "" }
   *[other] , since { $since }
}); somebody knew the answer, so cues may still explain it
claims-blind-asking = its asking stands up to a blind check: the right button with buttons swapped under covers and nobody near who knew ({ $n ->
    [one] { $n } drawn trial
   *[other] { $n } drawn trials
}{ $since ->
    [none] { "" }
   *[other] , since { $since }
})
claims-blind-hearing = its knowing the word stands up to a blind check: it picks the thing with nobody near who knew ({ $n ->
    [one] { $n } drawn trial
   *[other] { $n } drawn trials
}{ $since ->
    [none] { "" }
   *[other] , since { $since }
})
claims-lapsed = { $said }. More was claimed until { $until }, when words or checks were added: all are judged together, and more is asked of each since
claims-animal-nothing = nothing can be said yet over all words together; a time of agreed swaps could tell
claims-animal-chance = over all words, what came after swaps would also come by chance or habit ({ $n } drawn answers); that speaks for nothing either way
claims-animal-holds = over all its words together it presses again where another thing came than asked for; by liking, frequency, habits of place and the clock alone that would be unlikely ({ $n } drawn answers{ $since ->
    [none] { "" }
   *[other] , since { $since }
}); cues may still explain it
claims-test = { $what }: evidence { $now } now, { $most } at its most; told from { $bar } on (n = { $n })
claims-test-rounds = drawn rounds of invitations
claims-test-open = { $side ->
    [asking] pressing under covers
   *[other] picking things
}, open checks together
claims-test-blind = { $side ->
    [asking] pressing under covers
   *[other] picking things
}, blind checks together
claims-times = { $times } to 1
claims-times-most = more than { $times } to 1
claims-times-none = none
claims-rival = { $rival ->
    [cueing] cueing: a person who knows the answer gives it away
    [place] place habit: it goes to a place, not to a word
    [frequency] frequency: some words are simply pressed more
    [liking] liking: some things are simply liked more
    [clock] clock and bout: what people offer and give follows the hour, and so does what is pressed
   *[other] wishful scoring: people see what they hope for
}
claims-nothing-to-explain = Nothing is claimed, so there is nothing to explain.
claims-ruled-out = { $why ->
    [blind] unlikely: in blind checks nobody near knew the answer; what remains is a cue that nobody thought of
    [places] unlikely: places were drawn at random; what remains is luck, as small as the figures say
    [frequencies] unlikely: words are compared as often as each is pressed; what remains is luck, as small as the figures say
    [thing] unlikely: word and thing were compared crosswise, and the thing was drawn; what remains is a cue
    [drawn] unlikely: the notebook drew, no person chose; what remains is a moment that was put off or left out
    [next] unlikely: the next press counted, which nobody scores; what remains is a press that was missed
    [two] unlikely: two people scored apart and agree; what remains is what both hoped for
   *[other] unlikely: whoever scored could not know; what remains is a sign of it on the recording
}
claims-still-open = open; { $remedy ->
    [blind] a check in which the person with the animal does not know the answer
    [places] a check with places drawn at random
    [thing] a time of agreed swaps, or a check
   *[other] a second person scoring the same records apart
} would tell more
