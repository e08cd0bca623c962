exchange-title = Arquivos: trazer e guardar
exchange-title-taken = Recebido
exchange-title-look = Veja antes de receber
exchange-gone = Este arquivo não está mais guardado aqui. Escolha-o de novo.
exchange-bring = Trazer um arquivo
exchange-bring-intro = Primeiro você vê o que ele contém. Nada é recebido antes de você confirmar, e nada do que está aqui muda ou se perde.
exchange-file = O arquivo
exchange-file-hint = Uma tabela (.csv), linhas JSON (.jsonl), um pacote com gravações (.tar) ou uma cópia (.sayso); no máximo { $most } MiB
exchange-file-hint-server = Uma tabela (.csv), linhas JSON (.jsonl) ou um pacote com gravações (.tar); no máximo { $most } MiB
exchange-look = Ver
exchange-columns = O que uma tabela pode conter, e com que colunas: { $page }.
exchange-columns-title = Os arquivos em detalhe
exchange-out = Levar tudo
exchange-out-intro = Cada um tem tudo como foi primeiro anotado. Guarde as cópias onde só você possa lê-las: contam os seus dias.
exchange-backup = Cópia de segurança
exchange-backup-hint = registros e gravações, com prova de que está inteira; para guardar e restaurar
exchange-backup-save = Salvar uma cópia
exchange-archive = Pacote
exchange-archive-hint = registros e gravações como arquivos simples que qualquer sistema abre
exchange-archive-save = Salvar um pacote
exchange-table = Tabela
exchange-table-hint = só registros, para uma planilha (CSV)
exchange-table-save = Salvar uma tabela
exchange-lines = Linhas JSON
exchange-lines-hint = só registros, para outro programa
exchange-lines-save = Salvar as linhas
exchange-to-people = Voltar a Pessoas
exchange-begin-new = Começar um caderno novo em vez disso
exchange-several-box = Começar com todas em um só caderno
exchange-other-box = Receber também outra casa
exchange-leave-out-box = Deixar de fora as linhas com erros
exchange-leave-out-hint = { $count ->
    [1] uma linha não entra
   *[other] { $count } linhas não entram
}
exchange-nothing-taken = “{ $name }”: ainda nada foi recebido.
exchange-several = Várias casas
exchange-several-intro = Este caderno está vazio e o arquivo tem várias casas: { $homes }.
exchange-another = Outra casa
exchange-another-intro = O arquivo tem registros de uma casa que este caderno não tem: { $homes }.
exchange-for-good = Cada casa mantém seus animais, palavras e números, mas, uma vez em um caderno, não podem mais ser separadas.
exchange-faults = Erros
exchange-faults-intro = O melhor é corrigir no arquivo e trazê-lo de novo: as linhas já recebidas são então conhecidas.
exchange-take-in = Receber
exchange-nothing-new = Não tem nada para receber.
exchange-away = Não receber
exchange-rows = Linhas
exchange-new = Novos
exchange-known = Já conhecidos
exchange-other-id = Outro registro tem o identificador deles
exchange-other-faults = Com outros erros
exchange-recordings = Gravações
exchange-days = Dias
exchange-from-to = { $from } a { $to }
exchange-by-kind = Registros novos por tipo
exchange-later = { $count ->
    [1] Um registro de tipo { $kind }: foi escrito por uma versão posterior. Fica guardado, mas não é mostrado. Atualize este programa.
   *[other] { $count } registros de tipo { $kind }: foram escritos por uma versão posterior. Ficam guardados, mas não são mostrados. Atualize este programa.
}
exchange-and-more = E mais { $count }.
exchange-times = { $count ->
    [1] uma vez
   *[other] { $count } vezes
}
exchange-fault = { $times }{ $place }: o esperado era { $wanted }.
exchange-fault-found = { $times }{ $place }: encontrado “{ $found }”; o esperado era { $wanted }.
exchange-fault-found-one-of = { $times }{ $place }: encontrado “{ $found }”, por exemplo; o esperado era { $wanted }.
exchange-fault-said = { $times }{ $place }: { $what }.
exchange-in-lines = { $count ->
    [1] (linha { $lines })
   *[other] (linhas { $lines })
}
exchange-in-more-lines = (linhas { $lines } e outras)
exchange-whose = De quem são
exchange-unnamed = Uma casa sem nome ({ $id })
exchange-share-new = { $count ->
    [one] { $count } novo
   *[other] { $count } novos
}
exchange-share-backup = { $count } na cópia
exchange-not-here = { $share }, não neste caderno
exchange-new-events = Registros novos
exchange-other-content = Aqui com outro conteúdo
exchange-unsound = Danificados
exchange-new-recordings = Gravações novas
exchange-known-recordings = Gravações conhecidas
exchange-damaged-recordings = Gravações danificadas
exchange-conflicts = Onde um registro daqui difere do da cópia, fica o daqui.
exchange-no-digest = Foi feita por uma versão anterior e não traz soma de verificação: um dano pode ter passado despercebido.
exchange-report = “{ $name }”: { $counts }. O arquivo em si não fica guardado aqui.
exchange-counts = { $count ->
    [1] um registro novo, { $known } já conhecidos
   *[other] { $count } registros novos, { $known } já conhecidos
}
exchange-counts-recordings = { $count ->
    [1] uma gravação nova, { $known } já conhecidas
   *[other] { $count } gravações novas, { $known } já conhecidas
}
exchange-damaged = { $count ->
    [1] Uma gravação está danificada e fica de fora.
   *[other] { $count } gravações estão danificadas e ficam de fora.
}
exchange-kept-here = { $count ->
    [1] Um registro daqui difere do da cópia. Ficou o daqui.
   *[other] { $count } registros daqui diferem dos da cópia. Ficaram os daqui.
}
exchange-unsound-left = { $count ->
    [1] Fica de fora, por estar danificado quando a cópia foi feita: um registro.
   *[other] Ficam de fora, por estarem danificados quando a cópia foi feita: { $count } registros.
}
exchange-another-file = Outro arquivo
exchange-nameless = o arquivo
exchange-moves-in = O arquivo é o caderno de outra casa ({ $home }). Os registros dele passam a ser desta casa, com os identificadores que têm. Daí em diante, escreva só aqui: o que for anotado depois no caderno antigo só vem se você trouxer o arquivo dele outra vez.
exchange-diary = Lido como um diário
exchange-diary-intro = Esta tabela tem colunas próprias. Elas são lidas assim; se estiver errado, não a receba.
exchange-diary-column = { $part ->
    [day] “{ $column }”: o dia
    [time] “{ $column }”: a hora
    [word] “{ $column }”: a palavra que o animal apertou
    [who] “{ $column }”: qual animal; numa observação, também qual pessoa
   *[note] “{ $column }”: uma observação
}
exchange-diary-rules = Cada palavra conta como um aperto do animal, sem saber se foi de propósito. Um dia sem hora fica ao meio-dia.
exchange-diary-first = Um diário precisa antes do animal e das palavras dele. Comece por eles e depois traga este arquivo em “Arquivos: trazer e guardar”.
exchange-help = Como uma tabela pode ser
exchange-help-found = Colunas encontradas: { $columns }.
exchange-help-wanted = É preciso um dia ou uma hora, e uma palavra ou uma observação. Dias como 2026-03-01, horas como 18:30. Palavras e nomes como estão aqui. Tire as outras colunas.
exchange-help-save = Salvar este exemplo
exchange-help-open = Como um diário pode ser
exchange-example =
    data,hora,palavra,quem,nota
    2026-03-01,18:30,comida,Bo,veio do sofá
    2026-03-02,,,Bo,dormiu o dia todo
