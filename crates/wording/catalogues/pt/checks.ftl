checks-title = Verificações
checks-one = Uma verificação
checks-no-such = Este caderno não conhece tal verificação deste animal.
checks-design = { $design ->
    [pick_for_word] Ouvir uma palavra, escolher a coisa
    [press_under_covers] Ver uma coisa desaparecer, carregar no seu botão; botões trocados debaixo de tampas
    [wrong_delivery] Outra coisa que não a pedida
   *[press_for_thing] Ver uma coisa desaparecer, carregar no seu botão
}
checks-place = { $kind ->
    [button] Botão { $number }
   *[place] Lugar { $number }
}
checks-left = à esquerda de { $name }
checks-right = à direita de { $name }
checks-whose-left = Desenhado como { $name } o vê. Se estás de frente para { $name }, a sua esquerda fica à tua direita.
checks-quoted = “{ $word }”
checks-health = Saúde:
checks-trials = { $trials ->
    [one] Um ensaio
   *[other] { $trials } ensaios
}
checks-blind = às cegas
checks-not-blind = não às cegas
checks-intro = Uma verificação (uma sonda, na gíria da área) pergunta se { $name } se guia pela própria palavra: planeada antes, por ordem ao acaso, com uma pessoa ao lado que não pode denunciar a resposta.
checks-none-today = Hoje não há verificação: foram anotados sinais fortes de stress. Dá espaço; há de vir um dia calmo.
checks-plan = Planear uma verificação
checks-so-far = Verificações até agora
checks-none = Ainda nenhuma.
checks-open = Abrir
checks-to-designs = Uma mudança ajuda? Testes de uma mudança
checks-cannot-show = Uma verificação pode mostrar por que se guia um animal; não pode mostrar que um animal não entende. Não escolher e ir-se embora são contados à parte e nunca estão errados.
checks-finished = { $trials ->
    [one] Terminada como planeado, um ensaio
   *[other] Terminada como planeado, { $trials } ensaios
}
checks-finished-otherwise = { $trials ->
    [one] Terminada, um ensaio, mas não como planeado
   *[other] Terminada, { $trials } ensaios, mas não como planeado
}
checks-going = { $done } de { $trials } ensaios
checks-nothing-worked-out = Desta verificação não se pode calcular nada: { $why }.
checks-finds = Com este comprimento, um animal que acerta em { $share } ou mais é detetado em quatro de cada cinco verificações, palavra a palavra.
checks-finds-none = É curta de mais para detetar sequer um animal que acerta em { $share }, palavra a palavra; só uma mais longa consegue.
checks-not-as-planned = Não como planeado:
checks-taken-back = { $trials ->
    [one] 1 ensaio retirado: conta como erro.
   *[other] { $trials } ensaios retirados: contam como erros.
}
checks-changed = { $trials ->
    [one] 1 ensaio mudado depois da primeira resposta: conta como erro.
   *[other] { $trials } ensaios mudados depois da primeira resposta: contam como erros.
}
checks-again = { $trials ->
    [one] 1 ensaio respondido de novo com um número já usado: conta a primeira resposta.
   *[other] { $trials } ensaios respondidos de novo com um número já usado: conta a primeira resposta.
}
checks-left-out = { $trials ->
    [one] 1 ensaio saltado entre outros: conta como erro.
   *[other] { $trials } ensaios saltados entre outros: contam como erros.
}
checks-not-as-drawn = { $trials ->
    [one] 1 ensaio com outra palavra ou coisa que não a sorteada com a semente deste plano: conta como erro.
   *[other] { $trials } ensaios com outra palavra ou coisa que não a sorteada com a semente deste plano: contam como erros.
}
checks-beyond = { $trials ->
    [one] 1 ensaio com um número que o plano não tem: não conta.
   *[other] { $trials } ensaios com um número que o plano não tem: não contam.
}
checks-knew-answer = { $trials ->
    [one] 1 ensaio em que a pessoa junto do animal sabia a resposta: um acerto não conta como às cegas, um erro conta.
   *[other] { $trials } ensaios em que a pessoa junto do animal sabia a resposta: um acerto não conta como às cegas, um erro conta.
}
checks-earlier-rule = Sorteada por uma regra anterior, em que o último pedido denunciava alguma coisa: é mostrada e não faz subir nada.
checks-given-up = Foi planeada outra verificação antes de esta terminar: fica no conjunto, e a resposta que viria a seguir conta como erro.
checks-things-a-trial = { $choices } coisas por ensaio
checks-buttons-a-trial = { $choices } botões por ensaio
checks-not-today-space = Hoje não: foram anotados sinais fortes de stress. Dá espaço.
checks-i-set-up = Eu preparo
checks-i-am-with = Eu estou com { $name }
checks-two-phones = O melhor são dois telefones. Com um só, imprime a folha de quem prepara e dá o telefone a quem acompanha.
checks-setters-sheet = Folha de quem prepara
checks-scorers-sheet = Folha de quem anota
checks-who-does-what = Quem faz o quê e quem pode saber o quê
checks-all = Todas as verificações
checks-setter = Quem prepara
checks-setter-knows = sabe a resposta
checks-setter-picks = Dispõe as coisas segundo a lista, todas à mesma distância, e vai para onde { $name } não veja ninguém. De lá faz soar a palavra, uma vez. Não diz mais nada.
checks-setter-covers = Cobre o quadro e põe os botões debaixo das tampas segundo a lista. Deixa { $name } ver a coisa, fecha-a longe da vista e vai para onde { $name } não veja ninguém.
checks-setter-shows = Deixa { $name } ver a coisa, fecha-a e vai para onde { $name } não veja ninguém. Deixa cada botão onde está sempre.
checks-presenter = Quem acompanha
checks-must-not-know = não deve sabê-la
checks-presenter-knows = aqui sabe-a, por isso não é às cegas
checks-presenter-picks = Está com { $name }; de costas, ou de óculos escuros, enquanto se dispõem as coisas e até à escolha. Não aponta, não acena, não fala nem apressa.
checks-presenter-covers = Entra quando a coisa já não está; tira as tampas por trás, sem olhar para os botões. Não sabe onde está cada botão. Não aponta, não acena, não fala nem apressa.
checks-presenter-stands = Entra quando a coisa já não está. Fica atrás do meio do quadro e olha em frente. Não aponta, não acena, não fala nem apressa.
checks-scorer = Quem anota
checks-scorer-notes = Anota o número do que foi escolhido primeiro, sem saber o que estava certo: quem acompanha, no telefone, ou uma terceira pessoa a partir de um vídeo sem som.
checks-goes-by-place = Só para um animal que distingue os seus botões pelo aspeto, pela imagem ou pelo cheiro. Um que se guia pelo lugar ficará aqui no acaso, e isso não é um fracasso.
checks-kindly = { $stop } (virar-se, lamber os lábios, arfar, cauda recolhida, orelhas para trás, esconder-se), logo que haja um rosnado, e ao fim de dez ensaios no máximo. { $name } pode ir-se embora a qualquer momento; nunca chames { $name } de volta. O que quer que escolha, recebe: uma verificação não é uma lição, e para um animal nada está nunca errado.
checks-kindly-stop = Para a qualquer sinal de stress
checks-not-today = Hoje não: foram anotados sinais fortes de stress. Dá espaço a { $name } e verifica num dia calmo.
checks-back-to-all = Voltar às verificações
checks-too-few-words = { $words ->
    [0] Uma verificação precisa de duas palavras ou mais; { $name } não tem nenhuma.
   *[other] Uma verificação precisa de duas palavras ou mais; { $name } tem { $words }.
}
checks-to-words = Para as palavras
checks-why = Os toques do dia a dia deixam lugar a outras explicações: um olhar, um lugar preferido, uma coisa preferida. Uma verificação fecha esse lugar, se for primeiro planeada e depois feita como planeado.
checks-field-design = O que { $name } faz
checks-field-words = Palavras
checks-field-words-hint = o habitual são duas a quatro; cada uma com a sua própria coisa
checks-field-choices = Coisas ou botões tapados de cada vez
checks-field-choices-hint = 2 é o mais fácil; com mais são precisos menos ensaios. Se os botões não mudam de lugar, contam todas as marcadas
checks-field-rate = Proporção certa que vale a pena detetar, em %
checks-field-rate-hint = quanto { $name } tem de acertar para te importar; menos exige muitos mais ensaios
checks-field-who = Quem está
checks-who-two = Duas pessoas ou mais
checks-who-two-hint = Uma prepara, a outra está com { $name } e não sabe a resposta: uma verificação às cegas.
checks-who-one = Só eu
checks-who-one-hint = Sabes a resposta, por isso pistas involuntárias continuam a ser uma explicação possível, dê o que der.
checks-about-picks = Para ouvir: as coisas estão em lugares ao acaso; soa uma palavra; a que coisa vai { $name }? A ordem e os lugares ao acaso excluem quase todas as outras explicações.
checks-about-covers = Para pedir: antes de cada ensaio os botões são trocados debaixo de tampas conforme o sorteio, e a coisa fica fora da vista; quem responde não sabe onde está cada botão.
checks-suggests = Os botões não mudam de lugar, por isso um hábito de lugar daria o mesmo: pode sugerir e nada mais. Trocados debaixo de tampas, poderia mostrá-lo.
checks-count = Quantos ensaios?
checks-count-each = { $sittings ->
    [one] { $each } para cada uma de { $words } palavras, em cerca de uma ronda.
   *[other] { $each } para cada uma de { $words } palavras, em cerca de { $sittings } rondas de { $most }, em dias ou horas diferentes.
}
checks-count-chance = Por acaso, { $name } acertaria em { $share }.
checks-count-false-alarm = O acaso por si só leva uma palavra ao topo em { $share } das verificações ({ $alpha }, repartido pelas palavras).
checks-count-power = Se { $name } acertar tanto como esperas, uma palavra chega lá em { $share } das verificações.
checks-count-top = Uma palavra está no topo a partir de { $right }; bastam menos se vierem cedo. Contas binomiais exatas.
checks-count-right = { $right } certas de { $each }
checks-plan-these = { $trials ->
    [one] Planear este ensaio
   *[other] Planear estes { $trials } ensaios
}
checks-unfinished = Por terminar:
checks-unfinished-count = O que foi começado fica no conjunto. Se planeares outra do mesmo tipo, é contado um erro pela resposta não anotada.
checks-stop-here = Para aqui: foram anotados sinais fortes de stress. Dá espaço e não atraias { $name } de volta. A verificação pode continuar noutro dia.
checks-sitting-done = { $trials } ensaios hoje: é uma ronda. Descansem agora; continuem daqui a umas horas ou noutro dia.
checks-setter-only = Só para quem prepara. Quem acompanha não deve ver esta página nem o Registo.
checks-cannot-run = Esta verificação não se pode fazer daqui: { $why }.
checks-all-done = { $trials ->
    [one] O único ensaio está feito.
   *[other] Os { $trials } ensaios estão feitos.
}
checks-at-board = Este tipo é anotado no quadro, como qualquer resposta.
checks-back-to-one = Voltar à verificação
checks-trial-of = Ensaio { $number } de { $trials }
checks-lay-out = Dispõe, a partir da esquerda de { $name }
checks-asked-for = – a pedida
checks-then-play = Depois sai da vista e faz soar { $word }, uma vez.
checks-under-covers = Debaixo das tampas, a partir da esquerda de { $name }
checks-show-thing = Mostra e depois fecha: { $thing }
checks-lies-in = O seu botão está no lugar { $place }. Chama quem acompanha quando estiveres fora da vista. Põe de parte qualquer botão que não esteja na lista.
checks-its-number = Chama quem acompanha quando estiveres fora da vista. O seu botão é o número { $place }.
checks-numbers = Números dos botões
checks-numbers-how = Põe um número pequeno ao lado de cada botão, para que quem acompanha possa dizer em qual se carregou:
checks-next = Anotado? Mostrar o seguinte
checks-next-how = Muda assim que quem acompanha tocou no que aconteceu. Dispuseste algo mal? Não faças soar a palavra; dispõe de novo.
checks-noted-already = Isso já estava anotado; nada foi mudado. Anular retira a última resposta, que passa a contar como erro.
checks-thanks = Bom trabalho, { $name }.
checks-see = Ver o que deu
checks-stop-for-now = Parar por agora
checks-stop-for-now-kept = – o que foi anotado fica guardado; continua mais tarde.
checks-which = { $kind ->
    [picks] A que lugar foi { $name } primeiro?
    [place] Em que lugar carregou { $name } primeiro?
   *[button] Em que botão carregou { $name } primeiro?
}
checks-nothing = Nada
checks-away = Foi-se embora
checks-before-tap = Antes de tocar: cronometraste, ou sabias a resposta?
checks-field-seconds = Segundos até à escolha
checks-field-seconds-hint = só se alguém cronometrou
checks-field-knew = Desta vez eu sabia a resposta (vi-a ou ouvi-a)
checks-how-to-note = Desvia o olhar até à escolha. Não escolher em cerca de meio minuto é “nada”; sair é “foi-se embora”. Nenhuma está errada. { $name } recebe o que escolheu; um pedaço de comida é contado.
checks-stop-and-cautions = Para a qualquer sinal de stress. Os avisos de saúde e comida estão na página de quem prepara: que os leia primeiro.
checks-last-trial = Ensaio { $number }:
checks-a-choice = uma escolha
checks-undo = Anular
checks-undo-counts = Anular: a resposta fica no registo e conta como erro; o ensaio não volta.
checks-went-away = { $name } foi-se embora, e isso é uma resposta. Deixa ir; continuem quando { $name } voltar por si, ou noutro dia.
checks-for-setter = { $only } Dobra-a para que quem acompanha e quem anota não a vejam.
checks-for-setter-only = Só para quem prepara.
checks-column-number = N.º
checks-column-play = Fazer soar
checks-column-hide = Fechar
checks-column-button = Botão
checks-column-seconds = Segundos
checks-cross = Marca o que { $name } escolheu primeiro. Não escolher em cerca de meio minuto é { $nothing }, sair é { $away }; nenhuma está errada. Segundos só se foram cronometrados.
checks-do-not-look = Não olhes para a folha de quem prepara nem adivinhes o que foi pedido.
checks-seed = semente { $seed }
checks-cannot-draw = A ordem não se pode sortear a partir deste plano: { $why }.
checks-sitting = Ronda { $number }
checks-date-and-who = Data e hora, quem estava:
checks-prints-again = semente { $seed }: o mesmo plano imprime de novo esta ordem.
checks-nothing-done = Ainda não foi feito nada.
checks-came-out = O que deu
checks-figures = Números até agora
checks-read-any-time = Lê quando quiseres, continua ou para: as evidências são feitas para isso. O que foi começado fica no conjunto.
checks-chart = Certas, das escolhas feitas
checks-chart-axis = proporção certa
checks-chart-read = Linha vertical: o acaso, { $chance }. Barras: intervalos de 95% que valem sempre que forem lidos. Para cada palavra: das vezes em que { $name } foi a ela, quantas era a pedida; uma preferida só acerta por acaso. Contam as primeiras respostas; as retiradas contam como erros.
checks-no-choice = Não houve escolha; isso não diz nem uma coisa nem outra.
checks-went-for = { $times ->
    [one] { $name } foi a esta uma vez, e era a pedida em { $right }: { $share } ({ $low } a { $high }).
   *[other] { $name } foi a esta { $times } vezes, e era a pedida em { $right }: { $share } ({ $low } a { $high }).
}
checks-never-wrong = Nada: { $nothing }. Foi-se embora: { $away }. Nenhuma conta como erro.
checks-p-rearranged = Este botão condiz com o que foi mostrado (coisas distribuídas de novo ao acaso, toques tal como foram)? { $p }. Lê isto com a proporção certa.
checks-p-chance = { $times ->
    [one] Contra o acaso ({ $chance }, binomial exata, unilateral): { $p }, de uma escolha.
   *[other] Contra o acaso ({ $chance }, binomial exata, unilateral): { $p }, de { $times } escolhas.
}
checks-bayes-above = Fator de Bayes { $factor }: tantas vezes mais provável se a proporção certa estiver em qualquer ponto acima do acaso do que por acaso.
checks-bayes-below = Fator de Bayes 1 para { $factor }: tantas vezes mais provável por acaso do que se a proporção certa estiver em qualquer ponto acima do acaso.
checks-more-than = mais de { $number }
checks-seconds-right = { $timed ->
    [one] A única escolha certa cronometrada veio em { $seconds } s.
   *[other] Metade das { $timed } escolhas certas cronometradas veio em { $seconds } s.
}
checks-seconds-wrong = { $timed ->
    [one] A única escolha errada cronometrada veio em { $seconds } s.
   *[other] Metade das { $timed } escolhas erradas cronometradas veio em { $seconds } s.
}
checks-latency = Certas contra erradas, soma de postos, bilateral: { $p }.
checks-may-be-said = O que se pode dizer
checks-said-of-word = { $word }: { $said }.
checks-judged = Julgado sobre todas as palavras e todas as verificações alguma vez começadas em conjunto, para que muitos testes e muitas leituras não acabem numa afirmação falsa.
