sharing-role = { $role ->
    [keeper] tient le foyer
    [member] membre
    [sitter] garde par jours
    [observer] observe
    [coach] coach
    [club_keeper] tient le club
   *[other] tient le serveur
}
sharing-role-can = { $role ->
    [keeper] voit et écrit tout, invite, donne son accord et peut partir avec le foyer
    [member] voit et écrit tout sur les animaux ; ne change ni les rôles ni les accords
    [sitter] les jours convenus : voit Aujourd’hui et les règles de la maison, et écrit au tableau
    [observer] écrit au tableau et note des essais sans voir ce que d’autres ont noté
   *[other] voir la page des rôles
}
sharing-shows = { $what ->
    [see_today] Aujourd’hui
    [see_rules] les règles de la maison
    [see_figures] les chiffres
    [see_log] le journal, note par note
    [hear_snippets] les sons gardés des appuis
    [advise] la page Convenu, pour y écrire aussi
    [export] tout le journal en fichier
    [record] le Tableau, pour y noter
   *[other] une chose que cette version ne sait pas nommer
}
sharing-days-every = tous les jours du { $first } au { $last }
sharing-days-some = du { $first } au { $last } : { $weekdays }
sharing-qr = Le lien en code QR
sharing-shown-once = { $count ->
    [1] Ce lien ne s’affiche que maintenant. Envoie-le, ou fais-le scanner par l’autre téléphone.
   *[other] Ces liens ne s’affichent que maintenant. Envoie chacun, ou fais scanner son code par l’autre téléphone.
}
sharing-holds = Valable jusqu’à { $until }, une seule fois.
sharing-whoever = Qui l’ouvre en premier reçoit le rôle. Jusque-là tu peux le retirer.
sharing-leaving = Partir
sharing-leaving-short = Emporte tout en fichier, puis tout est effacé ici.
sharing-leave = Quitter ce serveur
sharing-who-intro = Ces personnes peuvent voir quelque chose de ton foyer en ce moment.
sharing-sees-nothing = ne voit en ce moment aucune page de ce que d’autres ont écrit
sharing-sees = voit { $what }
sharing-nobody-else = Personne d’autre ne voit rien ici.
sharing-keepers-see = Qui tient le serveur n’en voit rien par ce rôle ; qui a la machine ou ses sauvegardes en main peut lire ce qui y est rangé.
sharing-coach-of = coach, { $clubs }
sharing-as-person = { $role }, comme { $name }
sharing-looked = Qui a regardé
sharing-looked-how = Les regards des coachs, de qui garde par jours et de qui observe sont notés. Ce que quelqu’un rouvre dans le quart d’heure, ou ce qui reste ouvert, est un seul regard. Ceux de la maison ne sont pas notés : ceux qui vivent ensemble ne se surveillent pas ici.
sharing-looked-none = Personne n’a encore regardé.
sharing-between = { $from } à { $to }
sharing-look = { $times ->
    [one] { $when } : { $who }, { $what }, { $times } fois
   *[other] { $when } : { $who }, { $what }, { $times } fois
}
sharing-people = Qui fait partie d’ici
sharing-you = (toi)
sharing-change-of = Changer le rôle de { $name }
sharing-change = Changer
sharing-invite = Inviter quelqu’un
sharing-open-invitations = Invitations ouvertes
sharing-end-invitation = La retirer
sharing-consent = Accord
sharing-consent-none = Rien n’est partagé avec quelqu’un hors du foyer.
sharing-consent-change = Donner ou retirer
sharing-consent-before = Donné auparavant
sharing-given = { $what } : depuis { $at }
sharing-taken-back = { $what } : donné { $at }, retiré { $ended }
sharing-opens-nothing = { $what } : donné { $at }, mais pas sur ce serveur par qui tient le foyer ; cela n’ouvre rien
sharing-purpose = { $purpose ->
    [coach_figures] { $who } : voit les chiffres
    [coach_log] { $who } : lit le journal
    [coach_snippets] { $who } : écoute des sons d’appuis
    [norms] les chiffres comptent dans les normes de ce serveur
   *[other] les notes peuvent aller à des études
}
sharing-nameless = { $kind ->
    [club] un club qui n’est plus ici
   *[other] un coach qui n’est plus ici
}
sharing-back = Retour à qui peut voir ceci
sharing-invitation = Invitation
sharing-role-missing = manque : choisis-en un
sharing-person-missing = manque : qui garde ou observe écrit sous un nom à soi du foyer
sharing-day-missing = manque : choisis un jour
sharing-weekdays-missing = manquent : choisis-en au moins un
sharing-last-before-first = est avant le premier : choisis le même jour ou un jour plus tard
sharing-invite-intro = Tu reçois un lien valable quelques jours et une seule fois.
sharing-make-link = Faire le lien
sharing-no-person = aucune personne du foyer
sharing-as-role = Rôle
sharing-which-person = Quelle personne du foyer
sharing-which-person-hint = Nécessaire pour qui garde ou observe.
sharing-sitter-days = Jours, pour qui garde
sharing-first-day = Premier jour
sharing-last-day = Dernier jour
sharing-on-weekdays = Jours de la semaine
sharing-role-of = Rôle de { $name }
sharing-end-role = Mettre fin au rôle
sharing-end-role-what = { $name } ne voit alors plus rien du foyer. Ce que { $name } a écrit reste dans le journal.
sharing-end-role-of = Mettre fin au rôle de { $name }
sharing-consent-intro = Chaque but est demandé à part. Tous sont éteints jusqu’à ton accord, et tu peux retirer chacun à tout moment.
sharing-with-coaches = Coachs et clubs
sharing-with-how = Demande à ton coach le lien ou le code de la page du club. L’ouvrir ne partage rien : on te demande d’abord.
sharing-club-code = Lien ou code du club
sharing-look-at-club = Continuer
sharing-no-code = n’est ni un lien ni un code de club : copie-le en entier du message du coach
sharing-whole-club = Ce que tu donnes ici, chaque coach de { $club } l’a, maintenant et plus tard, tant qu’il l’est.
sharing-coaches-of = Chaque coach de { $club }
sharing-coach-alone = Ce que tu donnes ici, { $name } de { $club } l’a, et personne d’autre, tant que { $name } est coach.
sharing-not-among = Ce foyer n’est pas, ou n’est plus, l’un des tiens.
sharing-no-such-club = Il n’y a pas ici de tel club ou coach. Redemande le lien à ton coach.
sharing-already-seen = Retirer y met fin aussitôt. Ce que quelqu’un a déjà vu, noté ou enregistré ne peut être repris.
sharing-share-with = Partager avec : { $who }
sharing-purpose-title = { $purpose ->
    [coach_figures] Chiffres
    [coach_log] Le journal
    [coach_snippets] Sons des appuis
    [norms] Normes
   *[other] Recherche
}
sharing-on-since = Actif depuis { $at }
sharing-off = Éteint
sharing-take-back = Retirer
sharing-give = Je donne mon accord
sharing-unclear = n’est pas clair : ouvre la page à nouveau et choisis-y
sharing-new-words = ont changé depuis : ouvre la page à nouveau et lis-les
sharing-other-home = en est un autre maintenant : cet appareil en a changé dans un autre onglet ; ouvre la page à nouveau
sharing-not-the-name = n’est pas « { $name } » : écris-le comme ici
sharing-take-along = D’abord : emporte tout
sharing-take-along-what = L’archive contient le journal et ses sons. Le programme l’ouvre à la maison comme un carnet entier.
sharing-what-happens = Ce qui se passe
sharing-erased = Effacés aussitôt : le journal, les sons, les images, tout ce qui en a été calculé, qui fait partie du foyer, les invitations, les accords et qui a regardé.
sharing-stays = Reste : une marque avec le numéro du foyer et le jour du départ. Elle ne contient aucun nom et empêche de vieux téléphones de ramener le foyer.
sharing-accounts-stay = Les comptes restent à leurs personnes. Chacune peut effacer le sien sur sa page.
sharing-backups = { $days ->
    [one] Les sauvegardes du serveur contiennent encore tout, { $days } jour au plus.
   *[other] Les sauvegardes du serveur contiennent encore tout, { $days } jours au plus.
}
sharing-others-have = Ce que d’autres ont déjà ne peut être repris : ce qu’un coach a noté ou enregistré, ce qui est allé dans des normes ou à une étude.
sharing-phones = Les téléphones hors ligne gardent leurs notes non envoyées. Ce serveur les refuse. Sur un tel téléphone, ouvre la page de tes foyers : elle les propose comme fichier. Ensuite seulement, efface là les données du site, ce qui les perd.
sharing-leave-now = Ensuite : partir
sharing-no-way-back = Il n’y a pas de retour ici. Regarde d’abord l’archive : s’ouvre-t-elle ?
sharing-type-name = Écris le nom du foyer : { $name }
sharing-leave-button = Partir et effacer
sharing-gone-title = Le foyer est parti
sharing-gone = « { $name } » a quitté ce serveur, et tout en est effacé ici.
sharing-gone-not-yet = « { $name } » a quitté ce serveur : personne ne peut plus l’ouvrir. Son journal n’a pas pu être effacé à l’instant. Le serveur réessaie de lui-même dans l’heure ; qui le tient peut le faire aussitôt.
sharing-to-homes = Vers tes foyers
sharing-anew = Invitations depuis le serveur
sharing-anew-by = { $by }, qui tient le serveur, a invité quelqu’un à tenir ce foyer le { $at }.
sharing-anew-taken = { $who } est entré ainsi le { $at }.
sharing-anew-refused = { $who } l’a refusé le { $at }. Personne n’est entré ainsi.
sharing-anew-open = À partir du { $from }, qui a le lien entre et tient le foyer. Personne ici ne l’a demandé ? Alors refuse-le.
sharing-anew-over = Elle est périmée. Personne n’est entré ainsi.
sharing-anew-refuse = Refuser
sharing-words-number = Version { $number } de ces mots
sharing-words-of = { $what } (version { $number } des mots)
sharing-words-since = Tu as accepté la version { $number }, qui disait moins exactement ce qui se voit ou se donne :
sharing-words-newer = Depuis, les mots sont plus exacts. Lis-les sous « Donner ou retirer ».
sharing-you-see = Tu vois ici : { $what }.
sharing-you-see-nothing = En ce moment, tu ne vois ici aucune page de ce que d’autres ont écrit.
sharing-seen-by-home = Ce que tu écris ici est vu par celles et ceux qui tiennent ce foyer ou en sont membres, et par les coachs autant que le foyer y consent.
sharing-looks-of-you = Tes regards sont notés pour qui tient le foyer : quelle page et quand. On y voit ton nom.
sharing-account-seen = Ton nom est vu par les foyers et clubs où tu as un rôle. Ton adresse, tes clés d’accès et tes sessions ne sont que sur la page de ton compte.
sharing-page = { $page ->
    [calendar] le calendrier, lu par son adresse
    [desk] le bureau, à côté d’autres foyers
    [today] Aujourd’hui
    [board] le Tableau
    [likes] Préférences
    [words] Mots
    [evidence] Preuves
    [days] Jours
    [patterns] Motifs
    [others] Les autres
    [designs] essais d’un changement
    [swaps] échanges
    [checks] vérifications
    [heard] ce qui a été entendu
    [log] le Journal
    [agreement] accord entre deux notations
    [ideas] idées de récompenses
    [talk] ce qui a été convenu
    [sheets] feuilles à imprimer
    [media] images et enregistrements
    [figures] chiffres pour programmes
    [scored] ce qu’ils ont noté
   *[other] une autre page
}
sharing-copy = Copier le lien
sharing-copied = Copié
sharing-send = L’envoyer
sharing-new-person = Ou le nom de quelqu’un de nouveau
sharing-new-person-hint = Pour qui n’a pas encore de fiche ici : elle se crée avec l’invitation.
sharing-roles-later = Qui garde quelques jours ou observe peut être invité une fois le foyer mis en place.
sharing-given-until = { $what } : depuis { $at }, jusqu’à { $until }
sharing-given-for = { $what } : donné { $at }, seulement de { $from } à { $until }
sharing-restored = Ce serveur a été remis en place depuis une sauvegarde le { $at }. Tous les accords ont alors pris fin, pour qu’aucun de ceux que tu avais retirés ne s’ouvre. Redonne ce que tu veux, et regarde si toutes les personnes plus bas sont encore d’ici.
sharing-ended-by-restore = { $what } : donné { $at } ; a pris fin quand le serveur a été remis en place depuis une sauvegarde, jusqu’à ce que tu le redonnes
sharing-leave-for-all = Tient aussi ce foyer : { $names }. Partir y met fin pour tout le monde, et personne ne leur demande. Parlez-en d’abord.
sharing-person-taken = est déjà à quelqu’un, et on ne saurait plus qui a écrit quoi : choisis quelqu’un d’autre, ou tape le nom d’une nouvelle personne
sharing-name-is-there = « { $name } » a déjà une fiche ici : choisis-la plus haut si c’est cette personne, ou tape un nom qui distingue les deux
sharing-last-is-over = est déjà passé : choisis aujourd’hui ou un jour plus tard
sharing-look-left = { $times ->
    [one] quelqu’un qui est parti ({ $role }) : { $what }, { $times } fois
   *[other] quelqu’un qui est parti ({ $role }) : { $what }, { $times } fois
}
sharing-stays-accounts = Reste { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} : quels comptes en faisaient partie, pour que leurs personnes lisent qu’il est parti.
sharing-stays-notebooks = Reste { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} : un hachage de la clé de chaque carnet relié, pour lui dire que le foyer est parti. Ni nom, ni compte.
sharing-end-all = Arrêter tout partage
sharing-end-all-what = Cela retire tous les accords d’un coup. Dès lors, aucun de ceux-ci ne vaut :
sharing-end-all-now = Tout arrêter maintenant
sharing-name-and-person = est donné à côté d’une personne choisie plus haut : laisse l’un des deux vide
sharing-weekdays-none = ne comprennent aucun jour du premier au dernier : coche un jour qui tombe entre les deux
sharing-last-too-far = est à plus d’un an du premier : choisis { $day } ou un jour plus tôt, et invite de nouveau ensuite
sharing-news-anew = { $by }, qui tient le serveur, a invité quelqu’un à tenir ce foyer. À partir du { $from }, qui a ce lien entre et tient le foyer.
sharing-news-look = Regarder, et refuser si personne ici ne l’a demandé
sharing-news-anew-short = Quelqu’un a été invité à tenir ce foyer : regarder
sharing-news-restored = Ce serveur a été remis en place depuis une sauvegarde le { $at }, et tout accord a alors pris fin. Qui t’accompagne comme coach ne voit rien de ce foyer tant que tu ne l’as pas redonné.
sharing-news-give = Regarder ce qui a pris fin, et redonner ce que tu veux
sharing-agree-newer = Accepter ces mots à la place des précédents
