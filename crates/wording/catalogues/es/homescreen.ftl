homescreen-description = El cuaderno de un tablero de palabras grabadas.
homescreen-earlier = El cuaderno no responde. Esta página es del { $time } y quizá ya no valga; desde ella no se puede enviar nada. El tablero acepta toques mientras tanto.
homescreen-no-answer = El cuaderno no responde
homescreen-not-this-page = Esta página necesita el cuaderno y llegará cuando responda.
homescreen-what-works = Mientras tanto el Tablero recoge toques; se guardan aquí y se envían después. Hoy se puede leer como estaba la última vez.
homescreen-none-kept = Ninguna de las dos se abrió antes en este dispositivo, así que ahora no se pueden mostrar.
homescreen-try-again = Probar otra vez
homescreen-read-lessons = Leer las lecciones
