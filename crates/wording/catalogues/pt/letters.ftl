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
letters-tidings-subject = Algo novo em { $server }
letters-tidings-homes = { $homes ->
    [one] { $homes } casa tem algo novo para você:
   *[other] { $homes } casas têm algo novo para você:
}

    { $link }
letters-tidings-things = { $things ->
    [one] Seu coach enviou a você { $things } coisa:
   *[other] Seu coach enviou a você { $things } coisas:
}

    { $link }
letters-tidings-why =
    O que é está lá e não aqui, porque outras pessoas podem ler e-mails.

    Você recebe esta carta porque a escolheu na sua conta em { $server }: no máximo { $every ->
        [day] uma vez por dia
       *[week] uma vez por semana
    }, e só quando há algo novo. Sinais fortes de estresse nunca são contados por e-mail.

    Não receber mais estas cartas, sem entrar:

    { $link }
letters-stop = Chega de cartas sobre novidades
letters-stop-what = Você não recebe mais estas cartas. Links para entrar ainda chegam quando você pede.
letters-stopped-title = Chega destas cartas
letters-stopped = Feito. Se quiser recebê-las de novo, escolha isso na sua conta.
letters-stop-unknown = Este link não para carta nenhuma: é antigo demais ou foi copiado pela metade. Na sua conta você também pode pará-las.
