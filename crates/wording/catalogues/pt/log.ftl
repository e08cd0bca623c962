log-title = Registro
log-judge-heard = Julgar apertos que um microfone ouviu
log-about = Tudo o que foi anotado para { $name }, o mais novo primeiro. Nada é apagado: o que é desfeito ou editado mantém seu primeiro registro.
log-filter = Escolher o que ver
log-filtered = Mostrado: { $what }
log-day = Dia
log-kind = Tipo
log-word = Palavra
log-person = Anotado por
log-any = tudo
log-show = Mostrar
log-show-all = Mostrar tudo
log-kind-name = { $kind ->
    [presses] apertos
    [answers] respostas
    [sessions] sessões
    [invitations] convites e rodadas
    [signs] sinais
    [food] comida
    [likes] testes de gostos
    [checks] verificações, trocas, testes
    [cards] fichas, quadro e regras
   *[other] outras notas
}
log-nothing = Ainda não há nada anotado.
log-nothing-such = Nada assim está anotado aqui.
log-newest = Mais novos
log-newer = Mais novos que estes
log-older = Mais antigos
log-pages = Páginas do registro
log-undone = Desfeito: { $what }
log-edited = Editado. Primeiro anotado: { $what }, { $when }
log-when = { $day }, { $time }
log-noted = { $when }{ $who ->
    [none] { "" }
   *[other] { " " }· { $who }
}{ $how ->
    [heard] { " " }· ouvido
    [device] { " " }· de um aparelho
    [import] { " " }· importado
   *[other] { "" }
}{ $twice ->
    [no] { "" }
   *[other] ; também anotado à mão, então conta uma vez
}
log-edit = Editar
log-edit-this = Editar: { $what }, { $when }
log-undo = Desfazer
log-undo-this = Desfazer: { $what }, { $when }
log-bring-back = Recuperar
log-bring-back-this = Recuperar: { $what }, { $when }
log-time = Hora
log-time-zone = em { $zone }
log-time-wrong = A hora { $what }.
log-time-form = deve ser uma hora como 18:30 ou 18:30:05
log-time-ahead = está no futuro; deve ser agora ou antes
log-who-pressed = Quem apertou
log-by = { $by ->
    [animal] { $name }
    [person] uma pessoa, para mostrar
   *[other] ninguém viu
}
log-meant = Pareceu de propósito?
log-accident = { $accident ->
    [no] pareceu de propósito
    [likely] pareceu um tropeço
   *[other] não se sabe
}
log-how-answered = Como foi respondido
log-what-then = O que { $name } fez depois
log-how-strong = Quão forte
log-took = { $name } aceitou a coisa?
log-yes = sim
log-no = não
log-not-seen = não visto
log-back = Voltar ao registro
log-ahead = { $n ->
    [1] 1 evento tem data futura.
   *[other] { $n } eventos têm data futura.
}
log-ahead-why = { $n ->
    [1] É de { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
   *[other] O primeiro é de { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
} O relógio do aparelho que anotou isso estava adiantado. Fichas e gravações já contam; o resto conta a partir da sua hora. Acerte esse relógio e edite as horas no registro.
log-no-such-event = O registro não tem esse evento.
log-took-choice = deve ser sim, não ou ficar em aberto
log-id-without-time = O endereço nomeia um id, mas não antes de que hora: ?before=<time>&id=<id>
log-on-its-own-page = é corrigido na sua própria página: fichas em Pessoas, consentimento em Quem pode ver isto
log-about-server = Tudo o que foi anotado de { $name }, o mais novo primeiro. O que é desfeito ou editado guarda a primeira nota. Tudo só some se a casa inteira for apagada.
