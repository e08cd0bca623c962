sounds-nothing = { $a } / { $b }: no sounds known
sounds-same = { $a } / { $b }: the same sounds{ $read ->
        [guessed] {" "}(pronunciation guessed)
       *[known] {""}
    }
sounds-differ = { $a } / { $b }: { $edits ->
        [one] { $edits } of { $of } sounds differs
       *[other] { $edits } of { $of } sounds differ
    }{ $read ->
        [guessed] {" "}(pronunciation guessed)
       *[known] {""}
    }
sounds-made-alike = { $a } / { $b }: { $edits ->
        [one] { $edits } of { $of } sounds differs
       *[other] { $edits } of { $of } sounds differ
    }, but they are made alike ({ $apart } apart){ $read ->
        [guessed] {" "}(pronunciation guessed)
       *[known] {""}
    }
sounds-no-clips = no recordings were given, so there is nothing to listen for
sounds-clip-length = the recording of “{ $word }” lasts { $seconds } s; between 0.15 s and 4 s can be listened for
sounds-silent = the recording of “{ $word }” is silent
sounds-format = sound of { $rate } samples a second in { $channels } channels cannot be listened to (4000 to 384000, 1 to 32)
sounds-of-file = { $file }: { $why }
sounds-not-stored = its sound file is not stored here; enrol it again
sounds-nothing-enrolled = no recording is kept here, so there is nothing to listen for
