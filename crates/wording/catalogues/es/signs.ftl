signs-see-walks-up = se acerca cuando empiezas a mostrar
signs-see-ears-forward = orejas hacia delante o cabeza ladeada ante una palabra
signs-see-waits = espera junto al tablero y mira a la persona
signs-see-comes-at-sound = viene de otra habitación al oír el sonido
signs-see-brings-thing = trae la cosa que pide
signs-see-loose-body = cuerpo suelto, cola relajada
signs-see-lip-lick = se lame los labios o bosteza sin motivo aparente
signs-see-turns-away = aparta la cabeza o el cuerpo
signs-see-sniffs-floor = olfatea el suelo, se rasca, se sacude
signs-see-lifts-paw = levanta una pata, orejas hacia atrás
signs-see-panting = jadea sin calor ni ejercicio
signs-see-eye-whites = se le ve el blanco de los ojos
signs-see-tail-tucked = cola entre las patas, cuerpo agachado
signs-see-freezes = se queda rígido, mira fijamente
signs-see-avoids-board = se esconde o no quiere acercarse al tablero
signs-see-growl = gruñido
signs-see-bite = tarascada o mordisco
signs-see-guards = protege comida, una cosa o el botón
signs-see-swallowed = tragó algo que no es comida
signs-see-approaches-tail-up = se acerca con la cola en alto
signs-see-rubs = se frota contra la persona o el tablero
signs-see-slow-blink = parpadea despacio, orejas hacia delante
signs-see-tail-tip = mueve a tirones la punta de la cola
signs-see-ears-sideways = orejas giradas hacia los lados
signs-see-skin-ripples = la piel del lomo se estremece, lametón rápido en la nariz
signs-see-tail-lashes = azota con la cola
signs-see-ears-flat = orejas pegadas a la cabeza
signs-see-crouches = se agazapa, pupilas dilatadas
signs-see-hides = se esconde
signs-see-hiss = bufido o zarpazo
signs-see-leans-in = se inclina hacia ti, plumas relajadas
signs-see-steps-unasked = va al tablero sin que se lo pidan
signs-see-feathers-tight = plumas pegadas al cuerpo, se aparta
signs-see-pupils-pin = las pupilas se contraen y dilatan, nuca erizada y cuerpo rígido y erguido
signs-see-lunges = se abalanza
signs-see-nudges = se acerca, empuja con el hocico
signs-see-flops = se tumba de lado o se acicala cerca
signs-see-freezes-flat = se queda quieto y pegado al suelo, orejas hacia atrás
signs-see-thumps = golpea el suelo con la pata
signs-see-runs-to-hide = corre a esconderse
signs-act-carry-on = sigue
signs-act-pause-let-leave = haz una pausa, deja espacio, deja que se vaya
signs-act-end-no-lure = termina la sesión; no intentes atraerlo de vuelta
signs-act-end-distance-ask = termina la sesión, guarda distancia; acude a un veterinario y a un profesional cualificado del comportamiento
signs-act-end-take-nothing-ask = termina la sesión, guarda distancia, no le quites nada; acude a un veterinario y a un profesional cualificado del comportamiento
signs-act-call-vet = llama enseguida a un veterinario; no provoques el vómito si no te lo indican
signs-act-pause = haz una pausa, deja espacio
signs-act-end = termina la sesión
signs-of-any = apartarse, esconderse, quedarse inmóvil, amenazar
signs-whose = { $species ->
    [dog] Perro
    [cat] Gato
    [parrot] Loro
    [rabbit] Conejo
   *[other] Otro animal
}
signs-levels = { $whose }: leves: { $mild }. Fuertes: { $strong }.
signs-only-strong = { $whose }: no se conoce ninguna señal leve; la primera puede ser ya fuerte: { $strong }.
