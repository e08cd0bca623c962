brief-fill-card = Completar su ficha
brief-batteries = Revisar la pila
brief-silent = Revisar pila y botón
brief-hard-to-make-out = Escuchar su grabación de lejos
brief-not-wanted = Cambiar lo que trae
brief-too-little = Mostrarla más a menudo
brief-too-late = Dar más rápido
brief-avoided = Dejar su botón por ahora
brief-time-or-place = Otra hora, un sitio más tranquilo
brief-health = Antes, al veterinario
brief-sounds-alike = Otra palabra
brief-people-differ = Acordar una respuesta
brief-step-back = { $to ->
    [invite] Volver a invitar, sin pérdida
   *[other] Volver a mostrar, sin pérdida
}
brief-back-because = { $why ->
    [strain] Señales fuertes de estrés en sesiones con ella
    [card] Su recompensa o respuesta no está fijada
    [faded] Se debilitó tras unas semanas
    [shown] Aún no mostrada lo suficiente
    [seldom] Pocas pulsaciones al invitar
    [joins] Se une a pocas sesiones
   *[other] Aún no es segura al invitar
}
brief-begin-inviting = Empezar a invitar
brief-invite = Invitar una o dos veces
brief-show = Mostrarla
brief-show-at-end = Mostrarla al final
brief-leave-to-animal = Dejarlo a { $name } y responder siempre
brief-answer = Responder a cada pulsación
brief-signal-times = Señalar cuándo se puede tener
brief-rest = Hoy no enseñar nada
brief-agreed = { $way ->
    [show] Mostrarla
    [offer_in_view] Invitar, con la cosa a la vista
    [ask_and_point] Invitar, preguntar y señalar
   *[ask_between_two] Invitar, «esto o aquello»
}
