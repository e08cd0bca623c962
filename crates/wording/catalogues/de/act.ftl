act-give-space = Vorerst keine Sitzung. Gib { $name } Raum und Abstand; nicht zurücklocken.
act-pause-sessions = Einige Tage weder zeigen noch einladen. Antworte weiter auf jeden Druck und locke { $name } nicht zurück.
act-no-more-today = Heute keine Sitzung mehr. Gib { $name } Raum und antworte weiter auf jeden Druck.
act-ask-about-threats = Sprich mit einer Tierarztpraxis und einer qualifizierten Fachperson für Tierverhalten. Halte Sitzungen kurz und höre beim ersten angespannten Zeichen auf.
act-ask-about-guarding = Nimm { $name } nichts weg. Sprich mit einer Tierarztpraxis und einer qualifizierten Fachperson für Tierverhalten.
act-ask-about-swallowing = { $today ->
    [yes] Rufe jetzt eine Tierarztpraxis an.
   *[other] Frage eine Tierarztpraxis und räume kleine Sachen außer Reichweite.
}
act-shorten-sessions = Mach die Sitzungen viel kürzer und beende sie, bevor { $name } gehen will. Versuche eine andere Belohnung.
act-ease-sessions = Ändere etwas vor der nächsten Sitzung: ruhigere Zeit oder ruhigerer Ort, weniger Wörter, mehr Abstand.
act-look-at-health = Sieh zuerst auf { $name }, nicht auf das Training: Fressen, Trinken, Toilette, Schlaf, Bewegung.
act-stop-food = Heute keine Futterbelohnung mehr. Nimm Spiel, Berührung oder Erkunden.
act-list-rewards = Was könnte { $name } mögen? Trage mindestens zwei Sachen ein: Futter, Spiel, Berührung, Erkunden, Ruhe.
act-test-likes = Mach einen Vorlieben-Test.
act-choose-first-words = Wähle zwei oder drei erste Wörter.
act-set-allowance = Lege fest, wie viel Futter { $name } am Tag haben darf.
act-fill-card = Fülle die Karte von „{ $word }“ aus: { $lacks }.
act-lack-reward = was es bringt
act-lack-answer = wie alle darauf antworten
act-lack-not-now = was ihr für „jetzt nicht“ sagt
act-check-batteries = Prüfe die Batterie von { $words }: Wird die Wiedergabe langsamer, ist sie oft schwach.
act-check-silent = Prüfe Batterie und Knopf von { $words }, wo kein Tier es hört. Lass es, wenn das Wort gerade nicht gebraucht wird.
act-retest-likes = Mach vor den nächsten Sitzungen einen kurzen Vorlieben-Test.
act-mend-hard-to-make-out = Spiele den Knopf von „{ $word }“ aus einem anderen Zimmer ab. Nimm ihn neu auf, klar und leise, wenn du das Wort nicht sofort erkennst.
act-mend-not-wanted = Teste die Vorlieben neu und ändere, was „{ $word }“ bringt, oder zeige es, wenn { $name } es will.
act-mend-too-little = Zeige „{ $word }“ öfter, jeden Tag ein wenig.
act-mend-too-late = Gib bei „{ $word }“ schneller: Leg die Sache ans Brett, damit sie in zwei Sekunden kommt.
act-mend-avoided = Lass den Knopf von „{ $word }“ in Ruhe. Versetze ihn oder versuche einen leiseren und warte, bis { $name } von selbst kommt.
act-mend-time-or-place = Halte Sitzungen zu den Stunden, in denen { $name } mitmacht, an einem ruhigeren Ort.
act-mend-health = Geh vor dem weiteren Training in die Tierarztpraxis.
act-mend-sounds-alike = Nimm für „{ $word }“ ein anderes Wort auf, das anders klingt.
act-mend-people-differ = Einigt euch auf eine Antwort auf „{ $word }“ und eine Zeit bis dahin. Hängt die Hausregeln auf, wo alle sie sehen.
act-step-back = { $to ->
    [invite] Geh mit „{ $word }“ zum Einladen zurück. Das ist kein Verlust.
   *[other] Geh mit „{ $word }“ zum Zeigen zurück. Das ist kein Verlust.
}
act-begin-inviting = Beginne, zu „{ $word }“ einzuladen: anbieten, { $seconds } s warten, dann selbst zeigen und geben.
act-invite = Lade zu „{ $word }“ ein- oder zweimal zwischen dem Zeigen ein. Was auch kommt: zeigen und geben.
act-show = Zeige „{ $word }“: drücken, sagen, geben.
act-show-at-end = Zeige „{ $word }“ am Ende jeder Sitzung.
act-leave-to-animal = „{ $word }“ ist reif fürs Gespräch: Überlass es { $name } und antworte auf jeden Druck.
act-answer = Antworte auf jeden Druck von „{ $word }“, auch mit „jetzt nicht“.
act-signal-times = { $name } verlangt „{ $word }“ öfter, als du geben kannst. Stelle ein Zeichen auf, das alle sehen: { $available } s lang bringt jeder Druck die Sache, dann { $unavailable } s lang „jetzt nicht“ mit einem Angebot von etwas anderem, und von vorn.
act-rest = Heute nichts lehren. Antworte auf Drücken von „{ $word }“.
act-plan-check = Plane eine Prüfung von { $words }.
act-go-on-with-check = Mach mit der Prüfung weiter: { $done } von { $of } Durchgängen geschafft.
act-quoted = „{ $word }“

