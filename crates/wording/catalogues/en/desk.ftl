# A coach's desk. $name is the animal's, $word what a button says.
desk-swallowing = { $today ->
    [yes] { $name } swallowed something today: call a veterinarian now.
   *[other] { $name } swallowed something on { $day }. Ask whether a veterinarian has seen to it.
}
desk-threat = { $count ->
    [one] { $name } growled, snapped or bit on { $day }.
   *[other] { $name } growled, snapped or bit { $count } times in { $days } days, last on { $day }.
}
desk-guarding = { $count ->
    [one] { $name } guarded something on { $day }.
   *[other] { $name } guarded something { $count } times in { $days } days, last on { $day }.
}
desk-strong = { $on ->
    [one] { $name } showed strong signs of stress on { $day }.
   *[other] { $name } showed strong signs of stress on { $on } of { $days } days, last on { $day }.
}
desk-taken-back = { $kind ->
    [swallowing] A record that { $name } swallowed something on { $day } was taken back.
    [threat] A record that { $name } growled, snapped or bit on { $day } was taken back.
    [guarding] A record that { $name } guarded something on { $day } was taken back.
   *[other] A record of a strong sign of stress on { $day } was taken back.
}
desk-joins-less = { $name } joins fewer sessions since { $day }: { $lately }. Before: { $before }.
desk-presses-less = { $name } presses less since { $day }: { $lately }. Before: { $before }.
desk-slower = { $name } takes longer to press when invited since { $day }: { $lately }. Before: { $before }.
desk-leaves = { $name } left many of the last joined sessions: { $share }.
desk-silent = Nothing has been written down about { $name } for { $days } days.
desk-stuck = “{ $word }” is stuck: { $cause }.
desk-holds = “{ $word }” gets on, but something stands in its way: { $cause }.
desk-stuck-unknown = “{ $word }” is stuck, and the records do not show why.
desk-cause = { $cause ->
    [hard_to_make_out] the recording may be hard to make out
    [not_wanted] what it brings is not wanted just now
    [too_little] it is shown too little
    [too_late] the thing comes too late
    [avoided] { $name } keeps away from the button
    [time_or_place] the time or place of sessions is hard for { $name }
    [health] { $name } may not be well
    [sounds_alike] it is taken for a word that sounds alike
   *[people_differ] people answer it differently
}
desk-ration = { $name } got more food than the day’s rewards on { $days } of the last { $of } days.
desk-ready = “{ $word }” is ready to be invited since { $day }.
desk-check-open = A check waits to be finished: { $done } of { $of } trials done.
desk-check-never = { $words ->
    [one] One word in use was never checked.
   *[other] { $words } words in use were never checked.
}
desk-little = { $lack ->
    [days] Records on { $days } of { $of } days are too few to say what holds a word up.
    [records] Too few presses and sessions are written down, on { $days } of { $of } days, to say what holds a word up.
   *[whole] Too few presses and sessions are written down whole, on { $days } of { $of } days, to say what holds a word up.
}
desk-outside = Outside the middle nine tenths of { $homes } comparable homes: { $lies }
desk-outside-wait = { $by ->
    [days] { $wait ->
        [one] { $wait } day
       *[other] { $wait } days
    }
   *[showings] { $wait ->
        [one] { $wait } showing
       *[other] { $wait } showings
    }
}
desk-outside-open = no press of “{ $word }” yet, after { $wait }. There, nineteen in twenty words were first pressed within { $place } ({ $level } interval: { $low } to { $high }).
desk-outside-later = “{ $word }” was first pressed after { $wait }. There, nineteen in twenty words were first pressed within { $place } ({ $level } interval: { $low } to { $high }).
desk-outside-sooner = “{ $word }” was first pressed after { $wait }. There, nineteen in twenty words took { $place } or more ({ $level } interval: { $low } to { $high }).

