sharing-role = { $role ->
    [keeper] cuida da casa
    [member] é da casa
    [sitter] cuida por dias
    [observer] observa
    [coach] coach
    [club_keeper] cuida do clube
   *[other] cuida do servidor
}
sharing-role-can = { $role ->
    [keeper] vê e escreve tudo, convida, dá consentimento e pode sair com a casa
    [member] vê e escreve tudo sobre os animais; não muda papéis nem consentimento
    [sitter] nos dias combinados: vê Hoje e as regras da casa, e escreve no quadro
    [observer] escreve no quadro e pontua testes sem ver o que outros pontuaram
   *[other] veja a página de papéis
}
sharing-shows = { $what ->
    [see_today] Hoje
    [see_rules] as regras da casa
    [see_figures] os números
    [see_log] o registro, nota por nota
    [hear_snippets] os sons guardados dos apertos
    [advise] a página Combinado, também para escrever
    [export] o registro inteiro como arquivo
    [record] o Quadro, para anotar nele
   *[other] algo que esta versão não sabe nomear
}
sharing-days-every = todos os dias de { $first } a { $last }
sharing-days-some = de { $first } a { $last }: { $weekdays }
sharing-qr = O link em código QR
sharing-shown-once = { $count ->
    [1] Este link só aparece agora. Envie, ou deixe o outro celular ler o código.
   *[other] Estes links só aparecem agora. Envie cada um, ou deixe o outro celular ler o código dele.
}
sharing-holds = Vale até { $until }, uma vez.
sharing-whoever = Quem abrir primeiro recebe o papel. Até lá você pode retirá-lo.
sharing-leaving = Sair
sharing-leaving-short = Leve tudo como arquivo; depois tudo é apagado aqui.
sharing-leave = Sair deste servidor
sharing-who-intro = Estas pessoas podem ver algo da sua casa neste momento.
sharing-sees-nothing = não vê agora nenhuma página do que outros escreveram
sharing-sees = vê { $what }
sharing-nobody-else = Mais ninguém vê nada aqui.
sharing-keepers-see = Quem cuida do servidor não vê nada disso pelo seu papel; quem tem a máquina ou as cópias dela em mãos pode ler o que está guardado.
sharing-coach-of = coach, { $clubs }
sharing-as-person = { $role }, como { $name }
sharing-looked = Quem olhou
sharing-looked-how = São anotados os olhares de coaches, de quem cuida por dias e de quem observa. O que alguém abre de novo em um quarto de hora, ou o que fica aberto, é um só olhar. Os da casa não são anotados: quem mora junto não se vigia aqui.
sharing-looked-none = Ninguém olhou ainda.
sharing-between = { $from } a { $to }
sharing-look = { $times ->
    [one] { $when }: { $who }, { $what }, { $times } vez
   *[other] { $when }: { $who }, { $what }, { $times } vezes
}
sharing-people = Quem faz parte
sharing-you = (você)
sharing-change-of = Mudar o papel de { $name }
sharing-change = Mudar
sharing-invite = Convidar alguém
sharing-open-invitations = Convites abertos
sharing-end-invitation = Retirar
sharing-consent = Consentimento
sharing-consent-none = Nada é compartilhado com alguém fora da casa.
sharing-consent-change = Dar ou retirar
sharing-consent-before = Dado antes
sharing-given = { $what }: desde { $at }
sharing-taken-back = { $what }: dado { $at }, retirado { $ended }
sharing-opens-nothing = { $what }: dado { $at }, mas não neste servidor por quem cuida da casa; não abre nada
sharing-purpose = { $purpose ->
    [coach_figures] { $who }: vê números
    [coach_log] { $who }: lê o registro
    [coach_snippets] { $who }: ouve sons de apertos
    [norms] os números contam nas normas deste servidor
   *[other] os registros podem ir para estudos
}
sharing-nameless = { $kind ->
    [club] um clube que não está mais aqui
   *[other] um coach que não está mais aqui
}
sharing-back = Voltar a quem pode ver isto
sharing-invitation = Convite
sharing-role-missing = falta: escolha um
sharing-person-missing = falta: quem cuida por dias ou observa escreve com um nome próprio da casa
sharing-day-missing = falta: escolha um dia
sharing-weekdays-missing = faltam: escolha pelo menos um
sharing-last-before-first = é antes do primeiro: escolha o mesmo dia ou um depois
sharing-invite-intro = Você recebe um link que vale alguns dias e funciona uma vez.
sharing-make-link = Fazer o link
sharing-no-person = nenhuma pessoa da casa
sharing-as-role = Papel
sharing-which-person = Qual pessoa da casa
sharing-which-person-hint = Necessário para quem cuida por alguns dias ou observa.
sharing-sitter-days = Dias, para quem cuida
sharing-first-day = Primeiro dia
sharing-last-day = Último dia
sharing-on-weekdays = Dias da semana
sharing-role-of = Papel de { $name }
sharing-end-role = Encerrar o papel
sharing-end-role-what = { $name } não vê mais nada da casa a partir daí. O que { $name } escreveu fica no registro.
sharing-end-role-of = Encerrar o papel de { $name }
sharing-consent-intro = Cada finalidade é pedida em separado. Todas estão desligadas até você dar, e você pode retirar cada uma a qualquer momento.
sharing-with-coaches = Coaches e clubes
sharing-with-how = Peça ao seu coach o link ou código da página do clube. Abrir não compartilha nada: antes você é perguntado.
sharing-club-code = Link ou código do clube
sharing-look-at-club = Continuar
sharing-no-code = não é link nem código de um clube: copie inteiro da mensagem do coach
sharing-whole-club = O que você der aqui, cada coach de { $club } tem, agora e depois, enquanto for coach.
sharing-coaches-of = Cada coach de { $club }
sharing-coach-alone = O que você der aqui, só { $name } de { $club } tem, enquanto { $name } for coach.
sharing-not-among = Esta casa não é, ou já não é, uma das suas.
sharing-no-such-club = Não há aqui esse clube ou coach. Peça o link de novo ao seu coach.
sharing-already-seen = Retirar encerra na hora. O que alguém já viu, anotou ou salvou não pode ser recuperado.
sharing-share-with = Compartilhar com: { $who }
sharing-purpose-title = { $purpose ->
    [coach_figures] Números
    [coach_log] O registro
    [coach_snippets] Sons dos apertos
    [norms] Normas
   *[other] Pesquisa
}
sharing-on-since = Ligado desde { $at }
sharing-off = Desligado
sharing-take-back = Retirar
sharing-give = Eu concordo
sharing-unclear = não está claro: abra a página de novo e escolha lá
sharing-new-words = mudaram desde então: abra a página de novo e leia
sharing-other-home = agora é outra: este aparelho mudou em outra aba; abra a página de novo
sharing-not-the-name = não é “{ $name }”: escreva como está aqui
sharing-take-along = Primeiro: leve tudo
sharing-take-along-what = O pacote contém o registro e seus sons. O programa o abre em casa como um caderno inteiro.
sharing-what-happens = O que acontece
sharing-erased = Apagados na hora: o registro, os sons, as fotos, tudo o que foi calculado deles, quem faz parte da casa, convites, consentimentos e quem olhou.
sharing-stays = Fica: uma marca com o número da casa e o dia em que saiu. Ela não tem nomes e impede que celulares antigos a tragam de volta.
sharing-accounts-stay = As contas ficam com suas pessoas. Cada uma pode apagar a sua na página dela.
sharing-backups = { $days ->
    [one] As cópias de segurança do servidor ainda têm tudo, por no máximo { $days } dia.
   *[other] As cópias de segurança do servidor ainda têm tudo, por no máximo { $days } dias.
}
sharing-others-have = O que outros já têm não pode ser recuperado: o que um coach anotou ou salvou, o que entrou em normas ou em um estudo.
sharing-phones = Celulares sem conexão guardam suas notas não enviadas. Este servidor as recusa. Nesse celular, abra a página das suas casas: ela as oferece como arquivo. Só depois apague lá os dados do site, o que as descarta.
sharing-leave-now = Depois: sair
sharing-no-way-back = Aqui não há volta. Veja antes o pacote: ele abre?
sharing-type-name = Escreva o nome da casa: { $name }
sharing-leave-button = Sair e apagar
sharing-gone-title = A casa saiu
sharing-gone = “{ $name }” saiu deste servidor, e aqui tudo dela foi apagado.
sharing-gone-not-yet = “{ $name }” saiu deste servidor: ninguém mais pode abri-la. O registro não pôde ser apagado agora. O servidor tenta de novo sozinho dentro de uma hora; quem cuida dele pode fazer isso já.
sharing-to-homes = Para as suas casas
sharing-anew = Convites a partir do servidor
sharing-anew-by = { $by }, que cuida do servidor, convidou alguém para cuidar desta casa em { $at }.
sharing-anew-taken = { $who } entrou assim em { $at }.
sharing-anew-refused = { $who } recusou em { $at }. Ninguém entrou assim.
sharing-anew-open = A partir de { $from }, quem tiver o link entra e cuida da casa. Ninguém aqui pediu isso? Então recuse.
sharing-anew-over = Venceu. Ninguém entrou assim.
sharing-anew-refuse = Recusar
sharing-words-number = Versão { $number } destas palavras
sharing-words-of = { $what } (versão { $number } das palavras)
sharing-words-since = Você aceitou a versão { $number }, que dizia com menos exatidão o que se vê ou se dá:
sharing-words-newer = Desde então as palavras são mais exatas. Leia-as em “Dar ou retirar”.
sharing-you-see = Você vê aqui: { $what }.
sharing-you-see-nothing = Neste momento você não vê aqui nenhuma página do que outros escreveram.
sharing-seen-by-home = O que você escreve aqui é visto por quem cuida desta casa e pelos membros, e por coaches no que a casa consentiu.
sharing-looks-of-you = Os seus olhares são anotados para quem cuida da casa: que página e quando. Veem o seu nome.
sharing-account-seen = O seu nome é visto pelas casas e clubes em que você tem um papel. O seu e-mail, chaves de acesso e sessões só estão na página da sua conta.
sharing-page = { $page ->
    [calendar] o calendário, lido pelo endereço
    [desk] a mesa, ao lado de outras casas
    [today] Hoje
    [board] o Quadro
    [likes] Gostos
    [words] Palavras
    [evidence] Evidências
    [days] Dias
    [patterns] Padrões
    [others] Outros
    [designs] ensaios de uma mudança
    [swaps] trocas
    [checks] verificações
    [heard] o que foi ouvido
    [log] o Registro
    [agreement] concordância de duas pontuações
    [ideas] ideias de recompensas
    [talk] o que foi combinado
    [sheets] folhas para imprimir
    [media] imagens e gravações
    [figures] números para programas
    [scored] o que anotaram
   *[other] outra página
}
sharing-copy = Copiar o link
sharing-copied = Copiado
sharing-send = Enviar
sharing-new-person = Ou o nome de alguém novo
sharing-new-person-hint = Para quem ainda não tem ficha aqui: ela é criada com o convite.
sharing-roles-later = Quem cuida por alguns dias ou observa pode ser convidado quando a casa estiver preparada.
sharing-given-until = { $what }: desde { $at }, até { $until }
sharing-given-for = { $what }: dado { $at }, só de { $from } até { $until }
sharing-restored = Este servidor foi trazido de volta de um backup em { $at }. Todos os consentimentos terminaram com isso, para que nenhum que você tinha retirado se abra. Dê de novo o que quiser e veja se todas as pessoas abaixo ainda são daqui.
sharing-ended-by-restore = { $what }: dado { $at }; terminou quando o servidor foi trazido de volta de um backup, até você dar de novo
sharing-leave-for-all = Também cuida desta casa: { $names }. Sair acaba com ela para todos, e ninguém lhes pergunta. Conversem antes.
sharing-person-taken = já é de alguém, e não se saberia quem escreveu o quê: escolha outra pessoa ou digite o nome de alguém novo
sharing-name-is-there = “{ $name }” já tem ficha aqui: escolha acima se for essa pessoa, ou digite um nome que distinga as duas
sharing-last-is-over = já passou: escolha hoje ou um dia depois
sharing-look-left = { $times ->
    [one] alguém que saiu ({ $role }): { $what }, { $times } vez
   *[other] alguém que saiu ({ $role }): { $what }, { $times } vezes
}
sharing-stays-accounts = Fica por { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}: quais contas faziam parte, para que suas pessoas leiam que ela saiu.
sharing-stays-notebooks = Fica por { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}: um hash da chave de cada caderno ligado, para que ele saiba que a casa saiu. Sem nome, sem conta.
sharing-end-all = Encerrar todo o compartilhamento
sharing-end-all-what = Isto retira todos os consentimentos de uma vez. A partir daí nenhum destes vale:
sharing-end-all-now = Encerrar tudo agora
sharing-name-and-person = está junto de uma pessoa escolhida acima: deixe um dos dois vazio
sharing-weekdays-none = não incluem nenhum dia entre o primeiro e o último: marque um que caia no meio
sharing-last-too-far = está a mais de um ano do primeiro: escolha { $day } ou um dia antes, e convide de novo depois
sharing-news-anew = { $by }, que cuida do servidor, convidou alguém para cuidar desta casa. A partir de { $from }, quem tiver esse link entra e cuida da casa.
sharing-news-look = Veja, e recuse se ninguém aqui pediu
sharing-news-anew-short = Alguém foi convidado para cuidar desta casa: veja
sharing-news-restored = Este servidor foi trazido de volta de um backup em { $at }, e todo consentimento terminou com isso. Quem acompanha você como coach não vê nada desta casa até que você o dê de novo.
sharing-news-give = Veja o que terminou e dê de novo o que quiser
sharing-agree-newer = Concordar com estas palavras no lugar das anteriores
