homescreen-description = O caderno de um quadro de palavras gravadas.
homescreen-earlier = O caderno não responde. Esta página é de { $time } e talvez não valha mais; nada pode ser enviado dela. O quadro aceita toques enquanto isso.
homescreen-no-answer = Sem resposta do caderno
homescreen-not-this-page = Esta página precisa do caderno e vem assim que ele responder.
homescreen-what-works = Enquanto isso o Quadro recebe toques; eles ficam aqui e são enviados depois. Hoje pode ser lido como estava por último.
homescreen-none-kept = Nenhuma das duas foi aberta neste aparelho antes, por isso não podem ser mostradas agora.
homescreen-try-again = Tentar de novo
homescreen-read-lessons = Ler as lições
