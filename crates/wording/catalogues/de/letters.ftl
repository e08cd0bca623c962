# Letters sent by e-mail, in plain text.
letters-sign-in-subject = Dein Link zum Anmelden
letters-sign-in =
    Mit diesem Link meldest du dich bei { $server } an:

    { $link }

    Er gilt einmal, { $minutes ->
        [one] eine Minute
       *[other] { $minutes } Minuten
    } lang.

    Wenn du ihn nicht bestellt hast, tu nichts. Ohne diesen Brief kommt niemand hinein.
letters-prove-subject = Ist das deine Adresse?
letters-prove =
    Jemand bei { $server } sagt, das sei die eigene Adresse. Öffne diesen Link dort, wo du angemeldet bist:

    { $link }

    Er gilt einmal, { $minutes ->
        [one] eine Minute
       *[other] { $minutes } Minuten
    } lang.

    Wenn du das nicht warst, tu nichts. Die Adresse wird dann nicht übernommen.
letters-rescue-subject = Jemand wurde eingeladen, dein Zuhause zu verwalten
letters-rescue = 
    { $by }, verwaltet { $server }, hat jemanden eingeladen, dein Zuhause zu verwalten: Es hieß, niemand komme mehr hinein.

    Ab { $from } (UTC) kommt hinein, wer diesen Link hat. Wenn bei dir niemand darum gebeten hat, lehne es hier ab:

    { $link }
