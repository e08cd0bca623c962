# What stands behind an invitation.
join-title = Tu as une invitation
join-to = { $kind ->
    [home] Dans le foyer « { $place } ».
    [lost_home] Vers le foyer dont l’identifiant est { $place }, pour le tenir.
    [new_home] Dans un nouveau foyer sur ce serveur.
    [club] Dans le club « { $place } ».
   *[server] Sur ce serveur : { $place }.
}
join-part = { $role ->
    [keeper] Pour le tenir : tu vois et fais tout ici. Tu invites aussi des personnes, décides ce qui est partagé, et peux emporter le foyer.
    [member] Comme membre : tu notes ce qui se passe et vois tous les chiffres.
    [sitter] Pour garder par jours : les jours convenus, tu notes ce qui se passe. Tu vois Aujourd’hui et les règles de la maison.
    [observer] Pour observer : tu notes ce que tu vois, sans voir les notes des autres.
    [coach] Comme coach : tu vois ce que des foyers décident de partager, rien d’autre.
    [club_keeper] Pour tenir le club : tu invites des personnes et vois qui en fait partie.
   *[server_keeper] Pour tenir le serveur : tu ouvres des foyers et des clubs. Cela ne montre les données d’aucun foyer.
}
join-days = Jours convenus : { $weekdays }, du { $first } au { $last }.
join-until = L’invitation vaut jusqu’à { $when }, et une fois.
join-signed-in = Tu es en session sous le nom de { $name }.
join-join = Rejoindre
join-have-account = As-tu déjà un compte ici ? { $link }
join-sign-in-first = Connecte-toi d’abord
join-gone-title = Cette invitation n’est pas valable
join-gone = Elle a déjà servi, est trop ancienne, ou son lien n’est pas entier. Tu y es déjà ? Alors connecte-toi. Sinon, demandes-en une nouvelle.
join-taken-title = Rien à rejoindre
join-taken = Tu as déjà un rôle ici, ou quelqu’un est venu avant. Demande à qui t’a invité.
join-welcome = Bienvenue, { $name }
join-passkey = La prochaine fois, connecte-toi avec ton doigt, ton visage ou ton code. Ton appareil garde pour cela une clé d’accès : pas de mot de passe.
join-make-passkey = Créer une clé d’accès
join-later = Plus tard
join-way-back = Après déconnexion, tu reviens par une clé d’accès, un lien par courriel ou un code de secours. Tous trois sont sur { $account }.
join-not-yet = Elle te laisse entrer à partir du { $from }. D’ici là, qui est encore dans le foyer peut la refuser.
join-yours-title = Tu y es déjà
join-yours = Tu as pris toi-même cette invitation. Elle sert une fois ; désormais tu te connectes.
join-yours-go = Continuer
join-you-hint = { $kind ->
    [home] comme on t’appelle à la maison
    [new_home] comme on t’appelle à la maison
    [lost_home] comme on t’appelle à la maison
   *[other] comme les autres te verront ici
}
join-as-whom = Là, tu écris sous le nom de « { $name } ».
join-not-you = Pas { $name } ? Se déconnecter
join-kept = Ce lien était pour la première personne qui tiendrait cet endroit, et quelqu’un est venu avant. C’est toi ? Alors connecte-toi. Sinon, demande-lui une invitation.
