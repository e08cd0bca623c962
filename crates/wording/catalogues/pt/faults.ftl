# What is wrong with a field, said after its name.
faults-at = { $field } { $what }.
faults-field = { $field ->
    [name] Nome
    [weight_kg] Peso
    [adult_weight_kg] Peso adulto
    [day_kcal] Kcal por dia
    [reward_percent] Parte para recompensas
    [reward_share] Parte para recompensas
    [species] Espécie
    [born] Nascimento
    [life_stage] Fase
    [age_years] Idade em anos
    [age_months] Idade em meses
    [kind] Tipo
    [kcal_per_piece] Kcal por pedaço
    [grams_per_piece] Gramas por pedaço
    [seconds_to_deliver] Segundos até dar
    [most_per_day] Máximo por dia
    [food] Alimento
    [text] Texto
    [word] Palavra
    [words] Palavras
    [animals] Animais
    [animal] Animal
    [home] Casa
    [zone] Fuso horário
    [role] Papel
    [language] Idioma
    [says] O que diz
    [reward] Recompensa
    [rewards] Recompensas
    [format] Formato
    [rounds] Rodadas
    [days] Dias
    [one_in] Uma em
    [design] Plano
    [choices] Opções
    [rate] Parte certa
    [who] Quem está
    [stage] Etapa
    [because] Por quê
    [why] Por quê
    [answer] Resposta
    [means] Significado
    [day] Dia
    [time] Hora
    [point] Ponto
    [first] Primeiro dia
    [points] Pontos
    [rows] Fileiras
    [columns] Colunas
    [observed_s] Segundos observados
    [after_s] Segundos
    [person] Pessoa
    [last] Último dia
    [weekdays] Dias da semana
    [club] Clube
    [count] Número
    [account] Conta
    [purpose] Finalidade
    [last_day] Último dia
    [about] Sobre
    [word_1] Palavra 1
    [way_1] Como 1
    [minutes_1] Minutos 1
    [times_1] Vezes por dia 1
    [word_2] Palavra 2
    [way_2] Como 2
    [minutes_2] Minutos 2
    [times_2] Vezes por dia 2
    [word_3] Palavra 3
    [way_3] Como 3
    [minutes_3] Minutos 3
    [times_3] Vezes por dia 3
    [reply] Resposta
    [what] O quê
    [stands] O que representa:
    [whose] Casa ou conta
    [new_person] Nome de alguém novo
    [email] Endereço de e-mail
   *[other] { $plain }
}
faults-not-kept = Ainda não guardado.
faults-put-right = O que você escreveu continua aqui; corrija isto:
faults-unknown-field = não é um campo deste formulário
faults-number = tem de ser um número como 4,5, não “{ $text }”
faults-whole = tem de ser um número inteiro de { $low } a { $high }, não “{ $text }”
faults-one-of = tem de ser um de: { $names }
faults-unknown-id = nomeia algo que este caderno não conhece; recarregue a página
faults-not-read = não pode ser lido: “{ $text }”
faults-missing = falta
faults-missing-choose = falta; escolha uma opção
faults-missing-usual = falta; o habitual é { $usual }
faults-missing-several = faltam; o habitual é { $usual }
faults-form-expected = O esperado era um formulário (application/x-www-form-urlencoded).
faults-form-broken = não pode ser lido; recarregue a página
faults-no-animal = falta; este tipo de nota é sobre um animal
faults-range = tem de ser { $low } a { $high }, não { $found }
faults-too-few = tem de ser pelo menos { $least }, não { $found }
faults-name = tem de nomear { $low } a { $high }, não { $found }
faults-seconds = tem de ser { $low } a { $high } segundos, não { $found }
faults-twice = nomeia um duas vezes
faults-amends-amendment = não pode ser ela própria uma correção ou retirada; corrija de novo a primeira nota
faults-not-alternative = vai só com a resposta "alternative"
faults-not-pressed-again = vai só com o que se seguiu "pressed_again"
faults-not-between-two = nomeia a segunda palavra de "ask_between_two", e só disso
faults-same-word = tem de ser outra palavra
faults-after-the-wait = fica depois da espera de { $seconds } s; anote como um aperto comum
faults-no-food = falta; diga o que foi dado, ou uma recompensa
faults-label-of-other = diz o que muda onde a pergunta é "other", e só aí
faults-not-by-word = "{ $measure }" não se conta palavra a palavra; informe animais em vez disso
faults-only-over-animals = são só para uma linha de base múltipla sobre animais
faults-criterion-for-people = tem de ser "delivery_delay": um critério é para as pessoas, nunca para o animal
faults-criterion-a-phase = tem de haver um por fase depois da primeira, não { $found }
faults-only-with-criterion = são só para um critério variável
faults-not-offered = não foi oferecido neste ensaio
faults-free-by-time = o acesso livre é pontuado pelo tempo: use "observed"
faults-only-free = "observed" é só para o acesso livre
faults-offered-once = tem de ser uma das coisas oferecidas, uma vez
faults-longer-than-observed = é mais do que os { $seconds } s observados
faults-swaps-one-in = tem de ser { $low } a { $high }, não { $found }; mais trocas do que uma em quatro cansam um animal
faults-reward-share = tem de ser no máximo { $most }; para mais, pergunte a um veterinário
faults-stage-of-other = a fase { $stage } não é desta espécie ({ $species })
faults-grown-less-than-now = é { $grown } kg, menos do que os { $now } kg que este filhote pesa; corrija um, ou escolha uma fase adulta
faults-no-energy = falta; a comida precisa da energia de um pedaço, em kcal
faults-only-food = é só para comida
faults-not-a-hash = tem de ter 64 dígitos hexadecimais
faults-off-board = fileira { $row } coluna { $column } fica fora do quadro
faults-place-twice = fileira { $row } coluna { $column } está ocupada duas vezes
faults-two-places = está em dois lugares
faults-id-taken = já pertence a outra nota; envie de novo como nova
faults-empty = não pode ficar vazio
faults-too-long = tem de ter no máximo { $most } caracteres, não { $found }
faults-control = não pode ter caracteres de controle como tabulações ou quebras de linha
faults-hidden = não pode ter o caractere { $code }, que não se vê ou inverte o texto à sua volta; escreva o texto de novo
faults-quantity = tem de ser um número de { $low } a { $high }, não { $found }
faults-not-a-time = “{ $text }” não é um momento como 2026-03-01T18:30:00Z
faults-time-out-of-range = o momento { $text } fica fora dos anos 2000 a 2199
faults-not-a-zone = “{ $text }” não é um fuso horário IANA como America/Sao_Paulo
faults-not-a-day = “{ $text }” não é um dia como 2026-03-01
faults-late-card = não pode ser depois de { $moment }, a data da ficha que substitui. Corrija primeiro a data dessa ficha no registro
faults-late-amendment = não pode ser depois de { $moment }, a última mudança, por isso não pode mais mudar. Anote de novo, como deve ser
faults-in-swaps = já participam em trocas; termine essas primeiro
faults-signs-today = não podem começar hoje: foram anotados sinais fortes de estresse; escolha um momento calmo
faults-another-thing = têm de ser 2 ou mais, não { $found }; uma troca precisa de outra coisa
faults-same-thing = incluem duas para a mesma coisa ({ $first }, { $second })
faults-one-in-usual = falta; o habitual é uma em { $usual }
faults-agree = tem de concordar: todos os que respondem dão o que sai, ou param as trocas
faults-first-day = tem de ser { $from } a { $to }: a ordem é sorteada antes de começar
faults-seconds-list = têm de ser segundos como 6; 4; 2.5
faults-check-long = tornam a verificação longa demais; escolha menos palavras
faults-tick = têm de ser 2 a { $most }, não { $found }; marque mais ou menos
faults-easiest = faltam; 2 é o mais fácil para o animal
faults-at-most-ticked = tem de ser no máximo o número de palavras marcadas, { $ticked }
faults-never-given = incluem { $name }, que nunca pode ser dado a este animal
faults-who = falta; diga quem vai estar presente
faults-above-chance = tem de estar acima do acaso ({ $chance }%) e ser no máximo 99%
faults-near-chance = está perto demais do acaso para uma verificação de duração suportável
faults-place = tem de ser um lugar de 1 a { $most }, nada ou foi embora
faults-not-a-person = não é uma das pessoas desta casa
faults-not-our-home = não é deste caderno
faults-per-gram = não é a energia de um alimento (0 a 9 kcal por grama)
faults-no-sound-file = falta; escolha um arquivo de som (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM)
faults-sound-unfit = não pode ser usado: { $why }
faults-noted-at-board = deste plano é anotado no quadro, como toda resposta
faults-cannot-run = não pode ser feito: { $why }
faults-no-random = não é possível: esta máquina não dá números aleatórios ({ $why })
faults-file-missing = falta; escolha um
faults-file-empty = falta ou está vazio; escolha um
faults-other-home = não é só a deste caderno: o arquivo traz { $homes }. Marque “{ $tick }” se assim deve ser
faults-rows-faulty = tem falhas. Corrija no arquivo e traga-o de novo, ou marque “{ $tick }”
faults-file-no-backup-use = “{ $name }” não serve como cópia de segurança: { $what }
faults-file-no-archive = “{ $name }” não pode ser lido como pacote de um caderno: { $what }
faults-file-newer = “{ $name }” foi escrito por uma versão mais nova; atualize este programa
faults-file-not-ours = “{ $name }” é um banco de dados de outro programa, e não a cópia de um caderno
faults-file-not-a-backup = “{ $name }” não é uma cópia de segurança: está danificado, ou é outro tipo de arquivo
faults-file-backup-on-server = “{ $name }” é a cópia de segurança de um caderno inteiro, e aqui há uma casa de um servidor. Guarde lá um pacote (.tar), em “Arquivos: trazer e guardar”, e traga esse
faults-file-damaged = “{ $name }” está danificado: { $what }
faults-file-unknown = “{ $name }” não é dos que se podem trazer: uma tabela (.csv), linhas de JSON (.jsonl ou .ndjson), um pacote (.tar) ou uma cópia de segurança (.sayso)
faults-take-in-home = não é só a deste caderno: o arquivo traz { $homes }. Para ter nele várias casas, para sempre, acrescente take_in_other_home=true
faults-away-home = é { $home }, outra casa que a deste caderno; para ter várias em um caderno, importe um arquivo dos registros dela e diga isso
faults-too-many-bytes = é longo demais: { $bytes } bytes, e { $most } é o máximo
faults-not-written = não pode ser escrito como JSON
faults-not-your-home = não é uma casa em que você pode anotar aqui; talvez tenha saído
faults-not-your-role = não é para o seu papel nesta casa
faults-not-your-account = precisa ser a conta que entrou, com o próprio nome
faults-on-its-page = é dado só na página “Quem pode ver isto”, onde se leem as palavras
faults-invites-closing = convida a uma palavra que encerra sessões: ninguém espera por ela; precisa ser “show” ou faltar
faults-not-your-day = precisa chegar num dos dias combinados com você
faults-ends-first = deve terminar depois de começar
faults-own-successor = deve ser outro coach que não quem escreve
faults-sent-again = Ainda não foi guardado. O que você escreveu está aqui de novo: confira e envie mais uma vez.
