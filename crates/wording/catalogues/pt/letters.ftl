# Letters sent by e-mail, in plain text.
letters-sign-in-subject = O seu link para entrar
letters-sign-in =
    Com este link você entra em { $server }:

    { $link }

    Ele serve uma vez, durante { $minutes ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    }.

    Se não foi você quem pediu, não faça nada. Sem esta carta ninguém entra.
letters-prove-subject = Este endereço é seu?
letters-prove =
    Alguém em { $server } diz que este endereço é seu. Abra este link onde você entrou:

    { $link }

    Ele serve uma vez, durante { $minutes ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    }.

    Se não foi você, não faça nada. O endereço então não é aceito.
letters-rescue-subject = Convidaram alguém para cuidar da sua casa
letters-rescue = 
    { $by }, que cuida de { $server }, convidou alguém para cuidar da sua casa: disseram que ninguém mais conseguia entrar.

    A partir de { $from } (UTC), quem tiver esse link entra. Se ninguém da sua casa pediu, recuse aqui:

    { $link }
