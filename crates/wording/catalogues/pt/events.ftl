events-word-without-card = uma palavra sem ficha
events-reward-without-card = algo sem ficha
events-home-without-name = Uma casa sem nome
events-home = Casa: { $name }, { $zone }
events-person = Pessoa: { $name }
events-animal = Animal: { $name }
events-reward = Recompensa: { $name }
events-word = Palavra: { $word }
events-clip = Gravação de { $word }
events-board = Quadro de { $rows } por { $columns }, { $words ->
    [one] { $words } palavra
   *[other] { $words } palavras
}
events-rule = Regra da casa: { $text }
events-stage = { $word }: etapa { $stage }
events-session-began = Sessão começada: { $purpose }{ $room ->
    [none] { "" }
   *[other] , { $room }
}
events-showing = mostrar
events-inviting = convidar
events-likes-test = teste de gostos
events-check = verificação da compreensão
events-joined = Juntou-se
events-joined-after = Juntou-se após { $seconds }
events-left = Foi embora
events-session-ended = Sessão terminada: { $reason }
events-pressed-itself = { $name } apertou { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(certeza { $sure })
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(pareceu um tropeço)
}
events-pressed-to-show = Mostrado: { $word } apertado{ $sure ->
    [none] { "" }
   *[other] { " " }(certeza { $sure })
}
events-pressed-by-someone = Alguém apertou { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(certeza { $sure })
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(pareceu um tropeço)
}
events-answered = { $word }: { $answer }{ $other ->
    [none] { "" }
   *[other] { " " }({ $other })
}{ $after ->
    [none] { "" }
   *[other] { " " }após { $after }
}{ $then ->
    [none] { "" }
   *[other] ; { $name } { $then }
}
events-pressed-then = apertou { $word }
events-looked = Olhou para o quadro
events-looked-at = Olhou para { $word }
events-brushed = Roçou { $word } sem que soasse
events-round = Rodada de { $calls } começada: { $words }
events-swaps-agreed = Trocas combinadas por { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}, uma resposta em { $one_in }: { $words }
events-drawn-give-it = Sorteio para { $word }: dar
events-drawn-give-other = Sorteio para { $word }: dar { $other } no lugar
events-swaps-stopped = Trocas paradas
events-swaps-stopped-signs = Trocas paradas por sinais de estresse
events-invited = Convite a { $word } ({ $way }{ $call ->
    [none] { "" }
   *[other] , sorteado, chamada { $call }
}, espera { $wait }): { $result }
events-in-view = à vista
events-asked-pointed = perguntado, apontado
events-this-or-that = isto ou aquilo
events-pressed-at = apertou { $word } aos { $seconds }
events-answered-without-button = respondeu sem botão
events-nothing-by-wait = nada até o fim da espera
events-result-left = foi embora
events-asked-without-button = Pediu { $word } sem botão{ $how ->
    [none] { "" }
   *[other] { " " }({ $how })
}{ $shown ->
    [no] { "" }
   *[other] ; mostrado
}
events-sign = Sinal ({ $level }): { $sign }
events-fed = Comida: { $pieces ->
    [none] { "" }
   *[other] { $pieces } ×{ " " }
}{ $what }, { $kcal }
events-food = comida
events-likes-test-of = Teste de gostos com { $n ->
    [one] { $n } coisa
   *[other] { $n } coisas
}: { $format }
events-one-at-a-time = uma por vez
events-two-at-a-time = duas por vez
events-all-at-once = todas ao mesmo tempo, sem reposição
events-free-access = acesso livre
events-offered = Oferecido { $things }: { $came }
events-chose = escolheu { $what }
events-chose-none = não escolheu nenhuma
events-walked-away = foi embora
events-watched = observado durante { $seconds }
events-check-planned = Verificação da compreensão planejada: { $trials ->
    [one] { $trials } ensaio
   *[other] { $trials } ensaios
}
events-check-trial = Verificação, ensaio { $trial } de { $word }: { $came }
events-nothing = nada
events-trial-planned = Teste de uma mudança planejado: { $question } ({ $points ->
    [one] { $points } ponto
   *[other] { $points } pontos
})
events-trial-point = Teste de uma mudança, ponto { $point }: de fato { $force }
events-trial-stopped = Teste de uma mudança parado
events-remark = Observação: { $text }
events-lesson-read = Lição lida: { $lesson }
events-consent-given = Consentimento dado: { $what }
events-consent-taken-back = Consentimento retirado: { $what }
events-consent = { $purpose ->
    [coach_figures] { $who ->
        [club] quem orienta em um clube vê os números
       *[other] uma pessoa que orienta vê os números
    }
    [coach_log] { $who ->
        [club] quem orienta em um clube lê o registro
       *[other] uma pessoa que orienta lê o registro
    }
    [coach_snippets] { $who ->
        [club] quem orienta em um clube ouve sons de apertos
       *[other] uma pessoa que orienta ouve sons de apertos
    }
    [norms] os números contam nos valores de referência
   *[other] os registros podem ir para estudos
}
events-correction = Correção: { $text }
events-undone = Desfeito{ $because ->
    [none] { "" }
   *[other] : { $because }
}
events-stage-name = { $stage ->
    [show] mostrar
    [invite] convidar
    [converse] conversar
   *[other] preparar
}
events-question = { $kind ->
    [quieter] Um botão mais baixo ajuda?
    [place] Um lugar novo ajuda?
    [faster] Entregar mais rápido ajuda?
    [word] Outra palavra ajuda?
   *[other] Isto ajuda: { $label }?
}
events-a-change = uma mudança
events-in-force = { $force ->
    [changed] com a mudança
   *[other] como sempre
}
events-proposal = De { $name }: { $what }
events-proposal-answer = { $reply ->
    [accepted] Proposta de um coach aceita
    [declined] Proposta de um coach recusada
   *[said] Resposta a um coach
}{ $text ->
    [none] { "" }
   *[other] : { $text }
}
events-own-plan = Plano próprio até { $day }: { $lines }
