client-board-never-given = não dar
client-board-today-count = { $n } hoje
client-board-of-aim = { $here } de { $aim }
client-board-food-left = { $food }: { $n ->
        [0] hoje acabou
        [one] resta { $n }
       *[other] restam { $n }
    }
client-board-shown-count = { $n ->
    [one] { $n } mostrada
   *[other] { $n } mostradas
}
client-board-seconds = { $s } s
client-board-median-of = mediana de { $n }
client-board-is-joined = juntou-se
client-board-not-joined = ainda não se juntou
client-board-ration-unknown = Quantidade de comida desconhecida: { $why }
client-board-no-figures = ainda sem números
client-board-used-up = As recompensas de comida de hoje acabaram. Dê brincadeira, carinho ou exploração.
client-board-treats-left = Recompensas de comida que restam: { $list }
client-board-treat-left = { $food } { $n } { $by ->
    [card] (a ficha)
   *[food] (comida do dia)
}
client-board-kcal = { $n } kcal
client-board-clock-off = O relógio deste aparelho está { $n } minutos { $way ->
        [ahead] adiantado
       *[behind] atrasado
    } em relação ao do caderno, e os toques levam a hora dele. Acerte-o.
client-board-stop-strong = Pare agora.
client-board-stop-strong-do = Um sinal forte. Termine a sessão e dê espaço. Deixe { $name } ir; não atraia { $name } de volta.
client-board-stop-left = { $name } foi embora.
client-board-stop-left-do = Deixe { $name } ir; não atraia nem chame { $name } de volta. Ir embora é uma resposta.
client-board-stop-mild = Pausa.
client-board-stop-mild-do = Dois sinais leves seguidos. Dê espaço; melhor terminar aqui. Deixe { $name } ir; não atraia { $name } de volta.
client-board-end-session = Terminar a sessão
client-board-at-ease = { $name } está à vontade: continuar
client-board-came-back = { $name } voltou por conta própria
client-board-all-saved = Tudo salvo
client-board-waiting-to-send = { $n } a enviar
client-board-no-answer = O caderno não responde.
client-board-safe-later = { $why } { $n ->
    [one] { $n } a salvo aqui, enviado depois
   *[other] { $n } a salvo aqui, enviados depois
}
client-board-unpaired = Sem acesso. { $n } a salvo aqui
client-board-forbidden = O caderno não aceita toques deste endereço. { $n } a salvo aqui
client-board-attention = { $n ->
        [one] { $n } toque precisa de atenção
       *[other] { $n } toques precisam de atenção
    }
