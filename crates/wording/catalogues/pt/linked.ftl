# Um caderno em casa ligado à sua casa em um servidor: a página do caderno e as do servidor.
linked-title = Ligado a um servidor
linked-what = Uma ligação mantém iguais este caderno e sua casa em um servidor. O que você escreve aqui vai para lá. O que se escreve lá vem para cá, como as notas de um coach.
linked-what-offline = Sem rede, este caderno funciona como sempre. O que espera vai quando o servidor responde de novo.
linked-step-code = No servidor, abra “Quem pode ver isto”, depois “Cadernos em casa”, e faça um código.
linked-step-open = No caderno de casa, abra Pessoas e depois “Ligado a um servidor”.
linked-step-paste = Cole lá o texto inteiro com o código.
linked-step-yes = Veja o que vai para onde e diga sim. Antes disso nada do que está escrito no caderno é enviado; o servidor só fica sabendo o nome da casa.
linked-link = Texto do servidor
linked-link-hint = o endereço com o código, como https://sayso.example/linked#…
linked-begin = Ligar
linked-with = Ligado a “{ $home }” em { $url }.
linked-unnamed = uma casa ainda sem nome
linked-not-yet = Nada do que está escrito aqui foi enviado ainda; o servidor conhece este caderno pelo nome da casa. Diga abaixo o que pode ir.
linked-not-yet-command = Nada foi enviado ainda. Para dizer sim: sayso link --yes, com --pictures e --recordings se também puderem ir.
linked-goes = O que vai para lá
linked-goes-all = Tudo o que está escrito neste caderno vai para lá, também o de antes: registro, fichas, porções, comentários.
linked-goes-who = Quem cuida da casa lá e os membros dela veem. Quem mais vê se decide só lá, por um consentimento.
linked-coaches = Coaches que veem algo disso lá agora: { $names }.
linked-no-coach = Nenhum coach vê nada disso lá agora.
linked-pictures = Também as imagens
linked-recordings = Também as gravações dos botões
linked-sound-stays = O som em volta dos apertos nunca sai desta máquina.
linked-yes = Sim, enviar para lá
linked-agreed = Os dois estavam iguais pela última vez: { $when }.
linked-never-agreed = Os dois ainda não estiveram iguais.
linked-waits = { $count ->
    [0] Nada espera para ser enviado.
    [1] Um registro espera para ser enviado.
   *[other] { $count } registros esperam para ser enviados.
}
linked-moved = Registros enviados: { $sent }, recebidos: { $received }. Imagens e gravações: { $media }.
linked-hinders = { $kind ->
    [away] O servidor não responde. Tenta-se de novo automaticamente.
    [here] Este caderno não pode ser lido ou escrito agora. Tenta-se de novo automaticamente.
   *[strange] O servidor respondeu de outro modo que o esperado. Tenta-se de novo automaticamente.
}
linked-unreached = { $kind ->
    [away] O servidor não responde. Ele está ligado, e é o endereço que ele mostra, com http:// ou https:// na frente?
    [here] Este caderno não pode ser lido ou escrito agora.
   *[strange] O que responde lá não é um servidor deste programa. Confira o endereço: é o que o servidor mostra.
}
linked-stopped = { $why ->
    [left] A casa saiu desse servidor e foi apagada lá. Nada mais é enviado, e nada se perde aqui.
   *[ended] O servidor não aceita mais: a ligação foi encerrada lá, ou quem a fez não cuida mais da casa. Nada se perde aqui.
}
linked-again = Tentar de novo desde o começo
linked-held-title = Não estão na casa do servidor
linked-lacks-title = Não estão neste caderno
linked-held = { $why ->
    [differs] { $count ->
        [one] { $count } registro é diferente nos dois lados; cada um guarda o seu
       *[other] { $count } registros são diferentes nos dois lados; cada um guarda os seus
    }
    [consent] { $count ->
        [one] { $count } registro trata de consentimento; ele é dado e retirado no próprio servidor
       *[other] { $count } registros tratam de consentimento; ele é dado e retirado no próprio servidor
    }
    [coach] { $count ->
        [one] { $count } registro está em nome de um coach ou de uma conta; esses se escrevem no próprio servidor
       *[other] { $count } registros estão em nome de um coach ou de uma conta; esses se escrevem no próprio servidor
    }
    [lacks] { $count ->
        [one] { $count } registro trata de outro que não está lá
       *[other] { $count } registros tratam de outros que não estão lá
    }
    [ahead] { $count ->
        [one] { $count } registro tem data mais de um dia à frente; vai quando esse dia chegar
       *[other] { $count } registros têm data mais de um dia à frente; vão quando esse dia chegar
    }
    [unread] { $count ->
        [one] { $count } registro é de um tipo que o outro lado não conhece; atualize o mais antigo dos dois
       *[other] { $count } registros são de tipos que o outro lado não conhece; atualize o mais antigo dos dois
    }
    [other_home] { $count ->
        [one] { $count } registro é de outra casa
       *[other] { $count } registros são de outra casa
    }
   *[unsound] { $count ->
        [one] { $count } registro não é aceito pelas regras do outro lado
       *[other] { $count } registros não são aceitos pelas regras do outro lado
    }
}
linked-which = Quais são
linked-unlinking = Desligar
linked-unlinking-what = Nada mais é enviado nem buscado. O que cada lado tem, ele guarda.
linked-unlink = Desligar este caderno
linked-ended = Este caderno está desligado. O que está aqui fica aqui, e o que está no servidor fica lá.
linked-not-told = Não foi possível avisar o servidor. Encerre a ligação lá também: “Quem pode ver isto”, depois “Cadernos em casa”.
linked-not-linked = Este caderno não está ligado.
linked-no-address = “{ $text }” não é o que um servidor mostra. Cole-o inteiro, de https:// até o fim do código.
linked-unsafe-address = { $url } não é https, então outros poderiam ler o que é enviado. Pergunte a quem cuida do servidor.
linked-damaged = { $file } não contém uma ligação ({ $why }). Desligue aqui e ligue de novo; nada se perde no caderno.
linked-already = Este caderno já está ligado, a { $url }. Desligue-o primeiro.
linked-bad-code = Este código não vale, ou não mais. Faça um novo no servidor.
linked-other-home = A casa no servidor contém outros registros que este caderno, e duas casas não se misturam. Escolha aquela para a qual este caderno se mudou, ou peça uma nova a quem cuida do servidor. Nela já se pode consentir; deixe o resto vazio até ligar o caderno.
linked-too-often = Tentativas demais. Espere um quarto de hora.
linked-notebooks = Cadernos em casa
linked-notebooks-what = Um caderno que alguém mantém em uma máquina em casa pode ser ligado a esta casa. Ele passa a conter tudo o que há aqui, e traz o que é escrito nele.
linked-no-notebook = Nenhum caderno está ligado.
linked-how-many = { $count ->
    [0] Nenhum caderno em casa está ligado.
    [1] Um caderno em casa está ligado: contém tudo o que está escrito aqui.
   *[other] { $count } cadernos em casa estão ligados: cada um contém tudo o que está escrito aqui.
}
linked-see = Ver e encerrar ligações
linked-nameless = Um caderno sem nome
linked-times = Código usado: { $linked }. Última notícia: { $heard }. O que se escreve em casa chega quando alguém lá tiver dito sim.
linked-make-code = Fazer um código
linked-code-what = O código liga um caderno, uma vez, dentro de uma hora.
linked-code-sees = O caderno lê tudo nesta casa. O que vem dele não abre esta casa a ninguém: o consentimento é dado só aqui.
linked-code-holds = Nesta casa já há registros. Só um caderno vazio, ou o que se mudou para cá, pode ser ligado a ela.
linked-code-whoever = Quem tem o código pode ler tudo desta casa. Não o dê a ninguém além de você.
linked-code = O código
linked-code-once = Leve-o agora ao caderno. Ele não é mostrado de novo.
linked-qr = O texto com o código, como código QR
linked-shown = Isto vai em um caderno
linked-shown-what = Este texto liga um caderno em casa a uma casa deste servidor. Abri-lo não faz nada por si só.
linked-was-with = Esteve ligado a “{ $home }” em { $url }.
linked-after-stopped = Desligue aqui. Para continuar, faça um código novo no servidor e ligue de novo.
linked-silent = Algo espera, e o servidor não responde desde { $when }.
linked-as-said = O que foi dito
linked-coaches-unknown = Ainda não se sabe quais coaches veem algo disso lá: o servidor não disse.
linked-comes = { $count ->
    [1] Um registro que está lá vem para cá.
   *[other] { $count } registros que estão lá vêm para cá.
}
linked-never-went = { $count ->
    [1] Um registro deste caderno nunca chegou lá.
   *[other] { $count } registros deste caderno nunca chegaram lá.
}
