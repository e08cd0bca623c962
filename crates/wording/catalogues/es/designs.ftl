designs-title = ¿Ayuda un cambio?
designs-no-such = Este cuaderno no conoce tal prueba de este animal.
designs-cannot-draw = El orden de esta prueba no se puede sortear a partir de su plan: { $why }.
designs-design = { $design ->
    [reversal] Ida y vuelta, unos días cada vez (reversión, ABAB)
    [multiple_baseline] Uno tras otro (línea base múltiple)
    [alternating_treatments] En turnos rápidos (tratamientos alternos)
   *[changing_criterion] Paso a paso (criterio cambiante)
}
designs-from-a-day = Desde un día sorteado (AB, inicio sorteado)
designs-question = { $question ->
    [quieter_button] ¿Ayuda un botón más suave?
    [new_place] ¿Ayuda un lugar nuevo?
    [faster_delivery] ¿Ayuda una entrega más rápida?
    [another_word] ¿Ayuda otra palabra?
   *[other] ¿Ayuda un cambio?
}
designs-question-own = ¿Ayuda esto: { $label }?
designs-question-word = ¿Ayuda otra palabra: «{ $label }»?
designs-with = { $question ->
    [quieter_button] con el botón más suave
    [new_place] con el lugar nuevo
    [faster_delivery] con la entrega más rápida
    [another_word] con la otra palabra
   *[other] con el cambio
}
designs-with-own = con esto: { $label }
designs-as-usual = como siempre
designs-measure = { $measure ->
    [own_presses] Pulsaciones propias
    [joined_share] Proporción de sesiones con participación
    [time_to_press] Segundos hasta pulsar con invitación y ganas
    [pressed_share] Proporción de pulsaciones con invitación y ganas
    [stress_signs] Señales de estrés
   *[delivery_delay] Segundos de la pulsación a la entrega
}
designs-unit = { $unit ->
    [session] sesión
   *[day] día
}
designs-meets = cumple los criterios
designs-meets-with-reservations = cumple los criterios con reservas
designs-does-not-meet = no cumple los criterios
designs-phase-usual = habitual
designs-phase-usual-turn = habitual { $turn }
designs-phase-changed = con cambio
designs-phase-changed-turn = con cambio { $turn }
designs-phase-goal = meta { $seconds } s
designs-changed-against-usual = con cambio frente a habitual
designs-one-after-other = { $after } tras { $before }
designs-not-drawn-before = el orden no se sorteó antes del primer punto, o el plan se cambió después
designs-was-stopped = la prueba se detuvo antes de su final
designs-not-finished = la prueba no ha terminado
designs-too-short = { $points ->
    [one] un punto no basta para este diseño; necesita al menos { $needed }
   *[other] { $points } puntos no bastan para este diseño; necesita al menos { $needed }
}
designs-empty-condition = una condición no tiene todavía ninguna observación, así que no hay nada que comparar
designs-no-figure = no hay cifra para esta fase: muy pocos puntos, o todos a la vez
designs-other-condition = { $points ->
    [one] 1 punto con otra condición que la sorteada; el test sigue el sorteo.
   *[other] { $points } puntos con otra condición que la sorteada; el test sigue el sorteo.
}
designs-drawn-late = El orden no se sorteó antes del primer punto, o el plan se cambió después.
designs-more-than = más de { $number }
designs-percentage-points = { $value } puntos porcentuales
designs-a-session = { $value } por sesión
designs-not-yet = Empieza el { $day }; hasta entonces todo sigue como siempre.
designs-running = Puntos pasados: { $done } de { $points }. No se afirma nada antes del final.
designs-strong-sign = Detenida: el { $day } se vio una señal fuerte de estrés con el cambio en vigor. Todo vuelve a lo habitual; no se afirma nada a favor del cambio.
designs-stopped = { $reason ->
    [strong_sign] Detenida el { $day }: una señal fuerte de estrés. No se calcula ningún test, pues una prueba que puede acabar en cualquier momento puede acabar cuando va ganando.
    [not_good] Detenida el { $day }: el cambio no hacía bien. No se calcula ningún test, pues una prueba que puede acabar en cualquier momento puede acabar cuando va ganando.
    [not_kept] Detenida el { $day }: no se pudo mantener. No se calcula ningún test, pues una prueba que puede acabar en cualquier momento puede acabar cuando va ganando.
   *[other] Detenida el { $day }: otro motivo. No se calcula ningún test, pues una prueba que puede acabar en cualquier momento puede acabar cuando va ganando.
}
designs-untested = Terminada, pero no se puede calcular ningún test: { $why }. Las cifras solo describen estos puntos.
designs-seen = { $measure }: { $amount } { $way ->
    [higher] más
   *[lower] menos
    } { $with } ({ $usual } puntos habituales y { $changed } con cambio). Con el orden sorteado al azar, una diferencia tan grande sale en { $exact ->
    [yes] { $extreme } de { $orders } órdenes posibles ({ $p }).
   *[no] { $extreme } de { $orders } órdenes sorteados de nuevo ({ $p }).
}
designs-seen-goal = { $points ->
    [one] Las personas se quedaron a { $seconds } s de la meta (un punto).
   *[other] Las personas se quedaron de media a { $seconds } s de la meta ({ $points } puntos).
    } Con los pasos sorteados al azar, un ajuste tan bueno sale en { $exact ->
    [yes] { $extreme } de { $orders } órdenes posibles ({ $p }).
   *[no] { $extreme } de { $orders } órdenes sorteados de nuevo ({ $p }).
}
designs-too-few-orders = { $orders ->
    [one] Con un solo orden posible esta prueba no podría distinguir ningún efecto del azar.
   *[other] Con solo { $orders } órdenes posibles esta prueba no podría distinguir ningún efecto del azar.
}
designs-rare = Sería raro si el cambio no hiciera nada: habla a favor de un efecto, con { $name }, en estas semanas.
designs-rare-goals = Sería raro si las metas no hicieran nada: habla a favor de un efecto, con { $name }, en estas semanas.
designs-may-be-chance = Así que bien puede ser azar. Eso no muestra que el cambio no haga nada.
designs-weak = El diseño mismo es demasiado pequeño según los criterios del campo; tómalo como un indicio.
designs-change-again = La misma prueba otra vez, planeada de nuevo, con otras personas o en otras semanas.
designs-change-gentler = Nada de esta prueba; un cambio más suave, planeado de nuevo.
designs-change-points = Los puntos que aún faltan.
designs-change-by-hand = Un micrófono oye peor las pulsaciones de un botón más suave: anótalas a mano en esta prueba.
designs-intro = Un botón más suave, un lugar nuevo, una entrega más rápida: ¿ayuda a { $name }? Una prueba (un diseño de caso único, en la jerga) deja que el azar decida cuándo rige el cambio, y compara.
designs-none-today = Hoy ninguna prueba nueva: se anotaron señales fuertes de estrés. Da espacio; todo como siempre.
designs-plan = Planear una prueba
designs-so-far = Pruebas hasta ahora
designs-none = Ninguna todavía.
designs-open = Abrir
designs-undrawable = no se puede sortear
designs-begins = empieza el { $day }
designs-going-on = en marcha
designs-finished = terminada
designs-stopped-on = detenida el { $day }
designs-ended-by-sign = terminada por una señal fuerte de estrés el { $day }
designs-checks = Las comprobaciones planeadas de comprensión preguntan otra cosa: { $link }.
designs-checks-link = Comprobaciones
designs-how = Cómo se sortean y se analizan las pruebas
designs-kindly = { $lead } Solo se cambian el entorno y lo que hacen las personas: { $name } puede irse en cualquier momento, no se le niega nada de lo que pide, y ningún día necesita una pulsación. Una señal fuerte de estrés con el cambio termina la prueba. No pruebes nada que duela, asuste o prive; pregunta a un veterinario o a un profesional cualificado del comportamiento si tienes dudas.
designs-kindly-lead = Una prueba es para { $name }, y no al revés.
designs-not-as-planned = No como se planeó:
designs-the-plan = El plan
designs-all = Todas las pruebas
designs-today = Hoy
designs-of-lane = { $lane }:
designs-rest = Hoy descanso, todo como siempre: se anotaron señales fuertes de estrés. Da espacio y no atraigas de vuelta.
designs-everything-usual = Todo como siempre.
designs-now = { $unit ->
    [session] Esta sesión o la próxima (punto { $point } de { $points }): { $what }
   *[day] Hoy (punto { $point } de { $points }): { $what }
}
designs-deliver-within = entrega en { $seconds } s como mucho
designs-later-hidden = Los días siguientes no se muestran a propósito: conocerlos cambia lo que hacen las personas. Responde a cada pulsación como siempre.
designs-fact-design = Diseño
designs-fact-measured = Se mide
designs-measured = { $unit ->
    [session] { $measure }, cada sesión: { $words }
   *[day] { $measure }, cada día: { $words }
}
designs-all-words = todas las palabras
designs-fact-expected = Se espera
designs-expected = { $expected ->
    [more] más
    [less] menos
   *[either] cualquiera de las dos
}
designs-fact-first = Primer día, puntos
designs-first = { $points ->
    [one] { $day }, un punto
   *[other] { $day }, { $points } puntos
}
designs-fact-orders = Órdenes posibles
designs-planned-on = Planeada el { $day }; el orden sale de una semilla sorteada entonces.
designs-other-in-force = ¿Rigió algo distinto de lo sorteado?
designs-this-trial = esta prueba
designs-field-lane = Dónde
designs-field-point = Punto
designs-field-point-hint = contado desde 1
designs-field-in-force = Rigió
designs-with-the-change = con el cambio
designs-field-because = Por qué
designs-may-be-left-out = se puede dejar en blanco
designs-note-it = Anotar
designs-honest-note = El test sigue el orden sorteado, así que una nota honesta nunca lo estropea; la página dice cuántos puntos difirieron.
designs-stop = Detener
designs-reason = { $reason ->
    [strong_sign] una señal fuerte de estrés
    [not_good] el cambio no hace bien
    [not_kept] no se puede mantener
   *[other] otro motivo
}
designs-field-in-words = Con tus palabras
designs-stop-now = Detener esta prueba ahora
designs-stop-right = En caso de duda, detenerse siempre está bien. Deja todo como estaba; lo anotado se guarda.
designs-plan-title = Planear una prueba de un cambio
designs-not-today = Hoy no: se anotaron señales fuertes de estrés. Da espacio a { $name } y planea en un día tranquilo.
designs-back = Volver a las pruebas
designs-why = Un cambio y una semana mejor coinciden a menudo por casualidad. Si el azar decide los días en que rige el cambio, la diferencia se puede comparar con todos los órdenes que podrían haber salido.
designs-change = { $question ->
    [quieter_button] Un botón más suave
    [new_place] Un lugar nuevo
    [faster_delivery] Una entrega más rápida
    [another_word] Otra palabra
   *[other] Otra cosa
}
designs-proposed-for = propuesto: { $design }
designs-the-proposed = el propuesto
designs-expect = { $expected ->
    [more] más de ello
    [less] menos de ello
   *[either] cualquiera de las dos cosas
}
designs-expect-either-hint = pide más puntos
designs-point-unit = { $unit ->
    [session] una sesión
   *[day] un día
}
designs-point-session-hint = de mostrar o de invitar
designs-field-question = Qué se cambia
designs-field-question-hint = una sola cosa; todo lo demás queda como está
designs-field-label = Otra cosa: cuál
designs-field-label-hint = solo para «otra cosa»
designs-field-measure = Qué se mide
designs-field-measure-hint = elígelo antes de empezar; se lee de lo que anotas de todos modos
designs-field-expected = Qué esperas de ello
designs-field-expected-hint = dicho ahora, para que el resultado no pueda elegir
designs-field-words = Palabras
designs-field-words-hint = ninguna marcada: todas. Uno tras otro: cada palabra marcada es una serie; 3 cumplen los criterios
designs-field-unit = Un punto es
designs-field-first = Primer día
designs-field-first-hint = mañana o más tarde, si son días
designs-field-points = Puntos en total
designs-field-points-hint = días o sesiones; 120 como mucho
designs-numbers = El diseño y sus números
designs-field-design = Diseño
designs-field-least = Mínimo de puntos por fase
designs-field-least-hint = 5 cumplen los criterios, 3 con reservas
designs-field-phases = Fases
designs-field-phases-hint = ida y vuelta, y paso a paso: 4 o más
designs-field-apart = Puntos entre dos cambios
designs-field-apart-hint = uno tras otro: al menos tantos
designs-field-animals = Animales
designs-field-animals-hint = uno tras otro entre animales en vez de palabras
designs-field-criteria = Metas para las personas, en segundos
designs-field-criteria-hint = paso a paso: una por fase después de la primera, como 6; 4; 2,5. Nunca se ponen metas a un animal
designs-see = Ver qué puede mostrar
designs-proposed = Propuesto: { $design }
designs-your-choice = Tu elección: { $design }
designs-because = { $question ->
    [quieter_button] Porque el sonido se puede bajar y volver a subir, y un animal necesita unos días para acostumbrarse a cada cosa.
    [new_place] Porque mover un botón de acá para allá confundiría: cada palabra se mueve una vez, una tras otra.
    [faster_delivery] Porque las personas pueden entregar enseguida un día y como siempre al siguiente, y el efecto viene y se va deprisa.
    [another_word] Porque una palabra se queda cuando ya está: toma dos fases, así solo se sortea su primer día.
   *[other] Porque es lo adecuado si el cambio se puede deshacer; si no se puede, toma «uno tras otro».
}
designs-usual-here = Lo habitual para esta pregunta: { $design }.
designs-undrawn = Esto no se puede sortear: { $why }.
designs-orders = { $orders } órdenes posibles; uno se sortea al azar cuando la planeas. Solo ves la condición del día.
designs-smallest-p = La p más pequeña que puede alcanzar es { $p }.
designs-fewer-than-20 = Con menos de 20 órdenes nunca se baja de { $level }: toma más puntos, o menos en cada fase.
designs-verdict-ahead = Con todos los puntos, { $verdict } ({ $chances ->
    [0] ninguna ocasión
    [one] una ocasión
   *[other] { $chances } ocasiones
} de mostrar un efecto, al menos { $fewest ->
    [one] un punto
   *[other] { $fewest } puntos
} cada una; Kratochwill et al. 2010).
designs-plan-and-draw = Planearla y sortear el orden
designs-figures = Cifras hasta ahora
designs-not-finished-yet = Sin terminar: no se afirma nada con estas cifras, y mirarlas tienta a parar. El test se hace al final.
designs-came-out = Qué salió
designs-would-change = Qué lo cambiaría: { $what }
designs-about-one = Esto trata solo de { $name }. No dice nada de otros animales.
designs-no-test = Sin test: { $why }.
designs-difference = Diferencia, con cambio menos habitual
designs-difference-none = { $points ->
    [one] { $value } (sin intervalo del 95 %: muy pocos órdenes; un punto)
   *[other] { $value } (sin intervalo del 95 %: muy pocos órdenes; { $points } puntos)
}
designs-difference-interval = { $points ->
    [one] { $value } (intervalo del 95 %: { $low } a { $high }, un punto)
   *[other] { $value } (intervalo del 95 %: { $low } a { $high }, { $points } puntos)
}
designs-open-end = abierto
designs-distance = Distancia media a la meta
designs-extreme = Órdenes igual de extremos
designs-extreme-of = { $exact ->
    [yes] { $extreme } de { $orders }, contados todos
   *[no] { $extreme } de { $orders }, sorteados de nuevo
}
designs-orders-left-out = Órdenes descartados
designs-orders-undefined = { $orders } (los puntos que faltan habrían dejado vacía una condición)
designs-verdict = El diseño { $verdict }: { $chances ->
    [0] ninguna ocasión
    [one] una ocasión
   *[other] { $chances } ocasiones
} de mostrar un efecto (se quieren 3), al menos { $fewest ->
    [one] un punto observado
   *[other] { $fewest } puntos observados
} cada una (se quieren 5, 3 con reservas; Kratochwill et al. 2010).
designs-missing = { $missing ->
    [one] 1 de { $points } puntos pasados no tiene valor: no se anotó nada de lo que leer esta medida. Se deja fuera, no se cuenta como cero.
   *[other] { $missing } de { $points } puntos pasados no tienen valor: no se anotó nada de lo que leer esta medida. Se dejan fuera, no se cuentan como cero.
}
designs-no-point = Ningún punto todavía.
designs-chart = { $unit ->
    [session] { $measure }, por sesión
   *[day] { $measure }, por día
}
designs-chart-told = { $question } { $phases }.
designs-chart-read = Puntos huecos: como siempre (A). Puntos llenos: con el cambio (B). Líneas discontinuas: cambió la fase. Huecos: falta el dato.
designs-mean = media: { $mean }
designs-independent = Los intervalos de medias, NAP, nivel y tendencia toman los puntos como independientes, y los días de un animal no lo son del todo. El test de arriba no se apoya en eso.
designs-times-a-week = celeración × { $factor } por semana
designs-divided-a-week = celeración ÷ { $factor } por semana
designs-weekly = { $turn } (intervalo del 90 %: × { $low } a × { $high }, n = { $n })
designs-weekly-no-interval = { $turn } (sin intervalo todavía, n = { $n })
designs-nap = NAP (pares en que el cambio salió mejor)
designs-nap-value = { $share } (intervalo del 90 %: { $low } a { $high }, n = { $usual } y { $changed })
designs-tau = Tau-U (descontada la tendencia previa)
designs-tau-value = { $share } ({ $p }, n = { $usual } y { $changed }; no hay intervalo publicado)
designs-level = Salto del nivel
designs-trend = Cambio de la tendencia, por día
designs-change-value = { $value } (intervalo del 95 %: { $low } a { $high })
designs-change-value-no-interval = { $value } (sin intervalo todavía)
designs-small = { $way ->
    [once] Una prueba de { $days } días: se sortea el día desde el que rige.
    [back] Una prueba de { $days } días, ida y vuelta: los días se sortean.
   *[turn] Una prueba de { $days } días, día a día: se sortea cuáles.
}
designs-measured-by = { $measure } ({ $words }); se espera: { $expected ->
    [more] más
    [less] menos
   *[either] más o menos
}

