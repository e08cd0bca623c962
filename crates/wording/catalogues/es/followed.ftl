# Sobre todos los hogares de un coach: qué siguió cuando se acordó un cambio.
followed-title = ¿Ayuda el consejo?
followed-how = Qué siguió cuando se acordó un cambio contigo: pulsaciones propias en los días en que alguien miró, { $days } días después frente a { $days } antes. Cada hogar cuenta una vez, por su primer cambio de ese tipo.
followed-caution = Aquí nadie sorteó nada. Un cambio se propone cuando va mal, y lo que va mal a menudo mejora solo. Así que estas proporciones no muestran que lo hiciera el cambio.
followed-change = Cambio
followed-more = Pulsó más después
followed-early = Demasiado pronto o poco anotado
followed-homes = { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
}
followed-share = { $share } ({ $low } a { $high }), { $more } de { $homes } hogares
followed-share-early = Demasiado pronto para decirlo: { $more } de { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
}
followed-none = Todavía no se ha acordado contigo nada que cambie algo.
followed-nothing = Para comparar, hogares en los que no se acordó nada en ocho semanas; las últimas cuatro semanas frente a las cuatro anteriores. Pulsó más: { $share }.
followed-plan = { $way ->
    [show] Plan: mostrar
    [offer_in_view] Plan: invitar con la cosa a la vista
    [ask_and_point] Plan: preguntar y señalar
    [ask_between_two] Plan: «esto o aquello»
   *[any] Plan: como convenga
}
followed-stage = Etapa: { $stage }
followed-drawn-title = Por sorteo
followed-drawn-how = Aquí el sorteo decidió cuándo empezaba el cambio. Cada prueba se juzga al final frente a todos los órdenes que podrían haber salido. De veinte cambios que no hacen nada, más o menos uno parece hacer algo. Las pruebas junto a otra que mide lo mismo se cuentan aparte.
followed-drawn = Cambio sorteado
followed-came-out = Cómo salió
followed-outcome = { $outcome ->
    [going] en curso: { $count }
    [stopped] detenidas: { $count }
    [rare] una diferencia rara por azar: { $count }
    [may_be_chance] puede ser azar: { $count }
    [too_few_orders] demasiado pequeñas para saberlo: { $count }
   *[untested] terminadas sin test: { $count }
}
followed-beside = No cuentan arriba, porque otra prueba midió lo mismo en algunos de los mismos días: { $count ->
    [one] { $count } prueba
   *[other] { $count } pruebas
} ({ $outcomes }). No se puede distinguir una de la otra.
followed-was-beside = junto a otra prueba
followed-none-alone = todavía ninguna sola
followed-no-drawn = Todavía ninguna prueba. Lo que propones en «Un cambio para probar» puede sortearlo el hogar.
followed-each = Cada prueba
followed-in-home = { $animal }, { $home }
