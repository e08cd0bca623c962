client-ear-insecure = Esta página veio por HTTP sem criptografia, e os navegadores só dão o microfone a páginas que vêm em segurança. Na máquina onde o Sayso roda, abra-a como http://localhost. Para um celular, inicie o Sayso com --lan --secure e abra o endereço que ele mostrar.
client-ear-unable = Este navegador não consegue ouvir. Use um mais novo ou rode “sayso listen” na máquina onde o Sayso está.
client-ear-connected = Conectado.
client-ear-waiting = O caderno não responde; { $seconds } s ficam aqui e são enviados depois.
client-ear-lost = { $seconds } s não puderam ser guardados e não foram ouvidos.
client-ear-held = Os apertos são ouvidos, mas agora não podem ser guardados: { $why }
client-ear-silent = Nada soa no microfone: está coberto ou desligado?
client-ear-heard-now = { $count ->
    [0] Ainda nenhum aperto ouvido.
    [one] Um aperto ouvido.
   *[other] { $count } apertos ouvidos.
}
client-ear-listening = Ouvindo { $count ->
    [1] uma palavra
   *[other] { $count } palavras
} desde as { $time }.
client-ear-words = São ouvidas: { $words }.
client-ear-left-out = Falta o som delas, por isso estas não: { $words }.
client-ear-press = { $time }, certeza { $sure }%, { $state ->
    [tapped] anotado; também foi anotado à mão e conta uma vez
    [known] já anotado
   *[new] anotado
}
client-ear-kept = o som fica guardado para ser julgado
client-ear-busy = Outra página ouve este quadro desde as { $time }.
client-ear-take = Ouvir aqui em vez disso
client-ear-taken = Desligado: agora ouve outra página.
client-ear-off = Desligado.
client-ear-off-heard = Desligado. { $count ->
    [0] Nada foi ouvido.
    [one] Um aperto foi ouvido.
   *[other] { $count } apertos foram ouvidos.
}
client-ear-asking = Pedindo o microfone…
client-ear-connecting = Conectando…
client-ear-ending = Ouvindo o resto…
client-ear-not-allowed = O microfone não foi permitido. Permita-o para esta página nas configurações do navegador e tente de novo.
client-ear-not-found = Este aparelho não tem microfone.
client-ear-in-use = Outro programa está usando o microfone. Feche-o e tente de novo.
client-ear-not-opened = Não foi possível abrir o microfone ({ $why }).
client-ear-gone = O microfone foi retirado, ou não é mais permitido.
client-ear-stopped = O navegador parou o som.
client-ear-sound-gone = O som não está mais guardado
client-ear-not-noted = O caderno não responde; nada foi anotado. Tente de novo.
client-ear-noted = Anotado: { $word }, { $answer }.
client-ear-record-insecure = Para gravar aqui, a página tem de vir em segurança: abra o Sayso na própria máquina ou inicie-o com --lan --secure. Um arquivo de som sempre serve.
client-ear-record-unable = Este navegador não consegue gravar. Escolha um arquivo de som.
client-ear-loudness = Volume no microfone
client-ear-record = Gravar com este aparelho
client-ear-record-how = Segure o aparelho a um palmo do botão, em um cômodo calmo, onde o animal não o ouça.
client-ear-recording = Gravando: aperte o botão uma vez. Faltam { $seconds } s.
client-ear-stop = Parar
client-ear-record-again = Gravar de novo
client-ear-record-nothing = Nada foi ouvido. O microfone está coberto ou desligado?
client-ear-recorded = { $seconds } s, com o silêncio das pontas cortado. Ouça e salve, ou grave de novo.
client-ear-what-recorded = O que foi gravado
client-ear-record-keep = Salvar esta gravação e verificar
client-ear-unsent = { $count ->
    [1] Um toque feito neste aparelho ainda não está
   *[other] { $count } toques feitos neste aparelho ainda não estão
} no caderno. Pareie o aparelho de novo e eles são enviados. Se ele não for mais pareado, salve-os em um arquivo, que “sayso import” lê, e limpe este aparelho.
client-ear-clear = Limpar este aparelho
client-ear-clear-sure = Apagar o que este aparelho guarda, { $count ->
    [1] com um toque ainda não enviado
   *[other] com { $count } toques ainda não enviados
}? Veja primeiro se o arquivo foi salvo.
client-ear-cleared = Este aparelho não guarda mais nada do caderno.
client-ear-save-unsent = Salvar em um arquivo
client-ear-pause = Pausa
client-ear-go-on = Continuar
client-ear-here = Este aparelho ouve sozinho: nenhum som sai dele, só os apertos.
client-ear-there = Este navegador não consegue ouvir sozinho: enquanto ouve, o som vai para a máquina onde o Sayso roda.
client-ear-no-way = Este navegador não consegue ouvir sozinho, e este caderno não aceita som. Use um navegador mais recente.
client-ear-ready = Preparando as gravações…
client-ear-not-ready = Não foi possível começar a ouvir ({ $why }). Abra esta página uma vez enquanto o caderno responde e tente de novo.
client-ear-broke = A escuta parou neste aparelho ({ $why }). Ligue-a de novo.
client-ear-hearing = Este aparelho está ouvindo.
client-ear-behind = Este aparelho está lento: { $seconds } s de atraso.
client-ear-gap = Não ouvido: das { $from } às { $to }.
client-ear-no-sound = Não chega som desde as { $time }: outro programa ou uma chamada pode ter o microfone.
client-ear-last = { $time }, certeza { $sure }%
client-ear-unsent-signed-out = { $count ->
    [1] Um toque feito neste aparelho ainda não está
   *[other] { $count } toques feitos neste aparelho ainda não estão
} no caderno. Entre de novo, abra o Quadro, e eles são enviados. Se ninguém mais entrar aqui, salve-os em um arquivo, que “sayso import” lê, e limpe este aparelho.
client-ear-unsent-left = { $count ->
    [1] Um toque feito neste aparelho é
   *[other] { $count } toques feitos neste aparelho são
} de uma casa que não é mais sua: ela saiu deste servidor, ou o seu papel lá terminou. Não dá para enviar. Salve em um arquivo, que o “sayso import” lê, e depois limpe aqui.
