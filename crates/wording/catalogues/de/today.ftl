today-title = Heute mit { $name }
today-now = Jetzt
today-start = Los
today-why = Warum? ({ $sure })
today-why-plan = Warum so viel?
today-pause-why = { $a_day ->
    [one] Hier ist sonst eine Sitzung am Tag üblich
   *[other] Hier sind sonst { $a_day } Sitzungen am Tag üblich
}, oder was allgemein üblich ist, wo es wenige gab; dazwischen zwei Stunden Pause (üblich, ohne Quelle).
today-care = Vorsicht:
today-take-care = { $care } { $what }
today-change-our-mind = Das würde unsere Meinung ändern:
today-records = die Einträge
today-also = Außerdem gilt:
today-alike = „{ $word }“ klingt sehr ähnlich wie { $others }. Ein anderes Wort für eines davon ist leichter zu unterscheiden.
today-alike-first = „{ $word }“ klingt sehr ähnlich wie { $others } und wurde noch nicht gezeigt: Wähle zuerst ein anderes Wort.
today-best-time = Beste Zeit bisher: { $from } bis { $to }. Dann mitgemacht: { $joined }.
today-shown-today = „{ $word }“ wurde heute { $times ->
    [0] noch nicht gezeigt.
    [one] einmal gezeigt.
   *[other] { $times }-mal gezeigt.
}
today-words = Wörter
today-more-words = { $count ->
    [one] Noch ein Wort: { $words }
   *[other] Noch { $count } Wörter: { $words }
}
today-many-more-words = Noch { $count } Wörter
today-trend = Selbst gedrückt in den letzten acht Wochen: { $counts }
today-evidence = Was das Drücken von „{ $word }“ sagt
today-lately = In den letzten sieben Tagen
today-later = Später
today-joining = Wie oft in vier Wochen bei Sitzungen dabei
today-pieces = { $count } × „{ $name }“
today-food-left-pieces = Futter übrig für heute: { $pieces }
today-food-left = Futterbelohnungen übrig für heute: { $left } von { $of }.
today-food-over = Heute keine Futterbelohnung mehr: { $over } über { $of }
today-feeds = { $count ->
    [one] Bisher einmal gegeben.
   *[other] Bisher { $count }-mal gegeben.
}
today-given = Bisher gegeben: { $kcal }.
today-energy-unknown = { $name }: Die Energie eines Stücks ist nicht bekannt.
today-how-computed = Wie gerechnet wird
today-whole-day = Der ganze Tag: { $kcal }, { $basis }.
today-individuals = Einzelne Tiere dieses Gewichts: etwa { $low } bis { $high }.
today-do-rewards = Hinzufügen, was gefallen könnte
today-do-likes = Zu den Vorlieben-Tests
today-do-words = Wörter wählen
today-do-allowance = Futter festlegen
today-do-card = Karte öffnen
today-do-heard = Was gehört wurde
today-do-rules = Hausregeln
today-do-days = Tage und Stunden
today-do-places = Wo die Knöpfe sind
today-do-board = Zum Brett
today-do-stage = Stufe ändern
today-do-checks = Zu den Prüfungen
today-session = { $minutes ->
    [one] Höchstens eine Minute. Zeige:
   *[other] Höchstens { $minutes } Minuten. Zeige:
}
today-planned = { $planned }. { $hint }
today-hint-for = Bei { $words }: { $hint }
today-rests-until = Keine Sitzung bis { $until }.
today-ask-keeper = Für { $name } ist noch etwas einzurichten. Frag jemanden, der das Zuhause verwaltet, was heute zu tun ist.
today-ask-card = Seine Karte füllt aus, wer das Zuhause verwaltet
today-ask-food = Wie viel Futter { $name } am Tag haben darf, ist hier nicht festgelegt. Frag jemanden, der das Zuhause verwaltet, bevor du etwas gibst.
today-answer-only = Antworte auf das, was { $name } drückt.
today-without-agreed = Ohne das Vereinbarte: { $step }. { $why }
