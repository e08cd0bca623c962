advice-topic-welfare = Primero su bienestar
advice-topic-ration = Comida
advice-topic-set-up = Preparar
advice-topic-likes = Gustos
advice-topic-stuck = Atascada
advice-topic-show = Mostrar
advice-topic-invite = Invitar
advice-topic-converse = Responder
advice-topic-probe = Comprobar
advice-sure-little = una suposición por ahora
advice-sure-fairly = bastante seguro
advice-sure-very = seguro

advice-cause-hard-to-make-out = La palabra grabada puede ser difícil de distinguir
advice-cause-not-wanted = Lo que trae no se quiere ahora
advice-cause-too-little = Se muestra muy poco
advice-cause-too-late = La cosa llega demasiado tarde
advice-cause-avoided = { $name } evita el botón
advice-cause-time-or-place = La hora, el lugar o el ruido
advice-cause-health = Puede que { $name } no esté bien
advice-cause-sounds-alike = Suena como otra palabra
advice-cause-people-differ = Cada persona responde distinto
advice-bearing-for = los registros hablan a favor
advice-bearing-perhaps = posible
advice-bearing-unknown = muy pocos registros para decirlo
advice-bearing-against = los registros hablan en contra

advice-next-rest = Por ahora ninguna sesión. Deja espacio a { $name } y responde a las pulsaciones.
advice-next-session = { $minutes } min como mucho: muestra { $words }.
advice-next-words-shown = «{ $word }» { $times ->
    [one] una vez
   *[other] { $times } veces
}
advice-so-far = { $planned } ({ $shown } de { $of } mostradas hasta ahora)
advice-next-words-invited = «{ $word }» { $times ->
    [one] una vez, invitando
   *[other] { $times } veces, { $invited } invitando
}
advice-next-answer = Responde a lo que { $name } pulse.
advice-held = { $sessions ->
    [one] Una sesión hoy, terminó a las { $time }
   *[other] { $sessions } sesiones hoy, la última terminó a las { $time }
}: { $showings ->
    [0] ninguna demostración
    [one] una demostración
   *[other] { $showings } demostraciones
}{ $bare ->
    [0] { "" }
    [one] , una pulsación sin la cosa
   *[other] , { $bare } pulsaciones sin la cosa
}.
advice-running = Hay una sesión en marcha, desde las { $time }. Ve al tablero.
advice-next-pause = Descanso hasta las { $time }. Después cabe otra sesión corta, si { $name } quiere. Responde a lo que { $name } pulse.
advice-next-enough = Hoy no hace falta nada más. Responde a lo que { $name } pulse.
advice-length-few-sessions = Práctica común: { $timed ->
    [0] ninguna sesión cronometrada
    [one] solo una sesión cronometrada
   *[other] solo { $timed } sesiones cronometradas
} en cuatro semanas.
advice-length-few-left = Práctica común: menos de un cuarto de { $timed } sesiones cronometradas se abandonaron pronto.
advice-length-quarter-left = Un cuarto de { $timed } sesiones cronometradas ya se había abandonado a los { $minutes } min; termina antes.

advice-lately-first-press = Primera pulsación de «{ $word }» por cuenta de { $name }, { $day }.
advice-lately-more-presses = «{ $word }»: { $now ->
    [one] una pulsación propia
   *[other] { $now } pulsaciones propias
} en siete días, { $before } en las cuatro semanas anteriores.
advice-lately-check-passed = Comprobación superada: { $words }, { $right } aciertos de { $of }.
advice-lately-joined = { $name } participó en { $joined } de { $of } sesiones.
advice-lately-taken = { $name } tomó { $taken } de { $of } cosas dadas.

advice-lean-left = { $name } tiende a su izquierda: mezcla bien los lados y sigue probando. El orden lo tiene en cuenta.
advice-lean-right = { $name } tiende a su derecha: mezcla bien los lados y sigue probando. El orden lo tiene en cuenta.
advice-lean-too-few = Muy pocas elecciones para decir algo de los lados.
advice-lean-none = Ninguna tendencia a un lado más allá del azar.
advice-known-well-enough = Favoritos claros por ahora: { $best } ({ $sure } de seguridad, { $n ->
    [one] un ensayo con elección
   *[other] { $n } ensayos con elección
}).
advice-known-enough-for-now = No decidido, pero basta por ahora; lo mejor hasta ahora: { $best } ({ $sure } de seguridad, { $n ->
    [one] un ensayo con elección
   *[other] { $n } ensayos con elección
}).
advice-known-not-yet = Aún no está claro; lo mejor hasta ahora: { $best } ({ $sure } de seguridad, { $n ->
    [one] un ensayo con elección
   *[other] { $n } ensayos con elección
}).
advice-next-pair = Esta pareja diría más sobre cuáles son las mejores; los lados equilibran los anteriores.

# Where a word stands.
advice-stage-prepare = preparar
advice-stage-show = mostrar
advice-stage-invite = invitar
advice-stage-converse = conversar
