# One page before a meeting with a coach. Figures come written with their interval and count.
meeting-title = Antes de una reunión: { $name }
meeting-link = Antes de una reunión
meeting-told-since = Desde el día
meeting-show = Mostrar
meeting-write-plan = Escribir el próximo plan
meeting-own-plan = Convertirlo en un plan propio
meeting-safety = Primero, la seguridad
meeting-new = Nuevo desde el { $day }
meeting-counts = Sesiones: { $sessions }. Demostraciones de personas: { $showings }. Pulsaciones propias de { $name }: { $presses }.
meeting-new-word = Una palabra nueva: «{ $word }».
meeting-new-stage = «{ $word }» está ahora en la etapa { $stage }.
meeting-first-press = Primera pulsación propia de «{ $word }»: { $day }.
meeting-likes-test = Una prueba de gustos: { $day }.
meeting-check = Una comprobación de comprensión de { $words }, planeada el { $day }.
meeting-nothing-new = Ninguna palabra, etapa, primera pulsación, prueba ni comprobación nueva.
meeting-more = { $count } más, fuera de esta hoja.
meeting-agreed = Lo que se acordó
meeting-from = De { $name }, acordado el { $day }: { $what }
meeting-own = El plan propio del hogar del { $day }, hasta el { $last }
meeting-nothing-agreed = No se acordó nada para este tiempo.
meeting-figures = Tres cifras
meeting-figure = Cifra
meeting-since = Desde el { $day }
meeting-before = { $days ->
    [one] El día anterior
   *[other] Los { $days } días anteriores
}
meeting-measure = { $measure ->
    [pressed] Pulsó, de las invitaciones queridas
    [right] Correctas, de las pulsaciones en invitaciones
    [presses] Pulsaciones propias al día
    [joining] Sesiones en que participó
   *[delay] De la pulsación de una persona a dar
}
meeting-open = Preguntas abiertas
meeting-said = { $reply ->
    [accepted] El hogar aceptó el { $day }: { $what }
    [declined] El hogar dijo que no el { $day }: { $what }
   *[said] El hogar respondió el { $day }: { $what }
}
meeting-next = Acordado en la reunión
meeting-line = Línea
meeting-to-write = para rellenar a mano