act-change-calm-days = { $days } Tage mit höchstens einem Tag starker Zeichen.
act-change-calm-start = Ein ruhiger Anfang morgen: { $name } kommt von selbst ans Brett.
act-change-days-without = { $days } Tage ohne ein solches Zeichen.
act-change-fewer-left = { $name } verlässt weniger als die Hälfte der nächsten { $sessions } Sitzungen.
act-change-fewer-mild = Eine Woche mit milden Zeichen in deutlich weniger als { $share } der Sitzungen.
act-change-usual-presses = Drücken wieder im üblichen Bereich, oder ein klarer Grund: Besuch, Reise, leere Batterie, niemand schrieb mit.
act-change-next-day = Mitternacht, oder eine Menge, die eine Tierarztpraxis festlegt.
act-change-rewards-listed = Zwei oder mehr Belohnungen eingetragen.
act-change-test-recorded = Ein Vorlieben-Test aufgezeichnet.
act-change-word-made = Eine Wortkarte angelegt.
act-change-allowance-set = Eine Menge eingetragen oder das Fehlende ergänzt.
act-change-card-filled = Die Karte ausgefüllt.
act-change-ends-no-session = Auf der Karte steht nicht mehr, dass es die Sitzung beendet.
act-change-usual-speed = Drücken wieder mit üblichem Tempo, etwa nach einer neuen Batterie.
act-change-heard-again = Ein Druck, der gehört wird, oder die neue Aufnahme angemeldet.
act-change-test-agrees = Ein Test, dessen Reihenfolge mit dem vorigen übereinstimmt.
act-change-more-presses = Deutlich mehr Drücken beim Einladen, { $days } Tage nach der Änderung.
act-change-more-when-invited = { $name } drückt bei Einladungen öfter, wenn die Sache gewollt ist: nicht mehr klar unter { $share }.
act-change-lasts-again = Zwei Wochen und mehr nach dem Können liegen Drücke und richtige Drücke nicht mehr klar unter { $share }.
act-change-fades = Zwei Wochen und mehr nach dem Können fallen Drücke oder richtige Drücke klar unter { $share }.
act-change-longer-or-back = Längere Wartezeiten, sobald in zwei Sitzungen nacheinander während „jetzt nicht“ kaum gedrückt wird. Zurück zur Antwort auf jeden Druck bei einem starken Zeichen, beim Weggehen oder wenn das Drücken über drei Sitzungen nicht nachlässt.
act-change-checked = Die Prüfung geplant oder durchgeführt.

act-caution-ask-both = Frage eine Tierarztpraxis und eine qualifizierte Fachperson für Tierverhalten und beachte das örtliche Recht zu beißenden Tieren.
act-caution-ask-if-back = Kommen solche Zeichen wieder oder ohne erkennbaren Grund, frage eine Tierarztpraxis und eine qualifizierte Fachperson für Tierverhalten.
act-caution-call-vet-now = Rufe sofort eine Tierarztpraxis an, was auch verschluckt wurde. Bring { $name } nicht zum Erbrechen, außer es wird dir gesagt.
act-caution-take-nothing = Nimm nichts mit Gewalt weg und halte Kinder fern.
act-caution-leaving-is-answer = Weggehen ist eine Antwort. Rufe oder locke { $name } nicht zum Brett zurück.
act-caution-single-sign = Ein einzelnes Zeichen sagt wenig. Sieh auf den ganzen Körper und die Lage.
act-caution-may-be-illness = Eine plötzliche Änderung kann Krankheit sein, nicht Training: Geh in die Tierarztpraxis.
act-caution-individuals-differ = Tiere gleichen Gewichts brauchen bis zu dreimal so viel oder so wenig. Achte auf den Körper und frage eine Tierarztpraxis.
act-caution-battery = Wechsle Batterien, wo weder Tier noch Kind herankommt, verwahre auch alte so und schraube den Deckel zu. Eine verschluckte oder zerbissene Batterie ist ein Notfall. Ein Tier: sofort eine Tierarztpraxis anrufen. Ein Kind, das eine Knopfzelle verschluckt oder in Nase oder Ohr gesteckt hat: sofort in die Notaufnahme. Bringe niemanden zum Erbrechen, außer es wird dir gesagt.
act-caution-not-pressing = Nicht zu drücken sagt nichts darüber, was { $name } versteht. Hat sich an { $name } plötzlich etwas geändert, geh zuerst in die Tierarztpraxis.
act-caution-comes-and-goes = { $name } darf kommen und gehen. Höre auf, solange { $name } noch mehr will.
act-caution-burst-may-come = Wenn sich Antworten ändern, kann zuerst ein Schwall von Drücken kommen: bei Menschen in 24 % der Fälle, 12 % mit einem Angebot von etwas anderem (Lerman & Iwata 1995).
act-caution-never-for-needs = Nie bei Wasser, Toilette, Schmerz oder Angst: Darauf wird geantwortet. Verteidigt, knurrt oder beißt { $name }, höre auf und frage eine qualifizierte Fachperson für Tierverhalten.

act-hint-give-faster = Gib schneller: jetzt nach { $seconds }, Ziel { $aim }.
act-hint-show-only = Selbst zeigen und geben. Auf nichts warten.
act-hint-wait-then-show = Anbieten, { $seconds } s warten, dann zeigen und geben, was auch kommt.
act-hint-when-wanted = Zeige es, wenn { $name } es will.
act-hint-little-every-day = Jeden Tag ein wenig.
act-hint-answer-alike = Alle antworten gleich und sofort.
act-hint-good-hours = Zu den Stunden, in denen { $name } mitmacht, an einem ruhigen Ort.
act-hint-let-it-come = Warte, bis { $name } zum Knopf kommt.
act-hint-at-the-end = Als Letztes in der Sitzung.
act-hint-answer-every = Antworte auf jeden Druck, auch mit „jetzt nicht“.
