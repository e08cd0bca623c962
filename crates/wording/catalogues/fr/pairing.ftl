pairing-title = Associer cet appareil
pairing-intro = Sayso a été lancé pour le réseau de la maison. Saisis le code affiché sur l’écran où il a été lancé.
pairing-not-paired = Pas associé.
pairing-code = Code
pairing-code-hint = dix lettres et chiffres
pairing-name = Nom de cet appareil
pairing-name-hint = si tu veux, par exemple : téléphone d’Anne
pairing-pair = Associer
pairing-taps-safe = Les appuis faits sur cet appareil et pas encore envoyés sont à l’abri ; ils partent dès qu’il est associé.
pairing-no-script = Sans JavaScript, ce que cet appareil a gardé du carnet n’est pas effacé ici ; efface les données de ce site dans les réglages du navigateur.
pairing-plain-http = En HTTP non chiffré, d’autres sur le même réseau pourraient lire. Utilise-le sur un réseau de confiance.
pairing-wrong = Ce n’est pas le code. Il est affiché là où Sayso a été lancé : dix lettres et chiffres.
pairing-expired = Ce code n’est plus bon. Un nouveau est maintenant affiché là où Sayso a été lancé.
pairing-paired-title = Associé
pairing-paired = Cet appareil est associé.
pairing-all-devices = Tous les appareils associés
pairing-machine-alone = Sayso a été lancé pour cette machine seule : aucun appareil n’a besoin d’être associé.
pairing-devices = Appareils
pairing-devices-alone = Sayso a été lancé pour cette machine seule : aucun autre appareil ne peut lire ce carnet.
pairing-devices-intro = Ces appareils peuvent lire ce carnet et y écrire. Retire celui qui a été perdu, vendu ou prêté.
pairing-this-device = (cet appareil)
pairing-device-times = Associé le { $paired }. Vu pour la dernière fois le { $seen }.
pairing-end = Retirer
pairing-devices-note = Un appareil retiré est refusé aussitôt. Ce qu’il a gardé pour le tableau est effacé à sa prochaine ouverture du carnet ; celui qui ne revient jamais le garde. Les appareils non vus depuis { $days } jours sont retirés d’eux-mêmes.
pairing-forget-all = Oublier tous les appareils, celui-ci aussi
pairing-no-such-device = Aucun appareil de ce nom n’est associé ; il a peut-être été retiré entre-temps.
pairing-unnamed = Un appareil sans nom
pairing-kind = { $kind ->
    [iphone] Un iPhone
    [ipad] Un iPad
    [android] Un appareil Android
    [windows] Un ordinateur Windows
    [mac] Un Mac
    [chromebook] Un Chromebook
    [linux] Un ordinateur Linux
   *[other] Un appareil
}
pairing-file = les appareils appairés dans { $file } : { $why } ; veille à ce que ce programme puisse lire et écrire le fichier
pairing-file-content = { $file } ne contient pas d’appareils appairés ({ $why }). Reprends-le d’une copie, ou efface-le : chaque téléphone s’appaire alors à nouveau ; rien du carnet n’est perdu
