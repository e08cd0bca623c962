sheets-title = Blätter
sheets-intro = Jedes lässt sich auf A4 oder Letter drucken, ohne die Menüs, und gibt es als PDF, das Vorleseprogramme lesen.
sheets-fridge = Für den Kühlschrank
sheets-fridge-what = Was jedes Wort bedeutet, wie alle darauf antworten, was alle für „jetzt nicht“ sagen, und die Hausregeln.
sheets-rules = Hausregeln
sheets-buttons = Für die Knöpfe
sheets-buttons-what = Schlichte Etiketten mit dem Wort.
sheets-labels = Etiketten
sheets-animal-what = Für die Familie, die Tierarztpraxis oder eine Fachperson für Tierverhalten.
sheets-progress = Bericht über Fortschritte
sheets-likes-of = Was { $name } mag
sheets-print = Drucken
sheets-print-menu = oder drucke aus dem Menü des Browsers
sheets-all = Alle Blätter
sheets-pdf-a4 = PDF, A4
sheets-pdf-letter = PDF, US Letter
sheets-foot = Sayso · { $home } · { $day }
sheets-foot-page = Sayso · { $home } · { $day } · Seite { $page } von { $of }

sheets-period = Zeitraum
sheets-days = { $days ->
    [one] Ein Tag
   *[other] { $days } Tage
}
sheets-progress-of = Fortschritte von { $name }
sheets-not-a-diagnosis = Keine Diagnose.
sheets-own-records = Eigene Aufzeichnungen eines Zuhauses, von einem Programm gezählt. Niemand hat sie geprüft. Sie können nicht sagen, was ein Tier versteht, fühlt oder woran es leidet; frag dazu eine Tierarztpraxis oder eine qualifizierte Fachperson für Tierverhalten.
sheets-animal = Tier
sheets-species = { $species ->
    [dog] Hund
    [cat] Katze
    [parrot] Papagei
    [rabbit] Kaninchen
   *[other] andere Tierart
}
sheets-age-weeks = { $weeks ->
    [one] eine Woche alt
   *[other] { $weeks } Wochen alt
}
sheets-age-months = { $months ->
    [one] einen Monat alt
   *[other] { $months } Monate alt
}
sheets-age-years = { $years ->
    [one] ein Jahr alt
   *[other] { $years } Jahre alt
}
sheets-age-about = etwa { $age }
sheets-from-to = { $first } bis { $last } ({ $zone })
sheets-printed-by = Gedruckt von
sheets-limits = Grenzen
sheets-health = Gesundheitliche Hinweise

sheets-in-short = Kurz gesagt
sheets-noted = Tage, an denen etwas notiert wurde: { $noted } von { $days }. Was niemand notiert hat, steht hier nicht.
sheets-joined = Sitzungen, bei denen { $name } mitmachte: { $share }.
sheets-counts = Gezeigt von Menschen: { $showings }. Eigene Drücke von { $name }: { $presses }.
sheets-welfare = Wohlergehen:

sheets-words = Wörter
sheets-none-taught = Noch wird kein Wort gelehrt.
sheets-since = von Anfang an; selbst gedrückt im Zeitraum oben
sheets-word = Wort
sheets-stage = Stufe
sheets-shown = Gezeigt
sheets-to-giving = Vom Druck zum Geben
sheets-when-invited = Gedrückt bei Einladung und Wunsch
sheets-own-presses = Eigene Drücke
sheets-presses-rest = Dazu eigene Drücke im Zeitraum bei Wörtern, die { $name } jetzt nicht lernt: { $words }.
sheets-presses-of = „{ $word }“ { $presses }
sheets-n = { $n }
sheets-n-of = (aus { $n })
sheets-stages = Stufen: vorbereiten, zeigen (Menschen drücken und geben), einladen (ein Angebot, eine Pause und die Sache in jedem Fall), sich unterhalten ({ $name } drückt von sich aus). Nicht zu drücken zählt nie als nicht verstehen.

sheets-showings-a-week = Gezeigt je Woche
sheets-joined-by-week = Sitzungen, bei denen mitgemacht wurde, je Woche
sheets-week-from = Woche ab { $day }
sheets-axis-week = Woche ab
sheets-axis-showings = gezeigt
sheets-axis-joined = mitgemacht
sheets-axis-pressed = gedrückt
sheets-told = { $what }: { $figure }

sheets-answered = Wie auf eigene Drücke von { $name } geantwortet wurde
sheets-given = Gegeben: { $share }.
sheets-given-partly = Gegeben: { $share }, teilweise: { $partly }.
sheets-not-now = Jetzt nicht: { $declined }, etwas anderes: { $other }.
sheets-missed = Verpasst oder keine Antwort notiert: { $share }.

sheets-body-language = Notierte Körpersprache
sheets-signs = Macht mit: { $joining }. Milde Zeichen von Stress: { $mild }. Starke Zeichen: { $strong }.
sheets-strong-sign = { $day }: { $sign }
sheets-signs-note = Wie es die Menschen dort sahen. Ein einzelnes Zeichen sagt wenig; achte auf den ganzen Körper und die Lage.

sheets-food = Futterbelohnungen
sheets-reckoned = Gerechnet mit { $day } kcal am Tag, davon Belohnungen höchstens { $rewards } kcal. Grundlage: { $basis }.
sheets-reckoned-range = Gerechnet mit { $day } kcal am Tag (einzelne Tiere: { $low } bis { $high }), davon Belohnungen höchstens { $rewards } kcal. Grundlage: { $basis }.
sheets-no-allowance = Es wird keine Menge berechnet: { $why }.
sheets-why-unknown = sie ist nicht bekannt

