command-serve-simulating = Simulation de dix semaines d’un foyer inventé ...
command-serve-invented = { $n ->
    [one] { $n } entrée, inventée.
   *[other] { $n } entrées, toutes inventées.
} Rien ici ne prouve quoi que ce soit sur de vrais animaux.
command-serve-holds-home = { $dir } contient déjà un foyer ; c’est lui qui est servi.
command-serve-code = Code d’association pour un téléphone (valable { $minutes ->
    [1] une minute
   *[other] { $minutes } minutes
}) : { $code }
command-serve-open = Sayso est ouvert à { $url }
command-serve-no-address = Cette machine n’a pas d’adresse sur un réseau domestique, donc aucun téléphone ne peut l’atteindre.
command-serve-from-phone = Depuis un téléphone sur le même réseau : { $url } (puis tape le code d’association)
command-serve-certificate = Une fois sur chaque téléphone, la page là-bas installe le certificat de ce foyer ; son empreinte (SHA-256) doit être
command-serve-strange-address =
    L’adresse de cette machine n’est pas de celles des foyers, donc le certificat ne peut pas en répondre.
    Ouvre plutôt le nom de cette machine sur le réseau, qui finit par .local.
command-serve-this-machine =
    Seule cette machine reçoit une réponse. Pour un téléphone, arrête avec Ctrl-C et relance avec --lan ;
    ce code ouvre alors { $url } sur le téléphone :
command-serve-no-qr = (pas de code QR : { $why })
command-serve-stop = Arrête avec Ctrl-C.
command-serve-no-folder = { $dir } n’est pas un dossier ; donne celui du carnet
command-serve-device = { $id }  { $name } ({ $how ->
    [plain] par HTTP non chiffré
   *[safe] par HTTPS
}), associé { $paired }, vu la dernière fois { $seen }
command-serve-no-device = Aucun appareil n’est associé.
command-serve-no-such-device = aucun appareil associé n’a l’identifiant { $id } ; la liste montre lesquels il y a
command-serve-port-taken = { $at } ne peut être ouvert : { $why } ; Sayso tourne-t-il déjà ? Choisis un autre port, ou une adresse de cette machine
command-serve-cannot-open = le carnet ne peut être ouvert : { $why }
command-serve-not-safe = HTTPS ne peut être servi : { $why }
command-serve-certificate-content = { $file } ne contient pas de certificat et sa clé : { $why }. Reprends-le d’une copie, ou efface-le : un nouveau est alors fait, et chaque téléphone doit l’installer
command-serve-certificate-making = aucun certificat n’a pu être fait : { $why }
command-serve-certificate-using = le certificat ne peut servir : { $why }
