command-design-listed = { $id }  { $question }  { $design }, { $points ->
    [one] { $points } ponto
   *[other] { $points } pontos
} a partir de { $first }
command-design-stopped = Terminado. Ponha tudo como estava.
command-design-no-trial = o caderno não conhece nenhum teste { $id }; veja `sayso design list`
command-design-not-drawn = a ordem deste teste não pode ser sorteada do seu plano: { $why }
command-design-heading = { $question } { $design }; { $measure } { $unit ->
    [day] em cada dia
   *[session] em cada sessão
}
command-design-now = agora: { $what }
command-design-rest = descanso, tudo como de costume; foram anotados sinais fortes de estresse
command-design-nothing = tudo como de costume
command-design-within = dar em menos de { $seconds } s
command-design-usual = como de costume
command-design-point = ponto { $point } de { $of }: { $what }
command-design-departure = não como planejado: { $what }
command-design-so-far = números até agora; nada se afirma com eles, e olhar dá vontade de parar:
command-design-no-test = sem teste estatístico: { $why }
command-design-open-end = aberto
command-design-difference = diferença, mudado menos habitual: { $value } (intervalo de 95% de { $low } a { $high }, n = { $n } pontos)
command-design-distance = distância média à meta: { $seconds }
command-design-orders = ordens igualmente extremas: { $extreme } de { $of }; { $p }
command-design-standards = o plano { $verdict }: oportunidades de mostrar um efeito: { $chances }, pelo menos { $fewest ->
    [one] { $fewest } ponto
   *[other] { $fewest } pontos
} em cada
command-design-missing = pontos passados sem valor: { $n } de { $of }
command-design-mean = média: { $mean }
command-design-nap = { $name }: NAP { $nap } (intervalo de 90% de { $low } a { $high }, n = { $n_a } e { $n_b }), Tau-U { $tau } ({ $p })
command-design-which-animal = diga qual animal com --animal
command-design-not-today = hoje não: foram anotados sinais fortes de estresse; dê espaço e planeje em um dia calmo
command-design-too-soon = --first tem de ser { $day } ou depois: a ordem é sorteada antes de começar
command-design-no-random = este computador não dá números aleatórios: { $why }
command-design-planned = Planejado: { $id }
command-design-about = O teste é para { $name }, e não o contrário: { $name } pode ir embora a qualquer momento, e um sinal forte de estresse termina o teste.
command-design-see = Veja o que vale em cada dia com `sayso design show { $id }`.
