# Un cuaderno en casa enlazado con su hogar en un servidor: la página del cuaderno y las del servidor.
linked-title = Enlazado con un servidor
linked-what = Un enlace mantiene iguales este cuaderno y su hogar en un servidor. Lo que escribes aquí va allí. Lo que se escribe allí viene aquí, como las notas de un coach.
linked-what-offline = Sin red, este cuaderno funciona como siempre. Lo que espera va cuando se vuelve a llegar al servidor.
linked-step-code = En el servidor, abre «Quién puede ver esto», luego «Cuadernos en casa», y haz un código.
linked-step-open = En el cuaderno de casa, abre Personas y luego «Enlazado con un servidor».
linked-step-paste = Pega allí todo el texto con el código.
linked-step-yes = Mira qué va adónde y di que sí. Antes no se envía nada de lo escrito en el cuaderno; el servidor solo sabe cómo se llama el hogar.
linked-link = Texto del servidor
linked-link-hint = la dirección con el código, como https://sayso.example/linked#…
linked-begin = Enlazar
linked-with = Enlazado con «{ $home }» en { $url }.
linked-unnamed = un hogar todavía sin nombre
linked-not-yet = Todavía no se ha enviado nada de lo escrito aquí; el servidor conoce este cuaderno por el nombre del hogar. Di abajo qué puede ir.
linked-not-yet-command = Todavía no se ha enviado nada. Para decir que sí: sayso link --yes, con --pictures y --recordings si también pueden ir.
linked-goes = Qué va allí
linked-goes-all = Todo lo escrito en este cuaderno va allí, también lo de antes: registro, fichas, raciones, comentarios.
linked-goes-who = Quienes llevan el hogar allí y sus miembros lo ven. Quién más lo ve se decide solo allí, con un consentimiento.
linked-coaches = Coaches que ven algo de ello allí ahora: { $names }.
linked-no-coach = Ningún coach ve nada de ello allí ahora.
linked-pictures = También las imágenes
linked-recordings = También las grabaciones de los botones
linked-sound-stays = El sonido de alrededor de las pulsaciones nunca sale de esta máquina.
linked-yes = Sí, enviarlo allí
linked-agreed = Coincidieron por última vez: { $when }.
linked-never-agreed = Los dos todavía no han coincidido.
linked-waits = { $count ->
    [0] Nada espera a ser enviado.
    [one] Un registro espera a ser enviado.
   *[other] { $count } registros esperan a ser enviados.
}
linked-moved = Registros enviados: { $sent }, recibidos: { $received }. Imágenes y grabaciones: { $media }.
linked-hinders = { $kind ->
    [away] No se llega al servidor. Se intenta de nuevo por sí solo.
    [here] Este cuaderno no se puede leer o escribir ahora. Se intenta de nuevo por sí solo.
   *[strange] El servidor respondió de otro modo que el esperado. Se intenta de nuevo por sí solo.
}
linked-unreached = { $kind ->
    [away] No se llega al servidor. ¿Está encendido, y es la dirección que muestra, con http:// o https:// delante?
    [here] Este cuaderno no se puede leer o escribir ahora.
   *[strange] Lo que responde allí no es un servidor de este programa. Comprueba la dirección: es la que muestra el servidor.
}
linked-stopped = { $why ->
    [left] El hogar dejó ese servidor y se borró allí. Ya no se envía nada, y aquí no se pierde nada.
   *[ended] El servidor ya no lo acepta: el enlace se terminó allí, o quien lo hizo ya no lleva el hogar. Aquí no se pierde nada.
}
linked-again = Intentar de nuevo desde el principio
linked-held-title = No están en el hogar del servidor
linked-lacks-title = No están en este cuaderno
linked-held = { $why ->
    [differs] { $count ->
        [one] { $count } registro es distinto en cada lado; cada uno guarda el suyo
       *[other] { $count } registros son distintos en cada lado; cada uno guarda los suyos
    }
    [consent] { $count ->
        [one] { $count } registro trata de consentimiento; ese se da y se retira en el propio servidor
       *[other] { $count } registros tratan de consentimiento; ese se da y se retira en el propio servidor
    }
    [coach] { $count ->
        [one] { $count } registro está en nombre de un coach o de una cuenta; esos se escriben en el propio servidor
       *[other] { $count } registros están en nombre de un coach o de una cuenta; esos se escriben en el propio servidor
    }
    [lacks] { $count ->
        [one] { $count } registro trata de otro que no está allí
       *[other] { $count } registros tratan de otros que no están allí
    }
    [ahead] { $count ->
        [one] { $count } registro tiene una fecha más de un día por delante; va cuando llegue ese día
       *[other] { $count } registros tienen una fecha más de un día por delante; van cuando llegue ese día
    }
    [unread] { $count ->
        [one] { $count } registro es de un tipo que el otro lado no conoce; actualiza el más antiguo de los dos
       *[other] { $count } registros son de tipos que el otro lado no conoce; actualiza el más antiguo de los dos
    }
    [other_home] { $count ->
        [one] { $count } registro es de otro hogar
       *[other] { $count } registros son de otro hogar
    }
   *[unsound] { $count ->
        [one] { $count } registro no entra según las reglas del otro lado
       *[other] { $count } registros no entran según las reglas del otro lado
    }
}
linked-which = Cuáles son
linked-unlinking = Desenlazar
linked-unlinking-what = Ya no se envía ni se trae nada. Lo que cada lado tiene, lo guarda.
linked-unlink = Desenlazar este cuaderno
linked-ended = Este cuaderno está desenlazado. Lo que hay aquí se queda aquí, y lo del servidor se queda allí.
linked-not-told = No se pudo avisar al servidor. Termina el enlace también allí: «Quién puede ver esto», luego «Cuadernos en casa».
linked-not-linked = Este cuaderno no está enlazado.
linked-no-address = «{ $text }» no es lo que muestra un servidor. Pégalo entero, desde https:// hasta el final del código.
linked-unsafe-address = { $url } no es https, así que otros podrían leer lo que se envía. Pregunta a quien lleva el servidor.
linked-damaged = { $file } no contiene un enlace ({ $why }). Desenlaza aquí y enlaza de nuevo; en el cuaderno no se pierde nada.
linked-already = Este cuaderno ya está enlazado, con { $url }. Desenlázalo primero.
linked-bad-code = Este código no vale, o ya no. Haz uno nuevo en el servidor.
linked-other-home = El hogar del servidor contiene otros registros que este cuaderno, y dos hogares no se mezclan. Elige aquel al que se mudó este cuaderno, o pide uno nuevo a quien lleva el servidor. En él se puede consentir ya; deja vacío lo demás hasta enlazar el cuaderno.
linked-too-often = Demasiados intentos. Espera un cuarto de hora.
linked-notebooks = Cuadernos en casa
linked-notebooks-what = Un cuaderno que alguien lleva en una máquina en casa se puede enlazar con este hogar. Entonces contiene todo lo que hay aquí, y trae lo que se escribe en él.
linked-no-notebook = Ningún cuaderno está enlazado.
linked-how-many = { $count ->
    [0] Ningún cuaderno en casa está enlazado.
    [one] Un cuaderno en casa está enlazado: contiene todo lo escrito aquí.
   *[other] { $count } cuadernos en casa están enlazados: cada uno contiene todo lo escrito aquí.
}
linked-see = Ver y terminar enlaces
linked-nameless = Un cuaderno sin nombre
linked-times = Código usado: { $linked }. Última noticia: { $heard }. Lo que se escribe en casa llega cuando alguien allí haya dicho que sí.
linked-make-code = Hacer un código
linked-code-what = El código enlaza un cuaderno, una vez, durante una hora.
linked-code-sees = El cuaderno lee todo lo de este hogar. Lo que viene de él no abre este hogar a nadie: el consentimiento se da solo aquí.
linked-code-holds = En este hogar ya hay registros. Solo se le puede enlazar un cuaderno vacío, o el que se mudó aquí.
linked-code-whoever = Quien tenga el código puede leer todo lo de este hogar. No se lo des a nadie más que a ti.
linked-code = El código
linked-code-once = Llévalo ahora al cuaderno. No se muestra otra vez.
linked-qr = El texto con el código, como código QR
linked-shown = Esto va en un cuaderno
linked-shown-what = Este texto enlaza un cuaderno en casa con un hogar de este servidor. Abrirlo no hace nada por sí solo.
linked-was-with = Estuvo enlazado con «{ $home }» en { $url }.
linked-after-stopped = Desenlázalo aquí. Para seguir, haz un código nuevo en el servidor y enlaza de nuevo.
linked-silent = Algo espera, y el servidor no ha respondido desde { $when }.
linked-as-said = Lo que se dijo
linked-coaches-unknown = Todavía no se sabe qué coaches ven algo de ello allí: el servidor no lo ha dicho.
linked-comes = { $count ->
    [one] Un registro que está allí viene aquí.
   *[other] { $count } registros que están allí vienen aquí.
}
linked-never-went = { $count ->
    [one] Un registro de este cuaderno nunca llegó allí.
   *[other] { $count } registros de este cuaderno nunca llegaron allí.
}
