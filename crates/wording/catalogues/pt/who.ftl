who-title = Quem é você?
who-intro = Tudo o que for anotado neste aparelho fica no seu nome. Você pode mudar isso a qualquer momento.
who-now = (agora)
who-not-listed = Não está na lista? { $link }
who-add = Adicionar uma pessoa
who-new = { $name }, ainda fora da lista
