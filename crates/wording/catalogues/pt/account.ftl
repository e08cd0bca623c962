# The page of one’s own account.
account-title = A sua conta
account-no-way-back = Você ainda não tem como voltar a entrar. Adicione uma chave de acesso, um endereço de e-mail ou códigos de recuperação.
account-you = Você
account-language-hint = desta página e das cartas; as páginas de uma casa seguem a sua ficha lá
account-passkeys = Chaves de acesso
account-passkeys-what = Uma chave de acesso deixa você entrar com o dedo, o rosto ou o PIN. Tenha uma em cada aparelho, ou uma que eles compartilhem.
account-times = Desde { $since }. Último uso: { $used }.
account-unused = Desde { $since }. Ainda sem uso.
account-forget = Esquecer
account-passkey-name = Nome da chave de acesso
account-passkey-name-hint = se quiser; senão, o tipo de aparelho
account-add-passkey = Adicionar uma chave de acesso
account-cancelled = Nenhuma chave de acesso foi criada. Tente de novo quando quiser.
account-failed = Este aparelho não conseguiu criar uma chave de acesso.
account-known = Este aparelho já tem uma chave de acesso desta conta.
account-email-none = Ainda sem endereço. Com um, um link por e-mail deixa você entrar onde não tem chave de acesso.
account-email-is = Os links para entrar vão para { $email }.
account-prove = Enviar uma carta para comprovar
account-forget-email = Esquecer o endereço
account-proof-sent = Uma carta está a caminho de { $email }. Abra o link dela em até { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}, em um navegador que entrou aqui.
account-prove-title = Este endereço é seu?
account-prove-what = Comprovado, ele pode receber os links para entrar na sua conta.
account-prove-yes = Sim, é meu
account-prove-signed-out = Entre aqui primeiro. Depois abra mais uma vez o link da carta.
account-email-taken = Outra conta tem este endereço.
account-codes = Códigos de recuperação
account-codes-what = Para o dia em que todas as chaves de acesso se perderem. Imprima e guarde em lugar seguro.
account-codes-left = { $count ->
    [0] Você não tem nenhum.
    [1] Resta um.
   *[other] Restam { $count }.
}
account-codes-make = Fazer códigos novos
account-codes-old = Os anteriores deixam então de valer.
account-codes-once = São mostrados só desta vez. Cada um deixa você entrar uma vez.
account-codes-done = Já guardei
account-sessions = Onde você entrou
account-zone = Os horários são os de { $zone }.
account-end-others = Sair de todos os outros
account-roles = Os seus papéis
account-role = { $role ->
    [keeper] Você cuida de { $place }
    [member] Membro de { $place }
    [sitter] Você cuida por dias em { $place }
    [observer] Você observa em { $place }
    [coach] Coach em { $place }
    [club_keeper] Você cuida do clube { $place }
   *[server_keeper] Você cuida do servidor
}
account-new-home = uma casa ainda sem nome
account-no-role = Você não tem papel aqui. Um convite dá um a você.
account-leave = Deixar
account-leave-what = Você deixa de ver na hora. O que você anotou fica lá. Só um convite traz você de volta.
account-leave-button = Deixar este papel
account-last-keeper = Só você cuida disso. Antes, faça outra pessoa cuidar.
account-erase = Apagar a conta
account-erase-what = O seu nome, endereço, chaves de acesso, códigos, sessões e papéis somem na hora. Não dá para desfazer. O que você anotou nos registros das casas continua sendo delas. As cópias do servidor guardam o resto por mais { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}.
account-erase-button = Apagar a minha conta
account-erase-alone = Só você cuida do que está aqui. Antes de a conta ir, faça outra pessoa cuidar de cada um, ou saia com ele.
account-erase-other-keeper = Fazer outra pessoa cuidar
account-erased-title = A sua conta foi apagada
account-erased = Você saiu daqui e de todo lugar.
account-sign-out-anyway = Sair mesmo assim
account-id = Id desta conta, para quem cuida do servidor: { $id }
account-provider-what = Você também pode entrar com { $name }. Ele diz a este servidor só quem você é entre os seus.
account-provider-link = Entrar com { $name } de agora em diante
account-provider-forget = Não entrar mais com { $name }
account-home-id = Identificador desta casa: { $id }
account-codes-ids = Se todo o resto se perder, quem cuida do servidor pode convidar você de novo por um destes identificadores:
account-codes-account = Sua conta
account-erase-looks = As casas continuam lendo que alguém olhou, sem o seu nome: o seu papel, a página e o dia, por { $days } dias.
account-proof-not-sent-title = A carta não foi enviada
account-proof-not-sent = Não foi possível enviar uma carta a { $email } agora. Nada mudou. Confira o endereço e tente mais tarde; se também não der, avise quem cuida do servidor.
account-news = Novidades por e-mail
account-news-what = Uma carta curta quando há algo novo: quantas casas ou coisas, e onde. Sem nomes, sem números da casa, nada do que foi escrito.
account-news-urgent = Nada urgente chega por e-mail. Sinais fortes de estresse ficam no topo da mesa do coach e em Hoje, na casa.
account-news-no-email = Para isso, comprove primeiro um endereço de e-mail.
account-news-every = Com que frequência, no máximo
account-news-never = Nunca
account-news-daily = Uma vez por dia
account-news-weekly = Uma vez por semana, às segundas-feiras
account-news-hour = A partir de que horas
account-news-zone = Onde você mora (define a hora)
