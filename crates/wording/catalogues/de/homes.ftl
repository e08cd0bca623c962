homes-title = Welches Zuhause?
homes-intro = { $count ->
    [one] Dieses Notizbuch enthält ein Zuhause.
   *[other] Dieses Notizbuch enthält { $count } Zuhause. Jedes hat eigene Tiere, Wörter und Zahlen; nichts wird über sie hinweg gezählt.
}
homes-no-animal = noch kein Tier
homes-holds = { $animals }; { $count ->
    [one] ein Eintrag
   *[other] { $count } Einträge
}
homes-tail-since = { $name } (…{ $tail }, seit { $day })
homes-title-none = Noch kein Zuhause
homes-none = Dein Konto gehört noch zu keinem Zuhause. Bitte jemanden, der das Zuhause oder diesen Server verwaltet, um eine Einladung und öffne ihren Link auf diesem Gerät.
homes-none-private = Zuhause, die mit dir als Coach etwas teilen, stehen hier, solange sie es tun.
homes-clubs = Clubs
homes-to-server = Der Server
homes-give-up = Eine Rolle abgeben
homes-give-up-what = Du siehst ab dann nichts mehr vom Zuhause. Was du schriebst, bleibt in seinem Protokoll.
homes-go = Abgeben
homes-with-days = { $role }; { $days }
homes-not-begun = { $role }; hier steht noch nichts: Wer verwaltet, fängt an
homes-closed-now = { $role }; heute für dich geschlossen
homes-shares = { $role }; teilt { $what }
homes-find = Ein Zuhause finden
homes-find-button = Finden
homes-found-none = Keines deiner Zuhause hat „{ $text }“ im Namen.
homes-all = Alle Zuhause
homes-parted = Ein Zuhause, zu dem du gehörtest, hat diesen Server am { $day } verlassen. Hier ist alles davon gelöscht.
homes-lost = Das Zuhause, das hier offen war, ist für dich nicht mehr offen oder ist gegangen. Wähle eines deiner Zuhause.
