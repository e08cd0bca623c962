# Programas: cursos de algunas semanas con metas para personas.
programme-title = Programas
programme-intro = Un curso de algunas semanas para hogares de tu club: qué se proponen las personas en cada una, lecciones, un ejercicio. Un hogar participa al aceptar. Las metas son para personas, nunca para un animal.
programme-none = Todavía ningún programa.
programme-new = Preparar un programa
programme-new-how = Lo que el registro puede decir se cuenta solo. Lo demás lo marca el hogar. Deja vacío lo que una semana no tenga.
programme-how-many = Semanas
programme-field-name = Cómo se llama
programme-field-club = Para qué club
programme-field-showings = Muestras en la semana
programme-field-invitations = Invitaciones en la semana
programme-field-a-day = Sesiones al día
programme-field-days = En cuántos días
programme-field-lessons = Lecciones para leer
programme-field-own = Otra meta, { $number }
programme-field-own-hint = En pocas palabras; el hogar la marca.
programme-field-exercise = Ejercicio
programme-lay-out = Guardar este programa
programme-nothing = u otra meta de alguna semana falta
programme-too-many = y las otras metas de la semana son demasiadas: como mucho { $most }
programme-week-number = Semana { $week }
programme-week = Semana { $week }, { $first } a { $last }
programme-weeks = { $weeks ->
    [one] { $weeks } semana
   *[other] { $weeks } semanas
}
programme-closed = ya no se propone a nadie
programme-close = No proponerlo a nadie más
programme-open-again = Volver a proponerlo
programme-rests = debe ser más tarde: por una señal fuerte descansan las sesiones hasta el { $until }
programme-proposed = { $weeks ->
    [one] Programa «{ $name }», { $weeks } semana desde { $first }
   *[other] Programa «{ $name }», { $weeks } semanas desde { $first }
}
programme-showings = { $times ->
    [one] { $times } muestra
   *[other] { $times } muestras
}
programme-invitations = { $times ->
    [one] { $times } invitación
   *[other] { $times } invitaciones
}
programme-sessions = { $a_day ->
    [one] { $a_day } sesión al día
   *[other] { $a_day } sesiones al día
}, en { $days ->
    [one] { $days } día
   *[other] { $days } días
}
programme-lesson = Leer la lección «{ $lesson }»
programme-doing = { $aim }: { $done }
programme-so-many = { $done } de { $of } hasta ahora
programme-done = hecho
programme-not-yet = todavía no
programme-tick = Hecho
programme-not-after-all = Al final no
programme-no-aims = Esta semana no tiene metas.
programme-for-people = Las metas son para personas. Un día en que nadie tiene tiempo, o en que el animal prefiere que no, es un día como cualquier otro.
programme-done-noted = Meta { $aim } de la semana { $week } hecha
programme-where-each = Cómo va cada uno
programme-no-ranking = Cada uno frente a sus propias metas, por nombre. No se comparan hogares ni animales: empiezan desde lugares distintos.
programme-nobody = No participa nadie que ahora comparta cifras contigo.
programme-handed-on = Traspasado a { $name } el { $day }. Allí sigue.
programme-in-week = Semana { $week } de { $weeks }
programme-begins = Empieza el { $day }
programme-over = Las semanas han pasado.
programme-weeks-before = Las semanas anteriores
programme-course = El curso
programme-propose = Proponerlo a hogares
programme-field-animal = Con qué animales
programme-field-first = Primer día
programme-propose-button = Proponerlo
programme-given-on = { $who }: traspaso a { $name } el { $day }. Allí continúa.
programme-sent = Propuesto con { $names }. Cada hogar responde por sí mismo.
programme-left-rests = Fuera, porque una señal fuerte deja en pausa las sesiones: { $names }.
programme-left-handed = Fuera, porque allí sigue otra persona: { $names }.
programme-left-joined = Fuera, porque ya participan: { $names }.
programme-each-own = Cada hogar recibe su propia propuesta y responde por sí mismo.
programme-all-of-them = Con todos
