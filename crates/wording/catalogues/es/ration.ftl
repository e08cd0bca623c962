ration-used-up = Las recompensas de comida de hoy se han agotado. Usa juego, caricias o exploración, y da una comida más pequeña si el veterinario está de acuerdo.
ration-starting-point = Un punto de partida para un animal sano: con el mismo peso, unos necesitan hasta el triple que otros. Vigila la condición corporal y pregunta a un veterinario.
ration-growing = Lo que necesita un animal que crece cambia de semana en semana: pesa a menudo, usa su propia comida como recompensa donde puedas y pregunta a un veterinario.
ration-weight-loss = Calculado con el peso objetivo. Adelgazar necesita un plan del veterinario; en los gatos, comer demasiado poco es peligroso en sí.
ration-typed-in = Escrito a mano, no comprobado por este programa: queda como lo dio el veterinario.
ration-basis-typed-in = escrito a mano, como lo fijó un veterinario
ration-basis-formula = energía en reposo (70 por el peso en kg elevado a 0,75) = { $resting } kcal, por { $factor } por la etapa de la vida ({ $source })
ration-factor-source = { $source ->
    [charts] como en tablas veterinarias publicadas, secundario; solo punto de partida
    [home_dogs] como en tablas veterinarias publicadas, secundario; perros de familia de peso ideal usaron 1,83 (Divol & Priymenko 2017); solo punto de partida
    [slimming] 80 % de la energía en reposo con el peso ideal, guía AAHA 2014; solo punto de partida
    [growth_half] FEDIAF 2021, por debajo de la mitad del peso adulto; solo punto de partida
    [growth_most] FEDIAF 2021, de la mitad a cuatro quintos del peso adulto; solo punto de partida
   *[growth_end] FEDIAF 2021, desde cuatro quintos del peso adulto; solo punto de partida
}
ration-no-formula = aquí no hay fórmula { $whom }: pregunta a un veterinario cuánto puede comer { $name } al día y escríbelo
ration-weight = { $weight } no es un peso { $whom } (de { $low } a { $high }): compruébalo, o pregunta a un veterinario cuánto puede comer { $name } al día y escríbelo
ration-stage = «{ $stage }» no es una etapa de la vida { $whom }: elige otra, o pregunta a un veterinario cuánto puede comer { $name } al día y escríbelo
ration-no-weight = no se conoce el peso de { $name }: pesa a { $name }, o pregunta a un veterinario cuánto puede comer { $name } al día y escríbelo
ration-no-grown-weight = lo que necesita un cachorro depende de su parte del peso adulto, y el de { $name } no se conoce: pregunta al criador o a un veterinario y escríbelo, o escribe cuánto puede comer { $name } al día según un veterinario
ration-outgrown = { $weight } es más que los { $grown } que se esperan de { $name } en edad adulta: corrige uno de los dos, elige una etapa adulta, o pregunta a un veterinario cuánto puede comer { $name } al día y escríbelo
ration-no-stage = no se conoce la etapa de la vida de { $name }: elige una, o pregunta a un veterinario cuánto puede comer { $name } al día y escríbelo
