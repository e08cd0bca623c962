checks-title = Verificações
checks-one = Uma verificação
checks-no-such = Este caderno não conhece tal verificação deste animal.
checks-design = { $design ->
    [pick_for_word] Ouvir uma palavra, escolher a coisa
    [press_under_covers] Ver uma coisa sumir, apertar o botão dela; botões trocados debaixo de tampas
    [wrong_delivery] Outra coisa no lugar da pedida
   *[press_for_thing] Ver uma coisa sumir, apertar o botão dela
}
checks-place = { $kind ->
    [button] Botão { $number }
   *[place] Lugar { $number }
}
checks-left = à esquerda de { $name }
checks-right = à direita de { $name }
checks-whose-left = Desenhado como { $name } vê. Se você está de frente para { $name }, a esquerda de { $name } fica à sua direita.
checks-mark-asked-for = { $mark } marca o que é pedido.
checks-quoted = “{ $word }”
checks-health = Saúde:
checks-trials = { $trials ->
    [1] Um ensaio
   *[other] { $trials } ensaios
}
checks-blind = às cegas
checks-not-blind = não às cegas
checks-intro = Uma verificação (uma sonda, no jargão da área) pergunta se { $name } se guia pela própria palavra: planejada antes, em ordem sorteada, com uma pessoa ao lado que não pode revelar a resposta.
checks-none-today = Hoje não há verificação: foram anotados sinais fortes de estresse. Dê espaço; um dia calmo virá.
checks-plan = Planejar uma verificação
checks-so-far = Verificações até agora
checks-none = Ainda nenhuma.
checks-open = Abrir
checks-to-designs = Uma mudança ajuda? Testes de uma mudança
checks-cannot-show = Uma verificação pode mostrar por que se guia um animal; não pode mostrar que um animal não entende. Não escolher e ir embora são contados à parte e nunca estão errados.
checks-finished = { $trials ->
    [1] Terminada como planejado, um ensaio
   *[other] Terminada como planejado, { $trials } ensaios
}
checks-finished-otherwise = { $trials ->
    [1] Terminada, um ensaio, mas não como planejado
   *[other] Terminada, { $trials } ensaios, mas não como planejado
}
checks-going = { $trials ->
    [1] { $done } de um ensaio
   *[other] { $done } de { $trials } ensaios
}
checks-nothing-worked-out = Desta verificação não se pode calcular nada: { $why }.
checks-finds = Com este comprimento, um animal que acerta em { $share } ou mais é detectado em quatro de cada cinco verificações, palavra a palavra.
checks-finds-none = É curta demais para detectar até mesmo um animal que acerta em { $share }, palavra a palavra; só uma mais longa consegue.
checks-not-as-planned = Não como planejado:
checks-taken-back = { $trials ->
    [1] 1 ensaio retirado: conta como erro.
   *[other] { $trials } ensaios retirados: contam como erros.
}
checks-changed = { $trials ->
    [1] 1 ensaio mudado depois da primeira resposta: conta como erro.
   *[other] { $trials } ensaios mudados depois da primeira resposta: contam como erros.
}
checks-again = { $trials ->
    [1] 1 ensaio respondido de novo com um número já usado: conta a primeira resposta.
   *[other] { $trials } ensaios respondidos de novo com um número já usado: conta a primeira resposta.
}
checks-left-out = { $trials ->
    [1] 1 ensaio pulado entre outros: conta como erro.
   *[other] { $trials } ensaios pulados entre outros: contam como erros.
}
checks-not-as-drawn = { $trials ->
    [1] 1 ensaio com outra palavra ou coisa que não a sorteada com a semente deste plano: conta como erro.
   *[other] { $trials } ensaios com outra palavra ou coisa que não a sorteada com a semente deste plano: contam como erros.
}
checks-beyond = { $trials ->
    [1] 1 ensaio com um número que o plano não tem: não conta.
   *[other] { $trials } ensaios com um número que o plano não tem: não contam.
}
checks-knew-answer = { $trials ->
    [1] 1 ensaio em que a pessoa junto ao animal sabia a resposta: um acerto não conta como às cegas, um erro conta.
   *[other] { $trials } ensaios em que a pessoa junto ao animal sabia a resposta: um acerto não conta como às cegas, um erro conta.
}
checks-earlier-rule = Sorteada por uma regra anterior, em que o último pedido revelava alguma coisa: é mostrada e não faz subir nada.
checks-given-up = Foi planejada outra verificação antes de esta terminar: fica no conjunto, e a resposta que viria a seguir conta como erro.
checks-things-a-trial = { $choices } coisas por ensaio
checks-buttons-a-trial = { $choices } botões por ensaio
checks-not-today-space = Hoje não: foram anotados sinais fortes de estresse. Dê espaço.
checks-i-set-up = Eu preparo
checks-i-am-with = Eu estou com { $name }
checks-go-on-alone = Ir para o próximo ensaio
checks-two-phones = O melhor são dois celulares. Com um só, imprima a folha de quem prepara e dê o celular a quem acompanha.
checks-setters-sheet = Folha de quem prepara
checks-scorers-sheet = Folha de quem anota
checks-who-does-what = Quem faz o quê e quem pode saber o quê
checks-all = Todas as verificações
checks-setter = Quem prepara
checks-setter-knows = sabe a resposta
checks-setter-picks = Dispõe as coisas segundo a lista, todas à mesma distância, e vai para onde { $name } não veja ninguém. De lá faz soar a palavra, uma vez. Não diz mais nada.
checks-setter-covers = Cobre o quadro e põe os botões debaixo das tampas segundo a lista. Deixa { $name } ver a coisa, guarda a coisa longe da vista e vai para onde { $name } não veja ninguém.
checks-setter-shows = Deixa { $name } ver a coisa, guarda a coisa longe da vista e vai para onde { $name } não veja ninguém. Deixa cada botão onde sempre está.
checks-presenter = Quem acompanha
checks-alone = A verificação, a sós
checks-must-not-know = não deve saber a resposta
checks-presenter-knows = aqui sabe a resposta, por isso não é às cegas
checks-presenter-picks = Está com { $name }; de costas, ou de óculos escuros, enquanto as coisas são dispostas e até a escolha. Não aponta, não acena, não fala nem apressa.
checks-presenter-covers = Entra quando a coisa já não está; tira as tampas por trás, sem olhar para os botões. Não sabe onde está cada botão. Não aponta, não acena, não fala nem apressa.
checks-presenter-stands = Entra quando a coisa já não está. Fica atrás do meio do quadro e olha em frente. Não aponta, não acena, não fala nem apressa.
checks-scorer = Quem anota
checks-scorer-notes = Anota o número do que foi escolhido primeiro, sem saber o que estava certo: quem acompanha, no celular, ou uma terceira pessoa a partir de um vídeo sem som.
checks-goes-by-place = Só para um animal que distingue seus botões pela aparência, pela imagem ou pelo cheiro. Um que se guia pelo lugar ficará aqui no acaso, e isso não é um fracasso.
checks-kindly = { $stop } ({ $signs }), ao primeiro sinal forte, e após dez ensaios no máximo. { $name } pode ir embora a qualquer momento; nunca chame { $name } de volta. Seja qual for a escolha, { $name } recebe: uma verificação não é uma lição, e para um animal nada está nunca errado.
checks-kindly-stop = Pare a qualquer sinal de estresse
checks-not-today = Hoje não: foram anotados sinais fortes de estresse. Dê espaço a { $name } e verifique em um dia calmo.
checks-back-to-all = Voltar às verificações
checks-too-few-words = { $words ->
    [0] Uma verificação precisa de duas palavras ou mais; { $name } não tem nenhuma.
   *[other] Uma verificação precisa de duas palavras ou mais; { $name } tem { $words }.
}
checks-to-words = Para as palavras
checks-why = Os apertos do dia a dia deixam lugar a outras explicações: um olhar, um lugar preferido, uma coisa preferida. Uma verificação fecha esse lugar, se for primeiro planejada e depois feita como planejado.
checks-field-design = O que { $name } faz
checks-field-words = Palavras
checks-field-words-hint = o habitual são duas a quatro; cada uma com sua própria coisa
checks-field-choices = Coisas ou botões cobertos por vez
checks-field-choices-hint = 2 é o mais fácil; com mais, bastam menos ensaios. Se os botões não mudam de lugar, contam todas as marcadas
checks-field-rate = Acertos, no mínimo, em %
checks-field-rate-hint = quanto { $name } tem de acertar para importar a você; menos exige muitos mais ensaios
checks-field-who = Quem está
checks-who-two = Duas pessoas ou mais
checks-who-two-hint = Uma prepara, a outra está com { $name } e não sabe a resposta: uma verificação às cegas.
checks-who-one = Só eu
checks-who-one-hint = Você sabe a resposta, por isso pistas involuntárias continuam sendo uma explicação possível, seja qual for o resultado.
checks-about-picks = Para ouvir: as coisas estão em lugares ao acaso; soa uma palavra; a que coisa vai { $name }? A ordem e os lugares ao acaso excluem quase todas as outras explicações.
checks-about-covers = Para pedir: antes de cada ensaio os botões são trocados debaixo de tampas conforme o sorteio, e a coisa fica fora da vista; quem responde não sabe onde está cada botão.
checks-suggests = Os botões não mudam de lugar, por isso um hábito de lugar daria o mesmo: pode sugerir e nada mais. Trocados debaixo de tampas, poderia mostrá-lo.
checks-count = Quantos ensaios?
checks-count-each = { $sittings ->
    [1] { $each } para cada uma de { $words } palavras, em cerca de uma sessão.
   *[other] { $each } para cada uma de { $words } palavras, em cerca de { $sittings } sessões de { $most }, em dias ou horas diferentes.
}
checks-count-chance = Por acaso, { $name } acertaria em { $share }.
checks-count-false-alarm = Só o acaso leva uma palavra ao topo em { $share } das verificações ({ $alpha }, repartido pelas palavras).
checks-count-power = Se { $name } acertar tanto quanto você espera, uma palavra chega lá em { $share } das verificações.
checks-count-top = Uma palavra está no topo a partir de { $right }; bastam menos se vierem cedo. Contas binomiais exatas.
checks-count-right = { $right } certas de { $each }
checks-count-by-lot = A palavra é sorteada a cada vez, para que a última não revele a próxima: { $each } é a média, e uma palavra que veio menos pode precisar de mais ensaios.
checks-plan-these = { $trials ->
    [1] Planejar este ensaio
   *[other] Planejar estes { $trials } ensaios
}
checks-unfinished = Ainda não terminadas:
checks-unfinished-count = O que foi começado fica no conjunto. Se você planejar outra do mesmo tipo, é contado um erro pela resposta não anotada.
checks-stop-here = Pare aqui: foram anotados sinais fortes de estresse. Dê espaço e não atraia { $name } de volta. A verificação pode continuar em outro dia.
checks-sitting-done = { $trials } ensaios hoje: é uma sessão. Descansem agora; continuem daqui a algumas horas ou em outro dia.
checks-setter-only = Só para quem prepara. Quem acompanha não deve ver esta página nem o Registro.
checks-cannot-run = Esta verificação não pode ser feita daqui: { $why }.
checks-all-done = { $trials ->
    [1] O único ensaio está feito.
   *[other] Os { $trials } ensaios estão feitos.
}
checks-at-board = Este tipo é anotado no quadro, como qualquer resposta.
checks-back-to-one = Voltar à verificação
checks-trial-of = Ensaio { $number } de { $trials }
checks-lay-out = Disponha, a partir da esquerda de { $name }
checks-asked-for = – a pedida
checks-then-play = Depois saia da vista e faça soar { $word }, uma vez.
checks-then-play-alone = Depois dê um passo atrás, olhe para a frente e toque { $word }, uma vez. Não diga mais nada nem aponte.
checks-under-covers = Debaixo das tampas, a partir da esquerda de { $name }
checks-show-thing = Mostre e depois guarde longe da vista: { $thing }
checks-lies-in = O botão dela está no lugar { $place }. Chame quem acompanha quando você estiver fora da vista. Ponha de lado qualquer botão que não esteja na lista.
checks-lies-in-alone = O botão está no lugar { $place }. Deixe de lado os botões que não estão na lista. Tire as coberturas por trás, olhe para a frente e não diga nada.
checks-its-number = Chame quem acompanha quando você estiver fora da vista. O botão dela é o número { $place }.
checks-its-number-alone = O botão é o número { $place }. Fique atrás do meio do quadro, olhe para a frente e não diga nada.
checks-numbers = Números dos botões
checks-numbers-how = Ponha um número pequeno ao lado de cada botão, para que quem acompanha possa dizer qual foi apertado:
checks-next = Anotado? Mostrar o seguinte
checks-next-how = Muda assim que quem acompanha tocar no que aconteceu. Você dispôs algo errado? Não faça soar a palavra; disponha de novo.
checks-laid = Pronto. O que { $name } fez?
checks-noted-already = Isso já estava anotado; nada foi mudado. Desfazer retira a última resposta, que passa a contar como erro.
checks-thanks = Bom trabalho, { $name }.
checks-see = Ver o resultado
checks-stop-for-now = Parar por agora
checks-stop-for-now-kept = – o que foi anotado fica guardado; continua mais tarde.
checks-go-on = Continuar mesmo assim
checks-note-sign = Um sinal de estresse? Anote no quadro de { $name }
checks-which = { $kind ->
    [picks] A que lugar { $name } foi primeiro?
    [place] Que lugar { $name } apertou primeiro?
   *[button] Que botão { $name } apertou primeiro?
}
checks-nothing = Nada
checks-away = Foi embora
checks-before-tap = { $blind ->
    [yes] Cronometrou? Sabia a resposta? Diga antes
   *[other] Cronometrou? Diga antes
}
checks-field-seconds = Segundos até a escolha
checks-field-seconds-hint = só se alguém cronometrou
checks-field-knew = Desta vez eu sabia a resposta (vi ou ouvi)
checks-how-to-note = Desvie o olhar até a escolha. Não escolher em cerca de meio minuto é “nada”; sair é “foi embora”. Nenhuma das duas está errada. { $name } recebe o que escolheu; um pedaço de comida é contado.
checks-stop-and-cautions = Pare a qualquer sinal de estresse. Os avisos de saúde e comida estão na página de quem prepara: leia primeiro quem prepara.
checks-last-trial = Ensaio { $number }:
checks-a-choice = uma escolha
checks-undo = Desfazer
checks-undo-counts = Desfazer: a resposta fica no registro e conta como erro; o ensaio não volta.
checks-went-away = { $name } foi embora, e isso é uma resposta. Deixe ir; continuem quando { $name } voltar por conta própria, ou em outro dia.
checks-for-setter = { $only } Dobre a folha para que quem acompanha e quem anota não a vejam.
checks-for-setter-only = Só para quem prepara.
checks-column-number = N.º
checks-column-play = Fazer soar
checks-column-hide = Guardar
checks-column-button = Botão
checks-column-seconds = Segundos
checks-cross = Marque o que { $name } escolheu primeiro. Não escolher em cerca de meio minuto é { $nothing }, sair é { $away }; nenhuma está errada. Segundos só se foram cronometrados.
checks-do-not-look = Não olhe a folha de quem prepara nem tente adivinhar o que foi pedido.
checks-cannot-draw = A ordem não pode ser sorteada deste plano: { $why }.
checks-sitting = Sessão { $number }
checks-date-and-who = Data e hora, quem estava:
checks-prints-again = semente { $seed }: o mesmo plano imprime de novo esta ordem.
checks-nothing-done = Ainda não foi feito nada.
checks-came-out = O resultado
checks-this-not-blind = Esta verificação não foi às cegas: quem anotou sabia a resposta. Onde abaixo se cita uma verificação às cegas, é uma anterior.
checks-figures = Números até agora
checks-read-any-time = Leia quando quiser, continue ou deixe aqui: nada precisa ser fechado. As evidências são feitas para isso. O que foi começado fica no conjunto.
checks-chart = Certas, das escolhas feitas
checks-chart-axis = parte certa
checks-chart-read = Linha vertical: o acaso, { $chance }. Barras: intervalos de 95% que valem a qualquer leitura. Para cada palavra: das vezes em que { $name } foi a ela, quantas era a pedida; uma preferida só acerta por acaso. Contam as primeiras respostas; as retiradas contam como erros.
checks-no-choice = Não houve escolha; isso não diz nem uma coisa nem outra.
checks-went-for = { $times ->
    [1] { $name } foi a esta uma vez, e era a pedida em { $right }: { $share } ({ $low } a { $high }).
   *[other] { $name } foi a esta { $times } vezes, e era a pedida em { $right }: { $share } ({ $low } a { $high }).
}
checks-never-wrong = Nada: { $nothing }. Foi embora: { $away }. Nenhuma conta como erro.
checks-p-rearranged = Este botão condiz com o que foi mostrado (coisas distribuídas de novo ao acaso, apertos tais como foram)? { $p }. Leia isto com a parte certa.
checks-p-chance = { $times ->
    [1] Contra o acaso ({ $chance }, binomial exata, unilateral): { $p }, de uma escolha.
   *[other] Contra o acaso ({ $chance }, binomial exata, unilateral): { $p }, de { $times } escolhas.
}
checks-bayes-above = Fator de Bayes { $factor }: tantas vezes mais provável se a parte certa estiver em qualquer ponto acima do acaso do que por acaso.
checks-bayes-below = Fator de Bayes 1 para { $factor }: tantas vezes mais provável por acaso do que se a parte certa estiver em qualquer ponto acima do acaso.
checks-more-than = mais de { $number }
checks-seconds-right = { $timed ->
    [1] A única escolha certa cronometrada veio em { $seconds } s.
   *[other] Metade das { $timed } escolhas certas cronometradas veio em { $seconds } s.
}
checks-seconds-wrong = { $timed ->
    [1] A única escolha errada cronometrada veio em { $seconds } s.
   *[other] Metade das { $timed } escolhas erradas cronometradas veio em { $seconds } s.
}
checks-latency = Certas contra erradas, soma de postos, bilateral: { $p }.
checks-may-be-said = O que se pode dizer
checks-said-of-word = { $word }: { $said }.
checks-judged = Julgado sobre todas as palavras e todas as verificações já começadas, em conjunto, para que muitos testes e muitas leituras não acabem em uma afirmação falsa.
