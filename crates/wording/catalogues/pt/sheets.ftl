sheets-title = Folhas
sheets-intro = Cada uma é impressa em A4 ou Carta, sem os menus, e existe em PDF que os leitores de tela leem.
sheets-fridge = Para a geladeira
sheets-fridge-what = O que cada palavra quer dizer, como todos respondem a ela, o que todos dizem para “agora não”, e as regras da casa.
sheets-rules = Regras da casa
sheets-buttons = Para os botões
sheets-buttons-what = Etiquetas simples com a palavra.
sheets-labels = Etiquetas
sheets-animal-what = Para a família, a clínica veterinária ou um profissional de comportamento.
sheets-progress = Relatório de progresso
sheets-likes-of = Do que { $name } gosta
sheets-print = Imprimir
sheets-print-menu = ou imprima pelo menu do navegador
sheets-all = Todas as folhas
sheets-pdf-a4 = PDF, A4
sheets-pdf-letter = PDF, Carta
sheets-foot = Sayso · { $home } · { $day }
sheets-foot-page = Sayso · { $home } · { $day } · página { $page } de { $of }

sheets-period = Período
sheets-days = { $days ->
    [1] Um dia
   *[other] { $days } dias
}
sheets-progress-of = Progresso de { $name }
sheets-not-a-diagnosis = Não é um diagnóstico.
sheets-own-records = Registros de uma casa, contados por um programa. Ninguém os verificou. Não podem dizer o que um animal entende, sente ou do que sofre; para isso pergunte a uma clínica veterinária ou a um profissional qualificado de comportamento.
sheets-animal = Animal
sheets-species = { $species ->
    [dog] cão
    [cat] gato
    [parrot] papagaio
    [rabbit] coelho
   *[other] outra espécie
}
sheets-age-weeks = { $weeks ->
    [1] uma semana de idade
   *[other] { $weeks } semanas de idade
}
sheets-age-months = { $months ->
    [1] um mês de idade
   *[other] { $months } meses de idade
}
sheets-age-years = { $years ->
    [1] um ano de idade
   *[other] { $years } anos de idade
}
sheets-age-about = cerca de { $age }
sheets-from-to = { $first } a { $last } ({ $zone })
sheets-printed-by = Impresso por
sheets-limits = Limites
sheets-health = Cuidados de saúde

sheets-in-short = Em resumo
sheets-noted = Dias com algo anotado: { $noted } de { $days }. O que ninguém anotou não está aqui.
sheets-joined = Sessões em que { $name } participou: { $share }.
sheets-counts = Demonstrações por pessoas: { $showings }. Apertos próprios de { $name }: { $presses }.
sheets-welfare = Bem-estar:

sheets-words = Palavras
sheets-none-taught = Ainda não se ensina nenhuma palavra.
sheets-since = desde o início; apertos próprios do período acima
sheets-word = Palavra
sheets-stage = Etapa
sheets-shown = Mostrada
sheets-to-giving = Do aperto à entrega
sheets-when-invited = Apertada ao convidar e querendo
sheets-own-presses = Apertos próprios
sheets-presses-rest = Além disso, apertos próprios do período em palavras que agora não se ensinam a { $name }: { $words }.
sheets-presses-of = “{ $word }” { $presses }
sheets-n = { $n }
sheets-n-of = (de { $n })
sheets-stages = Etapas: preparar, mostrar (as pessoas apertam e dão), convidar (uma oferta, uma espera e a coisa de qualquer forma), conversar ({ $name } aperta sem ninguém pedir). Não apertar nunca conta como não entender.

sheets-showings-a-week = Demonstrações por semana
sheets-joined-by-week = Sessões em que participou, por semana
sheets-week-from = semana de { $day }
sheets-axis-week = semana de
sheets-axis-showings = demonstrações
sheets-axis-joined = participou
sheets-axis-pressed = apertada
sheets-told = { $what }: { $figure }

sheets-answered = Como foram respondidos os apertos próprios de { $name }
sheets-given = Dado: { $share }.
sheets-given-partly = Dado: { $share }, em parte: { $partly }.
sheets-not-now = Agora não: { $declined }, outra coisa: { $other }.
sheets-missed = Sem resposta, ou nenhuma anotada: { $share }.

sheets-body-language = Linguagem corporal anotada
sheets-signs = Participa: { $joining }. Sinais leves de estresse: { $mild }. Sinais fortes: { $strong }.
sheets-strong-sign = { $day }: { $sign }
sheets-signs-note = Como o viram as pessoas presentes. Um só sinal diz pouco; olhe o corpo todo e a situação.

sheets-food = Recompensas de comida
sheets-reckoned = Calculado com { $day } kcal por dia, das quais no máximo { $rewards } kcal em recompensas. Base: { $basis }.
sheets-reckoned-range = Calculado com { $day } kcal por dia (conforme o indivíduo: { $low } a { $high }), das quais no máximo { $rewards } kcal em recompensas. Base: { $basis }.
sheets-no-allowance = Nenhuma quantidade é calculada: { $why }.
sheets-why-unknown = não se sabe

