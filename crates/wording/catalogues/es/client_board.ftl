client-board-never-given = no se da
client-board-today-count = { $n } hoy
client-board-of-aim = { $here } de { $aim }
client-board-food-left = { $food }: { $n ->
        [0] hoy no queda
        [one] queda { $n }
       *[other] quedan { $n }
    }
client-board-shown-count = { $n ->
    [one] { $n } mostrada
   *[other] { $n } mostradas
}
client-board-seconds = { $s } s
client-board-median-of = mediana de { $n }
client-board-is-joined = se ha unido
client-board-not-joined = aún no se ha unido
client-board-ration-unknown = Ración desconocida: { $why }
client-board-no-figures = aún sin cifras
client-board-used-up = Las recompensas de comida de hoy se han acabado. Da juego, contacto o exploración.
client-board-treats-left = Recompensas de comida que quedan: { $list }
client-board-treat-left = { $food } { $n } { $by ->
    [card] (su ficha)
   *[food] (la comida del día)
}
client-board-kcal = { $n } kcal
client-board-clock-off = El reloj de este dispositivo va { $n } minutos { $way ->
        [ahead] adelantado
       *[behind] atrasado
    } respecto al del cuaderno, y los toques llevan su hora. Ponlo en hora.
client-board-stop-strong = Para ya.
client-board-stop-strong-do = Una señal fuerte. Termina la sesión y deja espacio. Deja ir a { $name }; no atraigas a { $name } de vuelta.
client-board-stop-left = { $name } se ha ido.
client-board-stop-left-do = Deja ir a { $name }; no atraigas ni llames a { $name }. Irse es una respuesta.
client-board-stop-mild = Pausa.
client-board-stop-mild-do = Dos señales leves seguidas. Deja espacio; mejor termina aquí. Deja ir a { $name }; no atraigas a { $name } de vuelta.
client-board-end-session = Terminar la sesión
client-board-at-ease = { $name } está a gusto: seguir
client-board-came-back = { $name } ha vuelto por su cuenta
client-board-all-saved = Todo guardado
client-board-waiting-to-send = { $n } por enviar
client-board-no-answer = El cuaderno no responde.
client-board-safe-later = { $why } { $n ->
    [one] { $n } a salvo aquí, se enviará después
   *[other] { $n } a salvo aquí, se enviarán después
}
client-board-unpaired = Sin acceso. { $n } a salvo aquí
client-board-forbidden = El cuaderno no acepta toques desde esta dirección. { $n } a salvo aquí
client-board-attention = { $n ->
        [one] { $n } toque necesita atención
       *[other] { $n } toques necesitan atención
    }
