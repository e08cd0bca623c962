card-animal = Un animal
card-new-animal = Un animal nuevo
card-name = Nombre
card-species = Especie
card-species-hint = De ella dependen el lenguaje corporal, los alimentos peligrosos y la fórmula de energía.
card-age = Edad
card-born = Fecha de nacimiento
card-if-known = si se sabe
card-estimated = esta fecha es aproximada
card-or-age = ¿No se sabe? Da una edad; se calcula una fecha y se marca como aproximada.
card-years = Edad, años
card-months = y meses
card-months-hint = de 0 a 11
card-food = Comida
card-weight-hint = por ejemplo 4,5
card-grown-hint = La necesidad de un cachorro depende de cuánto del peso adulto tiene ya. Pregunta al criador o a un veterinario; sin él no se calcula nada.
card-day-hint = Para perros y gatos déjalo vacío y se calcula un punto de partida. Donde no se pueda calcular, pregunta a un veterinario y escríbelo; sustituye a la fórmula.
card-share = Parte para recompensas, por ciento
card-share-hint = como máximo 10; vacío significa 10
card-allow = A tener en cuenta
card-limits = Límites
card-limits-hint = oído, vista, movimiento y demás: oye o ve mal, patas rígidas
card-cautions = Precauciones de salud
card-cautions-hint = alergias, dolor, medicinas, protege comida o lugares; se muestra donde se ofrece comida
card-takes-part = sigue participando
card-versions = Nada de esto sustituye a un veterinario. Cada cambio es una versión nueva; las anteriores quedan en el registro.
card-back = Volver a Gente
card-stage = { $stage ->
    [neutered_adult] adulto, esterilizado
    [intact_adult] adulto, sin esterilizar
    [obese_prone] adulto, engorda fácil
    [weight_loss] a dieta (pon el peso objetivo)
    [kitten] gatito
   *[puppy] cachorro
}
card-whose = { $species ->
    [dog] { $stage } (perros)
   *[cat] { $stage } (gatos)
}
card-choose-one = falta; elige una
card-stage-no-fit = «{ $stage }» no va con: { $species }
card-less-than-now = es menos que los { $weight } de hoy; corrige uno, o elige una etapa adulta
card-share-wrong = debe ser mayor que 0 y como máximo 10; para más, pregunta a un veterinario
card-born-twice = y una edad se dieron a la vez; da solo una
card-born-later = está en el futuro
card-born-long-ago = queda a más de 120 años
card-weeks-old = { $weeks ->
    [one] una semana
   *[other] { $weeks } semanas
}
card-months-old = { $months } meses
card-years-old = { $years ->
    [one] un año
   *[other] { $years } años
}
card-home = Hogar
card-home-name-hint = como la llamáis
card-zone-hint = Un nombre como Europe/Madrid. El día es el de casa, también cuando cambia la hora.
card-zone-moves = Al cambiarla se mueven también los límites de los días pasados: todo lo que va por día u hora se calcula de nuevo.
card-person = Una persona
card-new-person = Una persona nueva
card-name-at-home = como se usa en casa
card-role-title = Qué es para el hogar
card-role = { $role ->
    [home] vive aquí: enseña y responde
    [coach] acompaña desde fuera
   *[visitor] viene a veces: cuidador, paseador, amigo
}
card-no-such-person = Este cuaderno no conoce a esa persona.
card-rule = Una regla de la casa
card-new-rule = Una regla nueva de la casa
card-rules-how = Las reglas salen en la hoja para la nevera. Las cortas se cumplen mejor, como: responder a cada pulsación, también con «ahora no».
card-the-rule = La regla
card-rule-for = Para
card-every-word = todas las palabras
card-still-holds = sigue valiendo
card-rule-missing = falta; escribe la regla
card-no-such-rule = Este cuaderno no conoce esa regla.
card-people = Gente
card-animals = Animales
card-add-animal = Añadir un animal
card-add-person = Añadir una persona
card-edit = Editar
card-edit-it = Editar { $what }
card-not-named = aún sin nombre
card-files = Archivos: traer y guardar
card-devices = Dispositivos que pueden leer esto
card-about-age = aproximadamente { $age }
card-weight = Peso
card-grown = De adulto
card-stage-title = Etapa
card-food-today = Comida hoy
card-budget = { $budget } para recompensas, de unas { $day } kcal al día.
card-range = Animales de este peso: de { $low } a { $high } kcal al día.
card-given = { $feeds ->
    [one] Dadas { $given } kcal en una vez, quedan { $left } kcal.
   *[other] Dadas { $given } kcal en { $feeds } veces, quedan { $left } kcal.
}
card-nobody = nadie anotado
card-basis = Base: { $basis }.
card-not-computed = No se calcula nada: { $why }. { $link }
card-type-in = Escríbelo
card-wants = Lo que pueden querer
card-wants-none = Nada anotado aún. Cuatro o más cosas de varios tipos hacen una buena prueba de gustos.
card-examples = { $kind ->
    [food] lo que se come o se lame
    [play] un juguete, tirar, perseguir, una campana
    [touch] acariciar, cepillar, el regazo
    [training] un ejercicio que le gusta
    [exploring] fuera, olfatear, la ventana
   *[rest] una cama, un cuarto tranquilo, dormir
}
card-add-want = Añadir algo
card-kcal-piece = { $kcal } kcal por pieza
card-s-to-give = { $seconds } s en darlo
card-at-most = como máximo { $times } al día
card-says = dice «{ $says }»
card-said-often = ya se dice a menudo
card-at-board = { $at_board ->
    [yes] se puede dar junto al tablero
   *[no] no junto al tablero
}
card-stands-for = { $stand_in } lo representa
card-for-whom = para { $names }
card-rules = Reglas de la casa
card-rules-none = Ninguna aún. ¿Qué hacen todos cuando suena un botón y no hay tiempo?
card-edit-rule = Editar la regla: { $rule }
card-add-rule = Añadir una regla
card-fridge = Hoja para la nevera
card-put-away = Ya sin uso ({ $things })
