# Letters sent by e-mail, in plain text.
letters-sign-in-subject = Ton lien de connexion
letters-sign-in =
    Ce lien te connecte à { $server } :

    { $link }

    Il sert une fois, pendant { $minutes ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    }.

    Si ce n’est pas toi qui l’as demandé, ne fais rien. Sans cette lettre, personne n’entre.
letters-prove-subject = Est-ce ton adresse ?
letters-prove =
    Quelqu’un sur { $server } dit que cette adresse est la sienne. Ouvre ce lien là où tu es en session :

    { $link }

    Il sert une fois, pendant { $minutes ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    }.

    Si ce n’est pas toi, ne fais rien. L’adresse n’est alors pas retenue.
letters-rescue-subject = Quelqu’un a été invité à tenir ton foyer
letters-rescue = 
    { $by }, qui tient { $server }, a invité quelqu’un à tenir ton foyer : on a dit que plus personne n’y entrait.

    À partir du { $from } (UTC), qui a ce lien entre. Si personne de ton foyer ne l’a demandé, refuse-le ici :

    { $link }
letters-tidings-subject = Du nouveau sur { $server }
letters-tidings-homes = { $homes ->
    [one] { $homes } foyer a du nouveau pour toi :
   *[other] { $homes } foyers ont du nouveau pour toi :
}

    { $link }
letters-tidings-things = { $things ->
    [one] Ton coach t’a envoyé { $things } chose :
   *[other] Ton coach t’a envoyé { $things } choses :
}

    { $link }
letters-tidings-why =
    Ce que c’est se lit là-bas et non ici, car d’autres peuvent lire le courrier.

    Tu reçois cette lettre parce que tu l’as choisie dans ton compte sur { $server } : { $every ->
        [day] une fois par jour
       *[week] une fois par semaine
    } au plus, et seulement quand il y a du nouveau. Les signes forts de stress ne sont jamais annoncés par courriel.

    Ne plus recevoir ces lettres, sans te connecter :

    { $link }
letters-stop = Plus de lettres sur les nouveautés
letters-stop-what = Tu ne recevras plus ces lettres. Les liens de connexion arrivent toujours quand tu en demandes un.
letters-stopped-title = Plus de ces lettres
letters-stopped = C’est fait. Si tu les veux de nouveau, choisis-le dans ton compte.
letters-stop-unknown = Ce lien n’arrête aucune lettre : il est trop ancien ou a été copié en partie. Tu peux aussi les arrêter dans ton compte.
