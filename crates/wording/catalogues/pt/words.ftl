words-first = Primeiras palavras
words-further = Propor mais palavras
words-none-yet = Ainda sem palavras. Duas ou três bastam para começar (prática comum, sem fonte).
words-take = Ficar com estas palavras
words-button-says = O botão diz
words-says = “{ $says }”:
words-untested = Ainda sem teste de gostos: do que { $name } gosta é aqui um palpite.
words-test-first = Testar antes, cerca de dez minutos
words-tested = { $trials ->
    [1] De um ensaio de um teste de gostos, da comida do dia, do tempo que leva para dar e do som das palavras.
   *[other] De { $trials } ensaios de testes de gostos, da comida do dia, do tempo que leva para dar e do som das palavras.
}
words-other-sets = Outros conjuntos ({ $sets })
words-left-out = Deixadas de fora, e por quê ({ $things })
words-why-these = Por que estas?
words-score = A melhor mistura: agradam, são dadas rápido, se distinguem bem. Pontuação { $total }: gosto e entregas { $liked }, tipos { $kinds }, sons distintos { $apart }, já ditas { $said }.
words-best-in = O melhor de todos os conjuntos em { $share } de { $draws } sorteios do que ainda não se sabe.
words-how-much = { $basis ->
    [measured] Até agora, cerca de { $times ->
        [1] uma vez
       *[other] { $times } vezes
    } por dia
   *[most] No máximo cerca de { $times ->
        [1] uma vez
       *[other] { $times } vezes
    } por dia
}{ $guess ->
    [yes] , um palpite
   *[no] { "" }
}
words-how-much-by = { $by ->
    [time] Mais não cabe em cinco minutos no painel.
    [food] A comida do dia não permite mais.
    [card] A ficha não permite mais.
   *[usual] Mais não é usual para o tipo; dê tantas vezes quanto convier.
}{ $guess ->
    [yes] { " " }Por enquanto é um palpite; seus registros o substituem.
   *[no] { "" }
}
words-not-tested = Ainda não testado: que { $name } goste é um palpite.
words-picked = Probabilidade de { $name } escolher isto em vez de algo mediano: { $figure }.
words-scored = { $format ->
    [free_access] Ocupado com isto em um teste cronometrado: { $figure }.
   *[other] Aceito em um teste: { $figure }.
}
words-seconds-measured = Dar leva cerca de { $seconds } s: medido em casa, n = { $n }.
words-seconds-kind = Dar leva cerca de { $seconds } s: como outras coisas do tipo em casa, n = { $n }, até ter número próprio.
words-seconds-card = Dar leva { $seconds } s, como diz a ficha.
words-seconds-usual = Dar leva cerca de { $seconds } s: habitual neste tipo (prática comum, sem fonte), até ser dado cinco vezes.
words-a-day-measured = Dado { $times ->
    [1] uma vez
   *[other] { $times } vezes
} em um dia normal: medido em { $days ->
    [1] um dia
   *[other] { $days } dias
}.
words-a-day-card = No máximo { $times ->
    [1] uma vez
   *[other] { $times } vezes
} por dia, como diz a ficha.
words-a-day-usual = No máximo { $times ->
    [1] uma vez
   *[other] { $times } vezes
} por dia: habitual neste tipo (prática comum, sem fonte).
words-pieces = { $pieces ->
    [1] Cabe um pedaço por dia, se não for dada outra recompensa de comida.
   *[other] Cabem { $pieces } pedaços por dia, se não for dada outra recompensa de comida.
}
words-already-said = Já dizem esta palavra muitas vezes.
words-sounds-like-one = Soa muito como “{ $other }”: outra palavra se distingue melhor.
words-how-many = têm de ser 1 a { $most } palavras para começar, não { $ticked }
words-must-not = Não deve ser dado: { $why }.
words-twice = “{ $says }” já está em outro botão; escolha outra palavra
words-no-set = Ainda sem proposta: { $usable } das coisas anotadas podem ser primeiras palavras, e são necessárias { $needed }.
words-too-many = Sem proposta: há coisas demais para comparar. Ponha algumas de lado primeiro.
words-no-allowance = Não está definido quanta comida { $name } pode ter, por isso não se pode dosar.
words-bad-figure = Um número da ficha não pode estar certo.
words-not-at-board = Não pode ser dado muitas vezes junto ao quadro, e uma primeira palavra precisa de muitas repetições rápidas. Se puder, diga na ficha.
words-no-piece = A comida do dia não deixa nem um pedaço.
words-too-slow = Leva { $seconds } s junto ao quadro, mais de { $slowest } s: repetições de menos.
words-too-seldom = Pode ser dado { $times } vezes por dia, menos de { $fewest }.
words-no-company = Não combina com nenhuma: são necessárias { $needed } palavras juntas.
words-as-good = { $cautioned ->
    [yes] Igualmente boa; o que só se dá em pouca quantidade cede o lugar. Você pode escolhê-la no lugar.
   *[no] Igualmente boa; você pode escolhê-la no lugar.
}
words-outscored = { $by ->
    [liking] Agrada menos do que as escolhidas (pontuação { $behind } menor).
    [uncertainty] Quanto agrada é menos certo: teste mais (pontuação { $behind } menor).
    [deliveries] É dado menos vezes do que as escolhidas (pontuação { $behind } menor).
    [spread] Não acrescenta um tipo novo (pontuação { $behind } menor).
    [apart] Soa mais parecida às outras do que as escolhidas (pontuação { $behind } menor).
   *[said] Ainda não a dizem, ao contrário das escolhidas (pontuação { $behind } menor).
}
words-give = Dar o que “{ $says }” pede.
words-asks-for = pede: { $name }
words-not-now = “{ $said }”, uma vez e com calma; oferecer outra coisa.
words-not-now-said = Agora não
words-size-leaves-out = e lugares por fileira deixam de fora um lugar com palavra; mude primeiro o tamanho e veja
words-cannot-give = não pode ser dado a { $name }: { $why }. Escolha outro
words-page-title = Palavras de { $name }
words-add = Adicionar uma palavra
words-labels = Etiquetas
words-where-they-are = Onde estão
words-not-drawn = O quadro ainda não está desenhado. Com ele, os apertos são reconhecidos pelo lugar.
words-edit-board = Editar o quadro
words-closing-word = palavra de encerramento
words-means = Significa
words-answer = Resposta
words-not-now-title = Agora não
words-not-written = ainda não escrito
words-given = É dado
words-card-and-stage = Ficha e etapa
words-of = de { $says }
words-these-alike = Estas soam muito parecidas:
words-different = Outra palavra para uma delas se distingue melhor.
words-off = Retiradas, ou para outros ({ $words })
words-to-others = para outros
words-shown = { $shown ->
    [0] ainda não mostrada
    [1] mostrada uma vez
   *[other] mostrada { $shown } vezes
} · { $own ->
    [0] nenhum aperto próprio
    [1] um aperto próprio
   *[other] { $own } apertos próprios
} em 28 dias
words-stage = { $stage ->
    [prepare] preparar
    [show] mostrar
    [invite] convidar
   *[converse] conversar
}
words-on-another = já está em outro botão; escolha outra palavra, ou abra essa ficha
words-gives-nothing = nada: só diz algo
words-new-title = Uma palavra nova
words-quoted = “{ $says }”
words-kept = Salvo.
words-alike-here = Soa muito parecida a outra palavra daqui e pode ser difícil de distinguir: { $how }. Outra palavra para uma delas é mais segura.
words-says-hint = curta e diferente das outras
words-means-here = Aqui significa
words-means-hint = o que pede ou diz
words-answer-by = Todos respondem assim
words-answer-hint = sempre igual, por exemplo: dar um pedaço em três segundos
words-when-not-now = Quando a resposta é “agora não”, todos
words-not-now-hint = dizem e fazem isto
words-what-given = O que é dado
words-is-closing = uma palavra de encerramento: termina a sessão e acalma
words-taught-to = Para
words-on-board = no quadro (desmarque para retirar; o anotado fica)
words-back = Voltar às palavras
words-rules-for = Regras da casa para ela
words-rules-none = Nenhuma própria.
words-no-such = Este caderno não conhece essa palavra.
words-board-title = O quadro
words-would-move = Uma palavra que muda tem de ser procurada de novo: deixe as conhecidas onde estão, se puder. Mudaria:
words-rows = Fileiras
words-columns = Lugares por fileira
words-change-size = Mudar o tamanho
words-board-language = Idioma das palavras
words-board-language-hint = o que os botões falam; as palavras que soam parecidas são encontradas pela escrita
words-not-on-it = Não estão: { $words }.
words-propose-places = Propor lugares para estas
words-places-stay = As palavras do quadro ficam. As que soam parecidas ficam separadas, e as mais usadas ao alcance.
words-yes-move = Sim, mudar
words-mat = Deixe um lugar livre junto à palavra mais apertada, separe as que soam parecidas e fixe o quadro em um tapete aderente: um quadro que escorrega ou balança é evitado. Feche as tampas das pilhas com os parafusos.
words-to-place = “{ $says }” para a fileira { $row }, lugar { $place }
words-off-board = “{ $says }” para fora do quadro
words-move-unticked = não está marcado: palavras em uso mudariam de lugar
words-size-missing = faltam; informe de 1 a 20
words-no-places = não podem ser propostos: { $why }
words-as-you-stand = Como você o vê de frente.
words-taken-off = retirada
words-which-where = Que palavra e onde, como você vê o quadro de frente
words-places = Lugares
words-place = Fileira { $row }, lugar { $place }
words-place-taken = tem uma palavra que já está na fileira { $row }, lugar { $place }; escolha um dos dois
words-recording = Gravação
words-no-recording = Aqui não está guardada nenhuma gravação. Para começar basta a do botão: grave baixinho, uma palavra, com a voz de sempre, longe do barulho. Com o mesmo som guardado aqui, um microfone pode ouvir os apertos.
words-sound-file = Arquivo de som
words-sound-file-hint = WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM; o mesmo som que está no botão
words-keep-and-check = Salvar e verificar
words-record-softly = Um som alto perto do ouvido pode assustar ou machucar: grave baixinho e deixe { $name } se aproximar.
words-check-nothing = Nada a apontar.
words-check-found = A verificação encontrou:
words-recording-of = Gravação de { $says }
words-play-unheard = Ouça-a onde { $name } não ouça: uma palavra que soa e não traz nada ensina que não significa nada.
words-sound-not-stored = Dura { $seconds } s. O arquivo de som não está guardado aqui.
words-sound-not-stored-lufs = Dura { $seconds } s, volume { $lufs } LUFS. O arquivo de som não está guardado aqui.
words-sound-unreadable = Não é possível ler o som: { $why }.
words-no-such-recording = Aqui não há tal gravação.
words-picture-told = Forma de onda e, por baixo, a força de cada tom ao longo do tempo
words-picture-label = Imagem da gravação, de { $seconds } segundos
words-stage-means = { $stage ->
    [prepare] ficha, gravação e lugar são preparados; ainda não se mostra
    [show] as pessoas apertam, dizem e dão; nada se pede
    [invite] uma oferta, uma espera; depois se mostra e se dá de qualquer forma
   *[converse] { $name } aperta sem ninguém pedir; todos respondem
}
words-stage-with = Etapa com { $name }
words-stage-now = Agora: { $stage }, { $means }.
words-figures-agree = Os números apontam para o mesmo.
words-figures-differ = Os números apontam para { $stage }: { $means }.
words-figures-behind = Por quê
words-because = Porque:
words-would-change = O que mudaria isso:
words-fact-shown = Mostrada
words-fact-shown-times = { $times ->
    [0] ainda não
    [1] uma vez
   *[other] { $times } vezes
}{ $week ->
    [0] , não nos últimos sete dias
    [1] , uma vez nos últimos sete dias
   *[other] , { $week } vezes nos últimos sete dias
}
words-fact-delay = Do aperto à entrega
words-fact-response = Apertada ao convidar e querendo
words-fact-own = Apertos próprios em 28 dias
words-never-counted = Não apertar nunca conta como não entender.
words-work-at = Trabalhar como
words-back-no-loss = Voltar uma etapa atrás não é uma perda.
words-stage-why = Por quê
words-stage-why-hint = se quiser
words-stage-set = Definir a etapa
