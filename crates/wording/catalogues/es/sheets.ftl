sheets-title = Hojas
sheets-intro = Cada una se imprime en A4 o carta, sin los menús, y existe como PDF que leen los lectores de pantalla.
sheets-fridge = Para la nevera
sheets-fridge-what = Qué significa cada palabra, cómo la contesta todo el mundo, qué se dice para «ahora no», y las reglas de la casa.
sheets-rules = Reglas de la casa
sheets-buttons = Para los botones
sheets-buttons-what = Etiquetas sencillas con la palabra.
sheets-labels = Etiquetas
sheets-animal-what = Para la familia, una persona veterinaria o profesional del comportamiento.
sheets-progress = Informe de progreso
sheets-likes-of = Lo que le gusta a { $name }
sheets-print = Imprimir
sheets-print-menu = o imprime desde el menú del navegador
sheets-all = Todas las hojas
sheets-pdf-a4 = PDF, A4
sheets-pdf-letter = PDF, carta
sheets-foot = Sayso · { $home } · { $day }
sheets-foot-page = Sayso · { $home } · { $day } · página { $page } de { $of }

sheets-period = Periodo
sheets-days = { $days ->
    [one] Un día
   *[other] { $days } días
}
sheets-progress-of = Progreso de { $name }
sheets-not-a-diagnosis = No es un diagnóstico.
sheets-own-records = Registros propios de un hogar, contados por un programa. Nadie los ha comprobado. No pueden decir qué entiende, siente o padece un animal; para eso pregunta a una persona veterinaria o a una profesional cualificada del comportamiento.
sheets-animal = Animal
sheets-species = { $species ->
    [dog] perro
    [cat] gato
    [parrot] loro
    [rabbit] conejo
   *[other] otra especie
}
sheets-age-weeks = { $weeks ->
    [one] una semana de edad
   *[other] { $weeks } semanas de edad
}
sheets-age-months = { $months ->
    [one] un mes de edad
   *[other] { $months } meses de edad
}
sheets-age-years = { $years ->
    [one] un año de edad
   *[other] { $years } años de edad
}
sheets-age-about = unos { $age }
sheets-from-to = { $first } a { $last } ({ $zone })
sheets-printed-by = Lo imprime
sheets-limits = Límites
sheets-health = Precauciones de salud

sheets-in-short = En breve
sheets-noted = Días con algo anotado: { $noted } de { $days }. Lo que nadie anotó no está aquí.
sheets-joined = Sesiones a las que se unió { $name }: { $share }.
sheets-counts = Demostraciones de personas: { $showings }. Pulsaciones propias de { $name }: { $presses }.
sheets-welfare = Bienestar:

sheets-words = Palabras
sheets-none-taught = Todavía no se enseña ninguna palabra.
sheets-since = desde el principio; pulsaciones propias del periodo de arriba
sheets-word = Palabra
sheets-stage = Etapa
sheets-shown = Mostrada
sheets-to-giving = De pulsar a dar
sheets-when-invited = Pulsada al invitar y quererlo
sheets-own-presses = Pulsaciones propias
sheets-presses-rest = Además, pulsaciones propias del periodo en palabras que ahora no se enseñan a { $name }: { $words }.
sheets-presses-of = «{ $word }» { $presses }
sheets-n = { $n }
sheets-n-of = (de { $n })
sheets-stages = Etapas: preparar, mostrar (las personas pulsan y dan), invitar (una oferta, una espera y la cosa en todo caso), conversar ({ $name } pulsa sin que se lo pidan). No pulsar nunca cuenta como no entender.

sheets-showings-a-week = Demostraciones por semana
sheets-joined-by-week = Sesiones a las que se unió, por semana
sheets-week-from = semana desde { $day }
sheets-axis-week = semana desde
sheets-axis-showings = demostraciones
sheets-axis-joined = se unió
sheets-axis-pressed = pulsada
sheets-told = { $what }: { $figure }

sheets-answered = Cómo se contestaron las pulsaciones propias de { $name }
sheets-given = Dado: { $share }.
sheets-given-partly = Dado: { $share }, en parte: { $partly }.
sheets-not-now = Ahora no: { $declined }, otra cosa: { $other }.
sheets-missed = Sin atender o sin respuesta anotada: { $share }.

sheets-body-language = Lenguaje corporal anotado
sheets-signs = Participa: { $joining }. Señales leves de estrés: { $mild }. Señales fuertes: { $strong }.
sheets-strong-sign = { $day }: { $sign }
sheets-signs-note = Como lo vieron las personas presentes. Una sola señal dice poco; mira todo el cuerpo y la situación.

sheets-food = Premios de comida
sheets-reckoned = Calculado con { $day } kcal al día, de ellas como mucho { $rewards } kcal en recompensas. Base: { $basis }.
sheets-reckoned-range = Calculado con { $day } kcal al día (según el individuo: { $low } a { $high }), de ellas como mucho { $rewards } kcal en recompensas. Base: { $basis }.
sheets-no-allowance = No se calcula ninguna cantidad: { $why }.
sheets-why-unknown = no se conoce

