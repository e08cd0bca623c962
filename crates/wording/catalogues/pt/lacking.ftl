lacking-few = { $needed ->
    [1] é preciso pelo menos um valor
   *[other] são necessários pelo menos { $needed } valores
}; { $got ->
    [0] não há nenhum
    [1] há um
   *[other] há { $got }
}
lacking-nothing = ainda nada foi observado
lacking-no-variation = todos os valores são iguais
lacking-one-category = as { $n } pontuações são iguais; não se pode avaliar a concordância além do acaso
lacking-nothing-shared = nada foi pontuado por pelo menos duas pessoas
lacking-disconnected = { $groups } grupos de coisas nunca foram comparados entre si
lacking-separated = algumas coisas nunca perderam para as outras
lacking-unsettled = a estimativa não se estabilizou
lacking-no-span = as { $n } observações caem no mesmo momento; não se pode medir nenhuma mudança
lacking-time-goes-back = os registros não estão em ordem de tempo
lacking-not-fit = os registros não servem para este método ({ $why })
lacking-choices = { $choices } escolhas por ensaio de { $words } palavras; de 2 escolhas até tantas quantas as palavras
lacking-no-trials = uma verificação tem pelo menos um ensaio
lacking-word-twice = uma palavra aparece duas vezes
lacking-long-runs = não se encontrou uma ordem sem uma palavra repetida vezes demais em seguida
lacking-no-card = a palavra não tem ficha
