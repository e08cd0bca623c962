homescreen-description = El cuaderno de un tablero de palabras grabadas.
homescreen-earlier = El cuaderno no responde. Esta página es del { $time } y quizá ya no valga; desde ella no se puede enviar nada. El tablero acepta toques mientras tanto.
