# What stands behind an invitation.
join-title = Du bist eingeladen
join-to = { $kind ->
    [home] In das Zuhause „{ $place }“.
    [lost_home] Zu dem Zuhause mit der Kennung { $place }, um es zu verwalten.
    [new_home] In ein neues Zuhause auf diesem Server.
    [club] In den Verein „{ $place }“.
   *[server] Auf diesen Server: { $place }.
}
join-part = { $role ->
    [keeper] Zum Verwalten: Du siehst und tust hier alles. Du lädst auch Leute ein, bestimmst, was geteilt wird, und kannst das Zuhause mitnehmen.
    [member] Als Mitglied: Du schreibst auf, was geschieht, und siehst alle Zahlen.
    [sitter] Zum Betreuen: An den vereinbarten Tagen schreibst du auf, was geschieht. Du siehst Heute und die Hausregeln.
    [observer] Zum Beobachten: Du bewertest, was du siehst, ohne zu sehen, was andere bewertet haben.
    [coach] Als Coach: Du siehst, was ein Zuhause teilt, sonst nichts.
    [club_keeper] Zum Verwalten des Vereins: Du lädst Leute ein und siehst, wer dazugehört.
   *[server_keeper] Zum Verwalten des Servers: Du legst Zuhause und Vereine an. Daten eines Zuhauses siehst du dadurch nicht.
}
join-days = Vereinbarte Tage: { $weekdays }, vom { $first } bis { $last }.
join-until = Die Einladung gilt bis { $when }, und einmal.
join-signed-in = Du bist als { $name } angemeldet.
join-join = Beitreten
join-have-account = Hast du hier schon ein Konto? { $link }
join-sign-in-first = Melde dich zuerst an
join-gone-title = Diese Einladung gilt nicht
join-gone = Sie wurde schon angenommen, ist zu alt, oder ihr Link ist nicht ganz. Bist du schon dabei? Dann melde dich an. Wenn nicht, bitte um eine neue.
join-taken-title = Nichts anzunehmen
join-taken = Du hast hier schon eine Rolle, oder jemand anderes war zuerst da. Frag, wer dich eingeladen hat.
join-welcome = Willkommen, { $name }
join-passkey = Melde dich nächstes Mal mit Finger, Gesicht oder PIN an. Dein Gerät behält dafür einen Passkey: kein Passwort.
join-make-passkey = Passkey einrichten
join-later = Später
join-way-back = Einmal abgemeldet, kommst du mit einem Passkey, einem Link per E-Mail oder einem Wiederherstellungscode zurück. Alle drei findest du unter { $account }.
join-not-yet = Sie lässt dich ab { $from } hinein. Bis dahin kann ablehnen, wer noch im Zuhause ist.
join-yours-title = Du bist schon dabei
join-yours = Du hast diese Einladung selbst angenommen. Sie gilt einmal; von nun an meldest du dich an.
join-yours-go = Weiter
join-you-hint = { $kind ->
    [home] wie du zu Hause heißt
    [new_home] wie du zu Hause heißt
    [lost_home] wie du zu Hause heißt
   *[other] wie dich andere hier sehen sollen
}
join-as-whom = Dort schreibst du als „{ $name }“.
join-not-you = Nicht { $name }? Abmelden
join-kept = Dieser Link war für den ersten Menschen, der hier verwaltet, und jemand anderes war zuerst da. Bist du das? Dann melde dich an. Wenn nicht, bitte um eine Einladung.
