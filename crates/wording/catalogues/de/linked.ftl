# Ein Notizbuch zu Hause, das mit seinem Zuhause auf einem Server verbunden ist: die Seite des Notizbuchs und die des Servers.
linked-title = Verbunden mit einem Server
linked-what = Eine Verbindung hält dieses Notizbuch und sein Zuhause auf einem Server gleich. Was du hier schreibst, geht dorthin. Was dort geschrieben wird, kommt hierher, etwa Notizen eines Coachs.
linked-what-offline = Ohne Netz geht dieses Notizbuch wie immer. Was wartet, geht, sobald der Server wieder erreicht wird.
linked-step-code = Öffne auf dem Server „Wer das sehen kann“, dann „Notizbücher zu Hause“, und mach einen Code.
linked-step-open = Öffne im Notizbuch zu Hause „Menschen“, dann „Verbunden mit einem Server“.
linked-step-paste = Füge dort den ganzen Text mit dem Code ein.
linked-step-yes = Sieh nach, was wohin geht, und sag ja. Vorher wird nichts gesendet, was im Notizbuch steht; der Server erfährt nur, wie das Zuhause heißt.
linked-link = Text vom Server
linked-link-hint = die Adresse mit dem Code, etwa https://sayso.example/linked#…
linked-begin = Verbinden
linked-with = Verbunden mit „{ $home }“ auf { $url }.
linked-unnamed = ein Zuhause noch ohne Namen
linked-not-yet = Noch wurde nichts gesendet, was hier steht; der Server kennt das Notizbuch unter dem Namen des Zuhauses. Sag unten, was gehen darf.
linked-not-yet-command = Noch wurde nichts gesendet. Um ja zu sagen: sayso link --yes, mit --pictures und --recordings, wo auch die gehen dürfen.
linked-goes = Was dorthin geht
linked-goes-all = Alles, was in diesem Notizbuch steht, geht dorthin, auch das Frühere: Protokoll, Karten, Rationen, Bemerkungen.
linked-goes-who = Wer das Zuhause dort führt oder dazugehört, sieht es. Wer sonst noch, wird allein dort entschieden, durch eine Einwilligung.
linked-coaches = Coaches, die dort jetzt etwas davon sehen: { $names }.
linked-no-coach = Kein Coach sieht dort jetzt etwas davon.
linked-pictures = Auch Bilder
linked-recordings = Auch Aufnahmen der Knöpfe
linked-sound-stays = Ton rund um Drücke verlässt dieses Gerät nie.
linked-yes = Ja, dorthin senden
linked-agreed = Zuletzt waren beide gleich: { $when }.
linked-never-agreed = Die beiden waren noch nie gleich.
linked-waits = { $count ->
    [0] Nichts wartet auf das Senden.
    [one] Ein Eintrag wartet auf das Senden.
   *[other] { $count } Einträge warten auf das Senden.
}
linked-moved = Einträge gesendet: { $sent }, empfangen: { $received }. Bilder und Aufnahmen: { $media }.
linked-hinders = { $kind ->
    [away] Der Server wird nicht erreicht. Es wird von selbst wieder versucht.
    [here] Dieses Notizbuch kann gerade nicht gelesen oder beschrieben werden. Es wird von selbst wieder versucht.
   *[strange] Der Server hat anders geantwortet als erwartet. Es wird von selbst wieder versucht.
}
linked-unreached = { $kind ->
    [away] Der Server wird nicht erreicht. Läuft er, und ist es die Adresse, die er zeigt, mit http:// oder https:// davor?
    [here] Dieses Notizbuch kann gerade nicht gelesen oder beschrieben werden.
   *[strange] Was dort antwortet, ist kein Server dieses Programms. Prüf die Adresse: Es ist die, die der Server zeigt.
}
linked-stopped = { $why ->
    [left] Das Zuhause hat diesen Server verlassen und wurde dort gelöscht. Es wird nichts mehr gesendet, und hier geht nichts verloren.
   *[ended] Der Server nimmt es nicht mehr: Die Verbindung wurde dort beendet, oder wer sie gemacht hat, führt das Zuhause nicht mehr. Hier geht nichts verloren.
}
linked-again = Noch einmal von vorn versuchen
linked-held-title = Nicht im Zuhause auf dem Server
linked-lacks-title = Nicht in diesem Notizbuch
linked-held = { $why ->
    [differs] { $count ->
        [one] { $count } Eintrag ist auf beiden Seiten verschieden; jede behält ihren
       *[other] { $count } Einträge sind auf beiden Seiten verschieden; jede behält ihre
    }
    [consent] { $count ->
        [one] { $count } Eintrag betrifft eine Einwilligung; die wird auf dem Server selbst gegeben und zurückgenommen
       *[other] { $count } Einträge betreffen Einwilligungen; die werden auf dem Server selbst gegeben und zurückgenommen
    }
    [coach] { $count ->
        [one] { $count } Eintrag steht im Namen eines Coachs oder eines Kontos; so etwas wird auf dem Server selbst geschrieben
       *[other] { $count } Einträge stehen im Namen eines Coachs oder eines Kontos; so etwas wird auf dem Server selbst geschrieben
    }
    [lacks] { $count ->
        [one] { $count } Eintrag betrifft einen anderen, der dort nicht steht
       *[other] { $count } Einträge betreffen andere, die dort nicht stehen
    }
    [ahead] { $count ->
        [one] { $count } Eintrag ist mehr als einen Tag vorausdatiert; er geht, wenn der Tag da ist
       *[other] { $count } Einträge sind mehr als einen Tag vorausdatiert; sie gehen, wenn der Tag da ist
    }
    [unread] { $count ->
        [one] { $count } Eintrag ist von einer Art, die die andere Seite nicht kennt; aktualisiere die ältere der beiden
       *[other] { $count } Einträge sind von Arten, die die andere Seite nicht kennt; aktualisiere die ältere der beiden
    }
    [other_home] { $count ->
        [one] { $count } Eintrag gehört zu einem anderen Zuhause
       *[other] { $count } Einträge gehören zu einem anderen Zuhause
    }
   *[unsound] { $count ->
        [one] { $count } Eintrag wird von den Regeln der anderen Seite nicht eingelassen
       *[other] { $count } Einträge werden von den Regeln der anderen Seite nicht eingelassen
    }
}
linked-which = Welche das sind
linked-unlinking = Verbindung lösen
linked-unlinking-what = Es wird nichts mehr gesendet oder geholt. Was jede Seite hat, behält sie.
linked-unlink = Dieses Notizbuch lösen
linked-ended = Dieses Notizbuch ist nicht mehr verbunden. Was hier ist, bleibt hier, und was auf dem Server ist, bleibt dort.
linked-not-told = Dem Server konnte es nicht gesagt werden. Beende die Verbindung auch dort: „Wer das sehen kann“, dann „Notizbücher zu Hause“.
linked-not-linked = Dieses Notizbuch ist nicht verbunden.
linked-no-address = „{ $text }“ ist nicht das, was ein Server zeigt. Füge alles ein, von https:// bis zum Ende des Codes.
linked-unsafe-address = { $url } ist nicht https, also könnten andere mitlesen, was dorthin geht. Frag, wer den Server betreibt.
linked-damaged = { $file } enthält keine Verbindung ({ $why }). Löse sie hier und verbinde neu; im Notizbuch geht nichts verloren.
linked-already = Dieses Notizbuch ist schon verbunden, mit { $url }. Löse es zuerst.
linked-bad-code = Dieser Code gilt nicht oder nicht mehr. Mach auf dem Server einen neuen.
linked-other-home = Das Zuhause auf dem Server enthält andere Einträge als dieses Notizbuch, und zwei werden nicht vermischt. Wähle das, in das dieses Notizbuch umgezogen ist, oder bitte um ein neues, wer den Server betreibt. Eingewilligt werden darf dort schon; lass es sonst leer, bis das Notizbuch verbunden ist.
linked-too-often = Zu viele Versuche. Warte eine Viertelstunde.
linked-notebooks = Notizbücher zu Hause
linked-notebooks-what = Ein Notizbuch, das jemand auf einem Gerät zu Hause führt, kann mit diesem Zuhause verbunden werden. Es enthält dann alles, was hier steht, und bringt, was in ihm geschrieben wird.
linked-no-notebook = Kein Notizbuch ist verbunden.
linked-how-many = { $count ->
    [0] Kein Notizbuch zu Hause ist verbunden.
    [one] Ein Notizbuch zu Hause ist verbunden: Es enthält alles, was hier steht.
   *[other] { $count } Notizbücher zu Hause sind verbunden: Jedes enthält alles, was hier steht.
}
linked-see = Verbindungen ansehen und beenden
linked-nameless = Ein Notizbuch ohne Namen
linked-times = Code benutzt: { $linked }. Zuletzt gehört: { $heard }. Was zu Hause geschrieben wird, kommt, sobald dort jemand ja gesagt hat.
linked-make-code = Code machen
linked-code-what = Der Code verbindet ein Notizbuch, einmal, innerhalb einer Stunde.
linked-code-sees = Das Notizbuch liest alles in diesem Zuhause. Was von ihm kommt, öffnet dieses Zuhause für niemanden: Eingewilligt wird allein hier.
linked-code-holds = In diesem Zuhause stehen schon Einträge. Verbinden lässt sich nur ein leeres Notizbuch oder jenes, das hierher umgezogen ist.
linked-code-whoever = Wer den Code hat, kann alles in diesem Zuhause lesen. Gib ihn niemandem außer dir selbst.
linked-code = Der Code
linked-code-once = Bring ihn jetzt zum Notizbuch. Er wird nicht noch einmal gezeigt.
linked-qr = Der Text mit dem Code als QR-Code
linked-shown = Das gehört in ein Notizbuch
linked-shown-what = Dieser Text verbindet ein Notizbuch zu Hause mit einem Zuhause auf diesem Server. Ihn zu öffnen bewirkt von selbst nichts.
linked-was-with = War verbunden mit „{ $home }“ auf { $url }.
linked-after-stopped = Löse hier die Verbindung. Soll es weitergehen, mach auf dem Server einen neuen Code und verbinde neu.
linked-silent = Etwas wartet, und der Server hat seit { $when } nicht geantwortet.
linked-as-said = Was gesagt wurde
linked-coaches-unknown = Welche Coaches dort etwas davon sehen, ist noch nicht bekannt: Der Server hat es nicht gesagt.
linked-comes = { $count ->
    [one] Ein Eintrag, der dort steht, kommt hierher.
   *[other] { $count } Einträge, die dort stehen, kommen hierher.
}
linked-never-went = { $count ->
    [one] Ein Eintrag dieses Notizbuchs kam nie dorthin.
   *[other] { $count } Einträge dieses Notizbuchs kamen nie dorthin.
}
