sheets-title = Blätter
sheets-intro = Jedes lässt sich auf A4 oder Letter drucken, ohne die Menüs.
sheets-print = Drucken
sheets-print-menu = oder drucke über das Menü des Browsers
sheets-all = Alle Blätter
sheets-fridge = Für den Kühlschrank
sheets-fridge-what = Was jedes Wort bedeutet, wie alle darauf antworten, was alle für „jetzt nicht“ sagen, und die Regeln des Hauses.
sheets-rules = Hausregeln
sheets-buttons = Für die Knöpfe
sheets-buttons-what = Schlichte Schilder mit dem Wort.
sheets-labels = Schilder
sheets-report-for = Für die Familie, die Tierarztpraxis oder eine Fachperson für Verhalten.
sheets-report = Bericht über Fortschritte
sheets-likes = Was { $name } mag
sheets-size = Größe
sheets-size-of = { $size ->
    [small] klein, 40 × 25 mm
    [large] groß, 90 × 60 mm
   *[middle] mittel, 60 × 40 mm
}
sheets-no-word = Noch steht kein Wort auf dem Brett.
sheets-labels-note = Schilder helfen Menschen. Kleine abgerissene Teile können verschluckt werden: Klebe sie flach auf, und nimm keine, wo ein Tier daran nagt.
sheets-button = Knopf
sheets-means = Bedeutet
sheets-everyone-answers = Alle antworten
sheets-not-now = Jetzt nicht
sheets-ends-session = beendet eine Sitzung
sheets-for-all = alle
sheets-answer-every-press = Antworte auf jedes Drücken, auch wenn es nach einem Stolpern aussieht.
sheets-may-come-and-go = { $name } darf kommen und gehen; rufe oder locke { $name } nie ans Brett.
sheets-any-may-come-and-go = Jedes Tier darf kommen und gehen; rufe oder locke keines ans Brett.
sheets-batteries = Verschließe Batteriefächer mit ihren Schrauben. { $emergency }
sheets-of-animal = { $name }:
sheets-nothing-tested = Noch wurde nichts getestet.
sheets-tested = { $trials ->
    [one] Aus einem Durchgang, am { $day }; ohne Wahl: { $none }.
   *[other] Aus { $trials } Durchgängen, der letzte am { $day }; ohne Wahl: { $none }.
}
sheets-test-again = Noch einmal testen:
sheets-likes-note = Vorlieben ändern sich mit Hunger, Stunde und Tag; dies hat { $name } gewählt, als gefragt wurde. Eine Linie ist der 95-%-Bereich; gezählt werden die Angebote.
sheets-progress = Fortschritte von { $name }
sheets-period = Zeitraum
sheets-days = { $days ->
    [one] Ein Tag
   *[other] { $days } Tage
}
sheets-no-diagnosis = { $lead } Eigene Aufzeichnungen eines Haushalts, von einem Programm gezählt. Niemand hat sie geprüft. Sie können nicht sagen, was ein Tier versteht, fühlt oder woran es leidet; frage dafür eine Tierärztin oder einen Tierarzt oder eine qualifizierte Fachperson für Verhalten.
sheets-no-diagnosis-lead = Keine Diagnose.
sheets-animal = Tier
sheets-about = etwa { $age }
sheets-dates = { $from } bis { $to } ({ $zone })
sheets-printed-by = Gedruckt von
sheets-limits = Grenzen
sheets-cautions = Hinweise zur Gesundheit
sheets-in-short = Kurz gesagt
sheets-days-noted = Tage, an denen etwas notiert wurde: { $days } von { $all }. Was niemand notiert hat, steht nicht hier.
sheets-joined = Sitzungen, bei denen { $name } mitmachte: { $share }.
sheets-presses = Zeigen durch Menschen: { $showings }. Eigenes Drücken: { $presses }.
sheets-welfare = Wohlergehen:
sheets-words = Wörter
sheets-none-taught = Noch wird kein Wort gelehrt.
sheets-words-caption = seit dem Anfang; eigenes Drücken in den letzten 28 Tagen
sheets-word = Wort
sheets-stage = Stufe
sheets-figures-say = Zahlen: { $stage }
sheets-shown = Gezeigt
sheets-press-to-giving = Vom Drücken bis zum Geben
sheets-pressed = Gedrückt, wenn eingeladen und gewollt
sheets-own-presses = Eigenes Drücken
sheets-times = { $times ->
    [one] einmal
   *[other] { $times }-mal
}
sheets-stages = Stufen: vorbereiten, zeigen (Menschen drücken und geben), einladen (ein Angebot, ein Warten und in jedem Fall das Ding), unterhalten ({ $name } drückt von selbst). Kein Drücken zählt nie als kein Verstehen.
sheets-showings-a-week = Zeigen je Woche
sheets-week-from = Woche ab
sheets-showings = gezeigt
sheets-week-of = Woche ab { $day }
sheets-joined-by-week = Mitgemachte Sitzungen, nach Woche
sheets-axis-joined = mitgemacht
sheets-axis-pressed = gedrückt
sheets-answered = Wie auf das eigene Drücken von { $name } geantwortet wurde
sheets-given = Gegeben: { $share }.
sheets-given-partly = Gegeben: { $share }, teilweise: { $partly }.
sheets-declined = Jetzt nicht: { $share }, ein anderes Ding: { $other }.
sheets-missed = Verpasst, oder keine Antwort notiert: { $share }.
sheets-signs = Notierte Körpersprache
sheets-signs-counts = Mitmachen: { $joining }. Leichte Stresszeichen: { $mild }. Starke Zeichen: { $strong }.
sheets-sign-of = { $day }: { $sign }
sheets-signs-note = So, wie die Anwesenden es sahen. Ein einzelnes Zeichen bedeutet wenig; lies den ganzen Körper und die Lage.
sheets-food = Futterbelohnungen
sheets-food-budget = Gerechnet mit { $day } am Tag, davon Belohnungen höchstens { $budget }. Grundlage: { $basis }.
sheets-food-budget-range = Gerechnet mit { $day } am Tag (einzelne Tiere: { $low } bis { $high }), davon Belohnungen höchstens { $budget }. Grundlage: { $basis }.
sheets-food-none = Es wird keine Menge berechnet: { $why }.
sheets-food-unknown = sie ist nicht bekannt
sheets-likes-heading = Vorlieben
sheets-last-tested = Zuletzt getestet am { $day }.
sheets-not-tested-enough = { $trials ->
    [one] Nicht genug getestet, um etwas zu sagen (ein Durchgang).
   *[other] Nicht genug getestet, um etwas zu sagen ({ $trials } Durchgänge).
}
sheets-not-known = Was nicht bekannt ist
sheets-no-check = Ob { $name } irgendein Wort versteht: Es gab keine geplante Prüfung. Drücken kann auch von einer Gewohnheit des Platzes kommen, von Hinweisen, die Menschen geben, ohne es zu wissen, oder von dem, was sich früher gelohnt hat.
sheets-check-elsewhere = { $trials ->
    [one] Ob { $name } ein Wort versteht, entscheidet dieses Blatt nicht: Der eine Durchgang geplanter Prüfungen steht auf der Seite Belege.
   *[other] Ob { $name } ein Wort versteht, entscheidet dieses Blatt nicht: { $trials } Durchgänge geplanter Prüfungen stehen auf der Seite Belege.
}
sheets-not-invited = Wie auf „{ $word }“ geantwortet wird, wenn eingeladen: bisher nie eingeladen und gewollt.
sheets-little-invited = { $times ->
    [one] Wenig über „{ $word }“, wenn eingeladen: ein Mal.
   *[other] Wenig über „{ $word }“, wenn eingeladen: { $times } Male.
}
sheets-no-session = Wie gern { $name } mitmacht: In diesem Zeitraum wurde keine Sitzung notiert.
sheets-no-likes-test = Was { $name } am liebsten mag: Es gab keinen Vorlieben-Test.
