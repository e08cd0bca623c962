# What a coach and a home say to each other through the work: plans, notes, questions, answers.
talk-title = Acordado
talk-intro = Lo que acuerdas con tu coach, y cómo va.
talk-intro-coach = Lo que escribiste a este hogar, y qué resultó.
talk-not-a-vet = Un coach no es veterinario. Ante dolor, enfermedad, miedo o mordiscos, pregunta a un veterinario o a un profesional cualificado del comportamiento.
talk-rest = Las sesiones con { $name } descansan primero. No hay que hacer nada de esto hasta que Hoy lo diga.
talk-none = Aquí no hay nada todavía. Lo que un coach propone o pregunta llega aquí y a Hoy.
talk-none-coach = Todavía no has escrito nada a este hogar.
talk-open = Por responder
talk-open-coach = A la espera de respuesta
talk-now = Acordado ahora
talk-before = Antes ({ $count })
talk-from = De { $name }
talk-from-file = Leído de un archivo: nadie aquí vio que { $name } lo escribiera.
talk-plan = Plan hasta { $day }: { $words }
talk-line = { $way ->
    [show] «{ $word }»: mostrarla, { $dose }
    [offer_in_view] «{ $word }»: invitar con la cosa a la vista, { $dose }
    [ask_and_point] «{ $word }»: preguntar y señalar, { $dose }
    [ask_between_two] «{ $word }»: preguntar «esto o aquello», { $dose }
   *[any] «{ $word }»: { $dose }
}
talk-dose = { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}, { $times ->
    [1] una vez al día
    [2] dos veces al día
   *[other] { $times } veces al día
}
talk-stage = Etapa { $stage } para «{ $word }»
talk-word = Una palabra nueva: «{ $word }»
talk-likes = Una prueba de gustos
talk-check = Una comprobación de «{ $word }»
talk-note = Una nota
talk-note-on = Una nota sobre { $about }
talk-question = Una pregunta
talk-practice = Algo para practicar
talk-question-on = Una pregunta sobre { $about }
talk-about-word = «{ $word }»
talk-about-session = la sesión de { $when }
talk-about-page = la página { $page }
talk-takes-up = Retoma: { $what }
talk-accept = Aceptar
talk-noted = Leído
talk-decline = Rechazar
talk-not-any-more = Ya no
talk-answer = Responder
talk-your-answer = Tu respuesta
talk-add-words = Añadir palabras
talk-most = Como mucho { $most } caracteres.
talk-if-you-like = Si quieres. Como mucho { $most } caracteres.
talk-reply = { $reply ->
    [accepted] { $who } aceptó, { $when }
    [declined] { $who } rechazó, { $when }
    [ended] { $who } terminó esto, { $when }
   *[said] { $who } respondió, { $when }
}
talk-goes-on = { $name } sigue con esto desde el { $day }.
talk-stands-in = { $name } sustituye aquí hasta el { $day }.
talk-someone = Alguien del hogar
talk-standing = { $standing ->
    [declined] rechazado
    [answered] respondido
    [ended] pasó su último día
    [over] terminó sin respuesta
   *[withdrawn] retirado
}
talk-since = Desde { $since }. Último día: { $last }.
talk-kept = { $way ->
    [show] «{ $word }» se mostró
    [any] «{ $word }» se mostró o se invitó
   *[other] Se invitó a «{ $word }»
} en { $on } de { $days ->
    [one] { $days } día
   *[other] { $days } días
}, { $times ->
    [1] una vez
    [2] dos veces
   *[other] { $times } veces
}. Acordado: { $dose }.
talk-not-begun = «{ $word }»: todavía no ha pasado ningún día. Acordado: { $dose }.
talk-sessions = { $sessions ->
    [one] En { $sessions } sesión.
   *[other] En { $sessions } sesiones.
}
talk-sessions-timed = { $sessions ->
    [one] En { $sessions } sesión, { $minutes } min.
   *[other] En { $sessions } sesiones, { $minutes } min en total.
}
talk-no-record = { $days ->
    [one] { $days } día no tiene ninguna anotación: nada se puede decir de él.
   *[other] { $days } días no tienen ninguna anotación: nada se puede decir de ellos.
}
talk-does-it-help = ¿Ayuda?
talk-pressed = «{ $word }», pulsado de invitaciones queridas. Desde entonces: { $since }. En los { $days } días de antes: { $before }.
talk-right = «{ $word }», acierto de pulsaciones. Desde entonces: { $since }. En los { $days } días de antes: { $before }.
talk-other-causes = También cambian otras cosas. Si fue por el plan, estas cifras no lo dicen. Una prueba de un cambio dice más.
talk-to-trial = Planear una prueba de un cambio
talk-do-word = Añadir la palabra
talk-card = De { $name }: { $what }
talk-agreed-with = Acordado con { $name }: { $what }
talk-card-more = De { $names }: { $count } por responder
talk-now-with = { $to } es ahora tu coach, en lugar de { $from }. Lo acordado sigue.
talk-now-covered = { $to } sustituye a { $from } hasta el { $day }. Lo acordado sigue.
talk-row = Acordado: { $dose }
talk-row-waits = Acordado: { $dose }. Espera: primero va el paso de aquí.
talk-row-never = Acordado: { $dose }. No se hace: nadie espera una palabra que termina sesiones.
talk-first-head = Lo que Hoy dice primero, antes de invitar:
talk-first = «{ $word }»: Hoy dice: { $step }. { $why }. Eso va primero; el plan lo espera.
talk-first-ends = «{ $word }» termina sesiones: se muestra entonces y nadie la espera. No se puede planear invitar.
talk-ends-sessions = { $word } (termina sesiones)
talk-write = Escribir a este hogar
talk-write-about = Escribir sobre esto
talk-write-again = Escribir otra vez
talk-take-back = Retirar
talk-end = Terminar esto
talk-write-intro = Una cosa cada vez, con tu nombre: { $name }. El hogar acepta, rechaza o responde.
talk-which = ¿Qué?
talk-kind = { $kind ->
    [plan] Un plan para unos días
    [change] Un cambio para probar
    [stage] Una etapa para una palabra
    [word] Una palabra para añadir
    [likes] Una prueba de gustos
    [check] Una comprobación
    [meeting] Una reunión
    [note] Una nota
    [practice] Algo para practicar
   *[question] Una pregunta
}
talk-rests = Por una señal fuerte descansan las sesiones con { $name }. Hasta que Hoy lo levante, no se puede proponer ninguna sesión. Una nota o una pregunta sí.
talk-rests-still = no se puede proponer ahora: por una señal fuerte descansan las sesiones con { $name }
talk-with = Con { $name }
talk-instead = Mejor { $name }
talk-something-else = Otra cosa
talk-no-words = { $name } no tiene palabras todavía.
talk-line-of = Palabra { $number }
talk-more-lines = Más palabras
talk-field-word = Palabra
talk-field-way = Cómo
talk-way = { $way ->
    [show] mostrarla
    [offer_in_view] invitar, con la cosa a la vista
    [ask_and_point] invitar, preguntar y señalar
    [ask_between_two] invitar, «esto o aquello»
   *[any] como convenga
}
talk-field-minutes = Minutos
talk-field-times = Veces al día
talk-field-last-day = Último día
talk-field-stage = Etapa
talk-field-says = Qué diría
talk-field-about = Sobre
talk-about-all = todo
talk-field-text = Con tus palabras
talk-send = Enviar
talk-no-line = falta; elige al menos una palabra
talk-way-of-closing = invita a una palabra que termina sesiones: nadie la espera; elige «mostrarla» o «como convenga»
talk-stage-of-closing = no es para una palabra que termina sesiones: nadie la espera; elige otra etapa
talk-last-day-wrong = tiene que ser un día entre hoy y { $last }
talk-no-such = Aquí no hay tal propuesta.
talk-over = terminó o se retiró: ya no hay nada que aceptar ni rechazar
talk-meeting = Una reunión el { $when }, { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}
talk-field-day = Día
talk-field-time = Hora
talk-time-zone = La de los relojes del hogar ({ $zone }), por ejemplo 18:30.
talk-time-wrong = debe ser una hora futura que exista ese día en el reloj, por ejemplo 18:30
talk-filled = { $by ->
    [plan] Rellenado con el último plan. Cambia lo que ya no encaje.
   *[steps] Rellenado con los pasos que eligió Hoy. Cambia lo que no encaje.
}
talk-own = Un plan propio
talk-own-intro = Para unos días con { $name }, como lo hablasteis en una reunión o en casa. Hoy lo muestra junto al paso de cada palabra.
talk-own-title = Nuestro propio plan
talk-own-of-home = El plan propio del hogar
talk-own-make = Hacer un plan propio con { $name }
talk-own-keep = Guardar este plan
talk-own-stop = Terminar este plan
talk-change = Para probar: { $change }
talk-change-words = Para probar con { $words }: { $change }
talk-field-change = En palabras, qué cambia
talk-field-change-hint = necesario para «otra cosa»; para otra palabra: cuál
talk-field-change-words-hint = ninguna marcada: todas
talk-change-measured = Qué se mide
talk-change-how = Si el hogar acepta, un toque más sortea cuándo empieza el cambio. Se juzga al final.
talk-as-trial = { $what } Se mide: { $measure }.
talk-draw = Sortear los días
talk-draw-hint = Desde mañana. Solo se muestra lo que rige cada día. Una señal fuerte de estrés la termina, y detenerse siempre está bien.
talk-other-numbers = Elegir los números
talk-trial-lead = Probado por sorteo:
talk-to-the-trial = La prueba
talk-not-agreed = no está acordado: solo se puede probar lo que se aceptó
talk-trial-today = Prueba: { $question } Hoy { $what }.
talk-hand-over = Otro coach: { $name }
talk-cover = Sustitución por { $name }, { $first } a { $last }
talk-for-club = Escrito para el club: sus otros coaches lo leen, y tus respuestas.
talk-for-club-coach = Escrito para el club: sus otros coaches lo leen, y lo que responde el hogar.
talk-not-read = Esto, y lo que respondas, ya no lo lee { $name }: se dejó de compartir el { $day }.
talk-not-read-now = Esto, y lo que respondas, no lo lee { $name }: ahora no se comparte nada.
talk-today-not-read = Lo que haces y respondes aquí ya no lo lee { $name }, desde el { $day }.
talk-today-not-read-now = Lo que haces y respondes aquí no lo lee { $name }: ahora no se comparte nada.
talk-club-reads = Este hogar comparte con todo tu club. Sus otros coaches leen lo que escribes aquí, y las respuestas.
talk-opens = se decide en una página propia: abre el hogar a alguien
talk-look-and-decide = Mirar y decidir
talk-a-keeper-decides = Esto lo decide quien administra el hogar.
talk-see-sharing = Quién puede ver este hogar
talk-field-exercise = Ejercicio para ensayar
talk-field-character = Con quién
talk-field-lessons = Lecciones para leer
talk-practice-none = Ninguno
talk-practice-nothing = Elige un ejercicio o una lección.
talk-rehearse-it = Ensáyalo: { $exercise }
talk-is-read = leída
talk-lessons-read = Lecciones leídas por alguien del hogar: { $read } de { $of }
talk-shared-count = Ensayos compartidos: { $count }
talk-may-share = Después de un ensayo puedes compartir sus cifras con { $name }. De un ensayo nada se comparte por sí solo.
talk-lessons-shown = Lecciones que el hogar muestra como leídas: { $read } de { $of }. Puede que se hayan leído otras.
talk-lessons-seen = { $club ->
    [yes] { $name } y otros coaches del club ven solo aquellas de estas lecciones que alguien del hogar muestra: con una marca junto a la lección, al principio sin poner.
   *[no] { $name } ve solo aquellas de estas lecciones que alguien del hogar muestra: con una marca junto a la lección, al principio sin poner.
}
talk-nothing-to-share = De este ensayo no hay nada que compartir: pasó demasiado poco.
talk-shared = De un ensayo de «{ $exercise }» con { $name }, un animal simulado:
talk-word-there = ya está en un botón aquí: propón una etapa o un plan para ella, u otra cosa
talk-word-is-there = «{ $word }» ya está en un botón aquí. A su ficha
talk-word-how = Solo una palabra: el hogar la añade y elige qué trae. Nada se sortea. En botones aquí: { $words }.
talk-word-how-none = Solo una palabra: el hogar la añade y elige qué trae. Nada se sortea.
talk-word-by-lot = Para ver por sorteo si otra palabra ayuda, propón un cambio para probar
talk-today-meeting = Reunión con { $name }: { $when }
talk-today-course-begins = «{ $course }» empieza: { $day }
talk-today-course = «{ $course }»: semana { $week } de { $weeks }, la siguiente desde { $day }
talk-today-course-last = «{ $course }»: semana { $week } de { $weeks }, hasta { $day }
talk-trial-today-until = Prueba hasta { $last }: { $question } Hoy { $what }.
talk-trial-begins = Prueba desde { $day }: { $question }
talk-in-place = { $name } escribió esto en lugar de { $of }, que sigue con ello.
talk-cover-reads = Sustituyes a { $name }, que lee lo que escribes aquí y sigue con ello.
talk-about-word-chart = el gráfico «{ $chart }» de «{ $word }»
talk-about-chart = el gráfico «{ $chart }»
talk-look-at = Ver: { $what }
talk-write-about-chart = Escribir sobre este gráfico
