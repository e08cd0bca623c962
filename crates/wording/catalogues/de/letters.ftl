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
letters-tidings-subject = Neues bei { $server }
letters-tidings-homes = { $homes ->
    [one] Ein Zuhause hat Neues für dich:
   *[other] { $homes } Zuhause haben Neues für dich:
}

    { $link }
letters-tidings-things = { $things ->
    [one] Dein Coach hat dir etwas geschickt:
   *[other] Dein Coach hat dir { $things } Dinge geschickt:
}

    { $link }
letters-tidings-why =
    Was es ist, steht dort und nicht hier, denn Briefe können andere lesen.

    Du bekommst diesen Brief, weil du ihn in deinem Konto bei { $server } gewählt hast: höchstens { $every ->
        [day] einmal am Tag
       *[week] einmal in der Woche
    }, und nur wenn es Neues gibt. Starke Stresszeichen stehen nie in einem Brief.

    Keine solchen Briefe mehr, ohne Anmeldung:

    { $link }
letters-stop = Keine Briefe über Neues mehr
letters-stop-what = Du bekommst dann keine solchen Briefe mehr. Links zum Anmelden kommen weiterhin, wenn du einen bestellst.
letters-stopped-title = Keine solchen Briefe mehr
letters-stopped = Erledigt. Wenn du sie wieder willst, wähle es in deinem Konto.
letters-stop-unknown = Dieser Link beendet keine Briefe: Er ist zu alt oder unvollständig kopiert. Auch in deinem Konto kannst du sie beenden.
