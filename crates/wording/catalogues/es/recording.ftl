recording-make-it-out = Escúchala tú: reprodúcela en su botón desde otra habitación. Si no la tomarías por tu voz en directo ni reconocerías la palabra al instante, grábala otra vez, cerca del micrófono, clara y suave. Las palabras grabadas pueden costar de entender: los perros de familia respondieron a cerca del { $share } de las señales aprendidas desde botones con palabras grabadas, casi el { $live } con la voz en directo (17 perros; Higaki 2025, cifras de una nota de prensa). Sigue diciendo también la palabra en directo.
recording-length = Dura { $seconds } s.
recording-loudness = Sonoridad { $lufs } LUFS.
recording-loudness-over = { $others ->
    [one] Sonoridad { $lufs } LUFS, { $by } LU por encima de la otra.
   *[other] Sonoridad { $lufs } LUFS, { $by } LU por encima de la mediana de las otras { $others }.
}
recording-loudness-under = { $others ->
    [one] Sonoridad { $lufs } LUFS, { $by } LU por debajo de la otra.
   *[other] Sonoridad { $lufs } LUFS, { $by } LU por debajo de la mediana de las otras { $others }.
}
recording-too-quiet = Demasiado baja para medir su sonoridad.
recording-peak = Punto más alto { $db } dB por debajo del máximo.
recording-contrast = Sus partes fuertes están { $db } dB por encima de las suaves.
recording-most-like = Lo más parecido: «{ $word }» ({ $like } en una escala de 0 a 1).
recording-too-long = Más de 3 s: graba solo la palabra, sin una pausa larga (práctica común, sin fuente).
recording-too-short = Menos de 0,3 s: di la palabra entera, algo más despacio; un sonido tan corto cuesta de distinguir de otros (práctica común, sin fuente).
recording-clipped = Saturada, es decir, grabada demasiado fuerte: aleja la grabadora o habla más bajo, y grábala otra vez.
recording-quieter = Más de 6 LU más baja que las otras: grábala otra vez algo más cerca, tan fuerte como las otras.
recording-louder = Más de 6 LU más fuerte que las otras: un sonido fuerte y repentino cerca del oído puede asustar o dañar. Grábala otra vez más suave antes de que el animal la oiga.
recording-noisy = Ruido de fondo, o ninguna pausa en los extremos: grábala otra vez en una habitación tranquila.
recording-too-like = Suena casi igual que «{ $other }»: las pulsaciones de las dos podrían confundirse. Comprueba que se tomó el archivo correcto, o graba una de ellas con otra voz.
