client-enrol-prove = Apertar agora
client-enrol-prove-now = Aperte “{ $says }” uma vez. Faltam { $seconds } s.
client-enrol-judging = Comparando com as gravações…
client-enrol-heard = Ouvido. Pronto.
client-enrol-heard-more = { $sure }% de certeza, 1 aperto.
client-enrol-unsure = Ouvido como “{ $says }”, mas só com { $sure }% de certeza. Aproxime o aparelho ou deixe o lugar mais silencioso e prove de novo. Se continuar assim, grave de novo.
client-enrol-nothing = Nada foi ouvido. O microfone está coberto, ou a pilha do botão acabou? Depois prove de novo.
client-enrol-too-quiet = Baixo demais: só { $db } dB acima do ruído do lugar. Desligue o que faz barulho ou aproxime o aparelho e prove de novo.
client-enrol-too-far = Longe demais: { $db } dB mais fraco que a gravação. Deixe o aparelho a menos de três metros do quadro e prove de novo.
client-enrol-wrong-speed = Tocou { $percent }% mais { $way ->
    [slower] devagar
   *[faster] rápido
} do que a gravação, mais do que se escuta. Verifique a pilha e grave o botão como ele toca agora.
client-enrol-another-word = Ouvido como “{ $other }” ({ $sure }% de certeza). Se você apertou “{ $says }”, as duas soam parecidas demais, ou uma gravação é do outro botão: grave de novo.
client-enrol-another-sound = Veio um som, mas não o desta gravação. Foi o botão, e não uma voz? Talvez tenham gravado por cima: então grave o botão de novo.
client-enrol-again = Provar de novo
client-enrol-skip = Pular
client-enrol-skipped = Sem prova. É escutado mesmo assim; prove quando quiser.
client-enrol-no-way = Este navegador não ouve sozinho, e este caderno não recebe som. Prove com um mais novo; a gravação está guardada.
client-enrol-failed = Não foi possível julgar ({ $why }). Tente de novo.
client-enrol-begin = Começar a gravar
client-enrol-running = Aperte agora: “{ $next }”, depois dois segundos de silêncio. Até aqui { $heard } de { $words }; faltam { $seconds } s.
client-enrol-running-all = { $heard } sons para { $words } palavras. Pare agora.
client-enrol-end = Esse foi o último
client-enrol-cutting = Cortando nas pausas…
client-enrol-none = Nenhum som se destacou. Deixe o aparelho a um palmo de cada botão, em um lugar silencioso, e comece de novo.
client-enrol-match = Tantos sons quantas palavras ({ $words }). Ouça cada um e depois guarde.
client-enrol-fewer = Menos sons ({ $sounds }) que palavras ({ $words }). Toque em “não foi apertado” onde falta uma palavra, ou comece de novo com pausas mais longas.
client-enrol-more = Mais sons ({ $sounds }) que palavras ({ $words }). Toque em “Não é um botão” em uma voz ou batida; os nomes seguintes avançam.
client-enrol-sound = Som { $number }
client-enrol-says = Ele diz
client-enrol-no-word = Nada: fica de fora
client-enrol-drop = Não é um botão
client-enrol-not-pressed = “{ $says }” não foi apertado
client-enrol-play = Tocar
client-enrol-picture = Imagem do som, { $seconds } s
client-enrol-beep = Um bipe no início foi cortado.
client-enrol-long = Longo: dois botões podem ter se juntado. Comece de novo com pausas mais longas, ou deixe de fora e grave esses dois nas fichas.
client-enrol-quiet = Baixo: só { $db } dB acima do ruído do lugar. Grave de novo mais perto.
client-enrol-keep = { $count ->
    [1] Guardar esta gravação
   *[other] Guardar estas { $count } gravações
}
client-enrol-keep-hint = As gravações em uso destas palavras são substituídas; elas ficam nas fichas das palavras.
client-enrol-keeping = Guardando { $n } de { $count }…
client-enrol-not-kept = Não foi possível guardar “{ $says }”: { $why }
client-enrol-kept = { $count ->
    [1] Uma gravação guardada. Agora prove.
   *[other] { $count } gravações guardadas. Agora prove uma depois da outra.
}
client-enrol-next = Próximo: “{ $says }”
client-enrol-of = { $n } de { $count }: “{ $says }”
client-enrol-done = Provado: { $proved } de { $count } foram ouvidos com certeza.
client-enrol-not-proved = Ainda não ouvidas com certeza:
client-enrol-start-again = Começar de novo
