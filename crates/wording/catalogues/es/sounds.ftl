sounds-nothing = { $a } / { $b }: no se conoce ningún sonido
sounds-same = { $a } / { $b }: los mismos sonidos{ $read ->
        [guessed] {" "}(pronunciación supuesta)
       *[known] {""}
    }
sounds-differ = { $a } / { $b }: { $edits ->
        [one] cambia { $edits } de { $of } sonidos
       *[other] cambian { $edits } de { $of } sonidos
    }{ $read ->
        [guessed] {" "}(pronunciación supuesta)
       *[known] {""}
    }
sounds-made-alike = { $a } / { $b }: { $edits ->
        [one] cambia { $edits } de { $of } sonidos
       *[other] cambian { $edits } de { $of } sonidos
    }, pero se forman de modo parecido (distancia { $apart }){ $read ->
        [guessed] {" "}(pronunciación supuesta)
       *[known] {""}
    }
