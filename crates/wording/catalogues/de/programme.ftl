# Programme: Kurse von einigen Wochen mit Zielen für Menschen.
programme-title = Programme
programme-intro = Ein Kurs von einigen Wochen für Zuhause deines Vereins: was Menschen sich in jeder vornehmen, Lektionen, eine Übung. Ein Zuhause macht mit, indem es annimmt. Ziele sind für Menschen, nie für ein Tier.
programme-none = Noch kein Programm.
programme-new = Ein Programm anlegen
programme-new-how = Was das Protokoll sagen kann, wird von selbst gezählt. Alles andere hakt das Zuhause ab. Lass leer, was eine Woche nicht hat.
programme-how-many = Wochen
programme-field-name = Wie es heißt
programme-field-club = Für welchen Verein
programme-field-showings = Mal zeigen in der Woche
programme-field-invitations = Einladungen in der Woche
programme-field-a-day = Sitzungen am Tag
programme-field-days = An so vielen Tagen
programme-field-lessons = Lektionen zum Lesen
programme-field-own = Ein weiteres Ziel, { $number }
programme-field-own-hint = In wenigen Worten; das Zuhause hakt es ab.
programme-field-exercise = Übung
programme-lay-out = Dieses Programm behalten
programme-nothing = oder ein anderes Ziel einer Woche fehlt
programme-too-many = und die anderen Ziele der Woche sind zu viele: höchstens { $most }
programme-week-number = Woche { $week }
programme-week = Woche { $week }, { $first } bis { $last }
programme-weeks = { $weeks ->
    [one] { $weeks } Woche
   *[other] { $weeks } Wochen
}
programme-closed = niemandem mehr vorgeschlagen
programme-close = Niemandem mehr vorschlagen
programme-open-again = Wieder vorschlagen
programme-rests = muss später sein: Wegen eines starken Zeichens ruhen die Sitzungen bis { $until }
programme-proposed = { $weeks ->
    [one] Programm „{ $name }“, { $weeks } Woche ab { $first }
   *[other] Programm „{ $name }“, { $weeks } Wochen ab { $first }
}
programme-showings = { $times }-mal zeigen
programme-invitations = { $times ->
    [one] { $times } Einladung
   *[other] { $times } Einladungen
}
programme-sessions = { $a_day ->
    [one] { $a_day } Sitzung am Tag
   *[other] { $a_day } Sitzungen am Tag
}, an { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}
programme-lesson = Die Lektion „{ $lesson }“ lesen
programme-doing = { $aim }: { $done }
programme-so-many = bisher { $done } von { $of }
programme-done = erledigt
programme-not-yet = noch nicht
programme-tick = Erledigt
programme-not-after-all = Doch nicht
programme-no-aims = Diese Woche hat keine Ziele.
programme-for-people = Ziele sind für Menschen. Ein Tag, an dem niemand Zeit hat oder das Tier lieber nicht mag, ist ein Tag wie jeder andere.
programme-done-noted = Ziel { $aim } von Woche { $week } erledigt
programme-where-each = Wo jedes steht
programme-no-ranking = Jedes gegen seine eigenen Ziele, nach Namen. Zuhause und Tiere werden nicht verglichen: Sie beginnen an verschiedenen Stellen.
programme-nobody = Niemand macht mit, der gerade Zahlen mit dir teilt.
programme-handed-on = Am { $day } an { $name } übergeben. Dort geht es weiter.
programme-in-week = Woche { $week } von { $weeks }
programme-begins = Beginnt am { $day }
programme-over = Die Wochen sind vorbei.
programme-weeks-before = Die Wochen davor
programme-course = Der Kurs
programme-propose = Mehreren vorschlagen
programme-field-animal = Mit welchen Tieren
programme-field-first = Erster Tag
programme-propose-button = Vorschlagen
programme-given-on = { $who }: übergeben an { $name } am { $day }. Dort geht es weiter.
programme-sent = Vorgeschlagen mit { $names }. Jedes Zuhause antwortet für sich.
programme-left-rests = Ausgelassen, denn ein starkes Zeichen lässt die Sitzungen ruhen: { $names }.
programme-left-handed = Ausgelassen, denn dort macht jemand anders weiter: { $names }.
programme-left-joined = Ausgelassen, denn sie sind schon dabei: { $names }.
programme-each-own = Jedes Zuhause bekommt einen eigenen Vorschlag und antwortet für sich.
programme-all-of-them = Mit allen
