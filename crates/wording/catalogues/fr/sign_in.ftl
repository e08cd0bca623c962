# Signing in on a server of many homes.
sign-in-title = Se connecter
sign-in-again-title = Montre que c’est toi
sign-in-again = La suite ne doit pas tomber en de mauvaises mains. Connecte-toi encore une fois.
sign-in-passkey = Se connecter avec une clé d’accès
sign-in-passkey-hint = Ton appareil demande ton doigt, ton visage ou ton code.
sign-in-cancelled = Aucune clé d’accès n’a servi. Réessaie, ou connecte-toi autrement.
sign-in-failed = Cet appareil n’a pas pu se servir d’une clé d’accès. Connecte-toi autrement.
sign-in-by-mail = Par courriel
sign-in-email = Adresse électronique
sign-in-email-hint = celle de la page de ton compte
sign-in-send-link = Envoyer un lien
sign-in-send-link-to = Envoyer un lien à { $email }
sign-in-sent-title = Regarde ton courrier
sign-in-sent = Si un compte d’ici a l’adresse { $email }, une lettre avec un lien est en route. Il sert une fois, pendant { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}.
sign-in-nothing-came = Rien n’est venu ? Vérifie l’adresse et regarde parmi le courrier indésirable.
sign-in-another-address = Une autre adresse
sign-in-by-code = Avec un code de secours
sign-in-code = Code de secours
sign-in-code-hint = 32 lettres et chiffres de ta liste imprimée ; chacun sert une fois
sign-in-wrong-code = n’est pas valable : inconnu, ou déjà utilisé
sign-in-no-account = Pas encore de compte ? Ouvre le lien d’une invitation, ou lis son code.
sign-in-no-script = Les clés d’accès ont besoin de JavaScript. Un lien ou un code s’en passe.
sign-in-here-title = Se connecter sur cet appareil ?
sign-in-here = Continue seulement si tu as demandé cette lettre.
sign-in-gone-title = Ce lien n’est pas valable
sign-in-gone = Il a déjà servi, est trop ancien, ou n’est pas entier.
sign-in-new-link = En demander un nouveau
sign-in-provider = Se connecter avec { $name }
sign-in-provider-away = { $name } ne répond pas pour l’instant. Connecte-toi autrement, ou réessaie plus tard.
sign-in-provider-refused = { $name } ne t’a pas connecté. Réessaie, ou connecte-toi autrement.
sign-in-provider-lost = Cette connexion ne peut pas aboutir : elle a commencé dans un autre navigateur, est trop ancienne ou déjà finie. Recommence.
sign-in-provider-unknown = Aucun compte d’ici n’est relié à ta connexion chez { $name }. Connecte-toi autrement, puis relie-la sur la page de ton compte. Pas encore de compte ? Ouvre le lien de ton invitation.
sign-in-provider-not-fresh = { $name } n’a pas dit que tu viens de prouver qui tu es. Montre-le autrement.
sign-in-provider-taken = Rien n’a été relié : cette connexion chez { $name } est déjà celle d’un compte d’ici, ou le tien est relié à une autre.
sign-in-none-yet = Pour l’instant, seul ce navigateur te laisse entrer : il n’y a rien pour montrer que c’est toi. Dans ton compte, crée une clé d’accès, ajoute une adresse électronique ou fais des codes de secours. Reviens ensuite ici et connecte-toi avec.
sign-in-passkey-unknown = Cette clé d’accès ne te laisse pas entrer : elle n’est plus connue ici, ou a été demandée il y a trop longtemps. Réessaie, ou connecte-toi autrement.
sign-in-not-kept = Ce que tu as envoyé n’a pas été gardé. Montre que c’est toi, puis envoie-le encore une fois.
