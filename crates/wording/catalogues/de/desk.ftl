desk-swallowing = { $today ->
    [yes] { $name } hat heute etwas verschluckt: Ruft jetzt eine Tierarztpraxis an.
   *[other] { $name } hat am { $day } etwas verschluckt. Frage, ob eine Tierarztpraxis danach gesehen hat.
}
desk-threat = { $count ->
    [one] { $name } hat am { $day } geknurrt, geschnappt oder gebissen.
   *[other] { $name } hat in den letzten { $days } Tagen { $count }-mal geknurrt, geschnappt oder gebissen, zuletzt am { $day }.
}
desk-guarding = { $count ->
    [one] { $name } hat am { $day } etwas verteidigt.
   *[other] { $name } hat in den letzten { $days } Tagen { $count }-mal etwas verteidigt, zuletzt am { $day }.
}
desk-strong = { $on ->
    [one] { $name } hat am { $day } starke Stresszeichen gezeigt.
   *[other] { $name } hat an { $on } von { $days } Tagen starke Stresszeichen gezeigt, zuletzt am { $day }.
}
desk-taken-back = { $kind ->
    [swallowing] Die Notiz, dass { $name } am { $day } etwas verschluckt hat, wurde zurückgenommen.
    [threat] Die Notiz, dass { $name } am { $day } geknurrt, geschnappt oder gebissen hat, wurde zurückgenommen.
    [guarding] Die Notiz, dass { $name } am { $day } etwas verteidigt hat, wurde zurückgenommen.
   *[other] Die Notiz eines starken Stresszeichens am { $day } wurde zurückgenommen.
}
desk-joins-less = { $name } macht seit { $day } weniger Sitzungen mit: { $lately }. Davor: { $before }.
desk-presses-less = { $name } drückt seit { $day } weniger: { $lately }. Davor: { $before }.
desk-slower = { $name } braucht seit { $day } länger, um auf eine Einladung zu drücken: { $lately }. Davor: { $before }.
desk-leaves = { $name } hat viele der letzten mitgemachten Sitzungen verlassen: { $share }.
desk-silent = Seit { $days } Tagen ist über { $name } nichts notiert.
desk-stuck = „{ $word }“ stockt: { $cause }.
desk-holds = „{ $word }“ kommt voran, aber etwas steht im Weg: { $cause }.
desk-stuck-unknown = „{ $word }“ stockt, und die Aufzeichnungen zeigen nicht, warum.
desk-cause = { $cause ->
    [hard_to_make_out] die Aufnahme ist vielleicht schwer zu verstehen
    [not_wanted] was es bringt, ist gerade nicht gewollt
    [too_little] es wird zu wenig gezeigt
    [too_late] die Sache kommt zu spät
    [avoided] { $name } meidet den Knopf
    [time_or_place] Zeit oder Ort der Sitzungen fallen { $name } schwer
    [health] { $name } geht es vielleicht nicht gut
    [sounds_alike] es wird mit einem ähnlich klingenden Wort verwechselt
   *[people_differ] die Menschen antworten verschieden
}
desk-ration = { $name } bekam an { $days } der letzten { $of } Tage mehr Futter, als die Belohnungen des Tages sind.
desk-ready = „{ $word }“ ist seit { $day } reif zum Einladen.
desk-check-open = Eine Prüfung wartet auf ihr Ende: { $done } von { $of } Durchgängen geschafft.
desk-check-never = { $words ->
    [one] Ein Wort in Gebrauch wurde nie geprüft.
   *[other] { $words } Wörter in Gebrauch wurden nie geprüft.
}
desk-little = { $lack ->
    [days] Einträge an { $days } von { $of } Tagen sind zu wenig, um zu sagen, was ein Wort aufhält.
    [records] An { $days } von { $of } Tagen sind zu wenige Drücke und Sitzungen aufgeschrieben, um zu sagen, was ein Wort aufhält.
   *[whole] An { $days } von { $of } Tagen sind zu wenige Drücke und Sitzungen ganz aufgeschrieben, um zu sagen, was ein Wort aufhält.
}
desk-outside = Außerhalb der mittleren neun Zehntel von { $homes } vergleichbaren Haushalten: { $lies }
desk-outside-wait = { $by ->
    [days] { $wait ->
        [one] { $wait } Tag
       *[other] { $wait } Tagen
    }
   *[showings] { $wait } Zeigen
}
desk-outside-open = noch kein Druck von „{ $word }“ nach { $wait }. Dort waren neunzehn von zwanzig Wörtern nach höchstens { $place } zum ersten Mal gedrückt ({ $level }-Intervall: { $low } bis { $high }).
desk-outside-later = „{ $word }“ wurde zum ersten Mal nach { $wait } gedrückt. Dort waren neunzehn von zwanzig Wörtern nach höchstens { $place } zum ersten Mal gedrückt ({ $level }-Intervall: { $low } bis { $high }).
desk-outside-sooner = „{ $word }“ wurde zum ersten Mal nach { $wait } gedrückt. Dort brauchten neunzehn von zwanzig Wörtern { $place } oder mehr ({ $level }-Intervall: { $low } bis { $high }).

