others-title = Outros
others-lead = Como foi em outras casas, ao lado do que está anotado de { $name }. O habitual não é melhor, e nada aqui é uma meta.
others-press = Um aperto diz que um botão foi apertado, não por quê. Uma espera longa não diz nada sobre { $name }.
others-late = Esperar mais do que o habitual não é doença nem fracasso, e não diz nada sobre o que { $name } pode aprender. Se houver também outros sinais, pergunte a um veterinário ou a um profissional qualificado de comportamento.
others-who = { $species ->
    [dog] cães
    [cat] gatos
    [parrot] papagaios
    [rabbit] coelhos
   *[other] animais de outras espécies
}{ $age ->
    [under-two] { " " }de menos de dois anos
    [two-to-seven] { " " }de dois a sete anos
    [eight-or-more] { " " }de oito anos ou mais
   *[every] { "" }
}
others-kind = { $kind ->
    [food] palavras de comida
    [play] palavras de brincadeira
    [touch] palavras de contato
    [training] palavras de exercícios
    [exploring] palavras de exploração
    [rest] palavras de descanso
    [closing] palavras que encerram uma sessão
    [other] palavras das quais ninguém disse o que trazem
   *[every] palavras
}
others-half = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }, metade de todas as { $kind } teve o primeiro aperto por conta própria do animal { $value ->
    [0] antes da primeira demonstração
    [1] em { $value } demonstração
   *[other] em { $value } demonstrações ou menos
} (intervalo de { $level }: { $low } a { $high }).
others-half-days = Por dias: metade em { $value ->
    [0] menos de um dia
    [1] { $value } dia
   *[other] { $value } dias ou menos
} (intervalo de { $level }: { $low } a { $high }).
others-half-open = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }, menos da metade de todas as { $kind } teve um aperto por conta própria do animal no tempo anotado.
others-half-open-days = Por dias: menos da metade no tempo anotado.
others-middle = A metade central: { $low } a { $high }.
others-middle-open = Um quarto: em { $low } ou menos. Três quartos: não no tempo anotado.
others-beyond = não no tempo anotado
others-own-before = { $name } apertou “{ $word }” pela primeira vez antes da primeira demonstração.
others-own-pressed = { $name } apertou “{ $word }” pela primeira vez depois de { $shown ->
    [1] { $shown } demonstração
   *[other] { $shown } demonstrações
}, em { $days ->
    [0] menos de um dia
    [1] { $days } dia
   *[other] { $days } dias
}.
others-own-open = Ainda nenhum aperto de “{ $word }” por { $name }: { $shown ->
    [1] { $shown } demonstração
   *[other] { $shown } demonstrações
} até agora, em { $days ->
    [0] menos de um dia
    [1] { $days } dia
   *[other] { $days } dias
}. Ainda não não é nunca.
others-any-age = Poucas casas demais tinham animais desta idade: todas as idades estão incluídas.
others-any-kind = Poucas casas demais tinham palavras como esta: as palavras para tudo estão incluídas.
others-not-enough = Não há bastantes como os seus: casas de menos para um número em que ninguém possa ser reconhecido.
others-closing-title = Palavras que encerram uma sessão
others-closing = Uma palavra que encerra uma sessão é mostrada quando algo acaba. É aprendida de outro modo do que uma palavra que traz algo, por isso só fica ao lado das suas iguais.
others-nothing-shown = Ainda nada para pôr ao lado de outros: começa com a primeira demonstração.
others-chart-title = “{ $word }”: primeiros apertos por demonstrações
others-chart-share = parte apertada
others-chart-showings = demonstrações
others-chart-mark = { $name }: { $shown }
others-chart-mark-open = { $name }: { $shown }, ainda não
others-band = intervalo de { $level }
others-joined-title = Participar
others-joined = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }, o animal participou de { $value } dos convites na casa central (intervalo de { $level }: { $low } a { $high }). A metade central das casas: { $from } a { $to }.
others-own-joined = { $name }: { $joined } de { $invited ->
    [1] { $invited } convite
   *[other] { $invited } convites
}. Não participar é uma resposta.
others-words-title = O que as primeiras palavras trouxeram
others-words = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }.
others-nth = Palavra
others-brings = Traz
others-share = Parte dos animais
others-kind-name = { $kind ->
    [food] comida
    [play] brincadeira
    [touch] contato
    [training] exercício
    [exploring] exploração
    [rest] descanso
    [closing] fim de uma sessão
   *[other] não dito
}
others-hours-title = Horas do dia
others-hours = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who } que apertaram por si mesmos: em quais horas caiu um aperto, um sorteado de cada casa.
others-hours-most = De { $from } a { $to }: { $value } (intervalo de { $level }: { $low } a { $high }), a maior fatia.
others-hours-caution = Os animais apertam quando há gente em casa e os botões estão ao alcance. Não é um horário para { $name }.
others-hours-axis = hora do dia
others-hours-share = % das casas
others-hours-span = { $from } a { $to }
others-stages-title = Tempo em cada etapa
others-stages = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }, metade das palavras passou de “{ $stage }” para outra etapa em { $value ->
    [0] menos de um dia
    [1] { $value } dia
   *[other] { $value } dias ou menos
} (intervalo de { $level }: { $low } a { $high }).
others-stages-open = Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }, menos da metade das palavras passou de “{ $stage }” para outra etapa no tempo anotado.
others-stages-not-enough = “{ $stage }”: não há o bastante como na sua casa.
others-stages-caution = Passar adiante é escolha das pessoas, e uma palavra para a qual ninguém escolheu etapa conta como mostrada. Nenhum animal precisa estar em algum ponto num dia certo: quem decide é o que { $name } faz.
others-stages-axis = dias na etapa
others-stages-share = parte que passou
others-weeks-title = Apertos em uma semana
others-weeks = Em { $homes ->
    [one] { $homes } casa
   *[other] { $homes } casas
} com { $who }: quantas vezes o animal apertou uma palavra por si mesmo em uma semana desde a primeira demonstração, com uma palavra e uma semana sorteadas de cada casa.
others-weeks-line = { $span }: { $some } das palavras tiveram algum aperto (intervalo de { $level }: { $somelow } a { $somehigh }), { $daily } sete ou mais ({ $dailylow } a { $dailyhigh }), em { $homes ->
    [one] { $homes } casa
   *[other] { $homes } casas
}.
others-weeks-span = { $to ->
    [1] Semana { $from }
   *[other] Semanas { $from } a { $to }
}
others-weeks-caution = Contam os apertos anotados: há mais onde se escuta mais. Apertar mais não é querer dizer mais, e nenhum animal tem de apertar tanto em uma semana dada: o que { $name } faz decide.
others-weeks-axis = semanas desde a primeira demonstração
others-weeks-share = parte das palavras
others-weeks-some = algum aperto
others-weeks-daily = sete apertos ou mais
others-source-title = De onde isto vem
others-source = Da edição “{ $release }” de { $date }.
others-self-chosen = Estas casas escolheram manter anotações e dá-las. Não são todos os animais, nem uma amostra que valha por todos.
others-invented = Casas inventadas por uma simulação: para experimentar esta página, nenhuma prova sobre animais.
others-noise = Foi somado ruído a cada contagem, para que nenhuma casa possa ser reconhecida. Os intervalos levam isso em conta.
others-club = Só casas de { $club }. Sem ruído.
others-none = Ainda não há aqui números de outras casas.
others-none-home = Quem mantém este caderno pode trazer valores de referência, também sem rede. Em um terminal: sayso norms import FILE --data { $dir }
others-none-server = Quem mantém este servidor pode dar a ele valores de referência.
others-damaged = Os valores de referência guardados aqui não podem ser lidos: { $why }. Traga-os mais uma vez.
others-link = Como foi em outras casas
others-usual = Ainda nenhum aperto de “{ $word }”, depois de { $shown ->
    [1] { $shown } demonstração
   *[other] { $shown } demonstrações
}. Em { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} com { $who }, { $part ->
    [quarter] um quarto
   *[half] metade
} de todas as { $kind } precisou de mais de { $more } (intervalo de { $level }: { $low } a { $high }).
