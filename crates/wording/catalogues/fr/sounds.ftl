sounds-nothing = { $a } / { $b } : aucun son connu
sounds-same = { $a } / { $b } : les mêmes sons{ $read ->
        [guessed] {" "}(prononciation supposée)
       *[known] {""}
    }
sounds-differ = { $a } / { $b } : { $edits ->
        [one] { $edits } son sur { $of } diffère
       *[other] { $edits } sons sur { $of } diffèrent
    }{ $read ->
        [guessed] {" "}(prononciation supposée)
       *[known] {""}
    }
sounds-made-alike = { $a } / { $b } : { $edits ->
        [one] { $edits } son sur { $of } diffère
       *[other] { $edits } sons sur { $of } diffèrent
    }, mais ils se forment de façon proche (écart { $apart }){ $read ->
        [guessed] {" "}(prononciation supposée)
       *[known] {""}
    }
sounds-no-clips = aucun enregistrement n’a été donné ; il n’y a rien à guetter
sounds-clip-length = l’enregistrement de « { $word } » dure { $seconds } s ; on peut guetter de 0,15 s à 4 s
sounds-silent = l’enregistrement de « { $word } » est silencieux
sounds-format = un son de { $rate } échantillons par seconde sur { $channels } canaux ne peut être écouté (4000 à 384000, 1 à 32)
sounds-of-file = { $file } : { $why }
sounds-not-stored = son fichier son n’est pas gardé ici ; enregistre-le à nouveau
sounds-nothing-enrolled = aucun enregistrement n’est gardé ici ; il n’y a rien à guetter
