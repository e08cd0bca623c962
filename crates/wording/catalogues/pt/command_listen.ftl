command-listen-add-word = { $why }. Adicione-a primeiro na página Palavras
command-listen-the-recording = a gravação
command-listen-name-a-file = informe um arquivo de som, ou --record SECONDS
command-listen-enrolled = “{ $word }”: guardada.
command-listen-enrolled-before = “{ $word }”: esta mesma gravação já estava guardada.
command-listen-clip-too-large = { $file }: { $bytes } bytes; uma gravação de uma palavra pode ter { $most }
command-listen-no-findings = Nada a apontar.
command-listen-quoted = “{ $word }”
command-listen-without = Sem gravação, por isso não são ouvidas: { $words }.
command-listen-record-range = --record aceita de { $least } a { $most } segundos
command-listen-recording = Gravando { $seconds } com “{ $microphone }”. Aperte o botão uma vez, baixinho e onde o animal não ouça.
command-listen-sound-lost = parte do som se perdeu, porque o computador estava ocupado demais; grave de novo
command-listen-nothing-heard = nada foi ouvido; aperte o botão durante a gravação
command-listen-lost = o microfone “{ $microphone }” se perdeu: { $why }
command-listen-lost-driver = o microfone “{ $microphone }” se perdeu: o driver dele terminou
command-listen-lost-silent = o microfone “{ $microphone }” se perdeu: não chega som há { $seconds } s; ainda está ligado?
command-listen-built-without =
    este programa foi compilado sem o microfone. Ligue um gravador à entrada dele:
    { "  " }arecord -q -f S16_LE -r 16000 -c 1 -t raw | sayso listen ... --pcm s16le --rate 16000 --channels 1 -
    ou compile-o com o microfone (no Linux com os cabeçalhos do ALSA, como libasound2-dev no Debian):
    { "  " }cargo build --release -p sayso --features microphone
command-listen-no-microphone = este computador não tem microfone, ou não o dá a este programa; conecte um, ou permita o uso, e tente de novo
command-listen-not-opened = o microfone não abre: { $why }
command-listen-samples = o microfone “{ $microphone }” dá amostras como { $samples }, que não são lidas
command-listen-give-what = informe --data DIR ou --clips DIR
command-listen-input-alone = a entrada padrão (-) é ouvida sozinha, sem outros arquivos
command-listen-input-samples = a entrada padrão tem só amostras: diga quais, por exemplo --pcm s16le --rate 16000 --channels 1
command-listen-pcm-for-input = --pcm é para a entrada padrão; informe - como arquivo
command-listen-one-file = com --log informe um arquivo por vez, pois cada um começou na sua hora
command-listen-when-began = com --log diga quando a gravação começou, por exemplo --started-at 2026-03-01T18:30:00Z
command-listen-checkpoint-one = --checkpoint vai com um só arquivo
command-listen-least-range = --least é uma certeza de 0 a 1
command-listen-other-checkpoint = { $file } pertence a outro arquivo de som ou a outras gravações; apague-o para começar de novo
command-listen-no-checkpoint = { $file } não é um ponto de parada deste programa ({ $why })
command-listen-going-on = { $file }: continua em { $seconds } s; o que foi ouvido antes não é impresso de novo
command-listen-progress = { $file }: { $share } lido, { $seconds } s examinados, apertos: { $n }
command-listen-damaged-parts = { $file }: { $n ->
    [one] { $n } parte danificada ficou de fora; as horas seguintes podem vir cedo demais
   *[other] { $n } partes danificadas ficaram de fora; as horas seguintes podem vir cedo demais
}
command-listen-listening = Ouvindo por “{ $microphone }” ({ $rate } Hz, canais: { $channels }) { $n ->
    [one] { $n } palavra
   *[other] { $n } palavras
}. O som não é guardado. Ctrl-C termina.
command-listen-missed = { $seconds } s de som se perderam, porque o computador estava ocupado demais; os apertos que havia ali não foram ouvidos.
command-listen-no-ctrl-c = sayso: Ctrl-C não é visto ({ $why }); encerre o programa de outro modo
command-listen-cut-off = a entrada padrão acabou no meio de uma amostra: cortada, ou não é { $samples }?
command-listen-left-out = “{ $word }” não é ouvida: { $why }
command-listen-nothing-enrolled = nenhuma gravação está guardada, por isso não há nada para ouvir; veja `sayso enrol --help`
command-listen-second-clip = { $file }: uma segunda gravação de “{ $word }”
command-listen-no-sound-files = { $dir }: nenhum arquivo de som ({ $endings }) lá dentro
command-listen-presses-heard = { $n ->
    [one] { $n } aperto ouvido
   *[other] { $n } apertos ouvidos
} em { $minutes } minutos.
command-listen-logged = Destes, anotados: { $n }; já estavam no registro: { $known }.
command-listen-slowed = “{ $word }” está { $slowed } mais lenta (erro padrão { $error }, { $n } apertos; probabilidade de ficar mais lenta do que botões bons: { $probability }): a pilha pode estar acabando.
command-listen-never = Nunca ouvidas (outras palavras: { $n ->
    [1] uma vez
   *[other] { $n } vezes
}): { $words }. Talvez ninguém as tenha apertado; também pode ser uma pilha gasta ou uma gravação velha.
command-listen-home = Casa
command-listen-begun = Um caderno novo foi começado em { $folder }. As horas estão em UTC até a página Pessoas indicar um fuso horário.
command-listen-added = “{ $word }” é uma palavra nova deste caderno.
