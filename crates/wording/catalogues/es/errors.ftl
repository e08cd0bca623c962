errors-too-large = Es demasiado grande; aquí caben como mucho { $bytes } bytes de una vez. Envía menos de una vez.
errors-not-paired = Este dispositivo no está vinculado con el cuaderno. Abre /pair y escribe el código que aparece donde se inició Sayso.
errors-too-many = { $seconds ->
    [one] Demasiados intentos. Espera un segundo y prueba de nuevo.
   *[other] Demasiados intentos. Espera { $seconds } segundos y prueba de nuevo.
}
errors-no-home = Aquí no hay todavía ningún hogar. Abre /start para crear uno.
errors-disk-full = El disco del cuaderno está lleno: haz sitio en el equipo donde está. Los toques están a salvo en el teléfono hasta entonces; lo que envió un formulario no se guardó.
errors-internal = Algo ha fallado aquí; no se guardó nada de lo que enviaste. Qué fue consta en el registro, donde se inició Sayso.
errors-no-such-page = No hay nada en esta dirección.
errors-address-broken = En esta dirección falta algo o algo no se puede leer. Vuelve atrás y sigue el enlace otra vez.
errors-no-such-file = Aquí no hay tal archivo.
errors-no-such-animal = Este cuaderno no conoce a ese animal.
errors-no-such-lesson = No hay ninguna lección así.
errors-not-that-method = Esta dirección no admite ese tipo de petición.
errors-too-large-here = Es demasiado grande para esta dirección; envía menos de una vez.
errors-title-not-here = No está aquí
errors-title-check = Revisa lo que escribiste
errors-title-forbidden = No se permite desde aquí
errors-title-wait = Espera un poco
errors-title-full = El disco está lleno
errors-title-unavailable = Ahora mismo no
errors-title-failed = No ha funcionado
errors-nothing-kept = No se guardó nada. Vuelve atrás, cambia esto y envíalo de nuevo:
errors-to-start = Al inicio
errors-too-many-events = En una petición caben como mucho { $most } registros, no { $got }.
errors-listing-range = «after» debe ser 0 o más, y «limit» de 1 a { $most }.
errors-no-array = El cuerpo debe ser una lista JSON de registros. No se puede leer desde la línea { $line }, columna { $column }.
errors-only-https = Aquí no se toma ni se dice nada por HTTP sin cifrar. Abre https://{ $host }/.
errors-other-site = Esto vino de la página de otro sitio y no se aceptó. Usa la página de Sayso.
errors-other-name = Sayso no responde a este nombre. Ábrelo por la dirección de este equipo o por su nombre en la red de casa.
errors-this-machine-only = Aquí Sayso responde solo en este equipo. Abre http://localhost o http://127.0.0.1 con su puerto.
errors-no-sound-taken = Este cuaderno no acepta sonido de las páginas: quien lo mantiene lo ha desactivado. Usa un navegador que pueda escuchar por sí mismo.
errors-no-such = Este cuaderno no conoce { $what ->
    [check] tal comprobación
    [trial] tal ensayo
    [reward] tal recompensa
    [press] tal pulsación
    [test] tal prueba
    [word] tal palabra
    [rule] tal regla
    [role] tal papel
    [invitation] tal invitación
    [session] tal sesión
   *[person] a tal persona
}.
errors-body-broke = El envío se cortó a medias. Envíalo otra vez.
errors-request-broken = No se puede leer la petición ({ $why }). Envíala otra vez.
