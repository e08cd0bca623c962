desk-swallowing = { $today ->
    [yes] { $name } engoliu algo hoje: liguem já para um veterinário.
   *[other] { $name } engoliu algo em { $day }. Pergunte se um veterinário já viu.
}
desk-threat = { $count ->
    [1] { $name } rosnou, deu um bote ou mordeu em { $day }.
   *[other] { $name } rosnou, deu um bote ou mordeu { $count } vezes em { $days } dias, a última em { $day }.
}
desk-guarding = { $count ->
    [1] { $name } protegeu algo em { $day }.
   *[other] { $name } protegeu algo { $count } vezes em { $days } dias, a última em { $day }.
}
desk-strong = { $on ->
    [1] { $name } mostrou sinais fortes de estresse em { $day }.
   *[other] { $name } mostrou sinais fortes de estresse em { $on } de { $days } dias, a última vez em { $day }.
}
desk-taken-back = { $kind ->
    [swallowing] O registro de que { $name } engoliu algo em { $day } foi retirado.
    [threat] O registro de que { $name } rosnou, deu um bote ou mordeu em { $day } foi retirado.
    [guarding] O registro de que { $name } protegeu algo em { $day } foi retirado.
   *[other] O registro de um sinal forte de estresse em { $day } foi retirado.
}
desk-joins-less = { $name } participa de menos sessões desde { $day }: { $lately }. Antes: { $before }.
desk-presses-less = { $name } aperta menos desde { $day }: { $lately }. Antes: { $before }.
desk-slower = { $name } demora mais a apertar quando há convite desde { $day }: { $lately }. Antes: { $before }.
desk-leaves = { $name } saiu de muitas das últimas sessões de que participou: { $share }.
desk-silent = Nada foi anotado sobre { $name } há { $days } dias.
desk-stuck = “{ $word }” está parada: { $cause }.
desk-holds = “{ $word }” avança, mas algo atrapalha: { $cause }.
desk-stuck-unknown = “{ $word }” está parada, e os registros não mostram por quê.
desk-cause = { $cause ->
    [hard_to_make_out] a gravação pode ser difícil de distinguir
    [not_wanted] o que ela traz não é desejado agora
    [too_little] ela é mostrada pouco
    [too_late] a coisa chega tarde demais
    [avoided] { $name } evita o botão
    [time_or_place] a hora ou o lugar das sessões é difícil para { $name }
    [health] { $name } pode não estar bem
    [sounds_alike] ela é confundida com uma palavra de som parecido
   *[people_differ] as pessoas respondem de modos diferentes
}
desk-ration = { $name } recebeu mais comida que as recompensas do dia em { $days } dos últimos { $of } dias.
desk-ready = “{ $word }” está pronta para convidar desde { $day }.
desk-check-open = Uma verificação espera o fim: { $done } de { $of } ensaios feitos.
desk-check-never = { $words ->
    [1] Uma palavra em uso nunca foi verificada.
   *[other] { $words } palavras em uso nunca foram verificadas.
}
desk-little = { $lack ->
    [days] Registros em { $days } de { $of } dias são poucos para dizer o que segura uma palavra.
    [records] Há poucos toques e sessões anotados, em { $days } de { $of } dias, para dizer o que segura uma palavra.
   *[whole] Há poucos toques e sessões anotados por inteiro, em { $days } de { $of } dias, para dizer o que segura uma palavra.
}
desk-outside = Fora dos nove décimos centrais de { $homes } casas comparáveis: { $lies }
desk-outside-wait = { $by ->
    [days] { $wait ->
        [1] { $wait } dia
       *[other] { $wait } dias
    }
   *[showings] { $wait ->
        [1] { $wait } demonstração
       *[other] { $wait } demonstrações
    }
}
desk-outside-open = ainda nenhum aperto de “{ $word }” depois de { $wait }. Lá, dezenove em cada vinte palavras tiveram o primeiro aperto em { $place } ou menos (intervalo de { $level }: { $low } a { $high }).
desk-outside-later = “{ $word }” foi apertada pela primeira vez depois de { $wait }. Lá, dezenove em cada vinte palavras tiveram o primeiro aperto em { $place } ou menos (intervalo de { $level }: { $low } a { $high }).
desk-outside-sooner = “{ $word }” foi apertada pela primeira vez depois de { $wait }. Lá, dezenove em cada vinte palavras precisaram de { $place } ou mais (intervalo de { $level }: { $low } a { $high }).

