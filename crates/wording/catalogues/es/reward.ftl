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
reward-usual-times = antes de que las personas o el animal se cansen; habitual en su tipo: { $times }
reward-stand-in = Qué lo representa en una prueba de gustos
reward-stand-in-hint = algo que se pueda mostrar: la correa o la llave para salir, el cepillo para una caricia
reward-keep-another = Guardar y añadir otro
reward-new = Nuevo: { $kind }
reward-title = Algo que pueden querer
reward-which-kind = ¿De qué tipo? Una mezcla hace mejor tablero que solo comida.
reward-kind = Tipo
reward-kind-missing = falta; elige uno
reward-exact = tan exacto como puedas, por ejemplo: pollo cocido, solo
reward-only-food = es solo para comida; déjalo vacío, o elige el tipo comida
reward-not-added = nombra un alimento que no se añadió; elige otro
reward-not-added-tick = nombra un alimento que no se añadió; elige otro, o marca solo para qué animales es
reward-none-means-all = ninguno marcado significa todos
reward-still-used = sigue en uso
reward-energy = Energía de una pieza
reward-kcal = kcal por pieza
reward-kcal-hint = del envase, si lo dice
reward-not-known = ¿No se sabe? Déjalo vacío y da el peso de una pieza, con la cifra del envase o un alimento de la tabla.
reward-grams = Gramos por pieza
reward-grams-hint = pesa diez y divide entre diez
reward-per-100 = kcal por 100 g
reward-per-100-hint = del envase; es la mejor cifra
reward-table = o un alimento simple
reward-table-hint = de la tabla del USDA, sin sal, grasa ni condimentos; valores habituales: mira el envase
reward-kept = Guardado.
reward-kept-kcal = { $name }: { $kcal } kcal por pieza.
reward-fits = { $name }: como mucho { $pieces } al día{ $by ->
    [card] , como dice la ficha.
   *[food] , si no se da nada más: las recompensas de comida del día son { $budget } kcal.
}
reward-fits-unknown = { $name }: no se puede decir cuántos al día. { $why }
reward-no-such = Este cuaderno no conoce esa recompensa.
reward-none-of-these = ninguno de estos
reward-food-line = { $food }: { $kcal } kcal por 100 g
reward-food-name = { $food ->
    [chicken_breast_cooked] pechuga de pollo cocida
    [cheddar] cheddar
    [carrot_raw] zanahoria cruda
    [apple_raw] manzana cruda
    [egg_cooked] huevo cocido
    [salmon_farmed_cooked] salmón de cría cocido
    [banana] plátano
    [green_beans] judías verdes
    [turkey_breast_cooked] pechuga de pavo cocida
    [beef_lean_cooked] ternera magra cocida
   *[other] { $food }
}
reward-kcal-more = debe ser mayor que 0, o no se puede contar en el día
reward-grams-missing = falta; pesa diez piezas y divide entre diez
reward-kcal-missing = falta; dalo, o los gramos de una pieza y la energía de 100 g
reward-not-in-list = no está en la lista; elige uno de ella, o da tú la energía
reward-called-like-food = nombra un alimento que nunca se debe dar. Si es ese alimento, no lo des. Si no lo es, ponle otro nombre
