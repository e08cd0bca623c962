# Sobre todas as casas de um coach: o que se seguiu quando uma mudança foi combinada.
followed-title = O conselho ajuda?
followed-how = O que se seguiu quando uma mudança foi combinada com você: apertos próprios nos dias em que alguém olhou, { $days } dias depois contra { $days } antes. Cada casa conta uma vez, pela primeira mudança desse tipo.
followed-caution = Aqui ninguém sorteou nada. Uma mudança é proposta quando vai mal, e o que vai mal muitas vezes melhora sozinho. Por isso estas parcelas não mostram que foi a mudança.
followed-change = Mudança
followed-more = Apertou mais depois
followed-early = Cedo demais ou pouco anotado
followed-homes = { $homes ->
    [0] { $homes } casa
    [1] { $homes } casa
   *[other] { $homes } casas
}
followed-share = { $share } ({ $low } a { $high }), { $more } de { $homes } casas
followed-share-early = Cedo demais para dizer: { $more } de { $homes ->
    [0] { $homes } casa
    [1] { $homes } casa
   *[other] { $homes } casas
}
followed-none = Ainda não foi combinado com você nada que mude algo.
followed-nothing = Para comparar, casas em que nada foi combinado em oito semanas; as últimas quatro semanas contra as quatro anteriores. Apertou mais: { $share }.
followed-plan = { $way ->
    [show] Plano: mostrar
    [offer_in_view] Plano: convidar com a coisa à vista
    [ask_and_point] Plano: perguntar e apontar
    [ask_between_two] Plano: “isto ou aquilo”
   *[any] Plano: como couber
}
followed-stage = Etapa: { $stage }
followed-drawn-title = Por sorteio
followed-drawn-how = Aqui o sorteio decidiu quando a mudança começava. Cada teste é julgado no fim contra todas as ordens que poderiam ter saído. De vinte mudanças que não fazem nada, cerca de uma parece fazer algo. Os testes ao lado de outro que mede o mesmo são contados à parte.
followed-drawn = Mudança sorteada
followed-came-out = No que deu
followed-outcome = { $outcome ->
    [going] em curso: { $count }
    [stopped] parados: { $count }
    [rare] uma diferença rara por acaso: { $count }
    [may_be_chance] pode ser acaso: { $count }
    [too_few_orders] pequenos demais para dizer: { $count }
   *[untested] terminados sem análise: { $count }
}
followed-beside = Não contados acima, porque outro teste mediu o mesmo em alguns dos mesmos dias: { $count ->
    [one] { $count } teste
   *[other] { $count } testes
} ({ $outcomes }). Não dá para distinguir um do outro.
followed-was-beside = ao lado de outro teste
followed-none-alone = nenhum sozinho ainda
followed-no-drawn = Nenhum teste ainda. O que você propõe em “Uma mudança para testar” pode ser sorteado pela casa.
followed-each = Cada teste
followed-in-home = { $animal }, { $home }
