because-strong-signs = Señales fuertes de estrés: { $count } en { $days } días, en { $on } de ellos{ $today ->
    [0] { "" }
   *[other] , { $today } hoy
}. La última: «{ $last }».
because-rests-until = Las sesiones descansan hasta el { $until }: tras una señal fuerte, el resto del día y doce horas como mínimo; tras señales fuertes en dos días, una semana.
because-lasting-threat = { $count ->
    [one] Un gruñido, amago o mordisco en { $days } días: «{ $last }», { $day }.
   *[other] { $count } gruñidos, amagos o mordiscos en { $days } días. El último: «{ $last }», { $day }.
}
because-lasting-guarding = { $count ->
    [one] { $name } protegió algo una vez en { $days } días: «{ $last }», { $day }.
   *[other] { $name } protegió algo { $count } veces en { $days } días. La última: «{ $last }», { $day }.
}
because-lasting-swallowing = { $count ->
    [one] { $name } tragó algo una vez en { $days } días: «{ $last }», { $day }.
   *[other] { $name } tragó algo { $count } veces en { $days } días. La última: «{ $last }», { $day }.
}
because-recurring = Vuelve una y otra vez: en { $weeks } de las últimas { $of } semanas.
because-left-few = { $name } abandonó { $left } de las últimas { $of } sesiones en que participó.
because-left-sessions = { $name } abandonó { $left } de las últimas sesiones en que participó: { $share }.
because-mild-signs = Sesiones de los últimos siete días con una señal leve de estrés: { $share }.
because-sudden-change = Pulsaciones propias en los últimos dos días: { $now }. En las cuatro semanas anteriores: { $before }.
because-food-given = Hoy se dieron { $given } kcal { $feeds ->
    [one] en una toma
   *[other] en { $feeds } tomas
}; las recompensas del día son { $budget } kcal.
because-rewards-listed = { $rewards ->
    [0] Aún no hay recompensas en la lista; una prueba de gustos compara al menos dos.
    [one] Hay una recompensa en la lista; una prueba de gustos compara al menos dos.
   *[other] Hay { $rewards } recompensas en la lista; una prueba de gustos compara al menos dos.
}
because-no-likes-test = { $rewards ->
    [one] Hay una recompensa en la lista, sin probar.
   *[other] Hay { $rewards } recompensas en la lista, ninguna probada.
}
because-no-word-yet = { $trials ->
    [one] Hay un ensayo de una prueba de gustos anotado
   *[other] Hay { $trials } ensayos de pruebas de gustos anotados
} y aún ninguna palabra en el tablero.
because-no-allowance = No se puede calcular con lo que hay en la ficha.
because-card-lacks = En la ficha falta { $lacks }. Una palabra se aprende mejor si todos responden igual (práctica común, sin fuente).
because-slowing = «{ $word }» suena más lento en { $by }, en pulsaciones oídas durante { $days ->
    [one] un día
   *[other] { $days } días
}. Probabilidad de que se ralentice más que un botón sano: { $probability }.
because-silent = «{ $word }» se oyó por última vez el { $day }, hace { $days ->
    [one] un día
   *[other] { $days } días
}. Desde entonces se oyeron otras palabras { $others ->
    [one] una vez
   *[other] { $others } veces
}.
because-never-heard = «{ $word }» no se ha oído en { $days ->
    [one] un día
   *[other] { $days } días
} de escucha. Se oyeron otras palabras { $others ->
    [one] una vez
   *[other] { $others } veces
}.
because-silent-before = «{ $word }» se oyó por última vez el { $day }, hace { $days ->
    [one] un día
   *[other] { $days } días
}; antes, { $before }. Desde entonces se oyeron otras palabras { $others ->
    [one] una vez
   *[other] { $others } veces
}.
because-noted-by-hand = «{ $word }» se anotó a mano { $times ->
    [one] una vez
   *[other] { $times } veces
} mientras tanto: suena, pero ya no como su grabación de aquí.
because-silent-causes = Puede ser una pila agotada, un botón roto o una grabación nueva; o que ahora no haya uso para la palabra. No dice nada de lo que un animal sabe.
because-test-old = La última prueba de gustos tiene { $days } días. La mitad de lo que dijo se da por olvidada tras { $half } días (práctica común, sin fuente).
because-best-unclear = Aún no está claro; lo mejor hasta ahora: { $best } ({ $probability } de seguridad, { $choices ->
    [0] aún ningún ensayo con elección
    [one] un ensayo con elección
   *[other] { $choices } ensayos con elección
}).
because-when-wanted = Se invitó a { $name } { $of } veces y quería la cosa: { $parts }.
because-wanted-this = pulsó esta palabra { $all ->
    [yes] todas las veces
   *[no] { $times ->
        [one] una vez
       *[other] { $times } veces
    }
}
because-wanted-other = pulsó otra palabra { $all ->
    [yes] todas las veces
   *[no] { $times ->
        [one] una vez
       *[other] { $times } veces
    }
}
because-wanted-none = { $all ->
    [yes] nunca pulsó nada
   *[no] { $times ->
        [one] no pulsó nada una vez
       *[other] no pulsó nada { $times } veces
    }
}
because-when-wanted-early = Demasiado pronto para decirlo: { $of ->
    [0] aún no se invitó a { $name } cuando quería la cosa
    [one] se invitó a { $name } y quería la cosa una vez
   *[other] se invitó a { $name } y quería la cosa { $of } veces
}.
because-right-none = De las pulsaciones al invitar, esta palabra: aún nada contado.
because-right = De las pulsaciones al invitar, esta palabra: { $share }. { $chance ->
    [more] Pasa el listón para un paso siguiente ({ $bar } a 1).
   *[other] Aún no más que el azar.
}
because-right-elsewhere = De las pulsaciones al invitar, esta palabra: { $share }; pulsada al invitar a otras: { $elsewhere }. { $chance ->
    [more] Pasa el listón para un paso siguiente ({ $bar } a 1).
   *[other] Aún no más que el azar.
}
because-showings = { $showings ->
    [0] Nunca mostrada
    [one] Mostrada una vez
   *[other] Mostrada { $showings } veces
} (se buscan { $wanted }), { $days ->
    [0] en ningún día
    [one] en un día
   *[other] en { $days } días
} (se buscan { $dayswanted }).
because-joining = Sesiones con participación en cuatro semanas: { $share }. Antes de invitar, claramente más del { $floor }.
because-mastery = Sesiones seguidas con { $share } o más pulsado y acertado: { $sessions } (se buscan { $wanted }). Personas distintas en ellas: { $people } (se buscan { $peoplewanted }).
because-own-presses = Pulsaciones propias con la cosa tomada: { $presses } (se buscan { $wanted }), { $days ->
    [0] en ningún día
    [one] en un día
   *[other] en { $days } días
} (se buscan { $dayswanted }).
because-below = { $counted ->
    [wanted] Invitaciones en que { $name } quería la cosa, con pulsación
    [latest] Últimas invitaciones en que { $name } quería la cosa, con pulsación
    [later] Dos semanas o más después de dominarla, con pulsación cuando { $name } quería la cosa
   *[right] Dos semanas o más después de dominarla, de las pulsaciones al invitar, esta palabra
}: { $share }. Todo este intervalo, uno del 90 %, queda por debajo del { $bar } que se busca { $counted ->
    [wanted] para invitar
   *[other] para dejar la palabra a { $name }
}.
because-later-unknown = No se sabe si dura: { $wanted ->
    [0] ninguna invitación
    [one] una invitación
   *[other] { $wanted } invitaciones
} dos semanas o más después de dominarla (se buscan { $needed }).
because-later = Dos semanas o más después de dominarla: pulsó { $pressed } de las { $wanted } veces que { $name } quería la cosa{ $presses ->
    [0] { "" }
   *[other] , acertó { $right } de { $presses }
}.
because-strain = Señales fuertes de estrés en varios días en sesiones con esta palabra.
because-ends-sessions = Esta palabra termina la sesión: se muestra entonces y nadie la espera.
because-not-prepared = La recompensa o la respuesta de la palabra no está fijada.
because-contradiction = Los registros se contradicen: { $why }
because-no-recording-checked = Nadie ha revisado aquí una grabación suya. Perros de familia respondieron a cerca del 30 % de las señales aprendidas desde botones, casi al 100 % de viva voz (17 perros; Higaki 2025, cifras de una nota de prensa).
because-recording = { $found ->
    [both] Su grabación ({ $seconds }) es muy corta y más baja que las demás.
    [short] Su grabación ({ $seconds }) es muy corta.
    [quiet] Su grabación ({ $seconds }) suena más baja que las demás.
   *[other] Su grabación ({ $seconds }) se revisó, lo que no dice qué distingue un animal.
} Perros de familia respondieron a cerca del 30 % de las señales aprendidas desde botones, casi al 100 % de viva voz (17 perros; Higaki 2025, cifras de una nota de prensa).
because-taken = Tomado, de lo dado por esta palabra en { $days } días: { $share } (límite { $bar }).
because-showings-a-day = Demostraciones en { $days } días: { $rate } (límite { $bar } al día).
because-delay = De la pulsación a la entrega, el valor central: { $seconds } (límite { $bar }).
because-near = Miradas, roces y pulsaciones propias a este botón: { $share }. Tuvo el { $expected } de las demostraciones.
because-comes-more = Pulsaciones propias en siete días: { $now }; en las cuatro semanas anteriores: { $before }. Más de lo que permite el azar.
because-too-few-hours = Muy pocas sesiones a distintas horas del día.
because-uneasy-hours = De { $from } a { $to } { $name } participó { $here }, a otras horas { $elsewhere }. Contando llegadas tardías, abandonos y señales, { $p } (corregido por elegir las horas), últimos { $days } días.
because-too-few-days = Muy pocos días para ver un cambio.
because-late-fall = Participó en los últimos { $days } días: { $lately }; antes: { $before }. Contando llegadas tardías, abandonos, señales, pulsaciones propias y lo tomado, { $p } (corregido por elegir el día). Los registros no muestran la salud: si algo parece raro, consulta a un veterinario.
because-only-word = Es la única palabra.
because-sounds = { $alike ->
    [yes] Suena muy parecida a «{ $nearest }».
   *[other] Suena bastante distinta de «{ $nearest }».
} Otra palabra pulsada, de las pulsaciones al invitar: { $others }.
because-too-few-people = Menos de dos personas con cinco respuestas cada una.
because-people-delay = { $one } da tras { $first }, { $two } tras { $second } (prueba de suma de rangos, { $p }).
because-people-give = { $one } da en { $first } de las pulsaciones, { $two } en { $second } ({ $p }).
because-many-presses = Pulsaciones propias en { $days } días: { $rate } (límite { $bar } al día).
because-given-share = Respondidas con la cosa: { $share }.
because-signalled-times = Tiempos de sí y no con señal: Hanley, Iwata & Thompson 2001, cuyo último paso fue 60 s y 240 s. El primer paso es de memoria, los intermedios son nuestros.
because-never-checked = { $words ->
    [one] Una palabra está en uso y nunca se comprobó.
   *[other] { $words } palabras están en uso y nunca se comprobaron.
}
because-check-open = Van { $done } de { $of } ensayos de la comprobación.
