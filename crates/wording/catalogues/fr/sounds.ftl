sounds-nothing = { $a } / { $b } : aucun son connu
sounds-same = { $a } / { $b } : les mêmes sons{ $read ->
        [guessed] {" "}(prononciation supposée)
       *[known] {""}
    }
sounds-differ = { $a } / { $b } : { $edits ->
        [one] { $edits } son sur { $of } diffère
       *[other] { $edits } sons sur { $of } diffèrent
    }{ $read ->
        [guessed] {" "}(prononciation supposée)
       *[known] {""}
    }
sounds-made-alike = { $a } / { $b } : { $edits ->
        [one] { $edits } son sur { $of } diffère
       *[other] { $edits } sons sur { $of } diffèrent
    }, mais ils se forment de façon proche (écart { $apart }){ $read ->
        [guessed] {" "}(prononciation supposée)
       *[known] {""}
    }
