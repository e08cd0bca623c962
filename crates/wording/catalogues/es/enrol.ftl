enrol-only-the-button = Solo se reconoce el sonido del propio botón. Una voz que dice la palabra de nuevo, tampoco la tuya, no cuenta como pulsación: graba el botón mientras suena.
enrol-proof = Comprobar
enrol-proof-how = Pulsa «{ $says }» una vez más, con este dispositivo donde vaya a escuchar. La página dice si se oyó y, si no, por qué. Nada se anota como pulsación.
enrol-proof-care = Púlsalo donde { $name } no lo oiga: una palabra que suena y no trae nada enseña que no significa nada.
enrol-no-script = Grabar y comprobar necesitan JavaScript. Un archivo de sonido se puede guardar sin él.
enrol-no-sound-taken = Este cuaderno no recibe sonido de las páginas. Usa un navegador que pueda oír por sí mismo.
enrol-button-of = Botón { $number } de { $of }
enrol-which-button = ¿Qué botón es?
enrol-replaces = El mismo: sustituye esta grabación
enrol-replaces-button = El botón { $number }: sustituye su grabación
enrol-another-button = Otro botón con la misma palabra
enrol-record-again = Grabar de nuevo, u otro botón
enrol-former = Grabaciones anteriores ({ $count }): guardadas, sin escucharse
enrol-use-again = Volver a escucharla
enrol-take-out = Dejar de escuchar esta
enrol-all-link = Grabar todos los botones de una vez
enrol-all-title = Grabar todos los botones
enrol-all-no-words = Este tablero aún no tiene palabras. Añádelas primero y luego graba sus botones.
enrol-all-intro = { $words ->
    [1] Pulsa el botón y para. La página recorta su sonido y lo muestra antes de guardar nada.
   *[other] Pulsa los { $words } botones uno tras otro en el orden de abajo, con dos segundos de silencio tras cada uno. La página corta el sonido, lo nombra según ese orden y lo muestra antes de guardar nada.
}
enrol-all-care = Hazlo mientras { $name } no pueda oírlo, y mantén los oídos lejos de los botones.
enrol-all-order = En este orden
enrol-all-recorded = (tiene grabación)
