server-title = El servidor
server-intro = Cantidades y tamaños, nada de lo que escriben los hogares.
server-homes = Hogares
server-left = Hogares que se fueron
server-clubs = Clubes
server-accounts = Cuentas
server-memory = Historias en memoria, este proceso
server-megabytes = { $value } MB
server-unfinished = { $count ->
    [one] { $count } hogar se ha ido, pero su registro sigue aquí.
   *[other] { $count } hogares se han ido, pero sus registros siguen aquí.
}
server-sign-in-again = Iniciar sesión de nuevo para cambiar algo
server-why-again = Lo que se hace aquí necesita haber iniciado sesión hace unos minutos.
server-finish = Borrarlos ahora
server-open-homes = Abrir hogares
server-open-homes-what = Cada uno recibe un cuaderno vacío y un enlace para quien lo lleve primero. Tú no ves nada de él.
server-how-many = Cuántos, { $most } como mucho
server-how-many-wrong = debe ser un número entero de 1 a { $most }
server-open = Abrir y recibir los enlaces
server-waiting = { $count ->
    [one] { $count } hogar espera a quien lo lleve
   *[other] { $count } hogares esperan a quien los lleve
}
server-waiting-what = Un enlace perdido o caducado se sustituye por otro. Cuenta el primero que se use; los demás ya no valen.
server-new-link = Enlace nuevo
server-members = { $count ->
    [one] { $count } papel
   *[other] { $count } papeles
}
server-club-name = Nombre de un club nuevo
server-open-club = Abrir el club
server-keepers = Quién lleva el servidor
server-end-keeper = Terminar
server-invite-keeper = Invitar a alguien más a llevar el servidor
server-sessions = Sesiones de una cuenta
server-sessions-what = Si una cuenta está en malas manos: todos sus dispositivos se cierran al momento. Su persona inicia sesión de nuevo.
server-account-id = Identificador de la cuenta, como lo dice su página
server-end-sessions = Terminar todas sus sesiones
server-links = { $count ->
    [one] { $count } enlace
   *[other] { $count } enlaces
}
server-stopped = Detenido tras { $made }: { $why } Los de abajo están abiertos.
server-number = Número
server-link = Enlace para la primera persona
server-until = Vale hasta
server-back = Volver al servidor
server-club-name-missing = falta: pon un nombre al club
server-account-missing = no es un identificador de cuenta: cópialo de la página de la cuenta
server-sessions-ended = { $count ->
    [one] { $count } sesión terminada.
   *[other] { $count } sesiones terminadas.
}
server-anew = Un hogar que perdió la entrada
server-anew-what = Si quienes lo llevan han perdido teléfono, correo y códigos, invita a alguien nuevo. Comprueba bien quién lo pide: quien use el enlace tiene el hogar.
server-anew-told = Al hogar se le dice quién lo hizo y cuándo. Quien aún entre puede rechazarlo. Ninguna cuenta que lleve el servidor entra con él.
server-anew-whose = Identificador del hogar; o el identificador o correo de una cuenta que lo lleva
server-anew-invite = Invitar a quien lo lleve
server-anew-from = Deja entrar desde { $from } hasta { $until }, una vez.
server-anew-unknown = no es un hogar de aquí que alguien haya llevado: copia el identificador de la página de una cuenta o de códigos impresos
server-anew-several = lleva varios hogares: da el identificador del hogar
server-anew-open = ya se invitó de nuevo: ese enlace aún vale
server-club-taken = ya es el nombre de un club de aquí: elige otro
server-not-by-role = Tu papel aquí no llega hasta ahí. Pregunta a quien lleva el servidor.
server-account-unknown = no es una cuenta de aquí: cópialo de la página de la cuenta
server-utc = { $at } UTC
