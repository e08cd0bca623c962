desk-swallowing = { $today ->
    [yes] { $name } se tragó algo hoy: llamad ya a un veterinario.
   *[other] { $name } se tragó algo el { $day }. Pregunta si lo ha visto un veterinario.
}
desk-threat = { $count ->
    [one] { $name } gruñó, amagó o mordió el { $day }.
   *[other] { $name } gruñó, amagó o mordió { $count } veces en { $days } días, la última el { $day }.
}
desk-guarding = { $count ->
    [one] { $name } protegió algo el { $day }.
   *[other] { $name } protegió algo { $count } veces en { $days } días, la última el { $day }.
}
desk-strong = { $on ->
    [one] { $name } mostró señales fuertes de estrés el { $day }.
   *[other] { $name } mostró señales fuertes de estrés en { $on } de { $days } días, la última el { $day }.
}
desk-taken-back = { $kind ->
    [swallowing] Se retiró el registro de que { $name } se tragó algo el { $day }.
    [threat] Se retiró el registro de que { $name } gruñó, amagó o mordió el { $day }.
    [guarding] Se retiró el registro de que { $name } protegió algo el { $day }.
   *[other] Se retiró el registro de una señal fuerte de estrés del { $day }.
}
desk-joins-less = { $name } se une a menos sesiones desde el { $day }: { $lately }. Antes: { $before }.
desk-presses-less = { $name } pulsa menos desde el { $day }: { $lately }. Antes: { $before }.
desk-slower = { $name } tarda más en pulsar cuando se le invita desde el { $day }: { $lately }. Antes: { $before }.
desk-leaves = { $name } dejó muchas de las últimas sesiones a las que se unió: { $share }.
desk-silent = No se ha anotado nada sobre { $name } en { $days } días.
desk-stuck = «{ $word }» está atascada: { $cause }.
desk-holds = «{ $word }» avanza, pero algo la estorba: { $cause }.
desk-stuck-unknown = «{ $word }» está atascada, y los registros no muestran por qué.
desk-cause = { $cause ->
    [hard_to_make_out] la grabación puede ser difícil de distinguir
    [not_wanted] lo que trae no se quiere ahora
    [too_little] se muestra muy poco
    [too_late] la cosa llega demasiado tarde
    [avoided] { $name } evita el botón
    [time_or_place] la hora o el lugar de las sesiones le resultan difíciles a { $name }
    [health] puede que { $name } no esté bien
    [sounds_alike] se confunde con una palabra que suena parecida
   *[people_differ] cada persona responde distinto
}
desk-ration = { $name } recibió más comida que las recompensas del día en { $days } de los últimos { $of } días.
desk-ready = «{ $word }» está lista para invitar desde el { $day }.
desk-check-open = Una comprobación espera su final: { $done } de { $of } ensayos hechos.
desk-check-never = { $words ->
    [one] Una palabra en uso nunca se comprobó.
   *[other] { $words } palabras en uso nunca se comprobaron.
}
desk-little = { $lack ->
    [days] Registros en { $days } de { $of } días son muy pocos para decir qué frena una palabra.
    [records] Hay muy pocas pulsaciones y sesiones anotadas, en { $days } de { $of } días, para decir qué frena una palabra.
   *[whole] Hay muy pocas pulsaciones y sesiones anotadas enteras, en { $days } de { $of } días, para decir qué frena una palabra.
}
desk-outside = Fuera de las nueve décimas centrales de { $homes } hogares comparables: { $lies }
desk-outside-wait = { $by ->
    [days] { $wait ->
        [one] { $wait } día
       *[other] { $wait } días
    }
   *[showings] { $wait ->
        [one] { $wait } demostración
       *[other] { $wait } demostraciones
    }
}
desk-outside-open = aún ninguna pulsación de «{ $word }» tras { $wait }. Allí diecinueve de cada veinte palabras tuvieron su primera pulsación en { $place } o menos (intervalo del { $level }: { $low } a { $high }).
desk-outside-later = «{ $word }» se pulsó por primera vez tras { $wait }. Allí diecinueve de cada veinte palabras tuvieron su primera pulsación en { $place } o menos (intervalo del { $level }: { $low } a { $high }).
desk-outside-sooner = «{ $word }» se pulsó por primera vez tras { $wait }. Allí diecinueve de cada veinte palabras necesitaron { $place } o más (intervalo del { $level }: { $low } a { $high }).

