act-give-space = Por ahora ninguna sesión. Deja espacio y distancia a { $name } y no intentes que vuelva.
act-pause-sessions = Deja de mostrar e invitar unos días. Sigue respondiendo a las pulsaciones y no atraigas a { $name }.
act-no-more-today = Hoy no más sesiones. Deja espacio a { $name } y sigue respondiendo a las pulsaciones.
act-ask-about-threats = Habla con un veterinario y con un profesional cualificado del comportamiento. Haz sesiones cortas y para a la primera señal de tensión.
act-ask-about-guarding = No le quites nada a { $name }. Habla con un veterinario y con un profesional cualificado del comportamiento.
act-ask-about-swallowing = { $today ->
    [yes] Llama ahora mismo a un veterinario.
   *[other] Consulta a un veterinario y deja las cosas pequeñas fuera de su alcance.
}
act-shorten-sessions = Haz las sesiones mucho más cortas y termina antes de que { $name } quiera irse. Prueba otra recompensa.
act-ease-sessions = Cambia algo antes de la próxima sesión: un momento o lugar más tranquilo, menos palabras, más distancia.
act-look-at-health = Mira primero a { $name }, no el entrenamiento: comer, beber, hacer sus necesidades, dormir, moverse.
act-stop-food = Hoy no más recompensas de comida. Usa juego, caricias o exploración.
act-list-rewards = ¿Qué le puede gustar a { $name }? Añade al menos dos cosas: comida, juego, caricias, exploración, descanso.
act-test-likes = Haz una prueba de gustos.
act-choose-first-words = Elige dos o tres primeras palabras.
act-set-allowance = Fija cuánta comida puede tomar { $name } al día.
act-fill-card = Completa la ficha de «{ $word }»: { $lacks }.
act-lack-reward = qué trae
act-lack-answer = cómo responden todos
act-lack-not-now = qué decir para «ahora no»
act-check-batteries = Revisa la pila de { $words }: una reproducción cada vez más lenta suele ser una pila gastada.
act-check-silent = Revisa la pila y el botón de { $words } donde ningún animal lo oiga. Déjalo si ahora no hay uso para la palabra.
act-retest-likes = Haz una prueba de gustos corta antes de las próximas sesiones.
act-mend-hard-to-make-out = Haz sonar el botón de «{ $word }» desde otra habitación. Grábalo otra vez, claro y suave, si no reconoces la palabra enseguida.
act-mend-not-wanted = Prueba los gustos otra vez y cambia lo que trae «{ $word }», o muéstrala cuando { $name } lo quiera.
act-mend-too-little = Muestra «{ $word }» más a menudo, un poco cada día.
act-mend-too-late = Da más rápido con «{ $word }»: ten la cosa junto al tablero, para que llegue en dos segundos.
act-mend-avoided = Deja en paz el botón de «{ $word }». Muévelo o prueba uno más suave, y espera a que { $name } se acerque.
act-mend-time-or-place = Haz las sesiones a las horas en que { $name } participa, en un lugar más tranquilo.
act-mend-health = Ve a un veterinario antes de seguir entrenando.
act-mend-sounds-alike = Graba otra palabra para «{ $word }», una que suene distinta.
act-mend-people-differ = Acordad una respuesta a «{ $word }» y un plazo. Poned las reglas de la casa donde todos las vean.
act-step-back = { $to ->
    [invite] Vuelve a invitar a «{ $word }». No se pierde nada.
   *[other] Vuelve a mostrar «{ $word }». No se pierde nada.
}
act-begin-inviting = Empieza a invitar a «{ $word }»: ofrece, espera { $seconds } s, luego muéstrala y dale la cosa.
act-invite = Invita a «{ $word }» una o dos veces entre las demostraciones. Pase lo que pase, muéstrala y dale la cosa.
act-show = Muestra «{ $word }»: pulsa, dilo, dalo.
act-show-at-end = Muestra «{ $word }» al final de cada sesión.
act-leave-to-animal = «{ $word }» está lista para conversar: déjala a { $name } y responde a cada pulsación.
act-answer = Responde a cada pulsación de «{ $word }», también con «ahora no».
act-signal-times = { $name } pide «{ $word }» más de lo que puedes dar. Pon una señal que todos vean: durante { $available } s responde a cada pulsación con la cosa, luego durante { $unavailable } s di «ahora no» y ofrece otra cosa, y otra vez.
act-rest = Hoy no enseñes nada. Responde a las pulsaciones de «{ $word }».
act-plan-check = Planea una comprobación de { $words }.
act-go-on-with-check = Sigue con la comprobación: van { $done } de { $of } ensayos.
act-quoted = «{ $word }»

