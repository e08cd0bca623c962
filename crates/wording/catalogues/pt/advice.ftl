advice-topic-welfare = Primeiro o bem-estar
advice-topic-ration = Comida
advice-topic-set-up = Preparar
advice-topic-likes = Gostos
advice-topic-stuck = Parada
advice-topic-show = Mostrar
advice-topic-invite = Convidar
advice-topic-converse = Responder
advice-topic-probe = Verificar
advice-sure-little = um palpite por enquanto
advice-sure-fairly = bastante seguro
advice-sure-very = seguro

advice-cause-hard-to-make-out = A palavra gravada pode ser difícil de distinguir
advice-cause-not-wanted = O que ela traz não é desejado agora
advice-cause-too-little = Mostrada pouco
advice-cause-too-late = A coisa vem tarde demais
advice-cause-avoided = { $name } evita o botão
advice-cause-time-or-place = A hora, o lugar ou o barulho
advice-cause-health = { $name } pode não estar bem
advice-cause-sounds-alike = Soa como outra palavra
advice-cause-people-differ = As pessoas respondem de modos diferentes
advice-bearing-for = os registros falam a favor
advice-bearing-perhaps = possível
advice-bearing-unknown = poucos registros para dizer
advice-bearing-against = os registros falam contra

advice-next-rest = Por enquanto sem sessão. Dê espaço a { $name } e responda aos apertos.
advice-next-session = { $minutes } min no máximo: mostre { $words }.
advice-next-words-shown = “{ $word }” { $times ->
    [1] uma vez
   *[other] { $times } vezes
}
advice-so-far = { $planned } ({ $shown } de { $of } mostradas até agora)
advice-next-words-invited = “{ $word }” { $times ->
    [1] uma vez, com convite
   *[other] { $times } vezes, { $invited } com convite
}
advice-next-answer = Responda ao que { $name } apertar.
advice-held = { $sessions ->
    [1] Uma sessão hoje, acabou às { $time }
   *[other] { $sessions } sessões hoje, a última acabou às { $time }
}: { $showings ->
    [0] nenhuma demonstração
    [1] uma demonstração
   *[other] { $showings } demonstrações
}{ $bare ->
    [0] { "" }
    [1] , um aperto sem a coisa
   *[other] , { $bare } apertos sem a coisa
}.
advice-running = Há uma sessão em andamento, desde { $time }. Vá ao quadro.
advice-next-pause = Descanso até { $time }. Depois cabe outra sessão curta, se { $name } quiser. Responda ao que { $name } apertar.
advice-next-enough = Hoje não é preciso mais nada. Responda ao que { $name } apertar.
advice-length-few-sessions = Prática comum: { $timed ->
    [0] nenhuma sessão cronometrada
    [1] só uma sessão cronometrada
   *[other] só { $timed } sessões cronometradas
} em quatro semanas.
advice-length-few-left = Prática comum: menos de um quarto de { $timed } sessões cronometradas foi deixado cedo.
advice-length-quarter-left = Um quarto de { $timed } sessões cronometradas já tinha sido deixado aos { $minutes } min; termine antes.

advice-lately-first-press = Primeiro aperto de “{ $word }” por conta própria de { $name }, { $day }.
advice-lately-more-presses = “{ $word }”: { $now ->
    [1] um aperto próprio
   *[other] { $now } apertos próprios
} em sete dias, { $before } nas quatro semanas antes.
advice-lately-check-passed = Verificação superada: { $words }, certo { $right } de { $of } vezes.
advice-lately-joined = { $name } participou de { $joined } de { $of } sessões.
advice-lately-taken = { $name } aceitou { $taken } de { $of } coisas dadas.

advice-lean-left = { $name } tende à própria esquerda: misture bem os lados e continue testando. A ordem leva isso em conta.
advice-lean-right = { $name } tende à própria direita: misture bem os lados e continue testando. A ordem leva isso em conta.
advice-lean-too-few = Poucas escolhas para dizer algo dos lados.
advice-lean-none = Nenhuma tendência a um lado além do acaso.
advice-known-well-enough = Favoritos claros por enquanto: { $best } ({ $sure } de certeza, { $n ->
    [1] um ensaio com escolha
   *[other] { $n } ensaios com escolha
}).
advice-known-enough-for-now = Não decidido, mas basta por enquanto; melhores até agora: { $best } ({ $sure } de certeza, { $n ->
    [1] um ensaio com escolha
   *[other] { $n } ensaios com escolha
}).
advice-known-not-yet = Ainda não está claro; melhores até agora: { $best } ({ $sure } de certeza, { $n ->
    [1] um ensaio com escolha
   *[other] { $n } ensaios com escolha
}).
advice-next-pair = Este par diria mais sobre quais são os melhores; os lados equilibram os anteriores.

# Where a word stands.
advice-stage-prepare = preparar
advice-stage-show = mostrar
advice-stage-invite = convidar
advice-stage-converse = conversar
