generalise-compares = { $what ->
    [person] Persona
    [room] Habitación
    [time] Tiempo
    [place] Lugar del botón
    [recording] Grabación
    [chooser] Quién eligió la palabra
   *[checks] Comprobaciones
}
generalise-first-weeks = primeras cuatro semanas
generalise-next-weeks = semanas 5 a 12
generalise-later = después
generalise-after-move = dos semanas tras moverlo
generalise-after-recording = dos semanas tras una nueva
generalise-otherwise = en otros momentos
generalise-drawn = sorteada por el cuaderno
generalise-chosen = elegida por una persona
generalise-blind = a ciegas
generalise-open = abierta: alguien lo sabía
