# Several coaches in a club: another one in the place of one. $from, $to and $name are names of coaches.
colleagues-title = Colegas
colleagues-intro = Otros coaches de tu club pueden ocupar tu lugar: en un hogar para siempre, o en todos mientras no estás. Cada hogar decide.
colleagues-alone = No hay otro coach en tu club.
colleagues-who = ¿Quién?
colleagues-cover = Mientras no estás
colleagues-cover-how = Un hogar que comparte con todo el club sigue abierto a tu colega tal como está. A los demás se les pregunta; hasta que digan que sí, tu colega no ve nada. Termina solo después del último día.
colleagues-first = Primer día
colleagues-last = Último día
colleagues-cover-me = Preguntar a los hogares
colleagues-covered-by = { $name } te sustituye, { $first } a { $last }.
colleagues-you-cover = Sustituyes a { $name }, { $first } a { $last }.
colleagues-end = Terminar
colleagues-day-wrong = debe ser un día de { $first } a { $last }
colleagues-hand-over = Traspasar
colleagues-hand-over-title = Traspasar: { $home }
colleagues-hand-over-how = El hogar decide. Cuando dice que sí, lo que comparte contigo termina en ese momento y empieza con tu colega, que entonces lee lo que tú y el hogar os escribisteis.
colleagues-propose = Preguntar al hogar
colleagues-handed-what = { $from } quisiera traspasar tu hogar a { $to }. Tú decides.
colleagues-cover-what = { $from } no está del { $first } al { $last }. { $to } sustituiría. Tú decides.
colleagues-ends = Qué termina
colleagues-ends-club = Hasta ahora esto lo tienen todos los coaches del club. Desde entonces solo { $to }.
colleagues-begins = Qué empieza
colleagues-begins-for-days = Qué empieza, solo en esos días
colleagues-reads-on = { $to } lee también lo que { $from } y tú os escribisteis, sigue con lo que está abierto y puede terminarlo.
colleagues-done = { $asked ->
    [one] Se preguntó a { $asked } hogar.
   *[other] Se preguntó a { $asked } hogares.
} { $open ->
    [one] { $open } hogar ya está abierto a tu colega.
   *[other] { $open } hogares ya están abiertos a tu colega.
}
colleagues-reads-back = De vuelta, { $from } lee lo que { $to } y tú os escribisteis esos días.
