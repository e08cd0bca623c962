client-ear-insecure = Esta página llegó por HTTP sin cifrar, y los navegadores solo dan el micrófono a páginas que llegan con seguridad. En el equipo donde funciona Sayso, ábrela como http://localhost. Para un teléfono, inicia Sayso con --lan --secure y abre la dirección que muestre.
client-ear-unable = Este navegador no puede escuchar. Usa uno más nuevo o ejecuta «sayso listen» en el equipo donde funciona Sayso.
client-ear-connected = Conectado.
client-ear-waiting = El cuaderno no responde; { $seconds } s se guardan aquí y se envían después.
client-ear-lost = { $seconds } s no se pudieron guardar y no se oyeron.
client-ear-held = Se oyen las pulsaciones, pero ahora no se pueden guardar: { $why }
client-ear-silent = No llega sonido al micrófono: ¿está tapado o apagado?
client-ear-heard-now = { $count ->
    [0] Aún no se ha oído ninguna pulsación.
    [one] Se ha oído una pulsación.
   *[other] Se han oído { $count } pulsaciones.
}
client-ear-listening = Escuchando { $count ->
    [one] una palabra
   *[other] { $count } palabras
} desde las { $time }.
client-ear-words = Se escucha: { $words }.
client-ear-left-out = Falta su sonido, así que estas no: { $words }.
client-ear-press = { $time }, seguro al { $sure } %, { $state ->
    [tapped] anotado; también se tocó y cuenta una vez
    [known] anotado antes
   *[new] anotado
}
client-ear-kept = su sonido se guarda para juzgarlo
client-ear-busy = Otra página escucha este tablero desde las { $time }.
client-ear-take = Escuchar aquí
client-ear-taken = Apagado: ahora escucha otra página.
client-ear-off = Apagado.
client-ear-off-heard = Apagado. { $count ->
    [0] No se oyó nada.
    [one] Se oyó una pulsación.
   *[other] Se oyeron { $count } pulsaciones.
}
client-ear-asking = Pidiendo el micrófono…
client-ear-connecting = Conectando…
client-ear-ending = Escuchando lo último…
client-ear-not-allowed = No se permitió el micrófono. Permítelo para esta página en los ajustes del navegador y prueba de nuevo.
client-ear-not-found = Este dispositivo no tiene micrófono.
client-ear-in-use = Otro programa está usando el micrófono. Ciérralo y prueba de nuevo.
client-ear-not-opened = No se pudo abrir el micrófono ({ $why }).
client-ear-gone = El micrófono se retiró o ya no está permitido.
client-ear-stopped = El navegador detuvo el sonido.
client-ear-sound-gone = El sonido ya no se guarda
client-ear-not-noted = El cuaderno no responde; no se anotó nada. Prueba de nuevo.
client-ear-noted = Anotado: { $word }, { $answer }.
client-ear-record-insecure = Para grabar aquí la página debe llegar con seguridad: abre Sayso en el propio equipo o inícialo con --lan --secure. Un archivo de sonido sirve en todo caso.
client-ear-record-unable = Este navegador no puede grabar. Elige un archivo de sonido.
client-ear-loudness = Volumen en el micrófono
client-ear-record = Grabar con este dispositivo
client-ear-record-how = Pon el dispositivo a un palmo del botón, en una habitación tranquila, donde el animal no lo oiga.
client-ear-recording = Grabando: pulsa el botón una vez. Quedan { $seconds } s.
client-ear-stop = Parar
client-ear-record-again = Grabar de nuevo
client-ear-record-nothing = No se oyó nada. ¿Está tapado o apagado el micrófono?
client-ear-recorded = { $seconds } s, con el silencio de los extremos recortado. Escúchalo y guárdalo, o graba de nuevo.
client-ear-what-recorded = Lo grabado
client-ear-record-keep = Guardar esta grabación y comprobarla
client-ear-unsent = { $count ->
    [one] Un toque hecho en este dispositivo aún no está
   *[other] { $count } toques hechos en este dispositivo aún no están
} en el cuaderno. Vincúlalo de nuevo y se envían. Si no se va a vincular más, guárdalos en un archivo, que «sayso import» lee, y vacía este dispositivo.
client-ear-clear = Vaciar este dispositivo
client-ear-clear-sure = ¿Vaciar lo que guarda este dispositivo, { $count ->
    [one] con un toque sin enviar
   *[other] con { $count } toques sin enviar
}? Comprueba antes que el archivo se guardó.
client-ear-cleared = Este dispositivo ya no guarda nada del cuaderno.
client-ear-save-unsent = Guardarlos en un archivo
client-ear-pause = Pausa
client-ear-go-on = Seguir
client-ear-here = Este dispositivo oye por sí mismo: ningún sonido sale de él, solo las pulsaciones.
client-ear-there = Este navegador no puede oír por sí mismo: mientras escucha, el sonido va al equipo donde funciona Sayso.
client-ear-no-way = Este navegador no puede oír por sí mismo y este cuaderno no acepta sonido. Usa un navegador más nuevo.
client-ear-ready = Preparando las grabaciones…
client-ear-not-ready = No se pudo empezar a escuchar ({ $why }). Abre esta página una vez mientras el cuaderno responde y vuelve a intentarlo.
client-ear-broke = La escucha se interrumpió en este dispositivo ({ $why }). Actívala de nuevo.
client-ear-hearing = Este dispositivo está oyendo.
client-ear-behind = Este dispositivo va lento: { $seconds } s de retraso.
client-ear-gap = No se oyó: de { $from } a { $to }.
client-ear-no-sound = No llega sonido desde las { $time }: puede que otro programa o una llamada tenga el micrófono.
client-ear-last = { $time }, seguro al { $sure } %
client-ear-unsent-signed-out = { $count ->
    [one] Un toque hecho en este dispositivo aún no está
   *[other] { $count } toques hechos en este dispositivo aún no están
} en el cuaderno. Inicia sesión de nuevo, abre el Tablero, y se envían. Si nadie va a entrar aquí de nuevo, guárdalos en un archivo, que «sayso import» lee, y vacía este dispositivo.
client-ear-unsent-left = { $count ->
    [one] Un toque hecho en este dispositivo es
   *[other] { $count } toques hechos en este dispositivo son
} de un hogar que ya no es tuyo: dejó este servidor, o tu papel allí terminó. Eso no se puede enviar. Guárdalo en un archivo, que «sayso import» lee, y después bórralo aquí.
