exchange-title = Ficheiros: entrar e sair
exchange-title-taken = Recebido
exchange-title-look = Vê antes de receber
exchange-gone = Este ficheiro já não está guardado aqui. Escolhe-o de novo.
exchange-bring = Trazer um ficheiro
exchange-bring-intro = Primeiro vês o que contém. Nada é recebido antes de o dizeres, e nada do que cá está muda ou se perde.
exchange-file = O ficheiro
exchange-file-hint = Uma tabela (.csv), linhas JSON (.jsonl), um arquivo com gravações (.tar) ou uma cópia (.sayso); no máximo { $most } MiB
exchange-look = Ver
exchange-columns = O que uma tabela pode conter, e com que colunas: { $page }, que vem com este programa.
exchange-out = Tirar tudo
exchange-out-intro = Cada um tem tudo como foi primeiro anotado. Guarda as cópias onde só tu as possas ler: contam os teus dias.
exchange-backup = Cópia de segurança
exchange-backup-hint = registos e gravações, com prova de que está inteira; para guardar e repor
exchange-backup-save = Guardar uma cópia
exchange-archive = Arquivo
exchange-archive-hint = registos e gravações como ficheiros simples que qualquer sistema abre
exchange-archive-save = Guardar um arquivo
exchange-table = Tabela
exchange-table-hint = só registos, para uma folha de cálculo (CSV)
exchange-table-save = Guardar uma tabela
exchange-lines = Linhas JSON
exchange-lines-hint = só registos, para outro programa
exchange-lines-save = Guardar as linhas
exchange-to-people = Voltar a Pessoas
exchange-begin-new = Começar antes um caderno novo
exchange-several-box = Começar com todas num só caderno
exchange-other-box = Receber também outra casa
exchange-leave-out-box = Deixar de fora as linhas com erros
exchange-leave-out-hint = { $count ->
    [one] uma linha não entra
   *[other] { $count } linhas não entram
}
exchange-nothing-taken = “{ $name }”: ainda nada foi recebido.
exchange-several = Várias casas
exchange-several-intro = Este caderno está vazio e o ficheiro tem várias casas: { $homes }.
exchange-another = Outra casa
exchange-another-intro = O ficheiro tem registos de uma casa que este caderno não tem: { $homes }.
exchange-for-good = Cada casa mantém os seus animais, palavras e números, mas uma vez num caderno já não se podem separar.
exchange-faults = Erros
exchange-faults-intro = O melhor é corrigi-las no ficheiro e trazê-lo de novo: as linhas já recebidas são então conhecidas.
exchange-take-in = Receber
exchange-nothing-new = Não tem nada para receber.
exchange-away = Não receber
exchange-rows = Linhas
exchange-new = Novos
exchange-known = Já conhecidos
exchange-other-id = Outro registo tem o identificador deles
exchange-other-faults = Com outros erros
exchange-recordings = Gravações
exchange-days = Dias
exchange-from-to = { $from } a { $to }
exchange-by-kind = Registos novos por tipo
exchange-later = { $count ->
    [one] Um registo de tipo { $kind }: foi escrito por uma versão posterior. Fica guardado, mas não se mostra. Atualiza este programa.
   *[other] { $count } registos de tipo { $kind }: foram escritos por uma versão posterior. Ficam guardados, mas não se mostram. Atualiza este programa.
}
exchange-and-more = E mais { $count }.
exchange-times = { $count ->
    [one] uma vez
   *[other] { $count } vezes
}
exchange-fault = { $times }{ $place }: esperava-se { $wanted }.
exchange-fault-found = { $times }{ $place }: encontrou-se “{ $found }”; esperava-se { $wanted }.
exchange-fault-found-one-of = { $times }{ $place }: encontrou-se “{ $found }”, por exemplo; esperava-se { $wanted }.
exchange-fault-said = { $times }{ $place }: { $what }.
exchange-in-lines = { $count ->
    [one] (linha { $lines })
   *[other] (linhas { $lines })
}
exchange-in-more-lines = (linhas { $lines } e outras)
exchange-whose = De quem são
exchange-unnamed = Uma casa sem nome ({ $id })
exchange-share-new = { $count } novos
exchange-share-backup = { $count } na cópia
exchange-not-here = { $share }, não neste caderno
exchange-new-events = Registos novos
exchange-other-content = Aqui com outro conteúdo
exchange-unsound = Danificados
exchange-new-recordings = Gravações novas
exchange-known-recordings = Gravações conhecidas
exchange-damaged-recordings = Gravações danificadas
exchange-conflicts = Onde um registo daqui difere do da cópia, fica o daqui.
exchange-no-digest = Foi feita por uma versão anterior e não traz soma de controlo: um dano pode ter passado despercebido.
exchange-report = “{ $name }”: { $counts }. O ficheiro em si não fica guardado aqui.
exchange-counts = { $count ->
    [one] um registo novo, { $known } já conhecidos
   *[other] { $count } registos novos, { $known } já conhecidos
}
exchange-counts-recordings = { $count ->
    [one] uma gravação nova, { $known } já conhecidas
   *[other] { $count } gravações novas, { $known } já conhecidas
}
exchange-damaged = { $count ->
    [one] Uma gravação está danificada e fica de fora.
   *[other] { $count } gravações estão danificadas e ficam de fora.
}
exchange-kept-here = { $count ->
    [one] Um registo daqui difere do da cópia. Ficou o daqui.
   *[other] { $count } registos daqui diferem dos da cópia. Ficaram os daqui.
}
exchange-unsound-left = { $count ->
    [one] Fica de fora, por estar danificado quando se fez a cópia: um registo.
   *[other] Ficam de fora, por estarem danificados quando se fez a cópia: { $count } registos.
}
exchange-another-file = Outro ficheiro
exchange-nameless = o ficheiro
