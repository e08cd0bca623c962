exchange-title = Files in and out
exchange-title-taken = Taken in
exchange-title-look = Look before you take it in
exchange-gone = This file is not kept here any more. Choose it again.
exchange-bring = Bring in a file
exchange-bring-intro = First you see what it holds. Nothing is taken in before you say so, and nothing that is here is changed or lost by it.
exchange-file = The file
exchange-file-hint = A table (.csv), lines of JSON (.jsonl), an archive with recordings (.tar) or a backup (.sayso); at most { $most } MiB
exchange-file-hint-server = A table (.csv), lines of JSON (.jsonl) or an archive with recordings (.tar); at most { $most } MiB
exchange-look = Look at it
exchange-columns = What a table may hold, and by which columns: { $page }.
exchange-columns-title = Import and export
exchange-out = Take everything out
exchange-out-intro = Each holds every event as it was first recorded. Keep copies where only you can read them: they tell of your days.
exchange-backup = Backup
exchange-backup-hint = events and recordings, with a check that it is whole; to keep and to bring back
exchange-backup-save = Save a backup
exchange-archive = Archive
exchange-archive-hint = events and recordings as plain files that any system unpacks
exchange-archive-save = Save an archive
exchange-table = Table
exchange-table-hint = events alone, for a spreadsheet (CSV)
exchange-table-save = Save a table
exchange-lines = Lines of JSON
exchange-lines-hint = events alone, for another program
exchange-lines-save = Save the lines
exchange-to-people = Back to People
exchange-begin-new = Begin a new notebook instead
exchange-several-box = Begin with all of them in one notebook
exchange-other-box = Take in another home too
exchange-leave-out-box = Leave out the rows with faults
exchange-leave-out-hint = { $count ->
    [one] one row will not come in
   *[other] { $count } rows will not come in
}
exchange-nothing-taken = “{ $name }”: nothing of it has been taken in yet.
exchange-several = Several homes
exchange-several-intro = This notebook is empty, and the file holds several homes: { $homes }.
exchange-another = Another home
exchange-another-intro = The file holds events of a home that this notebook does not: { $homes }.
exchange-for-good = Each home keeps its own animals, words and figures, but once they are in one notebook they cannot be parted again.
exchange-faults = Faults
exchange-faults-intro = Best is to put them right in the file and bring it again: rows that are in already are known then.
exchange-take-in = Take it in
exchange-nothing-new = There is nothing in it to take in.
exchange-away = Do not take it in
exchange-rows = Rows
exchange-new = New
exchange-known = Known already
exchange-other-id = Another event has their id
exchange-other-faults = With other faults
exchange-recordings = Recordings
exchange-days = Days
exchange-from-to = { $from } to { $to }
exchange-by-kind = New events by kind
exchange-later = { $count ->
    [one] One event of kind { $kind }: a later version wrote it. It is kept, but not shown. Update this program.
   *[other] { $count } events of kind { $kind }: a later version wrote them. They are kept, but not shown. Update this program.
}
exchange-and-more = And { $count } more.
exchange-times = { $count ->
    [one] once
   *[other] { $count } times
}
exchange-fault = { $times }{ $place }: wanted { $wanted }.
exchange-fault-found = { $times }{ $place }: found “{ $found }”; wanted { $wanted }.
exchange-fault-found-one-of = { $times }{ $place }: found “{ $found }”, for example; wanted { $wanted }.
exchange-fault-said = { $times }{ $place }: { $what }.
exchange-in-lines = { $count ->
    [one] (line { $lines })
   *[other] (lines { $lines })
}
exchange-in-more-lines = (lines { $lines } and more)
exchange-whose = Whose they are
exchange-unnamed = A home without a name ({ $id })
exchange-share-new = { $count } new
exchange-share-backup = { $count } in the backup
exchange-not-here = { $share }, not in this notebook
exchange-new-events = New events
exchange-other-content = Other content here
exchange-unsound = Unsound
exchange-new-recordings = New recordings
exchange-known-recordings = Recordings known
exchange-damaged-recordings = Recordings damaged
exchange-conflicts = Where an event here has another content than the one in the backup, what is here is kept.
exchange-no-digest = It was made by an earlier version and carries no digest: damage may have gone unnoticed.
exchange-report = “{ $name }”: { $counts }. The file itself is not kept here.
exchange-counts = { $count ->
    [one] one event new, { $known } known already
   *[other] { $count } events new, { $known } known already
}
exchange-counts-recordings = { $count ->
    [one] one recording new, { $known } known already
   *[other] { $count } recordings new, { $known } known already
}
exchange-damaged = { $count ->
    [one] One recording in it is damaged and left out.
   *[other] { $count } recordings in it are damaged and left out.
}
exchange-kept-here = { $count ->
    [one] One event here has another content than the one in the backup. What is here was kept.
   *[other] { $count } events here have another content than those in the backup. What is here was kept.
}
exchange-unsound-left = { $count ->
    [one] Left out, because unsound when it was backed up: one event.
   *[other] Left out, because unsound when they were backed up: { $count } events.
}
exchange-another-file = Another file
exchange-nameless = the file
exchange-moves-in = The file is the notebook of another home ({ $home }). Its records become those of this home, under the ids they have. From then on write here alone: taps made later in the old notebook come over only when its file is brought once more.
exchange-diary = Read as a diary
exchange-diary-intro = This table has columns of its own. They are read like this; if it is wrong, do not take it in.
exchange-diary-column = { $part ->
    [day] “{ $column }”: the day
    [time] “{ $column }”: the time
    [word] “{ $column }”: the word the animal pressed
    [who] “{ $column }”: which animal; of a remark also which person
   *[note] “{ $column }”: a remark
}
exchange-diary-rules = Each word counts as a press by the animal, not known whether meant. A day without a time is put at noon.
exchange-diary-first = A diary needs the animal and its words first. Begin with them, then bring this file under “Files in and out”.
exchange-help = What a table may look like
exchange-help-found = Found these columns: { $columns }.
exchange-help-wanted = Wanted: a day or a time, and a word or a remark. Days like 2026-03-01, times like 18:30. Words and names as they stand here. Take out other columns.
exchange-help-save = Save this example
exchange-help-open = What a diary may look like
exchange-example =
    date,time,word,who,note
    2026-03-01,18:30,food,Bo,came from the sofa
    2026-03-02,,,Bo,slept all day
