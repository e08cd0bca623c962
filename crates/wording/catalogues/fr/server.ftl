server-title = Le serveur
server-intro = Des nombres et des tailles, rien de ce que les foyers écrivent.
server-homes = Foyers
server-left = Foyers partis
server-clubs = Clubs
server-accounts = Comptes
server-memory = Histoires en mémoire, ce processus
server-megabytes = { $value } Mo
server-unfinished = { $count ->
    [one] { $count } foyer est parti, mais son journal est encore ici.
   *[other] { $count } foyers sont partis, mais leurs journaux sont encore ici.
}
server-sign-in-again = Se reconnecter pour changer quelque chose
server-why-again = Ce qui se fait ici demande une connexion des dernières minutes.
server-finish = Les effacer maintenant
server-open-homes = Ouvrir des foyers
server-open-homes-what = Chacun reçoit un carnet vide et un lien pour la première personne qui le tient. Tu n’en vois rien.
server-how-many = Combien, { $most } au plus
server-how-many-wrong = doit être un nombre entier de 1 à { $most }
server-open = Ouvrir et recevoir les liens
server-waiting = { $count ->
    [one] { $count } foyer attend qui le tiendra
   *[other] { $count } foyers attendent qui les tiendra
}
server-waiting-what = Un lien perdu ou périmé est remplacé par un nouveau. Le premier utilisé compte ; les autres ne valent alors plus.
server-new-link = Nouveau lien
server-members = { $count ->
    [one] { $count } rôle
   *[other] { $count } rôles
}
server-club-name = Nom d’un nouveau club
server-open-club = Ouvrir le club
server-keepers = Qui tient le serveur
server-end-keeper = Mettre fin
server-invite-keeper = Inviter quelqu’un d’autre à tenir le serveur
server-sessions = Sessions d’un compte
server-sessions-what = Quand un compte est en de mauvaises mains : tous ses appareils sont déconnectés aussitôt. Sa personne se reconnecte.
server-account-id = Identifiant du compte, comme le dit sa page
server-end-sessions = Mettre fin à toutes ses sessions
server-links = { $count ->
    [one] { $count } lien
   *[other] { $count } liens
}
server-stopped = Arrêté après { $made } : { $why } Ceux ci-dessous sont ouverts.
server-number = Numéro
server-link = Lien pour la première personne
server-until = Valable jusqu’au
server-back = Retour au serveur
server-club-name-missing = manque : donne un nom au club
server-account-missing = n’est pas un identifiant de compte : copie-le de la page du compte
server-sessions-ended = { $count ->
    [one] { $count } session terminée.
   *[other] { $count } sessions terminées.
}
server-anew = Un foyer sans accès
server-anew-what = Si toutes les personnes qui le tiennent ont perdu téléphone, courrier et codes, invite quelqu’un de nouveau. Vérifie bien qui demande : qui prend le lien a le foyer.
server-anew-told = Le foyer apprend qui l’a fait et quand. Qui y entre encore peut le refuser. Aucun compte qui tient le serveur n’entre par là.
server-anew-whose = Identifiant du foyer ; ou l’identifiant ou l’adresse d’un compte qui le tient
server-anew-invite = Inviter quelqu’un pour le tenir
server-anew-from = Il laisse entrer du { $from } au { $until }, une fois.
server-anew-unknown = n’est pas un foyer d’ici que quelqu’un a tenu : copie l’identifiant de la page d’un compte, ou de codes imprimés
server-anew-several = tient plusieurs foyers : donne l’identifiant du foyer
server-anew-open = a déjà été invité de nouveau : ce lien vaut encore
server-club-taken = est déjà le nom d’un club d’ici : choisis-en un autre
server-not-by-role = Ton rôle ici ne va pas jusque-là. Demande à qui tient le serveur.
server-account-unknown = n’est pas un compte d’ici : copie-le de la page du compte
server-utc = { $at } UTC
