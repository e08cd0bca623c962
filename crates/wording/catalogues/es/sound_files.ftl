# Por qué no se puede leer un archivo de sonido.
sound-files-empty = está vacío: no contiene ningún sonido
sound-files-no-sound = no contiene ningún sonido
sound-files-other-file = los archivos { $kind } no se leen aquí; guárdalo como WAV o m4a
sound-files-unknown = no es un archivo de sonido que se pueda leer (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF o WebM)
sound-files-other-sound = su sonido está codificado como { $coding }, que no se lee aquí; guárdalo como WAV o m4a
sound-files-cut-short = está cortado: hay { $there } s de { $promised } s. No se usó nada de él. Cópialo otra vez desde donde se grabó; si no existe más, guárdalo como WAV con otro programa
sound-files-part-missing = está cortado: falta la parte que dice qué contiene. Cópialo otra vez desde donde se grabó
sound-files-damaged = está dañado después de { $after } s; cópialo otra vez desde donde se grabó
sound-files-no-format = no indica una frecuencia de muestreo o un número de canales que tenga sentido
sound-files-changes = la frecuencia de muestreo o el número de canales cambia dentro de él; guárdalo como WAV con otro programa
