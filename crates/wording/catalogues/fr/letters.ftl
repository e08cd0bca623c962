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
