sheets-title = Hojas
sheets-intro = Cada una se imprime en A4 o Carta, sin los menús.
sheets-print = Imprimir
sheets-print-menu = o imprime desde el menú del navegador
sheets-all = Todas las hojas
sheets-fridge = Para la nevera
sheets-fridge-what = Qué significa cada palabra, cómo la responden todos, qué dicen todos para «ahora no», y las reglas de la casa.
sheets-rules = Reglas de la casa
sheets-buttons = Para los botones
sheets-buttons-what = Etiquetas sencillas con la palabra.
sheets-labels = Etiquetas
sheets-report-for = Para la familia, un veterinario o un profesional del comportamiento.
sheets-report = Informe de progreso
sheets-likes = Qué le gusta a { $name }
sheets-size = Tamaño
sheets-size-of = { $size ->
    [small] pequeño, 40 × 25 mm
    [large] grande, 90 × 60 mm
   *[middle] mediano, 60 × 40 mm
}
sheets-no-word = Todavía no hay ninguna palabra en el tablero.
sheets-labels-note = Las etiquetas ayudan a las personas. Los trozos pequeños arrancados se pueden tragar: pégalas planas, y no pongas ninguna donde un animal las muerda.
sheets-button = Botón
sheets-means = Significa
sheets-everyone-answers = Todos responden
sheets-not-now = Ahora no
sheets-ends-session = termina una sesión
sheets-for-all = todos
sheets-answer-every-press = Responde a cada pulsación, también a la que parece un tropiezo.
sheets-may-come-and-go = { $name } puede ir y venir; nunca llames ni atraigas a { $name } al tablero.
sheets-any-may-come-and-go = Todo animal puede ir y venir; nunca llames ni atraigas a ninguno al tablero.
sheets-batteries = Cierra las tapas de las pilas con sus tornillos. { $emergency }
sheets-of-animal = { $name }:
sheets-nothing-tested = Todavía no se ha probado nada.
sheets-tested = { $trials ->
    [one] De un ensayo, el { $day }; sin elección: { $none }.
   *[other] De { $trials } ensayos, el último el { $day }; sin elección: { $none }.
}
sheets-test-again = Probar de nuevo:
sheets-likes-note = Los gustos cambian con el hambre, la hora y el día; esto es lo que { $name } eligió cuando se le preguntó. Una línea es el intervalo del 95 %; se cuentan las ofertas.
sheets-progress = Progreso de { $name }
sheets-period = Periodo
sheets-days = { $days ->
    [one] Un día
   *[other] { $days } días
}
sheets-no-diagnosis = { $lead } Anotaciones propias de un hogar, contadas por un programa. Nadie las revisó. No pueden decir qué entiende, siente o padece un animal; para eso pregunta a un veterinario o a un profesional cualificado del comportamiento.
sheets-no-diagnosis-lead = No es un diagnóstico.
sheets-animal = Animal
sheets-about = unos { $age }
sheets-dates = { $from } a { $to } ({ $zone })
sheets-printed-by = Impreso por
sheets-limits = Límites
sheets-cautions = Avisos de salud
sheets-in-short = En breve
sheets-days-noted = Días con algo anotado: { $days } de { $all }. Lo que nadie anotó no está aquí.
sheets-joined = Sesiones en que { $name } participó: { $share }.
sheets-presses = Veces que las personas mostraron: { $showings }. Pulsaciones propias: { $presses }.
sheets-welfare = Bienestar:
sheets-words = Palabras
sheets-none-taught = Todavía no se enseña ninguna palabra.
sheets-words-caption = desde el principio; pulsaciones propias en los últimos 28 días
sheets-word = Palabra
sheets-stage = Etapa
sheets-figures-say = cifras: { $stage }
sheets-shown = Mostrada
sheets-press-to-giving = De la pulsación a la entrega
sheets-pressed = Pulsada con invitación y ganas
sheets-own-presses = Pulsaciones propias
sheets-times = { $times ->
    [one] una vez
   *[other] { $times } veces
}
sheets-stages = Etapas: preparar, mostrar (las personas pulsan y dan), invitar (una oferta, una espera y la cosa en todo caso), conversar ({ $name } pulsa por iniciativa propia). No pulsar nunca cuenta como no entender.
sheets-showings-a-week = Veces mostrada por semana
sheets-week-from = semana desde
sheets-showings = veces mostrada
sheets-week-of = semana desde el { $day }
sheets-joined-by-week = Sesiones con participación, por semana
sheets-axis-joined = con participación
sheets-axis-pressed = pulsada
sheets-answered = Cómo se respondió a las pulsaciones propias de { $name }
sheets-given = Dado: { $share }.
sheets-given-partly = Dado: { $share }, en parte: { $partly }.
sheets-declined = Ahora no: { $share }, otra cosa: { $other }.
sheets-missed = Perdida, o sin respuesta anotada: { $share }.
sheets-signs = Lenguaje corporal anotado
sheets-signs-counts = Participar: { $joining }. Señales leves de estrés: { $mild }. Señales fuertes: { $strong }.
sheets-sign-of = { $day }: { $sign }
sheets-signs-note = Tal como lo vieron las personas presentes. Una sola señal significa poco; lee todo el cuerpo y la situación.
sheets-food = Recompensas de comida
sheets-food-budget = Calculado con { $day } al día, de ellas recompensas como mucho { $budget }. Base: { $basis }.
sheets-food-budget-range = Calculado con { $day } al día (según el animal: { $low } a { $high }), de ellas recompensas como mucho { $budget }. Base: { $basis }.
sheets-food-none = No se calcula ninguna cantidad: { $why }.
sheets-food-unknown = no se conoce
sheets-likes-heading = Gustos
sheets-last-tested = Última prueba el { $day }.
sheets-not-tested-enough = { $trials ->
    [one] No se ha probado bastante para decir nada (un ensayo).
   *[other] No se ha probado bastante para decir nada ({ $trials } ensayos).
}
sheets-not-known = Qué no se sabe
sheets-no-check = Si { $name } entiende alguna palabra: no se hizo ninguna comprobación planeada. Pulsar también puede venir de una costumbre de lugar, de pistas que las personas dan sin saberlo o de lo que antes dio resultado.
sheets-check-elsewhere = { $trials ->
    [one] Esta hoja no decide si { $name } entiende una palabra: el único ensayo de comprobaciones planeadas está en la página Pruebas.
   *[other] Esta hoja no decide si { $name } entiende una palabra: { $trials } ensayos de comprobaciones planeadas están en la página Pruebas.
}
sheets-not-invited = Cómo se responde a «{ $word }» con una invitación: hasta ahora nunca con invitación y ganas.
sheets-little-invited = { $times ->
    [one] Poco sobre «{ $word }» con una invitación: una vez.
   *[other] Poco sobre «{ $word }» con una invitación: { $times } veces.
}
sheets-no-session = Con cuántas ganas participa { $name }: no se anotó ninguna sesión en este periodo.
sheets-no-likes-test = Qué le gusta más a { $name }: no se hizo ninguna prueba de gustos.
