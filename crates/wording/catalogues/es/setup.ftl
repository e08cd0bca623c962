setup-what = { $step ->
    [food] ¿Cuánta comida puede tomar { $name }?
    [wants] ¿Qué podría gustarle a { $name }? Añade cuatro cosas.
    [likes] Prueba qué le gusta a { $name }
    [words] Elige las primeras palabras de { $name }
    [record] Graba las palabras de { $name }, con tu voz
    [places] Indica dónde están los botones
   *[people] Añade a quienes responden a { $name }
}
setup-why = { $step ->
    [food] para que las recompensas no la superen
    [wants] de varios tipos: comida, juego, caricias
    [likes] unos diez minutos; hace más segura la elección de palabras, y puede esperar
    [words] dos o tres, propuestas con sus razones
    [record] para que cada botón la diga igual y se pueda oír una pulsación; puede esperar
    [places] para reconocer una pulsación por su lugar
   *[people] todos enseñan y todos responden igual
}
setup-title = Preparación para { $name }
setup-done-of = { $done } de { $of } pasos necesarios hechos
setup-is-done = – hecho
setup-next = Siguiente
setup-keep = Guardar
setup-later = Más tarde
setup-along = Paso { $number } de { $of }
setup-food-why = Las recompensas de comida ocupan como mucho una décima parte del día de { $name }. El día se calcula por peso y edad; la cifra de un veterinario es mejor.
setup-weight = Peso, { $unit }
setup-stage = Edad y cuerpo
setup-stage-hint = sirve para calcular la energía del día
setup-stage-unknown = no se sabe
setup-food-more = { $species ->
    [dog] Un cachorro, o la cifra de un veterinario
   *[other] La cifra de un veterinario
}
setup-grown-weight-asked = falta aún: escribe cuánto pesará el cachorro de adulto, o guarda otra vez sin ello; entonces no se calcula nada
setup-grown-weight = Si es cachorro: peso de adulto, { $unit }
setup-grown-weight-hint = pregunta al criador o a un veterinario; sin él no se calcula nada
setup-day-kcal = La comida de todo el día, kcal, según un veterinario
setup-day-kcal-hint = sustituye a cualquier fórmula
setup-day-kcal-more = debe ser mayor que 0; déjalo vacío para que se calcule
setup-food-later = Sin esto no se propone comida como palabra.
setup-record-later = Los botones hablan sin esto. Hoy guarda una línea para ello.
setup-no-vet = Nada de esto sustituye a un veterinario.
