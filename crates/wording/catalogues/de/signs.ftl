signs-see-walks-up = kommt, wenn das Zeigen beginnt
signs-see-ears-forward = Ohren nach vorn oder Kopf schräg bei einem Wort
signs-see-waits = wartet am Brett und sieht den Menschen an
signs-see-comes-at-sound = kommt beim Ton aus einem anderen Zimmer
signs-see-brings-thing = bringt das, worum es geht
signs-see-loose-body = lockerer Körper, weiche Rute
signs-see-lip-lick = leckt die Lippen oder gähnt ohne erkennbaren Anlass
signs-see-turns-away = wendet Kopf oder Körper ab
signs-see-sniffs-floor = schnüffelt am Boden, kratzt sich, schüttelt sich
signs-see-lifts-paw = hebt eine Pfote, Ohren zurück
signs-see-panting = hechelt ohne Hitze oder Anstrengung
signs-see-eye-whites = das Weiße der Augen ist zu sehen
signs-see-tail-tucked = Rute eingezogen, geduckt
signs-see-freezes = erstarrt, starrt
signs-see-avoids-board = versteckt sich oder will nicht ans Brett
signs-see-growl = Knurren
signs-see-bite = Schnappen oder Biss
signs-see-guards = bewacht Futter, eine Sache oder den Knopf
signs-see-swallowed = hat etwas verschluckt, das kein Futter ist
signs-see-approaches-tail-up = kommt heran, Schwanz hoch
signs-see-rubs = reibt sich an Mensch oder Brett
signs-see-slow-blink = blinzelt langsam, Ohren nach vorn
signs-see-tail-tip = Schwanzspitze zuckt
signs-see-ears-sideways = Ohren drehen sich zur Seite
signs-see-skin-ripples = Haut zuckt, leckt schnell die Nase
signs-see-tail-lashes = Schwanz peitscht
signs-see-ears-flat = Ohren flach angelegt
signs-see-crouches = duckt sich, Pupillen weit
signs-see-hides = versteckt sich
signs-see-hiss = Fauchen oder Pfotenhieb
signs-see-leans-in = lehnt sich heran, Federn locker
signs-see-steps-unasked = geht ungefragt ans Brett
signs-see-feathers-tight = Federn eng angelegt, lehnt sich weg
signs-see-pupils-pin = Pupillen zucken, Nackenfedern gesträubt, Körper steif und aufrecht
signs-see-lunges = geht auf jemanden los
signs-see-nudges = kommt heran, stupst
signs-see-flops = wirft sich hin, putzt sich in der Nähe
signs-see-freezes-flat = erstarrt flach am Boden, Ohren zurück
signs-see-thumps = klopft mit den Hinterläufen
signs-see-runs-to-hide = rennt ins Versteck
signs-act-carry-on = mach weiter
signs-act-pause-let-leave = mach Pause, gib Raum, lass es gehen
signs-act-end-no-lure = beende die Sitzung; locke nicht zurück
signs-act-end-distance-ask = beende die Sitzung, halte Abstand; wende dich an eine Tierarztpraxis und an eine qualifizierte Fachperson für Tierverhalten
signs-act-end-take-nothing-ask = beende die Sitzung, halte Abstand, nimm dem Tier nichts weg; wende dich an eine Tierarztpraxis und an eine qualifizierte Fachperson für Tierverhalten
signs-act-call-vet = ruf sofort eine Tierarztpraxis an; bring das Tier nicht zum Erbrechen, außer es wird dir gesagt
signs-act-pause = mach Pause, gib Raum
signs-act-end = beende die Sitzung
signs-of-any = Wegdrehen, Verstecken, Erstarren, Drohen
signs-whose = { $species ->
    [dog] Hund
    [cat] Katze
    [parrot] Papagei
    [rabbit] Kaninchen
   *[other] Ein anderes Tier
}
signs-levels = { $whose }: mild: { $mild }. Stark: { $strong }.
signs-only-strong = { $whose }: Ein mildes Zeichen ist nicht bekannt; schon das erste kann ein starkes sein: { $strong }.
