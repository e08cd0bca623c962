command-serve-simulating = Simulando diez semanas de un hogar inventado ...
command-serve-invented = { $n ->
    [one] { $n } registro, inventado.
   *[other] { $n } registros, todos inventados.
} Nada de esto dice algo sobre animales reales.
command-serve-holds-home = { $dir } ya contiene un hogar; se sirve ese.
command-serve-code = Código de vinculación para un teléfono (vale { $minutes ->
    [one] un minuto
   *[other] { $minutes } minutos
}): { $code }
command-serve-open = Sayso está abierto en { $url }
command-serve-no-address = Este equipo no tiene dirección en una red de casa, así que ningún teléfono puede llegar a él.
command-serve-from-phone = Desde un teléfono en la misma red: { $url } (después escribe el código de vinculación)
command-serve-certificate = Una vez en cada teléfono, la página de allí instala el certificado de este hogar; su huella (SHA-256) debe ser
command-serve-strange-address =
    La dirección de este equipo no es de las que usan los hogares, así que el certificado no puede responder por ella.
    Abre en su lugar el nombre de este equipo en la red, que acaba en .local.
command-serve-this-machine =
    Solo se responde a este equipo. Para usar un teléfono, para con Ctrl-C y empieza de nuevo con --lan;
    este código abre entonces { $url } en el teléfono:
command-serve-no-qr = (sin código QR: { $why })
command-serve-stop = Para con Ctrl-C.
command-serve-no-folder = { $dir } no es una carpeta; da la del cuaderno
command-serve-device = { $id }  { $name } ({ $how ->
    [plain] por HTTP sin cifrar
   *[safe] por HTTPS
}), vinculado { $paired }, visto por última vez { $seen }
command-serve-no-device = No hay ningún dispositivo vinculado.
command-serve-no-such-device = ningún dispositivo vinculado tiene el identificador { $id }; la lista muestra cuáles hay
command-serve-port-taken = { $at } no se puede abrir: { $why }; ¿ya está en marcha Sayso? Elige otro puerto, o una dirección de esta máquina
command-serve-cannot-open = no se puede abrir el cuaderno: { $why }
command-serve-not-safe = no se puede servir HTTPS: { $why }
command-serve-certificate-content = { $file } no contiene un certificado y su clave: { $why }. Recupéralo de una copia, o bórralo: entonces se hace uno nuevo, y cada teléfono tiene que instalarlo
command-serve-certificate-making = no se pudo hacer ningún certificado: { $why }
command-serve-certificate-using = no se puede usar el certificado: { $why }