client-board-refused = Toques que o caderno não aceitou
client-board-refused-stay = Ficam neste aparelho até você escolher. Os outros foram enviados.
client-board-try-again = Tentar de novo
client-board-drop = Descartar
client-board-drop-sure = Descartar este toque de vez?
client-board-cannot-keep = Este navegador não consegue guardar toques ({ $why }). Saia do modo privado ou use outro navegador; nada tocado aqui seria guardado.
client-board-not-kept = Este navegador não conseguiu guardar esse toque ({ $why }). Libere espaço ou saia do modo privado e toque de novo.
client-board-no-word = uma palavra que não está mais aqui
client-board-care = Cuidado: { $food }
client-board-i-press = Eu aperto
client-board-given = Dado
client-board-given-word = Dado: { $word }
client-board-not-now = Agora não
client-board-no-session = Não há sessão em curso.
client-board-start-with = Começar a mostrar: aperto agora
client-board-animal-pressed = { $name } apertou
client-board-tap-twice = Toque ao apertar e dizer; toque de novo ao dar.
client-board-never = Não dê. { $why }
client-board-give-pressed = { $word }: { $name } apertou. Dê agora.
client-board-give-shown = { $word }: diga e dê agora.
client-board-give-calmly = { $word }: ainda não dado. Sem pressa. Deixe a distância, se quiser, e anote; não atraia { $name }.
client-board-no-name = Aqui os toques são anotados sem nome.
client-board-who = Quem é você?
client-board-rest-today = Descanso até { $until }. Foram vistos sinais fortes. Continue respondendo aos apertos; mostre e convide depois disso.
client-board-whom-to-ask = Após um rosnado, um bote ou uma mordida, fale com um veterinário e um profissional qualificado de comportamento.
client-board-watch-chewing = Vigie se rói: pilhas e peças pequenas são perigosas. { $battery } Mantenha o som baixo e pare se { $name } se assustar.
client-board-room = Cômodo, se não for o habitual
client-board-start = Começar a mostrar
client-board-start-anyway = Começar mesmo assim…
client-board-rest-better = Agora é melhor descansar
client-board-rest-sure = Sinais fortes foram vistos. Continue só se { $name } vier por conta própria e estiver à vontade.
client-board-let-rest = Deixar { $name } descansar
client-board-start-at-ease = { $name } está à vontade: começar
client-board-offer-at-ease = { $name } está à vontade: oferecer
client-board-then-what = { $given }: dado. O que { $name } fez?
client-board-something-else = Outra coisa
client-board-other-strong = Outro sinal forte…
client-board-other-mild = Outro sinal leve…
client-board-other-joining = Outro sinal de calma…
client-board-took = Aceitou
client-board-ignored = Ignorou
client-board-without-it = Foi sem pegar
client-board-left-offer = Deixou a oferta
client-board-pressed-again = Apertou de novo…
client-board-one-more = +1 pedaço
client-board-one-more-given = Foi dado mais um pedaço
client-board-which-pressed = Que palavra { $name } apertou?
client-board-whose = Ouviu-se { $word }. Quem apertou?
client-board-whose-me = Eu
client-board-which-looked = Para onde { $name } olhou?
client-board-whole-board = O quadro todo
client-board-which-brushed = Que botão, sem o fazer soar?
client-board-answer-any = Responda como a qualquer outro, mesmo sem querer: dê e toque em Dado.
client-board-stumble = Pareceu um tropeço
client-board-stumble-short = Tropeço?
client-board-see-what = O que você vê?
client-board-one-sign = Um sinal diz pouco; leia o corpo todo e a situação.
client-board-level-strong = Forte: pare
client-board-level-mild = Leve
client-board-level-joining = À vontade, participando
client-board-saw-what = O que você viu?
client-board-end-because = Terminar a sessão porque…
client-board-end-done = O plano está feito
client-board-end-word = Palavra de encerramento: { $word }
client-board-end-left = { $name } foi embora
client-board-end-strong = Um sinal forte
client-board-end-by-sign = Toque no que você viu: fica anotado e a sessão termina.
client-board-cannot-say = Não sei dizer qual
client-board-end-interrupted = Surgiu algo
client-board-closing-me = Eu aperto: terminar a sessão
client-board-closing-animal = { $name } apertou: terminar a sessão
client-board-over = A sessão terminou.
client-board-over-minutes = A sessão terminou: { $n } min.
client-board-word-times = { $word } { $n ->
        [1] uma vez
       *[other] { $n } vezes
    }
client-board-sum-shown = Mostrado: { $list }.
client-board-sum-nothing = nada
client-board-sum-pressed = { $name } apertou: { $list }.
client-board-stumbled = { $times } ({ $n ->
        [0] pareceu um tropeço
       *[other] { $n } como um tropeço
    })
