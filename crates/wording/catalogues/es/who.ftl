who-title = ¿Quién eres?
who-intro = Todo lo que se anote en este dispositivo queda a tu nombre. Se puede cambiar en cualquier momento.
who-now = (ahora)
who-not-listed = ¿No estás en la lista? { $link }
who-add = Añadir una persona
who-new = { $name }, aún sin ficha