act-change-calm-days = { $days } días con un solo día de señales fuertes como mucho.
act-change-calm-start = Un comienzo tranquilo mañana: { $name } viene al tablero por su cuenta.
act-change-days-without = { $days } días sin esa señal.
act-change-fewer-left = { $name } abandona menos de la mitad de las próximas { $sessions } sesiones.
act-change-fewer-mild = Una semana con señales leves en claramente menos del { $share } de las sesiones.
act-change-usual-presses = Pulsaciones como de costumbre, o una causa clara: visitas, un viaje, una pila agotada, nadie que anote.
act-change-next-day = La medianoche, o una cantidad que fije un veterinario.
act-change-rewards-listed = Dos o más recompensas en la lista.
act-change-test-recorded = Una prueba de gustos anotada.
act-change-word-made = Una ficha de palabra hecha.
act-change-allowance-set = Una cantidad escrita, o lo que falta completado.
act-change-card-filled = La ficha completada.
act-change-ends-no-session = La ficha ya no dice que termina la sesión.
act-change-usual-speed = Pulsaciones a la velocidad de siempre, por ejemplo tras cambiar la pila.
act-change-heard-again = Una pulsación que se oiga, o su nueva grabación registrada.
act-change-test-agrees = Una prueba cuyo orden coincida con la anterior.
act-change-more-presses = Claramente más pulsaciones al invitar, { $days } días después del cambio.
act-change-more-when-invited = { $name } pulsa más a menudo en las invitaciones en que quiere la cosa: ya no claramente por debajo de { $share }.
act-change-lasts-again = Dos semanas o más después de dominarla, las pulsaciones y los aciertos ya no están claramente por debajo de { $share }.
act-change-fades = Dos semanas o más después de dominarla, las pulsaciones o los aciertos caen claramente por debajo de { $share }.
act-change-longer-or-back = Esperas más largas cuando en dos sesiones seguidas haya pocas pulsaciones durante «ahora no». Volver a responder a cada pulsación ante una señal fuerte, si se va, o si las pulsaciones no bajan en tres sesiones.
act-change-checked = La comprobación planeada o hecha.

act-caution-ask-both = Consulta a un veterinario y a un profesional cualificado del comportamiento, y cumple la ley local sobre animales que muerden.
act-caution-ask-if-back = Si vuelven esas señales, o vienen sin causa visible, consulta a un veterinario y a un profesional cualificado del comportamiento.
act-caution-call-vet-now = Llama enseguida a un veterinario, sea lo que sea lo tragado. No hagas vomitar a { $name } si no te lo dicen.
act-caution-take-nothing = No le quites nada por la fuerza y mantén lejos a los niños.
act-caution-leaving-is-answer = Irse es una respuesta. No llames ni atraigas a { $name } de vuelta al tablero.
act-caution-single-sign = Una sola señal dice poco. Mira todo el cuerpo y la situación.
act-caution-may-be-illness = Un cambio repentino puede ser enfermedad, no entrenamiento: ve a un veterinario.
act-caution-individuals-differ = Animales del mismo peso pueden necesitar hasta tres veces más o menos. Observa el cuerpo y consulta a un veterinario.
act-caution-battery = Cambia las pilas donde no llegue ningún animal ni niño, guarda igual las viejas y atornilla la tapa. Una pila tragada o mordida es una emergencia. Un animal: llama enseguida a un veterinario. Un niño que tragó una pila de botón o se la metió en la nariz o el oído: ve a urgencias de inmediato. No hagas vomitar a nadie si no te lo dicen.
act-caution-not-pressing = No pulsar no dice nada de lo que { $name } entiende. Si algo cambió de golpe en { $name }, ve primero a un veterinario.
act-caution-comes-and-goes = { $name } puede venir e irse. Para mientras { $name } aún quiera más.
act-caution-burst-may-come = Cuando cambian las respuestas, puede venir antes una ráfaga de pulsaciones: en el 24 % de los casos en personas, 12 % si se ofrecía otra cosa (Lerman & Iwata 1995).
act-caution-never-for-needs = Nunca con agua, necesidades, dolor o miedo: a eso se responde. Si { $name } protege cosas, gruñe o muerde, para y consulta a un profesional cualificado del comportamiento.

act-hint-give-faster = Da más rápido: ahora tras { $seconds }, intenta { $aim }.
act-hint-show-only = Muéstrala y dale la cosa. No esperes nada.
act-hint-wait-then-show = Ofrece, espera { $seconds } s, luego muéstrala y dale la cosa, pase lo que pase.
act-hint-when-wanted = Muéstrala cuando { $name } lo quiera.
act-hint-little-every-day = Un poco cada día.
act-hint-answer-alike = Responded todos igual y enseguida.
act-hint-good-hours = A las horas en que { $name } participa, en un lugar tranquilo.
act-hint-let-it-come = Espera a que { $name } venga al botón.
act-hint-at-the-end = Lo último de la sesión.
act-hint-answer-every = Responde a cada pulsación, también con «ahora no».
