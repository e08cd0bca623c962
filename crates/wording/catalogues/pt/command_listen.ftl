command-listen-add-word = { $why }. Acrescenta-a primeiro na página Palavras
command-listen-the-recording = a gravação
command-listen-name-a-file = nomeia um ficheiro de som, ou diz --record SECONDS
command-listen-enrolled = “{ $word }”: guardada.
command-listen-enrolled-before = “{ $word }”: esta mesma gravação já estava guardada.
command-listen-clip-too-large = { $file }: { $bytes } bytes; uma gravação de uma palavra pode ter { $most }
command-listen-no-findings = Nada a apontar.
command-listen-quoted = “{ $word }”
command-listen-without = Sem gravação, por isso não são ouvidas: { $words }.
command-listen-record-range = --record aceita de { $least } a { $most } segundos
command-listen-recording = A gravar { $seconds } com “{ $microphone }”. Toca o botão uma vez, baixinho e onde o animal não ouça.
command-listen-sound-lost = perdeu-se parte do som, porque o computador estava ocupado demais; grava de novo
command-listen-nothing-heard = não se ouviu nada; toca o botão enquanto grava
command-listen-lost = perdeu-se o microfone “{ $microphone }”: { $why }
command-listen-lost-driver = perdeu-se o microfone “{ $microphone }”: o seu controlador terminou
command-listen-lost-silent = perdeu-se o microfone “{ $microphone }”: não chega som há { $seconds } s; ainda está ligado?
command-listen-built-without =
    este programa foi construído sem o microfone. Ou liga um gravador à sua entrada:
    { "  " }arecord -q -f S16_LE -r 16000 -c 1 -t raw | sayso listen ... --pcm s16le --rate 16000 --channels 1 -
    ou constrói-o com o microfone (em Linux com os cabeçalhos do ALSA, como libasound2-dev no Debian):
    { "  " }cargo build --release -p sayso --features microphone
command-listen-no-microphone = este computador não tem microfone, ou não o dá a este programa; liga um, ou permite-o, e tenta de novo
command-listen-not-opened = o microfone não abre: { $why }
command-listen-samples = o microfone “{ $microphone }” dá amostras como { $samples }, que não são lidas
command-listen-give-what = dá --data DIR ou --clips DIR
command-listen-input-alone = a entrada padrão (-) ouve-se sozinha, sem outros ficheiros
command-listen-input-samples = a entrada padrão tem só amostras: diz quais, por exemplo --pcm s16le --rate 16000 --channels 1
command-listen-pcm-for-input = --pcm é para a entrada padrão; dá - como ficheiro
command-listen-one-file = com --log dá um ficheiro de cada vez, pois cada um começou à sua hora
command-listen-when-began = com --log diz quando a gravação começou, por exemplo --started-at 2026-03-01T18:30:00Z
command-listen-checkpoint-one = --checkpoint vai com um só ficheiro
command-listen-least-range = --least é uma certeza de 0 a 1
command-listen-other-checkpoint = { $file } pertence a outro ficheiro de som ou a outras gravações; apaga-o para começar de novo
command-listen-no-checkpoint = { $file } não é um ponto de paragem deste programa ({ $why })
command-listen-going-on = { $file }: continua em { $seconds } s; o que foi ouvido antes não é impresso outra vez
command-listen-progress = { $file }: { $share } lido, { $seconds } s examinados, toques: { $n }
command-listen-damaged-parts = { $file }: { $n ->
    [one] { $n } parte estragada ficou de fora; as horas seguintes podem vir cedo demais
   *[other] { $n } partes estragadas ficaram de fora; as horas seguintes podem vir cedo demais
}
command-listen-listening = A ouvir por “{ $microphone }” ({ $rate } Hz, canais: { $channels }) { $n ->
    [one] { $n } palavra
   *[other] { $n } palavras
}. O som não é guardado. Ctrl-C termina.
command-listen-missed = Perderam-se { $seconds } s de som, porque o computador estava ocupado demais; os toques que lá havia não foram ouvidos.
command-listen-no-ctrl-c = sayso: Ctrl-C não é visto ({ $why }); termina o programa de outro modo
command-listen-cut-off = a entrada padrão acabou a meio de uma amostra: cortada, ou não é { $samples }?
command-listen-left-out = “{ $word }” não é ouvida: { $why }
command-listen-nothing-enrolled = nenhuma gravação está guardada, por isso não há nada para ouvir; vê `sayso enrol --help`
command-listen-second-clip = { $file }: uma segunda gravação de “{ $word }”
command-listen-no-sound-files = { $dir }: nenhum ficheiro de som ({ $endings }) lá dentro
command-listen-presses-heard = { $n ->
    [one] { $n } toque ouvido
   *[other] { $n } toques ouvidos
} em { $minutes } minutos.
command-listen-logged = Destes, anotados: { $n }; já estavam no registo: { $known }.
command-listen-slowed = “{ $word }” está { $slowed } mais lenta (erro padrão { $error }, n = { $n } toques; probabilidade de abrandar mais do que botões sãos: { $probability }): a pilha pode estar a acabar.
command-listen-never = Não ouvidas de todo (outras palavras: n = { $n }): { $words }. Talvez ninguém as tenha tocado; também pode ser uma pilha gasta ou uma gravação velha.
command-listen-home = Casa
command-listen-begun = Um caderno novo foi começado em { $folder }. As horas estão em UTC até a sua página Pessoas indicar um fuso horário.
command-listen-added = “{ $word }” é uma palavra nova deste caderno.
