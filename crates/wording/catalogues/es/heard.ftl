heard-title = Pulsaciones oídas
heard-nothing = Aquí no espera nada.
heard-intro = Un micrófono dice qué botón sonó, no quién lo pulsó. Di lo que viste; deja como está lo que nadie vio.
heard-did-it-sound = ¿Sonó?
heard-did-it-sound-hint = Oído con menos certeza. «No sonó» lo deshace.
heard-who-pressed = ¿Quién pulsó?
heard-count = { $title } ({ $count })
heard-listen = Escuchar con el micrófono de este dispositivo
heard-log = Lo que se deshizo queda en el registro
heard-a-word = una palabra
heard-older = { $count ->
    [one] Sigue una más antigua cuando juzgues estas.
   *[other] Siguen { $count } más antiguas cuando juzgues estas.
}
heard-chance = probabilidad de que sonara: { $share }
heard-play = Oír
heard-play-of = el sonido de { $word }
heard-yes = Sonó, nadie lo vio
heard-no = No sonó
heard-animal = { $name } pulsó
heard-person = Pulsó una persona
heard-not-kept = El sonido de esta pulsación no está guardado.
heard-gone = Aquí no espera esa pulsación; quizá ya se juzgó.
