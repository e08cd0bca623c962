sounds-nothing = { $a } / { $b }: nenhum som conhecido
sounds-same = { $a } / { $b }: os mesmos sons{ $read ->
        [guessed] {" "}(pronúncia suposta)
       *[known] {""}
    }
sounds-differ = { $a } / { $b }: { $edits ->
        [one] muda { $edits } de { $of } sons
       *[other] mudam { $edits } de { $of } sons
    }{ $read ->
        [guessed] {" "}(pronúncia suposta)
       *[known] {""}
    }
sounds-made-alike = { $a } / { $b }: { $edits ->
        [one] muda { $edits } de { $of } sons
       *[other] mudam { $edits } de { $of } sons
    }, mas formam-se de modo parecido (distância { $apart }){ $read ->
        [guessed] {" "}(pronúncia suposta)
       *[known] {""}
    }
