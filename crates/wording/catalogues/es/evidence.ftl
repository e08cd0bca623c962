evidence-title = Pruebas
evidence-of-word = Pruebas: { $word }
evidence-no-words = Aún no hay palabras. { $link }.
evidence-choose-words = Elegir las primeras palabras
evidence-picture = Qué se puede decir de las palabras de { $name }
evidence-picture-told = { $claimed ->
    [0] De ninguna se puede decir aún más de lo que explica el azar.
   *[other] { $claimed ->
        [one] { $claimed } palabra va más allá de lo que explica el azar.
       *[other] { $claimed } palabras van más allá de lo que explica el azar.
    }
} No pulsar nunca se lee como no entender.
evidence-rung = { $rung ->
    [nothing] Aún no se puede decir nada
    [chance] Hasta ahora encaja con el azar
    [differs] Pulsar va con la llamada
    [open] Pasa una comprobación abierta
   *[other] Resiste una comprobación ciega
}
evidence-step = Peldaño { $step } de { $steps }
evidence-behind = { $n ->
    [one] de { $n } ensayo sorteado
   *[other] de { $n } ensayos sorteados
}
evidence-behind-nothing = nada sorteado aún, { $shown ->
    [0] tampoco mostrada
    [one] mostrada una vez
   *[other] mostrada { $shown } veces
}
evidence-trend = Pulsaciones propias por semana en ocho semanas, la más antigua primero: { $list }
evidence-trend-before = aún no estaba
evidence-this-week = { $n } en siete días
evidence-legend = Peldaños: hasta dónde llegan los registros; un peldaño lleno está alcanzado. Barras pequeñas: pulsaciones propias por semana en ocho semanas, cada palabra en su escala, los últimos siete días al final; un punto es una semana sin ninguna, un hueco es antes de que llegara la palabra.
evidence-how-to-climb = Qué significan los peldaños
evidence-step-1 = 1. El cuaderno sorteó algo, y lo que salió encaja con el azar.
evidence-step-2 = 2. En rondas que sorteó el cuaderno, pulsar va con lo que se pidió.
evidence-step-3 = 3. En comprobaciones planeadas { $name } acierta más de lo que permite el azar, pero alguien sabía la respuesta.
evidence-step-4 = 4. Lo mismo en comprobaciones ciegas: nadie cerca sabía la respuesta.
evidence-step-rule = Todas las palabras de un animal se juzgan juntas, para que muchas palabras y muchas lecturas no sumen una afirmación falsa.
evidence-climb-round = Una ronda sorteada por el cuaderno, en el tablero, es el primer camino hacia arriba.
evidence-checks = Comprobaciones planeadas de comprensión
evidence-trials = ¿Ayuda un cambio? Pruebas de un cambio
evidence-two-people = ¿Ven dos personas lo mismo?
evidence-compared = Pulsado y acertado, palabra junto a palabra
evidence-pressed-of-wanted = Pulsado, cuando { $name } quería la cosa
evidence-pressed-told = Para cada palabra, la parte de invitaciones con pulsación de cualquier botón, de aquellas en que { $name } quería la cosa, con intervalos del 95 %.
evidence-share-pressed = parte pulsada
evidence-right-of-presses = Acertado, de las pulsaciones
evidence-right-told = Para cada palabra, la parte de pulsaciones en sus invitaciones que fueron de esta palabra, con intervalos del 95 %. Quien pulsa al azar pulsa tanto como cualquiera y acierta por azar.
evidence-share-right = parte acertada
evidence-chance-line = Línea vertical: azar, una de cada { $words }. Se omiten palabras con menos de cinco ensayos. Los intervalos valen cuando sea que se lean.
evidence-no-such-word = A { $name } no se le enseña esa palabra.
evidence-sentence-shown = { $times ->
    [0] Aún sin mostrar
    [one] Mostrada una vez
   *[other] Mostrada { $times } veces
}; aún no se puede decir qué significa «{ $word }» para { $name }.
evidence-sentence-own = { $name } pulsó «{ $word }» { $times ->
    [one] una vez
   *[other] { $times } veces
} por su cuenta en cuatro semanas; sin invitaciones ni comprobación, eso solo no dice qué significa la palabra.
evidence-sentence-invited = { $wanted ->
    [0] Aún no cuenta ninguna invitación en la que { $name } quería la cosa.
    [one] Al invitar cuando quería la cosa, { $name } pulsó un botón { $pressed } de { $wanted } vez.
   *[other] Al invitar cuando quería la cosa, { $name } pulsó un botón { $pressed } de { $wanted } veces.
} { $presses ->
    [0] Aún no hay pulsaciones en invitaciones de «{ $word }».
   *[other] De { $presses ->
        [one] { $presses } pulsación
       *[other] { $presses } pulsaciones
    } en invitaciones de «{ $word }», { $right } { $right ->
        [one] fue de esa palabra
       *[other] fueron de esa palabra
    }: { $above ->
        [few] demasiado pronto para decirlo
        [yes] más que el azar
        [chosen] más de lo que traería el azar, pero puede deberse a quién eligió los momentos
       *[other] por ahora no más que el azar
    }.
}
evidence-presses-more = { $more ->
    [one] Una de estas { $presses } pulsaciones llegó cuando { $name } no quería la cosa, o nadie lo anotó: no está entre las { $wanted }.
   *[other] { $more } de estas { $presses } pulsaciones llegaron cuando { $name } no quería la cosa, o nadie lo anotó: no están entre las { $wanted }.
}
evidence-stage = Etapa: { $stage }
evidence-figures-point = Las cifras apuntan a { $stage }.
evidence-invitations = Invitaciones
evidence-no-curve = Curva de aprendizaje: { $why }.
evidence-waiting = Tiempo hasta pulsar, el valor central: { $median }. Las invitaciones sin pulsación cuentan hasta el final de la espera (Kaplan–Meier).
evidence-waiting-open = no se alcanza: muy pocas tuvieron una pulsación durante la espera ({ $n ->
    [one] { $n } invitación
   *[other] { $n } invitaciones
})
evidence-showings-presses = Muestras y pulsaciones propias
evidence-showings-a-day = Muestras por día
evidence-showings = demostraciones
evidence-presses-a-day = Pulsaciones propias por día
evidence-presses = pulsaciones
evidence-by-day-told = { $n } en total; { $began ->
    [before] las últimas seis semanas por día.
   *[other] por día, desde el primer registro de la palabra, el { $began }.
}
evidence-day-axis = día (lunes con fecha)
evidence-delivered = Entregado tras pulsar (valor central): { $delay }.
evidence-then = Qué hizo { $name } después
evidence-uptake = Tomó lo dado por esta palabra: { $this }; por las otras palabras: { $others }.
evidence-fisher = Prueba exacta de Fisher, bilateral: { $p }.
evidence-left-out = { $n ->
    [one] { $n } pulsación que pareció un tropiezo queda fuera.
   *[other] { $n } pulsaciones que parecieron un tropiezo quedan fuera.
}
evidence-stumbles = Pulsaciones propias que parecieron un tropiezo, de las juzgadas: { $share }.
evidence-causes = Si no avanza: qué puede haber detrás
evidence-how-computed = Cómo se calculan estas cifras
evidence-may-be-said = Qué se puede decir
evidence-claim = «{ $word }», { $what }: { $said }.
evidence-fidelity = Enseñanza según lo acordado, dado en { $seconds } tras pulsar: { $share }.
evidence-claim-animal = { $name }: { $said }.
evidence-not-ruled-out = Qué puede explicarlo en su lugar:
evidence-made-unlikely = Qué se hizo frente a otras explicaciones y qué queda de cada una:
evidence-rival = { $rival } ({ $standing })
evidence-plan-check = Planear una comprobación
evidence-behind-it = Qué hay detrás
evidence-nothing-drawn = Aún no se sorteó nada. Lo que una persona eligió invitar o dar puede sugerir algo; no prueba nada, pues una elección sigue la hora y la esperanza.
evidence-a-bet = La evidencia es a cuánto habría crecido una apuesta contra el azar; puede leerse en cualquier momento. Todas las palabras de un animal se juzgan juntas.
evidence-elsewhere = ¿Vale también en otras partes?
evidence-settings = Las dos cifras en distintas situaciones
evidence-compared-what = Comparado
evidence-which = Cuál
evidence-settings-note = Tras mover un botón, un hábito de lugar pulsa el lugar viejo: bajan los aciertos. Números pequeños dicen poco; ninguna fila sola prueba nada.
evidence-k-of-n = { $k } de { $n } – { $figure }
evidence-chance = Azar
evidence-chance-even = una de { $words } palabras sería { $share }
evidence-chance-habit = una de { $words } palabras sería { $share }; cuando se invita a otras, esta se pulsa en { $elsewhere }
evidence-above-chance = { $above ->
    [yes] Por ahora más que el azar.
    [chosen] Más que el azar en invitaciones cuyo momento pudo elegir una persona. Eso ayuda a elegir el paso siguiente; lo que se puede decir se apoya en lo sorteado, y pide más.
   *[other] Por ahora no más que el azar.
}
evidence-without-button = La quería: pidió sin botón
evidence-not-wanted = No la quería entonces, o se fue
evidence-not-counted = { $n } (no cuentan)
evidence-unrecorded = Sin registrar si la tomó
evidence-not-counted-wanted = { $n } (no cuentan como querida)
evidence-curve = Curva de aprendizaje
evidence-curve-told = Con qué frecuencia acertó, de pulsación a pulsación, y cuánto puede desviarse ({ $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}). Si es más que el azar se juzga una sola vez, en «Qué se puede decir».
evidence-curve-few = { $n ->
    [0] Curva de aprendizaje: aún no hay pulsaciones en una invitación.
   *[other] Curva de aprendizaje: muy pocas pulsaciones ({ $n ->
        [one] { $n } pulsación
       *[other] { $n } pulsaciones
    }).
}
evidence-press-axis = pulsación en una invitación
evidence-band = banda del 95 %
evidence-after = { $after ->
    [after] Tras
    [given] dado
    [declined] ahora no
    [took] tomó
    [ignored] ignoró
    [left] se fue
    [again] otra vez
   *[other] no se vio
}
evidence-after-region = Qué hizo { $name } tras las respuestas
evidence-answers = Pulsaciones propias respondidas: { $parts }. Una respuesta cuenta para la pulsación anotada si sus horas distan menos de tres días; una sin pulsación, para la última de su palabra en los dos minutos previos.
evidence-answer-times = { $answer ->
    [given] dado
    [partly] dado en parte
    [declined] «ahora no»
    [alternative] otra cosa
   *[other] sin respuesta o sin registrar
} { $times ->
    [one] una vez
   *[other] { $times } veces
}
evidence-step-on-today = Qué único paso se sigue de ello está en Hoy
