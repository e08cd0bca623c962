store-not-a-database = { $path } não é um caderno: nem sequer é um banco de dados
store-not-ours = { $path } é um banco de dados, mas não um caderno deste programa
store-newer = { $path } foi escrito por uma versão mais nova (esquema { $found }; esta versão conhece até { $known }); atualize este programa
store-corrupt = { $path } está danificado ({ $what }); guarde uma cópia e restaure a última cópia de segurança em uma pasta nova
store-unwritable = não é possível escrever em { $path }: { $what }
store-cannot-hold = não é possível escrever em { $path }: { $what }. Um arquivo trazido, ou feito para enviar, fica algum tempo nesta pasta: deixe o usuário que executa este programa escrever nela
store-full = o disco do caderno está cheio; nada disto foi guardado. Libere espaço e tente de novo
store-busy = o caderno está ocupado: outro processo o mantinha bloqueado; tente de novo
store-closed = o caderno foi fechado
store-exists = { $path } já existe; escolha outro nome
store-bad-backup = { $path } não serve como cópia de segurança: { $what }
store-backup-no-file = não há tal arquivo
store-backup-itself = é o próprio caderno
store-backup-other-digest = está danificada: o conteúdo não tem a soma de verificação que indica
store-backup-no-digest = está danificada: falta a soma de verificação
store-backup-row = está danificada: { $what }
store-backup-not-the-log = não contém o que o caderno contém; o disco pode estar falhando
store-backup-loose = { $rows ->
    [1] uma linha não remete para nada
   *[other] { $rows } linhas não remetem para nada
}
store-bad-archive = { $path } não pode ser lido como pacote de um caderno: { $what }
store-archive-lacks = não contém { $file }
store-unknown-file = { $name } não é dos arquivos que se podem trazer: uma tabela (.csv), linhas de JSON (.jsonl ou .ndjson), um pacote (.tar) ou uma cópia de segurança (.sayso)
store-other-home = { $path } faria este caderno ter várias casas. Traz { $homes }. Nada foi guardado; para ter várias em um caderno, para sempre, diga isso expressamente
store-home-brings = { $home }: { $events ->
    [1] um registro
   *[other] { $events } registros
}
store-bad-clip = gravação { $hash }: { $what }
store-clip-not-a-hash = o nome não tem 64 dígitos hexadecimais
store-clip-size = tem { $found } bytes; são aceitos de 1 a { $most }
store-clip-other-content = está danificada: os bytes não têm esta soma de verificação; guarde a gravação de novo
store-not-imported = nada foi importado: { $why }
store-import-faults = { $count ->
    [1] uma falha: { $first }
   *[other] { $count } falhas, a primeira: { $first }
}
store-import-other-homes = o arquivo faria este caderno ter várias casas. Traz { $homes }. Para ter várias em um caderno, para sempre, diga isso expressamente
store-import-not-its-own = uma casa em um servidor só aceita um arquivo de uma única casa. Este traz { $homes }. Exporte cada casa separadamente e traga o arquivo dela
store-import-not-empty = o arquivo é de outra casa ({ $home }), e esta já tem registros. O caderno de outra casa só entra onde ainda não há nada escrito: peça uma nova a quem cuida do servidor
store-import-taken = outro registro com o id { $id } já está guardado
store-database = banco de dados: { $why }
store-no-home-yet = { $dir } ainda não contém nenhuma casa
store-damaged-row = registro { $id } (linha { $row }): { $what }
store-row-no-event = seu conteúdo não é um registro
store-row-column = sua coluna { $column } diz outra coisa que seu conteúdo
store-log-left = já não está lá, mas { $file } ao lado está; pode haver registros ali
store-other-schema = seu esquema { $schema } não é o que este programa fez
store-snapshot = o instantâneo de { $home } { $what }; remova o arquivo { $file } e comece de novo: o diário é a verdade, e dele se faz outro
store-snapshot-differs = difere do diário no registro { $id } (linha { $row })
store-snapshot-more = contém o registro { $id }, que o diário não tem
store-unreachable = não dá para alcançar o banco de dados ({ $what }); não se sabe se algo disto foi guardado. Confira o endereço e se ele está funcionando, depois tente de novo
store-old-database = o servidor do banco de dados é PostgreSQL { $found }; este programa precisa de { $least } ou mais novo
store-newer-database = uma versão mais nova criou o banco de dados (esquema { $found }; esta versão conhece até { $known }); atualize este programa
store-no-rights = o banco de dados recusa este programa ({ $what }); que o dono dele conceda o papel sayso_server ao usuário que se conecta
store-not-let-in = o banco de dados não admite este usuário ({ $what }); confira o usuário e a senha em SAYSO_DATABASE (SAYSO_DATABASE_OWNER para o dono)
store-needs-owner = as tabelas ainda faltam ou são de uma versão anterior, e o usuário que se conecta não pode criá-las ({ $what }); indique quem é o dono delas com --database-owner ou na variável SAYSO_DATABASE_OWNER
store-database-damaged = o banco de dados está danificado ({ $what }); guarde uma cópia dele e recupere o último backup
store-no-such-home = não há nenhum lar { $home } aqui
store-home-left = este lar foi embora: tudo dele foi apagado aqui, e nada mais dele é guardado
store-only-folder-backup = um lar em um servidor não tem um arquivo de backup próprio; faça um pacote dele
store-only-folder-restore = um backup não pode ser trazido para um servidor; restaure-o em uma pasta, faça lá um pacote e traga esse
store-only-folder-check = um lar em um servidor não tem um arquivo para conferir; faça um pacote dele e confira-o em uma pasta
store-only-folder-snippets = o som em volta dos apertos não é guardado em um servidor; ouça com um caderno em uma pasta para julgá-los de ouvido
