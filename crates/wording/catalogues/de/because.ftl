because-strong-signs = Starke Stresszeichen: { $count } in { $days } Tagen, an { $on } davon{ $today ->
    [0] { "" }
   *[other] , { $today } heute
}. Das letzte: „{ $last }“.
because-rests-until = Sitzungen ruhen bis { $until }: nach einem starken Zeichen für den Rest des Tages und mindestens zwölf Stunden, nach starken Zeichen an zwei Tagen eine Woche.
because-lasting-threat = { $count ->
    [one] Ein Knurren, Schnappen oder Biss in { $days } Tagen: „{ $last }“, { $day }.
   *[other] { $count }-mal Knurren, Schnappen oder Biss in { $days } Tagen. Zuletzt: „{ $last }“, { $day }.
}
because-lasting-guarding = { $count ->
    [one] { $name } hat in { $days } Tagen einmal etwas verteidigt: „{ $last }“, { $day }.
   *[other] { $name } hat in { $days } Tagen { $count }-mal etwas verteidigt. Zuletzt: „{ $last }“, { $day }.
}
because-lasting-swallowing = { $count ->
    [one] { $name } hat in { $days } Tagen einmal etwas verschluckt: „{ $last }“, { $day }.
   *[other] { $name } hat in { $days } Tagen { $count }-mal etwas verschluckt. Zuletzt: „{ $last }“, { $day }.
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
because-slowing = „{ $word }“ klingt langsamer um { $by }, nach Drücken, die { $days ->
    [one] an einem Tag
   *[other] in { $days } Tagen
} gehört wurden. Wahrscheinlichkeit, dass es mehr nachlässt als gesunde Knöpfe: { $probability }.
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
because-when-wanted = { $name } war { $of }-mal eingeladen und wollte die Sache: { $parts }.
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
    [yes] drückte jedes Mal nichts
   *[no] { $times ->
        [one] drückte einmal nichts
       *[other] drückte { $times }-mal nichts
    }
}
because-when-wanted-early = Zu früh, etwas zu sagen: { $name } { $of ->
    [0] war noch nie eingeladen, als die Sache gewollt war
    [one] war einmal eingeladen und wollte die Sache
   *[other] war { $of }-mal eingeladen und wollte die Sache
}.
because-right-none = Vom Drücken beim Einladen traf dieses Wort: noch nichts gezählt.
because-right = Vom Drücken beim Einladen traf dieses Wort: { $share }. { $chance ->
    [more] Mehr als Zufall.
   *[other] Noch nicht mehr als Zufall.
}
because-right-elsewhere = Vom Drücken beim Einladen traf dieses Wort: { $share }; gedrückt, wenn zu anderen eingeladen wird: { $elsewhere }. { $chance ->
    [more] Mehr als Zufall.
   *[other] Noch nicht mehr als Zufall.
}
because-showings = { $showings ->
    [0] Nie gezeigt
    [one] Einmal gezeigt
   *[other] { $showings }-mal gezeigt
} (gewünscht: { $wanted }), { $days ->
    [0] an keinem Tag
    [one] an einem Tag
   *[other] an { $days } Tagen
} (gewünscht: { $dayswanted }).
because-joining = Mitgemachte Sitzungen in vier Wochen: { $share }. Vor dem Einladen deutlich mehr als { $floor }.
because-mastery = Sitzungen nacheinander mit { $share } oder mehr gedrückt und richtig: { $sessions } (gewünscht: { $wanted }). Verschiedene Menschen dabei: { $people } (gewünscht: { $peoplewanted }).
because-own-presses = Eigene Drücke, bei denen die Sache genommen wurde: { $presses } (gewünscht: { $wanted }), { $days ->
    [0] an keinem Tag
    [one] an einem Tag
   *[other] an { $days } Tagen
} (gewünscht: { $dayswanted }).
because-later-unknown = Ob es bleibt, ist nicht bekannt: { $wanted ->
    [0] keine Einladung
    [one] eine Einladung
   *[other] { $wanted } Einladungen
} zwei Wochen und mehr nach dem Können (gewünscht: { $needed }).
because-later = Zwei Wochen und mehr nach dem Können: { $pressed } der { $wanted } Male gedrückt, die { $name } die Sache wollte{ $presses ->
    [0] { "" }
   *[other] , richtig bei { $right } von { $presses }
}.
because-strain = Starke Stresszeichen an mehreren Tagen in Sitzungen mit diesem Wort.
because-ends-sessions = Dieses Wort beendet eine Sitzung: Es wird dann gezeigt, und niemand wartet darauf.
because-not-prepared = Belohnung oder Antwort des Wortes steht nicht fest.
because-contradiction = Die Aufzeichnungen widersprechen sich: { $why }
because-no-recording-checked = Niemand hat hier eine Aufnahme davon geprüft. Familienhunde beantworteten etwa 30 % gelernter Signale aus Knöpfen, fast 100 % von lebender Stimme (17 Hunde; Higaki 2025, Zahlen aus einer Pressemitteilung).
because-recording = { $found ->
    [both] Die Aufnahme ({ $seconds }) ist sehr kurz und leiser als die anderen.
    [short] Die Aufnahme ({ $seconds }) ist sehr kurz.
    [quiet] Die Aufnahme ({ $seconds }) ist leiser als die anderen.
   *[other] Die Aufnahme ({ $seconds }) wurde geprüft; was ein Tier heraushört, sagt das nicht.
} Familienhunde beantworteten etwa 30 % gelernter Signale aus Knöpfen, fast 100 % von lebender Stimme (17 Hunde; Higaki 2025, Zahlen aus einer Pressemitteilung).
because-taken = Genommen, von dem, was es in { $days } Tagen für dieses Wort gab: { $share } (Grenze { $bar }).
because-showings-a-day = Gezeigt in { $days } Tagen: { $rate } (Grenze { $bar } am Tag).
because-delay = Vom Drücken bis zum Geben, die Mitte: { $seconds } (Grenze { $bar }).
because-near = Blicke, Streifen und eigenes Drücken an diesem Knopf: { $share }. Vom Zeigen hatte er { $expected }.
because-comes-more = Eigene Drücke darauf in sieben Tagen: { $now }; in den vier Wochen davor: { $before }. Mehr, als der Zufall erlaubt.
because-too-few-hours = Zu wenige Sitzungen zu verschiedenen Tageszeiten.
because-uneasy-hours = Von { $from } bis { $to } machte { $name } { $here } mit, zu anderen Zeiten { $elsewhere }. Mit spätem Kommen, Weggehen und Zeichen { $p } (berichtigt fürs Aussuchen der Stunden), letzte { $days } Tage.
because-too-few-days = Zu wenige Tage, um eine Änderung zu sehen.
because-late-fall = Mitgemacht in den letzten { $days } Tagen: { $lately }; davor: { $before }. Mit spätem Kommen, Weggehen, Zeichen, eigenem Drücken und Nehmen { $p } (berichtigt fürs Aussuchen des Tages). Gesundheit zeigen die Aufzeichnungen nicht: Wirkt etwas seltsam, frage eine Tierarztpraxis.
because-only-word = Es ist das einzige Wort.
because-sounds = { $alike ->
    [yes] Es klingt „{ $nearest }“ sehr ähnlich.
   *[other] Es klingt anders genug als „{ $nearest }“.
} Ein anderes Wort gedrückt, vom Drücken beim Einladen: { $others }.
because-too-few-people = Weniger als zwei Menschen mit je fünf Antworten.
because-people-delay = { $one } gibt nach { $first }, { $two } nach { $second } (Rangsummentest, { $p }).
because-people-give = { $one } gibt bei { $first } des Drückens, { $two } bei { $second } ({ $p }).
because-many-presses = Eigenes Drücken in { $days } Tagen: { $rate } (Grenze { $bar } am Tag).
because-given-share = Mit der Sache beantwortet: { $share }.
because-signalled-times = Zeiten von Ja und Nein mit Zeichen: Hanley, Iwata & Thompson 2001, deren letzter Schritt 60 s und 240 s war. Der erste Schritt ist aus dem Gedächtnis, die dazwischen sind unsere.
because-never-checked = { $words ->
    [one] Ein Wort ist in Gebrauch und wurde nie geprüft.
   *[other] { $words } Wörter sind in Gebrauch und wurden nie geprüft.
}
because-check-open = { $done } von { $of } Durchgängen der Prüfung geschafft.
