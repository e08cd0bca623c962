recording-make-it-out = Ouça você: faça a palavra soar no botão dela, de outro cômodo. Se você não a tomaria pela sua voz ao vivo nem reconheceria logo a palavra, grave de novo, perto do microfone, clara e suave. As palavras gravadas podem ser difíceis de entender: cães de família responderam a cerca de { $share } dos sinais treinados vindos de botões com palavras gravadas, perto de { $live } com a voz ao vivo (17 cães; Higaki 2025, números de um texto de imprensa). Continue também dizendo a palavra ao vivo.
recording-length = Dura { $seconds } s.
recording-loudness = Volume { $lufs } LUFS.
recording-loudness-over = { $others ->
    [1] Volume { $lufs } LUFS, { $by } LU acima da outra.
   *[other] Volume { $lufs } LUFS, { $by } LU acima da mediana das outras { $others }.
}
recording-loudness-under = { $others ->
    [1] Volume { $lufs } LUFS, { $by } LU abaixo da outra.
   *[other] Volume { $lufs } LUFS, { $by } LU abaixo da mediana das outras { $others }.
}
recording-too-quiet = Baixa demais para medir o volume.
recording-peak = Ponto mais alto { $db } dB abaixo do máximo.
recording-contrast = As partes fortes estão { $db } dB acima das fracas.
recording-most-like = A mais parecida: “{ $word }” ({ $like } em uma escala de 0 a 1).
recording-too-long = Mais de 3 s: grave só a palavra, sem uma pausa longa (prática comum, sem fonte).
recording-too-short = Menos de 0,3 s: diga a palavra inteira, um pouco mais devagar; um som tão curto é difícil de distinguir de outros (prática comum, sem fonte).
recording-clipped = Saturada, ou seja, gravada alto demais: afaste o gravador ou fale mais baixo, e grave de novo.
recording-quieter = Mais de 6 LU mais baixa do que as outras: grave de novo um pouco mais perto, tão alto quanto as outras.
recording-louder = Mais de 6 LU mais alta do que as outras: um som alto e repentino perto do ouvido pode assustar ou machucar. Grave de novo mais baixo antes que o animal a ouça.
recording-noisy = Ruído de fundo, ou nenhuma pausa nas pontas: grave de novo em um cômodo calmo.
recording-too-like = Soa quase como “{ $other }”: os apertos das duas podem ser confundidos. Verifique se foi usado o arquivo certo, ou grave uma delas com outra voz.
