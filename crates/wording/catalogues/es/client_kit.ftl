client-kit-first = Primero acepta arriba y rellena qué dice el botón, de qué tipo es y qué teléfono es este.
client-kit-clip = Grabar el botón de cerca
client-kit-clip-now = Pulsa el botón una vez. Quedan { $seconds } s.
client-kit-clip-kept = «{ $word }» de cerca: { $seconds } s, silencio recortado en ambos extremos.
client-kit-clip-first = Primero graba «{ $word }» de cerca.
client-kit-presses = Grabar { $count } pulsaciones
client-kit-without = Grabar 3 minutos sin pulsar
client-kit-press-now = Pulsa ahora
client-kit-tap-now = Pulsa el botón y toca «{ $mark }» en el mismo momento.
client-kit-mark = Pulsado
client-kit-marked = { $count ->
    [0] Ninguna pulsación marcada todavía.
    [one] Una pulsación marcada.
   *[other] { $count } pulsaciones marcadas.
}
client-kit-no-press = No pulses nada durante { $seconds } s más.
client-kit-stop = Parar y conservar
client-kit-interrupted = El sonido se interrumpió y esta grabación se descartó. Deja la página delante y grábala de nuevo.
client-kit-too-short = Demasiado corta para servir; se descartó.
client-kit-take = «{ $word }», { $metres } m, { $room }, { $noise }: { $count ->
    [one] una pulsación
   *[other] { $count } pulsaciones
} en { $seconds } s
client-kit-take-without = Sin pulsar, { $metres } m, { $room }, { $noise }: { $seconds } s
client-kit-undo = Deshacer
client-kit-save = Guardar el archivo
client-kit-nothing = Todavía no hay nada que guardar: graba el botón de cerca y después pulsaciones.
client-kit-saved = Guardado como { $file } ({ $megabytes } MB). Está solo en este dispositivo; no se envió nada.
