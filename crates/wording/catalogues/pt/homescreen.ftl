homescreen-description = O caderno de um quadro de palavras gravadas.
homescreen-earlier = O caderno não responde. Esta página é de { $time } e talvez não valha mais; nada pode ser enviado dela. O quadro aceita toques enquanto isso.
