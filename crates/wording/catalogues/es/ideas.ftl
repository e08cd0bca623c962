ideas-name = { $key ->
    [chicken] Pollo cocido, como un guisante
    [cheese] Queso, como un guisante
    [carrot] Zanahoria, una rodaja fina
    [apple] Manzana sin corazón, un cubito
    [beans] Judía verde cocida, una
    [beef] Ternera magra cocida, como un guisante
    [turkey] Pavo cocido, como un guisante
    [egg] Huevo cocido, como un guisante
    [salmon] Salmón cocido, una lasca pequeña
    [kibble] Pienso, una pieza
    [pellet] Gránulo del alimento habitual, uno
    [sunflower] Pipa de girasol sin sal, una
    [millet] Mijo, una pizca
    [pepper] Pimiento rojo, una tirita
    [dandelion] Diente de león, una hoja
    [parsley] Perejil, una ramita
    [coriander] Cilantro, una ramita
    [hay] Heno, un tallo dulce
    [tug] Tira y afloja
    [ball] Pelota
    [chase] Persíguelo
    [squeak] Juguete que pita
    [wand] Varita con pluma
    [crinkle] Bola de papel que cruje
    [toss] Ratón de trapo
    [bell] Campana
    [shred] Papel para rasgar
    [peekaboo] Cucú
    [willow] Bola de mimbre
    [tunnel] Túnel
    [rub] Caricia en la barriga
    [scratch] Rasquido en el pecho
    [brush] Cepillo
    [cheek] Mimo en la mejilla
    [head] Rasquido en la cabeza
    [forehead] Mimo en la frente, en el suelo
    [paw] Dar la pata
    [spin] Vuelta
    [touch_hand] Toca mi mano
    [high_five] Choca
    [step_up] Sube
    [turn] Gira
    [target] Toca el palo
    [up] Arriba
    [garden] Jardín
    [walk] Paseo
    [sniff] Olfatear en una caja de hojas
    [window] Ventana
    [box] Caja de cartón
    [room] Otra habitación, contigo
    [pen] Corral exterior
    [bed] Cama
    [sofa] Sofá, a tu lado
    [perch] Percha tranquila
    [hide] Caseta
   *[other] { $key }
}
ideas-label = { $key ->
    [chicken] pollo
    [cheese] queso
    [carrot] zanahoria
    [apple] manzana
    [beans] judía
    [beef] ternera
    [turkey] pavo
    [egg] huevo
    [salmon] salmón
    [kibble] pienso
    [pellet] gránulo
    [sunflower] pipa
    [millet] mijo
    [pepper] pimiento
    [dandelion] hoja
    [parsley] perejil
    [coriander] cilantro
    [hay] heno
    [tug] tira
    [ball] pelota
    [chase] corre
    [squeak] pito
    [wand] pluma
    [crinkle] papel
    [toss] ratón
    [bell] campana
    [shred] papel
    [peekaboo] cucú
    [willow] mimbre
    [tunnel] túnel
    [rub] caricia
    [scratch] rasca
    [brush] cepillo
    [cheek] mimo
    [head] rasca
    [forehead] mimo
    [paw] pata
    [spin] vuelta
    [touch_hand] mano
    [high_five] choca
    [step_up] sube
    [turn] gira
    [target] palo
    [up] arriba
    [garden] jardín
    [walk] paseo
    [sniff] huele
    [window] ventana
    [box] caja
    [room] cuarto
    [pen] corral
    [bed] cama
    [sofa] sofá
    [perch] percha
    [hide] caseta
   *[other] { $key }
}
ideas-title = ¿Qué podría gustarle a { $name }?
ideas-four = Toca cuatro cosas o más, de varios tipos. { $name } decidirá después.
ideas-health = Salud:
ideas-other-kinds = Cosas de otros tipos
ideas-figures = kcal: valores habituales por pieza (USDA y de memoria); mira el envase. Las ideas: práctica común, sin fuente.
ideas-add = Añadir
ideas-own = Algo tuyo
ideas-kind = { $kind ->
    [food] comida
    [play] juego
    [touch] caricias
    [training] un ejercicio
    [exploring] explorar
   *[rest] descanso
}
ideas-care = { $care ->
    [guarding] No para un animal que protege comida o juguetes. Si { $name } se tensa o gruñe, deja espacio y pregunta a un profesional cualificado del comportamiento.
    [slipping] En un suelo que no resbale; con patas rígidas o jóvenes, pregunta antes a un veterinario.
    [small_parts] Nada que se pueda arrancar y tragar; guárdalo después.
    [size] Demasiado grande para tragarla o que se quede en la garganta; retírala cuando esté gastada.
   *[hands_off] Solo mientras { $name } lo busca: nunca sujeto ni en el regazo a la fuerza.
}
ideas-none-ticked = no están marcadas; toca una, o elige Más tarde
ideas-unknown = contienen una que este programa no conoce; recarga la página
ideas-instead = { $name } casi nunca elige { $thing }. Ideas para probar en su lugar: { $ideas }
ideas-instead-of = A { $name } no le interesa mucho { $thing }. Prueba otra cosa del mismo tipo y deja que { $name } elija.
ideas-see = Ver todas las ideas
ideas-for-animal = Ideas para probar con { $name }: { $ideas }
