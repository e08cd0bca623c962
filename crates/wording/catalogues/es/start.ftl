start-title = Cuéntanos quién vive aquí
start-all-stays = Todo se puede cambiar después. Todo se queda en este equipo.
start-on-server = Puedes cambiarlo todo después. Se guarda en este servidor. Solo lo ven las personas de tu hogar hasta que lo compartas. Quien lleva la máquina del servidor podría leer su disco.
start-you = Tu nombre
start-you-hint = como te llaman en casa
start-animal = El nombre de tu animal
start-species = ¿Qué animal es?
start-species-name = { $species ->
    [dog] perro
    [cat] gato
    [parrot] loro
    [rabbit] conejo
   *[other] otro animal
}
start-species-missing = falta; elige una
start-others = ¿Quién más vive aquí?
start-others-hint = nombres separados por comas; déjalo vacío si vives sin nadie más
start-zone = Dónde vives (fija la medianoche)
start-home = Cómo llamas a tu hogar
start-home-hint = solo si quieres, por ejemplo: el hogar junto al parque
start-home-of = El hogar de { $name }
start-zone-field = Zona horaria
start-bring = ¿Llevabas ya un cuaderno o un diario? { $link }
start-bring-link = Trae un archivo
start-no-vet = Sayso ayuda a observar y a contar. No sustituye a un veterinario ni a un profesional cualificado del comportamiento.
start-linked = ¿Tu hogar ya está en un servidor? { $link }
start-linked-link = Enlaza este cuaderno con él
start-notebook = ¿Ya hay un cuaderno en casa? Deja esta página vacía. { $link }
start-notebook-link = Enlaza el cuaderno
start-before = ¿Aún no hay botones? { $lessons } y { $rehearse }: nada de ello se anota.
start-before-read = Lee las lecciones
start-before-rehearse = ensaya con un animal simulado
