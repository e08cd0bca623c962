# The page of one’s own account.
account-title = Dein Konto
account-no-way-back = Du hast noch keinen Weg zurück. Füge einen Passkey, eine E-Mail-Adresse oder Wiederherstellungscodes hinzu.
account-you = Du
account-language-hint = dieser Seite und der Briefe; die Seiten eines Zuhauses richten sich nach deiner Karte dort
account-passkeys = Passkeys
account-passkeys-what = Ein Passkey meldet dich mit Finger, Gesicht oder PIN an. Hab einen auf jedem Gerät, oder einen, den deine Geräte teilen.
account-times = Seit { $since }. Zuletzt benutzt: { $used }.
account-unused = Seit { $since }. Noch nicht benutzt.
account-forget = Vergessen
account-passkey-name = Name des Passkeys
account-passkey-name-hint = wenn du magst; sonst die Art des Geräts
account-add-passkey = Passkey hinzufügen
account-cancelled = Es wurde kein Passkey angelegt. Versuch es wieder, wann du magst.
account-failed = Dieses Gerät konnte keinen Passkey anlegen.
account-known = Dieses Gerät hat schon einen Passkey dieses Kontos.
account-email-none = Noch keine Adresse. Mit einer kommst du per Link in der E-Mail hinein, wo du keinen Passkey hast.
account-email-is = Links zum Anmelden gehen an { $email }.
account-prove = Brief senden, um sie zu belegen
account-forget-email = Adresse vergessen
account-proof-sent = Ein Brief an { $email } ist unterwegs. Öffne seinen Link innerhalb von { $minutes ->
    [one] einer Minute
   *[other] { $minutes } Minuten
} in einem Browser, der hier angemeldet ist.
account-prove-title = Ist das deine Adresse?
account-prove-what = Ist sie belegt, können Links zum Anmelden an sie gehen.
account-prove-yes = Ja, es ist meine
account-prove-signed-out = Melde dich hier zuerst an. Öffne dann den Link im Brief noch einmal.
account-email-taken = Ein anderes Konto hat diese Adresse.
account-codes = Wiederherstellungscodes
account-codes-what = Für den Tag, an dem jeder Passkey verloren ist. Druck sie aus, und verwahr sie sicher.
account-codes-left = { $count ->
    [0] Du hast keine.
    [1] Einer ist übrig.
   *[other] { $count } sind übrig.
}
account-codes-make = Neue Codes machen
account-codes-old = Die bisherigen gelten dann nicht mehr.
account-codes-once = Sie werden nur dieses Mal gezeigt. Jeder meldet dich einmal an.
account-codes-done = Ich habe sie
account-sessions = Wo du angemeldet bist
account-zone = Die Uhrzeiten gelten für { $zone }.
account-end-others = Überall sonst abmelden
account-roles = Deine Rollen
account-role = { $role ->
    [keeper] Du verwaltest { $place }
    [member] Mitglied in { $place }
    [sitter] Du betreust in { $place }
    [observer] Du beobachtest in { $place }
    [coach] Coach in { $place }
    [club_keeper] Du verwaltest den Verein { $place }
   *[server_keeper] Du verwaltest den Server
}
account-new-home = ein Zuhause noch ohne Namen
account-no-role = Du hast hier keine Rolle. Eine Einladung gibt dir eine.
account-leave = Aufgeben
account-leave-what = Du siehst dann sofort nichts mehr davon. Was du aufgeschrieben hast, bleibt dort. Nur eine Einladung bringt dich zurück.
account-leave-button = Diese Rolle aufgeben
account-last-keeper = Sonst verwaltet dort niemand. Lass zuerst jemand anderen verwalten.
account-erase = Konto löschen
account-erase-what = Dein Name, deine Adresse, Passkeys, Codes, Sitzungen und Rollen verschwinden sofort. Das lässt sich nicht zurücknehmen. Was du ins Protokoll eines Zuhauses geschrieben hast, bleibt dort. Sicherungen des Servers halten den Rest noch { $days ->
    [one] einen Tag
   *[other] { $days } Tage
}.
account-erase-button = Mein Konto löschen
account-erase-alone = Sonst verwaltet niemand, was hier steht. Bevor das Konto gehen kann, lass für jedes jemand anderen verwalten oder geh mit ihm.
account-erase-other-keeper = Jemand anderen verwalten lassen
account-erased-title = Dein Konto ist gelöscht
account-erased = Du bist hier und überall abgemeldet.
account-sign-out-anyway = Trotzdem abmelden
account-id = Kennung dieses Kontos, für die Person, die den Server verwaltet: { $id }
account-provider-what = Du kannst dich auch mit { $name } anmelden. Dieser Server erfährt von dort nur, wer von den Leuten dort du bist.
account-provider-link = Künftig mit { $name } anmelden
account-provider-forget = Nicht mehr mit { $name } anmelden
account-home-id = Kennung dieses Zuhauses: { $id }
account-codes-ids = Wenn alles andere verloren ist, kann dich, wer den Server verwaltet, mit einer dieser Kennungen neu einladen:
account-codes-account = Dein Konto
account-erase-looks = Jedes Zuhause liest weiterhin, dass jemand geschaut hat, ohne deinen Namen: deine Rolle, die Seite und den Tag, { $days } Tage lang.
account-proof-not-sent-title = Der Brief ging nicht hinaus
account-proof-not-sent = An { $email } ließ sich gerade kein Brief senden. Nichts hat sich geändert. Prüfe die Adresse und versuch es später noch einmal; geht es auch dann nicht, sag es dem Menschen, der den Server verwaltet.
account-news = Neues per E-Mail
account-news-what = Ein kurzer Brief, wenn es Neues gibt: wie viel, und wo. Keine Namen, keine Zahlen aus dem Zuhause, nichts von dem, was geschrieben wurde.
account-news-urgent = Dringendes kommt nie per E-Mail. Starke Stresszeichen stehen oben auf dem Pult und im Zuhause auf Heute.
account-news-no-email = Belege dafür zuerst eine E-Mail-Adresse.
account-news-every = Wie oft höchstens
account-news-never = Gar nicht
account-news-daily = Einmal am Tag
account-news-weekly = Einmal in der Woche, montags
account-news-hour = Ab wann
account-news-zone = Wo du lebst (bestimmt die Uhrzeit)
