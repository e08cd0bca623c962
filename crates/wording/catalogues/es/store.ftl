store-not-a-database = { $path } no es un cuaderno: no es siquiera una base de datos
store-not-ours = { $path } es una base de datos, pero no un cuaderno de este programa
store-newer = { $path } lo escribió una versión más nueva (esquema { $found }; esta versión conoce hasta { $known }); actualiza este programa
store-corrupt = { $path } está dañado ({ $what }); guarda una copia y restaura la última copia de seguridad en una carpeta nueva
store-unwritable = no se puede escribir en { $path }: { $what }
store-cannot-hold = no se puede escribir en { $path }: { $what }. Un archivo que se trae, o que se hace para enviarlo, se guarda un rato en esta carpeta: deja escribir ahí al usuario que ejecuta este programa
store-full = el disco del cuaderno está lleno; nada de esto se guardó. Haz sitio e inténtalo de nuevo
store-busy = el cuaderno está ocupado: otro proceso lo tenía bloqueado; inténtalo de nuevo
store-closed = el cuaderno se cerró
store-exists = { $path } ya existe; elige otro nombre
store-bad-backup = { $path } no sirve como copia de seguridad: { $what }
store-backup-no-file = no existe tal archivo
store-backup-itself = es el propio cuaderno
store-backup-other-digest = está dañada: su contenido no tiene la suma de control que dice
store-backup-no-digest = está dañada: falta su suma de control
store-backup-row = está dañada: { $what }
store-backup-not-the-log = no contiene lo que contiene el cuaderno; puede que su disco esté fallando
store-backup-loose = { $rows ->
    [one] una fila no remite a nada
   *[other] { $rows } filas no remiten a nada
}
store-bad-archive = { $path } no se puede leer como archivo de un cuaderno: { $what }
store-archive-lacks = no contiene { $file }
store-unknown-file = { $name } no es de los archivos que se pueden incorporar: una tabla (.csv), líneas de JSON (.jsonl o .ndjson), un archivo (.tar) o una copia de seguridad (.sayso)
store-other-home = { $path } haría que este cuaderno tuviera varios hogares. Trae { $homes }. Nada se guardó; para tener varios en un cuaderno, para siempre, dilo expresamente
store-home-brings = { $home }: { $events ->
    [one] un registro
   *[other] { $events } registros
}
store-bad-clip = grabación { $hash }: { $what }
store-clip-not-a-hash = su nombre no son 64 cifras hexadecimales
store-clip-size = tiene { $found } bytes; se admiten de 1 a { $most }
store-clip-other-content = está dañada: sus bytes no tienen esta suma de control; guarda la grabación otra vez
store-not-imported = nada se importó: { $why }
store-import-faults = { $count ->
    [one] un fallo: { $first }
   *[other] { $count } fallos, el primero: { $first }
}
store-import-other-homes = el archivo haría que este cuaderno tuviera varios hogares. Trae { $homes }. Para tener varios en un cuaderno, para siempre, dilo expresamente
store-import-not-its-own = un hogar en un servidor solo acepta un archivo de un único hogar. Este trae { $homes }. Exporta cada hogar por separado y trae su propio archivo
store-import-not-empty = el archivo es de otro hogar ({ $home }), y este ya tiene registros. El cuaderno de otro hogar solo entra donde todavía no hay nada escrito: pide uno nuevo a quien lleva el servidor
store-import-taken = otro registro con el id { $id } ya está guardado
store-database = base de datos: { $why }
store-no-home-yet = { $dir } aún no contiene ningún hogar
store-damaged-row = registro { $id } (fila { $row }): { $what }
store-row-no-event = su contenido no es un registro
store-row-column = su columna { $column } dice otra cosa que su contenido
store-log-left = ya no está, pero { $file } junto a él sí; puede haber registros ahí
store-other-schema = su esquema { $schema } no es el que hizo este programa
store-snapshot = la instantánea de { $home } { $what }; quita el archivo { $file } y empieza de nuevo: el diario es la verdad y de él se hace otra
store-snapshot-differs = difiere del diario en el registro { $id } (fila { $row })
store-snapshot-more = contiene el registro { $id }, que el diario no contiene
store-unreachable = no se puede llegar a la base de datos ({ $what }); no consta que se haya guardado nada de esto. Comprueba su dirección y que esté en marcha, y vuelve a intentarlo
store-old-database = el servidor de la base de datos es PostgreSQL { $found }; este programa necesita { $least } o posterior
store-newer-database = una versión más nueva hizo la base de datos (esquema { $found }; esta versión conoce hasta el { $known }); actualiza este programa
store-no-rights = la base de datos rechaza este programa ({ $what }); que quien la posee conceda el rol sayso_server al usuario que se conecta
store-not-let-in = la base de datos no admite a este usuario ({ $what }); comprueba el usuario y la contraseña en SAYSO_DATABASE (SAYSO_DATABASE_OWNER para quien la posee)
store-needs-owner = las tablas faltan todavía o son de una versión anterior, y el usuario que se conecta no puede crearlas ({ $what }); indica a quien las posee con --database-owner o en la variable SAYSO_DATABASE_OWNER
store-database-damaged = la base de datos está dañada ({ $what }); guarda una copia de ella y recupera su última copia de seguridad
store-no-such-home = aquí no hay ningún hogar { $home }
store-home-left = este hogar se ha ido: aquí se borró todo lo suyo y ya no se guarda nada más de él
store-only-folder-backup = un hogar en un servidor no tiene un archivo de copia propio; toma un archivo completo en su lugar
store-only-folder-restore = una copia de seguridad no se puede llevar a un servidor; restáurala en una carpeta, toma allí un archivo completo y trae ese
store-only-folder-check = un hogar en un servidor no tiene un fichero que comprobar; toma un archivo completo y compruébalo en una carpeta
store-only-folder-snippets = el sonido en torno a los apretones no se guarda en un servidor; escucha con un cuaderno en una carpeta para juzgarlos de oído
