# What an event of the log says.
events-word-without-card = a word not on any card
events-reward-without-card = something not on any card
events-home-without-name = A home without a name
events-home = Home: { $name }, { $zone }
events-person = Person: { $name }
events-animal = Animal: { $name }
events-reward = Reward: { $name }
events-word = Word: { $word }
events-clip = Recording of { $word }
events-board = Board of { $rows } by { $columns }, { $words ->
    [one] { $words } word
   *[other] { $words } words
}
events-rule = House rule: { $text }
events-stage = { $word }: stage { $stage }
events-session-began = Session began: { $purpose }{ $room ->
    [none] { "" }
   *[other] , { $room }
}
events-showing = showing
events-inviting = inviting
events-likes-test = likes test
events-check = check of understanding
events-joined = Joined
events-joined-after = Joined after { $seconds }
events-left = Left
events-session-ended = Session ended: { $reason }
events-pressed-itself = { $name } pressed { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }({ $sure } sure)
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(looked like a stumble)
}
events-pressed-to-show = Shown: pressed { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }({ $sure } sure)
}
events-pressed-by-someone = Someone pressed { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }({ $sure } sure)
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(looked like a stumble)
}
events-answered = { $word }: { $answer }{ $other ->
    [none] { "" }
   *[other] { " " }({ $other })
}{ $after ->
    [none] { "" }
   *[other] { " " }after { $after }
}{ $then ->
    [none] { "" }
   *[other] ; { $name } { $then }
}
events-pressed-then = pressed { $word }
events-looked = Looked at the board
events-looked-at = Looked at { $word }
events-brushed = Brushed { $word } without sounding it
events-round = Round of { $calls } begun: { $words }
events-swaps-agreed = Swaps agreed for { $days ->
    [one] { $days } day
   *[other] { $days } days
}, one answer in { $one_in }: { $words }
events-drawn-give-it = Drawn for { $word }: give it
events-drawn-give-other = Drawn for { $word }: give { $other } instead
events-swaps-stopped = Swaps stopped
events-swaps-stopped-signs = Swaps stopped because of signs of stress
events-invited = Invited { $word } ({ $way }{ $call ->
    [none] { "" }
   *[other] , drawn, call { $call }
}, wait { $wait }): { $result }
events-in-view = in view
events-asked-pointed = asked, pointed
events-this-or-that = this or that
events-pressed-at = pressed { $word } at { $seconds }
events-answered-without-button = answered without a button
events-nothing-by-wait = nothing by the wait
events-result-left = left
events-asked-without-button = Asked for { $word } without a button{ $how ->
    [none] { "" }
   *[other] { " " }({ $how })
}{ $shown ->
    [no] { "" }
   *[other] ; shown
}
events-sign = Sign ({ $level }): { $sign }
events-fed = Fed { $pieces ->
    [none] { "" }
   *[other] { $pieces } ×{ " " }
}{ $what }, { $kcal }
events-food = food
events-likes-test-of = Likes test of { $n ->
    [one] { $n } thing
   *[other] { $n } things
}: { $format }
events-one-at-a-time = one at a time
events-two-at-a-time = two at a time
events-all-at-once = all at once, without replacement
events-free-access = free access
events-offered = Offered { $things }: { $came }
events-chose = chose { $what }
events-chose-none = chose none
events-walked-away = walked away
events-watched = watched for { $seconds }
events-check-planned = Check of understanding planned: { $trials ->
    [one] { $trials } trial
   *[other] { $trials } trials
}
events-check-trial = Check, trial { $trial } for { $word }: { $came }
events-nothing = nothing
events-trial-planned = Trial of a change planned: { $question } ({ $points ->
    [one] { $points } point
   *[other] { $points } points
})
events-trial-point = Trial of a change, point { $point }: in fact { $force }
events-trial-stopped = Trial of a change stopped
events-remark = Remark: { $text }
events-lesson-read = Lesson read: { $lesson }
events-consent-given = Consent given: { $what }
events-consent-taken-back = Consent taken back: { $what }
events-consent = { $purpose ->
    [coach_figures] { $who ->
        [club] a club’s coaches see figures
       *[other] a coach sees figures
    }
    [coach_log] { $who ->
        [club] a club’s coaches read the log
       *[other] a coach reads the log
    }
    [coach_snippets] { $who ->
        [club] a club’s coaches hear sounds of presses
       *[other] a coach hears sounds of presses
    }
    [norms] figures count in norms
   *[other] records may be given to studies
}
events-correction = Correction: { $text }
events-undone = Undone{ $because ->
    [none] { "" }
   *[other] : { $because }
}
events-stage-name = { $stage ->
    [show] show
    [invite] invite
    [converse] converse
   *[other] prepare
}
events-question = { $kind ->
    [quieter] Does a quieter button help?
    [place] Does a new place help?
    [faster] Does a faster delivery help?
    [word] Does another word help?
   *[other] Does this help: { $label }?
}
events-a-change = a change
events-in-force = { $force ->
    [changed] with the change
   *[other] as always
}
events-proposal = From { $name }: { $what }
events-proposal-answer = { $reply ->
    [accepted] A coach’s proposal accepted
    [declined] A coach’s proposal declined
   *[said] Answered a coach
}{ $text ->
    [none] { "" }
   *[other] : { $text }
}
events-own-plan = Own plan up to { $day }: { $lines }
