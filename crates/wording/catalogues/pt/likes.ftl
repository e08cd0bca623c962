likes-test-title = { $format ->
    [paired] Teste de gostos: dois a dois
    [multiple] Teste de gostos: tudo em fila
    [single] Teste de gostos: um a um
   *[free_access] Teste de gostos: tudo junto, cronometrado
}
likes-stop-here = Pára aqui: foram notados sinais fortes de stress. Dá espaço e não chames de volta. O teste pode continuar noutro dia.
likes-trial = Ensaio { $number } de { $of } · ronda { $round } de { $rounds }
likes-done = Todos os ensaios estão feitos. Agradecemos, { $name }.
likes-see-ranking = Ver a ordem
likes-noted-already = Isso já estava anotado; nada mudou. Usa Anular se a última resposta estiver errada.
likes-stop-for-now = Parar por agora
likes-goes-on-later = – o que foi anotado fica; o teste pode continuar depois.
likes-last-chose = Último: { $thing }
likes-last-none = Último: não escolheu
likes-last-away = Último: foi-se embora
likes-last-watched = Último: observado { $seconds } s
likes-undo = Anular
likes-away-is-an-answer = { $name } foi-se embora, e isso é uma resposta. Continua quando { $name } voltar por si, ou noutro dia.
likes-stand-in = { $thing } não se pode mostrar: oferece { $stand_in } em vez disso. Se { $name } escolher, vão logo.
likes-no-stand-in = { $thing } não se pode mostrar ao lado de outra coisa. Oferece o que o representa em casa, sempre o mesmo, como a trela; ou cronometra livremente.
likes-name-stand-in = Põe-no na ficha
likes-time-freely = Cronometrar livremente
likes-needs-stand-in = não se pode mostrar: põe na ficha o que o representa, ou usa o cronómetro
likes-shown-as = mostra-se: { $stand_in }
likes-pieces = { $pieces } × { $thing }
likes-food-left = Prémios de comida que restam hoje: { $kcal } kcal ({ $pieces }). Cada pedaço aceite é contado.
likes-food-short = Não chega para um pedaço de tudo. Pára por hoje, ou corta pedaços menores e edita a ficha.
likes-food-unknown = Não se sabe quanta comida { $name } pode ter hoje. Cada pedaço aceite é contado na mesma.
likes-in-front = à frente de { $name }
likes-to-the-left = à esquerda de { $name }
likes-to-the-right = à direita de { $name }
likes-far-left = 1, mais à esquerda de { $name }
likes-far-right = { $place }, mais à direita de { $name }
likes-lay-one = Põe isto; toca se { $name } vier
likes-lay = Põe-nos, como { $name } os vê; toca no que { $name } aceitar
likes-lay-all = Põe-nos todos, por esta ordem a partir da esquerda de { $name }
likes-did-not-come = Não veio
likes-chose-none = Não escolheu
likes-walked-away = Foi-se embora
likes-how-to-hold = Fica atrás do meio, segura ambos por igual, não olhes para nenhum. Deixa aproveitar o que foi aceite; guarda o resto.
likes-two-at-once = Se aceitar dois ao mesmo tempo, não anotes nada e oferece outra vez.
likes-half-a-minute = Sem escolha em cerca de meio minuto: “não escolheu”.
likes-move-freely = Deixa { $name } mexer-se à vontade; cinco minutos é o habitual. Cronometra com que { $name } se ocupa, uma coisa de cada vez.
likes-begin = Começar
likes-times = Tempos em segundos
likes-seconds-there = Segundos em que as coisas estiveram lá
likes-seconds-busy = { $thing }: segundos de ocupação
likes-pieces-eaten = { $thing }: pedaços comidos
likes-note-times = Anotar estes tempos
likes-away-at-once = Foi-se logo embora
