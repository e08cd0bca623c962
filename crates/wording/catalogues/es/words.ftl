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
words-how-much = { $basis ->
    [measured] Hasta ahora, { $times ->
        [one] una vez
       *[other] unas { $times } veces
    } al día
   *[most] Como mucho { $times ->
        [one] una vez
       *[other] unas { $times } veces
    } al día
}{ $guess ->
    [yes] , una suposición
   *[no] { "" }
}
words-how-much-by = { $by ->
    [time] Más no cabe en cinco minutos en el tablero.
    [food] La comida del día no permite más.
    [card] Su ficha no permite más.
   *[usual] Más no es habitual en su tipo; dalo tan a menudo como convenga.
}{ $guess ->
    [yes] { " " }Por ahora es una suposición; tus registros la sustituyen.
   *[no] { "" }
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
words-a-day-measured = Dado { $times ->
    [one] una vez
   *[other] { $times } veces
} en un día normal: medido en { $days ->
    [one] un día
   *[other] { $days } días
}.
words-a-day-card = Como máximo { $times ->
    [one] una vez
   *[other] { $times } veces
} al día, según su ficha.
words-a-day-usual = Como máximo { $times ->
    [one] una vez
   *[other] { $times } veces
} al día: habitual en su tipo (práctica común, sin fuente).
words-pieces = { $pieces ->
    [one] Cabe una pieza al día, si no se da otra recompensa de comida.
   *[other] Caben { $pieces } piezas al día, si no se da otra recompensa de comida.
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
words-as-good = { $cautioned ->
    [yes] Igual de buena; lo que solo se da en poca cantidad cede el sitio. Puedes elegirla en su lugar.
   *[no] Igual de buena; puedes elegirla en su lugar.
}
words-outscored = { $by ->
    [liking] Gusta menos que las elegidas (puntuación { $behind } menor).
    [uncertainty] Cuánto gusta es menos seguro: pruébalo más (puntuación { $behind } menor).
    [deliveries] Se puede dar menos veces que las elegidas (puntuación { $behind } menor).
    [spread] No añade un tipo nuevo (puntuación { $behind } menor).
    [apart] Suena más parecida a las demás que las elegidas (puntuación { $behind } menor).
   *[said] Aún no la dices, a diferencia de las elegidas (puntuación { $behind } menor).
}
words-give = Dar lo que pide «{ $says }».
words-asks-for = pide: { $name }
words-not-now = «{ $said }», una vez y con calma; ofrece otra cosa.
words-not-now-said = Ahora no
words-size-leaves-out = y lugares por fila dejan fuera un lugar con palabra; cambia antes el tamaño y mira
words-cannot-give = no se puede dar a { $name }: { $why }. Elige otro
words-page-title = Palabras de { $name }
words-add = Añadir una palabra
words-labels = Etiquetas
words-where-they-are = Dónde están
words-not-drawn = El tablero aún no está dibujado. Con él, las pulsaciones se reconocen por el lugar.
words-edit-board = Editar el tablero
words-closing-word = palabra de cierre
words-means = Significa
words-answer = Respuesta
words-not-now-title = Ahora no
words-not-written = aún sin escribir
words-given = Se da
words-card-and-stage = Ficha y etapa
words-of = de { $says }
words-these-alike = Estas suenan muy parecidas:
words-different = Otra palabra para una de ellas se distingue mejor.
words-off = Retiradas, o para otros ({ $words })
words-to-others = para otros
words-shown = { $shown ->
    [0] aún no mostrada
    [one] mostrada una vez
   *[other] mostrada { $shown } veces
} · { $own ->
    [0] ninguna pulsación propia
    [one] una pulsación propia
   *[other] { $own } pulsaciones propias
} en 28 días
words-stage = { $stage ->
    [prepare] preparar
    [show] enseñar
    [invite] invitar
   *[converse] conversar
}
words-on-another = ya está en otro botón; elige otra palabra, o abre esa ficha
words-gives-nothing = nada: solo dice algo
words-new-title = Una palabra nueva
words-quoted = «{ $says }»
words-kept = Guardado.
words-alike-here = Suena muy parecida a otra palabra de aquí y puede costar distinguirla: { $how }. Otra palabra para una de ellas es más segura.
words-says-hint = corta y distinta de las demás
words-means-here = Aquí significa
words-means-hint = qué pide o qué dice
words-answer-by = Todos responden así
words-answer-hint = siempre igual, por ejemplo: dar una pieza en tres segundos
words-when-not-now = Cuando la respuesta es «ahora no», todos
words-not-now-hint = dicen y hacen esto
words-what-given = Qué se da
words-is-closing = una palabra de cierre: termina la sesión y calma
words-taught-to = Para
words-on-board = en el tablero (desmarca para retirarla; lo anotado queda)
words-back = Volver a Palabras
words-rules-for = Reglas de la casa para ella
words-rules-none = Ninguna propia.
words-no-such = Este cuaderno no conoce esa palabra.
words-board-title = El tablero
words-would-move = Una palabra que se mueve hay que buscarla de nuevo: deja las conocidas donde están si puedes. Se moverían:
words-rows = Filas
words-columns = Lugares por fila
words-change-size = Cambiar el tamaño
words-board-language = Idioma de las palabras
words-board-language-hint = el que hablan los botones; las palabras que suenan parecidas se buscan por su ortografía
words-not-on-it = No están: { $words }.
words-propose-places = Proponer lugares para estas
words-places-stay = Las palabras del tablero se quedan. Las que suenan parecidas van separadas, y las más usadas a mano.
words-yes-move = Sí, moverlas
words-mat = Deja un lugar libre junto a la palabra más pulsada, separa las que suenan parecidas y fija el tablero en una alfombrilla que agarre: un tablero que resbala o suena se evita. Cierra las tapas de las pilas con sus tornillos.
words-to-place = «{ $says }» a la fila { $row }, lugar { $place }
words-off-board = «{ $says }» fuera del tablero
words-move-unticked = no está marcado: cambiarían de lugar palabras en uso
words-size-missing = faltan; da de 1 a 20
words-no-places = no se pueden proponer: { $why }
words-as-you-stand = Como lo ves de frente.
words-taken-off = retirada
words-which-where = Qué palabra y dónde, como lo ves de frente
words-places = Lugares
words-place = Fila { $row }, lugar { $place }
words-place-taken = tiene una palabra que ya está en la fila { $row }, lugar { $place }; elige uno de los dos
words-recording = Grabación
words-no-recording = Aquí no se guarda ninguna grabación. Para empezar basta la del botón: graba en voz baja, una palabra, con tu voz de siempre, lejos del ruido. Con el mismo sonido guardado aquí, un micrófono puede oír las pulsaciones.
words-sound-file = Archivo de sonido
words-sound-file-hint = WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF o WebM; el mismo sonido que está en el botón
words-keep-and-check = Guardar y comprobar
words-record-softly = Un sonido fuerte cerca del oído puede asustar o hacer daño: graba en voz baja y deja que { $name } se acerque.
words-check-nothing = Nada que objetar.
words-check-found = La comprobación encontró:
words-recording-of = Grabación de { $says }
words-play-unheard = Ponla donde { $name } no la oiga: una palabra que suena y no trae nada enseña que no significa nada.
words-sound-not-stored = Dura { $seconds } s. Su archivo de sonido no está guardado aquí.
words-sound-not-stored-lufs = Dura { $seconds } s, sonoridad { $lufs } LUFS. Su archivo de sonido no está guardado aquí.
words-sound-unreadable = No se puede leer su sonido: { $why }.
words-no-such-recording = Aquí no hay tal grabación.
words-picture-told = Forma de onda y, debajo, la fuerza de cada tono en el tiempo
words-picture-label = Imagen de la grabación, de { $seconds } segundos
words-stage-means = { $stage ->
    [prepare] se deciden ficha, grabación y lugar; aún no se enseña
    [show] las personas pulsan, dicen y dan; no se pide nada
    [invite] una oferta, una espera; luego se enseña y se da igualmente
   *[converse] { $name } pulsa sin que se le pida; todos responden
}
words-stage-with = Etapa con { $name }
words-stage-now = Ahora: { $stage }, { $means }.
words-figures-agree = Las cifras apuntan a lo mismo.
words-figures-differ = Las cifras apuntan a { $stage }: { $means }.
words-figures-behind = Por qué
words-because = Porque:
words-would-change = Lo que lo cambiaría:
words-fact-shown = Enseñada
words-fact-shown-times = { $times ->
    [0] aún no
    [one] una vez
   *[other] { $times } veces
}{ $week ->
    [0] , no en los últimos siete días
    [one] , una vez en los últimos siete días
   *[other] , { $week } veces en los últimos siete días
}
words-fact-delay = De la pulsación a la entrega
words-fact-response = Pulsada al invitar y quererla
words-fact-own = Pulsaciones propias en 28 días
words-never-counted = No pulsar nunca cuenta como no entender.
words-work-at = Trabajarla como
words-back-no-loss = Volver una etapa atrás no es una pérdida.
words-stage-why = Por qué
words-stage-why-hint = si quieres
words-stage-set = Fijar la etapa
