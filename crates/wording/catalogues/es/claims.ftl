claims-asking = pedir la cosa
claims-hearing = conocer la palabra hablada
claims-nothing-asking = aún no se puede decir nada: no se sorteó nada; una ronda de invitaciones sorteadas por el cuaderno podría mostrarlo
claims-nothing-hearing = aún no se puede decir nada: no se empezó ninguna comprobación; una comprobación de elegir cosas podría mostrarlo
claims-chance = lo sorteado hasta ahora también saldría por azar ({ $n ->
    [one] { $n } ensayo sorteado
   *[other] { $n } ensayos sorteados
}); eso no habla a favor ni en contra
claims-differs = pulsar va con lo que se pidió, más de lo que permite el azar ({ $n } pulsaciones en rondas sorteadas{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); hábito, gusto o pistas aún pueden explicarlo
claims-open-asking = pide la cosa con los botones cambiados bajo tapas más de lo que permite el azar ({ $n ->
    [one] { $n } ensayo sorteado
   *[other] { $n } ensayos sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); alguien sabía la respuesta, así que las pistas aún pueden explicarlo
claims-open-hearing = elige la cosa de la palabra más de lo que permite el azar ({ $n ->
    [one] { $n } ensayo sorteado
   *[other] { $n } ensayos sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); alguien sabía la respuesta, así que las pistas aún pueden explicarlo
claims-blind-asking = su pedir resiste una comprobación ciega: el botón correcto con los botones cambiados bajo tapas y nadie cerca que lo supiera ({ $n ->
    [one] { $n } ensayo sorteado
   *[other] { $n } ensayos sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
})
claims-blind-hearing = su conocimiento de la palabra resiste una comprobación ciega: elige la cosa sin nadie cerca que lo supiera ({ $n ->
    [one] { $n } ensayo sorteado
   *[other] { $n } ensayos sorteados
}{ $since ->
    [none] { "" }
   *[other] , desde { $since }
})
claims-lapsed = { $said }. Se afirmó más hasta { $until }, cuando se añadieron palabras o comprobaciones: todas se juzgan juntas, y desde entonces se exige más a cada una
claims-animal-nothing = aún no se puede decir nada de todas las palabras juntas; un tiempo de cambios acordados podría mostrarlo
claims-animal-chance = en todas las palabras, lo que vino tras los cambios también vendría por azar o hábito ({ $n } respuestas sorteadas); eso no habla a favor ni en contra
claims-animal-holds = en todas sus palabras juntas vuelve a pulsar donde vino otra cosa de la pedida; solo por gusto, frecuencia, hábitos de lugar y reloj sería improbable ({ $n } respuestas sorteadas{ $since ->
    [none] { "" }
   *[other] , desde { $since }
}); las pistas aún podrían explicarlo
claims-test = { $what }: evidencia { $now } ahora, { $most } como máximo; se dice desde { $bar } (n = { $n })
claims-test-rounds = rondas de invitaciones sorteadas
claims-test-open = { $side ->
    [asking] pulsar bajo tapas
   *[other] elegir cosas
}, comprobaciones abiertas juntas
claims-test-blind = { $side ->
    [asking] pulsar bajo tapas
   *[other] elegir cosas
}, comprobaciones ciegas juntas
claims-times = { $times } a 1
claims-times-most = más de { $times } a 1
claims-times-none = ninguna
claims-rival = { $rival ->
    [cueing] pistas: una persona que sabe la respuesta la delata
    [place] hábito de lugar: va a un lugar, no a una palabra
    [frequency] frecuencia: algunas palabras simplemente se pulsan más
    [liking] gusto: algunas cosas simplemente gustan más
    [clock] reloj y ráfagas: lo que se ofrece y se da sigue la hora, y también lo que se pulsa
   *[other] ver lo deseado: las personas ven lo que esperan
}
claims-nothing-to-explain = No se afirma nada, así que no hay nada que explicar.
claims-ruled-out = { $why ->
    [blind] improbable: en comprobaciones ciegas nadie cerca sabía la respuesta; queda una pista en la que nadie pensó
    [places] improbable: los lugares se sortearon; queda la suerte, tan pequeña como dicen las cifras
    [frequencies] improbable: la comparación mantiene cuánto se pulsa cada palabra; queda la suerte, tan pequeña como dicen las cifras
    [thing] improbable: palabra y cosa se compararon en cruz, y la cosa se sorteó; queda una pista
    [drawn] improbable: sorteó el cuaderno y nadie eligió; queda un momento aplazado u omitido
    [next] improbable: contó la pulsación siguiente, que nadie puntúa; queda una pulsación que no se vio
    [two] improbable: dos personas puntuaron por separado y coinciden; queda lo que ambas esperaban
   *[other] improbable: quien puntuó no podía saberlo; queda una señal de ello en la grabación
}
claims-still-open = abierto; diría más { $remedy ->
    [blind] una comprobación en la que la persona con el animal no sabe la respuesta
    [places] una comprobación con lugares sorteados
    [thing] un tiempo de cambios acordados o una comprobación
   *[other] una segunda persona que puntúe los mismos registros por separado
}
