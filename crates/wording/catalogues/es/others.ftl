others-title = Otros
others-lead = Cómo fue en otros hogares, junto a lo anotado de { $name }. Lo habitual no es mejor, y nada de esto es una meta.
others-press = Una pulsación dice que se pulsó un botón, no por qué. Una espera larga no dice nada de { $name }.
others-late = Esperar más de lo habitual no es una enfermedad ni un fallo, y no dice nada de lo que { $name } puede aprender. Si además hay otras señales, pregunta a un veterinario o a un profesional cualificado del comportamiento.
others-who = { $species ->
    [dog] perros
    [cat] gatos
    [parrot] loros
    [rabbit] conejos
   *[other] animales de otras especies
}{ $age ->
    [under-two] { " " }de menos de dos años
    [two-to-seven] { " " }de dos a siete años
    [eight-or-more] { " " }de ocho años o más
   *[every] { "" }
}
others-kind = { $kind ->
    [food] palabras de comida
    [play] palabras de juego
    [touch] palabras de contacto
    [training] palabras de ejercicios
    [exploring] palabras de exploración
    [rest] palabras de descanso
    [closing] palabras que cierran una sesión
    [other] palabras de las que nadie dijo qué traen
   *[every] palabras
}
others-half = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }, la mitad de todas las { $kind } tuvo su primera pulsación por iniciativa del animal { $value ->
    [0] antes de la primera demostración
    [one] en { $value } demostración
   *[other] en { $value } demostraciones o menos
} (intervalo del { $level }: { $low } a { $high }).
others-half-days = Por días: la mitad en { $value ->
    [0] menos de un día
    [one] { $value } día
   *[other] { $value } días o menos
} (intervalo del { $level }: { $low } a { $high }).
others-half-open = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }, menos de la mitad de todas las { $kind } tuvo una pulsación por iniciativa del animal en el tiempo anotado.
others-half-open-days = Por días: menos de la mitad en el tiempo anotado.
others-middle = La mitad central: { $low } a { $high }.
others-middle-open = Una cuarta parte: en { $low } o menos. Tres cuartas partes: no en el tiempo anotado.
others-beyond = no en el tiempo anotado
others-own-before = { $name } pulsó «{ $word }» por primera vez antes de la primera demostración.
others-own-pressed = { $name } pulsó «{ $word }» por primera vez tras { $shown ->
    [one] { $shown } demostración
   *[other] { $shown } demostraciones
}, en { $days ->
    [0] menos de un día
    [one] { $days } día
   *[other] { $days } días
}.
others-own-open = Aún ninguna pulsación de «{ $word }» por { $name }: { $shown ->
    [one] { $shown } demostración
   *[other] { $shown } demostraciones
} hasta ahora, en { $days ->
    [0] menos de un día
    [one] { $days } día
   *[other] { $days } días
}. Aún no no es nunca.
others-any-age = Muy pocos hogares tenían animales de esta edad: están todas las edades.
others-any-kind = Muy pocos hogares tenían palabras como esta: están las palabras para todo.
others-not-enough = No hay bastantes como los tuyos: muy pocos hogares para una cifra en la que no se reconozca a nadie.
others-closing-title = Palabras que cierran una sesión
others-closing = Una palabra que cierra una sesión se muestra cuando algo termina. Se aprende de otro modo que una palabra que trae algo, y por eso solo se pone junto a otras iguales.
others-nothing-shown = Aún nada que poner junto a otros: empieza con la primera demostración.
others-chart-title = «{ $word }»: primeras pulsaciones según demostraciones
others-chart-share = parte pulsada
others-chart-showings = demostraciones
others-chart-mark = { $name }: { $shown }
others-chart-mark-open = { $name }: { $shown }, aún no
others-band = intervalo del { $level }
others-joined-title = Participar
others-joined = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }, el animal participó en el { $value } de las invitaciones en el hogar central (intervalo del { $level }: { $low } a { $high }). La mitad central de los hogares: { $from } a { $to }.
others-own-joined = { $name }: { $joined } de { $invited ->
    [one] { $invited } invitación
   *[other] { $invited } invitaciones
}. No participar es una respuesta.
others-words-title = Qué trajeron las primeras palabras
others-words = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }.
others-nth = Palabra
others-brings = Trae
others-share = Parte de los animales
others-kind-name = { $kind ->
    [food] comida
    [play] juego
    [touch] contacto
    [training] ejercicio
    [exploring] exploración
    [rest] descanso
    [closing] fin de una sesión
   *[other] no se dijo
}
others-hours-title = Horas del día
others-hours = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who } que pulsaron por sí mismos: en qué horas cayó una pulsación, una sacada por sorteo de cada hogar.
others-hours-most = De { $from } a { $to } cayó el { $value } (intervalo del { $level }: { $low } a { $high }), la proporción más alta.
others-hours-caution = Los animales pulsan cuando hay gente en casa y los botones están a su alcance. No es un horario para { $name }.
others-hours-axis = hora del día
others-hours-share = % de los hogares
others-hours-span = { $from } a { $to }
others-stages-title = Tiempo en cada etapa
others-stages = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }, la mitad de las palabras pasó de «{ $stage }» a otra etapa en { $value ->
    [0] menos de un día
    [one] { $value } día
   *[other] { $value } días o menos
} (intervalo del { $level }: { $low } a { $high }).
others-stages-open = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }, menos de la mitad de las palabras pasó de «{ $stage }» a otra etapa en el tiempo anotado.
others-stages-not-enough = «{ $stage }»: no hay bastantes como en tu casa.
others-stages-caution = Pasar a otra etapa lo eligen las personas, y una palabra para la que nadie eligió etapa cuenta como mostrada. Ningún animal tiene que llegar a nada en un día dado: decide lo que hace { $name }.
others-stages-axis = días en la etapa
others-stages-share = parte que ha pasado
others-weeks-title = Pulsaciones en una semana
others-weeks = En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }: cuántas veces pulsó el animal una palabra por sí mismo en una semana desde la primera muestra, con una palabra y una semana sorteadas de cada hogar.
others-weeks-line = { $span }: el { $some } de las palabras se pulsó alguna vez (intervalo del { $level }: { $somelow } a { $somehigh }), el { $daily } siete veces o más ({ $dailylow } a { $dailyhigh }), en { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
}.
others-weeks-span = { $to ->
    [1] Semana { $from }
   *[other] Semanas { $from } a { $to }
}
others-weeks-caution = Se cuentan las pulsaciones anotadas: hay más donde se escucha más. Pulsar más no es querer decir más, y ningún animal tiene que pulsar tanto en una semana dada: decide lo que hace { $name }.
others-weeks-axis = semanas desde la primera muestra
others-weeks-share = parte de las palabras
others-weeks-some = pulsadas alguna vez
others-weeks-daily = siete veces o más
others-source-title = De dónde viene esto
others-source = De la edición «{ $release }» del { $date }.
others-self-chosen = Estos hogares quisieron llevar anotaciones y darlas. No son todos los animales ni una muestra que valga por todos.
others-invented = Hogares inventados por una simulación: para probar esta página, ninguna prueba sobre animales.
others-noise = A cada recuento se le añadió ruido para que no se reconozca ningún hogar. Los intervalos lo tienen en cuenta.
others-club = Solo hogares de { $club }. Sin ruido añadido.
others-none = Aún no hay aquí cifras de otros hogares.
others-none-home = Quien lleva este cuaderno puede traer valores de referencia, también sin conexión. En una terminal: sayso norms import FILE --data { $dir }
others-none-server = Quien lleva este servidor puede darle valores de referencia.
others-damaged = Los valores de referencia guardados aquí no se pueden leer: { $why }. Tráelos otra vez.
others-link = Cómo fue en otros hogares
others-usual = Aún ninguna pulsación de «{ $word }» tras { $shown ->
    [one] { $shown } demostración
   *[other] { $shown } demostraciones
}. En { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} con { $who }, { $part ->
    [quarter] una cuarta parte
   *[half] la mitad
} de todas las { $kind } necesitó más de { $more } (intervalo del { $level }: { $low } a { $high }).
