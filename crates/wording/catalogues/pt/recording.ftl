recording-make-it-out = Ouve tu: fá-la soar no seu botão a partir de outra divisão. Se não a tomarias pela tua voz ao vivo nem reconhecerias logo a palavra, grava-a de novo, perto do microfone, clara e suave. As palavras gravadas podem ser difíceis de perceber: cães de família responderam a cerca de { $share } dos sinais treinados vindos de botões com palavras gravadas, perto de { $live } com a voz ao vivo (17 cães; Higaki 2025, números de um texto de imprensa). Continua também a dizer a palavra ao vivo.
recording-length = Dura { $seconds } s.
recording-loudness = Sonoridade { $lufs } LUFS.
recording-loudness-over = { $others ->
    [one] Sonoridade { $lufs } LUFS, { $by } LU acima da outra.
   *[other] Sonoridade { $lufs } LUFS, { $by } LU acima da mediana das outras { $others }.
}
recording-loudness-under = { $others ->
    [one] Sonoridade { $lufs } LUFS, { $by } LU abaixo da outra.
   *[other] Sonoridade { $lufs } LUFS, { $by } LU abaixo da mediana das outras { $others }.
}
recording-too-quiet = Baixa de mais para medir a sonoridade.
recording-peak = Ponto mais alto { $db } dB abaixo do máximo.
recording-contrast = As partes fortes estão { $db } dB acima das fracas.
recording-most-like = A mais parecida: “{ $word }” ({ $like } numa escala de 0 a 1).
recording-too-long = Mais de 3 s: grava só a palavra, sem uma pausa longa (prática comum, sem fonte).
recording-too-short = Menos de 0,3 s: diz a palavra inteira, um pouco mais devagar; um som tão curto é difícil de distinguir de outros (prática comum, sem fonte).
recording-clipped = Saturada, ou seja, gravada alto de mais: afasta o gravador ou fala mais baixo, e grava de novo.
recording-quieter = Mais de 6 LU mais baixa do que as outras: grava de novo um pouco mais perto, tão alto como as outras.
recording-louder = Mais de 6 LU mais alta do que as outras: um som alto e repentino perto do ouvido pode assustar ou magoar. Grava de novo mais baixo antes que o animal a ouça.
recording-noisy = Ruído de fundo, ou nenhuma pausa nas pontas: grava de novo numa divisão calma.
recording-too-like = Soa quase como “{ $other }”: os toques das duas podem ser confundidos. Verifica se foi usado o ficheiro certo, ou grava uma delas com outra voz.
