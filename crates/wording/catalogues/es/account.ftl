# The page of one’s own account.
account-title = Tu cuenta
account-no-way-back = Aún no tienes cómo volver a entrar. Añade una llave de acceso, una dirección de correo o códigos de recuperación.
account-you = Tú
account-language-hint = de esta página y de las cartas; las páginas de un hogar siguen tu tarjeta allí
account-passkeys = Llaves de acceso
account-passkeys-what = Una llave de acceso te deja entrar con el dedo, la cara o el PIN. Ten una en cada dispositivo, o una que compartan.
account-times = Desde { $since }. Último uso: { $used }.
account-unused = Desde { $since }. Aún sin usar.
account-forget = Olvidarla
account-passkey-name = Nombre de la llave de acceso
account-passkey-name-hint = si quieres; si no, el tipo de dispositivo
account-add-passkey = Añadir una llave de acceso
account-cancelled = No se creó ninguna llave de acceso. Prueba de nuevo cuando quieras.
account-failed = Este dispositivo no pudo crear una llave de acceso.
account-known = Este dispositivo ya tiene una llave de acceso de esta cuenta.
account-email-none = Aún no hay dirección. Con una, un enlace por correo te deja entrar donde no tengas llave de acceso.
account-email-is = Los enlaces para entrar van a { $email }.
account-prove = Enviar una carta para probarla
account-forget-email = Olvidar la dirección
account-proof-sent = Una carta está en camino a { $email }. Abre su enlace antes de { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
}, en un navegador con la sesión iniciada aquí.
account-prove-title = ¿Es tuya esta dirección?
account-prove-what = Una vez probada, los enlaces para entrar en tu cuenta pueden ir a ella.
account-prove-yes = Sí, es mía
account-prove-signed-out = Primero inicia sesión aquí. Después abre otra vez el enlace de la carta.
account-email-taken = Otra cuenta tiene esta dirección.
account-codes = Códigos de recuperación
account-codes-what = Para el día en que se pierdan todas las llaves de acceso. Imprímelos y guárdalos en un sitio seguro.
account-codes-left = { $count ->
    [0] No tienes ninguno.
    [1] Queda uno.
   *[other] Quedan { $count }.
}
account-codes-make = Crear códigos nuevos
account-codes-old = Los anteriores dejan entonces de valer.
account-codes-once = Se muestran solo esta vez. Cada uno te deja entrar una vez.
account-codes-done = Los tengo
account-sessions = Dónde tienes la sesión iniciada
account-zone = Las horas son las de { $zone }.
account-end-others = Cerrar sesión en los demás
account-roles = Tus papeles
account-role = { $role ->
    [keeper] Llevas { $place }
    [member] Miembro de { $place }
    [sitter] Cuidas por días en { $place }
    [observer] Observas en { $place }
    [coach] Coach en { $place }
    [club_keeper] Llevas el club { $place }
   *[server_keeper] Llevas el servidor
}
account-new-home = un hogar aún sin nombre
account-no-role = No tienes ningún papel aquí. Una invitación te da uno.
account-leave = Dejarlo
account-leave-what = Dejas de verlo al instante. Lo que anotaste se queda allí. Solo una invitación te trae de vuelta.
account-leave-button = Dejar este papel
account-last-keeper = Eres la última persona que lo lleva. Haz antes que otra persona lo lleve.
account-erase = Borrar la cuenta
account-erase-what = Tu nombre, dirección, llaves de acceso, códigos, sesiones y papeles desaparecen al instante. No se puede deshacer. Lo que anotaste en los registros de los hogares sigue siendo suyo. Las copias del servidor guardan el resto { $days ->
    [one] un día
   *[other] { $days } días
} más.
account-erase-button = Borrar mi cuenta
account-erase-alone = Nadie más lleva lo que está aquí. Antes de borrar la cuenta, haz que otra persona lleve cada cosa, o vete con ella.
account-erase-other-keeper = Hacer que otra persona lo lleve
account-erased-title = Tu cuenta está borrada
account-erased = La sesión se cerró aquí y en todas partes.
account-sign-out-anyway = Cerrar la sesión de todos modos
account-id = Id de esta cuenta, para quien lleva el servidor: { $id }
account-provider-what = También puedes entrar con { $name }. A este servidor solo le dice quién eres de los suyos.
account-provider-link = Entrar con { $name } desde ahora
account-provider-forget = Ya no entrar con { $name }
account-home-id = Identificador de este hogar: { $id }
account-codes-ids = Si se pierde todo lo demás, quien lleva el servidor puede invitarte de nuevo con uno de estos identificadores:
account-codes-account = Tu cuenta
account-erase-looks = Los hogares siguen leyendo que alguien miró, sin tu nombre: tu papel, la página y el día, durante { $days } días.
account-proof-not-sent-title = La carta no se envió
account-proof-not-sent = Ahora no se pudo enviar ninguna carta a { $email }. Nada ha cambiado. Revisa la dirección y prueba más tarde; si tampoco va, díselo a quien lleva el servidor.
account-news = Novedades por correo
account-news-what = Una carta breve cuando hay algo nuevo: cuántos hogares o cosas, y dónde. Sin nombres, sin cifras, nada de lo que se escribió.
account-news-urgent = Nada urgente llega por correo. Las señales fuertes de estrés están arriba en la mesa del coach y en Hoy, en el hogar.
account-news-no-email = Para esto, prueba primero una dirección de correo.
account-news-every = Con qué frecuencia, como mucho
account-news-never = Nunca
account-news-daily = Una vez al día
account-news-weekly = Una vez por semana, los lunes
account-news-hour = A partir de qué hora
account-news-zone = Dónde vives (fija la hora)
