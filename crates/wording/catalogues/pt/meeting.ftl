# One page before a meeting with a coach. Figures come written with their interval and count.
meeting-title = Antes de um encontro: { $name }
meeting-link = Antes de um encontro
meeting-told-since = Desde o dia
meeting-show = Mostrar
meeting-write-plan = Escrever o próximo plano
meeting-own-plan = Fazer disso um plano próprio
meeting-safety = Segurança primeiro
meeting-new = Novo desde { $day }
meeting-counts = Sessões: { $sessions }. Demonstrações de pessoas: { $showings }. Apertos próprios de { $name }: { $presses }.
meeting-new-word = Uma palavra nova: “{ $word }”.
meeting-new-stage = “{ $word }” está agora na etapa { $stage }.
meeting-first-press = Primeiro aperto próprio de “{ $word }”: { $day }.
meeting-likes-test = Um teste de gostos: { $day }.
meeting-check = Uma verificação de compreensão de { $words }, planejada em { $day }.
meeting-nothing-new = Nenhuma palavra, etapa, primeiro aperto, teste ou verificação nova.
meeting-more = Mais { $count }, fora desta folha.
meeting-agreed = O que foi combinado
meeting-from = De { $name }, combinado em { $day }: { $what }
meeting-own = O plano próprio da casa de { $day }, até { $last }
meeting-nothing-agreed = Nada foi combinado para este tempo.
meeting-figures = Três números
meeting-figure = Número
meeting-since = Desde { $day }
meeting-before = { $days ->
    [1] O dia anterior
   *[other] Os { $days } dias anteriores
}
meeting-measure = { $measure ->
    [pressed] Apertou, dos convites desejados
    [right] Certos, dos apertos em convites
    [presses] Apertos próprios por dia
    [joining] Sessões de que participou
   *[delay] Do aperto de uma pessoa até dar
}
meeting-open = Perguntas em aberto
meeting-said = { $reply ->
    [accepted] A casa aceitou em { $day }: { $what }
    [declined] A casa disse não em { $day }: { $what }
   *[said] A casa respondeu em { $day }: { $what }
}
meeting-next = Combinado no encontro
meeting-line = Linha
meeting-to-write = para preencher à mão
