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
