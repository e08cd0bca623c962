homes-title = Quel foyer ?
homes-intro = { $count ->
    [1] Ce carnet contient un foyer.
   *[other] Ce carnet contient { $count } foyers. Chacun a ses animaux, ses mots et ses chiffres ; rien n’est compté entre eux.
}
homes-no-animal = pas encore d’animal
homes-holds = { $animals } ; { $count ->
    [1] une entrée
   *[other] { $count } entrées
}
homes-tail-since = { $name } (…{ $tail }, depuis { $day })
homes-title-none = Pas encore de foyer
homes-none = Ton compte ne fait encore partie d’aucun foyer. Demande une invitation à qui tient le foyer ou ce serveur, et ouvre son lien sur cet appareil.
homes-none-private = Les foyers qui partagent quelque chose avec toi comme coach se trouvent ici tant qu’ils le font.
homes-clubs = Clubs
homes-to-server = Le serveur
homes-give-up = Quitter un rôle
homes-give-up-what = Tu ne vois alors plus rien du foyer. Ce que tu as écrit reste dans son journal.
homes-go = Le quitter
homes-with-days = { $role } ; { $days }
homes-not-begun = { $role } ; rien n’est encore écrit ici : qui tient le foyer commence
homes-closed-now = { $role } ; fermé pour toi aujourd’hui
homes-shares = { $role } ; partage { $what }
homes-find = Trouver un foyer
homes-find-button = Trouver
homes-found-none = Aucun de tes foyers n’a « { $text } » dans son nom.
homes-all = Tous les foyers
homes-parted = Un foyer dont tu faisais partie a quitté ce serveur le { $day }. Tout y est effacé ici.
homes-lost = Le foyer qui était ouvert ici ne t’est plus ouvert, ou est parti. Choisis un de tes foyers.
homes-title-server = Tu tiens ce serveur
homes-title-clubs = Tes clubs
homes-none-keeper = Tu ne fais partie d’aucun foyer ici, et il n’en faut pas pour cela. Une invitation à un foyer, ouverte sur cet appareil, l’ajoute.
homes-none-coach = En ce moment, aucun foyer ne partage rien avec toi. Un foyer se trouve ici tant que qui le tient est d’accord. Il disparaît quand cet accord est retiré ou prend fin, ou quand le foyer part.
homes-none-for-programs = Ton compte ne fait partie d’aucun foyer ici. Ouvre d’abord le lien d’une invitation.
homes-anew = Qui tient le serveur a invité quelqu’un à tenir « { $home } ».
homes-restored = Ce serveur a été remis en place depuis une sauvegarde le { $at }, et tout accord a alors pris fin. Les foyers que tu accompagnes reviennent dès que qui les tient le redonne. Demande-leur.