client-board-sum-given = Dado: { $given } de { $all }.
client-board-sum-waiting = Ainda não dado: { $list }.
client-board-put-away = Fechar
client-board-it-pressed = { $name } apertou
client-board-tap-pressed = Toque na palavra que { $name } apertou.
client-board-how-answered = { $name } apertou “{ $word }”. Como foi a resposta?
client-board-everyone = Todos aqui: { $answer }
client-board-everyone-not-now = Para “agora não”, todos dizem: { $answer }
client-board-partly = Em parte
client-board-after-all = Dar afinal
client-board-else-instead = Outra coisa…
client-board-missed = Perdido
client-board-what-instead = O que no lugar?
client-board-nothing-else = Não há mais nada nas fichas.
client-board-not-now-then = Agora não. O que { $name } fez?
client-board-guards = Se { $name } proteger algo, rosnar ou tentar morder: dê espaço, pare e fale com um profissional qualificado de comportamento.
client-board-let-it-be = Deixou estar
client-board-asked-for = { $name } pediu
client-board-tap-asked = { $name } pediu sem botão? Toque na palavra.
client-board-catch-show = { $name } pediu “{ $word }”. Aperte o botão agora, diga a palavra e dê. Como { $name } pediu?
client-board-catch-give = { $name } pediu “{ $word }”. Dê agora. Como { $name } pediu?
client-board-how-looked = olhou
client-board-how-went = foi até lá
client-board-how-brought = trouxe
client-board-how-sound = um som
client-board-how-touched = tocou em mim
client-board-i-press-word = Aperto { $word }
client-board-way-view = A coisa está à vista
client-board-way-point = Perguntar e apontar
client-board-way-two = Isto ou aquilo?
client-board-offer-this = Oferecer isto
client-board-offered-this = Oferecido ✓
client-board-or-this = Ou isto ✓
client-board-wait = Espera
client-board-wait-seconds = { $n } segundos
client-board-wait-usual = { $n } segundos (o habitual)
client-board-rest-invite = Descanso até { $until }. Foram vistos sinais fortes; não convide antes disso.
client-board-only-there = { $name } não se juntou a esta sessão. Ofereça só a um animal que está ali.
client-board-offer-one = { $word } oferecido: começar a espera
client-board-offer-two = { $word } ou { $other } oferecido: começar a espera
client-board-choose-two = Escolha duas palavras acima
client-board-choose-one = Escolha uma palavra acima
client-board-own-choice = Escolha sua: guardada como registro do dia a dia. Pode sugerir algo; não prova nada.
client-board-not-drawn = O que não foi sorteado fica guardado como registro do dia a dia. Pode sugerir algo; não prova nada.
client-board-round-instead = Sortear antes uma rodada
client-board-call-of = { $n } de { $all } · { $word }
client-board-nothing-came = Nada veio
client-board-own-way = Pediu do seu jeito
client-board-cancel-one = Cancelar esta
client-board-wait-over = Não é erro. Toque em “Nada veio” e mostre você.
client-board-wait-over-rest = Não é erro. Toque em “Nada veio”. Agora nada é mostrado.
client-board-wait-still = { $n } segundos: não se mova e não diga mais nada. Toque na palavra que { $name } apertar.
client-board-late-which = { $name } apertou “{ $word }”. Antes dos { $n } segundos ou depois?
client-board-in-time = A tempo
client-board-after-wait = Depois da espera
client-board-give-now-pressed = { $name } apertou “{ $word }”. Dê agora e toque em Dado.
client-board-give-now = Dê agora e toque em Dado.
client-board-show-now = Mostre você e dê: aperte o botão, diga a palavra.
client-board-could-not-give = Não deu para dar
client-board-did-take = { $name } aceitou?
client-board-counts-only = Só conta se { $name } queria.
client-board-did-not-take = Não aceitou
client-board-did-not-see = Não vi
client-board-stop-round = Parar a rodada
client-board-done = Feito
client-board-no-thing = sem coisa na ficha
client-board-too-few = { $n ->
    [one] resta { $n }
   *[other] restam { $n }
} hoje: poucos
client-board-round-short = Essa rodada foi encurtada. Conta pouco; é só isso.
client-board-round-done = A rodada de { $n } está feita.
client-board-none-to-invite = Ainda não há palavra para convidar. Mostre-as primeiro: aperte e entregue em dois segundos. Hoje diz quando { $name } pode ser convidado, e por que não antes.
client-board-not-yet = Com “{ $word }” Hoje ainda não espera nada: ela ainda está sendo mostrada. O que sair de uma espera agora diz pouco.
client-board-needs-two = Um sorteio precisa de duas palavras para as quais hoje se pode convidar, cada uma com a coisa à mão. Aqui: { $list }.
client-board-needs-two-food = Um sorteio precisa de duas palavras para as quais hoje se pode convidar, cada uma com a coisa à mão. A comida de hoje está quase no fim.
client-board-none-yet = nenhuma ainda
client-board-round-of = Uma rodada de { $n }. O que há à mão agora? Disso o caderno sorteia o que você oferece.
client-board-to-hand = À mão agora
client-board-other-step = Hoje, outro passo: { $list }.
client-board-round-start = Começar a rodada
client-board-choose-myself = Escolher eu
client-board-stop-here = Pare aqui. Sinais fortes foram vistos. Dê espaço; não atraia { $name } de volta.
client-board-round-at = { $n } de { $all }
client-board-offer-label = Ofereça:
client-board-must-not = Não deve ser dado.
client-board-none-left = Hoje acabou: não ofereça.
client-board-offered-start = Oferecido: começar a espera
client-board-may-leave = { $name } pode ir embora e você pode parar a qualquer momento: uma rodada encurtada conta pouco; é só isso.
client-board-swap-ask = { $name } apertou “{ $word }”. Dar algo agora?
client-board-give = Dar
client-board-not-now-more = Agora não…
client-board-swap-give = Dê { $thing }
client-board-swap-instead = Desta vez dê { $thing } no lugar
client-board-swap-as-always = Dê como sempre. { $name } não tem de aceitar.
client-board-swap-no-more = Isso não pode mais ser dado hoje.
client-board-swaps-link = Trocas combinadas
client-board-swaps-stopped = As trocas foram paradas: sinais de estresse. Responda a cada aperto com a própria coisa.
client-board-swaps-taken-back = As trocas foram paradas. Um novo acordo as começa de novo. Responda a cada aperto com a própria coisa.
client-board-swaps-over = As trocas combinadas foram paradas.
client-board-swaps-strong = Um sinal forte: pare as trocas. Até lá nada é sorteado.
client-board-swaps-mild = Outra vez sinais leves: melhor parar as trocas. Até lá nada é sorteado.
client-board-swaps-stop = Parar as trocas
client-board-swaps-run = uma resposta em { $n }
client-board-sign = Sinal…
client-board-stop = Parar
client-board-start-most = Começar a mostrar: { $n } min no máximo
client-board-of-minutes = de { $n } min
client-board-minutes-reached = de { $n } min ✓
client-board-enough = Passaram { $n } min: um bom momento para terminar.
client-board-none-waiting = { $why } Todos os toques até agora foram entregues.
client-board-beside-plan = Além do plano de hoje: { $list }.
client-board-offer-first = Ofereça primeiro: { $list }. Toque na palavra.
client-board-ready = Deixe { $name } ver o que “{ $word }” traz e toque em Esperar ({ $n } segundos).
client-board-ready-wait = Esperar
client-board-ready-draw = Sortear rodada
client-board-still-offered = { $word } ainda está oferecida
client-board-still-offered-why = O que aconteceu? Se ficar em aberto, vai faltar nos números de { $name }.
client-board-sum-invited = Convites: { $list }.
client-board-pause-until = { $name } descansa até { $time }: por enquanto foi o bastante. Até lá, responda aos apertos.
client-board-enough-today = Por hoje foi o bastante. Responda aos apertos de { $name }.
client-board-start-more = Começar mesmo assim
client-board-left = Esta casa não está aberta para você agora: ela saiu deste servidor, ou o seu papel ou os dias dele terminaram.
client-board-lesson-read = Ler
client-board-lesson-later = Agora não
