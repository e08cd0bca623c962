sharing-role = { $role ->
    [keeper] verwaltet das Zuhause
    [member] gehört dazu
    [sitter] betreut an Tagen
    [observer] beobachtet
    [coach] Coach
    [club_keeper] verwaltet den Club
   *[other] verwaltet den Server
}
sharing-role-can = { $role ->
    [keeper] sieht und schreibt alles, lädt ein, stimmt zu und kann mit dem Zuhause gehen
    [member] sieht und schreibt alles über die Tiere; ändert keine Rollen und keine Einwilligung
    [sitter] an vereinbarten Tagen: sieht Heute und die Hausregeln und schreibt am Brett
    [observer] schreibt am Brett und bewertet Prüfungen, ohne zu sehen, was andere bewertet haben
   *[other] siehe die Seite der Rollen
}
sharing-shows = { $what ->
    [see_today] Heute
    [see_rules] die Hausregeln
    [see_figures] die Zahlen
    [see_log] das Protokoll, Eintrag für Eintrag
    [hear_snippets] die aufbewahrten Töne von Drücken
    [advise] die Seite Abgemacht, auch zum Schreiben
    [export] das ganze Protokoll als Datei
    [record] das Brett, um daran zu notieren
   *[other] etwas, wofür diese Version keinen Namen hat
}
sharing-days-every = jeden Tag vom { $first } bis { $last }
sharing-days-some = vom { $first } bis { $last }: { $weekdays }
sharing-qr = Der Link als QR-Code
sharing-shown-once = { $count ->
    [one] Dieser Link wird nur jetzt gezeigt. Schick ihn, oder lass das andere Telefon ihn scannen.
   *[other] Diese Links werden nur jetzt gezeigt. Schick jeden, oder lass das andere Telefon seinen Code scannen.
}
sharing-holds = Gilt bis { $until }, einmal.
sharing-whoever = Wer ihn zuerst öffnet, bekommt die Rolle. Bis dahin kannst du ihn zurücknehmen.
sharing-leaving = Gehen
sharing-leaving-short = Nimm alles als Datei mit, dann wird es hier gelöscht.
sharing-leave = Diesen Server verlassen
sharing-who-intro = Diese Menschen können in diesem Moment etwas von eurem Zuhause sehen.
sharing-sees-nothing = sieht in diesem Moment keine Seite mit dem, was andere schrieben
sharing-sees = sieht { $what }
sharing-nobody-else = Sonst sieht hier niemand etwas.
sharing-keepers-see = Wer den Server verwaltet, sieht davon durch diese Rolle nichts; wer die Maschine oder ihre Sicherungen in der Hand hat, kann lesen, was dort liegt.
sharing-coach-of = Coach, { $clubs }
sharing-as-person = { $role }, als { $name }
sharing-looked = Wer geschaut hat
sharing-looked-how = Blicke von Coaches, Betreuenden und Beobachtenden werden notiert. Was jemand binnen einer Viertelstunde wieder öffnet oder was offen bleibt, ist ein Blick. Die der Menschen im Haus werden nicht notiert: Wer zusammenlebt, überwacht einander hier nicht.
sharing-looked-none = Noch hat niemand geschaut.
sharing-between = { $from } bis { $to }
sharing-look = { $times ->
    [one] { $when }: { $who }, { $what }, { $times } Mal
   *[other] { $when }: { $who }, { $what }, { $times } Mal
}
sharing-people = Wer dazugehört
sharing-you = (du)
sharing-change-of = Rolle von { $name } ändern
sharing-change = Ändern
sharing-invite = Jemanden einladen
sharing-open-invitations = Offene Einladungen
sharing-end-invitation = Zurücknehmen
sharing-consent = Einwilligung
sharing-consent-none = Mit niemandem außerhalb des Zuhauses wird etwas geteilt.
sharing-consent-change = Geben oder zurücknehmen
sharing-consent-before = Früher gegeben
sharing-given = { $what }: seit { $at }
sharing-taken-back = { $what }: gegeben { $at }, zurückgenommen { $ended }
sharing-opens-nothing = { $what }: gegeben { $at }, aber nicht auf diesem Server von jemandem, der verwaltet; es öffnet nichts
sharing-purpose = { $purpose ->
    [coach_figures] { $who }: sieht Zahlen
    [coach_log] { $who }: liest das Protokoll
    [coach_snippets] { $who }: hört Töne von Drücken
    [norms] Zahlen zählen in den Vergleichswerten dieses Servers
   *[other] Aufzeichnungen dürfen an Studien gehen
}
sharing-nameless = { $kind ->
    [club] ein Club, den es hier nicht mehr gibt
   *[other] ein Coach, den es hier nicht mehr gibt
}
sharing-back = Zurück zu: Wer das sehen kann
sharing-invitation = Einladung
sharing-role-missing = fehlt: Wähle eine
sharing-person-missing = fehlt: Wer betreut oder beobachtet, schreibt unter einem eigenen Namen des Zuhauses
sharing-day-missing = fehlt: Wähle einen Tag
sharing-weekdays-missing = fehlen: Wähle mindestens einen
sharing-last-before-first = liegt vor dem ersten: Wähle denselben oder einen späteren
sharing-invite-intro = Du bekommst einen Link, der einige Tage gilt und einmal funktioniert.
sharing-make-link = Link machen
sharing-no-person = keine Person des Zuhauses
sharing-as-role = Rolle
sharing-which-person = Welche Person des Zuhauses
sharing-which-person-hint = Nötig für alle, die an Tagen betreuen oder beobachten.
sharing-sitter-days = Tage, für die Betreuung
sharing-first-day = Erster Tag
sharing-last-day = Letzter Tag
sharing-on-weekdays = Wochentage
sharing-role-of = Rolle von { $name }
sharing-end-role = Rolle beenden
sharing-end-role-what = { $name } sieht ab dann nichts mehr vom Zuhause. Was { $name } schrieb, bleibt im Protokoll.
sharing-end-role-of = Rolle von { $name } beenden
sharing-consent-intro = Nach jedem Zweck wird einzeln gefragt. Alle sind aus, bis du einwilligst, und du kannst jede Einwilligung jederzeit zurücknehmen.
sharing-with-coaches = Coaches und Clubs
sharing-with-how = Frag deinen Coach nach dem Link oder Code auf der Seite des Clubs. Ihn zu öffnen teilt nichts: Du wirst erst gefragt.
sharing-club-code = Link oder Code des Clubs
sharing-look-at-club = Weiter
sharing-no-code = ist kein Link oder Code eines Clubs: Kopiere ihn ganz aus der Nachricht des Coaches
sharing-whole-club = Was du hier gibst, hat jeder Coach von { $club }, jetzt und später, solange er einer ist.
sharing-coaches-of = Jeder Coach von { $club }
sharing-coach-alone = Was du hier gibst, hat nur { $name } von { $club }, solange { $name } Coach ist.
sharing-not-among = Das ist keines deiner Zuhause, oder keines mehr.
sharing-no-such-club = Einen solchen Club oder Coach gibt es hier nicht. Frag deinen Coach noch einmal nach dem Link.
sharing-already-seen = Zurücknehmen beendet es sofort. Was jemand schon gesehen, notiert oder gespeichert hat, lässt sich nicht zurückholen.
sharing-share-with = Teilen mit: { $who }
sharing-purpose-title = { $purpose ->
    [coach_figures] Zahlen
    [coach_log] Das Protokoll
    [coach_snippets] Töne von Drücken
    [norms] Vergleichswerte
   *[other] Forschung
}
sharing-on-since = An seit { $at }
sharing-off = Aus
sharing-take-back = Zurücknehmen
sharing-give = Ich willige ein
sharing-unclear = ist unklar: Öffne die Seite neu und wähle dort
sharing-new-words = haben sich seither geändert: Öffne die Seite neu und lies sie
sharing-other-home = ist inzwischen ein anderes: Dieses Gerät hat in einem anderen Tab gewechselt; öffne die Seite neu
sharing-not-the-name = ist nicht „{ $name }“: Tipp es, wie es hier steht
sharing-take-along = Zuerst: Nimm alles mit
sharing-take-along-what = Das Archiv enthält das Protokoll und seine Töne. Das Programm öffnet es zu Hause als ganzes Notizbuch.
sharing-what-happens = Was geschieht
sharing-erased = Sofort gelöscht: Protokoll, Töne, Bilder, alles daraus Berechnete, wer zum Zuhause gehört, Einladungen, Einwilligung und wer geschaut hat.
sharing-stays = Bleibt: ein Vermerk mit der Nummer des Zuhauses und dem Tag des Gehens. Er enthält keine Namen und verhindert, dass alte Telefone das Zuhause zurückbringen.
sharing-accounts-stay = Konten bleiben bei ihren Menschen. Jeder kann das eigene Konto auf seiner Seite löschen.
sharing-backups = { $days ->
    [one] Sicherungen des Servers enthalten alles noch höchstens { $days } Tag lang.
   *[other] Sicherungen des Servers enthalten alles noch höchstens { $days } Tage lang.
}
sharing-others-have = Was andere schon haben, lässt sich nicht zurückholen: was ein Coach notiert oder gespeichert hat, was in Vergleichswerte oder an eine Studie ging.
sharing-phones = Telefone, die offline waren, behalten ihre nicht gesendeten Einträge. Dieser Server weist sie ab. Öffne auf so einem Telefon die Seite deiner Zuhause: Sie bietet sie als Datei an. Lösche erst danach dort die Daten der Seite, denn das verwirft sie.
sharing-leave-now = Dann: gehen
sharing-no-way-back = Hier gibt es kein Zurück. Sieh zuerst ins Archiv: Lässt es sich öffnen?
sharing-type-name = Tipp den Namen des Zuhauses: { $name }
sharing-leave-button = Gehen und löschen
sharing-gone-title = Das Zuhause ist gegangen
sharing-gone = „{ $name }“ hat diesen Server verlassen, und hier ist alles davon gelöscht.
sharing-gone-not-yet = „{ $name }“ hat diesen Server verlassen: Niemand kann es mehr öffnen. Sein Protokoll ließ sich gerade nicht löschen. Der Server versucht es innerhalb einer Stunde selbst wieder; wer ihn verwaltet, kann es sofort tun.
sharing-to-homes = Zu deinen Zuhause
sharing-anew = Vom Server aus eingeladen
sharing-anew-by = { $by }, verwaltet den Server, hat am { $at } jemanden neu eingeladen, dieses Zuhause zu verwalten.
sharing-anew-taken = { $who } kam damit am { $at } herein.
sharing-anew-refused = { $who } hat es am { $at } abgelehnt. Niemand kam damit herein.
sharing-anew-open = Ab { $from } kommt herein, wer den Link hat, und verwaltet das Zuhause. Hat hier niemand darum gebeten? Dann lehne es ab.
sharing-anew-over = Es ist abgelaufen. Niemand kam damit herein.
sharing-anew-refuse = Ablehnen
sharing-words-number = Fassung { $number } dieser Worte
sharing-words-of = { $what } (Fassung { $number } der Worte)
sharing-words-since = Du hast in Fassung { $number } eingewilligt, die weniger genau sagte, was zu sehen ist oder gegeben wird:
sharing-words-newer = Die Worte sind seitdem genauer. Lies sie unter „Geben oder zurücknehmen“.
sharing-you-see = Du siehst hier: { $what }.
sharing-you-see-nothing = Du siehst hier gerade keine Seite mit dem, was andere geschrieben haben.
sharing-seen-by-home = Was du hier schreibst, sehen alle, die das Zuhause verwalten oder Mitglied sind, und Coaches, soweit es jemand aus der Verwaltung erlaubt hat.
sharing-looks-of-you = Deine Blicke werden für die notiert, die das Zuhause verwalten: welche Seite und wann. Sie sehen deinen Namen.
sharing-account-seen = Deinen Namen sehen die Zuhause und Clubs, in denen du eine Rolle hast. Deine E-Mail-Adresse, Passkeys und Sitzungen stehen nur auf der Seite deines Kontos.
sharing-page = { $page ->
    [calendar] den Kalender, über seine Adresse
    [desk] das Pult, neben anderen
    [today] Heute
    [board] das Brett
    [likes] Vorlieben
    [words] Wörter
    [evidence] Belege
    [days] Tage
    [patterns] Muster
    [others] Andere
    [designs] Versuche mit einer Änderung
    [swaps] Tausche
    [checks] Prüfungen
    [heard] was gehört wurde
    [log] das Protokoll
    [agreement] Übereinstimmung zweier Wertungen
    [ideas] Ideen für Belohnungen
    [talk] was abgemacht wurde
    [sheets] Blätter zum Drucken
    [media] Bilder und Aufnahmen
    [figures] Zahlen für Programme
    [scored] was sie bewertet haben
   *[other] eine andere Seite
}
sharing-copy = Link kopieren
sharing-copied = Kopiert
sharing-send = Senden
sharing-new-person = Oder der Name von jemand Neuem
sharing-new-person-hint = Für wen es hier noch keine Karte gibt: Sie entsteht mit der Einladung.
sharing-roles-later = Wer an Tagen betreut oder beobachtet, kann eingeladen werden, sobald das Zuhause eingerichtet ist.
sharing-given-until = { $what }: seit { $at }, bis { $until }
sharing-given-for = { $what }: gegeben { $at }, allein für { $from } bis { $until }
sharing-restored = Dieser Server wurde am { $at } aus einer Sicherung zurückgeholt. Alle Einwilligungen endeten damit, damit keine wieder gilt, die du zurückgenommen hattest. Gib neu, was du willst, und sieh nach, ob alle unten noch hierher gehören.
sharing-ended-by-restore = { $what }: gegeben { $at }; endete, als der Server aus einer Sicherung zurückgeholt wurde, bis du es neu gibst
sharing-leave-for-all = Auch { $names } verwaltet dieses Zuhause. Gehst du damit, endet es für alle, und niemand fragt sie. Sprecht zuerst.
sharing-person-taken = gehört schon jemandem, und dann wäre nicht zu unterscheiden, wer was schrieb: Wähle jemand anderen oder tippe den Namen von jemand Neuem
sharing-name-is-there = „{ $name }“ hat hier schon eine Karte: Wähle sie oben, wenn dieser Mensch gemeint ist, oder tippe einen Namen, der beide unterscheidet
sharing-last-is-over = ist schon vorbei: Wähle heute oder einen späteren Tag
sharing-look-left = { $times ->
    [one] jemand, der gegangen ist ({ $role }): { $what }, { $times } Mal
   *[other] jemand, der gegangen ist ({ $role }): { $what }, { $times } Mal
}
sharing-stays-accounts = Bleibt { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}: welche Konten dazugehörten, damit ihre Menschen lesen, dass es gegangen ist.
sharing-stays-notebooks = Bleibt { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
}: ein Hash des Schlüssels jedes verknüpften Notizbuchs, damit es erfährt, dass das Zuhause gegangen ist. Kein Name, kein Konto.
sharing-end-all = Alles Teilen beenden
sharing-end-all-what = Das nimmt alle Einwilligungen auf einmal zurück. Von da an gilt keine von diesen:
sharing-end-all-now = Jetzt alles beenden
sharing-name-and-person = steht neben einer oben gewählten Person: Lass eines von beiden leer
sharing-weekdays-none = enthalten keinen der Tage vom ersten bis zum letzten: Wähle einen, der dazwischen liegt
sharing-last-too-far = liegt mehr als ein Jahr nach dem ersten: Wähle { $day } oder einen früheren Tag, und lade danach neu ein
sharing-news-anew = { $by }, verwaltet den Server, hat jemanden neu eingeladen, dieses Zuhause zu verwalten. Ab { $from } kommt herein, wer den Link hat, und verwaltet das Zuhause.
sharing-news-look = Ansehen, und ablehnen, wenn hier niemand darum bat
sharing-news-anew-short = Jemand wurde neu eingeladen, dieses Zuhause zu verwalten: ansehen
sharing-news-restored = Dieser Server wurde am { $at } aus einer Sicherung zurückgeholt, und jede Einwilligung endete damit. Wer dich als Coach begleitet, sieht nichts von diesem Zuhause, bis du neu einwilligst.
sharing-news-give = Ansehen, was endete, und neu geben, was du willst
sharing-agree-newer = Diesen Worten zustimmen, statt den früheren
