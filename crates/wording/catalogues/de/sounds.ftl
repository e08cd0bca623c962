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
