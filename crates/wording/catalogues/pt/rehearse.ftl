rehearse-title = Ensaiar
rehearse-intro = Pratique com um animal a quem nada pode fazer mal, antes de os botões chegarem ou quando quiser. Nada disso entra no caderno.
rehearse-simulation = Uma simulação: animais de verdade são diferentes.
rehearse-assumes = O que ela supõe
rehearse-assumes-short = Em resumo: mostrar ensina mais quando a coisa vem na hora e é pega; menos, logo depois da última vez. O que é mostrado enquanto o animal está em outro lugar ou ainda tem algo não ensina nada; diante de um sinal, tira um pouco. “Agora não”, outra coisa ou nenhuma resposta tira um pouco. Pressa, chamar, barrar e uma sessão longa tensionam, até que um sinal aparece e o animal sai. Tudo vai umas dez vezes mais rápido que em nossos lares simulados. Quanto de cada um é escolha nossa: ninguém mediu.
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
    [evening] Uma noite de botões apertados
    [stuck] Uma palavra travada
   *[free] Prática livre
}
rehearse-short = { $which ->
    [likes] Pares de coisas oferecidas: o que é escolhido e com quanta certeza.
    [showing] Dois minutos para mostrar duas ou três palavras.
    [leaving] Alguém quer ir embora, e pode.
    [inviting] Cada um com sua espera inteira de cinco segundos.
    [evening] Até trinta apertos, acelerados, tantos quantos o animal fizer: cada um com uma resposta justa, também “agora não”.
    [stuck] Uma palavra não avança. Experimente coisas e depois diga o que a segura.
   *[free] Cinco minutos do que você quiser.
}
rehearse-how = { $which ->
    [likes] Toque em “Oferecer duas”: você segura uma coisa de cada lado. Depois fique imóvel até { $name } escolher, ou não escolher nenhuma, e terminar. Doze pares dizem mais; menos dizem menos.
    [showing] Toque num botão: você o aperta e diz a palavra. Toque de novo para dar a coisa. Dê na hora, divida os apertos entre as palavras e deixe tempo para comer e brincar.
    [leaving] Mostre palavras como quiser. Quando { $name } for embora, deixe ser assim: sem chamar, sem nada no caminho. Depois termine.
    [inviting] Toque em “Convidar” e num botão: você segura a coisa à vista. Depois não faça nada por cinco segundos. Apertou? Diga a palavra e dê na hora. Não apertou? Aperte você, diga, dê. Se { $name } foi embora, deixe estar.
    [evening] { $name } aperta. Responda a cada aperto: dê a coisa, diga “agora não” ou dê outra coisa. Os petiscos acabam.
    [stuck] A palavra com contorno não avança. Algo a segura: experimente uma coisa depois da outra, veja o que { $name } faz e termine quando tiver uma ideia. Depois você diz o que é e fica sabendo o que era verdade.
   *[free] Tudo o que o quadro tem, e o que mais tenta a gente: chamar, ficar no caminho, dizer de novo.
}
rehearse-choose = Ensaiar
rehearse-fits = { $which ->
    [showing] Antes da primeira sessão
    [inviting] Antes do primeiro convite
   *[evening] Quando já se responde a apertos
}
rehearse-others = Outros exercícios
rehearse-lessons = Lições para isto
rehearse-start = Começar
rehearse-see = Ver como foi
rehearse-all = Todos os exercícios
rehearse-no-script = Para ensaiar são precisos scripts. As lições não precisam.
rehearse-room = O cômodo visto de cima: em cima o quadro e você, embaixo à direita uma cama, embaixo à esquerda a porta aberta.
rehearse-room-likes = O cômodo visto de cima: você em cima, com uma coisa em cada mão quando oferece duas; uma cama embaixo à direita, a porta aberta embaixo à esquerda.
rehearse-happens = O que acontece
rehearse-words = Botões do quadro
rehearse-acts = O que você pode fazer
rehearse-keys-words = os botões, em ordem
rehearse-keys-count = Estas teclas valem aqui
rehearse-keys-before = Com teclado: { $list }.
rehearse-keys-one = { $key }: { $does }
rehearse-word = { $thing ->
    [treat] Petisco
    [ball] Bola
    [out] Fora
   *[company] Companhia
}
rehearse-act = { $does ->
    [two] Oferecer duas
    [offer] Convidar
    [again] Dizer de novo
    [not-now] Agora não
    [instead] Outra coisa
    [call] Chamar
    [block] Ficar no caminho
    [back] Afastar-se
    [ready] Deixar tudo à mão
    [softer] Baixar o som
    [quiet] Fechar as janelas
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
    [ready] Você busca as coisas e as deixa à mão.
    [softer] Você põe um pano sobre os alto-falantes: todos os botões ficam mais baixos.
    [quiet] Você fecha janelas e portas.
   *[end] Você termina.
}
rehearse-you-gone = { $does ->
    [call] Você chama: { $name } ouve lá fora e não volta.
   *[block] Você fica na porta: { $name } não volta.
}
rehearse-seen = { $what ->
    [chose] { $name } escolhe e tem: { $word }.
    [chose-none] { $name } não escolhe nenhuma.
    [looks-up] { $name } levanta os olhos.
    [comes] { $name } vem para cá.
    [joined] { $name } está no quadro.
    [joined-likes] { $name } está na sua frente.
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
    [noise] Lá fora algo bate.
    [startled] { $name } recua diante de “{ $word }”.
    [fetches] Não está à mão: { $word }. Você vai buscar.
    [fetched] Você voltou com: { $word }.
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
    [soften] Uma vez que { $name } recuou diante de “{ $word }”: não aperte de novo antes que fique mais baixo.
    [longer] Fique os dois minutos, enquanto { $name } quiser.
    [longer-evening] Fique a noite toda, enquanto { $name } quiser.
    [more-invitations] Convide cinco vezes, cada uma com toda a espera.
    [let-choose] Fique imóvel até { $name } escolher ou se virar. Sem outra palavra, sem outro par.
    [more-pairs] Ofereça mais pares: cada coisa pelo menos cinco vezes.
    [step-away] A um sinal forte, afaste-se na hora ou termine. Todo o resto pode esperar.
    [let-go] Quando { $name } for embora, deixe ser assim: sem chamar, sem nada no caminho, sem mostrar nada.
    [let-eat] Deixe { $name } aproveitar em paz o que pegou. Nada é apertado nem mostrado até isso acabar.
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
    [give] Dê o que o botão diz, depois de cada aperto seu.
    [try] Experimente mais coisas antes de dizer o que a segura: mostrar, oferecer duas, deixar à mão, baixar o som, fechar as janelas.
    [stay] { $name } ainda não tinha ido. Fique até { $name } ir, e então deixe estar.
    [too-soon] Aconteceu pouco demais para dizer algo. Tente de novo, sem pressa.
    [after-wait] Passados os cinco segundos, aperte você, diga a palavra e dê a coisa. A espera nunca acaba em nada.
    [when-there-invited] Convide quando { $name } está no quadro. Quem está em outro lugar fica em paz.
    [wanted] Convide com o que { $name } quer naquele momento.
    [wanted-shown] Mostre o que { $name } quer naquele momento.
    [vet] Na vida: pare e pergunte a um veterinário. As lições podem esperar.
    [give-oftener] Dê mais vezes o que “{ $word }” diz. Onde não for possível, dê em outro momento, sem pedido.
    [used-up] Todos os petiscos da noite foram dados. Continue respondendo a “{ $word }” com “agora não” ou com outra coisa.
    [shorter] Faça mais curto: termine enquanto { $name } ainda gosta.
    [shorter-left] Quem vai embora já deu a sessão por encerrada. Por hoje, pare aí.
    [give-never] Dê o que o botão diz sempre que der, antes de tudo com “{ $word }”. O que não pode ser agora talvez possa em outra hora.
   *[carry-on] Continue assim.
}
rehearse-because = { $change ->
    [soften] Apertado de novo depois que { $name } recuou: { $figure }
    [longer] Você terminou depois de { $figure }.
    [longer-evening] Você terminou depois de { $figure }.
    [more-invitations] Convites: { $figure }
    [let-choose] Escolhas em paz: { $figure }
    [more-pairs] Pares: { $figure }
    [step-away] Sinais fortes respeitados: { $figure }
    [let-go] Saídas respeitadas: { $figure }
    [let-eat] Aproveitado em paz, do que foi pego: { $figure }
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
    [give] Dado, do que você apertou: { $figure }
    [try] Coisas diferentes experimentadas: { $figure }
    [stay] { $name } não foi embora, então nada se pode dizer de deixar ir.
    [too-soon] Ninguém foi convidado; nada foi mostrado, dado nem respondido.
    [after-wait] Mostrado e dado depois da espera: { $figure }
    [when-there-invited] Convites com { $name } no quadro ou a caminho: { $figure }
    [wanted] Pego, do que você deu depois dos seus convites: { $figure }
    [wanted-shown] Pego, do que você mostrou no quadro: { $figure }
    [vet] { $name } não estava bem. Na vida ninguém vê isso com certeza em um quadro: uma mudança ao comer, mover-se ou apertar é motivo bastante.
    [give-oftener] “{ $word }” caiu aqui. Dos apertos dela, respondidos com “agora não” ou outra coisa: { $figure }
    [used-up] “{ $word }” caiu mesmo assim. Dos apertos dela, respondidos com “agora não” ou outra coisa: { $figure }
    [shorter] No quadro até você pedir algo pela última vez: { $figure }. Para { $name } fica longo depois de uns { $word }.
    [shorter-left] { $name } saiu depois de { $figure } no quadro. Quando { $name } voltou, você continuou.
    [give-never] Nenhum aperto recebeu aqui o que o botão diz. Dos de “{ $word }”, respondidos com “agora não” ou outra coisa: { $figure }
    [carry-on-likes] Cada escolha ficou com { $name }.
    [carry-on-no-choice] Nenhum par chegou a uma escolha, e nada do que você fez atrapalhou.
   *[carry-on] Nada aqui atrapalhou o aprendizado.
}
rehearse-would-change = O próximo ensaio pode apontar outra coisa: este foi curto, e poucos registros dizem pouco.
rehearse-care-strong = Na vida, um sinal forte termina a sessão. Mantenha distância e consulte um veterinário ou um profissional qualificado de comportamento antes de continuar.
rehearse-care-guards = Na vida, quem protege a comida pode morder: não tire nada da boca nem da tigela, mantenha crianças longe e consulte um profissional qualificado de comportamento.
rehearse-care-likes = Na vida não teste gostos com comida ou coisas que alguém protege.
rehearse-measured = Como você ensinou
rehearse-measured-what = Os números do uso real, deste único ensaio.
rehearse-row = { $which ->
    [paid] Dado, do que você apertou
    [held] Escolhas em paz
    [delay] Do seu aperto à coisa
    [answer-delay] Do aperto de { $name } à coisa
    [pace] Mostrar
    [balance] Entre as palavras
    [taken] Pego, do que você mostrou
    [waits] Esperas cumpridas
    [answered] Apertos respondidos
    [alternatives] Outra coisa dada, onde não foi o que se apertou
    [leaving] Saídas respeitadas
    [mild] Sinais leves respeitados
    [strong] Sinais fortes respeitados
    [eaten] Aproveitado em paz, do que foi pego
    [given] Coisas dadas
    [after-wait] Mostrado e dado depois da espera
    [invited-there] Convites com { $name } lá ou a caminho
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
rehearse-truth-what = Na vida ninguém pode ver isto. Aqui a simulação diz quão provável é que { $name } aperte o botão de uma palavra quando quer a coisa. A última coluna: se tudo tivesse vindo o mais cedo possível, no máximo um segundo antes.
rehearse-of-word = Palavra
rehearse-before = antes
rehearse-after = depois
rehearse-sooner = 1 s antes
rehearse-liked = { $name } gosta, o preferido primeiro: { $things }.
rehearse-likes-told = { $same ->
    [yes] O mais escolhido foi também o mais querido. Mas cada coisa foi mostrada no máximo { $times }, e uma ou duas escolhas por acaso mudam a ordem: poucos pares não separam gostos próximos.
   *[no] Mais escolhido: { $chosen }. Mais querido: { $liked }. Cada coisa foi mostrada no máximo { $times }, e uma ou duas escolhas por acaso mudam a ordem: poucos pares não separam gostos próximos.
}
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
rehearse-at-home = Este caderno só responde em casa, então o endereço inteiro não abre em outro lugar. O que se copia é a parte que vem depois: quem tem um caderno próprio, ou está no mesmo servidor, põe atrás do seu.
rehearse-no-such = Não há esse exercício.
rehearse-no-acts = O que foi feito não pode ser lido neste endereço: { $item }. Comece o exercício de novo.
rehearse-practise = Ensaie: { $title }
rehearse-who = { $who ->
    [eager] Zip, um cachorro jovem
    [wary] Moth, um gato
    [old] Bramble, um cachorro velho
    [quick] Pico, um papagaio
   *[guards] Rusk, um cachorro que protege a comida
}
rehearse-whoswho = Quem você pode encontrar
rehearse-the-lesson = A lição para isto: { $title }
rehearse-gain = Com todo o resto igual, só isto teria levado as palavras de { $was } a { $would }, em média.
rehearse-gain-given = Se cada aperto que ficou sem resposta tivesse recebido a coisa, com todo o resto igual, as palavras teriam ido de { $was } a { $would }, em média. “Agora não” também é resposta, e traz menos.
rehearse-asks-more = { $name } pede mais do que antes: { $things }
rehearse-asks-less = { $name } pede menos do que antes: { $things }
rehearse-asks-same = { $name } pede tudo mais ou menos como antes.
rehearse-stuck-word = A palavra que não avança: “{ $word }”
rehearse-before-shown = Do caderno, mostrado nas últimas três semanas: { $list }. Para uma palavra, menos de dois por dia (42 em três semanas) é pouco.
rehearse-name-it = O que segura “{ $word }”?
rehearse-name-help = Diga o que pensa antes de continuar a ler. Ninguém fica sabendo.
rehearse-name-button = Dizer
rehearse-held-up = { $hit ->
    [yes] Você disse, e era isso: { $cause }.
   *[no] Era outra coisa: { $cause }. Você disse: { $said }.
}
rehearse-showed = { $cause ->
    [not-wanted] Como se viu: a coisa deixada ou não escolhida, { $figure }. “Oferecer duas” mostra isso sem botão.
    [too-late] Como se viu: tempo até você voltar com ela, { $figure }. Com tudo à mão nada chega tarde.
    [avoided] Como se viu: recuou quando você apertou, { $figure }. Mais baixo, o botão é apertado.
    [time-or-place] Como se viu: um sinal ou ir embora logo depois de uma batida, { $figure }. Com as janelas fechadas não há nenhum.
    [health] Como se viu: coisas deixadas, até a preferida, { $figure }; e cada passo lento. Nada do que você experimentou resolve. Na vida: consulte primeiro um veterinário.
   *[too-little] Como se viu: nada impedia, e cada vez mostrada ensinou. Mostrado: { $figure }.
}
rehearse-unseen = { $cause ->
    [not-wanted] Você não chegou a ver: dê a coisa, ou ofereça duas.
    [too-late] Você não chegou a ver: mostre a palavra e dê a coisa.
    [avoided] Você não chegou a ver: aperte o botão com { $name } por perto.
    [time-or-place] Você não chegou a ver: espere uma batida e procure um sinal.
    [health] Você não chegou a ver: dê o que { $name } mais gosta. Na vida: consulte primeiro um veterinário.
   *[too-little] Você não chegou a ver: mostre a palavra.
}
rehearse-put-right = { $cause ->
    [too-late] Você corrigiu antes que aparecesse: com tudo à mão, nada mais chegou tarde.
    [avoided] Você corrigiu antes que aparecesse: mais baixo, o botão não assusta mais.
   *[time-or-place] Você corrigiu antes que aparecesse: com as janelas fechadas, nenhuma batida chega.
}
rehearse-showings = três semanas antes: { $before }; aqui: { $here }
rehearse-notebook = O que o caderno teria dito
rehearse-notebook-what = De seis semanas de registros de uma casa assim e desta sessão, com as mesmas regras do uso real. O que ele nomeia primeiro nem sempre é verdade.
rehearse-advisor = { $cause }: { $bearing }.
rehearse-three-more = Palavras que soam parecidas, uma gravação difícil de distinguir e pessoas que respondem de modos diferentes também podem segurar uma palavra. Este exercício não as tem.
rehearse-share = { $club ->
    [yes] Compartilhar isto com { $name } e o clube
   *[no] Compartilhar isto com { $name }
}
rehearse-share-what = { $club ->
    [yes] O que vai para { $name }, na página Combinado: exercício e animal, seu nome, e de “Como você ensinou” os segundos e as proporções do que foi pego, esperado, respondido, atendido, deixado ir e deixado em paz, cada uma com seu número. O que não vai: em que ritmo e com que divisão você mostrou, o que apertou sem dar, onde estava o animal quando você convidou, o que veio depois da espera, quantas vezes chamou, barrou o caminho ou repetiu; nenhum momento, nem o que era verdade. Os outros coaches do clube também leem: isto foi entregue em nome dele. Sem este toque ninguém vê; naquela página você pode retirar.
   *[no] O que vai para { $name }, na página Combinado: exercício e animal, seu nome, e de “Como você ensinou” os segundos e as proporções do que foi pego, esperado, respondido, atendido, deixado ir e deixado em paz, cada uma com seu número. O que não vai: em que ritmo e com que divisão você mostrou, o que apertou sem dar, onde estava o animal quando você convidou, o que veio depois da espera, quantas vezes chamou, barrou o caminho ou repetiu; nenhum momento, nem o que era verdade. Quem continuar no lugar de { $name } também lê. Sem este toque ninguém vê; naquela página você pode retirar.
}
