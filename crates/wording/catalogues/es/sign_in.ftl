# Signing in on a server of many homes.
sign-in-title = Iniciar sesión
sign-in-again-title = Muestra que eres tú
sign-in-again = Lo que sigue no debe caer en malas manos. Inicia sesión otra vez.
sign-in-passkey = Entrar con una llave de acceso
sign-in-passkey-hint = Tu dispositivo te pide el dedo, la cara o el PIN.
sign-in-cancelled = No se usó ninguna llave de acceso. Prueba de nuevo o entra de otra manera.
sign-in-failed = Este dispositivo no pudo usar una llave de acceso. Entra de otra manera.
sign-in-by-mail = Por correo
sign-in-email = Dirección de correo
sign-in-email-hint = la de la página de tu cuenta
sign-in-send-link = Enviar un enlace
sign-in-send-link-to = Enviar un enlace a { $email }
sign-in-sent-title = Mira tu correo
sign-in-sent = Si una cuenta de aquí tiene la dirección { $email }, una carta con un enlace está en camino. Sirve una vez, durante { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
}.
sign-in-nothing-came = ¿No llegó nada? Revisa la dirección y mira entre el correo no deseado.
sign-in-another-address = Otra dirección
sign-in-by-code = Con un código de recuperación
sign-in-code = Código de recuperación
sign-in-code-hint = 32 letras y cifras de tu lista impresa; cada uno sirve una vez
sign-in-wrong-code = no vale: desconocido o ya usado
sign-in-no-account = ¿Aún no tienes cuenta? Abre el enlace de una invitación o escanea su código.
sign-in-no-script = Las llaves de acceso necesitan JavaScript. Un enlace o un código funciona sin él.
sign-in-here-title = ¿Iniciar sesión en este dispositivo?
sign-in-here = Sigue solo si tú has pedido esta carta.
sign-in-gone-title = Este enlace no vale
sign-in-gone = Ya se usó, es demasiado antiguo o no está entero.
sign-in-new-link = Pedir uno nuevo
sign-in-provider = Entrar con { $name }
sign-in-provider-away = { $name } no responde ahora. Entra de otra manera o prueba más tarde.
sign-in-provider-refused = { $name } no te dejó entrar. Prueba de nuevo o entra de otra manera.
sign-in-provider-lost = Este inicio de sesión no se puede terminar: empezó en otro navegador, es demasiado antiguo o ya terminó. Empieza otra vez.
sign-in-provider-unknown = Ninguna cuenta de aquí está unida a tu inicio de sesión en { $name }. Entra de otra manera y únelo en la página de tu cuenta. ¿Aún no tienes cuenta? Abre el enlace de tu invitación.
sign-in-provider-not-fresh = { $name } no dijo que acabas de demostrar quién eres. Muéstralo de otra manera.
sign-in-provider-taken = No se unió nada: este inicio de sesión en { $name } ya es de una cuenta de aquí, o la tuya está unida a otro.
sign-in-none-yet = De momento solo este navegador te deja entrar, así que no hay con qué mostrar que eres tú. En tu cuenta crea una llave de acceso, añade una dirección de correo o crea códigos de recuperación. Después vuelve aquí e inicia sesión con eso.
sign-in-passkey-unknown = Esta llave de acceso no te deja entrar: aquí ya no se conoce, o se pidió hace demasiado tiempo. Inténtalo otra vez o entra de otro modo.
sign-in-not-kept = Lo que enviaste no se guardó. Demuestra que eres tú y envíalo otra vez.
