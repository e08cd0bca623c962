events-word-without-card = una palabra sin ficha
events-reward-without-card = algo sin ficha
events-home-without-name = Un hogar sin nombre
events-home = Hogar: { $name }, { $zone }
events-person = Persona: { $name }
events-animal = Animal: { $name }
events-reward = Recompensa: { $name }
events-word = Palabra: { $word }
events-clip = Grabación de { $word }
events-board = Tablero de { $rows } por { $columns }, { $words ->
    [one] { $words } palabra
   *[other] { $words } palabras
}
events-rule = Regla de la casa: { $text }
events-stage = { $word }: etapa { $stage }
events-session-began = Empezó una sesión: { $purpose }{ $room ->
    [none] { "" }
   *[other] , { $room }
}
events-showing = mostrar
events-inviting = invitar
events-likes-test = prueba de gustos
events-check = comprobación de comprensión
events-joined = Se unió
events-joined-after = Se unió a los { $seconds }
events-left = Se fue
events-session-ended = Sesión terminada: { $reason }
events-pressed-itself = { $name } pulsó { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(seguridad { $sure })
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(pareció un tropiezo)
}
events-pressed-to-show = Mostrado: se pulsó { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(seguridad { $sure })
}
events-pressed-by-someone = Alguien pulsó { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(seguridad { $sure })
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(pareció un tropiezo)
}
events-answered = { $word }: { $answer }{ $other ->
    [none] { "" }
   *[other] { " " }({ $other })
}{ $after ->
    [none] { "" }
   *[other] { " " }a los { $after }
}{ $then ->
    [none] { "" }
   *[other] ; { $name } { $then }
}
events-pressed-then = pulsó { $word }
events-looked = Miró el tablero
events-looked-at = Miró { $word }
events-brushed = Rozó { $word } sin que sonara
events-round = Ronda de { $calls } empezada: { $words }
events-swaps-agreed = Cambios acordados por { $days ->
    [one] { $days } día
   *[other] { $days } días
}, una respuesta de cada { $one_in }: { $words }
events-drawn-give-it = Sorteo para { $word }: dárselo
events-drawn-give-other = Sorteo para { $word }: dar { $other } en su lugar
events-swaps-stopped = Cambios detenidos
events-swaps-stopped-signs = Cambios detenidos por señales de estrés
events-invited = Invitación a { $word } ({ $way }{ $call ->
    [none] { "" }
   *[other] , sorteada, llamada { $call }
}, espera { $wait }): { $result }
events-in-view = a la vista
events-asked-pointed = preguntado, señalado
events-this-or-that = esto o aquello
events-pressed-at = pulsó { $word } a los { $seconds }
events-answered-without-button = respondió sin botón
events-nothing-by-wait = nada al acabar la espera
events-result-left = se fue
events-asked-without-button = Pidió { $word } sin botón{ $how ->
    [none] { "" }
   *[other] { " " }({ $how })
}{ $shown ->
    [no] { "" }
   *[other] ; mostrado
}
events-sign = Señal ({ $level }): { $sign }
events-fed = Comida: { $pieces ->
    [none] { "" }
   *[other] { $pieces } ×{ " " }
}{ $what }, { $kcal }
events-food = comida
events-likes-test-of = Prueba de gustos con { $n ->
    [one] { $n } cosa
   *[other] { $n } cosas
}: { $format }
events-one-at-a-time = de una en una
events-two-at-a-time = de dos en dos
events-all-at-once = todas a la vez, sin reposición
events-free-access = acceso libre
events-offered = Ofrecido { $things }: { $came }
events-chose = eligió { $what }
events-chose-none = no eligió ninguna
events-walked-away = se alejó
events-watched = observado durante { $seconds }
events-check-planned = Comprobación de comprensión planeada: { $trials ->
    [one] { $trials } ensayo
   *[other] { $trials } ensayos
}
events-check-trial = Comprobación, ensayo { $trial } de { $word }: { $came }
events-nothing = nada
events-trial-planned = Prueba de un cambio planeada: { $question } ({ $points ->
    [one] { $points } punto
   *[other] { $points } puntos
})
events-trial-point = Prueba de un cambio, punto { $point }: de hecho { $force }
events-trial-stopped = Prueba de un cambio detenida
events-remark = Nota: { $text }
events-lesson-read = Lección leída: { $lesson }
events-consent-given = Consentimiento dado: { $what }
events-consent-taken-back = Consentimiento retirado: { $what }
events-consent = { $purpose ->
    [coach_figures] { $who ->
        [club] quienes asesoran en un club ven las cifras
       *[other] una persona asesora ve las cifras
    }
    [coach_log] { $who ->
        [club] quienes asesoran en un club leen el registro
       *[other] una persona asesora lee el registro
    }
    [coach_snippets] { $who ->
        [club] quienes asesoran en un club oyen sonidos de pulsaciones
       *[other] una persona asesora oye sonidos de pulsaciones
    }
    [norms] las cifras cuentan en los valores de referencia
   *[other] los registros pueden darse a estudios
}
events-correction = Corrección: { $text }
events-undone = Deshecho{ $because ->
    [none] { "" }
   *[other] : { $because }
}
events-stage-name = { $stage ->
    [show] mostrar
    [invite] invitar
    [converse] conversar
   *[other] preparar
}
events-question = { $kind ->
    [quieter] ¿Ayuda un botón más silencioso?
    [place] ¿Ayuda un lugar nuevo?
    [faster] ¿Ayuda una entrega más rápida?
    [word] ¿Ayuda otra palabra?
   *[other] ¿Ayuda esto: { $label }?
}
events-a-change = un cambio
events-in-force = { $force ->
    [changed] con el cambio
   *[other] como siempre
}
events-proposal = De { $name }: { $what }
events-proposal-answer = { $reply ->
    [accepted] Propuesta de un coach aceptada
    [declined] Propuesta de un coach rechazada
   *[said] Respuesta a un coach
}{ $text ->
    [none] { "" }
   *[other] : { $text }
}
events-own-plan = Plan propio hasta el { $day }: { $lines }
