command-listen-add-word = { $why }. Añádela primero en la página Palabras
command-listen-the-recording = la grabación
command-listen-name-a-file = nombra un archivo de sonido, o di --record SECONDS
command-listen-enrolled = «{ $word }»: guardada.
command-listen-enrolled-before = «{ $word }»: esta misma grabación ya estaba guardada.
command-listen-clip-too-large = { $file }: { $bytes } bytes; una grabación de una palabra puede tener { $most }
command-listen-no-findings = Nada que objetar.
command-listen-quoted = «{ $word }»
command-listen-without = Sin grabación, así que no se escuchan: { $words }.
command-listen-record-range = --record admite de { $least } a { $most } segundos
command-listen-recording = Grabando { $seconds } con «{ $microphone }». Haz sonar el botón una vez, bajito y donde el animal no lo oiga.
command-listen-sound-lost = se perdió parte del sonido porque el equipo estaba demasiado ocupado; graba de nuevo
command-listen-nothing-heard = no se oyó nada; haz sonar el botón mientras graba
command-listen-lost = se perdió el micrófono «{ $microphone }»: { $why }
command-listen-lost-driver = se perdió el micrófono «{ $microphone }»: su controlador terminó
command-listen-lost-silent = se perdió el micrófono «{ $microphone }»: no llega sonido desde hace { $seconds } s; ¿sigue enchufado?
command-listen-built-without =
    este programa se compiló sin el micrófono. O bien conecta una grabadora a su entrada:
    { "  " }arecord -q -f S16_LE -r 16000 -c 1 -t raw | sayso listen ... --pcm s16le --rate 16000 --channels 1 -
    o bien compílalo con el micrófono (en Linux con las cabeceras de ALSA, como libasound2-dev en Debian):
    { "  " }cargo build --release -p sayso --features microphone
command-listen-no-microphone = este equipo no tiene micrófono, o no se lo da a este programa; enchufa uno, o permítelo, e inténtalo de nuevo
command-listen-not-opened = no se puede abrir el micrófono: { $why }
command-listen-samples = el micrófono «{ $microphone }» da muestras como { $samples }, que no se leen
command-listen-give-what = da --data DIR o --clips DIR
command-listen-input-alone = la entrada estándar (-) se escucha sola, sin otros archivos
command-listen-input-samples = la entrada estándar contiene solo muestras: di cuáles, por ejemplo --pcm s16le --rate 16000 --channels 1
command-listen-pcm-for-input = --pcm es para la entrada estándar; da - como archivo
command-listen-one-file = con --log da un archivo cada vez, pues cada uno empezó a su hora
command-listen-when-began = con --log di cuándo empezó la grabación, por ejemplo --started-at 2026-03-01T18:30:00Z
command-listen-checkpoint-one = --checkpoint va con un solo archivo
command-listen-least-range = --least es una certeza de 0 a 1
command-listen-other-checkpoint = { $file } pertenece a otro archivo de sonido o a otras grabaciones; quítalo para empezar de nuevo
command-listen-no-checkpoint = { $file } no es un punto de control de este programa ({ $why })
command-listen-going-on = { $file }: sigue en { $seconds } s; lo oído antes no se imprime otra vez
command-listen-progress = { $file }: { $share } leído, { $seconds } s examinados, pulsaciones: { $n }
command-listen-damaged-parts = { $file }: { $n ->
    [one] se omitió { $n } parte dañada; las horas posteriores pueden ser tempranas
   *[other] se omitieron { $n } partes dañadas; las horas posteriores pueden ser tempranas
}
command-listen-listening = Escuchando con «{ $microphone }» ({ $rate } Hz, canales: { $channels }) { $n ->
    [one] { $n } palabra
   *[other] { $n } palabras
}. El sonido no se guarda. Ctrl-C termina.
command-listen-missed = Se perdieron { $seconds } s de sonido porque el equipo estaba demasiado ocupado; no se oyeron las pulsaciones que hubo.
command-listen-no-ctrl-c = sayso: no se detecta Ctrl-C ({ $why }); termina el programa de otro modo
command-listen-cut-off = la entrada estándar acabó a mitad de una muestra: ¿cortada, o no es { $samples }?
command-listen-left-out = «{ $word }» no se escucha: { $why }
command-listen-nothing-enrolled = no hay ninguna grabación guardada, así que no hay nada que escuchar; mira `sayso enrol --help`
command-listen-second-clip = { $file }: una segunda grabación de «{ $word }»
command-listen-no-sound-files = { $dir }: no contiene ningún archivo de sonido ({ $endings })
command-listen-presses-heard = { $n ->
    [one] { $n } pulsación oída
   *[other] { $n } pulsaciones oídas
} en { $minutes } minutos.
command-listen-logged = De ellas, anotadas: { $n }; ya estaban en el registro: { $known }.
command-listen-slowed = «{ $word }» suena un { $slowed } más lento (error estándar { $error }, { $n } pulsaciones; probabilidad de que se frene más que los botones sanos: { $probability }): quizá se le agota la pila.
command-listen-never = No oídas en absoluto (otras palabras: { $n ->
    [one] una vez
   *[other] { $n } veces
}): { $words }. Quizá nadie las pulsó; también puede ser una pila gastada o una grabación vieja.
command-listen-home = Hogar
command-listen-begun = Se empezó un cuaderno nuevo en { $folder }. Las horas están en UTC hasta que su página Personas indique una zona horaria.
command-listen-added = «{ $word }» es una palabra nueva de este cuaderno.
