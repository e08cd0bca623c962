client-recent-press = { $by ->
    [person] Ich habe { $word } gedrückt
    [animal] { $name } hat { $word } gedrückt
   *[unknown] Gedrückt: { $word }
}
client-recent-stumble = { $press } (gestolpert)
client-recent-delivery = { $word }: { $answer }
client-recent-feed = Ein Stück { $food }
client-recent-food = Futter
client-recent-invited = Eingeladen zu { $word }: { $came }
client-recent-came-pressed = drückte { $word } nach { $seconds } s
client-recent-came-without = auf eigene Art gefragt
client-recent-came-nothing = nichts bis zum Ende des Wartens
client-recent-came-left = ging weg
client-recent-swaps-stopped = Tausch beendet
client-recent-asked = Ohne Knopf nach { $word } gefragt
client-recent-brushed = { $word } gestreift
client-recent-looked-at = { $word } angeschaut
client-recent-looked = Das Brett angeschaut
client-recent-sign = Zeichen ({ $level }): { $sign }
client-recent-started = Sitzung begonnen
client-recent-ended = Sitzung beendet: { $why }
client-recent-joined = Kam dazu
client-recent-left = Ging weg
client-recent-round = { $calls ->
    [one] Runde mit einem begonnen
   *[other] Runde mit { $calls } begonnen
}
client-recent-drawn = Gezogen für { $word }
client-recent-kept-here = { $time } · hier behalten
client-recent-edit = Ändern
client-recent-edit-this = Ändern: { $what }
client-recent-undo = Rückgängig
client-recent-another-word = Ein anderes Wort…
client-recent-which-word = Welches Wort war es?
client-recent-not-i = { $name } hat gedrückt, nicht ich
client-recent-i-did = Ich habe gedrückt
client-recent-it-stumbled = Es sah nach Versehen aus
client-recent-it-meant = Es sah gewollt aus
client-recent-was-given = Es wurde gegeben
client-recent-was-partly = Es wurde teilweise gegeben
client-recent-was-declined = Es war: jetzt nicht
client-recent-was-missed = Es wurde verpasst
client-recent-first-stays = Der erste Eintrag bleibt im Protokoll sichtbar. Zeit und mehr lassen sich dort ändern.
