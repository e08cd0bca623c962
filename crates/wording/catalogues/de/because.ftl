because-strong-signs = Starke Stresszeichen: { $count } in den letzten { $days } Tagen, an { $on } davon{ $today ->
    [0] { "" }
   *[other] , { $today } heute
}. Das letzte: „{ $last }“.
because-rests-until = Sitzungen ruhen bis { $until }: nach einem starken Zeichen für den Rest des Tages und mindestens zwölf Stunden, nach starken Zeichen an zwei Tagen eine Woche.
because-lasting-threat = { $count ->
    [one] Ein Knurren, Schnappen oder Biss in den letzten { $days } Tagen: „{ $last }“, { $day }.
   *[other] { $count }-mal Knurren, Schnappen oder Biss in den letzten { $days } Tagen. Zuletzt: „{ $last }“, { $day }.
}
because-lasting-guarding = { $count ->
    [one] { $name } hat in den letzten { $days } Tagen einmal etwas verteidigt: „{ $last }“, { $day }.
   *[other] { $name } hat in den letzten { $days } Tagen { $count }-mal etwas verteidigt. Zuletzt: „{ $last }“, { $day }.
}
because-lasting-swallowing = { $count ->
    [one] { $name } hat in den letzten { $days } Tagen einmal etwas verschluckt: „{ $last }“, { $day }.
   *[other] { $name } hat in den letzten { $days } Tagen { $count }-mal etwas verschluckt. Zuletzt: „{ $last }“, { $day }.
}
because-recurring = Es kommt immer wieder: in { $weeks } der letzten { $of } Wochen.
because-left-few = { $name } hat { $left } der letzten { $of } mitgemachten Sitzungen verlassen.
because-left-sessions = { $name } hat { $left } der letzten mitgemachten Sitzungen verlassen: { $share }.
because-mild-signs = Sitzungen der letzten sieben Tage mit einem milden Stresszeichen: { $share }.
because-sudden-change = Eigenes Drücken in den letzten zwei Tagen: { $now }. In den vier Wochen davor: { $before }.
because-food-given = Heute { $given } kcal { $feeds ->
    [one] in einer Gabe
   *[other] in { $feeds } Gaben
}; die Belohnungen des Tages sind { $budget } kcal.
because-rewards-listed = { $rewards ->
    [0] Noch keine Belohnung ist eingetragen; ein Vorlieben-Test vergleicht mindestens zwei.
    [one] Eine Belohnung ist eingetragen; ein Vorlieben-Test vergleicht mindestens zwei.
   *[other] { $rewards } Belohnungen sind eingetragen; ein Vorlieben-Test vergleicht mindestens zwei.
}
because-no-likes-test = { $rewards ->
    [one] Eine Belohnung ist eingetragen, nicht getestet.
   *[other] { $rewards } Belohnungen sind eingetragen, keine davon getestet.
}
because-no-word-yet = { $trials ->
    [one] Ein Durchgang eines Vorlieben-Tests ist aufgezeichnet
   *[other] { $trials } Durchgänge von Vorlieben-Tests sind aufgezeichnet
}, und noch kein Wort ist auf dem Brett.
because-no-allowance = Aus den Angaben der Karte lässt es sich nicht berechnen.
because-card-lacks = Auf der Karte fehlt: { $lacks }. Ein Wort lernt sich leichter, wenn alle gleich antworten (üblich, ohne Quelle).
because-slowing = „{ $word }“ spielt { $by } langsamer, gehört { $days ->
    [one] an einem Tag
   *[other] an { $days } Tagen
}. Wahrscheinlichkeit, dass das mehr ist als bei gesunden Knöpfen: { $probability }.
because-silent = „{ $word }“ wurde zuletzt am { $day } gehört, vor { $days ->
    [one] einem Tag
   *[other] { $days } Tagen
}. Andere Wörter wurden seither { $others ->
    [one] einmal
   *[other] { $others }-mal
} gehört.
because-never-heard = „{ $word }“ wurde in { $days ->
    [one] einem Tag
   *[other] { $days } Tagen
} des Zuhörens nicht gehört. Andere Wörter wurden { $others ->
    [one] einmal
   *[other] { $others }-mal
} gehört.
because-silent-before = „{ $word }“ wurde zuletzt am { $day } gehört, vor { $days ->
    [one] einem Tag
   *[other] { $days } Tagen
}, davor { $before }. Andere Wörter wurden seither { $others ->
    [one] einmal
   *[other] { $others }-mal
} gehört.
because-noted-by-hand = „{ $word }“ wurde inzwischen { $times ->
    [one] einmal
   *[other] { $times }-mal
} von Hand notiert: Es klingt, aber nicht mehr wie die Aufnahme hier.
because-silent-causes = Eine leere Batterie, ein kaputter Knopf oder eine neue Aufnahme darauf kann der Grund sein; oder das Wort wird gerade nicht gebraucht. Es sagt nichts darüber, was ein Tier weiß.
because-test-old = Der letzte Vorlieben-Test ist { $days } Tage alt. Die Hälfte gilt nach { $half } Tagen als vergessen (üblich, ohne Quelle).
because-best-unclear = Noch nicht klar; bisher am besten: { $best } ({ $probability } sicher, { $choices ->
    [0] noch kein Durchgang mit Auswahl
    [one] ein Durchgang mit Auswahl
   *[other] { $choices } Durchgänge mit Auswahl
}).
because-when-wanted = { $of ->
    [one] Bei einer Einladung wollte { $name } die Sache: { $parts }.
   *[other] Bei { $of } Einladungen wollte { $name } die Sache: { $parts }.
}
because-wanted-this = drückte dieses Wort { $all ->
    [yes] jedes Mal
   *[no] { $times ->
        [one] einmal
       *[other] { $times }-mal
    }
}
because-wanted-other = drückte ein anderes Wort { $all ->
    [yes] jedes Mal
   *[no] { $times ->
        [one] einmal
       *[other] { $times }-mal
    }
}
because-wanted-none = { $all ->
    [yes] drückte nie
   *[no] { $times ->
        [one] drückte einmal nicht
       *[other] drückte { $times }-mal nicht
    }
}
because-when-wanted-early = Zu früh, etwas zu sagen: { $of ->
    [0] noch keine Einladung, bei der { $name } die Sache wollte
    [one] eine Einladung, bei der { $name } die Sache wollte
   *[other] { $of } Einladungen, bei denen { $name } die Sache wollte
}.
because-right-none = Beim Einladen gedrückt und dieses Wort getroffen: noch nichts gezählt.
because-right = Beim Einladen gedrückt und dieses Wort getroffen: { $share }. { $chance ->
    [more] Über der Schwelle für einen nächsten Schritt ({ $bar } zu 1).
   *[other] Noch nicht mehr als Zufall.
}
because-right-elsewhere = Beim Einladen gedrückt und dieses Wort getroffen: { $share }; bei Einladungen zu anderen Wörtern: { $elsewhere }. { $chance ->
    [more] Über der Schwelle für einen nächsten Schritt ({ $bar } zu 1).
   *[other] Noch nicht mehr als Zufall.
}
because-showings = { $showings ->
    [0] Nie gezeigt
    [one] Einmal gezeigt
   *[other] { $showings }-mal gezeigt
} (nötig: { $wanted }), { $days ->
    [0] an keinem Tag
    [one] an einem Tag
   *[other] an { $days } Tagen
} (nötig: { $dayswanted }).
because-joining = Mitgemachte Sitzungen in vier Wochen: { $share }. Vor dem Einladen sollten es deutlich mehr als { $floor } sein.
because-mastery = Sitzungen nacheinander, in denen mindestens { $share } gedrückt und richtig war: { $sessions } (nötig: { $wanted }). Verschiedene Menschen dabei: { $people } (nötig: { $peoplewanted }).
because-own-presses = Selbst gedrückt und die Sache genommen: { $presses }-mal (nötig: { $wanted }), { $days ->
    [0] an keinem Tag
    [one] an einem Tag
   *[other] an { $days } Tagen
} (nötig: { $dayswanted }).
because-below = { $counted ->
    [wanted] Eingeladen und die Sache gewollt, { $name } drückte
    [latest] Bei den letzten Einladungen, bei denen { $name } die Sache wollte, gedrückt
    [later] Zwei Wochen und mehr, nachdem das Wort saß, gedrückt, wenn { $name } die Sache wollte
   *[right] Zwei Wochen und mehr, nachdem das Wort saß, beim Einladen gedrückt und dieses Wort getroffen
}: { $share }. Dieses ganze Intervall, eines von 90 %, liegt unter { $bar }; so viel braucht es, { $counted ->
    [wanted] um einzuladen
   *[other] um das Wort { $name } zu überlassen
}.
because-later-unknown = Ob es bleibt, ist noch nicht bekannt: { $wanted ->
    [0] keine Einladung
    [one] eine Einladung
   *[other] { $wanted } Einladungen
} zwei Wochen und mehr, nachdem das Wort saß (nötig: { $needed }).
because-later = Zwei Wochen und mehr, nachdem das Wort saß: gedrückt bei { $pressed } von { $wanted } Malen, als { $name } die Sache wollte{ $presses ->
    [0] { "" }
   *[other] , richtig bei { $right } von { $presses }
}.
because-strain = Starke Stresszeichen an mehreren Tagen in Sitzungen mit diesem Wort.
because-ends-sessions = Dieses Wort beendet eine Sitzung: Es wird dann gezeigt, und niemand wartet darauf.
because-not-prepared = Belohnung oder Antwort des Wortes steht nicht fest.
because-contradiction = Die Aufzeichnungen widersprechen sich: { $why }
because-no-recording-checked = Niemand hat hier eine Aufnahme davon geprüft. Familienhunde folgten gelernten Signalen aus Knöpfen zu etwa 30 %, von einem Menschen gesprochen zu fast 100 % (17 Hunde; Higaki 2025, Zahlen aus einer Pressemitteilung).
because-recording = { $found ->
    [both] Die Aufnahme ({ $seconds }) ist sehr kurz und leiser als die anderen.
    [short] Die Aufnahme ({ $seconds }) ist sehr kurz.
    [quiet] Die Aufnahme ({ $seconds }) ist leiser als die anderen.
   *[other] Die Aufnahme ({ $seconds }) wurde geprüft; was ein Tier heraushört, sagt das nicht.
} Familienhunde folgten gelernten Signalen aus Knöpfen zu etwa 30 %, von einem Menschen gesprochen zu fast 100 % (17 Hunde; Higaki 2025, Zahlen aus einer Pressemitteilung).
because-taken = Von dem, was es in den letzten { $days } Tagen für dieses Wort gab, wurde genommen: { $share } (Grenze { $bar }).
because-showings-a-day = Gezeigt in den letzten { $days } Tagen: { $rate } (Grenze { $bar } am Tag).
because-delay = Vom Drücken bis zum Geben, im Median: { $seconds } (Grenze { $bar }).
because-near = Anteil dieses Knopfes an Blicken, Streifen und eigenem Drücken: { $share }. Sein Anteil am Zeigen: { $expected }.
because-comes-more = Selbst gedrückt in sieben Tagen: { $now }; in den vier Wochen davor: { $before }. Das ist mehr, als Zufall erklärt.
because-too-few-hours = Zu wenige Sitzungen zu verschiedenen Tageszeiten.
because-uneasy-hours = Von { $from } bis { $to } machte { $name } { $here } mit, zu anderen Zeiten { $elsewhere }. Spätes Kommen, Weggehen und Zeichen mitgezählt: { $p } (korrigiert, weil die Stunden ausgesucht sind), letzte { $days } Tage.
because-too-few-days = Zu wenige Tage, um eine Änderung zu sehen.
because-late-fall = Mitgemacht in den letzten { $days } Tagen: { $lately }; davor: { $before }. Spätes Kommen, Weggehen, Zeichen, eigenes Drücken und Nehmen mitgezählt: { $p } (korrigiert, weil der Tag ausgesucht ist). Gesundheit zeigen die Aufzeichnungen nicht: Wirkt etwas seltsam, frag in einer Tierarztpraxis nach.
because-only-word = Es ist das einzige Wort.
because-sounds = { $alike ->
    [yes] Es klingt „{ $nearest }“ sehr ähnlich.
   *[other] Es klingt anders genug als „{ $nearest }“.
} Beim Einladen ein anderes Wort gedrückt: { $others }.
because-too-few-people = Weniger als zwei Menschen mit je fünf Antworten.
because-people-delay = { $one } gibt nach { $first }, { $two } nach { $second } (Rangsummentest, { $p }).
because-people-give = { $one } gibt bei { $first } des Drückens, { $two } bei { $second } ({ $p }).
because-many-presses = Eigenes Drücken in den letzten { $days } Tagen: { $rate } (Grenze { $bar } am Tag).
because-given-share = Mit der Sache beantwortet: { $share }.
because-signalled-times = Dauer von Ja und Nein mit Zeichen: Hanley, Iwata & Thompson 2001, deren letzte Stufe 60 s und 240 s war. Die erste Stufe ist aus dem Gedächtnis, die dazwischen sind unsere.
because-never-checked = { $words ->
    [one] Ein Wort ist in Gebrauch und wurde nie geprüft.
   *[other] { $words } Wörter sind in Gebrauch und wurden nie geprüft.
}
because-check-open = { $done } von { $of } Durchgängen der Prüfung geschafft.
