exchange-title = Archivos que entran y salen
exchange-title-taken = Incorporado
exchange-title-look = Mira antes de incorporarlo
exchange-gone = Este archivo ya no se guarda aquí. Elígelo de nuevo.
exchange-bring = Traer un archivo
exchange-bring-intro = Primero ves lo que contiene. Nada se incorpora antes de que lo digas, y nada de lo que hay aquí cambia ni se pierde.
exchange-file = El archivo
exchange-file-hint = Una tabla (.csv), líneas de JSON (.jsonl), un archivo con grabaciones (.tar) o una copia (.sayso); como mucho { $most } MiB
exchange-file-hint-server = Una tabla (.csv), líneas de JSON (.jsonl) o un archivo con grabaciones (.tar); como mucho { $most } MiB
exchange-look = Mirarlo
exchange-columns = Qué puede contener una tabla y con qué columnas: { $page }.
exchange-columns-title = Los archivos en detalle
exchange-out = Sacarlo todo
exchange-out-intro = Cada uno contiene todo como se anotó al principio. Guarda las copias donde solo tú puedas leerlas: cuentan tus días.
exchange-backup = Copia de seguridad
exchange-backup-hint = registros y grabaciones, con prueba de que está entera; para guardar y recuperar
exchange-backup-save = Guardar una copia
exchange-archive = Archivo
exchange-archive-hint = registros y grabaciones como archivos sueltos que cualquier sistema abre
exchange-archive-save = Guardar un archivo
exchange-table = Tabla
exchange-table-hint = solo registros, para una hoja de cálculo (CSV)
exchange-table-save = Guardar una tabla
exchange-lines = Líneas de JSON
exchange-lines-hint = solo registros, para otro programa
exchange-lines-save = Guardar las líneas
exchange-to-people = Volver a Personas
exchange-begin-new = Empezar un cuaderno nuevo
exchange-several-box = Empezar con todos en un cuaderno
exchange-other-box = Incorporar también otro hogar
exchange-leave-out-box = Dejar fuera las filas con errores
exchange-leave-out-hint = { $count ->
    [one] una fila no entrará
   *[other] { $count } filas no entrarán
}
exchange-nothing-taken = «{ $name }»: aún no se ha incorporado nada.
exchange-several = Varios hogares
exchange-several-intro = Este cuaderno está vacío y el archivo contiene varios hogares: { $homes }.
exchange-another = Otro hogar
exchange-another-intro = El archivo contiene registros de un hogar que este cuaderno no tiene: { $homes }.
exchange-for-good = Cada hogar conserva sus animales, palabras y cifras, pero una vez en un cuaderno no se pueden separar.
exchange-faults = Errores
exchange-faults-intro = Lo mejor es corregirlas en el archivo y traerlo de nuevo: las filas ya incorporadas se reconocen.
exchange-take-in = Incorporarlo
exchange-nothing-new = No hay nada que incorporar.
exchange-away = No incorporarlo
exchange-rows = Filas
exchange-new = Nuevos
exchange-known = Ya conocidos
exchange-other-id = Otro registro tiene su identificador
exchange-other-faults = Con otros errores
exchange-recordings = Grabaciones
exchange-days = Días
exchange-from-to = { $from } a { $to }
exchange-by-kind = Registros nuevos por tipo
exchange-later = { $count ->
    [one] Un registro de tipo { $kind }: lo escribió una versión posterior. Se conserva, pero no se muestra. Actualiza este programa.
   *[other] { $count } registros de tipo { $kind }: los escribió una versión posterior. Se conservan, pero no se muestran. Actualiza este programa.
}
exchange-and-more = Y { $count } más.
exchange-times = { $count ->
    [one] una vez
   *[other] { $count } veces
}
exchange-fault = { $times }{ $place }: se esperaba { $wanted }.
exchange-fault-found = { $times }{ $place }: se encontró «{ $found }»; se esperaba { $wanted }.
exchange-fault-found-one-of = { $times }{ $place }: se encontró «{ $found }», por ejemplo; se esperaba { $wanted }.
exchange-fault-said = { $times }{ $place }: { $what }.
exchange-in-lines = { $count ->
    [one] (línea { $lines })
   *[other] (líneas { $lines })
}
exchange-in-more-lines = (líneas { $lines } y más)
exchange-whose = De quién son
exchange-unnamed = Un hogar sin nombre ({ $id })
exchange-share-new = { $count ->
    [one] { $count } nuevo
   *[other] { $count } nuevos
}
exchange-share-backup = { $count } en la copia
exchange-not-here = { $share }, no en este cuaderno
exchange-new-events = Registros nuevos
exchange-other-content = Aquí con otro contenido
exchange-unsound = Dañados
exchange-new-recordings = Grabaciones nuevas
exchange-known-recordings = Grabaciones conocidas
exchange-damaged-recordings = Grabaciones dañadas
exchange-conflicts = Donde un registro de aquí tiene otro contenido que el de la copia, se conserva lo de aquí.
exchange-no-digest = La hizo una versión anterior y no lleva suma de control: un daño pudo pasar inadvertido.
exchange-report = «{ $name }»: { $counts }. El archivo en sí no se guarda aquí.
exchange-counts = { $count ->
    [one] un registro nuevo, { $known } ya conocidos
   *[other] { $count } registros nuevos, { $known } ya conocidos
}
exchange-counts-recordings = { $count ->
    [one] una grabación nueva, { $known } ya conocidas
   *[other] { $count } grabaciones nuevas, { $known } ya conocidas
}
exchange-damaged = { $count ->
    [one] Una grabación está dañada y queda fuera.
   *[other] { $count } grabaciones están dañadas y quedan fuera.
}
exchange-kept-here = { $count ->
    [one] Un registro de aquí tiene otro contenido que el de la copia. Se conservó lo de aquí.
   *[other] { $count } registros de aquí tienen otro contenido que los de la copia. Se conservó lo de aquí.
}
exchange-unsound-left = { $count ->
    [one] Queda fuera, por estar dañado al hacer la copia: un registro.
   *[other] Quedan fuera, por estar dañados al hacer la copia: { $count } registros.
}
exchange-another-file = Otro archivo
exchange-nameless = el archivo
exchange-moves-in = El archivo es el cuaderno de otro hogar ({ $home }). Sus registros pasan a ser de este hogar, con los identificadores que tienen. Desde entonces escribe solo aquí: lo que se anote después en el cuaderno viejo llega solo si traes su archivo otra vez.
exchange-diary = Leído como un diario
exchange-diary-intro = Esta tabla tiene sus propias columnas. Se leen así; si no es correcto, no la incorpores.
exchange-diary-column = { $part ->
    [day] «{ $column }»: el día
    [time] «{ $column }»: la hora
    [word] «{ $column }»: la palabra que pulsó el animal
    [who] «{ $column }»: qué animal; en una nota, también qué persona
   *[note] «{ $column }»: una nota
}
exchange-diary-rules = Cada palabra cuenta como una pulsación del animal, sin saber si fue a propósito. Un día sin hora se pone a mediodía.
exchange-diary-first = Un diario necesita antes el animal y sus palabras. Empieza por ellos y trae después este archivo en «Archivos que entran y salen».
exchange-help = Cómo puede ser una tabla
exchange-help-found = Columnas encontradas: { $columns }.
exchange-help-wanted = Hace falta: un día o una hora, y una palabra o una nota. Días como 2026-03-01, horas como 18:30. Palabras y nombres tal como están aquí. Quita las demás columnas.
exchange-help-save = Guardar este ejemplo
exchange-help-open = Cómo puede ser un diario
exchange-example =
    fecha,hora,palabra,quién,nota
    2026-03-01,18:30,comida,Bo,vino desde el sofá
    2026-03-02,,,Bo,durmió todo el día
