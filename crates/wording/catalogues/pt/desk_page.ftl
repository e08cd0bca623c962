# A página da mesa de quem orienta. O que está nela é dito em desk.ftl.
desk-page-title = Quem precisa de você primeiro
desk-page-needs = Necessidades
desk-page-week = O que mudou
desk-page-more-pages = Mais páginas
desk-page-week-how = Desde que você anotou que conversaram; senão, desde uma semana atrás. Fatos, e números que mudaram além do acaso; o que o acaso muda não é novidade.
desk-page-no-diagnosis = Esta página ordena o que foi anotado. Ela não diagnostica nada: onde um animal pode não estar bem ou não estar seguro, diz a quem perguntar.
desk-page-how-many = { $shown } de { $animals ->
    [one] { $animals } animal
   *[other] { $animals } animais
} em { $homes ->
    [one] { $homes } casa
   *[other] { $homes } casas
}. Quem administra cada casa pode ler que você olhou hoje.
desk-page-none = Nada aqui precisa de você agora.
desk-page-none-found = Nenhuma casa, animal ou palavra se chama assim: “{ $find }”.
desk-page-no-news = Nada mudou além do acaso.
desk-page-keys = Teclas: j e k vão de linha em linha; na lista também as setas, Enter abre, a põe de lado. Com Tab se chega a tudo.
desk-page-keys-week = Teclas: j e k vão de linha em linha; na lista também as setas, Enter abre. Com Tab se chega a tudo.
desk-page-keys-anywhere = j e k em toda a página
desk-page-behind = { $behind ->
    [one] { $behind } casa anotou algo mais novo do que está aqui.
   *[other] { $behind } casas anotaram algo mais novo do que está aqui.
}
desk-page-unread = { $unread ->
    [one] { $unread } casa ainda está sendo lida.
   *[other] { $unread } casas ainda estão sendo lidas.
}
desk-page-look-again = Olhar de novo
desk-page-gone = Esta casa não compartilha mais seus números com você. Nada foi guardado.
desk-page-was-put = Posto de lado para { $name }. Volta passados esses dias, e logo que piore ou recomece.
desk-page-filter = Mostrar só algumas
desk-page-show = Mostrar
desk-page-all-needs = Todas as necessidades
desk-page-kind = { $kind ->
    [safety] Segurança
    [taken_back] Retirado
    [change] Mudança repentina
    [leaves] Sai das sessões
    [silent] Em silêncio
    [held] Uma palavra parada
    [ration] Comida
    [ready] Pronta para convidar
    [check] Verificações
    [little] Pouco anotado
    [outside] Ao lado de outras casas
    [answers] Respostas
    [aside] Posto de lado
   *[none] Nada necessário
} ({ $count })
desk-page-own-mark = Sua marca
desk-page-any-mark = Qualquer uma
desk-page-own-mark-hint = Só você a vê. Deixe vazio para tirá-la.
desk-page-keep-mark = Salvar marca
desk-page-mark-wrong = use até 40 letras, em uma linha
desk-page-find = Casa, animal ou palavra
desk-page-apply = Mostrar estes
desk-page-nothing-needed = Nada necessário agora.
desk-page-more = { $count ->
    [0] Mais a fazer aqui
    [1] mais { $count } necessidade, e mais a fazer aqui
   *[other] mais { $count } necessidades, e mais a fazer aqui
}
desk-page-whose-figures = De quem são estes números
desk-page-since = Desde { $day }, de { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-at-least-since = Pelo menos desde { $day }, de { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-first-seen = Visto aqui pela primeira vez em { $day }, de { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-from = De { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-until = O que mudaria isso: { $what }
desk-page-kept = Combinado: { $words ->
    [one] { $words } palavra
   *[other] { $words } palavras
}. Cumprido, tantos dos dias até agora: { $days }.
desk-page-kept-not-yet = Combinado: { $words ->
    [one] { $words } palavra
   *[other] { $words } palavras
}. Ainda não passou nenhum dia.
desk-page-kept-no-record = { $days ->
    [one] { $days } dia não tem nenhum registro: dele nada se pode dizer.
   *[other] { $days } dias não têm nenhum registro: deles nada se pode dizer.
}
desk-page-put-aside-days = { $days ->
    [one] Pôr de lado por { $days } dia
   *[other] Pôr de lado por { $days } dias
}
desk-page-aside-ends = O que piora, recomeça ou mostra outra causa volta logo.
desk-page-bring-back = Trazer de volta
desk-page-safety-stays = o que toca a segurança não pode ser posto de lado
desk-page-unclear = abra a mesa de novo: esta necessidade não está lá
desk-page-spoken = Conversamos hoje
desk-page-since-spoken = Desde que vocês conversaram em { $day }
desk-page-since-week = Desde { $day }
desk-page-same = { $count ->
    [one] { $count } animal sem novidades
   *[other] { $count } animais sem novidades
}
desk-page-same-more = E mais { $count }.
desk-page-presses = Apertos próprios
desk-page-joined = Sessões com participação
desk-page-weeks = { $what }, por semana, a mais antiga primeiro: { $counts }
desk-page-key = Como ler os gráficos pequenos
desk-page-key-says = Uma barra por semana, { $weeks } semanas, a última à direita e em outra cor. Uma barra pálida atrás mostra de quantas. Os números ao lado são a escala; o número acima é o dos últimos sete dias.
desk-page-nameless = uma palavra sem ficha
desk-page-nameless-home = Uma casa sem nome
desk-page-not-begun = Nada começado ainda
desk-page-not-begun-since = Nada começado desde { $day }: nenhum animal foi anotado.
desk-page-put-away = Nenhum animal participa agora
desk-page-put-away-all = Há animais anotados ali; nenhum continua participando.
desk-page-pages = Páginas
desk-page-page = Página { $at } de { $pages }
desk-page-before = Anterior
desk-page-after = Próxima
desk-page-practice = Para praticar: { $read } de { $of } lições mostradas como lidas, ensaios compartilhados: { $shared }
desk-page-in-seven = { $count } em 7 dias
desk-page-days-written = Dias anotados
desk-page-of = { $part } de { $whole }
desk-page-of-within = { $part } de { $whole } ({ $low } a { $high })
desk-page-of-none = nenhuma
desk-page-answered = { $homes ->
    [1] { $homes } casa respondeu desde que você olhou lá pela última vez
   *[other] { $homes } casas responderam desde que você olhou lá pela última vez
}
desk-page-answer = { $reply ->
    [accepted] Aceito: { $what }, { $day }
    [declined] Recusado: { $what }, { $day }
    [shared] Compartilhado: { $what }, { $day }
   *[said] Respondido: { $what }, { $day }
}
desk-page-answer-what = { $kind ->
    [plan] plano para { $words }
    [stage] etapa de { $words }
    [word] uma palavra nova
    [likes] teste de gostos
    [check] verificação de { $words }
    [a_note] uma nota
    [a_question] uma pergunta
    [note] sua nota
    [question] sua pergunta
    [meeting] encontro
    [change] mudança para experimentar
    [programme] programa
    [practice] algo para praticar
    [hand_over] passagem
   *[cover] substituição
}
desk-page-answers-more = { $count ->
    [1] mais { $count } resposta
   *[other] mais { $count } respostas
}
desk-page-changes-more = { $count ->
    [1] mais { $count } mudança
   *[other] mais { $count } mudanças
}
desk-page-changes-folded = { $count ->
    [1] { $count } mudança
   *[other] { $count } mudanças
}
desk-page-stood-in = { $name } em seu lugar: { $what }, { $day }
desk-page-stood-in-more = { $count ->
    [one] { $count } coisa a mais escrita em seu lugar
   *[other] { $count } coisas a mais escritas em seu lugar
}
