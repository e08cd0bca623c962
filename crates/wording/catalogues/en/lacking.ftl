# Why a method gives no figure yet. Said after “:” or in brackets, without a full stop.
lacking-few = it needs at least { $needed ->
    [one] one value
   *[other] { $needed } values
}; there { $got ->
    [0] are none
    [one] is one
   *[other] are { $got }
}
lacking-nothing = nothing was observed yet
lacking-no-variation = all values are the same
lacking-one-category = all { $n } scores are the same; agreement beyond chance cannot be judged
lacking-nothing-shared = nothing was scored by at least two people
lacking-disconnected = { $groups } groups of things were never compared with each other
lacking-separated = some things never lost to the others
lacking-unsettled = the estimate did not settle
lacking-no-span = all { $n } observations fall at one time; no change can be measured
lacking-time-goes-back = the records are not in order of time
lacking-not-fit = the records do not fit this method ({ $why })
lacking-choices = { $choices } choices a trial from { $words } words; from 2 choices up to as many as there are words
lacking-no-trials = a check has at least one trial
lacking-word-twice = a word is listed twice
lacking-long-runs = no order was found without one word too often in a row
lacking-no-card = the word has no card
