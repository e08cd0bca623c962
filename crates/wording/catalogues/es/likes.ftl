likes-test-title = { $format ->
    [paired] Prueba de gustos: de dos en dos
    [multiple] Prueba de gustos: todo en fila
    [single] Prueba de gustos: de uno en uno
   *[free_access] Prueba de gustos: todo a la vez, con cronómetro
}
likes-stop-here = Para aquí: se anotaron señales fuertes de estrés. Deja espacio y no atraigas. La prueba puede seguir otro día.
likes-trial = Ensayo { $number } de { $of } · ronda { $round } de { $rounds }
likes-done = Todos los ensayos están hechos. Gracias, { $name }.
likes-see-ranking = Ver el orden
likes-noted-already = Eso ya estaba anotado; no se cambió nada. Usa Deshacer si la última respuesta es errónea.
likes-stop-for-now = Parar por ahora
likes-goes-on-later = – lo anotado se guarda; la prueba puede seguir después.
likes-last-chose = Último: { $thing }
likes-last-none = Último: no eligió
likes-last-away = Último: se fue
likes-last-watched = Último: observado { $seconds } s
likes-undo = Deshacer
likes-away-is-an-answer = { $name } se fue, y eso es una respuesta. Sigue cuando { $name } vuelva sin llamar, u otro día.
likes-stand-in = { $thing } no se puede mostrar: ofrece { $stand_in } en su lugar. Si { $name } lo elige, id enseguida.
likes-no-stand-in = { $thing } no se puede mostrar junto a otra cosa. Ofrece lo que lo representa en casa, siempre lo mismo, como la correa; o cronométralo libremente.
likes-name-stand-in = Ponlo en la ficha
likes-time-freely = Cronometrar libremente
likes-needs-stand-in = no se puede mostrar: pon en su ficha qué lo representa, o usa el cronómetro
likes-shown-as = se muestra: { $stand_in }
likes-pieces = { $pieces } × { $thing }
likes-food-left = Premios de comida que quedan hoy: { $kcal } kcal ({ $pieces }). Cada pieza tomada se cuenta.
likes-food-short = No queda para una pieza de cada cosa. Déjalo por hoy, o corta piezas más pequeñas y edita la ficha.
likes-food-unknown = No se sabe cuánta comida puede tomar hoy { $name }. Cada pieza tomada se cuenta igualmente.
likes-in-front = delante de { $name }
likes-to-the-left = a la izquierda de { $name }
likes-to-the-right = a la derecha de { $name }
likes-far-left = 1, lo más a la izquierda de { $name }
likes-far-right = { $place }, lo más a la derecha de { $name }
likes-lay-one = Ponlo; tócalo si { $name } se acerca
likes-lay = Ponlos, como los ve { $name }; toca lo que { $name } tome
likes-lay-all = Ponlos todos, en este orden desde la izquierda de { $name }
likes-did-not-come = No vino
likes-chose-none = No eligió
likes-walked-away = Se fue
likes-how-to-hold = Ponte detrás del centro, sostén ambos igual, no mires ninguno. Deja disfrutar lo tomado; retira lo demás.
likes-two-at-once = Si toma dos a la vez, no anotes nada y ofrécelos de nuevo.
likes-half-a-minute = Sin elección en medio minuto: «no eligió».
likes-move-freely = Deja que { $name } se mueva libremente; lo habitual son cinco minutos. Cronometra con qué se ocupa { $name }, una cosa cada vez.
likes-begin = Empezar
likes-times = Tiempos en segundos
likes-seconds-there = Segundos que estuvieron las cosas
likes-seconds-busy = { $thing }: segundos de ocupación
likes-pieces-eaten = { $thing }: piezas comidas
likes-note-times = Anotar estos tiempos
likes-away-at-once = Se fue enseguida
