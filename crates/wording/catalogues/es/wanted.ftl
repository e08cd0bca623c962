# Lo que debería poner en un lugar de un archivo o de un registro, dicho después de «se espera»; y qué está mal ahí.
wanted-at = { $line ->
    [0] { $field }: { $what }
   *[other] línea { $line }, { $field }: { $what }
}
wanted-place = { $place ->
    [file] el archivo
    [line] la línea
    [row] la fila
    [column] la columna
   *[other] el registro
}
wanted-missing = se espera { $wanted }
wanted-found = pone «{ $found }»; se espera { $wanted }
wanted-text = un texto
wanted-number = un número como 1.5
wanted-point = un número con punto, como 1.5
wanted-whole = un número entero de { $low } a { $high }
wanted-flag = true o false
wanted-list = una lista
wanted-json-list = una lista JSON como ["walk","food"]
wanted-object = un objeto con { $names }
wanted-tagged = un objeto JSON con "{ $tag }", uno de: { $names }
wanted-object-not-list = un objeto JSON, de {"{"} a {"}"}, no una lista
wanted-one-of = uno de: { $names }
wanted-needed = un valor: hace falta
wanted-needed-one-of = un valor: hace falta, uno de: { $names }
wanted-no-such-field = nada: no existe ese campo; existen: { $names }
wanted-empty-cell = una celda vacía: { $kind } no tiene ese campo
wanted-parts = nada: usa columnas para sus partes, como { $part }
wanted-body-columns = nada: usa columnas que empiecen por "body."
wanted-fitting = un valor que encaje en este campo, dado una vez
wanted-id = un identificador (un UUID como 0198a2b4-7c11-7000-8000-000000000001)
wanted-home-id = el identificador de un hogar (un UUID)
wanted-first-home-id = el identificador de un hogar (un UUID): este cuaderno aún no tiene ninguno; empieza con uno o importa una exportación
wanted-no-name-yet = un identificador: aquí aún no se conoce ningún nombre
wanted-known-name = un identificador o uno de los nombres conocidos: { $names }
wanted-known-name-of-many = un identificador o uno de los nombres conocidos: { $names } y { $more } más
wanted-one-of-ids = un identificador, porque { $count } tienen este nombre: { $ids }
wanted-time = una hora como 2026-03-01 18:30 o 2026-03-01T18:30:00+01:00, en los años 2000 a 2199
wanted-offset = una diferencia con UTC, como { $local }+01:00: este hogar aún no tiene zona horaria
wanted-twice = { $first } o { $second }: los relojes se atrasan en { $zone } y esta hora llega dos veces
wanted-skipped = { $first } o { $second }: los relojes se adelantan en { $zone } y esta hora se salta
wanted-event = un registro como objeto JSON, de {"{"} a {"}"}
wanted-json = un registro como JSON; no se puede leer desde la columna { $column }
wanted-own-id = un identificador propio: este es de otro registro; para corregir un registro, añade una corrección
wanted-smaller-file = como mucho { $most } bytes: córtalo en varios archivos entre dos líneas
wanted-shorter-line = como mucho { $most } bytes
wanted-utf8 = UTF-8, no UTF-16, Latin-1 ni Windows-1252: guárdalo de nuevo como "UTF-8" o "CSV UTF-8"
wanted-closed-quotes = cada " cerrada; una " dentro de una celda se escribe dos veces
wanted-table = un archivo CSV
wanted-cells = { $count } celdas, como en la primera fila
wanted-header = una primera fila con los nombres de las columnas
wanted-column-once = cada columna una vez
wanted-column = una columna como { $names }, word, by, answer o result.outcome
wanted-this-column = una columna { $name }
wanted-by-hand = ningún consentimiento: lo que un archivo diga de él no abre nada. Quien lleva el hogar lo da o lo retira en «Quién puede ver esto»
