sharing-role = { $role ->
    [keeper] lleva el hogar
    [member] es de casa
    [sitter] cuida por días
    [observer] observa
    [coach] coach
    [club_keeper] lleva el club
   *[other] lleva el servidor
}
sharing-role-can = { $role ->
    [keeper] ve y escribe todo, invita, da consentimiento y puede irse con el hogar
    [member] ve y escribe todo sobre los animales; no cambia papeles ni consentimiento
    [sitter] en los días acordados: ve Hoy y las reglas de casa, y escribe en el tablero
    [observer] escribe en el tablero y puntúa pruebas sin ver lo que puntuaron otros
   *[other] mira la página de papeles
}
sharing-shows = { $what ->
    [see_today] Hoy
    [see_rules] las reglas de casa
    [see_figures] las cifras
    [see_log] el registro, nota por nota
    [hear_snippets] los sonidos guardados de pulsaciones
    [advise] la página Acordado, también para escribir
    [export] todo el registro como archivo
    [record] el Tablero, para anotar en él
   *[other] algo que esta versión no sabe nombrar
}
sharing-days-every = todos los días del { $first } al { $last }
sharing-days-some = del { $first } al { $last }: { $weekdays }
sharing-qr = El enlace como código QR
sharing-shown-once = { $count ->
    [one] Este enlace solo se muestra ahora. Envíalo, o deja que el otro teléfono lo escanee.
   *[other] Estos enlaces solo se muestran ahora. Envía cada uno, o deja que el otro teléfono escanee su código.
}
sharing-holds = Vale hasta { $until }, una vez.
sharing-whoever = Quien lo abra primero recibe el papel. Hasta entonces puedes retirarlo.
sharing-leaving = Irse
sharing-leaving-short = Llévate todo como archivo y después se borra aquí.
sharing-leave = Dejar este servidor
sharing-who-intro = Estas personas pueden ver algo de tu hogar en este momento.
sharing-sees-nothing = no ve ahora ninguna página de lo que otros escribieron
sharing-sees = ve { $what }
sharing-nobody-else = Nadie más ve nada aquí.
sharing-keepers-see = Quien lleva el servidor no ve nada de esto por su papel; quien tiene la máquina o sus copias en la mano puede leer lo guardado en ellas.
sharing-coach-of = coach, { $clubs }
sharing-as-person = { $role }, como { $name }
sharing-looked = Quién miró
sharing-looked-how = Se anotan las miradas de coaches, de quien cuida por días y de quien observa. Lo que alguien vuelve a abrir en un cuarto de hora, o lo que queda abierto, es una mirada. Las de la casa no se anotan: quienes viven juntos no se vigilan aquí.
sharing-looked-none = Nadie ha mirado todavía.
sharing-between = { $from } a { $to }
sharing-look = { $times ->
    [one] { $when }: { $who }, { $what }, { $times } vez
   *[other] { $when }: { $who }, { $what }, { $times } veces
}
sharing-people = Quién pertenece aquí
sharing-you = (tú)
sharing-change-of = Cambiar el papel de { $name }
sharing-change = Cambiar
sharing-invite = Invitar a alguien
sharing-open-invitations = Invitaciones abiertas
sharing-end-invitation = Retirarla
sharing-consent = Consentimiento
sharing-consent-none = No se comparte nada con nadie fuera del hogar.
sharing-consent-change = Dar o retirar
sharing-consent-before = Dado antes
sharing-given = { $what }: desde { $at }
sharing-taken-back = { $what }: dado { $at }, retirado { $ended }
sharing-opens-nothing = { $what }: dado { $at }, pero no en este servidor por quien lleva el hogar; no abre nada
sharing-purpose = { $purpose ->
    [coach_figures] { $who }: ve cifras
    [coach_log] { $who }: lee el registro
    [coach_snippets] { $who }: oye sonidos de pulsaciones
    [norms] las cifras cuentan en las normas de este servidor
   *[other] los registros pueden ir a estudios
}
sharing-nameless = { $kind ->
    [club] un club que ya no está aquí
   *[other] un coach que ya no está aquí
}
sharing-back = Volver a quién puede ver esto
sharing-invitation = Invitación
sharing-role-missing = falta: elige uno
sharing-person-missing = falta: quien cuida por días u observa escribe con un nombre propio del hogar
sharing-day-missing = falta: elige un día
sharing-weekdays-missing = faltan: elige al menos uno
sharing-last-before-first = es anterior al primero: elige el mismo día o uno posterior
sharing-invite-intro = Recibes un enlace que vale unos días y funciona una vez.
sharing-make-link = Hacer el enlace
sharing-no-person = ninguna persona del hogar
sharing-as-role = Papel
sharing-which-person = Qué persona del hogar
sharing-which-person-hint = Hace falta para quienes cuidan unos días u observan.
sharing-sitter-days = Días, para quien cuida
sharing-first-day = Primer día
sharing-last-day = Último día
sharing-on-weekdays = Días de la semana
sharing-role-of = Papel de { $name }
sharing-end-role = Terminar el papel
sharing-end-role-what = { $name } no ve nada del hogar desde entonces. Lo que { $name } escribió queda en el registro.
sharing-end-role-of = Terminar el papel de { $name }
sharing-consent-intro = Cada fin se pregunta por separado. Todos están apagados hasta que los des, y puedes retirar cada uno en cualquier momento.
sharing-with-coaches = Coaches y clubes
sharing-with-how = Pide a tu coach el enlace o código de la página del club. Abrirlo no comparte nada: antes se te pregunta.
sharing-club-code = Enlace o código del club
sharing-look-at-club = Seguir
sharing-no-code = no es un enlace ni código de un club: cópialo entero del mensaje del coach
sharing-whole-club = Lo que des aquí lo tiene cada coach de { $club }, ahora y después, mientras lo sea.
sharing-coaches-of = Cada coach de { $club }
sharing-coach-alone = Lo que des aquí lo tiene solo { $name } de { $club }, mientras { $name } sea coach.
sharing-not-among = Este hogar no es tuyo, o ya no se comparte contigo.
sharing-no-such-club = Aquí no hay tal club ni coach. Pide otra vez el enlace a tu coach.
sharing-already-seen = Retirarlo lo termina al momento. Lo que alguien ya vio, anotó o guardó no se puede recuperar.
sharing-share-with = Compartir con: { $who }
sharing-purpose-title = { $purpose ->
    [coach_figures] Cifras
    [coach_log] El registro
    [coach_snippets] Sonidos de pulsaciones
    [norms] Normas
   *[other] Investigación
}
sharing-on-since = Encendido desde { $at }
sharing-off = Apagado
sharing-take-back = Retirar
sharing-give = Doy mi consentimiento
sharing-unclear = no está claro: abre la página de nuevo y elige allí
sharing-new-words = han cambiado desde entonces: abre la página de nuevo y léelas
sharing-other-home = es ahora otro: este dispositivo ha cambiado en otra pestaña; abre la página de nuevo
sharing-not-the-name = no es «{ $name }»: escríbelo como está aquí
sharing-take-along = Primero: llévate todo
sharing-take-along-what = El archivo contiene el registro y sus sonidos. El programa lo abre en casa como un cuaderno entero.
sharing-what-happens = Qué pasa
sharing-erased = Se borra al momento: el registro, los sonidos, las fotos, todo lo calculado con ellos, quién pertenece al hogar, invitaciones, consentimiento y quién miró.
sharing-stays = Queda: una marca con el número del hogar y el día en que se fue. No contiene nombres y evita que teléfonos viejos lo traigan de vuelta.
sharing-accounts-stay = Las cuentas quedan con sus personas. Cada una puede borrar la suya en su página.
sharing-backups = { $days ->
    [one] Las copias de seguridad del servidor aún lo contienen todo, { $days } día como mucho.
   *[other] Las copias de seguridad del servidor aún lo contienen todo, { $days } días como mucho.
}
sharing-others-have = Lo que otros ya tienen no se puede recuperar: lo que un coach anotó o guardó, lo que entró en normas o en un estudio.
sharing-phones = Los teléfonos sin conexión guardan sus notas sin enviar. Este servidor las rechaza. En un teléfono así, abre la página de tus hogares: las ofrece como archivo. Solo después borra allí los datos del sitio, que se las lleva.
sharing-leave-now = Después: irse
sharing-no-way-back = Aquí no hay vuelta atrás. Mira antes el archivo: ¿se abre?
sharing-type-name = Escribe el nombre del hogar: { $name }
sharing-leave-button = Irse y borrar
sharing-gone-title = El hogar se ha ido
sharing-gone = «{ $name }» ha dejado este servidor y aquí todo está borrado.
sharing-gone-not-yet = «{ $name }» ha dejado este servidor: ya nadie puede abrirlo. Su registro no se pudo borrar ahora. El servidor lo intenta de nuevo por sí mismo en menos de una hora; quien lo lleva puede hacerlo al momento.
sharing-to-homes = A tus hogares
sharing-anew = Invitaciones desde el servidor
sharing-anew-by = { $by }, que lleva el servidor, invitó a alguien a llevar este hogar el { $at }.
sharing-anew-taken = { $who } entró así el { $at }.
sharing-anew-refused = { $who } lo rechazó el { $at }. Nadie entró así.
sharing-anew-open = Desde { $from } quien tenga el enlace entra y lleva el hogar. ¿Nadie de aquí lo pidió? Entonces recházalo.
sharing-anew-over = Caducó. Nadie entró así.
sharing-anew-refuse = Rechazarlo
sharing-words-number = Versión { $number } de estas palabras
sharing-words-of = { $what } (versión { $number } de las palabras)
sharing-words-since = Aceptaste la versión { $number }, que decía con menos exactitud lo que se ve o se da:
sharing-words-newer = Desde entonces las palabras son más exactas. Léelas en «Dar o retirar».
sharing-you-see = Tú ves aquí: { $what }.
sharing-you-see-nothing = Ahora no ves ninguna página de lo que otros escribieron aquí.
sharing-seen-by-home = Lo que escribes aquí lo ven quienes llevan este hogar y sus miembros, y los coaches en lo que el hogar ha consentido.
sharing-looks-of-you = Tus miradas se anotan para quienes llevan el hogar: qué página y cuándo. Ven tu nombre.
sharing-account-seen = Tu nombre lo ven los hogares y clubes donde tienes un papel. Tu correo, tus llaves de acceso y tus sesiones solo están en la página de tu cuenta.
sharing-page = { $page ->
    [calendar] el calendario, leído por su dirección
    [desk] la mesa, junto a otros hogares
    [today] Hoy
    [board] el Tablero
    [likes] Gustos
    [words] Palabras
    [evidence] Pruebas
    [days] Días
    [patterns] Patrones
    [others] Otros
    [designs] ensayos de un cambio
    [swaps] cambios de sitio
    [checks] comprobaciones
    [heard] lo que se oyó
    [log] el Registro
    [agreement] acuerdo entre dos que puntúan
    [ideas] ideas de premios
    [talk] lo acordado
    [sheets] hojas para imprimir
    [media] imágenes y grabaciones
    [figures] cifras para programas
    [scored] lo que anotaron
   *[other] otra página
}
sharing-copy = Copiar el enlace
sharing-copied = Copiado
sharing-send = Enviarlo
sharing-new-person = O el nombre de alguien nuevo
sharing-new-person-hint = Para quien aún no tiene ficha aquí: se crea con la invitación.
sharing-roles-later = A quienes cuidan unos días u observan se les puede invitar cuando el hogar esté preparado.
sharing-given-until = { $what }: desde { $at }, hasta { $until }
sharing-given-for = { $what }: dado { $at }, solo desde { $from } hasta { $until }
sharing-restored = Este servidor se recuperó de una copia el { $at }. Con ello terminaron todos los consentimientos, para que no se abra ninguno que habías retirado. Da de nuevo lo que quieras y mira si todas las personas de abajo siguen siendo de aquí.
sharing-ended-by-restore = { $what }: dado { $at }; terminó al recuperarse el servidor de una copia, hasta que lo des de nuevo
sharing-leave-for-all = También lleva este hogar: { $names }. Irte lo termina para todos, y nadie les pregunta. Habladlo antes.
sharing-person-taken = ya es de alguien, y no se sabría quién escribió qué: elige a otra persona o escribe el nombre de alguien nuevo
sharing-name-is-there = «{ $name }» ya tiene ficha aquí: elígela arriba si es esa persona, o escribe un nombre que distinga a las dos
sharing-last-is-over = ya pasó: elige hoy o un día posterior
sharing-look-left = { $times ->
    [one] alguien que se fue ({ $role }): { $what }, { $times } vez
   *[other] alguien que se fue ({ $role }): { $what }, { $times } veces
}
sharing-stays-accounts = Queda { $days ->
    [one] { $days } día
   *[other] { $days } días
}: qué cuentas eran del hogar, para que sus personas lean que se fue.
sharing-stays-notebooks = Queda { $days ->
    [one] { $days } día
   *[other] { $days } días
}: un hash de la clave de cada cuaderno enlazado, para decirle que el hogar se fue. Sin nombre ni cuenta.
sharing-end-all = Terminar todo lo compartido
sharing-end-all-what = Esto retira de una vez todos los consentimientos. Desde entonces no vale ninguno de estos:
sharing-end-all-now = Terminarlo todo ahora
sharing-name-and-person = está junto a una persona elegida arriba: deja vacío uno de los dos
sharing-weekdays-none = no incluyen ningún día entre el primero y el último: marca uno que caiga en medio
sharing-last-too-far = está a más de un año del primero: elige { $day } o un día anterior, e invita de nuevo después
sharing-news-anew = { $by }, que lleva el servidor, invitó a alguien a llevar este hogar. Desde { $from } quien tenga ese enlace entra y lleva el hogar.
sharing-news-look = Míralo, y recházalo si nadie de aquí lo pidió
sharing-news-anew-short = Se invitó a alguien a llevar este hogar: míralo
sharing-news-restored = Este servidor se recuperó de una copia el { $at }, y con ello terminó todo consentimiento. Quien te acompaña como coach no ve nada de este hogar hasta que lo des de nuevo.
sharing-news-give = Mira qué terminó y da de nuevo lo que quieras
sharing-agree-newer = Aceptar estas palabras en lugar de las anteriores
