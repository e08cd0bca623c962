sounds-nothing = { $a } / { $b }: keine Laute bekannt
sounds-same = { $a } / { $b }: die gleichen Laute{ $read ->
        [guessed] {" "}(Aussprache geschätzt)
       *[known] {""}
    }
sounds-differ = { $a } / { $b }: { $edits ->
        [one] { $edits } von { $of } Lauten ist anders
       *[other] { $edits } von { $of } Lauten sind anders
    }{ $read ->
        [guessed] {" "}(Aussprache geschätzt)
       *[known] {""}
    }
sounds-made-alike = { $a } / { $b }: { $edits ->
        [one] { $edits } von { $of } Lauten ist anders
       *[other] { $edits } von { $of } Lauten sind anders
    }, aber sie werden ähnlich gebildet (Abstand { $apart }){ $read ->
        [guessed] {" "}(Aussprache geschätzt)
       *[known] {""}
    }
sounds-no-clips = keine Aufnahmen wurden gegeben; es gibt nichts, worauf zu hören wäre
sounds-clip-length = die Aufnahme von „{ $word }“ dauert { $seconds } s; auf 0,15 s bis 4 s kann gehört werden
sounds-silent = die Aufnahme von „{ $word }“ ist stumm
sounds-format = Ton mit { $rate } Abtastwerten je Sekunde in { $channels } Kanälen kann nicht gehört werden (4000 bis 384000, 1 bis 32)
sounds-of-file = { $file }: { $why }
sounds-not-stored = die Tondatei ist hier nicht gespeichert; nimm sie noch einmal auf
sounds-nothing-enrolled = hier ist keine Aufnahme gespeichert; es gibt nichts, worauf zu hören wäre
