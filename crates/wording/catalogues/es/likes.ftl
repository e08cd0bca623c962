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
likes-undo-this = Deshacer: { $what }
likes-away-is-an-answer = { $name } se fue, y eso es una respuesta. Sigue cuando { $name } vuelva sin llamar, u otro día.
likes-stand-in = «{ $thing }» no se puede mostrar: ofrece { $stand_in } en su lugar. Si { $name } lo elige, { $kind ->
    [touch] dáselo enseguida
    [training] hacedlo enseguida
   *[other] id enseguida
}.
likes-no-stand-in = «{ $thing }» no se puede mostrar junto a otra cosa. Ofrece lo que lo representa en casa, siempre lo mismo, como { $kind ->
    [touch] el cepillo o la mano abierta
    [training] lo que usáis para ello
   *[other] la correa
}; o cronométralo libremente.
likes-name-stand-in = Ponlo en la ficha
likes-time-freely = Cronometrar libremente
likes-needs-stand-in = no se puede mostrar: pon en su ficha qué lo representa, o usa el cronómetro
likes-to-card = Abrir su ficha
likes-stands = Lo que la representa
likes-stands-wrong = { $things } no se puede mostrar en la mano. Nombra en cada ficha lo que representa, desmárcala o marca abajo
likes-stands-tick = Ofrezco algo que siempre la representa, igual cada vez
likes-shown-as = se muestra: { $stand_in }
likes-pieces = { $pieces } × «{ $thing }»
likes-food-left = Premios de comida que quedan hoy: { $kcal } kcal ({ $pieces }). Cada pieza tomada se cuenta.
likes-food-short = No queda para una pieza de cada cosa. Déjalo por hoy, o corta piezas más pequeñas y edita la ficha.
likes-food-unknown = No se sabe cuánta comida puede tomar hoy { $name }. Cada pieza tomada se cuenta igualmente.
likes-in-front = delante de { $name }
likes-far-left = 1, extremo izquierdo de { $name }
likes-far-right = { $place }, extremo derecho de { $name }
likes-lay-one = Ponlo; tócalo si { $name } se acerca
likes-lay = Toca lo que tome { $name }
likes-whose-left = Ponlos como están dibujados, como los ve { $name }. Si estás frente a { $name }, su izquierda está a tu derecha.
likes-lay-all = Ponlos todos, en este orden desde la izquierda de { $name }
likes-did-not-come = No vino
likes-chose-none = No eligió
likes-walked-away = Se fue
likes-how-to-hold = Ponte detrás del centro, { $held ->
    [all] sostén ambos igual, no mires ninguno
   *[some] sostén por igual cada cosa, o lo que la representa, y no mires ninguna
}. Deja disfrutar lo tomado; retira lo demás.
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
likes-format = { $format ->
    [paired] De dos en dos
    [multiple] Todo en fila, sin reponer
    [single] De uno en uno
   *[free_access] Todo a la vez, con cronómetro
}
likes-about = { $format ->
    [paired] Cada par una vez por ronda, lados equilibrados. Lo más seguro y lo más largo: 6 cosas son 15 ensayos por ronda. (Fisher et al. 1992)
    [multiple] Cosas en fila; lo que toma no se repone. Rápido: 6 cosas son 6 ensayos por ronda. (DeLeon & Iwata 1996)
    [single] ¿Se acerca { $name }? Para un animal que no elige entre cosas. (Pace et al. 1985)
   *[free_access] Todo está ahí cinco minutos; cronometras con qué se ocupa { $name }. Bueno para juegos y lugares. (Roane et al. 1998)
}
likes-new-title = Una prueba de gustos
likes-not-today = Hoy no: se anotaron señales fuertes de estrés. Dale espacio a { $name } y prueba un día tranquilo.
likes-back = Volver a Gustos
likes-nothing-listed = Aún no hay nada anotado que { $name } pueda querer.
likes-how-to-offer = Cómo ofrecer
likes-compare = Qué comparar
likes-compare-hint = hasta 12; lo habitual son de cinco a ocho
likes-rounds = Rondas
likes-rounds-hint = cada par (o fila) una vez por ronda; bastan una o dos al día
likes-where-to-test = Prueba en el lugar y a la hora en que se usarán las palabras; con el estómago lleno la comida gusta menos. { $name } puede irse cuando quiera.
likes-format-missing = falta; elige una
likes-how-many = deben ser de { $least } a { $most } cosas, no { $ticked }; marca más o menos
likes-rounds-missing = faltan; 1 es un buen comienzo
likes-page-title = Lo que le gusta a { $name }
likes-no-test-today = Hoy sin prueba: se anotaron señales fuertes de estrés. Deja espacio; llegará un día tranquilo.
likes-nothing-tested = Aún no se ha probado nada. Una prueba muestra qué elige { $name }; las primeras palabras deberían ser lo que más elige.
likes-from-trials = { $trials ->
    [one] De un ensayo
   *[other] De { $trials } ensayos
}{ $choosing ->
    [all] { "" }
   *[other] , { $choosing } con elección
}; sin elegir: { $none }. No elegir también es una respuesta y se guarda.
likes-test-again = Probar de nuevo:
likes-new-test = Nueva prueba
likes-ranking = Orden
likes-sheet = Una hoja de esto para imprimir
likes-disagree = Las formas de probar pueden discrepar: los perros ordenaron comidas de otro modo de dos en dos y en fila; solo coincidió la última (Cameron, Siddall & Bizo 2021). Los gustos cambian con la hora y el día, así que los ensayos viejos cuentan menos.
likes-known-how = La seguridad: la probabilidad de que nada más sea claramente mejor. Basta con el 90 %; para en todo caso a los 60 ensayos con elección, por el bien de { $name }.
likes-next = Qué ofrecer ahora
likes-next-pair = { $left } a la izquierda de { $name }, { $right } a la derecha.
likes-offer-pair = Ofrecer este par ahora
likes-tests-so-far = Pruebas hasta ahora
likes-none-yet = Ninguna aún.
likes-test-line = { $trials ->
    [one] { $things } cosas · un ensayo
   *[other] { $things } cosas · { $trials } ensayos
}
likes-begun-by = empezada por { $name }
likes-go-on = Seguir
likes-see = Ver
likes-this-test = Esta prueba
likes-this-n = { $trials ->
    [one] un ensayo
   *[other] { $trials } ensayos
}, sin elección: { $none }
likes-thing = Cosa
likes-offered = ofrecido
likes-in-seconds = segundos
likes-taken = tomado
likes-sides = Lados: las cifras
likes-side = Tomado de la izquierda de { $name }: { $share }, { $p }.
likes-over-middling = Probabilidad de elegirlo frente a algo normal
likes-chance = probabilidad
likes-scores = Puntuaciones: { $format }
likes-score-of = { $format ->
    [single] parte de las ofertas atendidas
    [free_access] parte del tiempo ocupado con ello
   *[other] parte de las ofertas en que se tomó
}
likes-no-such-test = Este cuaderno no conoce esa prueba de este animal.
likes-not-offered = no es algo que se pueda ofrecer a { $name }
likes-same-twice = debe ser otra cosa que la izquierda
likes-answer-wrong = debe ser una de las cosas ofrecidas en este ensayo, ninguna o se fue
likes-seconds-missing = falta; pon los segundos que estuvieron las cosas
likes-more-than-none = debe ser mayor que 0
likes-longer-than-there = son más que el tiempo que estuvieron las cosas
