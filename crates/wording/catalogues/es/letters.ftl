# Letters sent by e-mail, in plain text.
letters-sign-in-subject = Tu enlace para iniciar sesión
letters-sign-in =
    Con este enlace inicias sesión en { $server }:

    { $link }

    Sirve una vez, durante { $minutes ->
        [one] un minuto
       *[other] { $minutes } minutos
    }.

    Si no lo pediste tú, no hagas nada. Sin esta carta nadie entra.
letters-prove-subject = ¿Es tuya esta dirección?
letters-prove =
    Alguien en { $server } dice que esta es su dirección. Abre este enlace donde tengas la sesión iniciada:

    { $link }

    Sirve una vez, durante { $minutes ->
        [one] un minuto
       *[other] { $minutes } minutos
    }.

    Si no fuiste tú, no hagas nada. La dirección no se acepta entonces.
letters-rescue-subject = Invitaron a alguien a llevar tu hogar
letters-rescue = 
    { $by }, que lleva { $server }, invitó a alguien a llevar tu hogar: se dijo que ya nadie podía entrar.

    Desde { $from } (UTC) entra quien tenga ese enlace. Si nadie de tu hogar lo pidió, recházalo aquí:

    { $link }
letters-tidings-subject = Algo nuevo en { $server }
letters-tidings-homes = { $homes ->
    [one] Un hogar tiene algo nuevo para ti:
   *[other] { $homes } hogares tienen algo nuevo para ti:
}

    { $link }
letters-tidings-things = { $things ->
    [one] Tu coach te envió una cosa:
   *[other] Tu coach te envió { $things } cosas:
}

    { $link }
letters-tidings-why =
    Qué es está allí y no aquí, porque otras personas pueden leer el correo.

    Recibes esta carta porque la elegiste en tu cuenta de { $server }: como mucho { $every ->
        [day] una vez al día
       *[week] una vez por semana
    }, y solo cuando hay algo nuevo. Las señales fuertes de estrés nunca se cuentan por correo.

    No recibir más cartas de estas, sin iniciar sesión:

    { $link }
letters-stop = No más cartas sobre lo nuevo
letters-stop-what = Ya no recibirás estas cartas. Los enlaces para iniciar sesión siguen llegando cuando los pidas.
letters-stopped-title = No más cartas de estas
letters-stopped = Hecho. Si las quieres otra vez, elígelo en tu cuenta.
letters-stop-unknown = Este enlace no detiene ninguna carta: es demasiado antiguo o se copió a medias. También puedes detenerlas en tu cuenta.