desk-why-recurring = They come back: in { $weeks } of the last { $of } weeks.
desk-why-taken-back = It may have been a slip of the finger. Ask the home what happened.
desk-why-change = Beyond chance, allowing for everything this desk looks at ({ $p }).
desk-why-silent = Days from one record to the next: { $usual }. The longest gap so far was { $longest }; it is named from { $after } whole days on.
desk-why-silent-new = There is no habit yet to hold it against; it is named from { $after } whole days on.
desk-why-hardly = Called stuck for this: { $presses ->
    [0] { $name } has not pressed it unasked in four weeks
    [one] { $name } pressed it once unasked in four weeks
   *[other] { $name } pressed it { $presses } times unasked in four weeks
}, and it was shown for longer than three.
desk-why-seldom-taken = Called stuck for this: { $name } seldom takes what it brings, and there are too few invitations to say more.
desk-why-seldom-right = Called stuck for this: right in clearly less than half of the times { $name } was invited and wanted the thing: { $right }.
desk-why-right = Right, of the times { $name } was invited and wanted the thing: { $right }.
desk-why-hours = Joined at these hours: { $figure }. At others: { $beside }.
desk-why-fall = Lately: { $figure }. Before: { $beside }.
desk-why-alike = Pressed the other word when this one was invited: { $figure }. When neither was invited: { $beside }.
desk-why-people = One person: { $figure }. Another: { $beside }.
desk-why-recording = Its recording ({ $seconds }) is very short, or quieter than the others.
desk-why-ration = The most on one day: { $most } kcal. The day’s rewards are { $budget } kcal.
desk-why-ready = { $showings ->
    [one] Shown once
   *[other] Shown { $showings } times
}, and waiting for { $days } days.
desk-why-check = Only a check can tell it from cues and luck.
desk-why-little = Written down whole (a press with its answer, a session with its end): { $closed }. What nobody wrote down may still have happened.
desk-why-outside = Laid beside { $kind } in homes with { $who }. Words of { $name } that could be laid beside others: { $laid }. Anywhere, about one word in ten lies outside.
desk-why-outside-cause = What may hold it up here: { $cause }.
desk-why-sooner = A press says that a button was pressed, not why. Sooner is not better.
desk-until-without = No other such sign before { $day }.

desk-until-asked = Word from the home on why it was taken back.
desk-until-record = Any record.
desk-until-more-records = { $lack ->
    [days] Records on most days, with answers and ends of sessions.
    [records] More presses and sessions written down, with answers and ends.
   *[whole] The answer to most presses, and the end of most sessions, written down.
}
desk-until-more-right = Clearly more right presses when invited, or records that point to a cause.
desk-until-fewer-over = Fewer than three such days in a week, or an allowance a veterinarian sets.
desk-until-invited = The word is invited, or its figures no longer point to inviting.
desk-until-first-press = A first press, or a newer release of these figures.
desk-until-since-press = { $days } days since the first press, or a newer release of these figures.
desk-aside = { $ago ->
    [0] Put aside less than a day ago
    [one] Put aside { $ago } day ago
   *[other] Put aside { $ago } days ago
}; back within { $days ->
    [one] { $days } day
   *[other] { $days } days
}, sooner if it gets worse.
desk-back = { $ago ->
    [0] You put this aside less than a day ago.
    [one] You put this aside { $ago } day ago.
   *[other] You put this aside { $ago } days ago.
} { $why ->
    [worse] It has got worse since.
    [anew] It has begun anew since.
    [cause] The records now point to another cause.
   *[days] Its days are over.
}

desk-new-signs = { $kind ->
    [swallowing] { $count ->
        [one] { $name } swallowed something: { $day }.
       *[other] { $name } swallowed something { $count } times, last { $day }.
    }
    [threat] { $count ->
        [one] { $name } growled, snapped or bit: { $day }.
       *[other] { $name } growled, snapped or bit { $count } times, last { $day }.
    }
    [guarding] { $count ->
        [one] { $name } guarded something: { $day }.
       *[other] { $name } guarded something { $count } times, last { $day }.
    }
   *[other] { $count ->
        [one] A strong sign of stress: { $day }.
       *[other] Strong signs of stress: { $count }, last { $day }.
    }
}
desk-new-joining = Sessions { $name } joined: { $lately }. Before: { $before } ({ $p }).
desk-new-presses = Own presses: { $lately }. Before: { $before } ({ $p }).
desk-new-word = “{ $word }” is new on the board.
desk-word-gone = “{ $word }” is no longer in use.
desk-first-press = { $name } pressed “{ $word }” unasked for the first time: { $day }.
desk-new-stage = “{ $word }” went from { $from } to { $to }.
desk-above-chance = Right presses of “{ $word }” are now more than chance: { $right }.
