store-not-a-database = { $path } não é um caderno: nem sequer é uma base de dados
store-not-ours = { $path } é uma base de dados, mas não um caderno deste programa
store-newer = { $path } foi escrito por uma versão mais nova (esquema { $found }; esta versão conhece até { $known }); atualiza este programa
store-corrupt = { $path } está danificado ({ $what }); guarda uma cópia e restaura a última cópia de segurança numa pasta nova
store-unwritable = não é possível escrever em { $path }: { $what }
store-cannot-hold = não é possível escrever em { $path }: { $what }. Um ficheiro trazido, ou feito para enviar, fica algum tempo nesta pasta: deixa escrever aí o utilizador que executa este programa
store-full = o disco do caderno está cheio; nada disto foi guardado. Arranja espaço e tenta outra vez
store-busy = o caderno está ocupado: outro processo mantinha-o bloqueado; tenta outra vez
store-closed = o caderno foi fechado
store-exists = { $path } já existe; escolhe outro nome
store-bad-backup = { $path } não serve como cópia de segurança: { $what }
store-backup-no-file = não há tal ficheiro
store-backup-itself = é o próprio caderno
store-backup-other-digest = está danificada: o conteúdo não tem a soma de controlo que indica
store-backup-no-digest = está danificada: falta a soma de controlo
store-backup-row = está danificada: { $what }
store-backup-not-the-log = não contém o que o caderno contém; o disco pode estar a falhar
store-backup-loose = { $rows ->
    [one] uma linha não remete para nada
   *[other] { $rows } linhas não remetem para nada
}
store-bad-archive = { $path } não se pode ler como arquivo de um caderno: { $what }
store-archive-lacks = não contém { $file }
store-unknown-file = { $name } não é dos ficheiros que se podem trazer: uma tabela (.csv), linhas de JSON (.jsonl ou .ndjson), um arquivo (.tar) ou uma cópia de segurança (.sayso)
store-other-home = { $path } faria este caderno ter várias casas. Traz { $homes }. Nada foi guardado; para ter várias num caderno, para sempre, di-lo expressamente
store-home-brings = { $home }: { $events ->
    [one] um registo
   *[other] { $events } registos
}
store-bad-clip = gravação { $hash }: { $what }
store-clip-not-a-hash = o nome não são 64 algarismos hexadecimais
store-clip-size = tem { $found } bytes; admitem-se de 1 a { $most }
store-clip-other-content = está danificada: os bytes não têm esta soma de controlo; guarda a gravação outra vez
store-not-imported = nada foi importado: { $why }
store-import-faults = { $count ->
    [one] uma falha: { $first }
   *[other] { $count } falhas, a primeira: { $first }
}
store-import-other-homes = o ficheiro faria este caderno ter várias casas. Traz { $homes }. Para ter várias num caderno, para sempre, di-lo expressamente
store-import-taken = outro registo com o id { $id } já está guardado
store-database = base de dados: { $why }
store-no-home-yet = { $dir } ainda não contém nenhuma casa
store-damaged-row = registro { $id } (linha { $row }): { $what }
store-row-no-event = seu conteúdo não é um registro
store-row-column = sua coluna { $column } diz outra coisa que seu conteúdo
store-log-left = já não está lá, mas { $file } ao lado está; pode haver registros ali
store-other-schema = seu esquema { $schema } não é o que este programa fez
store-snapshot = o instantâneo de { $home } { $what }; remova o arquivo { $file } e comece de novo: o diário é a verdade, e dele se faz outro
store-snapshot-differs = difere do diário no registro { $id } (linha { $row })
store-snapshot-more = contém o registro { $id }, que o diário não tem
