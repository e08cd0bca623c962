reward-poison = { $species ->
    [dog] { $food } puede envenenar a los perros. No se añadió.
    [cat] { $food } puede envenenar a los gatos. No se añadió.
    [parrot] { $food } puede envenenar a los loros. No se añadió.
    [rabbit] { $food } puede envenenar a los conejos. No se añadió.
   *[other] { $food } puede envenenar a este animal. No se añadió.
}
reward-says = Lo que ya dices para pedirlo
reward-says-hint = una palabra corta; el botón puede decir lo mismo
reward-already-said = ya decimos esta palabra muchas veces al día
reward-at-board = ¿Se puede dar junto al tablero?
reward-at-board-hint = una y otra vez, en segundos; salir no se puede
reward-as-usual = { $at_board ->
    [yes] como es habitual en su tipo: sí
   *[no] como es habitual en su tipo: no
}
reward-at-board-yes = sí
reward-at-board-no = no
reward-seconds = Cuánto se tarda en darlo, segundos
reward-usual-seconds = desde la pulsación hasta el final; habitual en su tipo: unos { $seconds } (práctica común, sin fuente)
reward-most = Como máximo, cada día
reward-usual-times = antes de que la gente o el animal se cansen; habitual en su tipo: { $times }
reward-stand-in = Qué lo representa en una prueba de gustos
reward-stand-in-hint = algo que se pueda mostrar: la correa o la llave para salir
