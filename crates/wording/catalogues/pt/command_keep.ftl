command-keep-input-too-large = a entrada padrão tem mais de { $most } MiB; use `sayso import` para arquivos
command-keep-input-line = entrada padrão, linha { $line }: { $why }
command-keep-input-no-array = entrada padrão, linha { $line }, coluna { $column }: espera-se uma lista JSON de registros; daqui em diante não dá para ler
command-keep-input-event = entrada padrão, registro { $number }: { $why }
command-keep-kept = { $id } guardado
command-keep-known = { $id } já conhecido
command-keep-other-id = { $id } recusado: outro registro tem este identificador; para corrigi-lo, envie uma correção
command-keep-refused = { $id } recusado: { $why }
command-keep-is-backup = { $file } é uma cópia de segurança; use `sayso restore`
command-keep-preview = { $file }: { $rows ->
    [one] { $rows } linha
   *[other] { $rows } linhas
}, novas: { $new }, já conhecidas: { $known }, com erros: { $faults }.
command-keep-and-recordings = { $n ->
    [one] e { $n } gravação
   *[other] e { $n } gravações
}
command-keep-new-of-kind = novos do tipo { $kind }: { $n }
command-keep-later = { $n ->
    [one] { $n } do tipo { $kind } não é entendido: foi escrito por uma versão posterior. Fica guardado, mas não é mostrado.
   *[other] { $n } do tipo { $kind } não são entendidos: foram escritos por uma versão posterior. Ficam guardados, mas não são mostrados.
}
command-keep-of-home = { $n } de { $home }
command-keep-of-other-home = { $n } de { $home }, que este caderno não tem
command-keep-unnamed-home = uma casa sem nome ({ $id })
command-keep-from-to = de { $first } a { $last }
command-keep-more = ... e mais { $n }
command-keep-not-imported-faults = Nada foi recebido. Corrija estas linhas e tente de novo.
command-keep-not-imported-homes =
    Nada foi recebido: este caderno ficaria com várias casas. O arquivo traz { $homes }.
    Para ter várias casas neste caderno, para sempre, acrescente --take-in-other-home.
command-keep-not-imported-yet = Ainda nada foi recebido. Para receber, repita o comando com --yes.
command-keep-imported = { $n ->
    [one] { $n } registro recebido
   *[other] { $n } registros recebidos
}; já conhecidos: { $known }.
command-keep-clips-stored = { $n ->
    [one] { $n } gravação guardada
   *[other] { $n } gravações guardadas
}; já estavam aqui: { $known }; danificadas e deixadas de fora: { $damaged }.
command-keep-archive-to = um arquivo vai para um arquivo: acrescente --to all.tar
command-keep-archive-written = { $n ->
    [one] { $n } registro
   *[other] { $n } registros
} e { $recordings ->
    [one] { $recordings } gravação: tudo escrito.
   *[other] { $recordings } gravações: tudo escrito.
}
command-keep-damaged-left-out = { $n ->
    [one] { $n } gravação está danificada e ficou de fora.
   *[other] { $n } gravações estão danificadas e ficaram de fora.
}
command-keep-written = { $n ->
    [one] { $n } registro escrito.
   *[other] { $n } registros escritos.
}
command-keep-backed-up = { $n ->
    [one] { $n } registro
   *[other] { $n } registros
} e { $recordings ->
    [one] { $recordings } gravação
   *[other] { $recordings } gravações
} estão em { $file } ({ $bytes } bytes).
command-keep-damaged-clip = Uma gravação está danificada e não foi copiada: { $clip }
command-keep-take-in = { $why }: acrescente --take-in-other-home
command-keep-in-the-backup = { $home }: { $n ->
    [one] { $n } registro na cópia.
   *[other] { $n } registros na cópia.
}
command-keep-brought-back = { $n ->
    [one] { $n } registro restaurado
   *[other] { $n } registros restaurados
}; já estavam aqui: { $known }.
command-keep-clips-brought-back = { $n ->
    [one] { $n } gravação restaurada
   *[other] { $n } gravações restauradas
}; já estavam aqui: { $known }.
command-keep-unsound = Deixado de fora, por já ter erros quando foi copiado: { $fault }
command-keep-conflict = O registro { $id } está aqui com outro conteúdo; ficou o daqui.
command-keep-looked-at = { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}, { $recordings ->
    [one] { $recordings } gravação
   *[other] { $recordings } gravações
}: tudo visto.
command-keep-snapshots = { $n ->
    [one] { $n } instantâneo tem o que o registro tem.
   *[other] { $n } instantâneos têm o que o registro tem.
}
command-keep-amendments = { $n ->
    [one] { $n } corrige outro registro ou o retira
   *[other] { $n } corrigem outros registros ou os retiram
}; destes, sobre registros que não estão aqui: { $waiting }.
command-keep-wrong = Errado: { $fault }
command-keep-all-well = Tudo está como foi escrito.
command-keep-snapshots-wrong = Todos os registros e gravações estão como foram escritos: não há nada a restaurar. Pare o programa onde ele ainda roda, apague o que está nomeado acima e inicie-o de novo.
command-keep-restore-latest = Guarde uma cópia desta pasta e depois restaure a última cópia de segurança em uma nova.
