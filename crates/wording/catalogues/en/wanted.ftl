# What should stand at a place of a file or an event, said after “wanted”; and what is wrong there.
wanted-at = { $line ->
    [0] { $field }: { $what }
   *[other] line { $line }, { $field }: { $what }
}
wanted-place = { $place ->
    [file] the file
    [line] the line
    [row] the row
    [column] the column
   *[other] the event
}
wanted-missing = wanted { $wanted }
wanted-found = found “{ $found }”; wanted { $wanted }
wanted-text = a text
wanted-number = a number such as 1.5
wanted-point = a number with a point, such as 1.5
wanted-whole = a whole number from { $low } to { $high }
wanted-flag = true or false
wanted-list = a list
wanted-json-list = a JSON list such as ["walk","food"]
wanted-object = an object with { $names }
wanted-tagged = a JSON object with "{ $tag }", one of: { $names }
wanted-object-not-list = a JSON object, from {"{"} to {"}"}, not a list
wanted-one-of = one of: { $names }
wanted-needed = a value: this is needed
wanted-needed-one-of = a value: this is needed, one of: { $names }
wanted-no-such-field = nothing: there is no such field; there are: { $names }
wanted-empty-cell = an empty cell: { $kind } has no such field
wanted-parts = nothing: use columns for its parts, such as { $part }
wanted-body-columns = nothing: use columns that begin with "body."
wanted-fitting = a value that fits this field, given once
wanted-id = an id (a UUID such as 0198a2b4-7c11-7000-8000-000000000001)
wanted-home-id = the id of a home (a UUID)
wanted-first-home-id = the id of a home (a UUID): this notebook has none yet; begin with one, or import an export
wanted-no-name-yet = an id: no names are known here yet
wanted-known-name = an id or one of the known names: { $names }
wanted-known-name-of-many = an id or one of the known names: { $names } and { $more } more
wanted-one-of-ids = an id, because { $count } have this name: { $ids }
wanted-time = a time such as 2026-03-01 18:30 or 2026-03-01T18:30:00+01:00, in the years 2000 to 2199
wanted-offset = an offset from UTC, such as { $local }+01:00: this home has no time zone yet
wanted-twice = { $first } or { $second }: clocks go back in { $zone }, and this time comes twice
wanted-skipped = { $first } or { $second }: clocks go forward in { $zone }, and this time is skipped
wanted-event = one event as a JSON object, from {"{"} to {"}"}
wanted-json = one event as JSON; it cannot be read from column { $column } on
wanted-own-id = an id of its own: another event has this one; to put an event right, add a correction
wanted-smaller-file = at most { $most } bytes: cut it into several files between two lines
wanted-shorter-line = at most { $most } bytes
wanted-utf8 = UTF-8, not UTF-16, Latin-1 or Windows-1252: save it again as "UTF-8" or "CSV UTF-8"
wanted-closed-quotes = every " closed; a " inside a cell is written twice
wanted-table = a CSV file
wanted-cells = { $count } cells, as in the first row
wanted-header = a first row with the names of the columns
wanted-column-once = each column once
wanted-column = a column such as { $names }, word, by, answer or result.outcome
wanted-this-column = a column { $name }
wanted-by-hand = no consent: what a file says of it opens nothing. A keeper of the home gives it, or takes it back, under “Who can see this”
