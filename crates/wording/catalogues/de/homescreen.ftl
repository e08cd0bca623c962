homescreen-description = Das Notizbuch zu einem Brett mit aufgenommenen Wörtern.
homescreen-earlier = Das Notizbuch antwortet nicht. Diese Seite ist vom { $time } und gilt vielleicht nicht mehr; von ihr lässt sich nichts senden. Das Brett nimmt inzwischen Eingaben an.
homescreen-no-answer = Keine Antwort vom Notizbuch
homescreen-not-this-page = Diese Seite braucht das Notizbuch und kommt, sobald es antwortet.
homescreen-what-works = Inzwischen nimmt das Brett Eingaben an; sie bleiben hier und werden später gesendet. Heute lässt sich lesen, wie es zuletzt war.
homescreen-none-kept = Beide wurden auf diesem Gerät noch nicht geöffnet und lassen sich jetzt nicht zeigen.
homescreen-try-again = Noch einmal versuchen
homescreen-read-lessons = Die Lektionen lesen