desk-why-recurring = Vuelven: en { $weeks } de las últimas { $of } semanas.
desk-why-taken-back = Pudo ser un toque sin querer. Pregunta en la casa qué pasó.
desk-why-change = Más de lo que permite el azar, contando todo lo que mira esta mesa ({ $p }).
desk-why-silent = Días de un registro al siguiente: { $usual }. La pausa más larga hasta ahora: { $longest }; se avisa a partir de { $after } días enteros.
desk-why-silent-new = Aún no hay una costumbre con que comparar; se avisa a partir de { $after } días enteros.
desk-why-hardly = Se dice atascada por esto: { $presses ->
    [0] { $name } no la ha pulsado por su cuenta en cuatro semanas
    [one] { $name } la ha pulsado una vez por su cuenta en cuatro semanas
   *[other] { $name } la ha pulsado { $presses } veces por su cuenta en cuatro semanas
}, y se le muestra desde hace más de tres.
desk-why-seldom-taken = Se dice atascada por esto: { $name } toma pocas veces lo que trae, y hay muy pocas invitaciones para decir más.
desk-why-seldom-right = Se dice atascada por esto: correctas en claramente menos de la mitad de las veces que se invitó a { $name } y quería la cosa: { $right }.
desk-why-right = Correctas, de las veces que se invitó a { $name } y quería la cosa: { $right }.
desk-why-hours = Se unió a estas horas: { $figure }. A otras: { $beside }.
desk-why-fall = Últimamente: { $figure }. Antes: { $beside }.
desk-why-alike = Pulsó la otra palabra cuando se invitaba a esta: { $figure }. Cuando no se invitaba a ninguna de las dos: { $beside }.
desk-why-people = Una persona: { $figure }. Otra: { $beside }.
desk-why-recording = Su grabación ({ $seconds }) es muy corta o más baja que las otras.
desk-why-ration = Lo más en un día: { $most } kcal. Las recompensas del día son { $budget } kcal.
desk-why-ready = { $showings ->
    [one] Mostrada una vez
   *[other] Mostrada { $showings } veces
}, y espera desde hace { $days } días.
desk-why-check = Solo una comprobación puede distinguirlo de las pistas y la suerte.
desk-why-little = Anotado entero (una pulsación con su respuesta, una sesión con su final): { $closed }. Lo que nadie anotó pudo ocurrir igual.
desk-why-outside = Junto a { $kind } en hogares con { $who }. Palabras de { $name } que se pudieron poner junto a otras: { $laid }. En cualquier lugar queda fuera más o menos una de cada diez palabras.
desk-why-outside-cause = Qué puede frenarla aquí: { $cause }.
desk-why-sooner = Una pulsación dice que se pulsó un botón, no por qué. Antes no es mejor.
desk-until-without = Ninguna otra señal así antes del { $day }.

desk-until-asked = Que la casa cuente por qué se retiró.
desk-until-record = Cualquier registro.
desk-until-more-records = { $lack ->
    [days] Registros casi todos los días, con las respuestas y el final de las sesiones.
    [records] Más pulsaciones y sesiones anotadas, con respuestas y finales.
   *[whole] La respuesta a la mayoría de las pulsaciones y el final de la mayoría de las sesiones, anotados.
}
desk-until-more-right = Claramente más pulsaciones acertadas al invitar, o registros que apunten a una causa.
desk-until-fewer-over = Menos de tres días así en una semana, o una cantidad que fije un veterinario.
desk-until-invited = Se invita a la palabra, o sus cifras ya no apuntan a invitar.
desk-until-first-press = Una primera pulsación, o una edición más nueva de estas cifras.
desk-until-since-press = { $days } días desde la primera pulsación, o una edición más nueva de estas cifras.
desk-aside = { $ago ->
    [0] Apartado hace menos de un día
    [one] Apartado hace { $ago } día
   *[other] Apartado hace { $ago } días
}; vuelve en { $days ->
    [one] { $days } día
   *[other] { $days } días
} como mucho, antes si empeora.
desk-back = { $ago ->
    [0] Apartaste esto hace menos de un día.
    [one] Apartaste esto hace { $ago } día.
   *[other] Apartaste esto hace { $ago } días.
} { $why ->
    [worse] Desde entonces ha empeorado.
    [anew] Desde entonces ha empezado de nuevo.
    [cause] Los registros apuntan ahora a otra causa.
   *[days] Sus días han pasado.
}

desk-new-signs = { $kind ->
    [swallowing] { $count ->
        [one] { $name } se tragó algo: { $day }.
       *[other] { $name } se tragó algo { $count } veces, la última { $day }.
    }
    [threat] { $count ->
        [one] { $name } gruñó, amagó o mordió: { $day }.
       *[other] { $name } gruñó, amagó o mordió { $count } veces, la última { $day }.
    }
    [guarding] { $count ->
        [one] { $name } protegió algo: { $day }.
       *[other] { $name } protegió algo { $count } veces, la última { $day }.
    }
   *[other] { $count ->
        [one] Una señal fuerte de estrés: { $day }.
       *[other] Señales fuertes de estrés: { $count }, la última { $day }.
    }
}
desk-new-joining = Sesiones a las que { $name } se unió: { $lately }. Antes: { $before } ({ $p }).
desk-new-presses = Pulsaciones propias: { $lately }. Antes: { $before } ({ $p }).
desk-new-word = «{ $word }» es nueva en el tablero.
desk-word-gone = «{ $word }» ya no está en uso.
desk-first-press = { $name } pulsó «{ $word }» por iniciativa propia por primera vez: { $day }.
desk-new-stage = «{ $word }» pasó de { $from } a { $to }.
desk-above-chance = Las pulsaciones correctas de «{ $word }» ya son más que azar: { $right }.
