log-title = Registro
log-judge-heard = Juzgar pulsaciones que oyó un micrófono
log-about = Todo lo anotado de { $name }, lo más nuevo primero. Nada se borra: lo deshecho o editado conserva su primer registro.
log-filter = Elegir qué ver
log-filtered = Se muestra: { $what }
log-day = Día
log-kind = Tipo
log-word = Palabra
log-person = Anotado por
log-any = todo
log-show = Mostrar
log-show-all = Mostrar todo
log-kind-name = { $kind ->
    [presses] pulsaciones
    [answers] respuestas
    [sessions] sesiones
    [invitations] invitaciones y rondas
    [signs] señales
    [food] comida
    [likes] pruebas de gustos
    [checks] comprobaciones, cambios, pruebas
    [cards] fichas, tablero y reglas
   *[other] otras notas
}
log-nothing = Aún no hay nada anotado.
log-nothing-such = Aquí no hay nada así anotado.
log-newest = Lo más nuevo
log-newer = Más nuevo
log-older = Más antiguo
log-pages = Páginas del registro
log-undone = Deshecho: { $what }
log-edited = Editado. Primero se anotó: { $what }, { $when }
log-when = { $day }, { $time }
log-noted = { $when }{ $who ->
    [none] { "" }
   *[other] { " " }· { $who }
}{ $how ->
    [heard] { " " }· oído
    [device] { " " }· de un dispositivo
    [import] { " " }· importado
   *[other] { "" }
}{ $twice ->
    [no] { "" }
   *[other] ; también tocado, así que cuenta una vez
}
log-edit = Editar
log-edit-this = Editar: { $what }, { $when }
log-undo = Deshacer
log-undo-this = Deshacer: { $what }, { $when }
log-bring-back = Recuperar
log-bring-back-this = Recuperar: { $what }, { $when }
log-time = Hora
log-time-zone = en { $zone }
log-time-wrong = La hora { $what }.
log-time-form = debe ser una hora como 18:30 o 18:30:05
log-time-ahead = está en el futuro; debe ser ahora o antes
log-who-pressed = Quién pulsó
log-by = { $by ->
    [animal] { $name }
    [person] una persona, para mostrar
   *[other] nadie lo vio
}
log-meant = ¿Pareció a propósito?
log-accident = { $accident ->
    [no] pareció a propósito
    [likely] pareció un tropiezo
   *[other] no se sabe
}
log-how-answered = Cómo se respondió
log-what-then = Qué hizo { $name } después
log-how-strong = Qué tan fuerte
log-took = ¿Tomó { $name } la cosa?
log-yes = sí
log-no = no
log-not-seen = no se vio
log-back = Volver al registro
log-ahead = { $n ->
    [one] 1 suceso lleva una fecha futura.
   *[other] { $n } sucesos llevan una fecha futura.
}
log-ahead-why = { $n ->
    [one] Es de { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
   *[other] El primero es de { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
} El reloj del dispositivo que lo anotó iba adelantado. Fichas y grabaciones ya cuentan; lo demás cuenta desde su hora. Ajusta ese reloj y edita las horas en el registro.
log-no-such-event = El registro no tiene tal suceso.
log-took-choice = debe ser sí, no o quedar abierto
log-id-without-time = La dirección nombra un id, pero no antes de qué hora: ?before=<time>&id=<id>
log-on-its-own-page = se corrige en su propia página: las tarjetas en Personas, el consentimiento en Quién puede ver esto
log-about-server = Todo lo anotado de { $name }, lo más nuevo primero. Lo deshecho o editado conserva su primera nota. Todo se borra solo si se borra el hogar entero.
