# What stands behind an invitation.
join-title = Tienes una invitación
join-to = { $kind ->
    [home] Al hogar «{ $place }».
    [lost_home] Al hogar con el identificador { $place }, para llevarlo.
    [new_home] A un hogar nuevo en este servidor.
    [club] Al club «{ $place }».
   *[server] A este servidor: { $place }.
}
join-part = { $role ->
    [keeper] Para llevarlo: ves y haces todo aquí. También invitas a personas, decides qué se comparte y puedes llevarte el hogar.
    [member] Como miembro: anotas lo que pasa y ves todas las cifras.
    [sitter] Para cuidar por días: en los días acordados anotas lo que pasa. Ves Hoy y las reglas de la casa.
    [observer] Para observar: puntúas lo que ves, sin ver lo que puntuaron otros.
    [coach] Como coach: ves lo que los hogares deciden compartir, nada más.
    [club_keeper] Para llevar el club: invitas a personas y ves quién forma parte.
   *[server_keeper] Para llevar el servidor: abres hogares y clubes. Con eso no ves datos de ningún hogar.
}
join-days = Días acordados: { $weekdays }, del { $first } al { $last }.
join-until = La invitación vale hasta { $when }, y una vez.
join-signed-in = Has iniciado sesión como { $name }.
join-join = Entrar
join-have-account = ¿Ya tienes una cuenta aquí? { $link }
join-sign-in-first = Inicia sesión primero
join-gone-title = Esta invitación no vale
join-gone = Ya se aceptó, es demasiado antigua o su enlace no está entero. ¿Ya entraste? Entonces inicia sesión. Si no, pide otra a quien te invitó.
join-taken-title = Nada que aceptar
join-taken = Ya tienes un papel aquí, o alguien llegó antes. Pregunta a quien te invitó.
join-welcome = Hola, { $name }
join-passkey = La próxima vez, entra con el dedo, la cara o el PIN. Tu dispositivo guarda para eso una llave de acceso: sin contraseña.
join-make-passkey = Crear una llave de acceso
join-later = Más tarde
join-way-back = Tras cerrar la sesión vuelves con una llave de acceso, un enlace por correo o un código de recuperación. Los tres están en { $account }.
join-not-yet = Te deja entrar desde { $from }. Hasta entonces, quien aún esté en el hogar puede rechazarla.
join-yours-title = Ya estás dentro
join-yours = Tú aceptaste esta invitación. Sirve una vez; desde ahora inicias sesión.
join-yours-go = Seguir
join-you-hint = { $kind ->
    [home] como te llaman en casa
    [new_home] como te llaman en casa
    [lost_home] como te llaman en casa
   *[other] como te verán los demás aquí
}
join-as-whom = Allí anotas como «{ $name }».
join-not-you = ¿No eres { $name }? Cierra la sesión
join-kept = Este enlace era para quien lo llevara primero, y alguien llegó antes. ¿Eres tú? Entonces inicia sesión. Si no, pide una invitación a quien lo lleva.
