client-recent-press = { $by ->
    [person] Pulsé { $word }
    [animal] { $name } pulsó { $word }
   *[unknown] Pulsado: { $word }
}
client-recent-stumble = { $press } (tropiezo)
client-recent-delivery = { $word }: { $answer }
client-recent-feed = Un trozo de { $food }
client-recent-food = comida
client-recent-invited = Invitado { $word }: { $came }
client-recent-came-pressed = pulsó { $word } a los { $seconds } s
client-recent-came-without = lo pidió a su manera
client-recent-came-nothing = nada en la espera
client-recent-came-left = se fue
client-recent-swaps-stopped = Cambios detenidos
client-recent-asked = Pidió { $word } sin botón
client-recent-brushed = Rozó { $word }
client-recent-looked-at = Miró { $word }
client-recent-looked = Miró el tablero
client-recent-sign = Señal ({ $level }): { $sign }
client-recent-started = Sesión empezada
client-recent-ended = Sesión terminada: { $why }
client-recent-joined = Se unió
client-recent-left = Se fue
client-recent-round = { $calls ->
    [one] Ronda de una empezada
   *[other] Ronda de { $calls } empezada
}
client-recent-drawn = Sorteado para { $word }
client-recent-kept-here = { $time } · guardado aquí
client-recent-edit = Editar
client-recent-edit-this = Editar: { $what }
client-recent-undo = Deshacer
client-recent-another-word = Otra palabra…
client-recent-which-word = ¿Qué palabra fue?
client-recent-not-i = Lo pulsó { $name }, no yo
client-recent-i-did = Lo pulsé yo
client-recent-it-stumbled = Pareció un tropiezo
client-recent-it-meant = Pareció a propósito
client-recent-was-given = Se dio
client-recent-was-partly = Se dio en parte
client-recent-was-declined = Fue: ahora no
client-recent-was-missed = Se pasó por alto
client-recent-first-stays = El primer registro sigue visible en el registro. La hora y más se cambian allí.
