command-norms-what-is-in = { $n ->
    [one] { $n } row
   *[other] { $n } rows
}, one for each animal and word that was shown: species, age band, what the word brings, showings and days up to the first press, invitations. No name, note, date, place or word is in them. They go nowhere unless you send them.
command-norms-homes-agreed = { $agreed } of { $homes ->
    [one] { $homes } home
   *[other] { $homes } homes
} agree; { $rows ->
    [one] { $rows } row
   *[other] { $rows } rows
}.
command-norms-key-beside = the key { $key } lies in the folder of the rows: whoever gets them would get it too. Keep it elsewhere
command-norms-key-short = the key { $key } has { $found ->
    [one] { $found } byte
   *[other] { $found } bytes
}; it needs { $least } or more of good randomness
command-norms-imported = Kept the release “{ $release }” of { $date }: { $cells ->
    [one] { $cells } cell
   *[other] { $cells } cells
} (SHA-256 { $hash }).
command-norms-unusable = { $file } is no release that can be used, and nothing was changed: { $why }
