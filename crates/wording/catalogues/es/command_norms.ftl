command-norms-what-is-in = { $n ->
    [one] { $n } fila
   *[other] { $n } filas
}, una por animal y palabra mostrada: especie, grupo de edad, qué trae la palabra, demostraciones y días hasta la primera pulsación, invitaciones. No hay en ellas ningún nombre, nota, fecha, lugar ni palabra. No van a ninguna parte si no las envías.
command-norms-homes-agreed = { $agreed } de { $homes ->
    [one] { $homes } hogar
   *[other] { $homes } hogares
} están de acuerdo; { $rows ->
    [one] { $rows } fila
   *[other] { $rows } filas
}.
command-norms-key-beside = la clave { $key } está en la carpeta de las filas: quien las reciba la recibiría también. Guárdala en otro sitio
command-norms-key-short = la clave { $key } tiene { $found ->
    [one] { $found } byte
   *[other] { $found } bytes
}; necesita { $least } o más de buen azar
command-norms-imported = Guardada la edición «{ $release }» del { $date }: { $cells ->
    [one] { $cells } celda
   *[other] { $cells } celdas
} (SHA-256 { $hash }).
command-norms-unusable = { $file } no contiene valores de referencia que se puedan usar, y no se cambió nada: { $why }
