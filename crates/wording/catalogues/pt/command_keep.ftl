command-keep-input-too-large = a entrada padrão tem mais de { $most } MiB; usa `sayso import` para ficheiros
command-keep-input-line = entrada padrão, linha { $line }: { $why }
command-keep-input-no-array = entrada padrão, linha { $line }, coluna { $column }: espera-se uma lista JSON de registros; daqui em diante não dá para ler
command-keep-input-event = entrada padrão, registo { $number }: { $why }
command-keep-kept = { $id } guardado
command-keep-known = { $id } já conhecido
command-keep-other-id = { $id } recusado: outro registo tem este identificador; para o emendar, envia uma correção
command-keep-refused = { $id } recusado: { $why }
command-keep-is-backup = { $file } é uma cópia de segurança; usa `sayso restore`
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
    [one] { $n } do tipo { $kind } não é entendido: uma versão posterior escreveu-o. Fica guardado, mas não é mostrado.
   *[other] { $n } do tipo { $kind } não são entendidos: uma versão posterior escreveu-os. Ficam guardados, mas não são mostrados.
}
command-keep-of-home = { $n } de { $home }
command-keep-of-other-home = { $n } de { $home }, que este caderno não tem
command-keep-unnamed-home = uma casa sem nome ({ $id })
command-keep-from-to = de { $first } a { $last }
command-keep-more = ... e mais { $n }
command-keep-not-imported-faults = Nada foi recebido. Corrige estas linhas e tenta de novo.
command-keep-not-imported-homes =
    Nada foi recebido: este caderno ficaria com várias casas. O ficheiro traz { $homes }.
    Para ter várias casas neste caderno, para sempre, acrescenta --take-in-other-home.
command-keep-not-imported-yet = Ainda nada foi recebido. Para o fazer, repete o comando com --yes.
command-keep-imported = { $n ->
    [one] { $n } registo recebido
   *[other] { $n } registos recebidos
}; já conhecidos: { $known }.
command-keep-clips-stored = { $n ->
    [one] { $n } gravação guardada
   *[other] { $n } gravações guardadas
}; já cá estavam: { $known }; estragadas e deixadas de fora: { $damaged }.
command-keep-archive-to = um arquivo vai para um ficheiro: acrescenta --to all.tar
command-keep-archive-written = { $n ->
    [one] { $n } registo
   *[other] { $n } registos
} e { $recordings ->
    [one] { $recordings } gravação: tudo escrito.
   *[other] { $recordings } gravações: tudo escrito.
}
command-keep-damaged-left-out = { $n ->
    [one] { $n } gravação está estragada e ficou de fora.
   *[other] { $n } gravações estão estragadas e ficaram de fora.
}
command-keep-written = { $n ->
    [one] { $n } registo escrito.
   *[other] { $n } registos escritos.
}
command-keep-backed-up = { $n ->
    [one] { $n } registo
   *[other] { $n } registos
} e { $recordings ->
    [one] { $recordings } gravação
   *[other] { $recordings } gravações
} estão em { $file } ({ $bytes } bytes).
command-keep-damaged-clip = Uma gravação está estragada e não foi levada: { $clip }
command-keep-take-in = { $why }: acrescenta --take-in-other-home
command-keep-in-the-backup = { $home }: { $n ->
    [one] { $n } registo na cópia.
   *[other] { $n } registos na cópia.
}
command-keep-brought-back = { $n ->
    [one] { $n } registo reposto
   *[other] { $n } registos repostos
}; já cá estavam: { $known }.
command-keep-clips-brought-back = { $n ->
    [one] { $n } gravação reposta
   *[other] { $n } gravações repostas
}; já cá estavam: { $known }.
command-keep-unsound = Deixado de fora, por já ter erros quando foi copiado: { $fault }
command-keep-conflict = O registo { $id } está aqui com outro conteúdo; ficou o de cá.
command-keep-looked-at = { $n ->
    [one] { $n } registo
   *[other] { $n } registos
}, { $recordings ->
    [one] { $recordings } gravação
   *[other] { $recordings } gravações
}: tudo visto.
command-keep-snapshots = { $n ->
    [one] { $n } instantâneo tem o que o registo tem.
   *[other] { $n } instantâneos têm o que o registo tem.
}
command-keep-amendments = { $n ->
    [one] { $n } emenda outro registo ou retira-o
   *[other] { $n } emendam outros registos ou retiram-nos
}; destes, sobre registos que não estão aqui: { $waiting }.
command-keep-wrong = Errado: { $fault }
command-keep-all-well = Tudo está como foi escrito.
command-keep-snapshots-wrong = Todos os registos e gravações estão como foram escritos: não há nada a repor. Para o programa onde ainda corre, apaga o que está nomeado acima e começa-o de novo.
command-keep-restore-latest = Guarda uma cópia desta pasta e depois repõe a última cópia de segurança numa nova.
