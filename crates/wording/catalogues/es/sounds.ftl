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
sounds-no-clips = no se dio ninguna grabación; no hay nada que escuchar
sounds-clip-length = la grabación de «{ $word }» dura { $seconds } s; se puede escuchar entre 0,15 s y 4 s
sounds-silent = la grabación de «{ $word }» está en silencio
sounds-format = no se puede escuchar sonido de { $rate } muestras por segundo en { $channels } canales (4000 a 384000, 1 a 32)
sounds-of-file = { $file }: { $why }
sounds-not-stored = su archivo de sonido no está guardado aquí; regístralo otra vez
sounds-nothing-enrolled = aquí no se guarda ninguna grabación; no hay nada que escuchar
