command-keep-input-too-large = la entrada estándar contiene más de { $most } MiB; usa `sayso import` para archivos
command-keep-input-line = entrada estándar, línea { $line }: { $why }
command-keep-input-no-array = entrada estándar, línea { $line }, columna { $column }: se espera una lista JSON de registros; desde aquí no se puede leer
command-keep-input-event = entrada estándar, registro { $number }: { $why }
command-keep-kept = { $id } guardado
command-keep-known = { $id } ya conocido
command-keep-other-id = { $id } rechazado: otro registro tiene este identificador; para rectificarlo, envía una corrección
command-keep-refused = { $id } rechazado: { $why }
command-keep-is-backup = { $file } es una copia de seguridad; usa `sayso restore`
command-keep-preview = { $file }: { $rows ->
    [one] { $rows } fila
   *[other] { $rows } filas
}, nuevas: { $new }, ya conocidas: { $known }, con faltas: { $faults }.
command-keep-and-recordings = { $n ->
    [one] y { $n } grabación
   *[other] y { $n } grabaciones
}
command-keep-new-of-kind = nuevos de tipo { $kind }: { $n }
command-keep-later = { $n ->
    [one] { $n } de tipo { $kind } no se entiende: lo escribió una versión posterior. Se guarda, pero no se muestra.
   *[other] { $n } de tipo { $kind } no se entienden: los escribió una versión posterior. Se guardan, pero no se muestran.
}
command-keep-of-home = { $n } de { $home }
command-keep-of-other-home = { $n } de { $home }, que este cuaderno no contiene
command-keep-unnamed-home = un hogar sin nombre ({ $id })
command-keep-from-to = de { $first } a { $last }
command-keep-more = ... y { $n } más
command-keep-not-imported-faults = No se incorporó nada. Arregla estas líneas e inténtalo de nuevo.
command-keep-not-imported-homes =
    No se incorporó nada: este cuaderno tendría entonces varios hogares. El archivo trae { $homes }.
    Para tener varios hogares en este cuaderno, para siempre, añade --take-in-other-home.
command-keep-not-imported-yet = Aún no se incorporó nada. Para hacerlo, repite el comando con --yes.
command-keep-imported = { $n ->
    [one] { $n } registro incorporado
   *[other] { $n } registros incorporados
}; ya conocidos: { $known }.
command-keep-clips-stored = { $n ->
    [one] { $n } grabación guardada
   *[other] { $n } grabaciones guardadas
}; ya estaban: { $known }; dañadas y omitidas: { $damaged }.
command-keep-archive-to = un archivo con grabaciones necesita un fichero: añade --to all.tar
command-keep-archive-written = { $n ->
    [one] { $n } registro
   *[other] { $n } registros
} y { $recordings ->
    [one] { $recordings } grabación
   *[other] { $recordings } grabaciones
} por escrito.
command-keep-damaged-left-out = { $n ->
    [one] { $n } grabación está dañada y se omitió.
   *[other] { $n } grabaciones están dañadas y se omitieron.
}
command-keep-written = { $n ->
    [one] { $n } registro escrito.
   *[other] { $n } registros escritos.
}
command-keep-backed-up = { $n ->
    [one] { $n } registro
   *[other] { $n } registros
} y { $recordings ->
    [one] { $recordings } grabación
   *[other] { $recordings } grabaciones
} están en { $file } ({ $bytes } bytes).
command-keep-damaged-clip = Una grabación está dañada y no se incluyó: { $clip }
command-keep-take-in = { $why }: añade --take-in-other-home
command-keep-in-the-backup = { $home }: { $n ->
    [one] { $n } registro en la copia.
   *[other] { $n } registros en la copia.
}
command-keep-brought-back = { $n ->
    [one] { $n } registro recuperado
   *[other] { $n } registros recuperados
}; ya estaban: { $known }.
command-keep-clips-brought-back = { $n ->
    [one] { $n } grabación recuperada
   *[other] { $n } grabaciones recuperadas
}; ya estaban: { $known }.
command-keep-unsound = Omitido, porque ya era defectuoso cuando se copió: { $fault }
command-keep-conflict = El registro { $id } está aquí con otro contenido; se conservó el de aquí.
command-keep-looked-at = { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}, { $recordings ->
    [one] { $recordings } grabación
   *[other] { $recordings } grabaciones
}: todo revisado.
command-keep-snapshots = { $n ->
    [one] { $n } instantánea contiene lo que contiene el registro.
   *[other] { $n } instantáneas contienen lo que contiene el registro.
}
command-keep-amendments = { $n ->
    [one] { $n } corrige otro registro o lo retira
   *[other] { $n } corrigen otros registros o los retiran
}; de ellos, sobre registros que no están aquí: { $waiting }.
command-keep-wrong = Mal: { $fault }
command-keep-all-well = Todo está como se escribió.
command-keep-snapshots-wrong = Todos los registros y grabaciones están como se escribieron: no hay nada que recuperar. Para el programa donde aún funcione, quita lo que se nombra arriba y arráncalo de nuevo.
command-keep-restore-latest = Guarda una copia de esta carpeta y después recupera la última copia de seguridad en una nueva.
