# What one scored oneself, and what there is to score.
scored-title = Lo que anotaste tú
scored-intro = Respuestas de pruebas de gustos y comprobaciones que anotaste tú. Lo que anotaron otros no está aquí, ni lo que habría sido correcto.
scored-none = Todavía nada.
scored-likes = Pruebas de gustos
scored-to-score = Por anotar ahora
scored-back = Al Tablero
