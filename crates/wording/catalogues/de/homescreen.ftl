homescreen-description = Das Notizbuch zu einem Brett mit aufgenommenen Wörtern.
homescreen-earlier = Das Notizbuch antwortet nicht. Diese Seite ist vom { $time } und gilt vielleicht nicht mehr; von ihr lässt sich nichts senden. Das Brett nimmt inzwischen Eingaben an.
