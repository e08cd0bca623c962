# La página de la mesa de quien asesora. Lo que está en ella lo dice desk.ftl.
desk-page-title = Quién te necesita primero
desk-page-needs = Necesidades
desk-page-week = Qué ha cambiado
desk-page-more-pages = Más páginas
desk-page-week-how = Desde que anotaste que hablasteis; si no, desde hace una semana. Hechos, y cifras que se movieron más de lo que mueve el azar; lo que mueve el azar no es noticia.
desk-page-no-diagnosis = Esta página ordena lo que se anotó. No diagnostica nada: donde un animal puede no estar bien o no estar seguro, dice a quién preguntar.
desk-page-how-many = { $shown } de { $animals ->
    [one] { $animals } animal
   *[other] { $animals } animales
} en { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
}. Quien administra cada hogar puede leer que hoy has mirado.
desk-page-none = Nada te necesita aquí ahora mismo.
desk-page-none-found = Ningún hogar, animal ni palabra se llama así: «{ $find }».
desk-page-no-news = Nada ha cambiado más de lo que cambia por azar.
desk-page-keys = Teclas: j y k van de fila en fila; en la lista también las flechas, Intro abre, a aparta. Con Tab se llega a todo.
desk-page-keys-week = Teclas: j y k van de fila en fila; en la lista también las flechas, Intro abre. Con Tab se llega a todo.
desk-page-keys-anywhere = j y k en toda la página
desk-page-behind = { $behind ->
    [one] { $behind } hogar anotó algo más nuevo de lo que aparece aquí.
   *[other] { $behind } hogares anotaron algo más nuevo de lo que aparece aquí.
}
desk-page-unread = { $unread ->
    [one] { $unread } hogar se está leyendo todavía.
   *[other] { $unread } hogares se están leyendo todavía.
}
desk-page-look-again = Mirar otra vez
desk-page-gone = Este hogar ya no comparte sus cifras contigo. No se guardó nada.
desk-page-was-put = Apartado para { $name }. Vuelve pasados esos días, y enseguida si empeora o empieza de nuevo.
desk-page-filter = Mostrar solo algunas
desk-page-show = Mostrar
desk-page-all-needs = Todas las necesidades
desk-page-kind = { $kind ->
    [safety] Seguridad
    [taken_back] Retirado
    [change] Cambio repentino
    [leaves] Deja sesiones
    [silent] En silencio
    [held] Una palabra frenada
    [ration] Comida
    [ready] Lista para invitar
    [check] Comprobaciones
    [little] Poco anotado
    [outside] Junto a otros hogares
    [answers] Respuestas
    [aside] Apartado
   *[none] Nada necesario
} ({ $count })
desk-page-own-mark = Tu marca
desk-page-any-mark = Cualquiera
desk-page-own-mark-hint = Solo la ves tú. Déjala vacía para quitarla.
desk-page-keep-mark = Guardar marca
desk-page-mark-wrong = usa hasta 40 letras, en una línea
desk-page-find = Hogar, animal o palabra
desk-page-apply = Mostrar estos
desk-page-nothing-needed = Nada necesario ahora mismo.
desk-page-more = { $count ->
    [0] Más que hacer aquí
    [one] { $count } necesidad más, y más que hacer aquí
   *[other] { $count } necesidades más, y más que hacer aquí
}
desk-page-whose-figures = De quién son estas cifras
desk-page-since = Desde el { $day }, de { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-at-least-since = Al menos desde el { $day }, de { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-first-seen = Visto aquí por primera vez el { $day }, de { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-from = De { $n ->
    [one] { $n } registro
   *[other] { $n } registros
}: { $sure }.
desk-page-until = Qué lo cambiaría: { $what }
desk-page-kept = Acordado: { $words ->
    [one] { $words } palabra
   *[other] { $words } palabras
}. Cumplido, tantos de los días hasta ahora: { $days }.
desk-page-kept-not-yet = Acordado: { $words ->
    [one] { $words } palabra
   *[other] { $words } palabras
}. Aún no ha pasado ningún día.
desk-page-kept-no-record = { $days ->
    [one] { $days } día no tiene ningún registro: de él no se puede decir nada.
   *[other] { $days } días no tienen ningún registro: de ellos no se puede decir nada.
}
desk-page-put-aside-days = { $days ->
    [one] Apartar { $days } día
   *[other] Apartar { $days } días
}
desk-page-aside-ends = Lo que empeora, empieza de nuevo o muestra otra causa vuelve enseguida.
desk-page-bring-back = Recuperar
desk-page-safety-stays = lo que toca a la seguridad no se puede apartar
desk-page-unclear = abre la mesa otra vez: esta necesidad no está
desk-page-spoken = Hoy hemos hablado
desk-page-since-spoken = Desde que hablasteis el { $day }
desk-page-since-week = Desde el { $day }
desk-page-same = { $count ->
    [one] { $count } animal sin novedades
   *[other] { $count } animales sin novedades
}
desk-page-same-more = Y { $count } más.
desk-page-presses = Pulsaciones propias
desk-page-joined = Sesiones en las que participó
desk-page-weeks = { $what }, por semana, la más antigua primero: { $counts }
desk-page-key = Cómo leer los gráficos pequeños
desk-page-key-says = Una barra por semana, { $weeks } semanas, la última a la derecha y de otro color. Una barra pálida detrás muestra de cuántas. Los números al lado son la escala; la cifra de arriba es la de los últimos siete días.
desk-page-nameless = una palabra sin ficha
desk-page-nameless-home = Un hogar sin nombre
desk-page-not-begun = Nada empezado todavía
desk-page-not-begun-since = Nada empezado desde { $day }: no hay ningún animal anotado.
desk-page-put-away = Ningún animal participa ahora
desk-page-put-away-all = Allí hay animales anotados; ninguno sigue participando.
desk-page-pages = Páginas
desk-page-page = Página { $at } de { $pages }
desk-page-before = Anterior
desk-page-after = Siguiente
desk-page-practice = Para practicar: { $read } de { $of } lecciones mostradas como leídas, ensayos compartidos: { $shared }
desk-page-in-seven = { $count } en 7 días
desk-page-days-written = Días anotados
desk-page-of = { $part } de { $whole }
desk-page-of-within = { $part } de { $whole } ({ $low } a { $high })
desk-page-of-none = ninguna
desk-page-answered = { $homes ->
    [one] { $homes } hogar ha respondido desde que miraste allí por última vez
   *[other] { $homes } hogares han respondido desde que miraste allí por última vez
}
desk-page-answer = { $reply ->
    [accepted] Aceptado: { $what }, { $day }
    [declined] Rechazado: { $what }, { $day }
    [shared] Compartido: { $what }, { $day }
   *[said] Respondido: { $what }, { $day }
}
desk-page-answer-what = { $kind ->
    [plan] plan para { $words }
    [stage] etapa de { $words }
    [word] una palabra nueva
    [likes] prueba de gustos
    [check] comprobación de { $words }
    [a_note] una nota
    [a_question] una pregunta
    [note] tu nota
    [question] tu pregunta
    [meeting] reunión
    [change] cambio para probar
    [programme] programa
    [practice] algo para practicar
    [hand_over] traspaso
   *[cover] sustitución
}
desk-page-answers-more = { $count ->
    [one] { $count } respuesta más
   *[other] { $count } respuestas más
}
desk-page-changes-more = { $count ->
    [one] { $count } cambio más
   *[other] { $count } cambios más
}
desk-page-changes-folded = { $count ->
    [one] { $count } cambio
   *[other] { $count } cambios
}
desk-page-stood-in = { $name } en tu lugar: { $what }, { $day }
desk-page-stood-in-more = { $count ->
    [one] { $count } cosa más escrita en tu lugar
   *[other] { $count } cosas más escritas en tu lugar
}