sheets-likes = Vorlieben
sheets-last-tested = Zuletzt getestet am { $day }.
sheets-not-tested = Nicht genug getestet, um etwas zu sagen ({ $trials ->
    [0] kein Durchgang
    [one] ein Durchgang
   *[other] { $trials } Durchgänge
}).

sheets-not-known = Was nicht bekannt ist
sheets-open-no-check = Ob { $name } ein Wort versteht: Es gab keine geplante Prüfung. Drücken kann auch von der Gewohnheit an einen Ort kommen, von Hinweisen, die Menschen unbewusst geben, oder von dem, was sich früher gelohnt hat.
sheets-open-checks = Ob { $name } ein Wort versteht, klärt dieses Blatt nicht: { $checks ->
    [one] ein Durchgang
   *[other] { $checks } Durchgänge
} geplanter Prüfungen, zu lesen auf der Seite Belege.
sheets-open-word = Wie auf „{ $word }“ bei Einladung geantwortet wird.
sheets-open-little = Wenig über „{ $word }“ bei Einladung ({ $n ->
    [one] einmal
   *[other] { $n }-mal
}).
sheets-open-sessions = Wie gern { $name } mitmacht: In diesem Zeitraum wurde keine Sitzung notiert.
sheets-open-likes = Was { $name } am liebsten mag: Es gab keinen Vorlieben-Test.

sheets-nothing-tested = Noch wurde nichts getestet.
sheets-trials = Aus { $trials ->
    [one] einem Durchgang
   *[other] { $trials } Durchgängen
}, davon ohne Wahl: { $none }.
sheets-trials-last = Aus { $trials ->
    [one] einem Durchgang
   *[other] { $trials } Durchgängen
}, der letzte am { $day }, davon ohne Wahl: { $none }.
sheets-test-again = Noch einmal testen:
sheets-over-middling = Wahrscheinlichkeit, vor einer mittelmäßig beliebten Sache genommen zu werden
sheets-chance = Wahrscheinlichkeit
sheets-consistency = { $circular ->
    [0] Die Wahlen passen zueinander: kein Kreis wie A vor B, B vor C, C vor A
    [one] Die Wahlen haben einen Kreis wie A vor B, B vor C, C vor A, von höchstens { $most }
   *[other] Die Wahlen haben { $circular } Kreise wie A vor B, B vor C, C vor A, von höchstens { $most }
} ({ $items } Sachen zu zweit verglichen; Stimmigkeit { $zeta }, 1 ist ohne Kreis).
sheets-side = Von links aus Sicht von { $name } genommen: { $share }.
sheets-scores = Werte je Art des Tests
sheets-thing = Sache
sheets-score = { $format ->
    [single] Einzeln: Anteil der Angebote, zu denen { $name } kam
    [paired] Zu zweit: Anteil der Angebote, bei denen es genommen wurde
    [multiple] Alle in einer Reihe: Anteil der Angebote, bei denen es genommen wurde
   *[free_access] Stoppuhr: Anteil der Zeit, die damit verbracht wurde
}
sheets-likes-note = Vorlieben ändern sich mit Hunger, Stunde und Tag; dies wählte { $name }, als gefragt wurde. Ein Strich ist das 95-%-Intervall; „aus“ zählt die Angebote.
sheets-never-give = Gib das { $name } nie.
sheets-eaten = { $thing }: { $why }. Schon gefressen? Ruf jetzt eine Tierarztpraxis an.
sheets-care = Vorsicht, für { $name }:

sheets-none-on-board = Noch ist kein Wort auf dem Brett.
sheets-button = Knopf
sheets-means = Bedeutet
sheets-answers = Alle antworten
sheets-not-now-said = Jetzt nicht
sheets-ends-session = beendet eine Sitzung
sheets-for-all = alle
sheets-every-press = Antworte auf jeden Druck, auch auf einen, der nach Versehen aussieht.
sheets-come-and-go = Jedes Tier darf kommen und gehen; ruf oder locke es nie zum Brett.
sheets-batteries = Verschließ Batteriefächer mit ihren Schrauben. Eine verschluckte oder zerbissene Batterie ist ein Notfall. Ein Tier: Ruf sofort eine Tierarztpraxis an. Ein Kind, das eine Knopfzelle verschluckt oder in Nase oder Ohr gesteckt hat: sofort in die Notaufnahme.
sheets-of-animal = { $name }:

sheets-size = Größe
sheets-size-of = { $size ->
    [small] klein, { $width } × { $height } mm
    [middle] mittel, { $width } × { $height } mm
   *[large] groß, { $width } × { $height } mm
}
sheets-glue = Etiketten helfen Menschen. Abgerissene Stücke können verschluckt werden: Kleb sie flach auf, und nimm keine, wo ein Tier kaut. Druck mit 100 %, ohne an die Seite anzupassen.

sheets-written = Geschrieben: { $file } ({ $pages ->
    [one] eine Seite
   *[other] { $pages } Seiten
}).
sheets-no-animal-needed = Das Blatt „{ $sheet }“ betrifft das ganze Zuhause: Lass --animal weg.
sheets-many-animals = Hier leben mehrere Tiere: Sag mit --animal, welches, eines von { $names }.
sheets-no-animal = Hier lebt noch kein Tier: Füg eines auf der Seite Menschen hinzu.
sheets-no-check = { $name } hat keine solche Prüfung: Plane eine auf der Seite Prüfungen.
sheets-picture-unread = Das Bild von „{ $word }“ ist nicht lesbar: Das Blatt kommt ohne es aus. Nimm es auf der Karte des Wortes neu auf.
sheets-no-typeface = die Schrift ist nicht lesbar
sheets-pdf-refused = das PDF konnte nicht geschrieben werden: { $why }
