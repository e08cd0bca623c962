consent-coach-figures-1 = { $who } ve las cifras de tu hogar: Hoy, Evidencia y las demás páginas que cuentan. Ni el registro, ni quién anotó qué, ni sonidos.
consent-coach-log-1 = { $who } lee tu registro: cada nota, cuándo fue y quién la anotó. Ningún sonido.
consent-coach-snippets-1 = { $who } oye los sonidos cortos guardados de las pulsaciones en tu tablero. En ellos pueden oírse voces de la habitación.
consent-norms-1 = Tus cifras cuentan en los valores de referencia de este servidor: un hogar entre muchos, sin nombres. Si lo retiras, los valores que se calculen después no las cuentan.
consent-research-1 = Tus registros pueden darse a estudios aprobados por un comité de ética, sin nombres y sin sonidos. Si lo retiras, no se dan a ningún estudio más. Lo que un estudio ya tiene no se puede recuperar.
consent-ends-1 = Está apagado hasta que lo actives. Puedes retirarlo en cualquier momento y termina al instante.
consent-coach-figures-2 = { $who } ve las páginas de tu hogar con cifras: Hoy, Gustos, Palabras, Pruebas, Días, Patrones, comprobaciones, ensayos de un cambio y hojas para imprimir. Ahí están tus tarjetas de palabras con lo que escribiste en ellas, tus imágenes, las grabaciones de tus botones, las fechas y quién empezó o puntuó una prueba. No el registro nota por nota, ni sonidos guardados de pulsaciones.
