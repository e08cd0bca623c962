pairing-title = Vincular este dispositivo
pairing-intro = Sayso se inició para la red de casa. Escribe el código que aparece en la pantalla donde se inició.
pairing-not-paired = No vinculado.
pairing-code = Código
pairing-code-hint = diez letras y cifras
pairing-name = Nombre de este dispositivo
pairing-name-hint = si quieres, por ejemplo: teléfono de Ana
pairing-pair = Vincular
pairing-taps-safe = Los toques hechos en este dispositivo y aún no enviados están a salvo; se envían en cuanto esté vinculado.
pairing-no-script = Sin JavaScript no se borra aquí lo que este dispositivo guardó del cuaderno; borra los datos de este sitio en los ajustes del navegador.
pairing-plain-http = Por HTTP sin cifrar, otros en la misma red podrían leer. Úsalo en una red de confianza.
pairing-wrong = Ese no es el código. Está donde se inició Sayso: diez letras y cifras.
pairing-expired = Ese código ya no sirve. Ahora hay uno nuevo donde se inició Sayso.
pairing-paired-title = Vinculado
pairing-paired = Este dispositivo está vinculado.
pairing-all-devices = Todos los dispositivos vinculados
pairing-machine-alone = Sayso se inició solo para este equipo, así que ningún dispositivo necesita vincularse.
pairing-devices = Dispositivos
pairing-devices-alone = Sayso se inició solo para este equipo, así que ningún otro dispositivo puede leer este cuaderno.
pairing-devices-intro = Estos dispositivos pueden leer este cuaderno y escribir en él. Retira el que se haya perdido, vendido o prestado.
pairing-this-device = (este dispositivo)
pairing-device-times = Vinculado el { $paired }. Visto por última vez el { $seen }.
pairing-end = Retirar
pairing-devices-note = Un dispositivo retirado se rechaza al instante. Lo que guardó para el tablero se borra cuando vuelva a abrir el cuaderno; si nunca vuelve, lo conserva. Los dispositivos no vistos en { $days } días se retiran solos.
pairing-forget-all = Olvidar todos los dispositivos, también este
pairing-no-such-device = No hay tal dispositivo vinculado; quizá se retiró entretanto.
pairing-unnamed = Un dispositivo sin nombre
pairing-kind = { $kind ->
    [iphone] Un iPhone
    [ipad] Un iPad
    [android] Un dispositivo Android
    [windows] Un ordenador con Windows
    [mac] Un Mac
    [chromebook] Un Chromebook
    [linux] Un ordenador con Linux
   *[other] Un dispositivo
}
pairing-file = los dispositivos vinculados en { $file }: { $why }; procura que este programa pueda leer y escribir el archivo
pairing-file-content = { $file } no contiene dispositivos vinculados ({ $why }). Recupéralo de una copia, o bórralo: cada teléfono se vincula entonces de nuevo; nada del cuaderno se pierde