# Dos pruebas a la vez.
designs-beside-planned = Otra prueba mide lo mismo en los mismos días ({ $measure }):
designs-beside-going = En los próximos días, otra prueba mide esto ({ $measure }):
designs-beside-kept = En algunos de los mismos días, otra prueba midió lo mismo ({ $measure }):
designs-beside-plan = En los mismos días que este plan hay una prueba de un cambio:
designs-beside-agreed = Hay un plan acordado para días en que se probaría esto:
designs-beside-agreed-wait = Con dos cambios a la vez no se puede distinguir ninguno: una diferencia puede venir de cualquiera. Empieza después del último día del plan. O acéptalo.
designs-beside-days = { $question } { $first } a { $last }
designs-beside-sessions = { $question } Desde { $first }, hasta que acaben sus sesiones
designs-beside-wait = Con dos cambios a la vez no se puede distinguir uno del otro: una diferencia puede venir de cualquiera. Espera a que acabe la otra y empieza el { $day } o después. O acéptalo.
designs-beside-wait-sessions = Con dos cambios a la vez no se puede distinguir uno del otro: una diferencia puede venir de cualquiera. Espera a que acabe la otra. O acéptalo.
designs-beside-read = No se puede distinguir uno del otro: lo que aquí se dice de un cambio puede venir del otro. Uno de ellos otra vez, solo, podría decir más.