sheets-likes = Gostos
sheets-last-tested = Último teste: { $day }.
sheets-not-tested = Não foi testado o bastante para dizer algo ({ $trials ->
    [0] nenhum ensaio
    [1] um ensaio
   *[other] { $trials } ensaios
}).

sheets-not-known = O que não se sabe
sheets-open-no-check = Se { $name } entende alguma palavra: não houve nenhuma verificação planejada. Apertar também pode vir do hábito do lugar, de pistas que as pessoas dão sem saber, ou do que antes deu resultado.
sheets-open-checks = Se { $name } entende uma palavra, esta folha não decide: { $checks ->
    [1] um ensaio
   *[other] { $checks } ensaios
} de verificações planejadas, que se leem na página Evidências.
sheets-open-word = Como se responde a “{ $word }” ao convidar.
sheets-open-little = Pouco sobre “{ $word }” ao convidar ({ $n ->
    [1] uma vez
   *[other] { $n } vezes
}).
sheets-open-sessions = Com que vontade { $name } participa: nenhuma sessão anotada neste período.
sheets-open-likes = Do que { $name } mais gosta: não houve nenhum teste de gostos.

sheets-nothing-tested = Nada foi testado ainda.
sheets-trials = De { $trials ->
    [1] um ensaio
   *[other] { $trials } ensaios
}, sem escolha: { $none }.
sheets-trials-last = De { $trials ->
    [1] um ensaio
   *[other] { $trials } ensaios
}, o último em { $day }, sem escolha: { $none }.
sheets-test-again = Testar de novo:
sheets-over-middling = Probabilidade de ser escolhida em vez de uma coisa de gosto médio
sheets-chance = probabilidade
sheets-consistency = { $circular ->
    [0] As escolhas concordam: nenhum círculo como A antes de B, B antes de C, C antes de A
    [1] As escolhas têm um círculo como A antes de B, B antes de C, C antes de A, de no máximo { $most }
   *[other] As escolhas têm { $circular } círculos como A antes de B, B antes de C, C antes de A, de no máximo { $most }
} ({ $items } coisas comparadas a dois; coerência { $zeta }, 1 é sem círculos).
sheets-side = Aceito à esquerda de { $name }: { $share }.
sheets-scores = Pontuações por tipo de teste
sheets-thing = Coisa
sheets-score = { $format ->
    [single] Uma por vez: parte das ofertas em que { $name } veio
    [paired] Duas por vez: parte das ofertas em que foi escolhida
    [multiple] Todas em fileira: parte das ofertas em que foi escolhida
   *[free_access] Cronômetro: parte do tempo passado com ela
}
sheets-likes-note = Os gostos mudam com a fome, a hora e o dia; isto é o que { $name } escolheu quando houve pergunta. Um traço é o intervalo de 95%; “de” conta as ofertas.
sheets-never-give = Nunca dê isto a { $name }.
sheets-eaten = { $thing }: { $why }. Já comeu? Ligue agora para uma clínica veterinária.
sheets-care = Cuidado, para { $name }:

sheets-none-on-board = Ainda não há palavras no quadro.
sheets-button = Botão
sheets-means = Significa
sheets-answers = Todos respondem
sheets-not-now-said = Agora não
sheets-ends-session = termina uma sessão
sheets-for-all = todos
sheets-every-press = Responda a cada aperto, também ao que parece um tropeço.
sheets-come-and-go = Cada animal pode vir e ir; nunca chame nem atraia um animal ao quadro.
sheets-batteries = Feche as tampas das pilhas com os parafusos. Uma pilha engolida ou mordida é uma emergência. Um animal: ligue já para uma clínica veterinária. Uma criança que engoliu uma pilha-botão ou a pôs no nariz ou no ouvido: vá já ao pronto-socorro.
sheets-of-animal = { $name }:

sheets-size = Tamanho
sheets-size-of = { $size ->
    [small] pequena, { $width } × { $height } mm
    [middle] média, { $width } × { $height } mm
   *[large] grande, { $width } × { $height } mm
}
sheets-glue = As etiquetas ajudam as pessoas. Pedaços arrancados podem ser engolidos: cole-as bem, e não use nenhuma onde um animal roa. Imprima a 100%, sem ajustar à página.

sheets-written = Escrito: { $file } ({ $pages ->
    [1] uma página
   *[other] { $pages } páginas
}).
sheets-no-animal-needed = A folha “{ $sheet }” é sobre toda a casa: deixe de fora --animal.
sheets-many-animals = Vivem aqui vários animais: diga qual com --animal, um de { $names }.
sheets-no-animal = Nenhum animal vive aqui ainda: adicione um na página Pessoas.
sheets-no-check = { $name } não tem essa verificação: planeje uma na página Verificações.
sheets-picture-unread = A imagem de “{ $word }” não pode ser lida: a folha sai sem ela. Tire-a de novo na ficha da palavra.
sheets-no-typeface = não é possível ler a fonte tipográfica
sheets-pdf-refused = não foi possível escrever o PDF: { $why }
