# Programmes: courses of weeks with aims for people. $times, $a_day and $days are counts; $aim and $done are written.
programme-title = Programmes
programme-intro = A course of some weeks for homes of your club: what people aim at in each, lessons, an exercise. A home joins by accepting. Aims are for people, never for an animal.
programme-none = No programme yet.
programme-new = Lay out a programme
programme-new-how = What the log can tell is counted by itself. Everything else the home ticks. Leave empty what a week has not.
programme-how-many = Weeks
programme-field-name = What it is called
programme-field-club = For which club
programme-field-showings = Showings in the week
programme-field-invitations = Invitations in the week
programme-field-a-day = Sessions a day
programme-field-days = On so many days
programme-field-lessons = Lessons to read
programme-field-own = Another aim, { $number }
programme-field-own-hint = In a few words; the home ticks it.
programme-field-exercise = Exercise
programme-lay-out = Keep this programme
programme-nothing = or another aim of some week is missing
programme-too-many = and the other aims of the week are too many: at most { $most }
programme-week-number = Week { $week }
programme-week = Week { $week }, { $first } to { $last }
programme-weeks = { $weeks ->
    [one] { $weeks } week
   *[other] { $weeks } weeks
}
programme-closed = proposed to nobody more
programme-close = Propose it to nobody more
programme-open-again = Propose it again
programme-rests = must be later: a strong sign rests the sessions until { $until }
programme-proposed = { $weeks ->
    [one] Programme “{ $name }”, { $weeks } week from { $first }
   *[other] Programme “{ $name }”, { $weeks } weeks from { $first }
}
programme-showings = { $times ->
    [one] { $times } showing
   *[other] { $times } showings
}
programme-invitations = { $times ->
    [one] { $times } invitation
   *[other] { $times } invitations
}
programme-sessions = { $a_day ->
    [one] { $a_day } session a day
   *[other] { $a_day } sessions a day
}, on { $days ->
    [one] { $days } day
   *[other] { $days } days
}
programme-lesson = Read the lesson “{ $lesson }”
programme-doing = { $aim }: { $done }
programme-so-many = { $done } of { $of } so far
programme-done = done
programme-not-yet = not yet
programme-tick = Done
programme-not-after-all = Not after all
programme-no-aims = No aims in this week.
programme-for-people = Aims are for people. A day on which nobody has time, or on which the animal would rather not, is a day like any other.
programme-done-noted = Aim { $aim } of week { $week } done
programme-where-each = Where each stands
programme-no-ranking = Each against its own aims, by name. Homes and animals are not compared: they begin from different places.
programme-nobody = Nobody has joined who shares figures with you now.
programme-handed-on = Handed over to { $name } on { $day }. It goes on there.
programme-in-week = Week { $week } of { $weeks }
programme-begins = Begins on { $day }
programme-over = The weeks are over.
programme-weeks-before = The weeks before
programme-course = The course
programme-propose = Propose it to homes
programme-field-animal = With which animals
programme-field-first = First day
programme-propose-button = Propose it
programme-given-on = { $who }: handed over to { $name } on { $day }. It goes on there.
programme-sent = Proposed with { $names }. Each home answers for itself.
programme-left-rests = Left out, for a strong sign rests the sessions: { $names }.
programme-left-handed = Left out, for somebody else goes on there: { $names }.
programme-left-joined = Left out, for they are in it: { $names }.
programme-each-own = Each home gets a proposal of its own, and answers for itself.
programme-all-of-them = With all of them
