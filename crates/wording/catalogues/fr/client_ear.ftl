client-ear-insecure = Cette page est venue en HTTP non chiffré, et les navigateurs ne donnent le micro qu’aux pages venues en sécurité. Sur la machine où tourne Sayso, ouvre-la sous http://localhost. Pour un téléphone, lance Sayso avec --lan --secure et ouvre l’adresse qu’il affiche alors.
client-ear-unable = Ce navigateur ne peut pas écouter. Prends-en un plus récent, ou lance « sayso listen » sur la machine où tourne Sayso.
client-ear-connected = Connecté.
client-ear-waiting = Le carnet ne répond pas ; { $seconds } s sont gardées ici et envoyées plus tard.
client-ear-lost = { $seconds } s n’ont pas pu être gardées et n’ont pas été entendues.
client-ear-held = Les appuis sont entendus mais ne peuvent pas être gardés pour l’instant : { $why }
client-ear-silent = Rien ne sonne au micro : est-il couvert ou coupé ?
client-ear-heard-now = { $count ->
    [0] Aucun appui entendu pour l’instant.
    [one] Un appui entendu.
   *[other] { $count } appuis entendus.
}
client-ear-listening = Écoute { $count ->
    [1] un mot
   *[other] { $count } mots
} depuis { $time }.
client-ear-words = Écoutés : { $words }.
client-ear-left-out = Leur son manque, donc pas ceux-ci : { $words }.
client-ear-press = { $time }, sûr à { $sure } %, { $state ->
    [tapped] noté ; touché aussi, il compte une fois
    [known] déjà noté
   *[new] noté
}
client-ear-kept = son bruit est gardé pour être jugé
client-ear-busy = Une autre page écoute ce tableau depuis { $time }.
client-ear-take = Écouter plutôt ici
client-ear-taken = Arrêté : une autre page écoute maintenant.
client-ear-off = Arrêté.
client-ear-off-heard = Arrêté. { $count ->
    [0] Rien n’a été entendu.
    [one] Un appui a été entendu.
   *[other] { $count } appuis ont été entendus.
}
client-ear-asking = Demande du micro…
client-ear-connecting = Connexion…
client-ear-ending = Écoute de la fin…
client-ear-not-allowed = Le micro n’a pas été autorisé. Autorise-le pour cette page dans les réglages du navigateur, puis réessaie.
client-ear-not-found = Cet appareil n’a pas de micro.
client-ear-in-use = Le micro est utilisé par un autre programme. Ferme-le, puis réessaie.
client-ear-not-opened = Le micro n’a pas pu être ouvert ({ $why }).
client-ear-gone = Le micro a été retiré, ou n’est plus autorisé.
client-ear-stopped = Le navigateur a arrêté le son.
client-ear-sound-gone = Le son n’est plus gardé
client-ear-not-noted = Le carnet ne répond pas ; rien n’a été noté. Réessaie.
client-ear-noted = Noté : { $word }, { $answer }.
client-ear-record-insecure = Pour enregistrer ici, la page doit être venue en sécurité : ouvre Sayso sur la machine elle-même, ou lance-le avec --lan --secure. Un fichier son marche dans tous les cas.
client-ear-record-unable = Ce navigateur ne peut pas enregistrer. Choisis un fichier son.
client-ear-loudness = Niveau au micro
client-ear-record = Enregistrer avec cet appareil
client-ear-record-how = Tiens l’appareil à une largeur de main du bouton, dans une pièce calme, où l’animal ne l’entend pas.
client-ear-recording = Enregistrement : appuie une fois sur le bouton. Encore { $seconds } s.
client-ear-stop = Arrêter
client-ear-record-again = Enregistrer à nouveau
client-ear-record-nothing = Rien n’a été entendu. Le micro est-il couvert ou coupé ?
client-ear-recorded = { $seconds } s, silences coupés aux deux bouts. Écoute, puis garde-le, ou enregistre à nouveau.
client-ear-what-recorded = Ce qui a été enregistré
client-ear-record-keep = Garder cet enregistrement et le vérifier
client-ear-unsent = { $count ->
    [1] Un appui fait sur cet appareil n’est pas
   *[other] { $count } appuis faits sur cet appareil ne sont pas
} encore dans le carnet. Associe-le à nouveau et ils partent. S’il ne doit plus être associé, enregistre-les dans un fichier, que « sayso import » lit, et vide cet appareil.
client-ear-clear = Vider cet appareil
client-ear-clear-sure = Effacer ce que garde cet appareil, { $count ->
    [1] un appui non envoyé
   *[other] { $count } appuis non envoyés
} compris ? Vérifie d’abord que le fichier est enregistré.
client-ear-cleared = Cet appareil ne garde plus rien du carnet.
client-ear-save-unsent = Les enregistrer dans un fichier
client-ear-pause = Pause
client-ear-go-on = Continuer
client-ear-here = Cet appareil entend lui-même : aucun son ne le quitte, seulement les appuis.
client-ear-there = Ce navigateur ne peut pas entendre lui-même : pendant l’écoute, le son va à la machine où tourne Sayso.
client-ear-no-way = Ce navigateur ne peut pas entendre lui-même, et ce carnet ne prend aucun son. Utilise un navigateur plus récent.
client-ear-ready = Préparation des enregistrements…
client-ear-not-ready = L’écoute n’a pas pu commencer ({ $why }). Ouvre cette page une fois pendant que le carnet répond, puis réessaie.
client-ear-broke = L’écoute s’est interrompue sur cet appareil ({ $why }). Remets-la en marche.
client-ear-hearing = Cet appareil écoute.
client-ear-behind = Cet appareil est lent : { $seconds } s de retard.
client-ear-gap = Pas entendu : de { $from } à { $to }.
client-ear-no-sound = Aucun son ne vient depuis { $time } : un autre programme ou un appel a peut-être le micro.
client-ear-last = { $time }, sûr à { $sure } %
client-ear-unsent-signed-out = { $count ->
    [1] Un appui fait sur cet appareil n’est pas
   *[other] { $count } appuis faits sur cet appareil ne sont pas
} encore dans le carnet. Connecte-toi de nouveau, ouvre le Tableau, et ils partent. Si plus personne ne se connecte ici, enregistre-les dans un fichier, que « sayso import » lit, et vide cet appareil.
client-ear-unsent-left = { $count ->
    [1] Un appui fait sur cet appareil vient
   *[other] { $count } appuis faits sur cet appareil viennent
} d’un foyer qui n’est plus le tien : il a quitté ce serveur, ou ton rôle y a pris fin. Rien de cela ne peut être envoyé. Enregistre-le dans un fichier, que « sayso import » lit, puis efface-le ici.