client-board-refused = Toques que el cuaderno no aceptó
client-board-refused-stay = Quedan en este dispositivo hasta que elijas. Los demás se enviaron.
client-board-try-again = Probar otra vez
client-board-drop = Descartar
client-board-drop-sure = ¿Descartar este toque para siempre?
client-board-cannot-keep = Este navegador no puede guardar toques ({ $why }). Sal del modo privado o usa otro navegador; nada de lo tocado aquí se guardaría.
client-board-not-kept = Este navegador no pudo guardar ese toque ({ $why }). Libera espacio o sal del modo privado y toca otra vez.
client-board-no-word = una palabra que ya no está
client-board-care = Cuidado: { $food }
client-board-i-press = Pulso yo
client-board-given = Dado
client-board-given-word = Dado: { $word }
client-board-not-now = Ahora no
client-board-no-session = No hay ninguna sesión en marcha.
client-board-start-with = Empezar a mostrar: lo pulso ahora
client-board-animal-pressed = { $name } lo pulsó
client-board-tap-twice = Toca al pulsar y decirla; toca otra vez al dar.
client-board-never = No se lo des. { $why }
client-board-give-pressed = { $word }: { $name } lo pulsó. Dáselo ahora.
client-board-give-shown = { $word }: dila y dáselo ahora.
client-board-give-calmly = { $word }: aún sin dar. Sin prisa. Déjalo a distancia si quieres y anótalo; no atraigas a { $name }.
client-board-no-name = Aquí los toques se anotan sin nombre.
client-board-who = ¿Quién eres?
client-board-rest-today = Descanso hasta el { $until }. Se vieron señales fuertes. Sigue respondiendo a las pulsaciones; muestra e invita después.
client-board-whom-to-ask = Tras un gruñido, un amago o un mordisco, pregunta a un veterinario y a un profesional cualificado del comportamiento.
client-board-watch-chewing = Vigila que no muerda: las pilas y las piezas pequeñas son peligrosas. { $battery } Mantén el sonido bajo y para si { $name } se asusta.
client-board-room = Cuarto, si no es el de siempre
client-board-start = Empezar a mostrar
client-board-start-anyway = Empezar de todos modos…
client-board-rest-better = Ahora es mejor descansar
client-board-rest-sure = Se vieron señales fuertes. Sigue solo si { $name } viene por su cuenta y está a gusto.
client-board-let-rest = Dejar descansar a { $name }
client-board-start-at-ease = { $name } está a gusto: empezar
client-board-offer-at-ease = { $name } está a gusto: ofrecerlo
client-board-then-what = { $given }: dado. ¿Qué hizo { $name }?
client-board-something-else = Otra cosa
client-board-other-strong = Otra señal fuerte…
client-board-other-mild = Otra señal leve…
client-board-other-joining = Otra señal de calma…
client-board-took = Lo tomó
client-board-ignored = No le hizo caso
client-board-without-it = Se fue sin ello
client-board-left-offer = Dejó la oferta
client-board-pressed-again = Pulsó otra vez…
client-board-one-more = +1 trozo
client-board-one-more-given = Se dio un trozo más
client-board-which-pressed = ¿Qué palabra pulsó { $name }?
client-board-whose = Se oyó { $word }. ¿Quién pulsó?
client-board-whose-me = Yo
client-board-which-looked = ¿Qué miró { $name }?
client-board-whole-board = Todo el tablero
client-board-which-brushed = ¿Qué botón, sin que sonara?
client-board-answer-any = Respóndela como cualquier otra, aunque fuera sin querer: dáselo y toca Dado.
client-board-stumble = Pareció un tropiezo
client-board-stumble-short = ¿Tropiezo?
client-board-see-what = ¿Qué ves?
client-board-one-sign = Una señal dice poco; lee todo el cuerpo y la situación.
client-board-level-strong = Fuerte: para
client-board-level-mild = Leve
client-board-level-joining = A gusto, participando
client-board-saw-what = ¿Qué viste?
client-board-end-because = Terminar la sesión porque…
client-board-end-done = El plan está hecho
client-board-end-word = Palabra de cierre: { $word }
client-board-end-left = { $name } se fue
client-board-end-strong = Una señal fuerte
client-board-end-by-sign = Toca lo que viste: se anota y la sesión termina.
client-board-cannot-say = No sé decir cuál
client-board-end-interrupted = Surgió algo
client-board-closing-me = Lo pulso yo: terminar la sesión
client-board-closing-animal = { $name } lo pulsó: terminar la sesión
client-board-over = La sesión ha terminado.
client-board-over-minutes = La sesión ha terminado: { $n } min.
client-board-word-times = { $word } { $n ->
        [one] una vez
       *[other] { $n } veces
    }
client-board-sum-shown = Mostrado: { $list }.
client-board-sum-nothing = nada
client-board-sum-pressed = { $name } pulsó: { $list }.
client-board-stumbled = { $times } ({ $n ->
        [0] pareció un tropiezo
       *[other] { $n } como un tropiezo
    })