desk-why-recurring = Es kommt immer wieder: in { $weeks } der letzten { $of } Wochen.
desk-why-taken-back = Vielleicht war es vertippt. Frage das Zuhause, was geschehen ist.
desk-why-change = Mehr, als der Zufall erlaubt, auch wenn man alles mitzählt, was dieser Tisch ansieht ({ $p }).
desk-why-silent = Tage von einer Notiz zur nächsten: { $usual }. Die längste Lücke bisher: { $longest }; genannt wird es ab { $after } ganzen Tagen.
desk-why-silent-new = Noch gibt es keine Gewohnheit zum Vergleich; genannt wird es ab { $after } ganzen Tagen.
desk-why-hardly = Stockt heißt es deshalb: { $presses ->
    [0] { $name } hat es in vier Wochen nicht von sich aus gedrückt
    [one] { $name } hat es in vier Wochen einmal von sich aus gedrückt
   *[other] { $name } hat es in vier Wochen { $presses }-mal von sich aus gedrückt
}, und gezeigt wird es seit über drei.
desk-why-seldom-taken = Stockt heißt es deshalb: { $name } nimmt selten, was es bringt, und für mehr gibt es zu wenige Einladungen.
desk-why-seldom-right = Stockt heißt es deshalb: Richtig in klar weniger als der Hälfte der Einladungen, bei denen { $name } die Sache wollte: { $right }.
desk-why-right = Richtig, von den Malen, die { $name } eingeladen war und die Sache wollte: { $right }.
desk-why-hours = Mitgemacht zu diesen Stunden: { $figure }. Zu anderen: { $beside }.
desk-why-fall = In letzter Zeit: { $figure }. Davor: { $beside }.
desk-why-alike = Das andere Wort gedrückt, wenn zu diesem eingeladen war: { $figure }. Wenn zu keinem von beiden: { $beside }.
desk-why-people = Ein Mensch: { $figure }. Ein anderer: { $beside }.
desk-why-recording = Die Aufnahme ({ $seconds }) ist sehr kurz oder leiser als die anderen.
desk-why-ration = Das meiste an einem Tag: { $most } kcal. Die Belohnungen des Tages sind { $budget } kcal.
desk-why-ready = { $showings ->
    [one] Einmal gezeigt
   *[other] { $showings }-mal gezeigt
}, und es wartet seit { $days } Tagen.
desk-why-check = Nur eine Prüfung kann es von Hinweisen und Glück unterscheiden.
desk-why-little = Vollständig notiert (ein Druck mit Antwort, eine Sitzung mit Ende): { $closed }. Was niemand notiert hat, kann trotzdem geschehen sein.
desk-why-outside = Neben { $kind } in Haushalten mit { $who }. Wörter von { $name }, die sich neben andere legen ließen: { $laid }. Überall liegt etwa eins von zehn Wörtern außerhalb.
desk-why-outside-cause = Was hier aufhalten kann: { $cause }.
desk-why-sooner = Ein Druck sagt, dass ein Knopf gedrückt wurde, nicht warum. Früher ist nicht besser.
desk-until-without = Kein weiteres solches Zeichen vor dem { $day }.

