client-rehearse-press = Pulsar y decir
client-rehearse-give = Dar
client-rehearse-asked = { $name } pulsó: dar
client-rehearse-offer = Invitar con esto
client-rehearse-instead = Dar esto en su lugar
client-rehearse-ready = Nada ha empezado. Todo se mueve cuando empieces.
client-rehearse-begun = Empieza.
client-rehearse-wait = Espera: { $seconds } s
client-rehearse-then = Ahora pulsa, di y da.
client-rehearse-pause = Una señal leve: haz una pausa y deja espacio.
client-rehearse-of = { $passed } de { $most }
client-rehearse-invited = Invitación { $n } de { $all }
client-rehearse-treats = { $count ->
    [one] queda { $count } premio
   *[other] quedan { $count } premios
}
client-rehearse-paused = En pausa mientras no se veía la página.
client-rehearse-away = El cuaderno no responde. Lo que haces queda aquí y se envía cuando vuelva; lo que resulte se verá entonces.
client-rehearse-which = ¿Cuál? Toca su botón.
client-rehearse-hold = No te muevas hasta que elija.
client-rehearse-waits = Espera
client-rehearse-now-press = Ahora pulsa y di
client-rehearse-end-again = Pulsa { $key } otra vez para terminar.
client-rehearse-none = No queda: ahora no, u otra cosa
client-rehearse-none-here = No queda