sheets-likes = Gustos
sheets-last-tested = Última prueba: { $day }.
sheets-not-tested = No se ha probado lo bastante para decir algo ({ $trials ->
    [0] ningún ensayo
    [one] un ensayo
   *[other] { $trials } ensayos
}).

sheets-not-known = Lo que no se sabe
sheets-open-no-check = Si { $name } entiende alguna palabra: no se hizo ninguna comprobación planificada. Pulsar también puede venir de la costumbre del lugar, de señales que las personas dan sin saberlo o de lo que antes dio resultado.
sheets-open-checks = Si { $name } entiende una palabra no lo decide esta hoja: { $checks ->
    [one] un ensayo
   *[other] { $checks } ensayos
} de comprobaciones planificadas, contados en la página Pruebas.
sheets-open-word = Cómo se contesta a «{ $word }» al invitar.
sheets-open-little = Poco sobre «{ $word }» al invitar ({ $n ->
    [one] una vez
   *[other] { $n } veces
}).
sheets-open-sessions = Con qué ganas se une { $name }: no se anotó ninguna sesión en este periodo.
sheets-open-likes = Lo que más le gusta a { $name }: no se hizo ninguna prueba de gustos.

sheets-nothing-tested = Todavía no se ha probado nada.
sheets-trials = De { $trials ->
    [one] un ensayo
   *[other] { $trials } ensayos
}, sin elección: { $none }.
sheets-trials-last = De { $trials ->
    [one] un ensayo
   *[other] { $trials } ensayos
}, el último el { $day }, sin elección: { $none }.
sheets-test-again = Probar otra vez:
sheets-over-middling = Probabilidad de elegirse antes que algo de gusto medio
sheets-chance = probabilidad
sheets-consistency = { $circular ->
    [0] Las elecciones concuerdan: ningún círculo como A antes que B, B antes que C, C antes que A
    [one] Las elecciones tienen un círculo como A antes que B, B antes que C, C antes que A, de como mucho { $most }
   *[other] Las elecciones tienen { $circular } círculos como A antes que B, B antes que C, C antes que A, de como mucho { $most }
} ({ $items } cosas comparadas por pares; coherencia { $zeta }, 1 es sin círculos).
sheets-side = Tomado de la izquierda de { $name }: { $share }.
sheets-scores = Puntuaciones por tipo de prueba
sheets-thing = Cosa
sheets-score = { $format ->
    [single] De una en una: parte de las ofertas a las que { $name } se acercó
    [paired] De dos en dos: parte de las ofertas en que se tomó
    [multiple] Todas en fila: parte de las ofertas en que se tomó
   *[free_access] Cronómetro: parte del tiempo dedicado
}
sheets-likes-note = Los gustos cambian con el hambre, la hora y el día; esto es lo que { $name } eligió cuando se le preguntó. Una línea es el intervalo del 95 %; «de» cuenta las ofertas.
sheets-never-give = Nunca le des esto a { $name }.
sheets-eaten = { $thing }: { $why }. ¿Ya se lo ha comido? Llama ahora a una persona veterinaria.
sheets-care = Cuidado, para { $name }:

sheets-none-on-board = Todavía no hay palabras en el tablero.
sheets-button = Botón
sheets-means = Significa
sheets-answers = Todo el mundo contesta
sheets-not-now-said = Ahora no
sheets-ends-session = termina una sesión
sheets-for-all = todos
sheets-every-press = Contesta cada pulsación, también la que parece un tropiezo.
sheets-come-and-go = Cada animal puede venir e irse; nunca lo llames ni lo atraigas al tablero.
sheets-batteries = Cierra las tapas de las pilas con sus tornillos. Una pila tragada o mordida es una urgencia. Un animal: llama enseguida a una persona veterinaria. Un niño que ha tragado una pila de botón o se la ha metido en la nariz o el oído: id enseguida a urgencias.
sheets-of-animal = { $name }:

sheets-size = Tamaño
sheets-size-of = { $size ->
    [small] pequeña, { $width } × { $height } mm
    [middle] mediana, { $width } × { $height } mm
   *[large] grande, { $width } × { $height } mm
}
sheets-glue = Las etiquetas ayudan a las personas. Los trozos arrancados se pueden tragar: pégalas planas, y no uses ninguna donde un animal muerda. Imprime al 100 %, sin ajustar a la página.

sheets-written = Escrito: { $file } ({ $pages ->
    [one] una página
   *[other] { $pages } páginas
}).
sheets-no-animal-needed = La hoja «{ $sheet }» trata de todo el hogar: deja fuera --animal.
sheets-many-animals = Aquí viven varios animales: di cuál con --animal, uno de { $names }.
sheets-no-animal = Todavía no vive aquí ningún animal: añade uno en la página Personas.
sheets-no-check = { $name } no tiene tal comprobación: planea una en la página Comprobaciones.
sheets-picture-unread = La imagen de «{ $word }» no se puede leer: la hoja sale sin ella. Hazla de nuevo en la ficha de la palabra.
sheets-no-typeface = no se puede leer la letra
sheets-pdf-refused = no se pudo escribir el PDF: { $why }
