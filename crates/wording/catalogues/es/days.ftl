days-title = Días
days-how-many = Cuántos días
days-length = { $n } días
days-length-wrong = days debe ser uno de { $allowed }, no { $given }.
days-calendar = Semanas de { $name }
days-week-of = Semana del { $day }
days-week = Semana
days-cell = { $day }: { $presses ->
    [one] { $presses } pulsación propia
   *[other] { $presses } pulsaciones propias
}{ $sessions ->
    [0] , sin sesión
   *[other] , sesiones con participación: { $joined } de { $sessions }
}{ $signs ->
    [none] { "" }
    [mild] , señales leves de estrés
   *[other] , señal fuerte de estrés
}
days-legend = Número: pulsaciones propias. ● sesión con participación, ○ sesión sin ella. ! señales leves de estrés, !! una señal fuerte. Un día abre su registro.
days-earlier = Semanas anteriores
days-side-by-side = Lado a lado
days-mini-presses = Pulsaciones propias
days-mini-showings = Muestras
days-mini-joined = Sesiones con participación, por semana
days-mini-delay = De pulsar a dar, por semana
days-mini-hours = Por hora
days-mini-weekdays = Por día de la semana
days-told-presses = { $n } en { $days } días
days-told-showings = { $n } en { $days } días{ $without ->
    [0] { "" }
   *[other] , { $without } sin ninguna
}
days-told-joined = { $joined } de { $sessions }
days-no-sessions = ninguna sesión
days-told-delay = { $seconds } en los últimos siete días
days-too-few = muy pocas para decir algo
days-stands-out = más: { $which }
days-quiet = menos: { $which }
days-none-stands-out = ninguna destaca
days-figures-hours = Pulsaciones propias por hora
days-figures-weekdays = Pulsaciones propias por día de la semana
days-hour-axis = hora del día
days-weekday-axis = día de la semana
days-presses-a-day = pulsaciones por día
days-no-presses = Ninguna pulsación propia en este tiempo.
days-too-few-presses = Muy pocas pulsaciones propias para comparar ({ $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}).
days-most = Más: { $which }, { $rate }; { $n } pulsaciones propias en total.
days-outstanding = { $which } destaca: { $ratio } veces las otras ({ $p } ajustado).
days-asleep = Las horas en que nadie anotó nunca una pulsación se toman por sueño o ausencia: no son un hallazgo, y ninguna otra hora se compara con ellas.
days-trust = { $bursts ->
    [yes] Las pulsaciones vienen en ráfagas, o en días buenos y malos: los recuentos varían { $times } veces lo que variarían pulsaciones sueltas. Estos intervalos, y lo que destaca, lo tienen en cuenta.
   *[other] Las pulsaciones vienen sueltas: los recuentos varían { $times } veces lo que daría solo el azar.
}
days-weeks-by-week = Semana a semana
days-joined-told = Sesiones con participación en los últimos siete días: { $share }.
days-sessions-joined = Sesiones con participación
days-joined = participó
days-weeks-axis = semanas antes de hoy
days-delay = De pulsar a dar
days-delay-told = De pulsar a dar, valor central de los últimos siete días: { $seconds }.
days-seconds = segundos
days-when-invited = Tiempo hasta pulsar al invitar
days-answers = Respuestas a las pulsaciones propias
days-answer = { $answer ->
    [given] Dado
    [partly] En parte
    [declined] Ahora no
    [alternative] Se ofreció otra cosa
   *[other] Sin respuesta o sin registrar
}
days-day-by-day = Día a día
days-day = Día
days-shown = Mostrado
days-pressed = Pulsado por su cuenta
days-zone = Los días y horas son los de { $zone }. { $link }.
days-all-events = Todos los sucesos
days-patterns = Patrones: si las pulsaciones crecen o menguan, qué sigue a qué, deslices, gustos por hora
days-readiness = Disposición
days-readiness-told = En la última sesión { $name } probablemente estaba { $state ->
    [away] a otra cosa
    [warming] entrando en calor
   *[other] a punto
}; probabilidad de «a punto»: { $share }.
days-readiness-open = Aún no se sabe si { $name } estaba a punto en la última sesión; probabilidad de «a punto»: { $share }.
days-readiness-title = Probabilidad de estar a punto, por sesión
days-readiness-from = De la participación, el tiempo en venir y las señales juntas (modelo de estados ocultos).
days-session-axis = sesión, la más antigua primero
days-ready = a punto
days-demand = Demanda
days-no-demand = Ninguna pulsación propia en este tiempo, así que nada se puede decir de la demanda.
days-stretches = Tramos en que { $name } pulsó a ritmo constante:
days-stretch = del { $first } al { $last }: { $rate }
days-bursts = Rachas de las últimas cuatro semanas, más rápidas de lo usual.
days-burst-may-come = Cuando cambian las respuestas puede venir primero una ráfaga de pulsaciones: en el 24 % de los casos en personas, el 12 % donde se ofreció otra cosa (Lerman & Iwata 1995).
days-burst = { $when }: { $presses } pulsaciones en { $seconds }
days-after-answers = Qué siguió a las respuestas
days-after-each = Tras cada tipo de respuesta
days-answer-head = Respuesta
days-pressed-again = volvió a pulsar en diez minutos
days-against-given = siguiente pulsación frente a «dado»
days-times-as-fast = { $times } veces más rápida
days-unvoiced = Pedido sin botón, por semana:
days-named-figure = { $what }: { $figure }
days-next-words = Palabras que podrían venir
days-hold = Palabras del tablero en uso: { $used } de { $all }. Deja que crezcan antes de añadir más (práctica común, sin fuente).
days-next-gap = { $word }: pedida sin botón { $asked ->
    [one] una vez
   *[other] { $asked } veces
}, { $rate } por semana (de { $low } a { $high })
days-next-demand = { $word }: { $rate } pulsaciones por hora (de { $low } a { $high }, { $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}) y ninguna palabra cierra una sesión
days-next-arousal = { $word }: { $ended } de { $of } sesiones terminaron con mucha excitación (de { $low } a { $high }) y ninguna palabra las cierra
days-zone-only = Los días y horas son los de { $zone }.
