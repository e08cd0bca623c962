server-title = O servidor
server-intro = Quantidades e tamanhos, nada do que as casas escrevem.
server-homes = Casas
server-left = Casas que saíram
server-clubs = Clubes
server-accounts = Contas
server-memory = Histórias na memória, este processo
server-megabytes = { $value } MB
server-unfinished = { $count ->
    [one] { $count } casa saiu, mas o registro ainda está aqui.
   *[other] { $count } casas saíram, mas os registros ainda estão aqui.
}
server-sign-in-again = Entrar de novo para mudar algo
server-why-again = O que se faz aqui precisa de uma entrada dos últimos minutos.
server-finish = Apagar agora
server-open-homes = Abrir casas
server-open-homes-what = Cada uma recebe um caderno vazio e um link para a primeira pessoa que cuida dela. Você não vê nada dela.
server-how-many = Quantas, no máximo { $most }
server-how-many-wrong = precisa ser um número inteiro de 1 a { $most }
server-open = Abrir e receber os links
server-waiting = { $count ->
    [one] { $count } casa espera quem cuide dela
   *[other] { $count } casas esperam quem cuide delas
}
server-waiting-what = Um link perdido ou vencido é trocado por um novo. Vale o primeiro usado; os outros deixam de valer.
server-new-link = Link novo
server-members = { $count ->
    [one] { $count } papel
   *[other] { $count } papéis
}
server-club-name = Nome de um clube novo
server-open-club = Abrir o clube
server-keepers = Quem cuida do servidor
server-end-keeper = Encerrar
server-invite-keeper = Convidar mais alguém para cuidar do servidor
server-sessions = Sessões de uma conta
server-sessions-what = Quando uma conta está em mãos erradas: todos os aparelhos dela saem na hora. A pessoa entra de novo.
server-account-id = Identificador da conta, como diz a página dela
server-end-sessions = Encerrar todas as sessões dela
server-links = { $count ->
    [one] { $count } link
   *[other] { $count } links
}
server-stopped = Parado após { $made }: { $why } As de baixo estão abertas.
server-number = Número
server-link = Link para a primeira pessoa
server-until = Vale até
server-back = Voltar ao servidor
server-club-name-missing = falta: dê um nome ao clube
server-account-missing = não é um identificador de conta: copie da página da conta
server-sessions-ended = { $count ->
    [one] { $count } sessão encerrada.
   *[other] { $count } sessões encerradas.
}
server-anew = Uma casa que perdeu a entrada
server-anew-what = Quando quem cuida dela perdeu telefone, e-mail e códigos, convide alguém de novo. Confira bem quem pede: quem usar o link tem a casa.
server-anew-told = A casa fica sabendo quem fez isso e quando. Quem ainda entra pode recusar. Nenhuma conta que cuida do servidor entra por ele.
server-anew-whose = Identificador da casa; ou o identificador ou e-mail de uma conta que cuida dela
server-anew-invite = Convidar quem cuide dela
server-anew-from = Deixa entrar de { $from } até { $until }, uma vez.
server-anew-unknown = não é uma casa daqui de que alguém já cuidou: copie o identificador da página de uma conta ou de códigos impressos
server-anew-several = cuida de várias casas: dê o identificador da casa
server-anew-open = já foi convidada de novo: aquele link ainda vale
server-club-taken = já é o nome de um clube daqui: escolha outro
server-not-by-role = O seu papel aqui não vai tão longe. Fale com quem cuida do servidor.
server-account-unknown = não é uma conta daqui: copie da página da conta
server-utc = { $at } UTC
