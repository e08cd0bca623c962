checks-title = Comprobaciones
checks-one = Una comprobación
checks-no-such = Este cuaderno no conoce tal comprobación de este animal.
checks-design = { $design ->
    [pick_for_word] Oír una palabra, elegir la cosa
    [press_under_covers] Ver desaparecer una cosa, pulsar su botón; botones cambiados bajo tapas
    [wrong_delivery] Otra cosa que la pedida
   *[press_for_thing] Ver desaparecer una cosa, pulsar su botón
}
checks-place = { $kind ->
    [button] Botón { $number }
   *[place] Lugar { $number }
}
checks-left = izquierda de { $name }
checks-right = derecha de { $name }
checks-whose-left = Dibujado como lo ve { $name }. Si estás frente a { $name }, su izquierda está a tu derecha.
checks-mark-asked-for = { $mark } marca lo que se pide.
checks-quoted = «{ $word }»
checks-health = Salud:
checks-trials = { $trials ->
    [one] Un ensayo
   *[other] { $trials } ensayos
}
checks-blind = a ciegas
checks-not-blind = no a ciegas
checks-intro = Una comprobación (una sonda, en la jerga) pregunta si { $name } se guía por la palabra misma: planeada de antemano, en orden al azar, con una persona al lado que no puede delatar la respuesta.
checks-none-today = Hoy no hay comprobación: se anotaron señales fuertes de estrés. Da espacio; ya llegará un día tranquilo.
checks-plan = Planear una comprobación
checks-so-far = Comprobaciones hasta ahora
checks-none = Ninguna todavía.
checks-open = Abrir
checks-to-designs = ¿Ayuda un cambio? Pruebas de un cambio
checks-cannot-show = Una comprobación puede mostrar por qué se guía un animal; no puede mostrar que un animal no entiende. No elegir e irse se cuentan aparte y nunca son un error.
checks-finished = { $trials ->
    [one] Terminada como se planeó, un ensayo
   *[other] Terminada como se planeó, { $trials } ensayos
}
checks-finished-otherwise = { $trials ->
    [one] Terminada, un ensayo, pero no como se planeó
   *[other] Terminada, { $trials } ensayos, pero no como se planeó
}
checks-going = { $trials ->
    [one] { $done } de un ensayo
   *[other] { $done } de { $trials } ensayos
}
checks-nothing-worked-out = De esta comprobación no se puede calcular nada: { $why }.
checks-finds = Con esta duración se detecta en cuatro de cada cinco comprobaciones a un animal que acierta en { $share } o más, palabra por palabra.
checks-finds-none = Es demasiado corta para detectar siquiera a un animal que acierta en { $share }, palabra por palabra; solo puede una más larga.
checks-not-as-planned = No como se planeó:
checks-taken-back = { $trials ->
    [one] 1 ensayo retirado: cuenta como error.
   *[other] { $trials } ensayos retirados: cuentan como errores.
}
checks-changed = { $trials ->
    [one] 1 ensayo cambiado tras la primera respuesta: cuenta como error.
   *[other] { $trials } ensayos cambiados tras la primera respuesta: cuentan como errores.
}
checks-again = { $trials ->
    [one] 1 ensayo respondido de nuevo con un número ya usado: cuenta la primera respuesta.
   *[other] { $trials } ensayos respondidos de nuevo con un número ya usado: cuenta la primera respuesta.
}
checks-left-out = { $trials ->
    [one] 1 ensayo saltado entre otros: cuenta como error.
   *[other] { $trials } ensayos saltados entre otros: cuentan como errores.
}
checks-not-as-drawn = { $trials ->
    [one] 1 ensayo con otra palabra o cosa que la sorteada con la semilla de este plan: cuenta como error.
   *[other] { $trials } ensayos con otra palabra o cosa que la sorteada con la semilla de este plan: cuentan como errores.
}
checks-beyond = { $trials ->
    [one] 1 ensayo con un número que el plan no tiene: no cuenta.
   *[other] { $trials } ensayos con un número que el plan no tiene: no cuentan.
}
checks-knew-answer = { $trials ->
    [one] 1 ensayo en que la persona junto al animal sabía la respuesta: un acierto no cuenta como a ciegas, un error sí.
   *[other] { $trials } ensayos en que la persona junto al animal sabía la respuesta: un acierto no cuenta como a ciegas, un error sí.
}
checks-earlier-rule = Sorteada con una regla anterior, en la que lo último pedido delataba algo: se muestra y no sube nada.
checks-given-up = Se planeó otra comprobación antes de terminar esta: sigue en el conjunto, y la respuesta que habría venido después cuenta como error.
checks-things-a-trial = { $choices } cosas por ensayo
checks-buttons-a-trial = { $choices } botones por ensayo
checks-not-today-space = Hoy no: se anotaron señales fuertes de estrés. Da espacio.
checks-i-set-up = Yo preparo
checks-i-am-with = Yo estoy con { $name }
checks-go-on-alone = Ir al siguiente ensayo
checks-two-phones = Lo mejor son dos teléfonos. Con uno, imprime la hoja de quien prepara y da el teléfono a quien acompaña.
checks-setters-sheet = Hoja de quien prepara
checks-scorers-sheet = Hoja de quien anota
checks-who-does-what = Quién hace qué y quién puede saber qué
checks-all = Todas las comprobaciones
checks-setter = Quien prepara
checks-setter-knows = sabe la respuesta
checks-setter-picks = Coloca las cosas según la lista, todas igual de cerca, y se va adonde { $name } no vea a nadie. Desde allí reproduce la palabra, una vez. No dice nada más.
checks-setter-covers = Cubre el tablero y pone los botones bajo las tapas según la lista. Deja que { $name } vea la cosa, la guarda fuera de la vista y se va adonde { $name } no vea a nadie.
checks-setter-shows = Deja que { $name } vea la cosa, la guarda y se va adonde { $name } no vea a nadie. Deja cada botón donde está siempre.
checks-presenter = Quien acompaña
checks-alone = La comprobación, a solas
checks-must-not-know = no debe saberla
checks-presenter-knows = aquí la sabe, así que no es a ciegas
checks-presenter-picks = Está con { $name }; de espaldas, o con gafas oscuras, mientras se colocan las cosas y hasta que elija. No señala, no asiente, no habla ni apura.
checks-presenter-covers = Entra cuando la cosa ya no está; quita las tapas desde atrás, sin mirar los botones. No sabe dónde está cada botón. No señala, no asiente, no habla ni apura.
checks-presenter-stands = Entra cuando la cosa ya no está. Se pone detrás del centro del tablero y mira al frente. No señala, no asiente, no habla ni apura.
checks-scorer = Quien anota
checks-scorer-notes = Anota el número de lo que se eligió primero, sin saber qué era lo correcto: quien acompaña, en el teléfono, o una tercera persona a partir de un vídeo sin sonido.
checks-goes-by-place = Solo para un animal que distingue sus botones por el aspecto, la imagen o el olor. Uno que se guía por el lugar quedará aquí en el azar, y eso no es un fracaso.
checks-kindly = { $stop } ({ $signs }), con una fuerte al instante, y después de diez ensayos como mucho. { $name } puede irse en cualquier momento; nunca llames a { $name } de vuelta. Elija lo que elija, lo recibe: una comprobación no es una lección, y para un animal nada está nunca mal.
checks-kindly-stop = Para ante cualquier señal de estrés
checks-not-today = Hoy no: se anotaron señales fuertes de estrés. Da espacio a { $name } y comprueba en un día tranquilo.
checks-back-to-all = Volver a las comprobaciones
checks-too-few-words = { $words ->
    [0] Una comprobación necesita dos palabras o más; { $name } no tiene ninguna.
   *[other] Una comprobación necesita dos palabras o más; { $name } tiene { $words }.
}
checks-to-words = A las palabras
checks-why = Las pulsaciones de cada día dejan sitio a otras explicaciones: una mirada, un lugar favorito, una cosa favorita. Una comprobación cierra ese hueco, si primero se planea y luego se hace como se planeó.
checks-field-design = Qué hace { $name }
checks-field-words = Palabras
checks-field-words-hint = lo habitual son de dos a cuatro; cada una con su propia cosa
checks-field-choices = Cosas o botones tapados a la vez
checks-field-choices-hint = 2 es lo más fácil; con más hacen falta menos ensayos. Si los botones no cambian de lugar, cuentan todas las marcadas
checks-field-rate = Aciertos, como mínimo, en %
checks-field-rate-hint = cuánto debe acertar { $name } para que te importe; menos exige muchos más ensayos
checks-field-who = Quién está
checks-who-two = Dos personas o más
checks-who-two-hint = Una prepara, la otra está con { $name } y no sabe la respuesta: una comprobación a ciegas.
checks-who-one = Estoy a solas
checks-who-one-hint = Sabes la respuesta, así que las pistas involuntarias siguen siendo una explicación posible, salga lo que salga.
checks-about-picks = Para oír: las cosas están en lugares al azar; suena una palabra; ¿a qué cosa va { $name }? El orden y los lugares al azar descartan casi todas las demás explicaciones.
checks-about-covers = Para pedir: antes de cada ensayo los botones se cambian bajo tapas según el sorteo, y la cosa queda fuera de la vista; quien responde no sabe dónde está cada botón.
checks-suggests = Los botones no cambian de lugar, así que una costumbre de lugar se vería igual: puede sugerir y nada más. Cambiados bajo tapas, podría mostrarlo.
checks-count = ¿Cuántos ensayos?
checks-count-each = { $sittings ->
    [one] { $each } para cada una de { $words } palabras, en una tanda más o menos.
   *[other] { $each } para cada una de { $words } palabras, en unas { $sittings } tandas de { $most } en días u horas distintas.
}
checks-count-chance = Por azar { $name } acertaría en { $share }.
checks-count-false-alarm = El azar por sí solo lleva una palabra a lo más alto en { $share } de las comprobaciones ({ $alpha }, repartido entre las palabras).
checks-count-power = Si { $name } acierta tanto como esperas, una palabra llega en { $share } de las comprobaciones.
checks-count-top = Una palabra está en lo más alto a partir de { $right }; bastan menos si llegan pronto. Cuentas binomiales exactas.
checks-count-right = { $right } aciertos de { $each }
checks-count-by-lot = Qué palabra toca se sortea cada vez, para que la última no delate la siguiente: { $each } es el promedio, y una palabra que salió menos puede necesitar más ensayos.
checks-plan-these = { $trials ->
    [one] Planear este ensayo
   *[other] Planear estos { $trials } ensayos
}
checks-unfinished = Sin terminar:
checks-unfinished-count = Lo que se empezó sigue en el conjunto. Si planeas otra del mismo tipo, se carga un error por la respuesta no anotada.
checks-stop-here = Para aquí: se anotaron señales fuertes de estrés. Da espacio y no atraigas a { $name } de vuelta. La comprobación puede seguir otro día.
checks-sitting-done = { $trials } ensayos hoy: es una tanda. Descansad ahora; seguid en unas horas u otro día.
checks-setter-only = Solo para quien prepara. Quien acompaña no debe ver esta página ni el Registro.
checks-cannot-run = Esta comprobación no se puede hacer desde aquí: { $why }.
checks-all-done = { $trials ->
    [one] El único ensayo está hecho.
   *[other] Los { $trials } ensayos están hechos.
}
checks-at-board = Este tipo se anota en el tablero, como cualquier respuesta.
checks-back-to-one = Volver a la comprobación
checks-trial-of = Ensayo { $number } de { $trials }
checks-lay-out = Coloca, desde la izquierda de { $name }
checks-asked-for = – la pedida
checks-then-play = Después sal de la vista y reproduce { $word }, una vez.
checks-then-play-alone = Luego da un paso atrás, mira al frente y haz sonar { $word }, una vez. No digas nada más ni señales.
checks-under-covers = Bajo las tapas, desde la izquierda de { $name }
checks-show-thing = Muéstralo y luego guárdalo: { $thing }
checks-lies-in = Su botón está en el lugar { $place }. Llama a quien acompaña cuando estés fuera de la vista. Aparta los botones que no estén en la lista.
checks-lies-in-alone = Su botón está en el lugar { $place }. Aparta los botones que no estén en la lista. Quita las tapas desde atrás, mira al frente y no digas nada.
checks-its-number = Llama a quien acompaña cuando estés fuera de la vista. Su botón es el número { $place }.
checks-its-number-alone = Su botón es el número { $place }. Ponte detrás del centro del tablero, mira al frente y no digas nada.
checks-numbers = Números de los botones
checks-numbers-how = Pon un número pequeño junto a cada botón, para que quien acompaña pueda decir cuál se pulsó:
checks-next = ¿Anotado? Mostrar el siguiente
checks-next-how = Cambia cuando quien acompaña ha tocado lo que pasó. ¿Colocaste algo mal? No reproduzcas la palabra; colócalo de nuevo.
checks-laid = Hecho. ¿Qué hizo { $name }?
checks-noted-already = Eso ya estaba anotado; no se cambió nada. Deshacer retira la última respuesta, que entonces cuenta como error.
checks-thanks = Gracias, { $name }.
checks-see = Ver qué salió
checks-stop-for-now = Parar por ahora
checks-stop-for-now-kept = – lo anotado se guarda; sigue más tarde.
checks-go-on = Seguir de todos modos
checks-note-sign = ¿Una señal de estrés? Anótala en el tablero de { $name }
checks-which = { $kind ->
    [picks] ¿A qué lugar fue primero { $name }?
    [place] ¿En qué lugar pulsó primero { $name }?
   *[button] ¿Qué botón pulsó primero { $name }?
}
checks-nothing = Nada
checks-away = Se fue
checks-before-tap = { $blind ->
    [yes] ¿Cronometrado? ¿Sabías la respuesta? Dilo antes
   *[other] ¿Cronometrado? Dilo antes
}
checks-field-seconds = Segundos hasta la elección
checks-field-seconds-hint = solo si alguien cronometró
checks-field-knew = Esta vez yo sabía la respuesta (la vi o la oí)
checks-how-to-note = Aparta la vista hasta que elija. No elegir en medio minuto más o menos es «nada»; marcharse es «se fue». Ninguna es un error. { $name } recibe lo que elige; un trozo de comida se cuenta.
checks-stop-and-cautions = Para ante cualquier señal de estrés. Los avisos de salud y comida están en la página de quien prepara: que los lea antes.
checks-last-trial = Ensayo { $number }:
checks-a-choice = una elección
checks-undo = Deshacer
checks-undo-counts = Deshacer: la respuesta queda en el registro y cuenta como error; el ensayo no vuelve.
checks-went-away = { $name } se fue, y eso es una respuesta. Deja ir a { $name }; seguid cuando vuelva por sí, u otro día.
checks-for-setter = { $only } Dóblala para que no la vean ni quien acompaña ni quien anota.
checks-for-setter-only = Solo para quien prepara.
checks-column-number = N.º
checks-column-play = Reproducir
checks-column-hide = Guardar
checks-column-button = Botón
checks-column-seconds = Segundos
checks-cross = Marca lo que { $name } eligió primero. No elegir en medio minuto más o menos es { $nothing }, marcharse es { $away }; ninguna es un error. Segundos solo si se cronometró.
checks-do-not-look = No mires la hoja de quien prepara ni adivines qué se pidió.
checks-cannot-draw = El orden no se puede sortear a partir de este plan: { $why }.
checks-sitting = Tanda { $number }
checks-date-and-who = Fecha y hora, quién estaba:
checks-prints-again = semilla { $seed }: el mismo plan imprime de nuevo este orden.
checks-nothing-done = Todavía no se ha hecho nada.
checks-came-out = Qué salió
checks-this-not-blind = Esta comprobación no fue a ciegas: quien anotó sabía la respuesta. Donde abajo se nombra una comprobación a ciegas, es una anterior.
checks-figures = Cifras hasta ahora
checks-read-any-time = Léelo cuando quieras, sigue o déjalo aquí: no hay que cerrar nada. Las pruebas están hechas para eso. Lo que se empezó sigue en el conjunto.
checks-chart = Aciertos, de las elecciones hechas
checks-chart-axis = proporción de aciertos
checks-chart-read = Línea vertical: el azar, { $chance }. Barras: intervalos del 95 % que valen se lean cuando se lean. Para cada palabra: de las veces que { $name } fue a ella, cuántas era la pedida; una favorita acierta solo por azar. Cuentan las primeras respuestas; las retiradas cuentan como errores.
checks-no-choice = No eligió nada; eso no dice ni una cosa ni la otra.
checks-went-for = { $times ->
    [one] { $name } fue a esta una vez, y era la pedida en { $right }: { $share } ({ $low } a { $high }).
   *[other] { $name } fue a esta { $times } veces, y era la pedida en { $right }: { $share } ({ $low } a { $high }).
}
checks-never-wrong = Nada: { $nothing }. Se fue: { $away }. Ninguna cuenta como error.
checks-p-rearranged = ¿Va este botón con lo que se mostró (cosas repartidas de nuevo al azar, pulsaciones tal como fueron)? { $p }. Léelo junto con la proporción de aciertos.
checks-p-chance = { $times ->
    [one] Frente al azar ({ $chance }, binomial exacta, unilateral): { $p }, de una elección.
   *[other] Frente al azar ({ $chance }, binomial exacta, unilateral): { $p }, de { $times } elecciones.
}
checks-bayes-above = Factor de Bayes { $factor }: tantas veces más probable si la proporción de aciertos está en cualquier punto por encima del azar que por azar.
checks-bayes-below = Factor de Bayes 1 a { $factor }: tantas veces más probable por azar que si la proporción de aciertos está en cualquier punto por encima del azar.
checks-more-than = más de { $number }
checks-seconds-right = { $timed ->
    [one] El único acierto cronometrado llegó en { $seconds } s.
   *[other] La mitad de los { $timed } aciertos cronometrados llegó en { $seconds } s.
}
checks-seconds-wrong = { $timed ->
    [one] El único error cronometrado llegó en { $seconds } s.
   *[other] La mitad de los { $timed } errores cronometrados llegó en { $seconds } s.
}
checks-latency = Aciertos frente a errores, suma de rangos, bilateral: { $p }.
checks-may-be-said = Qué se puede decir
checks-said-of-word = { $word }: { $said }.
checks-judged = Juzgado sobre todas las palabras y todas las comprobaciones empezadas juntas, para que muchas pruebas y muchas lecturas no acaben en una afirmación falsa.
