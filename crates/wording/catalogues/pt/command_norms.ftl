command-norms-what-is-in = { $n ->
    [1] { $n } linha
   *[other] { $n } linhas
}, uma por animal e palavra mostrada: espécie, faixa de idade, o que a palavra traz, demonstrações e dias até o primeiro aperto, convites. Nenhum nome, nota, data, lugar ou palavra está nelas. Não vão a lugar nenhum se você não as enviar.
command-norms-homes-agreed = { $agreed } de { $homes ->
    [1] { $homes } casa
   *[other] { $homes } casas
} concordam; { $rows ->
    [1] { $rows } linha
   *[other] { $rows } linhas
}.
command-norms-key-beside = a chave { $key } está na pasta das linhas: quem as recebesse receberia também a chave. Guarde-a em outro lugar
command-norms-key-short = a chave { $key } tem { $found ->
    [1] { $found } byte
   *[other] { $found } bytes
}; precisa de { $least } ou mais, de bom acaso
command-norms-imported = Edição “{ $release }” de { $date } guardada: { $cells ->
    [1] { $cells } célula
   *[other] { $cells } células
} (SHA-256 { $hash }).
command-norms-unusable = { $file } não contém valores de referência que possam ser usados, e nada mudou: { $why }
