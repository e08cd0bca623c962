# Programas: cursos de algumas semanas com metas para pessoas.
programme-title = Programas
programme-intro = Um curso de algumas semanas para casas do seu clube: o que as pessoas se propõem em cada uma, lições, um exercício. Uma casa participa ao aceitar. As metas são para pessoas, nunca para um animal.
programme-none = Nenhum programa ainda.
programme-new = Preparar um programa
programme-new-how = O que o registro pode dizer é contado sozinho. O resto a casa marca. Deixe vazio o que uma semana não tem.
programme-how-many = Semanas
programme-field-name = Como se chama
programme-field-club = Para qual clube
programme-field-showings = Vezes mostrar na semana
programme-field-invitations = Convites na semana
programme-field-a-day = Sessões por dia
programme-field-days = Em quantos dias
programme-field-lessons = Lições para ler
programme-field-own = Outra meta, { $number }
programme-field-own-hint = Em poucas palavras; a casa marca.
programme-field-exercise = Exercício
programme-lay-out = Guardar este programa
programme-nothing = ou outra meta de alguma semana falta
programme-too-many = e as outras metas da semana são demais: no máximo { $most }
programme-week-number = Semana { $week }
programme-week = Semana { $week }, { $first } a { $last }
programme-weeks = { $weeks ->
    [0] { $weeks } semana
    [1] { $weeks } semana
   *[other] { $weeks } semanas
}
programme-closed = não é mais proposto
programme-close = Não propor a mais ninguém
programme-open-again = Propor de novo
programme-rests = deve ser mais tarde: por um sinal forte, as sessões descansam até { $until }
programme-proposed = { $weeks ->
    [0] Programa “{ $name }”, { $weeks } semana a partir de { $first }
    [1] Programa “{ $name }”, { $weeks } semana a partir de { $first }
   *[other] Programa “{ $name }”, { $weeks } semanas a partir de { $first }
}
programme-showings = mostrar { $times ->
    [1] { $times } vez
   *[other] { $times } vezes
}
programme-invitations = { $times ->
    [1] { $times } convite
   *[other] { $times } convites
}
programme-sessions = { $a_day ->
    [1] { $a_day } sessão por dia
   *[other] { $a_day } sessões por dia
}, em { $days ->
    [1] { $days } dia
   *[other] { $days } dias
}
programme-lesson = Ler a lição “{ $lesson }”
programme-doing = { $aim }: { $done }
programme-so-many = { $done } de { $of } até agora
programme-done = feito
programme-not-yet = ainda não
programme-tick = Feito
programme-not-after-all = Afinal não
programme-no-aims = Esta semana não tem metas.
programme-for-people = As metas são para pessoas. Um dia em que ninguém tem tempo, ou em que o animal prefere que não, é um dia como outro qualquer.
programme-done-noted = Meta { $aim } da semana { $week } feita
programme-where-each = Como está cada um
programme-no-ranking = Cada um diante das próprias metas, por nome. Casas e animais não são comparados: partem de lugares diferentes.
programme-nobody = Ninguém participa que agora compartilhe números com você.
programme-handed-on = Passado a { $name } em { $day }. Lá continua.
programme-in-week = Semana { $week } de { $weeks }
programme-begins = Começa em { $day }
programme-over = As semanas passaram.
programme-weeks-before = As semanas anteriores
programme-course = O curso
programme-propose = Propor a casas
programme-field-animal = Com quais animais
programme-field-first = Primeiro dia
programme-propose-button = Propor
programme-given-on = { $who }: passagem para { $name } em { $day }. Lá continua.
programme-sent = Proposto com { $names }. Cada casa responde por si.
programme-left-rests = De fora, pois um sinal forte põe as sessões em pausa: { $names }.
programme-left-handed = De fora, pois outra pessoa continua lá: { $names }.
programme-left-joined = De fora, pois já participam: { $names }.
programme-each-own = Cada casa recebe a própria proposta e responde por si.
programme-all-of-them = Com todos
