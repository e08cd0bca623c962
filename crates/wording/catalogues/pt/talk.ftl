# What a coach and a home say to each other through the work: plans, notes, questions, answers.
talk-title = Combinado
talk-intro = O que você e seu coach combinam, e como vai.
talk-intro-coach = O que você escreveu a esta casa, e o que resultou.
talk-not-a-vet = Um coach não é veterinário. Em caso de dor, doença, medo ou mordida, fale com um veterinário ou com um profissional qualificado de comportamento.
talk-rest = As sessões com { $name } descansam primeiro. Nada disto é para fazer até que Hoje diga.
talk-none = Ainda não há nada aqui. O que um coach propõe ou pergunta chega aqui e a Hoje.
talk-none-coach = Você ainda não escreveu nada a esta casa.
talk-open = A responder
talk-open-coach = À espera de resposta
talk-now = Combinado agora
talk-before = Antes ({ $count })
talk-from = De { $name }
talk-from-file = Lido de um arquivo: ninguém aqui viu { $name } escrever isto.
talk-plan = Plano até { $day }: { $words }
talk-line = { $way ->
    [show] “{ $word }”: mostrar, { $dose }
    [offer_in_view] “{ $word }”: convidar com a coisa à vista, { $dose }
    [ask_and_point] “{ $word }”: perguntar e apontar, { $dose }
    [ask_between_two] “{ $word }”: perguntar “isto ou aquilo”, { $dose }
   *[any] “{ $word }”: { $dose }
}
talk-dose = { $minutes ->
    [1] { $minutes } minuto
   *[other] { $minutes } minutos
}, { $times ->
    [1] uma vez por dia
    [2] duas vezes por dia
   *[other] { $times } vezes por dia
}
talk-stage = Etapa { $stage } para “{ $word }”
talk-word = Uma palavra nova: “{ $word }”
talk-likes = Um teste de gostos
talk-check = Uma verificação de “{ $word }”
talk-note = Uma nota
talk-note-on = Uma nota sobre { $about }
talk-question = Uma pergunta
talk-practice = Algo para praticar
talk-question-on = Uma pergunta sobre { $about }
talk-about-word = “{ $word }”
talk-about-session = a sessão de { $when }
talk-about-page = a página { $page }
talk-takes-up = Retoma: { $what }
talk-accept = Aceitar
talk-noted = Lido
talk-decline = Recusar
talk-not-any-more = Não mais
talk-answer = Responder
talk-your-answer = Sua resposta
talk-add-words = Acrescentar palavras
talk-most = No máximo { $most } caracteres.
talk-if-you-like = Se quiser. No máximo { $most } caracteres.
talk-reply = { $reply ->
    [accepted] { $who } aceitou, { $when }
    [declined] { $who } recusou, { $when }
    [ended] { $who } encerrou isto, { $when }
   *[said] { $who } respondeu, { $when }
}
talk-goes-on = { $name } continua com isto desde { $day }.
talk-stands-in = { $name } substitui aqui até { $day }.
talk-someone = Alguém da casa
talk-standing = { $standing ->
    [declined] recusado
    [answered] respondido
    [ended] o último dia passou
    [over] terminou sem resposta
   *[withdrawn] retirado
}
talk-since = Desde { $since }. Último dia: { $last }.
talk-kept = { $way ->
    [show] “{ $word }” foi mostrada
    [any] “{ $word }” foi mostrada ou convidada
   *[other] “{ $word }” foi convidada
} em { $on } de { $days ->
    [1] { $days } dia
   *[other] { $days } dias
}, { $times ->
    [1] uma vez
    [2] duas vezes
   *[other] { $times } vezes
}. Combinado: { $dose }.
talk-not-begun = “{ $word }”: ainda não passou nenhum dia. Combinado: { $dose }.
talk-sessions = { $sessions ->
    [1] Em { $sessions } sessão.
   *[other] Em { $sessions } sessões.
}
talk-sessions-timed = { $sessions ->
    [1] Em { $sessions } sessão, { $minutes } min.
   *[other] Em { $sessions } sessões, { $minutes } min no total.
}
talk-no-record = { $days ->
    [1] { $days } dia está sem nenhuma anotação: nada se pode dizer dele.
   *[other] { $days } dias estão sem nenhuma anotação: nada se pode dizer deles.
}
talk-does-it-help = Ajuda?
talk-pressed = “{ $word }”, apertada de convites queridos. Desde então: { $since }. Nos { $days } dias de antes: { $before }.
talk-right = “{ $word }”, certa dos apertos. Desde então: { $since }. Nos { $days } dias de antes: { $before }.
talk-other-causes = Outras coisas também mudam. Se foi o plano, estes números não dizem. Um teste de uma mudança diz mais.
talk-to-trial = Planejar um teste de uma mudança
talk-do-word = Acrescentar a palavra
talk-card = De { $name }: { $what }
talk-agreed-with = Combinado com { $name }: { $what }
talk-card-more = De { $names }: { $count } a responder
talk-now-with = { $to } agora é seu coach, no lugar de { $from }. O que foi combinado continua.
talk-now-covered = { $to } substitui { $from } até { $day }. O que foi combinado continua.
talk-row = Combinado: { $dose }
talk-row-waits = Combinado: { $dose }. Isso espera: o passo daqui vem primeiro.
talk-row-never = Combinado: { $dose }. Não se faz: ninguém espera por uma palavra que encerra sessões.
talk-first-head = O que Hoje diz primeiro, antes de convidar:
talk-first = “{ $word }”: Hoje diz: { $step }. { $why }. Isso vem primeiro; o plano espera.
talk-first-ends = “{ $word }” encerra sessões: é mostrada então, e ninguém espera por ela. Não dá para planejar convidar.
talk-ends-sessions = { $word } (encerra sessões)
talk-write = Escrever a esta casa
talk-write-about = Escrever sobre isto
talk-write-again = Escrever de novo
talk-take-back = Retirar
talk-end = Encerrar isto
talk-write-intro = Uma coisa de cada vez, com o seu nome: { $name }. A casa aceita, recusa ou responde.
talk-which = O quê?
talk-kind = { $kind ->
    [plan] Um plano para alguns dias
    [change] Uma mudança para testar
    [stage] Uma etapa para uma palavra
    [word] Uma palavra a acrescentar
    [likes] Um teste de gostos
    [check] Uma verificação
    [meeting] Um encontro
    [note] Uma nota
    [practice] Algo para praticar
   *[question] Uma pergunta
}
talk-rests = Por um sinal forte, as sessões com { $name } descansam. Até que Hoje libere, nenhuma sessão pode ser proposta. Uma nota ou uma pergunta, sim.
talk-rests-still = não pode ser proposto agora: por um sinal forte, as sessões com { $name } descansam
talk-with = Com { $name }
talk-instead = { $name } em vez disso
talk-something-else = Outra coisa
talk-no-words = { $name } ainda não tem palavras.
talk-line-of = Palavra { $number }
talk-more-lines = Mais palavras
talk-field-word = Palavra
talk-field-way = Como
talk-way = { $way ->
    [show] mostrar
    [offer_in_view] convidar, com a coisa à vista
    [ask_and_point] convidar, perguntar e apontar
    [ask_between_two] convidar, “isto ou aquilo”
   *[any] como couber
}
talk-field-minutes = Minutos
talk-field-times = Vezes por dia
talk-field-last-day = Último dia
talk-field-stage = Etapa
talk-field-says = O que diria
talk-field-about = Sobre
talk-about-all = tudo
talk-field-text = Nas suas palavras
talk-send = Enviar
talk-no-line = falta; escolha ao menos uma palavra
talk-way-of-closing = convida a uma palavra que encerra sessões: ninguém espera por ela; escolha “mostrar” ou “como couber”
talk-stage-of-closing = não é para uma palavra que encerra sessões: ninguém espera por ela; escolha outra etapa
talk-last-day-wrong = precisa ser um dia de hoje até { $last }
talk-no-such = Não há tal proposta aqui.
talk-over = terminou ou foi retirado: não há mais nada a aceitar nem a recusar
talk-meeting = Um encontro em { $when }, { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}
talk-field-day = Dia
talk-field-time = Hora
talk-time-zone = A dos relógios da casa ({ $zone }), por exemplo 18:30.
talk-time-wrong = deve ser uma hora futura que exista nesse dia no relógio, por exemplo 18:30
talk-filled = { $by ->
    [plan] Preenchido com o último plano. Mude o que já não serve.
   *[steps] Preenchido com os passos que Hoje escolheu. Mude o que não serve.
}
talk-own = Um plano próprio
talk-own-intro = Para alguns dias com { $name }, como vocês combinaram em um encontro ou entre si. Hoje mostra o plano junto ao passo de cada palavra.
talk-own-title = Nosso próprio plano
talk-own-of-home = O plano próprio da casa
talk-own-make = Fazer um plano próprio com { $name }
talk-own-keep = Guardar este plano
talk-own-stop = Encerrar este plano
talk-change = Para testar: { $change }
talk-change-words = Para testar com { $words }: { $change }
talk-field-change = Em palavras, o que muda
talk-field-change-hint = necessário para “outra coisa”; para outra palavra: qual
talk-field-change-words-hint = nenhuma marcada: todas
talk-change-measured = O que se mede
talk-change-how = Se a casa aceitar, mais um toque sorteia quando a mudança começa. Ela é julgada no fim.
talk-as-trial = { $what } Mede-se: { $measure }.
talk-draw = Sortear os dias
talk-draw-hint = A partir de amanhã. Só se mostra o que vale no dia. Um sinal forte de estresse encerra o teste, e parar é sempre acertado.
talk-other-numbers = Escolher os números
talk-trial-lead = Testado por sorteio:
talk-to-the-trial = O teste
talk-not-agreed = não está combinado: só se pode testar o que foi aceito
talk-trial-today = Teste: { $question } Hoje { $what }.
talk-hand-over = Outro coach: { $name }
talk-cover = Substituição por { $name }, { $first } a { $last }
talk-for-club = Escrito para o clube: os outros coaches dele leem isto, e suas respostas.
talk-for-club-coach = Escrito para o clube: os outros coaches dele leem isto, e o que a casa responde.
talk-not-read = Isto, e o que você responder, já não é lido por { $name }: o compartilhamento terminou em { $day }.
talk-not-read-now = Isto, e o que você responder, não é lido por { $name }: agora nada é compartilhado.
talk-today-not-read = O que você faz e responde aqui já não é lido por { $name }, desde { $day }.
talk-today-not-read-now = O que você faz e responde aqui não é lido por { $name }: agora nada é compartilhado.
talk-club-reads = Esta casa compartilha com todo o seu clube. Os outros coaches dele leem o que você escreve aqui, e as respostas.
talk-opens = se decide em uma página própria: abre a casa a alguém
talk-look-and-decide = Olhar e decidir
talk-a-keeper-decides = Quem administra a casa decide isto.
talk-see-sharing = Quem pode ver esta casa
talk-field-exercise = Exercício para ensaiar
talk-field-character = Com quem
talk-field-lessons = Lições para ler
talk-practice-none = Nenhum
talk-practice-nothing = Escolha um exercício ou uma lição.
talk-rehearse-it = Ensaie: { $exercise }
talk-is-read = lida
talk-lessons-read = Lições lidas por alguém da casa: { $read } de { $of }
talk-shared-count = Ensaios compartilhados: { $count }
talk-may-share = Depois de um ensaio você pode compartilhar os números com { $name }. De um ensaio nada é compartilhado sozinho.
talk-lessons-shown = Lições que a casa mostra como lidas: { $read } de { $of }. Outras também podem ter sido lidas.
talk-lessons-seen = { $club ->
    [yes] { $name } e outros coaches do clube veem destas lições só o que alguém da casa mostra: com uma marca junto da lição, no início sem marcar.
   *[no] { $name } vê destas lições só o que alguém da casa mostra: com uma marca junto da lição, no início sem marcar.
}
talk-nothing-to-share = Deste ensaio não há nada a compartilhar: aconteceu pouco demais.
talk-shared = De um ensaio de “{ $exercise }” com { $name }, um animal simulado:
talk-word-there = já está em um botão aqui: proponha uma etapa ou um plano para ela, ou outra coisa
talk-word-is-there = “{ $word }” já está em um botão aqui. Para a ficha dela
talk-word-how = Só uma palavra: a casa a acrescenta e escolhe o que ela traz. Nada é sorteado. Em botões aqui: { $words }.
talk-word-how-none = Só uma palavra: a casa a acrescenta e escolhe o que ela traz. Nada é sorteado.
talk-word-by-lot = Para ver por sorteio se outra palavra ajuda, proponha uma mudança para testar
talk-today-meeting = Reunião com { $name }: { $when }
talk-today-course-begins = “{ $course }” começa: { $day }
talk-today-course = “{ $course }”: semana { $week } de { $weeks }, a próxima desde { $day }
talk-today-course-last = “{ $course }”: semana { $week } de { $weeks }, até { $day }
talk-trial-today-until = Teste até { $last }: { $question } Hoje { $what }.
talk-trial-begins = Teste desde { $day }: { $question }
talk-in-place = { $name } escreveu isto no lugar de { $of }, que continua com isso.
talk-cover-reads = Você substitui { $name }, que lê o que você escreve aqui e continua com isso.
talk-about-word-chart = o gráfico “{ $chart }” de “{ $word }”
talk-about-chart = o gráfico “{ $chart }”
talk-look-at = Ver: { $what }
talk-write-about-chart = Escrever sobre este gráfico
