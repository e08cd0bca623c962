command-design-listed = { $id }  { $question }  { $design }, { $points ->
    [one] { $points } punto
   *[other] { $points } puntos
} desde { $first }
command-design-stopped = Terminada. Deja todo como estaba.
command-design-no-trial = el cuaderno no conoce ninguna prueba { $id }; mira `sayso design list`
command-design-not-drawn = el orden de esta prueba no se puede sortear a partir de su plan: { $why }
command-design-heading = { $question } { $design }; { $measure } { $unit ->
    [day] cada día
   *[session] cada sesión
}
command-design-now = ahora: { $what }
command-design-rest = descanso, todo como siempre; se anotaron señales fuertes de estrés
command-design-nothing = todo como siempre
command-design-within = dar en menos de { $seconds } s
command-design-usual = como siempre
command-design-point = punto { $point } de { $of }: { $what }
command-design-departure = no como estaba previsto: { $what }
command-design-so-far = cifras hasta ahora; nada se afirma con ellas, y mirar tienta a parar:
command-design-no-test = sin contraste: { $why }
command-design-open-end = abierto
command-design-difference = diferencia, cambiado menos habitual: { $value } (intervalo del 95 % de { $low } a { $high }, n = { $n } puntos)
command-design-distance = distancia media a la meta: { $seconds }
command-design-orders = órdenes igual de extremos: { $extreme } de { $of }; { $p }
command-design-standards = el diseño { $verdict }: ocasiones de mostrar un efecto: { $chances }, al menos { $fewest ->
    [one] { $fewest } punto
   *[other] { $fewest } puntos
} en cada fase
command-design-missing = puntos pasados sin valor: { $n } de { $of }
command-design-mean = media: { $mean }
command-design-nap = { $name }: NAP { $nap } (intervalo del 90 % de { $low } a { $high }, n = { $n_a } y { $n_b }), Tau-U { $tau } ({ $p })
command-design-which-animal = di qué animal con --animal
command-design-not-today = hoy no: se anotaron señales fuertes de estrés; deja espacio y planifica en un día tranquilo
command-design-too-soon = --first debe ser { $day } o después: el orden se sortea antes de que empiece
command-design-no-random = este equipo no da números aleatorios: { $why }
command-design-planned = Planificada: { $id }
command-design-about = Se trata de { $name }, no al revés: { $name } puede irse cuando quiera, y una señal fuerte de estrés termina la prueba.
command-design-see = Mira lo que toca cada día con `sayso design show { $id }`.
