today-title = Hoy con { $name }
today-now = Ahora
today-start = Empezar
today-why = ¿Por qué? ({ $sure })
today-why-plan = ¿Por qué tanto?
today-pause-why = { $a_day ->
    [one] Aquí suele haber una sesión al día
   *[other] Aquí suele haber { $a_day } sesiones al día
}, o lo habitual si hay pocas; dos horas de descanso entre ellas (práctica común, sin fuente).
today-care = Cuidado:
today-take-care = { $care } { $what }
today-change-our-mind = Cambiaríamos de opinión si:
today-records = los registros
today-also = Lo que también vale:
today-alike = «{ $word }» suena muy parecida a { $others }. Otra palabra para una de ellas se distingue mejor.
today-alike-first = «{ $word }» suena muy parecida a { $others } y aún no se ha mostrado: elige antes otra palabra.
today-best-time = Mejor hora hasta ahora: de { $from } a { $to }. Participó entonces: { $joined }.
today-shown-today = «{ $word }» { $times ->
    [0] aún no se ha mostrado hoy.
    [one] se ha mostrado una vez hoy.
   *[other] se ha mostrado { $times } veces hoy.
}
today-words = Palabras
today-more-words = { $count ->
    [one] Una palabra más: { $words }
   *[other] { $count } palabras más: { $words }
}
today-many-more-words = { $count } palabras más
today-trend = Pulsaciones propias en las últimas ocho semanas: { $counts }
today-evidence = Qué dicen las pulsaciones de «{ $word }»
today-lately = En los últimos siete días
today-later = Más tarde
today-joining = Con qué frecuencia se unió a las sesiones en cuatro semanas
today-pieces = { $count } × «{ $name }»
today-food-left-pieces = Comida que queda hoy: { $pieces }
today-food-left = Recompensas de comida que quedan hoy: { $left } de { $of }.
today-food-over = Hoy no quedan recompensas de comida: { $over } por encima de { $of }
today-feeds = { $count ->
    [one] Se ha dado una vez.
   *[other] Se ha dado { $count } veces.
}
today-given = Dado hasta ahora: { $kcal }.
today-energy-unknown = { $name }: no se conoce la energía de un trozo.
today-how-computed = Cómo se calcula
today-whole-day = El día entero: { $kcal }, { $basis }.
today-individuals = Individuos de este peso: unos { $low } a { $high }.
today-do-rewards = Añadir lo que puede gustar
today-do-likes = A las pruebas de gustos
today-do-words = Elegir palabras
today-do-allowance = Fijar la comida
today-do-card = Abrir la ficha
today-do-heard = Lo que se oyó
today-do-rules = Reglas de la casa
today-do-days = Días y horas
today-do-places = Dónde están los botones
today-do-board = Al tablero
today-do-stage = Cambiar la etapa
today-do-checks = A las comprobaciones
today-session = { $minutes ->
    [one] Un minuto como mucho. Muestra:
   *[other] { $minutes } minutos como mucho. Muestra:
}
today-planned = { $planned }. { $hint }
today-hint-for = Con { $words }: { $hint }
today-rests-until = Ninguna sesión hasta el { $until }.
today-ask-keeper = Todavía falta preparar algo para { $name }. Pregunta a quien lleva el hogar qué hacer hoy.
today-ask-card = Su ficha la completa quien lleva el hogar
today-ask-food = Aquí no está decidido cuánta comida puede recibir { $name } al día. Pregunta a quien lleva el hogar antes de dar nada.
today-answer-only = Responde a lo que pulse { $name }.
today-without-agreed = Sin lo acordado: { $step }. { $why }
