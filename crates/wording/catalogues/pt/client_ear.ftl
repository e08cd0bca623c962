client-ear-insecure = Esta página veio por HTTP sem cifra, e os navegadores só dão o microfone a páginas que vêm em segurança. Na máquina onde o Sayso corre, abre-a como http://localhost. Para um telefone, inicia o Sayso com --lan --secure e abre o endereço que ele mostrar.
client-ear-unable = Este navegador não consegue ouvir. Usa um mais novo ou corre “sayso listen” na máquina onde o Sayso está.
client-ear-connected = Ligado.
client-ear-waiting = O caderno não responde; { $seconds } s ficam aqui e são enviados depois.
client-ear-lost = { $seconds } s não puderam ser guardados e não foram ouvidos.
client-ear-held = Os toques ouvem-se, mas agora não podem ser guardados: { $why }
client-ear-silent = Nada soa no microfone: está tapado ou desligado?
client-ear-heard-now = { $count ->
    [0] Ainda nenhum toque ouvido.
    [one] Um toque ouvido.
   *[other] { $count } toques ouvidos.
}
client-ear-listening = A ouvir { $count ->
    [one] uma palavra
   *[other] { $count } palavras
} desde as { $time }.
client-ear-words = Ouve-se: { $words }.
client-ear-left-out = Falta o som delas, por isso estas não: { $words }.
client-ear-press = { $time }, certeza { $sure }%, { $state ->
    [tapped] anotado; também foi tocado e conta uma vez
    [known] já anotado
   *[new] anotado
}
client-ear-kept = o som fica guardado para ser julgado
client-ear-busy = Outra página ouve este quadro desde as { $time }.
client-ear-take = Ouvir antes aqui
client-ear-taken = Desligado: agora ouve outra página.
client-ear-off = Desligado.
client-ear-off-heard = Desligado. { $count ->
    [0] Nada se ouviu.
    [one] Ouviu-se um toque.
   *[other] Ouviram-se { $count } toques.
}
client-ear-asking = A pedir o microfone…
client-ear-connecting = A ligar…
client-ear-ending = A ouvir o resto…
client-ear-not-allowed = O microfone não foi permitido. Permite-o para esta página nas definições do navegador e tenta de novo.
client-ear-not-found = Este aparelho não tem microfone.
client-ear-in-use = Outro programa está a usar o microfone. Fecha-o e tenta de novo.
client-ear-not-opened = Não foi possível abrir o microfone ({ $why }).
client-ear-gone = O microfone foi retirado, ou já não é permitido.
client-ear-stopped = O navegador parou o som.
client-ear-sound-gone = O som já não está guardado
client-ear-not-noted = O caderno não responde; nada foi anotado. Tenta de novo.
client-ear-noted = Anotado: { $word }, { $answer }.
client-ear-record-insecure = Para gravar aqui a página tem de vir em segurança: abre o Sayso na própria máquina ou inicia-o com --lan --secure. Um ficheiro de som serve sempre.
client-ear-record-unable = Este navegador não consegue gravar. Escolhe um ficheiro de som.
client-ear-loudness = Volume no microfone
client-ear-record = Gravar com este aparelho
client-ear-record-how = Segura o aparelho a um palmo do botão, numa sala calma, onde o animal não o ouça.
client-ear-recording = A gravar: toca o botão uma vez ou diz a palavra. Faltam { $seconds } s.
client-ear-stop = Parar
client-ear-record-again = Gravar de novo
client-ear-record-nothing = Nada se ouviu. O microfone está tapado ou desligado?
client-ear-recorded = { $seconds } s, com o silêncio das pontas cortado. Ouve e guarda, ou grava de novo.
client-ear-what-recorded = O que foi gravado
client-ear-record-keep = Guardar esta gravação e verificá-la
client-ear-unsent = { $count ->
    [one] Um toque feito neste aparelho ainda não está
   *[other] { $count } toques feitos neste aparelho ainda não estão
} no caderno. Liga-o de novo e são enviados. Se não voltar a ser ligado, guarda-os num ficheiro, que “sayso import” lê, e limpa este aparelho.
client-ear-clear = Limpar este aparelho
client-ear-clear-sure = Apagar o que este aparelho guarda, { $count ->
    [one] com um toque por enviar
   *[other] com { $count } toques por enviar
}? Vê primeiro se o ficheiro ficou guardado.
client-ear-cleared = Este aparelho já não guarda nada do caderno.
client-ear-save-unsent = Guardá-los num ficheiro
client-ear-pause = Pausa
client-ear-go-on = Continuar
client-ear-here = Este aparelho ouve por si: nenhum som sai dele, só os toques.
client-ear-there = Este navegador não consegue ouvir por si: enquanto escuta, o som vai para a máquina onde o Sayso corre.
client-ear-no-way = Este navegador não consegue ouvir por si, e este caderno não aceita som. Usa um navegador mais recente.
client-ear-ready = A preparar as gravações…
client-ear-not-ready = Não foi possível começar a escutar ({ $why }). Abre esta página uma vez enquanto o caderno responde e tenta de novo.
client-ear-broke = A escuta parou neste aparelho ({ $why }). Liga-a de novo.
client-ear-hearing = Este aparelho está a ouvir.
client-ear-behind = Este aparelho está lento: { $seconds } s de atraso.
client-ear-gap = Não ouvido: das { $from } às { $to }.
client-ear-no-sound = Não chega som desde as { $time }: outro programa ou uma chamada pode ter o microfone.
