client-enrol-prove = Pulsarlo ahora
client-enrol-prove-now = Pulsa «{ $says }» una vez. Quedan { $seconds } s.
client-enrol-judging = Comparándolo con las grabaciones…
client-enrol-heard = Oído. Listo.
client-enrol-heard-more = Seguro al { $sure } %, 1 pulsación.
client-enrol-unsure = Oído como «{ $says }», pero con solo { $sure } % de seguridad. Acerca el dispositivo o busca más silencio y compruébalo otra vez. Si sigue así, grábalo de nuevo.
client-enrol-nothing = No se oyó nada. ¿Está tapado el micrófono, o gastada la pila del botón? Luego compruébalo otra vez.
client-enrol-too-quiet = Muy bajo: solo { $db } dB por encima del ruido de la habitación. Apaga lo que zumbe o acerca el dispositivo y compruébalo otra vez.
client-enrol-too-far = Muy lejos: { $db } dB más débil que la grabación. Pon el dispositivo a menos de tres metros del tablero y compruébalo otra vez.
client-enrol-wrong-speed = Sonó un { $percent } % { $way ->
    [slower] más lento
   *[faster] más rápido
} que lo grabado, más de lo que se escucha. Revisa su pila y graba el botón como suena ahora.
client-enrol-another-word = Oído como «{ $other }» (seguro al { $sure } %). Si pulsaste «{ $says }», las dos suenan demasiado parecidas o una grabación es del otro botón: grábala de nuevo.
client-enrol-another-sound = Llegó un sonido, pero no el de esta grabación. ¿Fue el botón, y no una voz? Quizá se grabó otra cosa encima: entonces graba de nuevo el botón.
client-enrol-again = Comprobar otra vez
client-enrol-skip = Saltar
client-enrol-skipped = Sin comprobar. Se escucha de todos modos; compruébalo cuando quieras.
client-enrol-no-way = Este navegador no puede oír por sí mismo y este cuaderno no recibe sonido. Compruébalo con uno más nuevo; la grabación está guardada.
client-enrol-failed = No se pudo juzgar ({ $why }). Inténtalo de nuevo.
client-enrol-begin = Empezar a grabar
client-enrol-running = Pulsa ahora: «{ $next }», luego dos segundos de silencio. Van { $heard } de { $words }; quedan { $seconds } s.
client-enrol-running-all = { $heard } sonidos para { $words } palabras. Para ahora.
client-enrol-end = Era el último
client-enrol-cutting = Cortando en las pausas…
client-enrol-none = No destacó ningún sonido. Pon el dispositivo a un palmo de cada botón, en una habitación tranquila, y empieza de nuevo.
client-enrol-match = Tantos sonidos como palabras ({ $words }). Escúchalos y guárdalos.
client-enrol-fewer = Menos sonidos ({ $sounds }) que palabras ({ $words }). Toca «no se pulsó» donde falte una palabra, o empieza de nuevo con pausas más largas.
client-enrol-more = Más sonidos ({ $sounds }) que palabras ({ $words }). Toca «No es un botón» en una voz o un golpe; los nombres siguientes se corren.
client-enrol-sound = Sonido { $number }
client-enrol-says = Dice
client-enrol-no-word = Nada: se deja fuera
client-enrol-drop = No es un botón
client-enrol-not-pressed = «{ $says }» no se pulsó
client-enrol-play = Reproducir
client-enrol-picture = Imagen del sonido, { $seconds } s
client-enrol-beep = Se recortó un pitido al principio.
client-enrol-long = Largo: quizá se juntaron dos botones. Empieza de nuevo con pausas más largas, o déjalo fuera y graba esos dos en sus fichas.
client-enrol-quiet = Bajo: solo { $db } dB por encima del ruido de la habitación. Grábalo de nuevo más cerca.
client-enrol-keep = { $count ->
    [1] Guardar esta grabación
   *[other] Guardar estas { $count } grabaciones
}
client-enrol-keep-hint = Las grabaciones en uso de estas palabras se sustituyen; quedan en las fichas de las palabras.
client-enrol-keeping = Guardando { $n } de { $count }…
client-enrol-not-kept = «{ $says }» no se pudo guardar: { $why }
client-enrol-kept = { $count ->
    [1] Una grabación guardada. Ahora compruébala.
   *[other] { $count } grabaciones guardadas. Ahora compruébalas una tras otra.
}
client-enrol-next = Siguiente: «{ $says }»
client-enrol-of = { $n } de { $count }: «{ $says }»
client-enrol-done = Comprobado: { $proved } de { $count } se oyeron con seguridad.
client-enrol-not-proved = Aún no oídas con seguridad:
client-enrol-start-again = Empezar de nuevo