desk-until-asked = Ein Wort vom Zuhause dazu, warum es zurückgenommen wurde.
desk-until-record = Irgendeine Notiz.
desk-until-more-records = { $lack ->
    [days] Einträge an den meisten Tagen, mit Antworten und dem Ende der Sitzungen.
    [records] Mehr Drücke und Sitzungen aufgeschrieben, mit Antworten und Ende.
   *[whole] Zu den meisten Drücken die Antwort und zu den meisten Sitzungen das Ende aufgeschrieben.
}
desk-until-more-right = Deutlich mehr richtige Drücke auf Einladungen, oder Einträge, die auf eine Ursache weisen.
desk-until-fewer-over = Weniger als drei solche Tage in einer Woche oder eine Menge, die eine Tierarztpraxis festlegt.
desk-until-invited = Zu dem Wort wird eingeladen, oder seine Zahlen weisen nicht mehr aufs Einladen.
desk-until-first-press = Ein erster Druck oder eine neuere Ausgabe dieser Vergleichswerte.
desk-until-since-press = { $days } Tage seit dem ersten Druck oder eine neuere Ausgabe dieser Vergleichswerte.
desk-aside = { $ago ->
    [0] Vor weniger als einem Tag beiseitegelegt
    [one] Vor { $ago } Tag beiseitegelegt
   *[other] Vor { $ago } Tagen beiseitegelegt
}; in höchstens { $days ->
    [one] { $days } Tag
   *[other] { $days } Tagen
} wieder da, früher, wenn es schlimmer wird.
desk-back = { $ago ->
    [0] Vor weniger als einem Tag hast du das beiseitegelegt.
    [one] Vor { $ago } Tag hast du das beiseitegelegt.
   *[other] Vor { $ago } Tagen hast du das beiseitegelegt.
} { $why ->
    [worse] Seither ist es schlimmer geworden.
    [anew] Seither hat es neu begonnen.
    [cause] Jetzt weisen die Einträge auf eine andere Ursache.
   *[days] Die Tage dafür sind um.
}

desk-new-signs = { $kind ->
    [swallowing] { $count ->
        [one] { $name } hat etwas verschluckt: { $day }.
       *[other] { $name } hat { $count }-mal etwas verschluckt, zuletzt { $day }.
    }
    [threat] { $count ->
        [one] { $name } hat geknurrt, geschnappt oder gebissen: { $day }.
       *[other] { $name } hat { $count }-mal geknurrt, geschnappt oder gebissen, zuletzt { $day }.
    }
    [guarding] { $count ->
        [one] { $name } hat etwas verteidigt: { $day }.
       *[other] { $name } hat { $count }-mal etwas verteidigt, zuletzt { $day }.
    }
   *[other] { $count ->
        [one] Ein starkes Stresszeichen: { $day }.
       *[other] Starke Stresszeichen: { $count }, zuletzt { $day }.
    }
}
desk-new-joining = Sitzungen, die { $name } mitgemacht hat: { $lately }. Davor: { $before } ({ $p }).
desk-new-presses = Eigene Drücke: { $lately }. Davor: { $before } ({ $p }).
desk-new-word = „{ $word }“ ist neu auf dem Brett.
desk-word-gone = „{ $word }“ ist nicht mehr in Gebrauch.
desk-first-press = { $name } hat zum ersten Mal von selbst „{ $word }“ gedrückt: { $day }.
desk-new-stage = „{ $word }“ ging von { $from } zu { $to }.
desk-above-chance = Richtiges Drücken von „{ $word }“ ist jetzt mehr als Zufall: { $right }.
