because-strong-signs = Sinais fortes de estresse: { $count } em { $days } dias, em { $on } deles{ $today ->
    [0] { "" }
   *[other] , { $today } hoje
}. O último: “{ $last }”.
because-rests-until = As sessões descansam até { $until }: depois de um sinal forte, o resto do dia e doze horas no mínimo; depois de sinais fortes em dois dias, uma semana.
because-lasting-threat = { $count ->
    [1] Um rosnado, bote ou mordida em { $days } dias: “{ $last }”, { $day }.
   *[other] { $count } rosnados, botes ou mordidas em { $days } dias. O último: “{ $last }”, { $day }.
}
because-lasting-guarding = { $count ->
    [1] { $name } protegeu algo uma vez em { $days } dias: “{ $last }”, { $day }.
   *[other] { $name } protegeu algo { $count } vezes em { $days } dias. A última: “{ $last }”, { $day }.
}
because-lasting-swallowing = { $count ->
    [1] { $name } engoliu algo uma vez em { $days } dias: “{ $last }”, { $day }.
   *[other] { $name } engoliu algo { $count } vezes em { $days } dias. A última: “{ $last }”, { $day }.
}
because-recurring = Volta sempre: em { $weeks } das últimas { $of } semanas.
because-left-few = { $name } deixou { $left } das últimas { $of } sessões em que entrou.
because-left-sessions = { $name } deixou { $left } das últimas sessões em que entrou: { $share }.
because-mild-signs = Sessões dos últimos sete dias com um sinal leve de estresse: { $share }.
because-sudden-change = Apertos próprios nos últimos dois dias: { $now }. Nas quatro semanas antes: { $before }.
because-food-given = Hoje { $given } kcal { $feeds ->
    [1] de uma vez
   *[other] em { $feeds } vezes
}; as recompensas do dia são { $budget } kcal.
because-rewards-listed = { $rewards ->
    [0] Ainda não há recompensas na lista; um teste de gostos compara ao menos duas.
    [one] Há uma recompensa na lista; um teste de gostos compara ao menos duas.
   *[other] Há { $rewards } recompensas na lista; um teste de gostos compara ao menos duas.
}
because-no-likes-test = { $rewards ->
    [1] Há uma recompensa na lista, não testada.
   *[other] Há { $rewards } recompensas na lista, nenhuma testada.
}
because-no-word-yet = { $trials ->
    [1] Há um ensaio de um teste de gostos anotado
   *[other] Há { $trials } ensaios de testes de gostos anotados
} e ainda nenhuma palavra no quadro.
because-no-allowance = Não dá para calcular com o que está na ficha.
because-card-lacks = Falta na ficha: { $lacks }. Uma palavra se aprende melhor se todos respondem igual (prática comum, sem fonte).
because-slowing = “{ $word }” soa mais lento em { $by }, em apertos ouvidos por { $days ->
    [1] um dia
   *[other] { $days } dias
}. Probabilidade de ficar mais lento que botões bons: { $probability }.
because-silent = “{ $word }” foi ouvida por último em { $day }, há { $days ->
    [1] um dia
   *[other] { $days } dias
}. Outras palavras foram ouvidas { $others ->
    [1] uma vez
   *[other] { $others } vezes
} desde então.
because-never-heard = “{ $word }” não foi ouvida em { $days ->
    [1] um dia
   *[other] { $days } dias
} de escuta. Outras palavras foram ouvidas { $others ->
    [1] uma vez
   *[other] { $others } vezes
}.
because-silent-before = “{ $word }” foi ouvida por último em { $day }, há { $days ->
    [1] um dia
   *[other] { $days } dias
}; antes, { $before }. Outras palavras foram ouvidas { $others ->
    [1] uma vez
   *[other] { $others } vezes
} desde então.
because-noted-by-hand = “{ $word }” foi anotada à mão { $times ->
    [1] uma vez
   *[other] { $times } vezes
} nesse tempo: soa, mas não mais como a gravação daqui.
because-silent-causes = Pode ser pilha gasta, botão quebrado ou gravação nova; ou a palavra não tem uso agora. Não diz nada sobre o que um animal sabe.
because-test-old = O último teste de gostos tem { $days } dias. Metade conta como esquecida após { $half } dias (prática comum, sem fonte).
because-best-unclear = Ainda não está claro; melhores até agora: { $best } ({ $probability } de certeza, { $choices ->
    [0] ainda nenhum ensaio com escolha
    [1] um ensaio com escolha
   *[other] { $choices } ensaios com escolha
}).
because-when-wanted = { $name } foi convidado { $of } vezes e queria a coisa: { $parts }.
because-wanted-this = apertou esta palavra { $all ->
    [yes] todas as vezes
   *[no] { $times ->
        [1] uma vez
       *[other] { $times } vezes
    }
}
because-wanted-other = apertou outra palavra { $all ->
    [yes] todas as vezes
   *[no] { $times ->
        [1] uma vez
       *[other] { $times } vezes
    }
}
because-wanted-none = { $all ->
    [yes] nunca apertou nada
   *[no] { $times ->
        [1] não apertou nada uma vez
       *[other] não apertou nada { $times } vezes
    }
}
because-when-wanted-early = Cedo demais para dizer: { $name } { $of ->
    [0] ainda não recebeu um convite quando queria a coisa
    [1] recebeu um convite e queria a coisa uma vez
   *[other] recebeu convites e queria a coisa { $of } vezes
}.
because-right-none = Dos apertos ao convidar, esta palavra: ainda nada contado.
because-right = Dos apertos ao convidar, esta palavra: { $share }. { $chance ->
    [more] Passa a marca para um próximo passo ({ $bar } para 1).
   *[other] Ainda não mais que o acaso.
}
because-right-elsewhere = Dos apertos ao convidar, esta palavra: { $share }; apertada quando outras são convidadas: { $elsewhere }. { $chance ->
    [more] Passa a marca para um próximo passo ({ $bar } para 1).
   *[other] Ainda não mais que o acaso.
}
because-showings = { $showings ->
    [0] Nunca mostrada
    [1] Mostrada uma vez
   *[other] Mostrada { $showings } vezes
} (desejado: { $wanted }), { $days ->
    [0] em nenhum dia
    [1] em um dia
   *[other] em { $days } dias
} (desejado: { $dayswanted }).
because-joining = Sessões com participação em quatro semanas: { $share }. Antes de convidar, claramente mais de { $floor }.
because-mastery = Sessões seguidas com { $share } ou mais de apertos certos: { $sessions } (desejado: { $wanted }). Pessoas diferentes nelas: { $people } (desejado: { $peoplewanted }).
because-own-presses = Apertos próprios com a coisa aceita: { $presses } (desejado: { $wanted }), { $days ->
    [0] em nenhum dia
    [1] em um dia
   *[other] em { $days } dias
} (desejado: { $dayswanted }).
because-below = { $counted ->
    [wanted] Convites em que { $name } queria a coisa, com aperto
    [latest] Últimos convites em que { $name } queria a coisa, com aperto
    [later] Duas semanas ou mais após o domínio, com aperto quando { $name } queria a coisa
   *[right] Duas semanas ou mais após o domínio, dos apertos ao convidar, esta palavra
}: { $share }. Todo este intervalo, de 90%, fica abaixo de { $bar }, o desejado { $counted ->
    [wanted] para convidar
   *[other] para deixar a palavra com { $name }
}.
because-later-unknown = Não se sabe se dura: { $wanted ->
    [0] nenhum convite
    [1] um convite
   *[other] { $wanted } convites
} duas semanas ou mais após o domínio (desejado: { $needed }).
because-later = Duas semanas ou mais após o domínio: apertou { $pressed } das { $wanted } vezes em que { $name } queria a coisa{ $presses ->
    [0] { "" }
   *[other] , certo em { $right } de { $presses }
}.
because-strain = Sinais fortes de estresse em vários dias em sessões com esta palavra.
because-ends-sessions = Esta palavra termina a sessão: é mostrada nessa hora, e ninguém espera por ela.
because-not-prepared = A recompensa ou a resposta da palavra não está definida.
because-contradiction = Os registros se contradizem: { $why }
because-no-recording-checked = Ninguém verificou aqui uma gravação dela. Cães de família responderam a cerca de 30% dos sinais aprendidos vindos de botões, perto de 100% à voz viva (17 cães; Higaki 2025, números de um texto de imprensa).
because-recording = { $found ->
    [both] A gravação ({ $seconds }) é muito curta e mais baixa que as outras.
    [short] A gravação ({ $seconds }) é muito curta.
    [quiet] A gravação ({ $seconds }) é mais baixa que as outras.
   *[other] A gravação ({ $seconds }) foi verificada, o que não diz o que um animal distingue.
} Cães de família responderam a cerca de 30% dos sinais aprendidos vindos de botões, perto de 100% à voz viva (17 cães; Higaki 2025, números de um texto de imprensa).
because-taken = Aceito, do que foi dado por esta palavra em { $days } dias: { $share } (limite { $bar }).
because-showings-a-day = Demonstrações em { $days } dias: { $rate } (limite { $bar } por dia).
because-delay = Do aperto à entrega, o meio: { $seconds } (limite { $bar }).
because-near = Olhares, esbarrões e apertos próprios neste botão: { $share }. Teve { $expected } das demonstrações.
because-comes-more = Apertos próprios nele em sete dias: { $now }; nas quatro semanas antes: { $before }. Mais do que o acaso permite.
because-too-few-hours = Poucas sessões em horas diferentes do dia.
because-uneasy-hours = De { $from } a { $to } { $name } participou { $here }, em outras horas { $elsewhere }. Contando atrasos, saídas e sinais, { $p } (corrigido por escolher as horas), últimos { $days } dias.
because-too-few-days = Poucos dias para ver uma mudança.
because-late-fall = Participou nos últimos { $days } dias: { $lately }; antes: { $before }. Contando atrasos, saídas, sinais, apertos próprios e o aceito, { $p } (corrigido por escolher o dia). Os registros não mostram saúde: se algo parecer estranho, consulte um veterinário.
because-only-word = É a única palavra.
because-sounds = { $alike ->
    [yes] Soa muito parecida com “{ $nearest }”.
   *[other] Soa bem diferente de “{ $nearest }”.
} Outra palavra apertada, dos apertos ao convidar: { $others }.
because-too-few-people = Menos de duas pessoas com cinco respostas cada.
because-people-delay = { $one } entrega após { $first }, { $two } após { $second } (teste da soma de postos, { $p }).
because-people-give = { $one } entrega em { $first } dos apertos, { $two } em { $second } ({ $p }).
because-many-presses = Apertos próprios em { $days } dias: { $rate } (limite { $bar } por dia).
because-given-share = Respondidos com a coisa: { $share }.
because-signalled-times = Tempos de sim e não com sinal: Hanley, Iwata & Thompson 2001, cujo último passo foi 60 s e 240 s. O primeiro passo é de memória, os do meio são nossos.
because-never-checked = { $words ->
    [1] Uma palavra está em uso e nunca foi verificada.
   *[other] { $words } palavras estão em uso e nunca foram verificadas.
}
because-check-open = { $done } de { $of } ensaios da verificação.
