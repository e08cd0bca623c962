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
