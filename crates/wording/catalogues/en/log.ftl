log-title = Log
log-judge-heard = Judge presses a microphone heard
log-about = Everything noted for { $name }, newest first. Nothing is ever erased: what is undone or edited keeps its first record.
log-filter = Choose what to see
log-filtered = Shown: { $what }
log-day = Day
log-kind = Kind
log-word = Word
log-person = Noted by
log-any = all
log-show = Show
log-show-all = Show everything
log-kind-name = { $kind ->
    [presses] presses
    [answers] answers
    [sessions] sessions
    [invitations] invitations and rounds
    [signs] signs
    [food] food
    [likes] likes tests
    [checks] checks, swaps, trials
    [cards] cards, board and rules
   *[other] other notes
}
log-nothing = Nothing is noted yet.
log-nothing-such = Nothing of this kind is noted here.
log-newest = Newest
log-newer = Newer
log-older = Older
log-pages = Pages of the log
log-undone = Undone: { $what }
log-edited = Edited. First noted: { $what }, { $when }
log-when = { $day }, { $time }
log-noted = { $when }{ $who ->
    [none] { "" }
   *[other] { " " }· { $who }
}{ $how ->
    [heard] { " " }· heard
    [device] { " " }· from a device
    [import] { " " }· imported
   *[other] { "" }
}{ $twice ->
    [no] { "" }
   *[other] ; tapped too, so it counts once
}
log-edit = Edit
log-edit-this = Edit: { $what }, { $when }
log-undo = Undo
log-undo-this = Undo: { $what }, { $when }
log-bring-back = Bring back
log-bring-back-this = Bring back: { $what }, { $when }
log-time = Time
log-time-zone = in { $zone }
log-time-wrong = Time { $what }.
log-time-form = must be a time such as 18:30 or 18:30:05
log-time-ahead = lies ahead; it must be now or earlier
log-who-pressed = Who pressed
log-by = { $by ->
    [animal] { $name }
    [person] a person, to show
   *[other] nobody saw
}
log-meant = Did it look meant?
log-accident = { $accident ->
    [no] it looked meant
    [likely] it looked like a stumble
   *[other] cannot tell
}
log-how-answered = How it was answered
log-what-then = What { $name } did then
log-how-strong = How strong
log-took = Did { $name } take the thing?
log-yes = yes
log-no = no
log-not-seen = not seen
log-back = Back to the log
log-ahead = { $n ->
    [one] 1 event is dated after now.
   *[other] { $n } events are dated after now.
}
log-ahead-why = { $n ->
    [one] It is of { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
   *[other] The first is of { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
} The clock of the device that noted this was ahead. Cards and recordings count already; everything else counts from its time on. Set that clock right, and edit the times in the log.
log-no-such-event = The log has no such event.
log-took-choice = must be yes, no or left open
log-id-without-time = The address names an id, but not before which time: ?before=<time>&id=<id>
log-on-its-own-page = is put right on its own page: cards under People, consent under Who can see this
log-about-server = Everything noted for { $name }, newest first. What is undone or edited keeps its first record. All of it goes only when a keeper has the whole home erased.
