# What can go wrong with the notebook’s files. Said after a file’s name or alone, without a full stop.
store-not-a-database = { $path } is not a notebook: it is no database at all
store-not-ours = { $path } is a database, but not a notebook of this program
store-newer = { $path } was written by a newer version (schema { $found }; this version knows up to { $known }); update this program
store-corrupt = { $path } is damaged ({ $what }); keep a copy of it, and restore the latest backup into a new folder
store-unwritable = cannot write to { $path }: { $what }
store-cannot-hold = cannot write to { $path }: { $what }. A file that is brought, or made to be sent, is kept in this folder for a while: let the user that runs this program write there
store-full = the notebook’s disk is full; nothing of this was stored. Make room, then try again
store-busy = the notebook is busy: another process kept it locked; try again
store-closed = the notebook was closed
store-exists = { $path } is there already; choose another name
store-bad-backup = { $path } cannot be used as a backup: { $what }
store-backup-no-file = there is no such file
store-backup-itself = it is the notebook itself
store-backup-other-digest = it is damaged: its content does not have the digest it states
store-backup-no-digest = it is damaged: its digest is missing
store-backup-row = it is damaged: { $what }
store-backup-not-the-log = it does not hold what the notebook holds; the disk it is on may be failing
store-backup-loose = { $rows ->
    [one] one row refers to nothing
   *[other] { $rows } rows refer to nothing
}
store-bad-archive = { $path } cannot be read as an archive of a notebook: { $what }
store-archive-lacks = there is no { $file } in it
store-unknown-file = { $name } is none of the files that can be taken in: a table (.csv), lines of JSON (.jsonl or .ndjson), an archive (.tar) or a backup (.sayso)
store-other-home = { $path } would make this notebook hold several homes. It brings { $homes }. Nothing was stored; to keep several in one notebook, for good, say so
store-home-brings = { $home }: { $events ->
    [one] one event
   *[other] { $events } events
}
store-bad-clip = recording { $hash }: { $what }
store-clip-not-a-hash = its name is not 64 hexadecimal digits
store-clip-size = it has { $found } bytes, where 1 to { $most } are allowed
store-clip-other-content = it is damaged: its bytes do not have this hash; store the recording again
store-not-imported = nothing was imported: { $why }
store-import-faults = { $count ->
    [one] one fault: { $first }
   *[other] { $count } faults, the first: { $first }
}
store-import-other-homes = the file would make this notebook hold several homes. It brings { $homes }. To keep several in one notebook, for good, say so
store-import-not-its-own = a home on a server takes in a file of one home alone. This one brings { $homes }. Export each home by itself and bring its own file
store-import-not-empty = the file is of another home ({ $home }), and this one holds records already. Another home’s notebook moves only into a home in which nothing is written yet: ask whoever keeps the server for a new one
store-import-taken = another event with the id { $id } is stored already
store-database = database: { $why }
store-no-home-yet = { $dir } holds no home yet
store-damaged-row = event { $id } (row { $row }): { $what }
store-row-no-event = its content is no event
store-row-column = its column { $column } says otherwise than its content
store-log-left = it is gone, but { $file } beside it is not; events may be in there
store-other-schema = its schema { $schema } is not the one this program made
store-snapshot = the snapshot of { $home } { $what }; remove the file { $file } and start again: the log is the truth, and another one is made from it
store-snapshot-differs = differs from the log at event { $id } (row { $row })
store-snapshot-more = holds event { $id }, which the log does not
store-unreachable = the database cannot be reached ({ $what }); nothing of this is known to be stored. Check its address and that it runs, then try again
store-old-database = the database server is PostgreSQL { $found }; this program needs { $least } or later
store-newer-database = the database was made by a newer version (schema { $found }; this version knows up to { $known }); update this program
store-no-rights = the database refuses this program ({ $what }); let its owner grant the role sayso_server to the user that connects
store-not-let-in = the database does not let this user in ({ $what }); check the user and the password in SAYSO_DATABASE (SAYSO_DATABASE_OWNER for the owner)
store-needs-owner = the tables are not there yet or of an earlier version, and the user that connects may not make them ({ $what }); give the one who owns them by --database-owner or in the variable SAYSO_DATABASE_OWNER
store-database-damaged = the database is damaged ({ $what }); keep a copy of it, and bring back its latest backup
store-no-such-home = there is no home { $home } here
store-home-left = this home has left: all of it was erased here, and nothing more of it is kept
store-only-folder-backup = a home on a server has no backup file of its own; take an archive of it instead
store-only-folder-restore = a backup file cannot be brought to a server; restore it into a folder, take an archive there and bring that
store-only-folder-check = a home on a server has no file to be checked; take an archive of it and check it in a folder
store-only-folder-snippets = sound around presses is not kept on a server; listen with a notebook in a folder to judge presses by ear
