events-word-without-card = ein Wort ohne Karte
events-reward-without-card = etwas ohne Karte
events-home-without-name = Ein Zuhause ohne Namen
events-home = Zuhause: { $name }, { $zone }
events-person = Mensch: { $name }
events-animal = Tier: { $name }
events-reward = Belohnung: { $name }
events-word = Wort: { $word }
events-clip = Aufnahme von { $word }
events-board = Brett mit { $rows } mal { $columns } Plätzen, { $words ->
    [one] { $words } Wort
   *[other] { $words } Wörter
}
events-rule = Hausregel: { $text }
events-stage = { $word }: Stufe { $stage }
events-session-began = Sitzung begonnen: { $purpose }{ $room ->
    [none] { "" }
   *[other] , { $room }
}
events-showing = Zeigen
events-inviting = Einladen
events-likes-test = Vorlieben-Test
events-check = Prüfung des Verstehens
events-joined = Kam dazu
events-joined-after = Kam nach { $seconds } dazu
events-left = Ging weg
events-session-ended = Sitzung beendet: { $reason }
events-pressed-itself = { $name } drückte { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(zu { $sure } sicher)
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(sah nach Versehen aus)
}
events-pressed-to-show = Gezeigt: { $word } gedrückt{ $sure ->
    [none] { "" }
   *[other] { " " }(zu { $sure } sicher)
}
events-pressed-by-someone = Jemand drückte { $word }{ $sure ->
    [none] { "" }
   *[other] { " " }(zu { $sure } sicher)
}{ $stumble ->
    [no] { "" }
   *[other] { " " }(sah nach Versehen aus)
}
events-answered = { $word }: { $answer }{ $other ->
    [none] { "" }
   *[other] { " " }({ $other })
}{ $after ->
    [none] { "" }
   *[other] { " " }nach { $after }
}{ $then ->
    [none] { "" }
   *[other] ; { $name } { $then }
}
events-pressed-then = drückte { $word }
events-looked = Blick auf das Brett
events-looked-at = Blick auf { $word }
events-brushed = { $word } gestreift, ohne dass es ertönte
events-round = Runde mit { $calls } begonnen: { $words }
events-swaps-agreed = Tausche für { $days ->
    [one] { $days } Tag
   *[other] { $days } Tage
} verabredet, eine von { $one_in } Antworten: { $words }
events-drawn-give-it = Gelost für { $word }: geben
events-drawn-give-other = Gelost für { $word }: stattdessen { $other } geben
events-swaps-stopped = Tausche beendet
events-swaps-stopped-signs = Tausche beendet wegen Zeichen von Stress
events-invited = Zu { $word } eingeladen ({ $way }{ $call ->
    [none] { "" }
   *[other] , gelost, Ruf { $call }
}, Wartezeit { $wait }): { $result }
events-in-view = in Sicht
events-asked-pointed = gefragt, gezeigt
events-this-or-that = dies oder das
events-pressed-at = drückte { $word } nach { $seconds }
events-answered-without-button = ohne Knopf geantwortet
events-nothing-by-wait = nichts bis zum Ende der Wartezeit
events-result-left = ging weg
events-asked-without-button = Um { $word } ohne Knopf gebeten{ $how ->
    [none] { "" }
   *[other] { " " }({ $how })
}{ $shown ->
    [no] { "" }
   *[other] ; gezeigt
}
events-sign = Zeichen ({ $level }): { $sign }
events-fed = Gefüttert: { $pieces ->
    [none] { "" }
   *[other] { $pieces } ×{ " " }
}{ $what }, { $kcal }
events-food = Futter
events-likes-test-of = Vorlieben-Test mit { $n ->
    [one] { $n } Sache
   *[other] { $n } Sachen
}: { $format }
events-one-at-a-time = einzeln
events-two-at-a-time = je zwei
events-all-at-once = alle zugleich, ohne Zurücklegen
events-free-access = freier Zugang
events-offered = Angeboten { $things }: { $came }
events-chose = wählte { $what }
events-chose-none = wählte nichts
events-walked-away = ging fort
events-watched = { $seconds } lang beobachtet
events-check-planned = Prüfung des Verstehens geplant: { $trials ->
    [one] { $trials } Durchgang
   *[other] { $trials } Durchgänge
}
events-check-trial = Prüfung, Durchgang { $trial } zu { $word }: { $came }
events-nothing = nichts
events-trial-planned = Versuch mit einer Änderung geplant: { $question } ({ $points ->
    [one] { $points } Punkt
   *[other] { $points } Punkte
})
events-trial-point = Versuch mit einer Änderung, Punkt { $point }: tatsächlich { $force }
events-trial-stopped = Versuch mit einer Änderung beendet
events-remark = Bemerkung: { $text }
events-lesson-read = Lektion gelesen: { $lesson }
events-consent-given = Einwilligung gegeben: { $what }
events-consent-taken-back = Einwilligung zurückgenommen: { $what }
events-consent = { $purpose ->
    [coach_figures] { $who ->
        [club] wer in einem Verein berät, sieht Zahlen
       *[other] jemand, der berät, sieht Zahlen
    }
    [coach_log] { $who ->
        [club] wer in einem Verein berät, liest das Protokoll
       *[other] jemand, der berät, liest das Protokoll
    }
    [coach_snippets] { $who ->
        [club] wer in einem Verein berät, hört Töne von Drücken
       *[other] jemand, der berät, hört Töne von Drücken
    }
    [norms] Zahlen zählen in Vergleichswerten
   *[other] Aufzeichnungen dürfen an Studien gehen
}
events-correction = Berichtigung: { $text }
events-undone = Rückgängig gemacht{ $because ->
    [none] { "" }
   *[other] : { $because }
}
events-stage-name = { $stage ->
    [show] zeigen
    [invite] einladen
    [converse] sich verständigen
   *[other] vorbereiten
}
events-question = { $kind ->
    [quieter] Hilft ein leiserer Knopf?
    [place] Hilft ein neuer Platz?
    [faster] Hilft schnelleres Geben?
    [word] Hilft ein anderes Wort?
   *[other] Hilft das: { $label }?
}
events-a-change = eine Änderung
events-in-force = { $force ->
    [changed] mit der Änderung
   *[other] wie immer
}
events-proposal = Von { $name }: { $what }
events-proposal-answer = { $reply ->
    [accepted] Vorschlag eines Coachs angenommen
    [declined] Vorschlag eines Coachs abgelehnt
   *[said] Einem Coach geantwortet
}{ $text ->
    [none] { "" }
   *[other] : { $text }
}
events-own-plan = Eigener Plan bis { $day }: { $lines }