desk-why-recurring = Eles voltam: em { $weeks } das últimas { $of } semanas.
desk-why-taken-back = Pode ter sido um toque sem querer. Pergunte à casa o que aconteceu.
desk-why-change = Mais do que o acaso permite, contando tudo o que esta mesa olha ({ $p }).
desk-why-silent = Dias de um registro ao seguinte: { $usual }. A maior pausa até agora: { $longest }; o aviso vem a partir de { $after } dias inteiros.
desk-why-silent-new = Ainda não há um costume para comparar; o aviso vem a partir de { $after } dias inteiros.
desk-why-hardly = Dita parada por isto: { $presses ->
    [0] { $name } não a tocou por conta própria em quatro semanas
    [one] { $name } a tocou uma vez por conta própria em quatro semanas
   *[other] { $name } a tocou { $presses } vezes por conta própria em quatro semanas
}, e ela é mostrada há mais de três.
desk-why-seldom-taken = Dita parada por isto: { $name } raramente pega o que ela traz, e há poucos convites para dizer mais.
desk-why-seldom-right = Dita parada por isto: certo em claramente menos da metade das vezes em que houve convite e { $name } queria a coisa: { $right }.
desk-why-right = Certos, das vezes em que houve convite e { $name } queria a coisa: { $right }.
desk-why-hours = Participou nestas horas: { $figure }. Em outras: { $beside }.
desk-why-fall = Ultimamente: { $figure }. Antes: { $beside }.
desk-why-alike = Apertou a outra palavra quando esta era convidada: { $figure }. Quando nenhuma das duas era: { $beside }.
desk-why-people = Uma pessoa: { $figure }. Outra: { $beside }.
desk-why-recording = A gravação ({ $seconds }) é muito curta ou mais baixa que as outras.
desk-why-ration = O máximo em um dia: { $most } kcal. As recompensas do dia são { $budget } kcal.
desk-why-ready = { $showings ->
    [1] Mostrada uma vez
   *[other] Mostrada { $showings } vezes
}, e espera há { $days } dias.
desk-why-check = Só uma verificação pode distinguir isso de pistas e sorte.
desk-why-little = Anotado por inteiro (um aperto com sua resposta, uma sessão com seu fim): { $closed }. O que ninguém anotou pode ter acontecido mesmo assim.
desk-why-outside = Ao lado de { $kind } em casas com { $who }. Palavras de { $name } que puderam ser postas ao lado de outras: { $laid }. Em qualquer lugar, cerca de uma palavra em dez fica fora.
desk-why-outside-cause = O que pode segurá-la aqui: { $cause }.
desk-why-sooner = Um aperto diz que um botão foi apertado, não por quê. Mais cedo não é melhor.
desk-until-without = Nenhum outro sinal assim antes de { $day }.

desk-until-asked = A casa contar por que foi retirado.
desk-until-record = Qualquer registro.
desk-until-more-records = { $lack ->
    [days] Registros na maioria dos dias, com as respostas e o fim das sessões.
    [records] Mais toques e sessões anotados, com respostas e fins.
   *[whole] A resposta à maioria dos toques e o fim da maioria das sessões, anotados.
}
desk-until-more-right = Claramente mais toques certos quando há convite, ou registros que apontem uma causa.
desk-until-fewer-over = Menos de três dias assim em uma semana, ou uma quantidade definida por um veterinário.
desk-until-invited = A palavra é convidada, ou seus números não apontam mais para o convite.
desk-until-first-press = Um primeiro aperto, ou uma edição mais nova destes números.
desk-until-since-press = { $days } dias desde o primeiro aperto, ou uma edição mais nova destes números.
desk-aside = { $ago ->
    [0] Posto de lado há menos de um dia
    [one] Posto de lado há { $ago } dia
   *[other] Posto de lado há { $ago } dias
}; volta em { $days ->
    [one] { $days } dia
   *[other] { $days } dias
} no máximo, antes se piorar.
desk-back = { $ago ->
    [0] Você pôs isto de lado há menos de um dia.
    [one] Você pôs isto de lado há { $ago } dia.
   *[other] Você pôs isto de lado há { $ago } dias.
} { $why ->
    [worse] Desde então piorou.
    [anew] Desde então recomeçou.
    [cause] Os registros apontam agora para outra causa.
   *[days] Os dias passaram.
}

desk-new-signs = { $kind ->
    [swallowing] { $count ->
        [1] { $name } engoliu algo: { $day }.
       *[other] { $name } engoliu algo { $count } vezes, a última { $day }.
    }
    [threat] { $count ->
        [1] { $name } rosnou, deu um bote ou mordeu: { $day }.
       *[other] { $name } rosnou, deu um bote ou mordeu { $count } vezes, a última { $day }.
    }
    [guarding] { $count ->
        [1] { $name } protegeu algo: { $day }.
       *[other] { $name } protegeu algo { $count } vezes, a última { $day }.
    }
   *[other] { $count ->
        [1] Um sinal forte de estresse: { $day }.
       *[other] Sinais fortes de estresse: { $count }, o último { $day }.
    }
}
desk-new-joining = Sessões de que { $name } participou: { $lately }. Antes: { $before } ({ $p }).
desk-new-presses = Apertos próprios: { $lately }. Antes: { $before } ({ $p }).
desk-new-word = “{ $word }” é nova no quadro.
desk-word-gone = “{ $word }” não está mais em uso.
desk-first-press = { $name } apertou “{ $word }” por conta própria pela primeira vez: { $day }.
desk-new-stage = “{ $word }” passou de { $from } para { $to }.
desk-above-chance = Os apertos certos de “{ $word }” agora são mais que acaso: { $right }.
