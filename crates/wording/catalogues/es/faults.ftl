# What is wrong with a field, said after its name.
faults-at = { $field } { $what }.
faults-field = { $field ->
    [name] Nombre
    [weight_kg] Peso
    [adult_weight_kg] Peso de adulto
    [day_kcal] Kcal al día
    [reward_percent] Parte para recompensas
    [reward_share] Parte para recompensas
    [species] Especie
    [born] Nacimiento
    [life_stage] Etapa
    [age_years] Años
    [age_months] Meses
    [kind] Tipo
    [kcal_per_piece] Kcal por pieza
    [grams_per_piece] Gramos por pieza
    [seconds_to_deliver] Segundos hasta dar
    [most_per_day] Máximo al día
    [food] Alimento
    [text] Texto
    [word] Palabra
    [words] Palabras
    [animals] Animales
    [animal] Animal
    [home] Hogar
    [zone] Zona horaria
    [role] Papel
    [language] Idioma
    [says] Lo que dice
    [reward] Recompensa
    [rewards] Recompensas
    [format] Formato
    [rounds] Rondas
    [days] Días
    [one_in] Una de cada
    [design] Diseño
    [choices] Opciones
    [rate] Parte de aciertos
    [who] Quién está
    [stage] Etapa
    [because] Por qué
    [why] Por qué
    [answer] Respuesta
    [means] Significado
    [day] Día
    [time] Hora
    [point] Punto
    [first] Primer día
    [points] Puntos
    [rows] Filas
    [columns] Columnas
    [observed_s] Segundos observados
    [after_s] Segundos
    [person] Persona
    [last] Último día
    [weekdays] Días de la semana
    [club] Club
    [count] Número
    [account] Cuenta
    [purpose] Fin
    [last_day] Último día
    [about] Sobre
    [word_1] Palabra 1
    [way_1] Cómo 1
    [minutes_1] Minutos 1
    [times_1] Veces al día 1
    [word_2] Palabra 2
    [way_2] Cómo 2
    [minutes_2] Minutos 2
    [times_2] Veces al día 2
    [word_3] Palabra 3
    [way_3] Cómo 3
    [minutes_3] Minutos 3
    [times_3] Veces al día 3
    [reply] Respuesta
    [what] Qué
    [stands] Lo que representa:
    [whose] Hogar o cuenta
    [new_person] Nombre de alguien nuevo
    [email] Dirección de correo
   *[other] { $plain }
}
faults-not-kept = Aún no guardado.
faults-put-right = Lo que escribiste sigue aquí; corrige esto:
faults-unknown-field = no es un campo de este formulario
faults-number = debe ser un número como 4,5, no «{ $text }»
faults-whole = debe ser un número entero de { $low } a { $high }, no «{ $text }»
faults-one-of = debe ser uno de: { $names }
faults-unknown-id = nombra algo que este cuaderno no conoce; recarga la página
faults-not-read = no se puede leer: «{ $text }»
faults-missing = falta
faults-missing-choose = falta; elige una opción
faults-missing-usual = falta; lo usual es { $usual }
faults-missing-several = faltan; lo usual es { $usual }
faults-form-expected = Se esperaba un formulario (application/x-www-form-urlencoded).
faults-form-broken = no se puede leer; recarga la página
faults-no-animal = falta; este tipo de anotación trata de un animal
faults-range = debe ser de { $low } a { $high }, no { $found }
faults-too-few = debe ser al menos { $least }, no { $found }
faults-name = debe nombrar de { $low } a { $high }, no { $found }
faults-seconds = debe ser de { $low } a { $high } segundos, no { $found }
faults-twice = nombra uno dos veces
faults-amends-amendment = no debe ser a su vez una corrección o retirada; corrige de nuevo la primera anotación
faults-not-alternative = va solo con la respuesta "alternative"
faults-not-pressed-again = va solo con lo que siguió "pressed_again"
faults-not-between-two = nombra la segunda palabra de "ask_between_two", y solo de eso
faults-same-word = debe ser otra palabra
faults-after-the-wait = queda después de la espera de { $seconds } s; anótalo como una pulsación corriente
faults-no-food = falta; di qué se dio, o nombra una recompensa
faults-label-of-other = dice qué se cambia donde la pregunta es "other", y solo ahí
faults-not-by-word = "{ $measure }" no se cuenta palabra por palabra; nombra animales en su lugar
faults-only-over-animals = son solo para una línea base múltiple sobre animales
faults-criterion-for-people = debe ser "delivery_delay": un criterio es para las personas, nunca para el animal
faults-criterion-a-phase = debe haber uno por cada fase después de la primera, no { $found }
faults-only-with-criterion = son solo para un criterio cambiante
faults-not-offered = no se ofreció en este ensayo
faults-free-by-time = el acceso libre se puntúa por tiempo: usa "observed"
faults-only-free = "observed" es solo para el acceso libre
faults-offered-once = debe ser una de las cosas ofrecidas, una vez
faults-longer-than-observed = es más que los { $seconds } s observados
faults-swaps-one-in = debe ser de { $low } a { $high }, no { $found }; más cambios que uno de cada cuatro cansan a un animal
faults-reward-share = debe ser como máximo { $most }; para más, pregunta a un veterinario
faults-stage-of-other = la etapa { $stage } no es de esta especie ({ $species })
faults-grown-less-than-now = es { $grown } kg, menos que los { $now } kg que pesa este cachorro; corrige uno, o elige una etapa adulta
faults-no-energy = falta; la comida necesita la energía de una pieza, en kcal
faults-only-food = es solo para comida
faults-not-a-hash = debe tener 64 cifras hexadecimales
faults-off-board = fila { $row } columna { $column } queda fuera del tablero
faults-place-twice = fila { $row } columna { $column } está ocupada dos veces
faults-two-places = está en dos lugares
faults-id-taken = ya pertenece a otra anotación; envíala de nuevo como nueva
faults-empty = no debe quedar vacío
faults-too-long = debe tener como máximo { $most } caracteres, no { $found }
faults-control = no debe tener caracteres de control como tabuladores o saltos de línea
faults-hidden = no debe tener el carácter { $code }, que no se ve o da la vuelta al texto que lo rodea; escribe el texto de nuevo
faults-quantity = debe ser un número de { $low } a { $high }, no { $found }
faults-not-a-time = «{ $text }» no es un momento como 2026-03-01T18:30:00Z
faults-time-out-of-range = el momento { $text } queda fuera de los años 2000 a 2199
faults-not-a-zone = «{ $text }» no es una zona horaria IANA como Europe/Berlin
faults-not-a-day = «{ $text }» no es un día como 2026-03-01
faults-late-card = no puede ser después de { $moment }, la fecha de la ficha que reemplaza. Corrige antes la fecha de esa ficha en el registro
faults-late-amendment = no puede ser después de { $moment }, cuando se cambió por última vez, así que ya no se puede cambiar. Anótalo de nuevo, como debe ser
faults-in-swaps = ya participan en cambios; termina esos antes
faults-signs-today = no se puede empezar hoy: se anotaron signos fuertes de estrés; elige un momento tranquilo
faults-another-thing = deben ser 2 o más, no { $found }; un cambio necesita otra cosa
faults-same-thing = incluyen dos para la misma cosa ({ $first }, { $second })
faults-one-in-usual = falta; lo usual es una de cada { $usual }
faults-agree = debe estar de acuerdo: todos los que responden dan lo que sale, o terminan los cambios
faults-first-day = debe ser de { $from } a { $to }: el orden se sortea antes de empezar
faults-seconds-list = deben ser segundos como 6; 4; 2.5
faults-check-long = hacen la comprobación demasiado larga; elige menos palabras
faults-tick = deben ser de 2 a { $most }, no { $found }; marca más o menos
faults-easiest = faltan; 2 es lo más fácil para el animal
faults-at-most-ticked = debe ser como máximo el número de palabras marcadas, { $ticked }
faults-never-given = incluyen { $name }, que nunca se debe dar a este animal
faults-who = falta; di quién estará presente
faults-above-chance = debe estar por encima del azar ({ $chance } %) y ser como máximo 99 %
faults-near-chance = está demasiado cerca del azar para una comprobación de duración soportable
faults-place = debe ser un lugar de 1 a { $most }, nada o se fue
faults-not-a-person = no es una de las personas de este hogar
faults-not-our-home = no es de este cuaderno
faults-per-gram = no es la energía de un alimento (de 0 a 9 kcal por gramo)
faults-no-sound-file = falta; elige un archivo de sonido (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF o WebM)
faults-sound-unfit = no se puede usar: { $why }
faults-noted-at-board = de este diseño se anota en el tablero, como toda respuesta
faults-cannot-run = no se puede llevar a cabo: { $why }
faults-no-random = no es posible: esta máquina no da números al azar ({ $why })
faults-file-missing = falta; elige uno
faults-file-empty = falta o está vacío; elige uno
faults-other-home = no es solo el de este cuaderno: el archivo trae { $homes }. Marca «{ $tick }» si debe ser así
faults-rows-faulty = tiene fallos. Corrígelos en el archivo y tráelo otra vez, o marca «{ $tick }»
faults-file-no-backup-use = «{ $name }» no sirve como copia de seguridad: { $what }
faults-file-no-archive = «{ $name }» no se puede leer como archivo de un cuaderno: { $what }
faults-file-newer = «{ $name }» lo escribió una versión más nueva; actualiza este programa
faults-file-not-ours = «{ $name }» es una base de datos de otro programa y no una copia de un cuaderno
faults-file-not-a-backup = «{ $name }» no es una copia de seguridad: está dañado, o es otro tipo de archivo
faults-file-backup-on-server = «{ $name }» es la copia de seguridad de un cuaderno entero, y aquí hay una casa de un servidor. Guarda allí, en «Archivos que entran y salen», un archivo (.tar) y trae ese
faults-file-damaged = «{ $name }» está dañado: { $what }
faults-file-unknown = «{ $name }» no es de los que se pueden incorporar: una tabla (.csv), líneas de JSON (.jsonl o .ndjson), un archivo (.tar) o una copia de seguridad (.sayso)
faults-take-in-home = no es solo el de este cuaderno: el archivo trae { $homes }. Para tener en él varios hogares, para siempre, añade take_in_other_home=true
faults-away-home = es { $home }, otro hogar que el de este cuaderno; para tener varios en un cuaderno, importa un archivo de sus registros y dilo
faults-too-many-bytes = es demasiado largo: { $bytes } bytes, y { $most } es lo máximo
faults-not-written = no se puede escribir como JSON
faults-not-your-home = no es un hogar en el que puedas anotar aquí; quizá se ha ido
faults-not-your-role = no es para tu papel en este hogar
faults-not-your-account = tiene que ser la cuenta con la que entraste, con su propio nombre
faults-on-its-page = se da solo en la página «Quién puede ver esto», donde se leen sus palabras
faults-invites-closing = invita a una palabra que termina sesiones: nadie la espera; tiene que ser «show» o faltar
faults-not-your-day = tiene que llegar en uno de los días acordados contigo
faults-ends-first = debe terminar después de empezar
faults-own-successor = debe ser otro coach que quien escribe
faults-sent-again = Aún no se ha guardado. Lo que escribiste está aquí de nuevo: míralo y envíalo otra vez.
