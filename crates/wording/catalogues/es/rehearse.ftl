rehearse-title = Ensayar
rehearse-intro = Practica con un animal al que nada puede hacer daño, antes de que lleguen los botones o cuando quieras. Nada de esto entra en el cuaderno.
rehearse-simulation = Una simulación: los animales de verdad son distintos.
rehearse-assumes = Qué supone
rehearse-assumes-short = En breve: mostrar enseña más cuando la cosa llega al instante y se toma; menos, poco después de la última vez. Lo que se muestra mientras el animal está en otra parte o aún tiene algo no enseña nada; ante una señal quita un poco. «Ahora no», otra cosa o ninguna respuesta quitan un poco. Las prisas, llamar, cerrar el paso y una sesión larga tensan, hasta que se ve una señal y el animal se va. Todo va unas diez veces más rápido que en nuestros hogares simulados. Cuánto de cada cosa es elección nuestra: nadie lo ha medido.
rehearse-name = { $who ->
    [eager] Zip
    [wary] Moth
    [old] Bramble
    [quick] Pico
   *[guards] Rusk
}
rehearse-character = { $who ->
    [eager] Zip, un perro joven: viene enseguida, se cansa tarde
    [wary] Moth, un gato: viene cuando no se le pide nada
    [old] Bramble, un perro viejo: cada paso lleva su tiempo
    [quick] Pico, un loro: aprende rápido, pulsa también por curiosidad
   *[guards] Rusk, un perro: le molesta que se le interrumpa al comer
}
rehearse-with = Con quién
rehearse-exercise = { $which ->
    [likes] ¿Qué le gusta?
    [showing] Pulsar, decir, dar
    [leaving] Dejar que se vaya
    [inviting] Cinco invitaciones
    [evening] Una tarde de pulsaciones
    [stuck] Una palabra atascada
   *[free] Práctica libre
}
rehearse-short = { $which ->
    [likes] Pares de cosas ofrecidas: qué se elige y con cuánta seguridad.
    [showing] Dos minutos para mostrar dos o tres palabras.
    [leaving] Alguien quiere irse, y puede.
    [inviting] Cada una con su espera entera de cinco segundos.
    [evening] Hasta treinta pulsaciones, aceleradas, tantas como haga el animal: cada una con una respuesta justa, también «ahora no».
    [stuck] Una palabra no avanza. Prueba cosas y después di qué la frena.
   *[free] Cinco minutos de lo que quieras.
}
rehearse-how = { $which ->
    [likes] Toca «Ofrecer dos»: tienes una cosa a cada lado. Luego no te muevas hasta que { $name } elija, o no elija ninguna, y termine. Doce pares dicen lo más; menos dicen menos.
    [showing] Toca un botón: lo pulsas y dices su palabra. Tócalo otra vez para dar la cosa. Da enseguida, reparte las pulsaciones entre las palabras y deja tiempo para comer y jugar.
    [leaving] Muestra palabras como quieras. Cuando { $name } se vaya, deja que sea así: sin llamar, sin nada en medio. Después termina.
    [inviting] Toca «Invitar» y un botón: tienes la cosa a la vista. Luego no hagas nada durante cinco segundos. ¿Se pulsó? Di la palabra y da enseguida. ¿No se pulsó? Púlsalo tú, dilo, da. Si { $name } se ha ido, déjalo estar.
    [evening] { $name } pulsa. Responde a cada pulsación: da la cosa, di «ahora no» o da otra cosa. Los premios se acaban.
    [stuck] La palabra con borde no avanza. Algo la frena: prueba una cosa tras otra, mira qué hace { $name } y termina cuando tengas una idea. Después dices qué es y sabes qué era verdad.
   *[free] Todo lo que tiene el tablero, y lo que además tienta: llamar, ponerse en medio, decirlo otra vez.
}
rehearse-choose = Ensayar
rehearse-fits = { $which ->
    [showing] Antes de la primera sesión
    [inviting] Antes de la primera invitación
   *[evening] Cuando ya se responde a pulsaciones
}
rehearse-others = Otros ejercicios
rehearse-lessons = Lecciones para esto
rehearse-start = Empezar
rehearse-see = Ver cómo fue
rehearse-all = Todos los ejercicios
rehearse-no-script = Para ensayar hacen falta scripts. Las lecciones no los necesitan.
rehearse-room = La habitación vista desde arriba: arriba el tablero y tú, abajo a la derecha una cama, abajo a la izquierda la puerta abierta.
rehearse-room-likes = La habitación desde arriba: tú arriba, con una cosa en cada mano cuando ofreces dos; una cama abajo a la derecha, la puerta abierta abajo a la izquierda.
rehearse-happens = Qué pasa
rehearse-words = Botones del tablero
rehearse-acts = Qué puedes hacer
rehearse-keys-words = los botones, por orden
rehearse-keys-count = Estas teclas cuentan aquí
rehearse-keys-before = Con teclado: { $list }.
rehearse-keys-one = { $key }: { $does }
rehearse-word = { $thing ->
    [treat] Premio
    [ball] Pelota
    [out] Fuera
   *[company] Compañía
}
rehearse-act = { $does ->
    [two] Ofrecer dos
    [offer] Invitar
    [again] Decirlo otra vez
    [not-now] Ahora no
    [instead] Otra cosa
    [call] Llamar
    [block] Ponerte en medio
    [back] Apartarte
    [ready] Tener todo a mano
    [softer] Bajar el sonido
    [quiet] Cerrar ventanas
   *[end] Terminar
}
rehearse-you = { $does ->
    [two] Ofreces dos cosas.
    [show] Pulsas «{ $word }» y lo dices.
    [give] Das: { $word }.
    [offer] Tienes a la vista: { $word }. Espera.
    [again] Lo dices otra vez.
    [not-now] Dices «ahora no».
    [instead] Dices «ahora no» y das otra cosa: { $word }.
    [call] Llamas a { $name }.
    [block] Te pones en medio.
    [back] Te apartas.
    [ready] Traes las cosas y las tienes a mano.
    [softer] Pones un paño sobre los altavoces: todos los botones suenan más bajo.
    [quiet] Cierras ventanas y puertas.
   *[end] Terminas.
}
rehearse-you-gone = { $does ->
    [call] Llamas: { $name } lo oye fuera y no vuelve.
   *[block] Te pones en la puerta: { $name } no vuelve.
}
rehearse-seen = { $what ->
    [chose] { $name } elige y lo tiene: { $word }.
    [chose-none] { $name } no elige ninguna.
    [looks-up] { $name } levanta la mirada.
    [comes] { $name } se acerca.
    [joined] { $name } está en el tablero.
    [joined-likes] { $name } está delante de ti.
    [looks] { $name } mira «{ $word }».
    [brushed] { $name } roza «{ $word }»: no suena.
    [pressed] { $name } pulsa «{ $word }».
    [took] { $name } lo toma: { $word }.
    [finished] { $name } ha terminado.
    [ignored] { $name } no lo toma.
    [wanders] { $name } se pone con otra cosa.
    [leaves] { $name } se va.
    [gone] { $name } se ha ido.
    [barred] { $name } no puede pasar.
    [eases] { $name } vuelve a la calma.
    [wait-over] Han pasado cinco segundos.
    [noise] Fuera suena un golpe.
    [startled] { $name } retrocede ante «{ $word }».
    [fetches] No está a mano: { $word }. Vas a buscarlo.
    [fetched] Ya estás de vuelta: { $word }.
   *[unanswered] «{ $word }» quedó sin respuesta.
}
rehearse-sign = { $level ->
    [strong] Señal fuerte de { $name }: { $sign }.
   *[mild] Señal leve de { $name }: { $sign }.
}
rehearse-held = A la izquierda: { $left }. A la derecha: { $right }.
rehearse-chosen = Elegido, de las veces ofrecido: { $word }
rehearse-leans-away = se inclina lejos de lo que se ofrece
rehearse-over = { $why ->
    [time] Se acabó el tiempo.
    [done] Eso era todo.
   *[ended] Ha terminado.
}
rehearse-hand-on = Pasar a alguien
rehearse-hand-on-what = Esta dirección lleva al mismo ejercicio con el mismo animal, y a sus lecciones. No dice nada de tu hogar.
rehearse-copy = Copiar la dirección
rehearse-copied = Copiada
rehearse-send = Enviar
rehearse-went = Cómo fue
rehearse-one-thing = Una cosa para la próxima vez
rehearse-change = { $change ->
    [soften] Una vez que { $name } retrocedió ante «{ $word }»: no lo pulses otra vez antes de que suene más bajo.
    [longer] Quédate los dos minutos, mientras { $name } quiera.
    [longer-evening] Quédate toda la tarde, mientras { $name } quiera.
    [more-invitations] Invita cinco veces, cada una con toda la espera.
    [let-choose] No te muevas hasta que { $name } elija o se aparte. Sin otra palabra, sin otro par.
    [more-pairs] Ofrece más pares: cada cosa al menos cinco veces.
    [step-away] Ante una señal fuerte apártate enseguida, o termina. Todo lo demás puede esperar.
    [let-go] Cuando { $name } se vaya, deja que sea así: sin llamar, sin nada en medio, sin mostrar nada.
    [let-eat] Deja que { $name } disfrute en paz de lo que tomó. No se pulsa ni se muestra nada hasta que termine.
    [pause] Ante una señal leve haz una pausa de cinco segundos y deja espacio.
    [wait] Espera los cinco segundos enteros, sin palabra ni gesto. La ayuda viene después.
    [do-not-push] Sin llamar, sin cerrar el paso, sin decirlo otra vez: { $name } viene por voluntad propia o no viene.
    [answer] Responde a cada pulsación, también con «ahora no».
    [sooner] Da antes. Ten la cosa en la mano antes de pulsar.
    [when-there] Muestra cuando { $name } esté en el tablero, y cosas que se quieran en ese momento.
    [slower] Deja más tiempo entre las pulsaciones.
    [instead] De vez en cuando da otra cosa cuando sea «ahora no» para «{ $word }».
    [even] Reparte las pulsaciones: muestra «{ $least }» tanto como «{ $word }».
    [oftener] Muestra más: pocas palabras, una y otra vez.
    [give] Da lo que dice el botón, después de cada pulsación tuya.
    [try] Prueba más cosas antes de decir qué la frena: mostrar, ofrecer dos, tenerlo a mano, bajar el sonido, cerrar ventanas.
    [stay] { $name } aún no se había ido. Quédate hasta que se vaya, y entonces déjalo estar.
    [too-soon] Pasó demasiado poco para decir algo. Prueba otra vez, sin prisa.
    [after-wait] Cuando pasen los cinco segundos, pulsa tú, di la palabra y da la cosa. La espera nunca acaba en nada.
    [when-there-invited] Invita cuando { $name } esté junto al tablero. A quien está en otra parte se le deja en paz.
    [wanted] Invita con lo que { $name } quiera en ese momento.
    [wanted-shown] Muestra lo que { $name } quiera en ese momento.
    [vet] En la vida: para y pregunta a un veterinario. Las lecciones pueden esperar.
    [give-oftener] Da más a menudo lo que dice «{ $word }». Cuando no pueda ser, dalo en otro momento, sin que lo pidan.
    [used-up] Diste todos los premios de la tarde. Sigue respondiendo a «{ $word }» con «ahora no» o con otra cosa.
    [shorter] Hazlo más corto: termina mientras a { $name } aún le gusta.
    [shorter-left] Irse es decir que se acabó. Que ese sea el final del día.
    [give-never] Da lo que dice el botón siempre que se pueda, ante todo con «{ $word }». Lo que ahora no puede ser, quizá pueda en otro momento.
   *[carry-on] Sigue así.
}
rehearse-because = { $change ->
    [soften] Pulsado otra vez después de que { $name } retrocediera: { $figure }
    [longer] Terminaste después de { $figure }.
    [longer-evening] Terminaste después de { $figure }.
    [more-invitations] Invitaciones: { $figure }
    [let-choose] Elecciones en paz: { $figure }
    [more-pairs] Pares: { $figure }
    [step-away] Señales fuertes atendidas: { $figure }
    [let-go] Marchas respetadas: { $figure }
    [let-eat] Disfrutado en paz, de lo tomado: { $figure }
    [pause] Señales leves atendidas: { $figure }
    [wait] Esperas cumplidas: { $figure }
    [do-not-push] Veces que llamaste, cerraste el paso o lo dijiste otra vez: { $figure }
    [answer] Pulsaciones con respuesta: { $figure }
    [sooner] De la pulsación a la cosa: { $figure }. Busca 2 s como mucho.
    [when-there] Tomado, de lo que mostraste: { $figure }
    [slower] Mostrar: { $figure }
    [instead] Pulsaciones de «{ $word }» respondidas con «ahora no»: { $figure }
    [even] Mostrado: { $figure }
    [oftener] Mostrado: { $figure }
    [give] Dado, de lo que pulsaste: { $figure }
    [try] Cosas distintas probadas: { $figure }
    [stay] { $name } no se fue, así que nada se puede decir de dejar ir.
    [too-soon] No se invitó a nadie; no se mostró ni se dio nada, ni se respondió a nada.
    [after-wait] Mostrado y dado tras la espera: { $figure }
    [when-there-invited] Invitaciones con { $name } junto al tablero o de camino: { $figure }
    [wanted] Tomado, de lo que diste tras tus invitaciones: { $figure }
    [wanted-shown] Tomado, de lo que mostraste en el tablero: { $figure }
    [vet] { $name } no estaba bien. En la vida nadie lo ve con certeza en un tablero: un cambio al comer, moverse o pulsar es motivo suficiente.
    [give-oftener] «{ $word }» bajó aquí. De sus pulsaciones, respondidas con «ahora no» u otra cosa: { $figure }
    [used-up] «{ $word }» bajó de todos modos. De sus pulsaciones, respondidas con «ahora no» u otra cosa: { $figure }
    [shorter] Junto al tablero hasta que pediste algo por última vez: { $figure }. Para { $name } se hace largo tras unos { $word }.
    [shorter-left] { $name } se fue tras { $figure } junto al tablero. Cuando volvió { $name }, seguiste.
    [give-never] Ninguna pulsación obtuvo aquí lo que dice el botón. De las de «{ $word }», respondidas con «ahora no» u otra cosa: { $figure }
    [carry-on-likes] Cada elección quedó en manos de { $name }.
    [carry-on-no-choice] Ningún par llegó a una elección, y nada de lo que hiciste estorbó.
   *[carry-on] Nada aquí estorbó al aprendizaje.
}
rehearse-would-change = El próximo ensayo puede nombrar otra cosa: este fue corto, y pocos registros dicen poco.
rehearse-care-strong = En la vida, una señal fuerte termina la sesión. Mantén distancia y consulta a un veterinario o a un profesional cualificado del comportamiento antes de seguir.
rehearse-care-guards = En la vida, quien protege su comida puede morder: no quites nada de la boca ni del cuenco, mantén lejos a los niños y consulta a un profesional cualificado del comportamiento.
rehearse-care-likes = En la vida no pruebes gustos con comida o cosas que alguien protege.
rehearse-measured = Cómo enseñaste
rehearse-measured-what = Las cifras del uso real, de este único ensayo.
rehearse-row = { $which ->
    [paid] Dado, de lo que pulsaste
    [held] Elecciones en paz
    [delay] De tu pulsación a la cosa
    [answer-delay] De la pulsación de { $name } a la cosa
    [pace] Mostrar
    [balance] Entre las palabras
    [taken] Tomado, de lo que mostraste
    [waits] Esperas cumplidas
    [answered] Pulsaciones con respuesta
    [alternatives] Otra cosa dada, donde no fue lo pulsado
    [leaving] Marchas respetadas
    [mild] Señales leves atendidas
    [strong] Señales fuertes atendidas
    [eaten] Disfrutado en paz, de lo tomado
    [given] Cosas dadas
    [after-wait] Mostrado y dado tras la espera
    [invited-there] Invitaciones con { $name } allí o de camino
   *[pushes] Llamar, cerrar el paso o decirlo otra vez
}
rehearse-times = { $times ->
    [one] una vez
   *[other] { $times } veces
}
rehearse-k-of-n = { $k } de { $n }
rehearse-count = { $word } { $times }
rehearse-truth = Qué era verdad
rehearse-truth-what = En la vida nadie puede verlo. Aquí la simulación dice qué probable es que { $name } pulse el botón de una palabra cuando quiere su cosa. La última columna: si todo hubiera llegado lo antes posible, como mucho un segundo antes.
rehearse-of-word = Palabra
rehearse-before = antes
rehearse-after = después
rehearse-sooner = 1 s antes
rehearse-liked = A { $name } le gusta, lo más querido primero: { $things }.
rehearse-likes-told = { $same ->
    [yes] Lo más elegido fue también lo que más gusta. Pero cada cosa se mostró como mucho { $times }, y una o dos elecciones al azar cambian el orden: pocos pares no distinguen gustos cercanos.
   *[no] Lo más elegido: { $chosen }. Lo que más gusta: { $liked }. Cada cosa se mostró como mucho { $times }, y una o dos elecciones al azar cambian el orden: pocos pares no distinguen gustos cercanos.
}
rehearse-line = El conjunto
rehearse-line-what = { $moments } momentos en { $seconds }: arriba lo que hizo { $name }, abajo lo que hiciste tú.
rehearse-lane = { $lane ->
    [animal] { $name }
    [signs] Señales
   *[you] Tú
}
rehearse-marks = Aro: vino, ofrecido, «ahora no» o apartarse. Punto: una pulsación. Cuadrado: tomado o dado. Cruz: se fue, o se le presionó. Triángulo: una señal, rellena si es fuerte.
rehearse-when = Cuándo
rehearse-what = Qué
rehearse-list = Todos los momentos en una lista
rehearse-watch = Verlo otra vez
rehearse-same = Lo mismo otra vez
rehearse-another = Con otro día de { $name }
rehearse-show-on = Mostrarlo a alguien
rehearse-show-on-what = La dirección de esta página contiene todo el ensayo y nada de tu hogar. Envíala a tu coach si quieres; si no, nadie la ve.
rehearse-at-home = Este cuaderno responde solo en casa, así que su dirección entera no se abre en otro lugar. Se copia la parte que sigue: quien tenga un cuaderno propio, o esté en el mismo servidor, la pone detrás de la suya.
rehearse-no-such = No hay tal ejercicio.
rehearse-no-acts = Lo que se hizo no se puede leer en esta dirección: { $item }. Empieza el ejercicio de nuevo.
rehearse-practise = Ensáyalo: { $title }
rehearse-who = { $who ->
    [eager] Zip, perro joven
    [wary] Moth, gato
    [old] Bramble, perro viejo
    [quick] Pico, loro
   *[guards] Rusk, perro que protege su comida
}
rehearse-whoswho = A quién puedes encontrar
rehearse-the-lesson = La lección para esto: { $title }
rehearse-gain = Con todo lo demás igual, solo esto habría llevado las palabras de { $was } a { $would }, de media.
rehearse-gain-given = Si tras cada pulsación que quedó sin respuesta se hubiera dado la cosa, con todo lo demás igual, las palabras habrían ido de { $was } a { $would }, de media. «Ahora no» también es respuesta, y aporta menos.
rehearse-asks-more = { $name } pide más que antes: { $things }
rehearse-asks-less = { $name } pide menos que antes: { $things }
rehearse-asks-same = { $name } pide todo más o menos como antes.
rehearse-stuck-word = La palabra que no avanza: «{ $word }»
rehearse-before-shown = Del cuaderno, mostrado en las últimas tres semanas: { $list }. Para una palabra, menos de dos al día (42 en tres semanas) es poco.
rehearse-name-it = ¿Qué frena a «{ $word }»?
rehearse-name-help = Di lo que piensas antes de seguir leyendo. Nadie se entera.
rehearse-name-button = Decirlo
rehearse-held-up = { $hit ->
    [yes] Lo dijiste, y así era: { $cause }.
   *[no] Era otra cosa: { $cause }. Dijiste: { $said }.
}
rehearse-showed = { $cause ->
    [not-wanted] Cómo se vio: su cosa sin tomar o sin elegir, { $figure }. «Ofrecer dos» lo muestra sin botón.
    [too-late] Cómo se vio: tiempo hasta volver con ella, { $figure }. Con todo a mano nada llega tarde.
    [avoided] Cómo se vio: retrocedió al pulsarla tú, { $figure }. Con menos sonido, el botón se pulsa.
    [time-or-place] Cómo se vio: una señal o irse justo tras un golpe, { $figure }. Con las ventanas cerradas no hay ninguno.
    [health] Cómo se vio: cosas sin tomar, incluso lo preferido, { $figure }; y cada paso lento. Nada de lo que probaste lo arregla. En la vida: consulta primero a un veterinario.
   *[too-little] Cómo se vio: nada lo impedía, y cada muestra enseñó. Mostrado: { $figure }.
}
rehearse-unseen = { $cause ->
    [not-wanted] No llegaste a verlo: da su cosa, u ofrece dos.
    [too-late] No llegaste a verlo: muestra la palabra y da su cosa.
    [avoided] No llegaste a verlo: pulsa su botón con { $name } cerca.
    [time-or-place] No llegaste a verlo: espera un golpe y busca una señal.
    [health] No llegaste a verlo: da lo que más le gusta a { $name }. En la vida: consulta primero a un veterinario.
   *[too-little] No llegaste a verlo: muestra la palabra.
}
rehearse-put-right = { $cause ->
    [too-late] Lo arreglaste antes de que se notara: con todo a mano ya nada llegó tarde.
    [avoided] Lo arreglaste antes de que se notara: más bajo, el botón ya no asusta.
   *[time-or-place] Lo arreglaste antes de que se notara: con las ventanas cerradas no entra ningún golpe.
}
rehearse-showings = tres semanas antes: { $before }; aquí: { $here }
rehearse-notebook = Qué habría dicho el cuaderno
rehearse-notebook-what = De seis semanas de registros de un hogar así y de esta sesión, con las mismas reglas que en el uso real. Lo que nombra primero no siempre es verdad.
rehearse-advisor = { $cause }: { $bearing }.
rehearse-three-more = También pueden frenar una palabra las que suenan parecido, una grabación difícil de distinguir y personas que responden distinto. Este ejercicio no las tiene.
rehearse-share = { $club ->
    [yes] Compartir esto con { $name } y el club
   *[no] Compartir esto con { $name }
}
rehearse-share-what = { $club ->
    [yes] Lo que va a { $name }, en la página Acordado: ejercicio y animal, tu nombre, y de «Cómo enseñaste» los segundos y las proporciones de lo tomado, esperado, respondido, atendido, dejado ir y dejado en paz, cada una con su número. Lo que no va: con qué ritmo y reparto mostraste, lo que pulsaste sin dar, dónde estaba el animal cuando invitaste, qué vino tras la espera, cuántas veces llamaste, cerraste el paso o lo repetiste; ningún momento, ni qué era verdad. También lo leen los otros coaches del club: se entregó en su nombre. Sin este toque nadie lo ve; en esa página puedes retirarlo.
   *[no] Lo que va a { $name }, en la página Acordado: ejercicio y animal, tu nombre, y de «Cómo enseñaste» los segundos y las proporciones de lo tomado, esperado, respondido, atendido, dejado ir y dejado en paz, cada una con su número. Lo que no va: con qué ritmo y reparto mostraste, lo que pulsaste sin dar, dónde estaba el animal cuando invitaste, qué vino tras la espera, cuántas veces llamaste, cerraste el paso o lo repetiste; ningún momento, ni qué era verdad. También lo lee quien siga en lugar de { $name }. Sin este toque nadie lo ve; en esa página puedes retirarlo.
}
