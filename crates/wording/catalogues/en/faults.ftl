# What is wrong with a field. Each is said after the name of the field, by faults-at: “Weight must be a number …”.
faults-at = { $field } { $what }.
# The name of a field: $field is what programs call it, $plain the same as words, for a field that has no name here.
faults-field = { $field ->
    [weight_kg] Weight
    [adult_weight_kg] Weight once grown
    [day_kcal] Kcal a day
    [reward_percent] Share for rewards
    [reward_share] Share for rewards
    [role] Role
    [person] Person
    [first] First day
    [last] Last day
    [weekdays] Days of the week
    [club] Club
    [count] Number
    [account] Account
    [purpose] Purpose
    [words] Words
    [home] Home
    [text] Text
    [last_day] Last day
    [says] What it would say
    [about] About
    [stage] Stage
    [word] Word
    [word_1] Word 1
    [way_1] How 1
    [minutes_1] Minutes 1
    [times_1] Times a day 1
    [word_2] Word 2
    [way_2] How 2
    [minutes_2] Minutes 2
    [times_2] Times a day 2
    [word_3] Word 3
    [way_3] How 3
    [minutes_3] Minutes 3
    [times_3] Times a day 3
    [reply] Answer
    [what] What
    [stands] Stand-ins:
    [whose] Home or account
    [new_person] Name of someone new
    [name] Name
    [email] E-mail address
   *[other] { $plain }
}
faults-not-kept = Not kept yet.
faults-put-right = What you typed is still here; please put this right:
faults-unknown-field = is not a field of this form
faults-number = must be a number such as 4.5, not “{ $text }”
faults-whole = must be a whole number from { $low } to { $high }, not “{ $text }”
faults-one-of = must be one of: { $names }
faults-unknown-id = names something this notebook does not know; reload the page
faults-not-read = cannot be read: “{ $text }”
faults-missing = is missing
faults-missing-choose = is missing; choose one
faults-missing-usual = is missing; { $usual } is usual
faults-missing-several = are missing; { $usual } are usual
faults-form-expected = A form was expected (application/x-www-form-urlencoded).
faults-form-broken = cannot be read; reload the page
faults-no-animal = is missing; this kind of event is about one animal
faults-range = must be { $low } to { $high }, not { $found }
faults-too-few = must be at least { $least }, not { $found }
faults-name = must name { $low } to { $high }, not { $found }
faults-seconds = must be { $low } to { $high } seconds, not { $found }
faults-twice = names one twice
faults-amends-amendment = must not itself be a correction or withdrawal; correct the first event again
faults-not-alternative = goes only with answer "alternative"
faults-not-pressed-again = goes only with then "pressed_again"
faults-not-between-two = names the second word of "ask_between_two", and only of that
faults-same-word = must be another word
faults-after-the-wait = lies beyond the wait of { $seconds } s; log it as an ordinary press
faults-no-food = is missing; say what was given, or name a reward
faults-label-of-other = says what is changed where the question is "other", and only there
faults-not-by-word = "{ $measure }" is not counted word by word; name animals instead
faults-only-over-animals = are only for a multiple baseline over animals
faults-criterion-for-people = must be "delivery_delay": a criterion is for people, never for the animal
faults-criterion-a-phase = must be one for each phase after the first, not { $found }
faults-only-with-criterion = are only for a changing criterion
faults-not-offered = was not offered in this trial
faults-free-by-time = free access is scored by time: use "observed"
faults-only-free = "observed" is only for free access
faults-offered-once = must be one of the offered things, once
faults-longer-than-observed = is more than the { $seconds } s observed
faults-swaps-one-in = must be { $low } to { $high }, not { $found }; more swaps than one in four tire an animal
faults-reward-share = must be at most { $most }; ask a veterinarian for more
faults-stage-of-other = { $stage } is not for a { $species }
faults-grown-less-than-now = is { $grown } kg, less than the { $now } kg this puppy weighs; correct one, or choose a grown stage
faults-no-energy = is missing; food needs the energy of one piece, in kcal
faults-only-food = is only for food
faults-not-a-hash = must be 64 hexadecimal digits
faults-off-board = row { $row } column { $column } is off the board
faults-place-twice = row { $row } column { $column } is taken twice
faults-two-places = stands in two places
faults-id-taken = belongs to another event already; send it again as a new one
faults-empty = must not be empty
faults-too-long = must have at most { $most } characters, not { $found }
faults-control = must not hold control characters such as tabs or line breaks
faults-hidden = must not hold the character { $code }, which cannot be seen or turns the text around it; type the text anew
faults-quantity = { $unit } must be a number from { $low } to { $high }, not { $found }
faults-not-a-time = "{ $text }" is not a time such as 2026-03-01T18:30:00Z
faults-time-out-of-range = the time { $text } lies outside the years 2000 to 2199
faults-not-a-zone = "{ $text }" is not an IANA time zone such as Europe/Berlin
faults-not-a-day = "{ $text }" is not a day such as 2026-03-01
faults-late-card = cannot be later than { $moment }, the date of the card it replaces. Put that card's date right in the log first
faults-late-amendment = cannot be later than { $moment }, when this was last changed, so it can be changed no more. Note it anew, as it should be
faults-in-swaps = take part in swaps already; stop those first
faults-signs-today = cannot begin today: strong signs of stress were noted; choose a calm time
faults-another-thing = must be 2 or more, not { $found }; a swap needs another thing
faults-same-thing = include two for the same thing ({ $first }, { $second })
faults-one-in-usual = is missing; one in { $usual } is usual
faults-agree = must agree: everyone who answers gives what is drawn, or stops the swaps
faults-first-day = must be { $from } to { $to }: the order is drawn before it begins
faults-seconds-list = must be numbers of seconds such as 6; 4; 2.5
faults-check-long = make a check too long; choose fewer words
faults-tick = must be 2 to { $most }, not { $found }; tick more or fewer
faults-easiest = are missing; 2 is easiest for the animal
faults-at-most-ticked = must be at most the number of words ticked, { $ticked }
faults-never-given = include { $name }, which this animal must never be given
faults-who = is missing; say who will be there
faults-above-chance = must be above chance ({ $chance }%) and at most 99%
faults-near-chance = is too close to chance for a check of bearable length ({ $why })
faults-place = must be a place from 1 to { $most }, nothing, or left
faults-not-a-person = is not one of this home's people
faults-not-our-home = is none of this notebook's
faults-per-gram = is not the energy of a food (0 to 9 kcal a gram)
faults-no-sound-file = is missing; choose a sound file (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF or WebM)
faults-sound-unfit = cannot be used: { $why }
faults-noted-at-board = of this design is noted at the board, as any answer is
faults-cannot-run = cannot be run: { $why }
faults-no-random = cannot be done: this machine gives no random numbers ({ $why })
faults-file-missing = is missing; choose one
faults-file-empty = is missing or empty; choose one
faults-other-home = is not this notebook’s alone: the file brings { $homes }. Tick “{ $tick }” if it should be so
faults-rows-faulty = has faults. Put them right in the file and bring it again, or tick “{ $tick }”
faults-file-no-backup-use = “{ $name }” cannot be used as a backup: { $what }
faults-file-no-archive = “{ $name }” cannot be read as an archive of a notebook: { $what }
faults-file-newer = “{ $name }” was written by a newer version; update this program
faults-file-not-ours = “{ $name }” is a database of another program, and no backup of a notebook
faults-file-not-a-backup = “{ $name }” is no backup: it is damaged, or another kind of file
faults-file-backup-on-server = “{ $name }” is a backup of a whole notebook, and here is one home of a server. Save an archive (.tar) there, under Files in and out, and bring that
faults-file-damaged = “{ $name }” is damaged: { $what }
faults-file-unknown = “{ $name }” is none that can be taken in: a table (.csv), lines of JSON (.jsonl or .ndjson), an archive (.tar) or a backup (.sayso)
faults-take-in-home = is not this notebook’s alone: the file brings { $homes }. To keep several homes in it, for good, add take_in_other_home=true
faults-away-home = is { $home }, another home than this notebook's; to keep several in one notebook, import a file of its events and say so
faults-too-many-bytes = is too long: { $bytes } bytes, where { $most } are the most
faults-not-written = cannot be written as JSON
faults-not-your-home = is not a home you can write in here; it may have left
faults-not-your-role = is not for your role in this home
faults-not-your-account = must be the account that is signed in, under its own name
faults-on-its-page = is given on the page “Who can see this” alone, where its words are read
faults-invites-closing = invites a word that ends sessions: nobody waits for that one; it must be “show” or left out
faults-not-your-day = must come on one of the days agreed with you
faults-ends-first = must end after it begins
faults-own-successor = must be another coach
faults-sent-again = Not kept yet. What you typed stands here again: look at it, and send it once more.
