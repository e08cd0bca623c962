# The page of one’s own account.
account-title = Ton compte
account-no-way-back = Tu n’as encore aucun moyen de revenir. Ajoute une clé d’accès, une adresse électronique ou des codes de secours.
account-you = Toi
account-language-hint = de cette page et des lettres ; les pages d’un foyer suivent ta fiche là-bas
account-passkeys = Clés d’accès
account-passkeys-what = Une clé d’accès te connecte par ton doigt, ton visage ou ton code. Aies-en une par appareil, ou une que tes appareils partagent.
account-times = Depuis { $since }. Dernier usage : { $used }.
account-unused = Depuis { $since }. Pas encore utilisée.
account-forget = L’oublier
account-passkey-name = Nom de la clé d’accès
account-passkey-name-hint = si tu veux ; sinon le type d’appareil
account-add-passkey = Ajouter une clé d’accès
account-cancelled = Aucune clé d’accès n’a été créée. Réessaie quand tu veux.
account-failed = Cet appareil n’a pas pu créer de clé d’accès.
account-known = Cet appareil a déjà une clé d’accès de ce compte.
account-email-none = Pas encore d’adresse. Avec elle, un lien par courriel te fait entrer là où tu n’as pas de clé d’accès.
account-email-is = Les liens de connexion vont à { $email }.
account-prove = Envoyer une lettre pour la prouver
account-forget-email = Oublier l’adresse
account-proof-sent = Une lettre est en route vers { $email }. Ouvre son lien en moins de { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}, dans un navigateur connecté ici.
account-prove-title = Est-ce ton adresse ?
account-prove-what = Une fois prouvée, elle peut recevoir les liens de connexion à ton compte.
account-prove-yes = Oui, c’est la mienne
account-prove-signed-out = Connecte-toi d’abord ici. Puis ouvre encore une fois le lien de la lettre.
account-email-taken = Un autre compte a cette adresse.
account-codes = Codes de secours
account-codes-what = Pour le jour où toutes les clés d’accès seront perdues. Imprime-les et garde-les en lieu sûr.
account-codes-left = { $count ->
    [0] Tu n’en as pas.
    [1] Il en reste un.
   *[other] Il en reste { $count }.
}
account-codes-make = Faire de nouveaux codes
account-codes-old = Les précédents ne valent alors plus.
account-codes-once = Ils ne sont montrés que cette fois. Chacun te connecte une fois.
account-codes-done = Je les ai
account-sessions = Où tu es en session
account-zone = Les heures sont celles de { $zone }.
account-end-others = Se déconnecter partout ailleurs
account-roles = Tes rôles
account-role = { $role ->
    [keeper] Tu tiens { $place }
    [member] Membre de { $place }
    [sitter] Tu gardes par jours dans { $place }
    [observer] Tu observes dans { $place }
    [coach] Coach dans { $place }
    [club_keeper] Tu tiens le club { $place }
   *[server_keeper] Tu tiens le serveur
}
account-new-home = un foyer encore sans nom
account-no-role = Tu n’as aucun rôle ici. Une invitation t’en donne un.
account-leave = Quitter
account-leave-what = Tu ne le vois plus aussitôt. Ce que tu as noté y reste. Seule une invitation te ramène.
account-leave-button = Quitter ce rôle
account-last-keeper = Personne d’autre que toi ne tient ce lieu. Fais d’abord que quelqu’un d’autre le tienne.
account-erase = Effacer le compte
account-erase-what = Ton nom, ton adresse, tes clés d’accès, codes, sessions et rôles disparaissent aussitôt. Cela ne s’annule pas. Ce que tu as écrit dans les journaux des foyers reste à eux. Les sauvegardes du serveur gardent le reste encore { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}.
account-erase-button = Effacer mon compte
account-erase-alone = Personne d’autre que toi ne tient ce qui est ici. Avant que le compte puisse partir, fais tenir chaque lieu par quelqu’un d’autre, ou pars avec lui.
account-erase-other-keeper = Le faire tenir par quelqu’un d’autre
account-erased-title = Ton compte est effacé
account-erased = La session est fermée ici et partout.
account-sign-out-anyway = Se déconnecter quand même
account-id = Identifiant de ce compte, pour qui tient le serveur : { $id }
account-provider-what = Tu peux aussi te connecter avec { $name }. Ce serveur y apprend seulement qui tu es parmi les siens.
account-provider-link = Se connecter avec { $name } désormais
account-provider-forget = Ne plus se connecter avec { $name }
account-home-id = Identifiant de ce foyer : { $id }
account-codes-ids = Si tout le reste est perdu, qui tient le serveur peut t’inviter de nouveau par un de ces identifiants :
account-codes-account = Ton compte
account-erase-looks = Les foyers lisent encore que quelqu’un a regardé, sans ton nom : ton rôle, la page et le jour, pendant { $days } jours.
account-proof-not-sent-title = La lettre n’est pas partie
account-proof-not-sent = Aucune lettre n’a pu partir vers { $email } à l’instant. Rien n’a changé. Vérifie l’adresse et réessaie plus tard ; si cela échoue encore, dis-le à qui tient le serveur.
account-news = Nouveautés par courriel
account-news-what = Une courte lettre quand il y a du nouveau : combien de foyers ou de choses, et où. Aucun nom, aucun chiffre, rien de ce qui a été écrit.
account-news-urgent = Rien d’urgent ne vient par courriel. Les signes forts de stress sont en tête du bureau du coach et sur Aujourd’hui dans le foyer.
account-news-no-email = Pour cela, prouve d’abord une adresse de courriel.
account-news-every = À quelle fréquence, au plus
account-news-never = Jamais
account-news-daily = Une fois par jour
account-news-weekly = Une fois par semaine, le lundi
account-news-hour = À partir de quelle heure
account-news-zone = Où tu vis (fixe l’heure)
