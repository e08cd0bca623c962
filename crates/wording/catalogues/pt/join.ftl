# What stands behind an invitation.
join-title = Você tem um convite
join-to = { $kind ->
    [home] Para a casa “{ $place }”.
    [lost_home] Para a casa com o identificador { $place }, para cuidar dela.
    [new_home] Para uma casa nova neste servidor.
    [club] Para o clube “{ $place }”.
   *[server] Para este servidor: { $place }.
}
join-part = { $role ->
    [keeper] Para cuidar da casa: você vê e faz tudo aqui. Também convida pessoas, decide o que se compartilha e pode levar a casa embora.
    [member] Como membro: você anota o que acontece e vê todos os números.
    [sitter] Para cuidar por dias: nos dias combinados você anota o que acontece. Vê Hoje e as regras da casa.
    [observer] Para observar: você pontua o que vê, sem ver o que outros pontuaram.
    [coach] Como coach: você vê o que as casas decidem compartilhar, nada mais.
    [club_keeper] Para cuidar do clube: você convida pessoas e vê quem faz parte.
   *[server_keeper] Para cuidar do servidor: você abre casas e clubes. Com isso não vê dados de nenhuma casa.
}
join-days = Dias combinados: { $weekdays }, de { $first } a { $last }.
join-until = O convite vale até { $when }, e uma vez.
join-signed-in = Você entrou como { $name }.
join-join = Participar
join-have-account = Já tem uma conta aqui? { $link }
join-sign-in-first = Entre primeiro
join-gone-title = Este convite não vale
join-gone = Já foi aceito, é antigo demais ou o link não está inteiro. Você já entrou? Então entre na sua conta. Se não, peça outro a quem convidou.
join-taken-title = Nada para aceitar
join-taken = Você já tem um papel aqui, ou alguém chegou antes. Pergunte a quem convidou você.
join-welcome = Boas-vindas, { $name }
join-passkey = Da próxima vez, entre com o dedo, o rosto ou o PIN. O seu aparelho guarda para isso uma chave de acesso: sem senha.
join-make-passkey = Criar uma chave de acesso
join-later = Depois
join-way-back = Depois de sair, você volta com uma chave de acesso, um link por e-mail ou um código de recuperação. Os três estão em { $account }.
join-not-yet = Ele deixa você entrar a partir de { $from }. Até lá, quem ainda está na casa pode recusar.
join-yours-title = Você já está dentro
join-yours = Você mesmo aceitou este convite. Ele serve uma vez; a partir de agora você entra na sua conta.
join-yours-go = Continuar
join-you-hint = { $kind ->
    [home] como chamam você em casa
    [new_home] como chamam você em casa
    [lost_home] como chamam você em casa
   *[other] como os outros vão ver você aqui
}
join-as-whom = Lá você anota como “{ $name }”.
join-not-you = Não é { $name }? Sair
join-kept = Este link era para a primeira pessoa a cuidar daqui, e alguém chegou antes. É você? Então entre. Se não, peça um convite a quem cuida.
