# What is wrong with a field, said after its name.
faults-at = { $field } { $what }.
faults-field = { $field ->
    [name] Name
    [weight_kg] Gewicht
    [adult_weight_kg] Gewicht ausgewachsen
    [day_kcal] Kcal am Tag
    [reward_percent] Anteil für Belohnungen
    [reward_share] Anteil für Belohnungen
    [species] Tierart
    [born] Geburtstag
    [life_stage] Stufe
    [age_years] Alter in Jahren
    [age_months] Alter in Monaten
    [kind] Art
    [kcal_per_piece] Kcal je Stück
    [grams_per_piece] Gramm je Stück
    [seconds_to_deliver] Sekunden bis zum Geben
    [most_per_day] Höchstzahl am Tag
    [food] Futter
    [text] Text
    [word] Wort
    [words] Wörter
    [animals] Tiere
    [animal] Tier
    [home] Zuhause
    [zone] Zeitzone
    [role] Rolle
    [language] Sprache
    [says] Was er sagt
    [reward] Belohnung
    [rewards] Belohnungen
    [format] Form
    [rounds] Runden
    [days] Tage
    [one_in] Eine von so vielen
    [design] Plan
    [choices] Auswahl
    [rate] Anteil richtig
    [who] Wer dabei ist
    [stage] Stufe
    [because] Warum
    [why] Warum
    [answer] Antwort
    [means] Bedeutung
    [day] Tag
    [time] Uhrzeit
    [point] Punkt
    [first] Erster Tag
    [points] Punkte
    [rows] Reihen
    [columns] Spalten
    [observed_s] Sekunden beobachtet
    [after_s] Sekunden
    [person] Person
    [last] Letzter Tag
    [weekdays] Wochentage
    [club] Club
    [count] Anzahl
    [account] Konto
    [purpose] Zweck
    [last_day] Letzter Tag
    [about] Zu
    [word_1] Wort 1
    [way_1] Wie 1
    [minutes_1] Minuten 1
    [times_1] Mal am Tag 1
    [word_2] Wort 2
    [way_2] Wie 2
    [minutes_2] Minuten 2
    [times_2] Mal am Tag 2
    [word_3] Wort 3
    [way_3] Wie 3
    [minutes_3] Minuten 3
    [times_3] Mal am Tag 3
    [reply] Antwort
    [what] Was
    [stands] Was dafür steht:
    [whose] Zuhause oder Konto
    [new_person] Name von jemand Neuem
    [email] E-Mail-Adresse
   *[other] { $plain }
}
faults-not-kept = Noch nicht gespeichert.
faults-put-right = Was du eingegeben hast, steht noch hier; bitte berichtige dies:
faults-unknown-field = ist kein Feld dieses Formulars
faults-number = muss eine Zahl wie 4,5 sein, nicht „{ $text }“
faults-whole = muss eine ganze Zahl von { $low } bis { $high } sein, nicht „{ $text }“
faults-one-of = muss eines sein von: { $names }
faults-unknown-id = nennt etwas, das dieses Notizbuch nicht kennt; lade die Seite neu
faults-not-read = ist nicht lesbar: „{ $text }“
faults-missing = fehlt
faults-missing-choose = fehlt; wähle etwas aus
faults-missing-usual = fehlt; üblich ist { $usual }
faults-missing-several = fehlen; üblich sind { $usual }
faults-form-expected = Erwartet wurde ein Formular (application/x-www-form-urlencoded).
faults-form-broken = ist nicht lesbar; lade die Seite neu
faults-no-animal = fehlt; ein solcher Eintrag handelt von einem Tier
faults-range = muss { $low } bis { $high } sein, nicht { $found }
faults-too-few = muss mindestens { $least } sein, nicht { $found }
faults-name = muss { $low } bis { $high } nennen, nicht { $found }
faults-seconds = muss { $low } bis { $high } Sekunden sein, nicht { $found }
faults-twice = nennt eines zweimal
faults-amends-amendment = darf nicht selbst eine Berichtigung oder Rücknahme sein; berichtige den ersten Eintrag noch einmal
faults-not-alternative = gehört nur zur Antwort "alternative"
faults-not-pressed-again = gehört nur zur Folge "pressed_again"
faults-not-between-two = nennt das zweite Wort von "ask_between_two", und nur davon
faults-same-word = muss ein anderes Wort sein
faults-after-the-wait = liegt nach der Wartezeit von { $seconds } s; notiere es als gewöhnlichen Druck
faults-no-food = fehlt; sag, was gegeben wurde, oder nenne eine Belohnung
faults-label-of-other = sagt, was geändert wird, wenn die Frage "other" ist, und nur dann
faults-not-by-word = "{ $measure }" wird nicht Wort für Wort gezählt; nenne stattdessen Tiere
faults-only-over-animals = gehören nur zu einem multiplen Grundlinienplan über Tiere
faults-criterion-for-people = muss "delivery_delay" sein: Ein Kriterium gilt Menschen, nie dem Tier
faults-criterion-a-phase = muss eines je Phase nach der ersten sein, nicht { $found }
faults-only-with-criterion = gehören nur zu einem wechselnden Kriterium
faults-not-offered = wurde in diesem Durchgang nicht angeboten
faults-free-by-time = wird bei freiem Zugang nach Zeit gewertet: nimm "observed"
faults-only-free = "observed" gehört nur zum freien Zugang
faults-offered-once = muss eine der angebotenen Sachen sein, einmal
faults-longer-than-observed = ist mehr als die { $seconds } s der Beobachtung
faults-swaps-one-in = muss { $low } bis { $high } sein, nicht { $found }; mehr Tausche als einer von vieren ermüden ein Tier
faults-reward-share = darf höchstens { $most } sein; für mehr frag in der Tierarztpraxis
faults-stage-of-other = { $stage } passt nicht zu dieser Tierart ({ $species })
faults-grown-less-than-now = ist { $grown } kg, weniger als die { $now } kg, die dieser Welpe wiegt; berichtige eines, oder wähle eine erwachsene Stufe
faults-no-energy = fehlt; Futter braucht die Energie eines Stücks, in kcal
faults-only-food = gilt nur für Futter
faults-not-a-hash = muss aus 64 hexadezimalen Ziffern bestehen
faults-off-board = Reihe { $row } Spalte { $column } liegt neben dem Brett
faults-place-twice = Reihe { $row } Spalte { $column } ist zweimal belegt
faults-two-places = steht an zwei Plätzen
faults-id-taken = gehört schon zu einem anderen Eintrag; sende ihn noch einmal als neuen
faults-empty = darf nicht leer sein
faults-too-long = darf höchstens { $most } Zeichen haben, nicht { $found }
faults-control = darf keine Steuerzeichen wie Tabulatoren oder Zeilenumbrüche enthalten
faults-hidden = darf das Zeichen { $code } nicht enthalten, das unsichtbar ist oder den Text um sich umdreht; tippe den Text neu
faults-quantity = muss eine Zahl von { $low } bis { $high } sein, nicht { $found }
faults-not-a-time = „{ $text }“ ist keine Zeit wie 2026-03-01T18:30:00Z
faults-time-out-of-range = die Zeit { $text } liegt außerhalb der Jahre 2000 bis 2199
faults-not-a-zone = „{ $text }“ ist keine IANA-Zeitzone wie Europe/Berlin
faults-not-a-day = „{ $text }“ ist kein Tag wie 2026-03-01
faults-late-card = kann nicht nach { $moment } liegen, dem Datum der Karte, die ersetzt wird. Berichtige zuerst deren Datum im Protokoll
faults-late-amendment = kann nicht nach { $moment } liegen, der letzten Änderung, und ist daher nicht mehr zu ändern. Notiere es neu, so wie es sein soll
faults-in-swaps = nehmen schon an Tauschen teil; beende erst diese
faults-signs-today = können heute nicht beginnen: Starke Stresszeichen wurden notiert; wähle eine ruhige Zeit
faults-another-thing = müssen 2 oder mehr sein, nicht { $found }; ein Tausch braucht etwas anderes
faults-same-thing = enthalten zwei für dasselbe ({ $first }, { $second })
faults-one-in-usual = fehlt; üblich ist eine von { $usual }
faults-agree = muss zustimmen: Alle, die antworten, geben, was gezogen wird, oder beenden die Tausche
faults-first-day = muss { $from } bis { $to } sein: Die Reihenfolge wird vor dem Beginn gezogen
faults-seconds-list = müssen Sekunden sein wie 6; 4; 2.5
faults-check-long = machen die Prüfung zu lang; wähle weniger Wörter
faults-tick = müssen 2 bis { $most } sein, nicht { $found }; hake mehr oder weniger an
faults-easiest = fehlen; 2 ist für das Tier am leichtesten
faults-at-most-ticked = darf höchstens die Zahl der angehakten Wörter sein, { $ticked }
faults-never-given = enthalten { $name }, das dieses Tier nie bekommen darf
faults-who = fehlt; sag, wer dabei sein wird
faults-above-chance = muss über dem Zufall ({ $chance } %) und höchstens bei 99 % liegen
faults-near-chance = liegt zu nah am Zufall für eine Prüfung von erträglicher Länge
faults-place = muss ein Platz von 1 bis { $most } sein, nichts oder weggegangen
faults-not-a-person = gehört nicht zu den Menschen dieses Zuhauses
faults-not-our-home = gehört nicht zu diesem Notizbuch
faults-per-gram = ist nicht die Energie eines Futters (0 bis 9 kcal je Gramm)
faults-no-sound-file = fehlt; wähle eine Tondatei (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF oder WebM)
faults-sound-unfit = ist nicht verwendbar: { $why }
faults-noted-at-board = dieses Plans wird am Brett notiert, wie jede Antwort
faults-cannot-run = ist nicht durchführbar: { $why }
faults-no-random = geht nicht: Dieser Rechner gibt keine Zufallszahlen ({ $why })
faults-file-missing = fehlt; wähle eine
faults-file-empty = fehlt oder ist leer; wähle eine
faults-other-home = ist nicht nur das dieses Notizbuchs: Die Datei bringt { $homes }. Hake „{ $tick }“ an, wenn es so sein soll
faults-rows-faulty = hat Fehler. Berichtige sie in der Datei und bring sie noch einmal, oder hake „{ $tick }“ an
faults-file-no-backup-use = „{ $name }“ ist nicht als Sicherung verwendbar: { $what }
faults-file-no-archive = „{ $name }“ ist nicht als Archiv eines Notizbuchs lesbar: { $what }
faults-file-newer = „{ $name }“ stammt von einer neueren Version; aktualisiere dieses Programm
faults-file-not-ours = „{ $name }“ ist eine Datenbank eines anderen Programms und keine Sicherung eines Notizbuchs
faults-file-not-a-backup = „{ $name }“ ist keine Sicherung: beschädigt, oder eine andere Art von Datei
faults-file-backup-on-server = „{ $name }“ ist die Sicherung eines ganzen Notizbuchs, und hier ist ein Haus auf einem Server. Speichere dort unter „Dateien hinein und heraus“ ein Archiv (.tar) und bring das
faults-file-damaged = „{ $name }“ ist beschädigt: { $what }
faults-file-unknown = „{ $name }“ ist keine, die aufgenommen werden kann: eine Tabelle (.csv), Zeilen in JSON (.jsonl oder .ndjson), ein Archiv (.tar) oder eine Sicherung (.sayso)
faults-take-in-home = ist nicht nur das dieses Notizbuchs: Die Datei bringt { $homes }. Um auf Dauer mehrere Zuhause darin zu halten, füge take_in_other_home=true hinzu
faults-away-home = ist { $home }, ein anderes Zuhause als das dieses Notizbuchs; um mehrere in einem Notizbuch zu halten, lies eine Datei seiner Einträge ein und sage es
faults-too-many-bytes = ist zu lang: { $bytes } Bytes, wo { $most } das Meiste sind
faults-not-written = lässt sich nicht als JSON schreiben
faults-not-your-home = ist kein Zuhause, in das du hier schreiben kannst; vielleicht ist es gegangen
faults-not-your-role = ist nicht für deine Rolle in diesem Zuhause
faults-not-your-account = muss das angemeldete Konto sein, unter seinem eigenen Namen
faults-on-its-page = wird nur auf der Seite „Wer das sehen kann“ gegeben, wo die Worte zu lesen sind
faults-invites-closing = lädt zu einem Wort ein, das Sitzungen beendet: Darauf wartet niemand; es muss „show“ sein oder fehlen
faults-not-your-day = muss an einem der mit dir vereinbarten Tage kommen
faults-ends-first = muss nach dem Beginn enden
faults-own-successor = muss eine andere Person sein als die, die schreibt
faults-sent-again = Noch nicht behalten. Was du eingegeben hast, steht wieder hier: Sieh es an und sende es noch einmal.
