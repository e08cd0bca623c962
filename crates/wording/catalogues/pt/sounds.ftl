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
sounds-no-clips = não foi dada nenhuma gravação; não há nada que escutar
sounds-clip-length = a gravação de “{ $word }” dura { $seconds } s; pode ser escutada entre 0,15 s e 4 s
sounds-silent = a gravação de “{ $word }” está em silêncio
sounds-format = não se pode escutar som de { $rate } amostras por segundo em { $channels } canais (4000 a 384000, 1 a 32)
sounds-of-file = { $file }: { $why }
sounds-not-stored = o arquivo de som não está guardado aqui; registre-o de novo
sounds-nothing-enrolled = aqui não está guardada nenhuma gravação; não há nada que escutar
