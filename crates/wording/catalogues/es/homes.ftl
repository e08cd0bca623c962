homes-title = ¿Qué hogar?
homes-intro = { $count ->
    [one] Este cuaderno contiene un hogar.
   *[other] Este cuaderno contiene { $count } hogares. Cada uno tiene sus animales, palabras y cifras; nada se cuenta entre ellos.
}
homes-no-animal = aún sin animal
homes-holds = { $animals }; { $count ->
    [one] un registro
   *[other] { $count } registros
}
homes-tail-since = { $name } (…{ $tail }, desde { $day })
homes-title-none = Aún sin hogar
homes-none = Tu cuenta aún no pertenece a ningún hogar. Pide una invitación a quien lleva el hogar o este servidor y abre su enlace en este dispositivo.
homes-none-private = Los hogares que comparten algo contigo como coach están aquí mientras lo hagan.
homes-clubs = Clubes
homes-to-server = El servidor
homes-give-up = Dejar un papel
homes-give-up-what = Desde entonces no ves nada del hogar. Lo que escribiste queda en su registro.
homes-go = Dejarlo
homes-with-days = { $role }; { $days }
homes-not-begun = { $role }; aquí aún no hay nada escrito: empieza quien lleva el hogar
homes-closed-now = { $role }; hoy cerrado para ti
homes-shares = { $role }; comparte { $what }
homes-find = Buscar un hogar
homes-find-button = Buscar
homes-found-none = Ningún hogar tuyo tiene «{ $text }» en su nombre.
homes-all = Todos los hogares
homes-parted = Un hogar del que eras parte se fue de este servidor el { $day }. Todo lo suyo está borrado aquí.
homes-lost = El hogar que estaba abierto aquí ya no está abierto para ti, o se fue. Elige uno de tus hogares.
homes-title-server = Llevas este servidor
homes-title-clubs = Tus clubes
homes-none-keeper = Aquí no eres de ningún hogar, y para esto no hace falta. Una invitación a uno, abierta en este dispositivo, lo añade.
homes-none-coach = Ahora ningún hogar comparte nada contigo. Un hogar está aquí mientras quien lo lleva esté de acuerdo. Desaparece cuando eso se retira o termina, o cuando el hogar se va.
homes-none-for-programs = Tu cuenta no es de ningún hogar aquí. Abre antes el enlace de una invitación.
homes-anew = Quien lleva el servidor invitó a alguien a llevar «{ $home }».
homes-restored = Este servidor se recuperó de una copia el { $at }, y con ello terminó todo consentimiento. Los hogares que acompañas vuelven cuando quien los lleva lo da de nuevo. Pídeselo.
