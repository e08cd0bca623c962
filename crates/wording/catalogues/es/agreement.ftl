agreement-title = ¿Vemos lo mismo?
agreement-intro = Lo que anotan dos personas, cada una por su lado, dice si las cifras de este cuaderno saldrían igual tocara quien tocara.
agreement-records = Del registro: lo que anotaron dos personas
agreement-no-records = Aún no hay dos personas que anotaran la misma sesión o comprobación. Que dos personas, cada una con su dispositivo, anoten una sesión sin mirarse; entonces aparecerán aquí.
agreement-pair = { $first } y { $second }, { $animal }: { $kind ->
    [presses] { $n ->
        [one] { $n } pulsación
       *[other] { $n } pulsaciones
    }
   *[other] { $n ->
        [one] { $n } ensayo de comprobación
       *[other] { $n } ensayos de comprobación
    }
}
agreement-which = Cuáles comparar
agreement-group = { $kind ->
    [presses] Sesión
   *[other] Comprobación
} del { $when }: { $n }
agreement-compare = Comparar
agreement-compare-these = Comparar solo estos
agreement-paired = { $kind ->
    [presses] Las pulsaciones de una sesión cuentan como la misma si ambas personas anotaron una en { $seconds }; lo que solo una anotó es «{ $none }» para la otra.
   *[other] Los ensayos de una comprobación se comparan por su número.
}
agreement-not-noted = no anotado
agreement-paste = De una película: escribir o pegar puntuaciones
agreement-paste-intro = Dos personas ven la misma película, cada una por su lado, y escriben lo que ven.
agreement-scores = Puntuaciones
agreement-scores-hint = Una línea por cada cosa puntuada, una columna por persona, separadas por comas: press,brush. Deja vacía la columna de quien no puntuó.
agreement-scores-wrong = Puntuaciones: { $what }.
agreement-scale = Qué son las puntuaciones
agreement-scale-names = nombres, como pulsar y rozar
agreement-scale-steps = números de los que solo cuenta el orden, como 1 tranquilo a 3 tenso
agreement-scale-numbers = números cuyas diferencias cuentan, como segundos
agreement-headed = La primera línea lleva los nombres
agreement-not-stored = Nada de lo escrito aquí se guarda. { $link }.
agreement-how-computed = Cómo se calcula
agreement-what-scores-say = Qué dicen las puntuaciones
agreement-sentence = { $alike ->
    [none] { "" }
   *[other] Puntuaron igual { $alike }.{ " " }
}{ $beyond ->
    [well] Más allá del azar coinciden bien.
    [little] Más allá del azar es demasiado poco para apoyarse: aclarad primero qué cuenta como qué.
    [some] Coinciden más allá del azar; cuánto aún no se sabe con precisión suficiente.
    [chance] Podría ser solo azar.
   *[other] Cuánto va más allá del azar aún no puede juzgarse.
}
agreement-sentence-nothing = Nada fue puntuado por dos personas, así que nada se puede decir de la coincidencia.
agreement-scored-alike = Puntuado igual
agreement-kappa = Kappa de Cohen
agreement-alpha = Alfa de Krippendorff
agreement-shared = Puntuado por al menos dos de { $people } personas
agreement-differing = Lo más a menudo visto distinto:
agreement-differs = { $one } «{ $first }», { $two } «{ $second }»: { $n ->
    [one] una vez
   *[other] { $n } veces
}
agreement-would-change = Qué lo cambiaría: más cosas puntuadas por ambas sin conocer las de la otra; y palabras más claras de qué cuenta como qué, probadas con otra película.
agreement-no-interval = { $value } (sin intervalo, n = { $n })
agreement-none = ninguno (n = { $n })
agreement-lacking = { $figure }; { $why }
agreement-few = con menos de { $least } puntuaciones su intervalo es demasiado corto
agreement-wrong-empty = sin puntuaciones: escribe una línea por cosa, con una columna por persona, como «press,brush»
agreement-wrong-ragged = la línea { $line } tiene { $got ->
    [one] { $got } columna
   *[other] { $got } columnas
} y la línea { $first } tiene { $wanted }; deja vacía la columna de quien no puntuó
agreement-wrong-people = { $n ->
    [one] { $n } columna
   *[other] { $n } columnas
}; se comparan de dos a veinte personas, una columna por cada una, separadas por comas, puntos y comas o tabuladores
agreement-wrong-long = demasiadas líneas
agreement-wrong-number = línea { $line }, { $person }: «{ $got }» no es un número; hacen falta números salvo que las puntuaciones sean nombres
agreement-wrong-names = demasiados nombres distintos; ¿son números?
agreement-person = persona { $number }
