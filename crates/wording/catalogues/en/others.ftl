others-title = Others
others-lead = How it went in other homes, beside { $name }’s own records. Usual is not better, and nothing here is an aim.
others-press = A press says that a button was pressed, not why. A long wait says nothing about { $name }.
others-late = A wait longer than usual is no illness and no failure, and says nothing about what { $name } can learn. Where other signs are there too, ask a veterinarian or a qualified behaviour professional.
others-who = { $species ->
    [dog] dogs
    [cat] cats
    [parrot] parrots
    [rabbit] rabbits
   *[other] animals of other species
}{ $age ->
    [under-two] { " " }under two years
    [two-to-seven] { " " }of two to seven years
    [eight-or-more] { " " }of eight years or more
   *[every] { "" }
}
others-kind = { $kind ->
    [food] words for food
    [play] words for play
    [touch] words for touch
    [training] words for training
    [exploring] words for exploring
    [rest] words for rest
    [closing] words that end a session
    [other] words of which nobody said what they bring
   *[every] words
}
others-half = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }, half of all { $kind } were first pressed by the animal itself { $value ->
    [0] before the first showing
    [one] within { $value } showing
   *[other] within { $value } showings
} ({ $level } interval: { $low } to { $high }).
others-half-days = By days: half within { $value ->
    [0] a day
    [one] { $value } day
   *[other] { $value } days
} ({ $level } interval: { $low } to { $high }).
others-half-open = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }, fewer than half of all { $kind } were pressed by the animal itself in the time recorded.
others-half-open-days = By days: fewer than half in the time recorded.
others-middle = The middle half: { $low } to { $high }.
others-middle-open = A quarter: within { $low }. Three quarters: not in the time recorded.
others-beyond = not in the time recorded
others-own-before = { $name } first pressed “{ $word }” before it was first shown.
others-own-pressed = { $name } first pressed “{ $word }” after { $shown ->
    [one] { $shown } showing
   *[other] { $shown } showings
}, over { $days ->
    [0] less than a day
    [one] { $days } day
   *[other] { $days } days
}.
others-own-open = No press of “{ $word }” by { $name } yet: { $shown ->
    [one] { $shown } showing
   *[other] { $shown } showings
} so far, over { $days ->
    [0] less than a day
    [one] { $days } day
   *[other] { $days } days
}. Not yet is not never.
others-any-age = Too few homes had animals of this age: every age is in it.
others-any-kind = Too few homes had words like this one: words for everything are in it.
others-not-enough = Not enough like yours: too few homes for a figure in which nobody can be made out.
others-closing-title = Words that end a session
others-closing = A word that ends a session is shown when something stops. It is learned otherwise than a word that brings something, so it is laid beside its like alone.
others-nothing-shown = Nothing to lay beside others yet: it begins with the first showing.
others-chart-title = “{ $word }”: first presses by showings
others-chart-share = share pressed
others-chart-showings = showings
others-chart-mark = { $name }: { $shown }
others-chart-mark-open = { $name }: { $shown }, not yet
others-band = { $level } interval
others-joined-title = Taking part
others-joined = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }, the animal took part in { $value } of invitations in the middle home ({ $level } interval: { $low } to { $high }). The middle half of homes: { $from } to { $to }.
others-own-joined = { $name }: { $joined } of { $invited ->
    [one] { $invited } invitation
   *[other] { $invited } invitations
}. Not taking part is an answer.
others-words-title = What the first words brought
others-words = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }.
others-nth = Word
others-brings = Brings
others-share = Share of animals
others-kind-name = { $kind ->
    [food] food
    [play] play
    [touch] touch
    [training] training
    [exploring] exploring
    [rest] rest
    [closing] the end of a session
   *[other] not said
}
others-hours-title = Hours of the day
others-hours = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who } that pressed by themselves: in which hours one press lay, one drawn by lot from each home.
others-hours-most = From { $from } to { $to } lay { $value } ({ $level } interval: { $low } to { $high }), the largest share.
others-hours-caution = Animals press when people are at home and the buttons are in reach. It is no timetable for { $name }.
others-hours-axis = hour of the day
others-hours-share = % of homes
others-hours-span = { $from } to { $to }
others-stages-title = Time in each stage
others-stages = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }, half of the words moved on from “{ $stage }” within { $value ->
    [0] a day
    [one] { $value } day
   *[other] { $value } days
} ({ $level } interval: { $low } to { $high }).
others-stages-open = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }, fewer than half of the words moved on from “{ $stage }” in the time recorded.
others-stages-not-enough = “{ $stage }”: not enough like yours.
others-stages-caution = Moving on is the people’s choice, and a word of which nobody chose a stage counts as shown. No animal has to be anywhere by a day: what { $name } does decides.
others-stages-axis = days in the stage
others-stages-share = share moved on
others-weeks-title = Presses in a week
others-weeks = In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }: how often the animal pressed a word by itself in one week since its first showing, one word and one week drawn by lot from each home.
others-weeks-line = { $span }: { $some } of words pressed at all ({ $level } interval: { $somelow } to { $somehigh }), { $daily } seven times or more ({ $dailylow } to { $dailyhigh }), from { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
}.
others-weeks-span = { $to ->
    [1] Week { $from }
   *[other] Weeks { $from } to { $to }
}
others-weeks-caution = Presses are those that were noted: more are where people listen more. Pressing more is not meaning more, and no animal has to press so often by a week: what { $name } does decides.
others-weeks-axis = weeks since the first showing
others-weeks-share = share of words
others-weeks-some = pressed at all
others-weeks-daily = seven times or more
others-source-title = Where this comes from
others-source = From the release “{ $release }” of { $date }.
others-self-chosen = These homes chose to keep records and to give them. They are not all animals, and not a fair sample of them.
others-invented = Invented homes, made by a simulation: for trying this page, no evidence about animals.
others-noise = Noise was added to every count, so that no home can be made out. The intervals allow for it.
others-club = Homes of { $club } alone. No noise was added.
others-none = No figures of other homes are here yet.
others-none-home = Whoever keeps this notebook can bring in a release of norms, offline too. In a terminal: sayso norms import FILE --data { $dir }
others-none-server = Whoever runs this server can give it a release of norms.
others-damaged = The release that is kept here cannot be read: { $why }. Bring it in once more.
others-link = How it went in other homes
others-usual = No press of “{ $word }” yet, after { $shown ->
    [one] { $shown } showing
   *[other] { $shown } showings
}. In { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} with { $who }, { $part ->
    [quarter] a quarter
   *[half] half
} of all { $kind } took more than { $more } ({ $level } interval: { $low } to { $high }).
