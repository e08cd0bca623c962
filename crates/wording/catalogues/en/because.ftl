# Because of what. Figures come written, with their interval and count.
because-strong-signs = Strong signs of stress: { $count } in { $days } days, on { $on } of them{ $today ->
    [0] { "" }
   *[other] , { $today } today
}. The last: “{ $last }”.
because-rests-until = Sessions rest until { $until }: after a strong sign for the rest of the day and twelve hours at the least, after strong signs on two days for a week.
because-lasting-threat = { $count ->
    [one] One growl, snap or bite in { $days } days: “{ $last }”, { $day }.
   *[other] { $count } growls, snaps or bites in { $days } days. The last: “{ $last }”, { $day }.
}
because-lasting-guarding = { $count ->
    [one] { $name } guarded something once in { $days } days: “{ $last }”, { $day }.
   *[other] { $name } guarded something { $count } times in { $days } days. The last: “{ $last }”, { $day }.
}
because-lasting-swallowing = { $count ->
    [one] { $name } swallowed something once in { $days } days: “{ $last }”, { $day }.
   *[other] { $name } swallowed something { $count } times in { $days } days. The last: “{ $last }”, { $day }.
}
because-recurring = It keeps coming back: in { $weeks } of the last { $of } weeks.
because-left-few = { $name } left { $left } of the last { $of } sessions joined.
because-left-sessions = { $name } left { $left } of the last sessions joined: { $share }.
because-mild-signs = Sessions of the last seven days with a mild sign of stress: { $share }.
because-sudden-change = Own presses over the last two days: { $now }. Over the four weeks before: { $before }.
because-food-given = { $given } kcal given { $feeds ->
    [one] in one feed
   *[other] in { $feeds } feeds
} today; the day’s rewards are { $budget } kcal.
because-rewards-listed = { $rewards ->
    [0] No reward is listed yet; a likes test compares at least two.
    [one] One reward is listed; a likes test compares at least two.
   *[other] { $rewards } rewards are listed; a likes test compares at least two.
}
because-no-likes-test = { $rewards ->
    [one] One reward is listed, and it is not tested.
   *[other] { $rewards } rewards are listed, none of them tested.
}
because-no-word-yet = { $trials ->
    [one] One trial of a likes test is recorded
   *[other] { $trials } trials of likes tests are recorded
}, and no word is on the board yet.
because-no-allowance = It cannot be worked out from what is on the card.
because-card-lacks = The card lacks { $lacks }. A word is easier to learn where all answer alike (common practice, no source).
because-slowing = “{ $word }” plays slower by { $by }, in presses heard over { $days ->
    [one] one day
   *[other] { $days } days
}. Probability that it slows more than healthy buttons do: { $probability }.
because-silent = “{ $word }” was last heard on { $day }, { $days ->
    [one] one day
   *[other] { $days } days
} ago. Other words were heard { $others ->
    [one] once
   *[other] { $others } times
} since.
because-never-heard = “{ $word }” has not been heard in { $days ->
    [one] one day
   *[other] { $days } days
} of listening. Other words were heard { $others ->
    [one] once
   *[other] { $others } times
}.
because-silent-before = “{ $word }” was last heard on { $day }, { $days ->
    [one] one day
   *[other] { $days } days
} ago, before that { $before }. Other words were heard { $others ->
    [one] once
   *[other] { $others } times
} since.
because-noted-by-hand = “{ $word }” was noted by hand { $times ->
    [one] once
   *[other] { $times } times
} meanwhile: it sounds, but no longer like its recording here.
because-silent-causes = A flat battery, a broken button or a new recording on it could be why; or there is no use for the word just now. It says nothing about what an animal knows.
because-test-old = The last likes test is { $days } days old. Half of what it said counts as forgotten after { $half } days (common practice, no source).
because-best-unclear = Not clear yet; best so far: { $best } ({ $probability } sure, { $choices ->
    [0] no trial of choosing yet
    [one] one trial of choosing
   *[other] { $choices } trials of choosing
}).
because-when-wanted = { $name } was invited and wanted the thing { $of } times: { $parts }.
because-wanted-this = pressed this word { $all ->
    [yes] each time
   *[no] { $times ->
        [one] once
       *[other] { $times } times
    }
}
because-wanted-other = pressed another word { $all ->
    [yes] each time
   *[no] { $times ->
        [one] once
       *[other] { $times } times
    }
}
because-wanted-none = pressed nothing { $all ->
    [yes] each time
   *[no] { $times ->
        [one] once
       *[other] { $times } times
    }
}
because-when-wanted-early = Too early to say: { $name } was { $of ->
    [0] never yet invited when wanting the thing
    [one] invited and wanted the thing once
   *[other] invited and wanted the thing { $of } times
}.
because-right-none = Of presses when invited, this word: nothing counted yet.
because-right = Of presses when invited, this word: { $share }. { $chance ->
    [more] Past the bar for a next step ({ $bar } to 1).
   *[other] Not more than chance yet.
}
because-right-elsewhere = Of presses when invited, this word: { $share }; pressed when others are invited: { $elsewhere }. { $chance ->
    [more] Past the bar for a next step ({ $bar } to 1).
   *[other] Not more than chance yet.
}
because-showings = { $showings ->
    [0] Never shown
    [one] Shown once
   *[other] Shown { $showings } times
} (wanted: { $wanted }), { $days ->
    [0] on no day
    [one] on one day
   *[other] on { $days } days
} (wanted: { $dayswanted }).
because-joining = Sessions joined in four weeks: { $share }. Before inviting, clearly more than { $floor }.
because-mastery = Sessions in a row with { $share } or more pressed and right: { $sessions } (wanted: { $wanted }). Different people at them: { $people } (wanted: { $peoplewanted }).
because-own-presses = Own presses with the thing taken: { $presses } (wanted: { $wanted }), { $days ->
    [0] on no day
    [one] on one day
   *[other] on { $days } days
} (wanted: { $dayswanted }).
because-below = { $counted ->
    [wanted] Invited and wanting the thing, { $name } pressed
    [latest] The latest times { $name } was invited and wanted the thing, pressed
    [later] Two weeks and more after mastery, pressed when { $name } wanted the thing
   *[right] Two weeks and more after mastery, of presses when invited, this word
}: { $share }. This whole interval, one of 90%, lies below { $bar }, { $counted ->
    [wanted] which inviting asks for
   *[other] which leaving the word to { $name } asks for
}.
because-later-unknown = Whether it lasts is not known: { $wanted ->
    [0] no invitation
    [one] one invitation
   *[other] { $wanted } invitations
} two weeks and more after mastery (wanted: { $needed }).
because-later = Two weeks and more after mastery: pressed { $pressed } of the { $wanted } times { $name } wanted the thing{ $presses ->
    [0] { "" }
   *[other] , right in { $right } of { $presses }
}.
because-strain = Strong signs of stress on several days in sessions with this word.
because-ends-sessions = This word ends a session: it is shown then, and nobody waits for it.
because-not-prepared = The word’s reward or answer is not settled.
because-contradiction = The records contradict themselves: { $why }
because-no-recording-checked = Nobody has checked a recording of it here. Family dogs answered about 30% of trained cues from buttons, near 100% from a live voice (17 dogs; Higaki 2025, figures from a press text).
because-recording = { $found ->
    [both] Its recording ({ $seconds }) is very short and quieter than the others.
    [short] Its recording ({ $seconds }) is very short.
    [quiet] Its recording ({ $seconds }) is quieter than the others.
   *[other] Its recording ({ $seconds }) was checked, which does not tell what an animal makes out.
} Family dogs answered about 30% of trained cues from buttons, near 100% from a live voice (17 dogs; Higaki 2025, figures from a press text).
because-taken = Taken, of what was given for this word in { $days } days: { $share } (bar { $bar }).
because-showings-a-day = Showings in { $days } days: { $rate } (bar { $bar } a day).
because-delay = From press to giving, the middle: { $seconds } (bar { $bar }).
because-near = Looks, brushes and own presses that went to this button: { $share }. It had { $expected } of the showings.
because-comes-more = Own presses of it in seven days: { $now }; in the four weeks before: { $before }. More than chance allows.
because-too-few-hours = Too few sessions at different times of day.
because-uneasy-hours = From { $from } to { $to } { $name } joined { $here }, at other times { $elsewhere }. With coming late, leaving and signs counted in, { $p } (corrected for picking the hours), last { $days } days.
because-too-few-days = Too few days to see a change.
because-late-fall = Joined in the last { $days } days: { $lately }; before: { $before }. With coming late, leaving, signs, own presses and taking counted in, { $p } (corrected for picking the day). The records cannot show health: if anything seems off, ask a veterinarian.
because-only-word = It is the only word.
because-sounds = { $alike ->
    [yes] It sounds much like “{ $nearest }”.
   *[other] It sounds different enough from “{ $nearest }”.
} Another word pressed, of presses when invited: { $others }.
because-too-few-people = Fewer than two people with five answers each.
because-people-delay = { $one } gives after { $first }, { $two } after { $second } (rank-sum test, { $p }).
because-people-give = { $one } gives for { $first } of presses, { $two } for { $second } ({ $p }).
because-many-presses = Own presses in { $days } days: { $rate } (bar { $bar } a day).
because-given-share = Answered with the thing: { $share }.
because-signalled-times = Times of yes and no with a signal: Hanley, Iwata & Thompson 2001, whose last step was 60 s and 240 s. The first step is from memory, those between are ours.
because-never-checked = { $words ->
    [one] One word is in use and was never checked.
   *[other] { $words } words are in use and were never checked.
}
because-check-open = { $done } of { $of } trials of the check done.
