# O que deveria estar em um lugar de um arquivo ou de um registro, dito depois de “esperado”; e o que está errado ali.
wanted-at = { $line ->
    [0] { $field }: { $what }
   *[other] linha { $line }, { $field }: { $what }
}
wanted-place = { $place ->
    [file] o arquivo
    [line] a linha
    [row] a linha da tabela
    [column] a coluna
   *[other] o registro
}
wanted-missing = esperado: { $wanted }
wanted-found = encontrado “{ $found }”; esperado: { $wanted }
wanted-text = um texto
wanted-number = um número como 1.5
wanted-point = um número com ponto, como 1.5
wanted-whole = um número inteiro de { $low } a { $high }
wanted-flag = true ou false
wanted-list = uma lista
wanted-json-list = uma lista JSON como ["walk","food"]
wanted-object = um objeto com { $names }
wanted-tagged = um objeto JSON com "{ $tag }", um de: { $names }
wanted-object-not-list = um objeto JSON, de {"{"} a {"}"}, não uma lista
wanted-one-of = um de: { $names }
wanted-needed = um valor: ele é preciso
wanted-needed-one-of = um valor: ele é preciso, um de: { $names }
wanted-no-such-field = nada: esse campo não existe; existem: { $names }
wanted-empty-cell = uma célula vazia: { $kind } não tem esse campo
wanted-parts = nada: use colunas para as partes, como { $part }
wanted-body-columns = nada: use colunas que começam com "body."
wanted-fitting = um valor que caiba neste campo, dado uma vez
wanted-id = um identificador (um UUID como 0198a2b4-7c11-7000-8000-000000000001)
wanted-home-id = o identificador de uma casa (um UUID)
wanted-first-home-id = o identificador de uma casa (um UUID): este caderno ainda não tem nenhuma; comece com uma ou importe uma exportação
wanted-no-name-yet = um identificador: aqui ainda não se conhece nenhum nome
wanted-known-name = um identificador ou um dos nomes conhecidos: { $names }
wanted-known-name-of-many = um identificador ou um dos nomes conhecidos: { $names } e mais { $more }
wanted-one-of-ids = um identificador, porque { $count } têm este nome: { $ids }
wanted-time = uma hora como 2026-03-01 18:30 ou 2026-03-01T18:30:00+01:00, nos anos 2000 a 2199
wanted-offset = uma diferença de UTC, como { $local }+01:00: esta casa ainda não tem fuso horário
wanted-twice = { $first } ou { $second }: os relógios atrasam em { $zone }, e esta hora vem duas vezes
wanted-skipped = { $first } ou { $second }: os relógios adiantam em { $zone }, e esta hora é pulada
wanted-event = um registro como objeto JSON, de {"{"} a {"}"}
wanted-json = um registro em JSON; não dá para ler a partir da coluna { $column }
wanted-own-id = um identificador próprio: outro registro tem este; para corrigir um registro, acrescente uma correção
wanted-smaller-file = no máximo { $most } bytes: corte em vários arquivos entre duas linhas
wanted-shorter-line = no máximo { $most } bytes
wanted-utf8 = UTF-8, não UTF-16, Latin-1 ou Windows-1252: salve de novo como "UTF-8" ou "CSV UTF-8"
wanted-closed-quotes = cada " fechada; uma " dentro de uma célula se escreve duas vezes
wanted-table = um arquivo CSV
wanted-cells = { $count } células, como na primeira linha
wanted-header = uma primeira linha com os nomes das colunas
wanted-column-once = cada coluna uma vez
wanted-column = uma coluna como { $names }, word, by, answer ou result.outcome
wanted-this-column = uma coluna { $name }
wanted-by-hand = nenhum consentimento: o que um arquivo diz dele não abre nada. Quem cuida da casa o dá ou o retira em “Quem pode ver isto”
