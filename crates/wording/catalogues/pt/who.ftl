who-title = Quem és?
who-intro = Tudo o que se anotar neste aparelho fica em teu nome. Pode mudar-se a qualquer momento.
who-now = (agora)
who-not-listed = Não estás na lista? { $link }
who-add = Adicionar uma pessoa
