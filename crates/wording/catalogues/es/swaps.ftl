swaps-title = Cambios acordados
swaps-earlier = Periodos anteriores
swaps-choice = { $lead } Dar otra cosa a propósito puede decepcionar. Déjalo si el animal es nuevo, está enfermo, ansioso o protege cosas. Para ante señales de estrés ({ $signs }); una señal fuerte lo para al instante.
swaps-choice-lead = Tú decides, por el bien de { $name }.
swaps-thing-food = { $thing } – comida
swaps-why = ¿Pulsa { $name } por la cosa, o vale cualquier cosa buena? Solo hay un modo de saberlo: de vez en cuando llega otra, por azar, y vemos si { $name } sigue pulsando.
swaps-how = Respondes como siempre: cuando vas a dar algo, el tablero dice qué. Una vez de cada ocho es la cosa de otra palabra. Cuenta lo que { $name } hace después, no lo que tú pienses.
swaps-not-now = Ahora no: se anotaron señales fuertes de estrés. Da espacio a { $name }; acordadlo en un día tranquilo.
swaps-too-few-words = { $words ->
    [0] Los cambios necesitan dos palabras o más, cada una con su propia cosa; { $name } no tiene ninguna.
   *[other] Los cambios necesitan dos palabras o más, cada una con su propia cosa; { $name } tiene { $words }.
}
swaps-to-words = A las palabras
swaps-field-words = Palabras que participan
swaps-field-words-hint = La comida no está marcada: nunca con comida que { $name } espera con señales de estrés. Las palabras que terminan una sesión no participan.
swaps-field-days = Días
swaps-field-days-hint = lo habitual son 28; puedes parar en cualquier momento
swaps-field-one-in = Una respuesta de cada tantas
swaps-field-one-in-hint = lo habitual es 8; 4, lo más frecuente
swaps-agreed = Acordado
swaps-agreed-wrong = Todos deben estar de acuerdo: quien responde da lo que se sortea, o detiene los cambios.
swaps-agreed-everyone = Todos los que responden a { $name } están de acuerdo
swaps-begin = Empezar los cambios
swaps-running = { $lead }: { $words }.
swaps-running-lead = Hay cambios en marcha
swaps-drawn = Respuestas sorteadas
swaps-swapped = De ellas, otra cosa
swaps-as-drawn = Dadas como se sorteó
swaps-of = { $some } de { $all }
swaps-against = Un tramo de cuatro días con una respuesta no dada como se sorteó puede contar en contra, nunca a favor.
swaps-rate = Una respuesta de cada { $number }, desde el { $day }. Días que quedan: { $days }.
swaps-stop-signs = Parar: señales de estrés
swaps-stop-home = Parar: ya no lo queremos
swaps-answer-how = Responde en el tablero en «Responder». No dar nada siempre está bien y no sortea nada. Parar también está bien; lo sorteado queda.
swaps-to-board = Al tablero
swaps-dates = { $from } a { $to }
swaps-past = { $drawn ->
    [one] { $dates }: { $words }. Una respuesta sorteada, otra cosa { $swapped }, dadas como se sorteó { $given }.
   *[other] { $dates }: { $words }. { $drawn } respuestas sorteadas, otra cosa { $swapped }, dadas como se sorteó { $given }.
}
swaps-stopped = Detenido.
swaps-stopped-signs = Detenido por señales de estrés.
