patterns-of-animal = Patrones: { $name }
patterns-no-animal = No existe tal animal.
patterns-intro = Lo que se ve en las pulsaciones y elecciones propias de { $name }, y lo que no muestra. { $link } cuenta qué pasó cuándo. Se miran los últimos { $days } días.
patterns-days = Días
patterns-pace = ¿Crecen o menguan las pulsaciones?
patterns-no-press = Aún ninguna pulsación propia.
patterns-factor = Factor por semana
patterns-factor-told = Cada punto es el factor por el que se multiplican las pulsaciones por semana, con su intervalo del 90 %; la línea es sin cambio.
patterns-factor-interval = intervalo del 90 %
patterns-times-a-week = veces por semana
patterns-pace-does-not-show = Un factor de 1 es sin cambio. Un número que crece no muestra que se entienda una palabra, ni uno que mengua que se olvidara: lo que quiere, cuán pronto se responde y cuánto tiempo está el tablero al alcance también lo cambian. Con varias palabras, que el intervalo de una excluya 1 no sorprende.
patterns-by-week = Pulsaciones propias por semana
patterns-by-week-told = { $n ->
    [one] { $n } pulsación propia
   *[other] { $n } pulsaciones propias
} en { $days } días, por semana hasta hoy; la primera semana puede estar incompleta.
patterns-week-ago = { $ago ->
    [0] los últimos siete días
   *[other] { $ago ->
        [one] { $ago } semana antes
       *[other] { $ago } semanas antes
    }
}
patterns-weeks-axis = semanas antes de hoy
patterns-presses = pulsaciones
patterns-all-words = todas las palabras
patterns-paced = Las pulsaciones de { $name } en { $word ->
    [none] todas las palabras
   *[other] «{ $word }»
} se { $turn ->
    [times] multiplicaron
   *[other] dividieron
} por { $by } cada semana{ $low ->
    [none] { " " }(aún sin intervalo
   *[other] { " " }(factor { $factor }; intervalo del 90 % de { $low } a { $high }
}; { $weeks ->
    [one] { $weeks } semana
   *[other] { $weeks } semanas
}, { $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}).
patterns-paced-few = Las pulsaciones de { $name } en { $word ->
    [none] todas las palabras
   *[other] «{ $word }»
}: muy poco para decir cómo cambian ({ $days ->
    [one] { $days } día
   *[other] { $days } días
}, { $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}; hacen falta { $least_days } días y { $least } pulsaciones).
patterns-lines = Antes y después de un cambio
patterns-no-lines = Aún ningún cambio con al menos cinco días a cada lado: botones movidos, una palabra o una regla nueva.
patterns-lines-do-not-show = Esto no muestra que el cambio lo causara: otras cosas cambiaron también esos días, las pulsaciones ya subían o bajaban, y uno de varios cambios parece grande por azar. Los días de un animal están ligados, así que el intervalo es más bien corto. Una prueba del cambio, con sus días sorteados, puede mostrarlo.
patterns-trials = Pruebas de un cambio
patterns-change-moved = se movieron botones
patterns-change-word = llegó «{ $word }»
patterns-change-rule = llegó una regla de la casa
patterns-line = Cuando { $what } ({ $day }): { $name } pulsó { $before } antes y { $after } después. Un día posterior tuvo más pulsaciones que uno anterior en { $share } de los pares (intervalo del 90 % de { $low } a { $high }, { $n_before } y { $n_after } días, { $p }; 50 % es sin diferencia).
patterns-line-title = Pulsaciones propias por día alrededor del { $day }
patterns-line-told = { $what }: antes { $before }, después { $after }.
patterns-before = antes
patterns-after = después
patterns-days-from-change = días desde el cambio
patterns-presses-a-day = pulsaciones por día
patterns-order = Una palabra tras otra
patterns-order-no-board = Sin un tablero dibujado no se distingue un desliz al botón vecino de una segunda palabra.
patterns-since-why = Desde que los botones están donde están: { $why }.
patterns-order-never = { $name } nunca pulsó dos botones en diez segundos ({ $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}).
patterns-order-none = Ninguna palabra sigue a otra más de lo que explican los hábitos de { $name } ({ $n ->
    [one] { $n } par
   *[other] { $n } pares
} de pulsaciones en diez segundos).
patterns-order-found = { $pairs } ({ $n } pares de pulsaciones en diez segundos).
patterns-pair = «{ $first }» y luego «{ $second }» { $times } veces, { $expected } esperadas por hábito ({ $p } ajustado{ $beside ->
    [yes] , lado a lado: puede ser un desliz
   *[other] { "" }
})
patterns-draw-board = Dibujar el tablero
patterns-order-since = { $n ->
    [one] { $n } pulsación propia
   *[other] { $n } pulsaciones propias
} de { $words ->
    [one] una palabra
   *[other] { $words } palabras
} desde el { $day }, cuando los botones quedaron donde están.
patterns-pairs-caption = Pares pulsados en diez segundos, cinco veces o más, los menos esperados primero
patterns-first = Primera
patterns-next = Siguiente
patterns-times = Veces
patterns-expected = Esperado por hábito
patterns-adjusted-p = p ajustado
patterns-beside = Lado a lado
patterns-beside-told = { $beside ->
    [yes] sí: puede ser un desliz
   *[other] no
}
patterns-order-does-not-show = Comparado con hábitos: cuánto se pulsa cada palabra en una tanda, se repite, se pulsa junto a la anterior y va seguida de pausa. Un par que destaca no muestra que las dos palabras signifiquen algo juntas: una rutina, una respuesta en medio o un deseo tras otro darían lo mismo. Tampoco «ninguna palabra sigue a otra» muestra que ninguna lo haga: de animales simulados con un par verdadero, en sentadas cortas, a tres de cada cuatro no se les vio. Cuenta toda pulsación propia, también las tomadas por deslices.
patterns-slips = Pulsaciones que parecen deslices
patterns-slips-no-board = Sin un tablero dibujado nadie sabe qué botones están lado a lado.
patterns-slips-none = Ninguna pulsación de { $name } vino en { $seconds } tras otro contacto, así que ninguna parece un desliz ({ $n ->
    [one] { $n } pulsación
   *[other] { $n } pulsaciones
}).
patterns-slips-found = De las pulsaciones propias de { $name }, explicadas por un desliz del botón vecino o un roce: { $share }. En { $seconds } tras otro contacto: { $quick }.
patterns-by-button = Explicado por deslices, por botón
patterns-by-button-told = Cada punto es la parte de las pulsaciones de un botón que explican deslices, con su intervalo del 95 %.
patterns-share-of-presses = parte de sus pulsaciones
patterns-judged = Tomadas por desliz por alguien que estaba, de las pulsaciones que alguien juzgó: { $share }.
patterns-slips-do-not-show = De animales simulados que nunca resbalaron, a uno de cada diez se le atribuyó algún desliz. Y esto no muestra qué pulsaciones dejar sin respuesta: un animal que quiere decir dos palabras vecinas parece uno que resbala. Lee una parte grande como «mira el tablero»: separa más esos dos.
patterns-hours = Gustos por hora
patterns-hours-cannot = Aún no se sabe si lo que le gusta a { $name } depende de la hora: { $why } ({ $n ->
    [one] { $n } elección
   *[other] { $n } elecciones
} en { $sittings ->
    [one] { $sittings } tanda
   *[other] { $sittings } tandas
} de los últimos { $days } días).
patterns-hours-matter = Lo que le gusta a { $name } depende de la hora ({ $p }, { $n ->
    [one] { $n } elección
   *[other] { $n } elecciones
} en { $sittings ->
    [one] { $sittings } tanda
   *[other] { $sittings } tandas
}). Ofrece primero lo que más gusta entonces: { $best }.
patterns-hours-no-sign = Ninguna señal de que lo que le gusta a { $name } dependa de la hora ({ $p }, { $n ->
    [one] { $n } elección
   *[other] { $n } elecciones
} en { $sittings ->
    [one] { $sittings } tanda
   *[other] { $sittings } tandas
}); eso no muestra que no dependa.
patterns-best-at = { $what } a las { $hour }
patterns-at-hour = Probabilidad de ser tomado antes que algo de gusto medio a esa hora:
patterns-named-figure = { $what }: { $figure }
patterns-hours-do-not-show = Esto no muestra por qué: comidas, paseos y quién está en casa también siguen el reloj. Se busca una subida y bajada al día, ninguna otra forma. A la hora de comer, un gusto por la comida puede ser hambre.
patterns-how-computed = Cómo se calculan estas cifras
