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
homes-title-server = Du verwaltest diesen Server
homes-title-clubs = Deine Clubs
homes-none-keeper = Du gehörst hier zu keinem Zuhause und brauchst dafür keines. Eine Einladung zu einem, auf diesem Gerät geöffnet, fügt es hinzu.
homes-none-coach = Im Moment teilt kein Zuhause etwas mit dir. Ein Zuhause steht hier, solange jemand, der es verwaltet, damit einverstanden ist. Es verschwindet, wenn das zurückgenommen wird, abläuft oder das Zuhause geht.
homes-none-for-programs = Dein Konto gehört hier zu keinem Zuhause. Öffne zuerst den Link einer Einladung.
homes-anew = Jemand, der den Server verwaltet, hat jemanden neu eingeladen, „{ $home }“ zu verwalten.
homes-restored = Dieser Server wurde am { $at } aus einer Sicherung zurückgeholt, und jede Einwilligung endete damit. Die Zuhause, die du begleitest, sind wieder da, sobald jemand dort neu einwilligt. Frag nach.
