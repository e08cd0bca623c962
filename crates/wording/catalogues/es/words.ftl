words-first = Primeras palabras
words-further = Proponer más palabras
words-none-yet = Aún no hay palabras. Con dos o tres basta para empezar (práctica común, sin fuente).
words-take = Tomar estas palabras
words-button-says = El botón dice
words-says = «{ $says }»:
words-untested = Aún sin prueba de gustos: lo que le gusta a { $name } es aquí una suposición.
words-test-first = Probar antes, unos diez minutos
words-tested = { $trials ->
    [one] Según un ensayo de una prueba de gustos, la comida del día, lo que se tarda en dar y cómo suenan las palabras.
   *[other] Según { $trials } ensayos de pruebas de gustos, la comida del día, lo que se tarda en dar y cómo suenan las palabras.
}
words-other-sets = Otros conjuntos ({ $sets })
words-left-out = Descartadas, y por qué ({ $things })
words-why-these = ¿Por qué estas?
words-score = La mejor mezcla: gustan, se dan rápido, se distinguen bien. Puntuación { $total }: gusto y entregas { $liked }, tipos { $kinds }, sonido distinto { $apart }, ya dichas { $said }.
words-best-in = El mejor de todos los conjuntos en el { $share } de { $draws } sorteos de lo que aún no se sabe.
words-how-much = { $guess ->
    [yes] unas { $times } veces al día junto al tablero (por ahora, una suposición)
   *[no] unas { $times } veces al día junto al tablero
}
words-not-tested = Aún sin probar: que le guste a { $name } es una suposición.
words-picked = Probabilidad de que { $name } lo elija frente a algo normal: { $figure }.
words-scored = { $format ->
    [free_access] Ocupado con ello en una prueba cronometrada: { $figure }.
   *[other] Tomado en una prueba: { $figure }.
}
words-seconds-measured = Darlo lleva unos { $seconds } s: medido en casa, n = { $n }.
words-seconds-kind = Darlo lleva unos { $seconds } s: como otras cosas de su tipo en casa, n = { $n }, hasta tener su propia cifra.
words-seconds-card = Darlo lleva { $seconds } s, según su ficha.
words-seconds-usual = Darlo lleva unos { $seconds } s: habitual en su tipo (práctica común, sin fuente), hasta darlo cinco veces.
words-a-day-measured = Dado { $times } veces en un día normal: medido en { $days } días.
words-a-day-card = Como máximo { $times } veces al día, según su ficha.
words-a-day-usual = Como máximo { $times } veces al día: habitual en su tipo (práctica común, sin fuente).
words-pieces = { $pieces ->
    [one] Cabe una pieza al día, si no se da otro premio de comida.
   *[other] Caben { $pieces } piezas al día, si no se da otro premio de comida.
}
words-already-said = Ya dices esta palabra a menudo.
words-sounds-like-one = Suena muy parecido a «{ $other }»: otra palabra se distingue mejor.
words-how-many = deben ser de 1 a { $most } palabras para empezar, no { $ticked }
words-must-not = No se debe dar: { $why }.
words-twice = «{ $says }» ya está en otro botón; elige otra palabra
words-no-set = Aún no hay propuesta: { $usable } de las cosas anotadas pueden ser primeras palabras, y hacen falta { $needed }.
words-too-many = Sin propuesta: hay demasiadas cosas que comparar. Aparta algunas antes.
words-no-allowance = No está fijado cuánta comida puede tomar { $name }, así que no se puede dosificar.
words-bad-figure = Una cifra de su ficha no puede ser correcta.
words-not-at-board = No se puede dar junto al tablero una y otra vez, y una primera palabra necesita muchas repeticiones rápidas. Si se puede, dilo en su ficha.
words-no-piece = La comida permitida al día no deja ni una pieza.
words-too-slow = Lleva { $seconds } s junto al tablero, más de { $slowest } s: demasiado pocas repeticiones.
words-too-seldom = Se puede dar { $times } veces al día, menos de { $fewest }.
words-no-company = No combina con ninguna: hacen falta { $needed } palabras juntas.
words-outscored = { $by ->
    [liking] Gusta menos que las elegidas (puntuación { $behind } menor).
    [uncertainty] Cuánto gusta es menos seguro: pruébalo más (puntuación { $behind } menor).
    [deliveries] Se puede dar menos veces que las elegidas (puntuación { $behind } menor).
    [spread] No añade un tipo nuevo (puntuación { $behind } menor).
    [apart] Suena más parecida a las demás que las elegidas (puntuación { $behind } menor).
   *[said] Aún no la dices, a diferencia de las elegidas (puntuación { $behind } menor).
}
words-give = Dar { $says }.
words-asks-for = pide: { $name }
words-not-now = «Ahora no», una vez y con calma; ofrece otra cosa.
