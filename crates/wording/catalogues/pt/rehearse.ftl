rehearse-title = Ensaiar
rehearse-intro = Pratique com um animal a quem nada pode fazer mal, antes de os botões chegarem ou quando quiser. Nada disso entra no caderno.
rehearse-simulation = Uma simulação: animais de verdade são diferentes.
rehearse-assumes = O que ela supõe
rehearse-name = { $who ->
    [eager] Zip
    [wary] Moth
    [old] Bramble
    [quick] Pico
   *[guards] Rusk
}
rehearse-character = { $who ->
    [eager] Zip, um cachorro jovem: vem na hora, cansa tarde
    [wary] Moth, um gato: vem quando nada é pedido
    [old] Bramble, um cachorro velho: cada passo leva seu tempo
    [quick] Pico, um papagaio: aprende rápido, aperta também por curiosidade
   *[guards] Rusk, um cachorro: não gosta de ser interrompido ao comer
}
rehearse-with = Com quem
rehearse-exercise = { $which ->
    [likes] Do que gosta?
    [showing] Apertar, dizer, dar
    [leaving] Deixar ir
    [inviting] Cinco convites
    [evening] Uma noite de apertos
   *[free] Prática livre
}
rehearse-short = { $which ->
    [likes] Pares de coisas oferecidas: o que é escolhido e com quanta certeza.
    [showing] Dois minutos para mostrar duas ou três palavras.
    [leaving] Alguém quer ir embora, e pode.
    [inviting] Cada um com sua espera inteira de cinco segundos.
    [evening] Trinta apertos, acelerados: cada um com uma resposta justa, também “agora não”.
   *[free] Cinco minutos do que você quiser.
}
rehearse-how = { $which ->
    [likes] Toque em “Oferecer duas”: você segura uma coisa de cada lado. Depois fique imóvel até { $name } escolher, ou não escolher nenhuma, e terminar. Doze pares dizem mais; menos dizem menos.
    [showing] Toque num botão: você o aperta e diz a palavra. Toque de novo para dar a coisa. Dê na hora, divida os apertos entre as palavras e deixe tempo para comer e brincar.
    [leaving] Mostre palavras como quiser. Quando { $name } for embora, deixe ser assim: sem chamar, sem nada no caminho. Depois termine.
    [inviting] Toque em “Oferecer” e num botão: você segura a coisa à vista. Depois não faça nada por cinco segundos. Venha o que vier, aperte, diga e dê.
    [evening] { $name } aperta. Responda a cada aperto: dê a coisa, diga “agora não” ou dê outra coisa. Os petiscos acabam.
   *[free] Tudo o que o quadro tem, e o que mais tenta a gente: chamar, ficar no caminho, dizer de novo.
}
rehearse-choose = Ensaiar
rehearse-lessons = Lições para isto
rehearse-start = Começar
rehearse-see = Ver como foi
rehearse-all = Todos os exercícios
rehearse-no-script = Para ensaiar são precisos scripts. As lições não precisam.
rehearse-room = A sala vista de cima: em cima o quadro e você, embaixo à direita uma cama, embaixo à esquerda a porta aberta.
rehearse-happens = O que acontece
rehearse-words = Botões do quadro
rehearse-acts = O que você pode fazer
rehearse-keys-words = os botões, em ordem
rehearse-word = { $thing ->
    [treat] Petisco
    [ball] Bola
    [out] Fora
   *[company] Companhia
}
rehearse-act = { $does ->
    [two] Oferecer duas
    [offer] Oferecer
    [again] Dizer de novo
    [not-now] Agora não
    [instead] Outra coisa
    [call] Chamar
    [block] Ficar no caminho
    [back] Afastar-se
   *[end] Terminar
}
rehearse-you = { $does ->
    [two] Você oferece duas coisas.
    [show] Você aperta “{ $word }” e diz a palavra.
    [give] Você dá: { $word }.
    [offer] Você segura à vista: { $word }. Espere.
    [again] Você diz de novo.
    [not-now] Você diz “agora não”.
    [instead] Você diz “agora não” e dá outra coisa: { $word }.
    [call] Você chama { $name }.
    [block] Você fica no caminho.
    [back] Você se afasta.
   *[end] Você termina.
}
rehearse-seen = { $what ->
    [chose] { $name } escolhe: { $word }.
    [chose-none] { $name } não escolhe nenhuma.
    [looks-up] { $name } levanta os olhos.
    [comes] { $name } vem para cá.
    [joined] { $name } está no quadro.
    [looks] { $name } olha “{ $word }”.
    [brushed] { $name } roça “{ $word }”: sem som.
    [pressed] { $name } aperta “{ $word }”.
    [took] { $name } pega: { $word }.
    [finished] { $name } terminou.
    [ignored] { $name } não pega.
    [wanders] { $name } vai fazer outra coisa.
    [leaves] { $name } vai embora.
    [gone] { $name } foi embora.
    [barred] { $name } não consegue passar.
    [eases] { $name } fica à vontade de novo.
    [wait-over] Passaram cinco segundos.
   *[unanswered] “{ $word }” ficou sem resposta.
}
rehearse-sign = { $level ->
    [strong] Sinal forte de { $name }: { $sign }.
   *[mild] Sinal leve de { $name }: { $sign }.
}
rehearse-held = À esquerda: { $left }. À direita: { $right }.
rehearse-chosen = Escolhido, das vezes oferecido: { $word }
rehearse-leans-away = inclina-se para longe do que é oferecido
rehearse-over = { $why ->
    [time] O tempo acabou.
    [done] Isso foi tudo.
   *[ended] Terminou.
}
rehearse-hand-on = Passar adiante
rehearse-hand-on-what = Este endereço leva ao mesmo exercício com o mesmo animal, e às lições dele. Não diz nada da sua casa.
rehearse-copy = Copiar o endereço
rehearse-copied = Copiado
rehearse-send = Enviar
rehearse-went = Como foi
rehearse-one-thing = Uma coisa para a próxima vez
rehearse-change = { $change ->
    [let-choose] Fique imóvel até { $name } escolher ou se virar. Sem outra palavra, sem outro par.
    [more-pairs] Ofereça mais pares: cada coisa pelo menos cinco vezes.
    [step-away] A um sinal forte, afaste-se na hora ou termine. Todo o resto pode esperar.
    [let-go] Quando { $name } for embora, deixe ser assim: sem chamar, sem nada no caminho, sem mostrar nada.
    [let-eat] Deixe { $name } comer em paz. Nada é apertado nem mostrado até isso acabar.
    [pause] A um sinal leve, faça uma pausa de cinco segundos e deixe espaço.
    [wait] Espere os cinco segundos inteiros, sem palavra nem toque. A ajuda vem depois.
    [do-not-push] Sem chamar, sem barrar, sem dizer de novo: { $name } vem por vontade própria ou não vem.
    [answer] Responda a cada aperto, também com “agora não”.
    [sooner] Dê mais cedo. Tenha a coisa na mão antes de apertar.
    [when-there] Mostre quando { $name } estiver no quadro, e coisas desejadas naquele momento.
    [slower] Deixe mais tempo entre os apertos.
    [instead] De vez em quando dê outra coisa quando for “agora não” para “{ $word }”.
    [even] Divida os apertos: mostre “{ $least }” tanto quanto “{ $word }”.
    [oftener] Mostre mais: poucas palavras, muitas vezes.
   *[carry-on] Continue assim.
}
rehearse-because = { $change ->
    [let-choose] Escolhas em paz: { $figure }
    [more-pairs] Pares: { $figure }
    [step-away] Sinais fortes respeitados: { $figure }
    [let-go] Saídas respeitadas: { $figure }
    [let-eat] Petiscos comidos em paz: { $figure }
    [pause] Sinais leves respeitados: { $figure }
    [wait] Esperas cumpridas: { $figure }
    [do-not-push] Vezes que você chamou, barrou ou disse de novo: { $figure }
    [answer] Apertos respondidos: { $figure }
    [sooner] Do aperto à coisa: { $figure }. Mire em 2 s no máximo.
    [when-there] Pego, do que você mostrou: { $figure }
    [slower] Mostrar: { $figure }
    [instead] Apertos de “{ $word }” respondidos com “agora não”: { $figure }
    [even] Mostrado: { $figure }
    [oftener] Mostrado: { $figure }
   *[carry-on] Nada aqui atrapalhou o aprendizado.
}
rehearse-would-change = Seria outra coisa se o próximo ensaio mostrar outro quadro: são poucos registros.
rehearse-care-strong = Na vida, um sinal forte termina a sessão. Mantenha distância e consulte um veterinário ou um profissional qualificado de comportamento antes de continuar.
rehearse-care-guards = Na vida, quem guarda comida pode morder: não tire nada da boca nem da tigela, mantenha crianças longe e consulte um profissional qualificado de comportamento.
rehearse-measured = Como você ensinou
rehearse-measured-what = Os números do uso real, deste único ensaio.
rehearse-row = { $which ->
    [held] Escolhas em paz
    [delay] Do seu aperto à coisa
    [answer-delay] Do aperto de { $name } à coisa
    [pace] Mostrar
    [balance] Entre as palavras
    [taken] Pego, do que você mostrou
    [waits] Esperas cumpridas
    [answered] Apertos respondidos
    [alternatives] Outra coisa dada, dos “agora não”
    [leaving] Saídas respeitadas
    [mild] Sinais leves respeitados
    [strong] Sinais fortes respeitados
    [eaten] Petiscos comidos em paz
   *[pushes] Chamou, barrou ou disse de novo
}
rehearse-times = { $times ->
    [1] uma vez
    [one] { $times } vez
   *[other] { $times } vezes
}
rehearse-k-of-n = { $k } de { $n }
rehearse-count = { $word } { $times }
rehearse-truth = O que era verdade
rehearse-truth-what = Na vida ninguém pode ver isto. Aqui a simulação diz quão provável é que { $name } aperte o botão de uma palavra quando quer a coisa.
rehearse-of-word = Palavra
rehearse-before = antes
rehearse-after = depois
rehearse-sooner = com tudo um segundo antes
rehearse-liked = { $name } gosta, o preferido primeiro: { $things }.
rehearse-asks = { $name } pede, em relação a antes: { $things }
rehearse-line = O conjunto
rehearse-line-what = { $moments } momentos em { $seconds }: em cima o que { $name } fez, embaixo o que você fez.
rehearse-lane = { $lane ->
    [animal] { $name }
    [signs] Sinais
   *[you] Você
}
rehearse-marks = Anel: veio, oferecido, “agora não” ou afastou-se. Ponto: um aperto. Quadrado: pego ou dado. Cruz: saiu, ou houve pressão. Triângulo: um sinal, cheio se forte.
rehearse-when = Quando
rehearse-what = O quê
rehearse-list = Todos os momentos em lista
rehearse-watch = Ver de novo
rehearse-same = O mesmo de novo
rehearse-another = Com outro dia de { $name }
rehearse-show-on = Mostrar a alguém
rehearse-show-on-what = O endereço desta página contém o ensaio inteiro e nada da sua casa. Envie-o ao seu coach se quiser; senão, ninguém vê.
rehearse-no-such = Não há esse exercício.
rehearse-no-acts = O que foi feito não pode ser lido neste endereço: { $item }. Comece o exercício de novo.
rehearse-practise = Ensaie: { $title }
