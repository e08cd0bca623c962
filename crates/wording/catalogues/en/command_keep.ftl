command-keep-input-too-large = standard input holds more than { $most } MiB; use `sayso import` for files
command-keep-input-line = standard input, line { $line }: { $why }
command-keep-input-no-array = standard input, line { $line }, column { $column }: wanted a JSON array of events; it cannot be read on from here
command-keep-input-event = standard input, event { $number }: { $why }
command-keep-kept = { $id } kept
command-keep-known = { $id } known already
command-keep-other-id = { $id } refused: another event has this id; to put it right, send a correction
command-keep-refused = { $id } refused: { $why }
command-keep-is-backup = { $file } is a backup; use `sayso restore`
command-keep-preview = { $file }: { $rows ->
    [one] { $rows } row
   *[other] { $rows } rows
}, { $new } new, { $known } known already, { $faults } with problems.
command-keep-and-recordings = { $n ->
    [one] and { $n } recording
   *[other] and { $n } recordings
}
command-keep-new-of-kind = { $n } new of kind { $kind }
command-keep-later = { $n ->
    [one] { $n } of kind { $kind } is not understood: a later version wrote it. It is kept, not shown.
   *[other] { $n } of kind { $kind } are not understood: a later version wrote them. They are kept, not shown.
}
command-keep-of-home = { $n } of { $home }
command-keep-of-other-home = { $n } of { $home }, which this notebook does not hold
command-keep-unnamed-home = a home without a name ({ $id })
command-keep-from-to = from { $first } to { $last }
command-keep-more = ... and { $n } more
command-keep-not-imported-faults = Nothing was imported. Put these lines right and try again.
command-keep-not-imported-homes =
    Nothing was imported: this notebook would then hold several homes. The file brings { $homes }.
    To keep several homes in this notebook, for good, add --take-in-other-home.
command-keep-not-imported-yet = Nothing was imported yet. To do it, run the same command with --yes.
command-keep-imported = { $n ->
    [one] Imported { $n } event
   *[other] Imported { $n } events
}; { $known ->
    [one] { $known } was known already.
   *[other] { $known } were known already.
}
command-keep-clips-stored = { $n ->
    [one] { $n } recording stored
   *[other] { $n } recordings stored
}; { $known ->
    [one] { $known } was here already
   *[other] { $known } were here already
}; { $damaged } damaged, left out.
command-keep-archive-to = an archive goes into a file: add --to all.tar
command-keep-archive-written = { $n ->
    [one] { $n } event
   *[other] { $n } events
} and { $recordings ->
    [one] { $recordings } recording
   *[other] { $recordings } recordings
} written.
command-keep-damaged-left-out = { $n ->
    [one] { $n } recording is damaged and was left out.
   *[other] { $n } recordings are damaged and were left out.
}
command-keep-written = { $n ->
    [one] { $n } event written.
   *[other] { $n } events written.
}
command-keep-backed-up = { $n ->
    [one] { $n } event
   *[other] { $n } events
} and { $recordings ->
    [one] { $recordings } recording
   *[other] { $recordings } recordings
} are in { $file } ({ $bytes } bytes).
command-keep-damaged-clip = A recording is damaged and was not taken along: { $clip }
command-keep-take-in = { $why }: add --take-in-other-home
command-keep-in-the-backup = { $home }: { $n ->
    [one] { $n } event in the backup.
   *[other] { $n } events in the backup.
}
command-keep-brought-back = { $n ->
    [one] { $n } event brought back
   *[other] { $n } events brought back
}; { $known ->
    [one] { $known } was here already.
   *[other] { $known } were here already.
}
command-keep-clips-brought-back = { $n ->
    [one] { $n } recording brought back
   *[other] { $n } recordings brought back
}; { $known ->
    [one] { $known } was here already.
   *[other] { $known } were here already.
}
command-keep-unsound = Left out, it was unsound when it was backed up: { $fault }
command-keep-conflict = Event { $id } stands here with another content; the one here was kept.
command-keep-looked-at = { $n ->
    [one] { $n } event
   *[other] { $n } events
}, { $recordings ->
    [one] { $recordings } recording
   *[other] { $recordings } recordings
} looked at.
command-keep-snapshots = { $n ->
    [one] { $n } snapshot holds what the log holds.
   *[other] { $n } snapshots hold what the log holds.
}
command-keep-amendments = { $n ->
    [one] { $n } puts another event right or takes it back
   *[other] { $n } put other events right or take them back
}; { $waiting } of them about events not here.
command-keep-wrong = Wrong: { $fault }
command-keep-all-well = All of it is as it was written.
command-keep-snapshots-wrong = Every event and recording is as it was written: there is nothing to restore. Stop the program where it still runs, remove what is named above and start it again.
command-keep-restore-latest = Keep a copy of this folder, then restore the latest backup into a new one.