client-board-sum-given = Dado: { $given } de { $all }.
client-board-sum-waiting = Aún sin dar: { $list }.
client-board-put-away = Cerrar
client-board-it-pressed = { $name } pulsó
client-board-tap-pressed = Toca la palabra que pulsó { $name }.
client-board-how-answered = { $name } pulsó «{ $word }». ¿Cómo se respondió?
client-board-everyone = Todos aquí: { $answer }
client-board-everyone-not-now = Para «ahora no», todos dicen: { $answer }
client-board-partly = En parte
client-board-after-all = Dar al fin
client-board-else-instead = Otra cosa…
client-board-missed = Se pasó
client-board-what-instead = ¿Qué en su lugar?
client-board-nothing-else = No hay nada más en las fichas.
client-board-not-now-then = Ahora no. ¿Qué hizo { $name }?
client-board-guards = Si { $name } protege cosas, gruñe o lanza mordiscos: deja espacio, para y consulta a un profesional cualificado del comportamiento.
client-board-let-it-be = Lo dejó estar
client-board-asked-for = { $name } pidió
client-board-tap-asked = ¿{ $name } pidió sin botón? Toca la palabra.
client-board-catch-show = { $name } pidió «{ $word }». Pulsa ahora su botón, di la palabra y dáselo. ¿Cómo pidió { $name }?
client-board-catch-give = { $name } pidió «{ $word }». Dáselo ahora. ¿Cómo pidió { $name }?
client-board-how-looked = lo miró
client-board-how-went = fue hacia ello
client-board-how-brought = lo trajo
client-board-how-sound = un sonido
client-board-how-touched = me tocó
client-board-i-press-word = Pulso { $word }
client-board-way-view = La cosa está a la vista
client-board-way-point = Preguntar y señalar
client-board-way-two = ¿Esto o eso?
client-board-offer-this = Ofrecer esto
client-board-offered-this = Ofrecido ✓
client-board-or-this = O esto ✓
client-board-wait = Espera
client-board-wait-seconds = { $n } segundos
client-board-wait-usual = { $n } segundos (lo habitual)
client-board-rest-invite = Descanso hasta el { $until }. Se vieron señales fuertes; no invites antes.
client-board-only-there = { $name } no se ha unido a esta sesión. Ofrece solo a un animal que está ahí.
client-board-offer-one = Ofrecido { $word }: empieza la espera
client-board-offer-two = Ofrecido { $word } u { $other }: empieza la espera
client-board-choose-two = Elige dos palabras arriba
client-board-choose-one = Elige una palabra arriba
client-board-own-choice = Lo eliges tú: se guarda como registro de cada día. Puede sugerir algo; no prueba nada.
client-board-not-drawn = Lo que no salió de un sorteo se guarda como registro de cada día. Puede sugerir algo; no prueba nada.
client-board-round-instead = Mejor sortear una ronda
client-board-call-of = { $n } de { $all } · { $word }
client-board-nothing-came = No vino nada
client-board-own-way = Pidió a su modo
client-board-cancel-one = Anular esta
client-board-wait-over = No es un error. Toca «No vino nada» y muéstralo tú.
client-board-wait-over-rest = No es un error. Toca «No vino nada». Ahora no se muestra nada.
client-board-wait-still = { $n } segundos: no te muevas y no digas más. Toca la palabra que pulse { $name }.
client-board-late-which = { $name } pulsó «{ $word }». ¿Antes de los { $n } segundos o después?
client-board-in-time = Justo a tiempo
client-board-after-wait = Tras la espera
client-board-give-now-pressed = { $name } pulsó «{ $word }». Dáselo ahora y toca Dado.
client-board-give-now = Dáselo ahora y toca Dado.
client-board-show-now = Muéstralo tú y dáselo: pulsa el botón, di la palabra.
client-board-could-not-give = No se pudo dar
client-board-did-take = ¿Lo tomó { $name }?
client-board-counts-only = Solo cuenta si { $name } lo quería.
client-board-did-not-take = No lo tomó
client-board-did-not-see = No lo vi
client-board-stop-round = Parar la ronda
client-board-done = Hecho
client-board-no-thing = sin cosa en su ficha
client-board-too-few = { $n ->
    [one] queda { $n }
   *[other] quedan { $n }
} hoy: muy pocos
client-board-round-short = Esa ronda se cortó. Cuenta poco; eso es todo.
client-board-round-done = La ronda de { $n } está hecha.
client-board-none-to-invite = Aún no hay palabra a la que invitar. Muéstralas primero: pulsa y entrega en dos segundos. Hoy dice cuándo se puede invitar a { $name }, y por qué no antes.
client-board-not-yet = Con «{ $word }» Hoy aún no espera nada: todavía se muestra. Lo que salga de una espera ahora dice poco.
client-board-needs-two = Un sorteo necesita dos palabras a las que hoy se puede invitar, cada una con su cosa a mano. Aquí: { $list }.
client-board-needs-two-food = Un sorteo necesita dos palabras a las que hoy se puede invitar, cada una con su cosa a mano. La comida de hoy casi se ha acabado.
client-board-none-yet = ninguna aún
client-board-round-of = Una ronda de { $n }. ¿Qué hay a mano ahora? De ello el cuaderno sortea lo que ofreces.
client-board-to-hand = A mano ahora
client-board-other-step = Hoy, otro paso: { $list }.
client-board-round-start = Empezar la ronda
client-board-choose-myself = Elegir yo
client-board-stop-here = Para aquí. Se vieron señales fuertes. Deja espacio; no atraigas a { $name } de vuelta.
client-board-round-at = { $n } de { $all }
client-board-offer-label = Ofrece:
client-board-must-not = No se debe dar.
client-board-none-left = Hoy no queda: no lo ofrezcas.
client-board-offered-start = Ofrecido: empieza la espera
client-board-may-leave = { $name } puede irse y tú puedes parar en cualquier momento: una ronda cortada cuenta poco; eso es todo.
client-board-swap-ask = { $name } pulsó «{ $word }». ¿Dar algo ahora?
client-board-give = Dar
client-board-not-now-more = Ahora no…
client-board-swap-give = Da { $thing }
client-board-swap-instead = Esta vez da { $thing } en su lugar
client-board-swap-as-always = Dalo como siempre. { $name } no tiene que tomarlo.
client-board-swap-no-more = Eso ya no se puede dar hoy.
client-board-swaps-link = Cambios acordados
client-board-swaps-stopped = Los cambios se pararon: señales de estrés. Responde cada pulsación con su propia cosa.
client-board-swaps-taken-back = Los cambios se pararon. Un nuevo acuerdo los empieza otra vez. Responde cada pulsación con su propia cosa.
client-board-swaps-over = Los cambios acordados se pararon.
client-board-swaps-strong = Una señal fuerte: para los cambios. Hasta entonces no se sortea nada.
client-board-swaps-mild = Otra vez señales leves: mejor para los cambios. Hasta entonces no se sortea nada.
client-board-swaps-stop = Parar los cambios
client-board-swaps-run = una respuesta de cada { $n }
client-board-sign = Señal…
client-board-stop = Parar
client-board-start-most = Empezar a mostrar: { $n } min como mucho
client-board-of-minutes = de { $n } min
client-board-minutes-reached = de { $n } min ✓
client-board-enough = Han pasado { $n } min: buen momento para acabar.
client-board-none-waiting = { $why } Todos los toques hasta ahora están entregados.
client-board-beside-plan = Además del plan de hoy: { $list }.
client-board-offer-first = Ofrece primero: { $list }. Toca la palabra.
client-board-ready = Deja que { $name } vea lo que trae «{ $word }» y toca Esperar ({ $n } segundos).
client-board-ready-wait = Esperar
client-board-ready-draw = Sortear ronda
client-board-still-offered = { $word } sigue ofrecida
client-board-still-offered-why = ¿Qué salió de ello? Si queda abierto, faltará en las cifras de { $name }.
client-board-sum-invited = Invitaciones: { $list }.
client-board-pause-until = { $name } descansa hasta las { $time }: por ahora fue suficiente. Mientras tanto, responde a las pulsaciones.
client-board-enough-today = Por hoy fue suficiente. Responde a lo que pulse { $name }.
client-board-start-more = Empezar de todos modos
client-board-left = Este hogar no está abierto para ti ahora: dejó este servidor, o tu papel o sus días terminaron.
client-board-lesson-read = Leerla
client-board-lesson-later = Ahora no
