# On a server of many homes: what stands in the way.
host-not-signed-in = Primero inicia sesión.
host-not-fresh = Para esto hace falta iniciar sesión de nuevo: muestra otra vez que eres tú.
host-not-by-role = Tu papel aquí no llega hasta ahí. Pregunta a quien lleva el hogar.
host-not-today = Hoy no es uno de los días acordados contigo.
host-not-your-name = Esto nombra otra cuenta que la tuya.
host-not-valid = Este enlace o código no vale, o ya no. Pide uno nuevo.
host-last-keeper = Antes otra persona tiene que llevarlo.
host-taken = Esto ya está ocupado.
host-left = Este hogar ha dejado el servidor. No se vuelve a aceptar nada suyo.
host-public-url = La dirección pública { $url } tiene que empezar por https:// o ser http://localhost: las llaves de acceso lo necesitan.
host-cannot-open = No se puede abrir la base de datos: { $why }
host-no-mail = No se puede enviar correo: { $why }
host-part = Este papel no se puede tener así: quien cuida por días necesita días y una persona del hogar; quien observa, una persona.
host-email = Esto no es una dirección de correo.
host-away = La base de datos del servidor no responde ahora. Prueba de nuevo en un momento.
host-other-name = Este servidor solo se abre en { $url }.
