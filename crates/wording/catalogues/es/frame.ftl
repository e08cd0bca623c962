frame-today = Hoy
frame-board = Tablero
frame-likes = Gustos
frame-words = Palabras
frame-evidence = Pruebas
frame-days = Días
frame-log = Registro
frame-people = Personas
frame-sheets = Hojas
frame-learn = Aprender
frame-desk = Mesa
frame-more = Más
frame-pages = Páginas
frame-to-content = Al contenido
frame-home = Hogar:
frame-which-animal = Qué animal:
frame-animals = Animales
frame-i-am = Soy { $name }
frame-who-are-you = ¿Quién eres?
frame-not-understood = { $count ->
        [one] Un registro de aquí no se entiende
       *[other] { $count } registros de aquí no se entienden
    } ({ $kinds }): los escribió una versión posterior de este programa. Se conservan, pero ninguna página los muestra ni los cuenta. Actualiza este programa.
frame-methods = Cómo se calcula
frame-who-sees = Quién puede ver esto
frame-account = { $name }: cuenta
frame-sign-out = Cerrar sesión
frame-you = Tú
frame-offline-out = No hay red, así que aquí sigues con la sesión iniciada. Prueba otra vez donde la haya.
frame-unsent = No se ha guardado: el cuaderno no responde. Lo que has escrito sigue aquí. Prueba otra vez cuando vuelva.
frame-unchecked = Un hablante nativo aún no ha revisado esta traducción.
