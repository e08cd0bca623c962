client-kit-first = Primeiro concorde acima e preencha o que o botão diz, de que tipo é e que celular é este.
client-kit-clip = Gravar o botão de perto
client-kit-clip-now = Aperte o botão uma vez. Faltam { $seconds } s.
client-kit-clip-kept = “{ $word }” de perto: { $seconds } s, silêncio cortado nas duas pontas.
client-kit-clip-first = Primeiro grave “{ $word }” de perto.
client-kit-presses = Gravar { $count } apertos
client-kit-without = Gravar 3 minutos sem apertos
client-kit-press-now = Aperte agora
client-kit-tap-now = Aperte o botão e toque em “{ $mark }” no mesmo momento.
client-kit-mark = Apertado
client-kit-marked = { $count ->
    [0] Nenhum aperto marcado ainda.
    [one] { $count } aperto marcado.
   *[other] { $count } apertos marcados.
}
client-kit-no-press = Não aperte nada por mais { $seconds } s.
client-kit-stop = Parar e guardar
client-kit-interrupted = O som foi interrompido e esta gravação foi descartada. Deixe a página na frente e grave de novo.
client-kit-too-short = Curta demais para servir; foi descartada.
client-kit-take = “{ $word }”, { $metres } m, { $room }, { $noise }: { $count ->
    [one] { $count } aperto
   *[other] { $count } apertos
} em { $seconds } s
client-kit-take-without = Sem apertos, { $metres } m, { $room }, { $noise }: { $seconds } s
client-kit-undo = Desfazer
client-kit-save = Salvar o arquivo
client-kit-nothing = Nada para salvar ainda: grave o botão de perto e depois apertos.
client-kit-saved = Salvo como { $file } ({ $megabytes } MB). Está só neste aparelho; nada foi enviado.
