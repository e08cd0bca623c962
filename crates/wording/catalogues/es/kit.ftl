# Recording real buttons: the sheet that says how, and the page that records.
kit-title = Grabar botones de verdad
kit-why = La escucha de Sayso se ha medido con sonidos fabricados; todavía no se ha grabado ningún botón de verdad. Las grabaciones de botones de verdad muestran hasta dónde se puede confiar en ella.
kit-stays = No se envía nada: guardas un archivo en este dispositivo y decides a quién se lo das.
kit-print = Imprimir lo que hay que hacer
kit-no-script = Para grabar hace falta JavaScript, que está desactivado en este navegador.
kit-before = Antes de empezar
kit-away = Ningún animal en la habitación ni donde pueda oír: una palabra que suena y no trae nada enseña que no significa nada.
kit-loud = Deja el volumen del botón como está y mantenlo lejos de los oídos: un sonido fuerte muy cerca puede hacer daño.
kit-people = Avisa a todas las personas que se puedan oír. No digáis nombres mientras se graba.
kit-need = Necesitas
kit-need-things = Uno o más botones, un teléfono, una cinta métrica y unos 15 minutos por botón.
kit-steps = Paso a paso
kit-step = Paso
kit-what-to-do = Qué hacer
kit-step-open = En el teléfono, abre la página «{ $page }» desde la página Escuchar.
kit-step-agree = Lee lo que aceptas y márcalo.
kit-step-say = Di qué botón y qué teléfono son: tamaño, forma, edad. Sin nombres de marcas ni de personas.
kit-step-close = En una habitación silenciosa, sostén el teléfono a un palmo del botón y graba una pulsación.
kit-step-presses = Pon el teléfono a { $metres } m del botón. Pulsa diez veces, cada vez que la página diga «Pulsa ahora»: cada seis segundos.
kit-step-further = Haz lo mismo a { $distances } m, sin nada entre el botón y el teléfono.
kit-step-without = Graba tres minutos sin pulsar: hablad, caminad, dejad sonar la radio.
kit-step-again = Si puedes, repítelo todo en otra habitación, con otro ruido o con otro teléfono.
kit-step-save = Guarda el archivo antes de cerrar la página.
kit-to-fill-in = Para rellenar a mano, si quieres
kit-distance = Distancia
kit-metres = { $metres } m
kit-room = Habitación
kit-noise = Qué más suena
kit-phone = Teléfono
kit-presses = Pulsaciones
kit-without = ninguna, 3 minutos
kit-agree = Qué aceptas
kit-consent = Todas las personas que se pueden oír aceptan que se las grabe. El archivo se puede dar a quienes miden y mejoran la escucha de pulsaciones. Contiene sonido y lo que se rellena abajo, ningún nombre.
kit-agreed = Lo aceptamos
kit-publish = El archivo también se puede publicar como sonido de prueba
kit-publish-hint = déjalo vacío si no lo tienes claro
kit-about = El botón y el teléfono
kit-word = Qué dice el botón
kit-button = Qué tipo de botón
kit-button-hint = tamaño, forma, edad, carga de la pila; sin nombre de marca
kit-phone-hint = tamaño y edad; sin nombre de marca ni de persona
kit-close = El botón de cerca
kit-close-how = Sostén el teléfono a un palmo del botón, en una habitación silenciosa, y pulsa una vez. La escucha conoce el botón por este sonido.
kit-take = Pulsaciones a distancia
kit-rooms = { $room ->
    [kitchen] cocina
    [living] sala de estar
    [bedroom] dormitorio
    [hall] pasillo o escalera
    [outdoors] al aire libre
   *[other] otra habitación
}
kit-noises = { $noise ->
    [quiet] silencio
    [talk] gente hablando
    [media] radio, música o televisión
    [machine] un aparato de la casa
    [outside] calle o tiempo
   *[other] otra cosa
}
kit-marked = Cómo se marcan las pulsaciones
kit-countdown = Con cuenta atrás: pulsa cuando lo diga la página
kit-tap = Con un toque: alguien toca la pantalla al pulsarse el botón
kit-recorded = Grabado
kit-save = Guardar
kit-save-how = Un solo archivo: los sonidos, lo que has rellenado y lo que habéis aceptado.
kit-lead = Ayuda a medir la escucha: graba tus botones
