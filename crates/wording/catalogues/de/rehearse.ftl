rehearse-title = Proben
rehearse-intro = Übe mit einem Tier, dem nichts geschehen kann, bevor die Knöpfe da sind oder wann du willst. Nichts davon kommt ins Notizbuch.
rehearse-simulation = Eine Simulation: Echte Tiere sind anders.
rehearse-assumes = Was sie annimmt
rehearse-assumes-short = Kurz: Zeigen lehrt am meisten, wo die Sache sofort kommt und genommen wird; weniger kurz nach dem letzten Mal. Was gezeigt wird, während das Tier anderswo ist oder noch etwas hat, lehrt nichts; bei einem Zeichen nimmt es ein wenig zurück. „Jetzt nicht“, etwas anderes oder keine Antwort nimmt ein wenig zurück. Eile, Rufen, Versperren und eine lange Sitzung belasten, bis ein Zeichen zu sehen ist und das Tier geht. Alles geht etwa zehnmal so schnell wie in unseren simulierten Haushalten. Wie viel von jedem, ist unsere Wahl: Niemand hat es gemessen.
rehearse-name = { $who ->
    [eager] Zip
    [wary] Moth
    [old] Bramble
    [quick] Pico
   *[guards] Rusk
}
rehearse-character = { $who ->
    [eager] Zip, ein junger Hund: kommt sofort, wird spät müde
    [wary] Moth, eine Katze: kommt, wenn nichts verlangt wird
    [old] Bramble, ein alter Hund: jeder Schritt braucht Zeit
    [quick] Pico, ein Papagei: lernt schnell, drückt auch aus Neugier
   *[guards] Rusk, ein Hund: will beim Fressen nicht gestört werden
}
rehearse-with = Mit wem
rehearse-exercise = { $which ->
    [likes] Was wird gemocht?
    [showing] Drücken, sagen, geben
    [leaving] Gehen lassen
    [inviting] Fünf Einladungen
    [evening] Ein Abend voller Drücke
    [stuck] Ein Wort, das festsitzt
   *[free] Freies Üben
}
rehearse-short = { $which ->
    [likes] Immer zwei Dinge hinhalten: was gewählt wird, und wie sicher das ist.
    [showing] Zwei Minuten lang zwei oder drei Wörter zeigen.
    [leaving] Jemand will gehen, und darf.
    [inviting] Jede mit ihren ganzen fünf Sekunden Warten.
    [evening] Bis zu dreißig Drücke im Zeitraffer, so viele, wie das Tier macht: jeder wird gerecht beantwortet, auch mit „jetzt nicht“.
    [stuck] Ein Wort kommt nicht voran. Probier etwas aus und sag dann, woran es liegt.
   *[free] Fünf Minuten, was du willst.
}
rehearse-how = { $which ->
    [likes] Tipp auf „Zwei hinhalten“: Du hältst auf jeder Seite eins hin. Dann halt still, bis { $name } gewählt hat, oder keins, und damit fertig ist. Zwölf Paare sagen am meisten, weniger sagen weniger.
    [showing] Tipp auf einen Knopf: Du drückst ihn und sagst sein Wort. Tipp noch einmal, um die Sache zu geben. Gib sofort, verteile die Drücke auf die Wörter und lass Zeit zum Fressen und Spielen.
    [leaving] Zeig Wörter, wie du magst. Wenn { $name } weggeht, lass es so sein: kein Rufen, nichts im Weg. Dann beende.
    [inviting] Tipp auf „Einladen“ und einen Knopf: Du hältst die Sache sichtbar hin. Dann tu fünf Sekunden lang nichts. Gedrückt? Sag das Wort und gib sofort. Nicht gedrückt? Drück selbst, sag es, gib es. Ist { $name } weggegangen, lass es gut sein.
    [evening] { $name } drückt. Beantworte jeden Druck: gib, sag „jetzt nicht“ oder gib etwas anderes. Die Leckerchen gehen zu Ende.
    [stuck] Das umrandete Wort kommt nicht voran. Etwas hält es auf: Probier eins nach dem anderen aus, schau, was { $name } tut, und beende, wenn du eine Idee hast. Dann sagst du, was es ist, und erfährst, was wahr war.
   *[free] Alles, was das Brett hat, und was einen sonst verlockt: rufen, in den Weg treten, noch einmal sagen.
}
rehearse-choose = Proben
rehearse-fits = { $which ->
    [showing] Vor der ersten Sitzung
    [inviting] Vor der ersten Einladung
   *[evening] Wenn auf Drücke geantwortet wird
}
rehearse-others = Andere Übungen
rehearse-lessons = Lektionen dazu
rehearse-start = Anfangen
rehearse-see = Ansehen, wie es lief
rehearse-all = Alle Übungen
rehearse-no-script = Zum Proben braucht es Skripte. Die Lektionen kommen ohne aus.
rehearse-room = Der Raum von oben: oben das Brett und du, unten rechts ein Bett, unten links die offene Tür.
rehearse-room-likes = Das Zimmer von oben: du oben, mit einer Sache in jeder Hand, wenn du zwei hinhältst; rechts unten ein Bett, links unten die offene Tür.
rehearse-happens = Was geschieht
rehearse-words = Knöpfe des Bretts
rehearse-acts = Was du tun kannst
rehearse-keys-words = die Knöpfe, der Reihe nach
rehearse-keys-count = Diese Tasten gelten hier
rehearse-keys-before = Mit Tastatur: { $list }.
rehearse-keys-one = { $key }: { $does }
rehearse-word = { $thing ->
    [treat] Leckerchen
    [ball] Ball
    [out] Raus
   *[company] Nähe
}
rehearse-act = { $does ->
    [two] Zwei hinhalten
    [offer] Einladen
    [again] Noch mal sagen
    [not-now] Jetzt nicht
    [instead] Etwas anderes
    [call] Herrufen
    [block] In den Weg treten
    [back] Abstand
    [ready] Alles holen
    [softer] Leiser machen
    [quiet] Fenster zu
   *[end] Beenden
}
rehearse-you = { $does ->
    [two] Du hältst zwei Dinge hin.
    [show] Du drückst „{ $word }“ und sagst es.
    [give] Du gibst: { $word }.
    [offer] Du hältst sichtbar hin: { $word }. Warte.
    [again] Du sagst es noch einmal.
    [not-now] Du sagst „jetzt nicht“.
    [instead] Du sagst „jetzt nicht“ und gibst etwas anderes: { $word }.
    [call] Du rufst { $name } her.
    [block] Du trittst in den Weg.
    [back] Du gehst ein Stück weg.
    [ready] Du holst die Sachen und legst sie bereit.
    [softer] Du legst ein Tuch über die Lautsprecher: Alle Knöpfe sind leiser.
    [quiet] Du schließt Fenster und Türen.
   *[end] Du beendest.
}
rehearse-you-gone = { $does ->
    [call] Du rufst: { $name } hört es draußen und bleibt weg.
   *[block] Du stellst dich in die Tür: { $name } bleibt weg.
}
rehearse-seen = { $what ->
    [chose] { $name } wählt und hat es: { $word }.
    [chose-none] { $name } wählt keins von beiden.
    [looks-up] { $name } schaut auf.
    [comes] { $name } kommt herüber.
    [joined] { $name } ist am Brett.
    [joined-likes] { $name } ist vor dir.
    [looks] { $name } schaut „{ $word }“ an.
    [brushed] { $name } streift „{ $word }“: kein Ton.
    [pressed] { $name } drückt „{ $word }“.
    [took] { $name } nimmt es: { $word }.
    [finished] { $name } ist fertig.
    [ignored] { $name } nimmt es nicht.
    [wanders] { $name } wendet sich anderem zu.
    [leaves] { $name } geht weg.
    [gone] { $name } ist fort.
    [barred] { $name } kommt nicht an dir vorbei.
    [eases] { $name } ist wieder entspannt.
    [wait-over] Fünf Sekunden sind um.
    [noise] Draußen knallt etwas.
    [startled] { $name } schreckt vor „{ $word }“ zurück.
    [fetches] Nicht zur Hand: { $word }. Du gehst und holst es.
    [fetched] Du bist damit zurück: { $word }.
   *[unanswered] „{ $word }“ blieb ohne Antwort.
}
rehearse-sign = { $level ->
    [strong] Starkes Zeichen von { $name }: { $sign }.
   *[mild] Mildes Zeichen von { $name }: { $sign }.
}
rehearse-held = Links: { $left }. Rechts: { $right }.
rehearse-chosen = Gewählt, so oft hingehalten: { $word }
rehearse-leans-away = lehnt sich weg von dem, was angeboten wird
rehearse-over = { $why ->
    [time] Die Zeit ist um.
    [done] Das war alles.
   *[ended] Es ist vorbei.
}
rehearse-hand-on = Weitergeben
rehearse-hand-on-what = Diese Adresse führt zur selben Übung mit demselben Tier und zu ihren Lektionen. Über dein Zuhause sagt sie nichts.
rehearse-copy = Adresse kopieren
rehearse-copied = Kopiert
rehearse-send = Senden
rehearse-went = Wie es lief
rehearse-one-thing = Eins fürs nächste Mal
rehearse-change = { $change ->
    [soften] Ist { $name } vor „{ $word }“ einmal zurückgefahren: Drück den Knopf nicht wieder, bevor er leiser ist.
    [longer] Bleib die zwei Minuten, solange { $name } mag.
    [longer-evening] Bleib den Abend über, solange { $name } mag.
    [more-invitations] Lade fünfmal ein, jedes Mal mit der ganzen Wartezeit.
    [let-choose] Halt still, bis { $name } gewählt oder sich abgewandt hat. Kein zweites Wort, kein nächstes Paar.
    [more-pairs] Halt mehr Paare hin: jedes Ding mindestens fünfmal.
    [step-away] Geh bei einem starken Zeichen sofort weg oder beende. Alles andere kann warten.
    [let-go] Wenn { $name } geht, lass es so sein: kein Rufen, nichts im Weg, nichts zeigen.
    [let-eat] Lass { $name } in Ruhe haben, was genommen wurde. Nichts wird gedrückt oder gezeigt, bis das vorbei ist.
    [pause] Mach bei einem milden Zeichen fünf Sekunden Pause und lass Raum.
    [wait] Warte die fünf Sekunden ab, ohne Wort und ohne Berührung. Hilfe kommt danach.
    [do-not-push] Kein Rufen, kein Versperren, kein zweites Mal sagen: { $name } kommt frei oder gar nicht.
    [answer] Beantworte jeden Druck, auch mit „jetzt nicht“.
    [sooner] Gib früher. Halte die Sache in der Hand, bevor du drückst.
    [when-there] Zeig, wenn { $name } am Brett ist, und Dinge, die gerade gewollt sind.
    [slower] Lass mehr Zeit zwischen den Drücken.
    [instead] Gib ab und zu etwas anderes, wenn es für „{ $word }“ „jetzt nicht“ heißt.
    [even] Verteile die Drücke: Zeig „{ $least }“ so oft wie „{ $word }“.
    [oftener] Zeig mehr: wenige Wörter, immer wieder.
    [give] Gib nach jedem Druck von dir, was der Knopf sagt.
    [try] Probier mehr aus, bevor du sagst, woran es liegt: zeigen, zwei hinhalten, bereitlegen, leiser machen, Fenster zu.
    [stay] { $name } war noch nicht gegangen. Bleib, bis { $name } geht, und lass es dann gut sein.
    [too-soon] Es geschah zu wenig, um etwas zu sagen. Probier es noch einmal und lass dir Zeit.
    [after-wait] Sind die fünf Sekunden um, drück selbst, sag das Wort, gib die Sache. Das Warten endet nie im Leeren.
    [when-there-invited] Lade ein, wenn { $name } am Brett ist. Wer anderswo ist, bleibt in Ruhe.
    [wanted] Lade mit dem ein, was { $name } gerade will.
    [wanted-shown] Zeig, was { $name } gerade will.
    [vet] Im Leben: Hör auf und frag eine Tierarztpraxis. Lektionen können warten.
    [give-oftener] Gib öfter, was „{ $word }“ sagt. Wo es nicht geht, gib es ein andermal, ungefragt.
    [used-up] Alle Leckerchen des Abends sind gegeben. Antworte auf „{ $word }“ weiter mit „jetzt nicht“ oder mit etwas anderem.
    [shorter] Mach es kürzer: Ende, solange { $name } es noch mag.
    [shorter-left] Wer geht, hat es beendet. Lass das den Schluss des Tages sein.
    [give-never] Gib so oft, wie es geht, was ein Knopf sagt, zuerst bei „{ $word }“. Was jetzt nicht zu haben ist, gibt es vielleicht zu anderer Zeit.
   *[carry-on] Mach so weiter.
}
rehearse-because = { $change ->
    [soften] Wieder gedrückt, nachdem { $name } davor zurückgefahren war: { $figure }
    [longer] Du hast nach { $figure } beendet.
    [longer-evening] Du hast nach { $figure } beendet.
    [more-invitations] Einladungen: { $figure }
    [let-choose] In Ruhe wählen lassen: { $figure }
    [more-pairs] Paare: { $figure }
    [step-away] Starke Zeichen beachtet: { $figure }
    [let-go] Gehen respektiert: { $figure }
    [let-eat] In Ruhe gehabt, von dem, was genommen wurde: { $figure }
    [pause] Milde Zeichen beachtet: { $figure }
    [wait] Warten eingehalten: { $figure }
    [do-not-push] So oft hast du gerufen, den Weg versperrt oder es noch einmal gesagt: { $figure }
    [answer] Drücke beantwortet: { $figure }
    [sooner] Vom Druck bis zur Sache: { $figure }. Ziel sind höchstens 2 s.
    [when-there] Genommen, von dem, was du gezeigt hast: { $figure }
    [slower] Zeigen: { $figure }
    [instead] Drücke von „{ $word }“, auf die „jetzt nicht“ kam: { $figure }
    [even] Gezeigt: { $figure }
    [oftener] Gezeigt: { $figure }
    [give] Gegeben, von dem, was du gedrückt hast: { $figure }
    [try] So viel Verschiedenes ausprobiert: { $figure }
    [stay] { $name } ging nicht weg, also lässt sich über das Gehenlassen nichts sagen.
    [too-soon] Niemand wurde eingeladen; nichts wurde gezeigt, gegeben oder beantwortet.
    [after-wait] Nach dem Warten gezeigt und gegeben: { $figure }
    [when-there-invited] Eingeladen, als { $name } am Brett oder auf dem Weg war: { $figure }
    [wanted] Genommen, von dem, was du nach deinen Einladungen gegeben hast: { $figure }
    [wanted-shown] Genommen, von dem, was du am Brett gezeigt hast: { $figure }
    [vet] { $name } war nicht gesund. Im Leben sieht das am Brett niemand sicher: Eine Änderung beim Fressen, Bewegen oder Drücken ist Grund genug.
    [give-oftener] „{ $word }“ ist hier gesunken. Von seinen Drücken mit „jetzt nicht“ oder etwas anderem beantwortet: { $figure }
    [used-up] „{ $word }“ ist trotzdem gesunken. Von seinen Drücken mit „jetzt nicht“ oder etwas anderem beantwortet: { $figure }
    [shorter] Am Brett, bis du zuletzt etwas wolltest: { $figure }. Für { $name } wird es nach etwa { $word } lang.
    [shorter-left] { $name } ging nach { $figure } am Brett. Als { $name } wieder da war, hast du weitergemacht.
    [give-never] Kein Druck bekam hier, was der Knopf sagt. Von denen auf „{ $word }“ mit „Jetzt nicht“ oder etwas anderem beantwortet: { $figure }
    [carry-on-likes] Jede Wahl blieb { $name } überlassen.
    [carry-on-no-choice] Kein Paar kam zu einer Wahl, und nichts, was du getan hast, stand im Weg.
   *[carry-on] Hier stand dem Lernen nichts im Weg.
}
rehearse-would-change = Die nächste Probe nennt vielleicht etwas anderes: Diese war kurz, und wenige Aufzeichnungen sagen wenig.
rehearse-care-strong = Im Leben beendet ein starkes Zeichen die Sitzung. Halte Abstand und frag eine Tierarztpraxis oder eine qualifizierte Fachperson für Tierverhalten, bevor du weitermachst.
rehearse-care-guards = Im Leben kann beißen, wer Futter verteidigt: Nimm nichts aus Maul oder Napf, halte Kinder fern und frag eine qualifizierte Fachperson für Tierverhalten.
rehearse-care-likes = Im Leben prüfe keine Vorlieben mit Futter oder Dingen, die jemand bewacht.
rehearse-measured = Wie du gelehrt hast
rehearse-measured-what = Die Zahlen des echten Gebrauchs, aus dieser einen Probe.
rehearse-row = { $which ->
    [paid] Gegeben, von dem, was du gedrückt hast
    [held] In Ruhe wählen lassen
    [delay] Von deinem Druck bis zur Sache
    [answer-delay] Vom Druck bis zur Sache, wenn { $name } drückte
    [pace] Zeigen
    [balance] Auf die Wörter verteilt
    [taken] Genommen, von dem, was du gezeigt hast
    [waits] Warten eingehalten
    [answered] Drücke beantwortet
    [alternatives] Etwas anderes gegeben, wo es nicht das Gedrückte war
    [leaving] Gehen respektiert
    [mild] Milde Zeichen beachtet
    [strong] Starke Zeichen beachtet
    [eaten] In Ruhe gehabt, von dem, was genommen wurde
    [given] So oft gegeben
    [after-wait] Nach dem Warten gezeigt und gegeben
    [invited-there] Eingeladen, als { $name } da oder auf dem Weg war
   *[pushes] Gerufen, versperrt oder noch einmal gesagt
}
rehearse-times = { $times ->
    [one] einmal
   *[other] { $times }-mal
}
rehearse-k-of-n = { $k } von { $n }
rehearse-count = { $word } { $times }
rehearse-truth = Was wahr war
rehearse-truth-what = Im Leben kann das niemand sehen. Hier sagt die Simulation, wie wahrscheinlich { $name } den Knopf eines Wortes drückt, wenn die Sache gewollt ist. Die letzte Spalte: wäre alles so früh wie möglich gekommen, höchstens eine Sekunde früher.
rehearse-of-word = Wort
rehearse-before = vorher
rehearse-after = nachher
rehearse-sooner = 1 s früher
rehearse-liked = { $name } mag, das Liebste zuerst: { $things }.
rehearse-likes-told = { $same ->
    [yes] Am meisten gewählt wurde auch, was am liebsten ist. Doch jedes wurde höchstens { $times } hingehalten, und ein, zwei Wahlen aus Zufall drehen die Folge um: Wenige Paare trennen nicht, was nah beieinander liegt.
   *[no] Am meisten gewählt: { $chosen }. Am liebsten: { $liked }. Jedes wurde höchstens { $times } hingehalten, und ein, zwei Wahlen aus Zufall drehen die Folge um: Wenige Paare trennen nicht, was nah beieinander liegt.
}
rehearse-line = Das Ganze
rehearse-line-what = { $moments } Augenblicke in { $seconds }: oben, was { $name } tat, unten, was du tatest.
rehearse-lane = { $lane ->
    [animal] { $name }
    [signs] Zeichen
   *[you] Du
}
rehearse-marks = Ring: kam, angeboten, „jetzt nicht“ oder weggegangen. Punkt: ein Druck. Quadrat: genommen oder gegeben. Kreuz: ging, oder wurde gedrängt. Dreieck: ein Zeichen, gefüllt ein starkes.
rehearse-when = Wann
rehearse-what = Was
rehearse-list = Alle Augenblicke als Liste
rehearse-watch = Noch einmal ansehen
rehearse-same = Dasselbe noch einmal
rehearse-another = An einem anderen Tag von { $name }
rehearse-show-on = Jemandem zeigen
rehearse-show-on-what = Die Adresse dieser Seite enthält die ganze Probe und nichts über dein Zuhause. Schick sie deinem Coach, wenn du willst; sonst sieht sie niemand.
rehearse-at-home = Dieses Notizbuch antwortet nur zu Hause, seine ganze Adresse öffnet sich also nirgends sonst. Kopiert wird der Teil danach: Wer selbst ein Notizbuch hat oder am selben Server ist, setzt ihn hinter die eigene.
rehearse-no-such = Diese Übung gibt es nicht.
rehearse-no-acts = Was getan wurde, ist aus dieser Adresse nicht zu lesen: { $item }. Fang die Übung neu an.
rehearse-practise = Probe es: { $title }
rehearse-who = { $who ->
    [eager] Zip, ein junger Hund
    [wary] Moth, eine Katze
    [old] Bramble, ein alter Hund
    [quick] Pico, ein Papagei
   *[guards] Rusk, ein Hund, der Futter verteidigt
}
rehearse-whoswho = Wen du treffen kannst
rehearse-the-lesson = Die Lektion dazu: { $title }
rehearse-gain = Bei allem anderen wie es war, hätte allein das die Wörter im Mittel von { $was } auf { $would } gebracht.
rehearse-gain-given = Wäre bei jedem Druck, der ohne Antwort blieb, die Sache gegeben worden, alles andere wie es war, wären die Wörter im Mittel von { $was } auf { $would } gekommen. „Jetzt nicht“ ist auch eine Antwort und bringt weniger.
rehearse-asks-more = { $name } fragt öfter als vorher nach: { $things }
rehearse-asks-less = { $name } fragt seltener als vorher nach: { $things }
rehearse-asks-same = { $name } fragt nach allem etwa so oft wie vorher.
rehearse-stuck-word = Das Wort, das nicht vorankommt: „{ $word }“
rehearse-before-shown = Aus dem Notizbuch, gezeigt in den letzten drei Wochen: { $list }. Für ein Wort sind weniger als zwei am Tag (42 in drei Wochen) wenig.
rehearse-name-it = Woran liegt es bei „{ $word }“?
rehearse-name-help = Sag, was du denkst, bevor du weiterliest. Niemand erfährt es.
rehearse-name-button = Sagen
rehearse-held-up = { $hit ->
    [yes] Das hast du gesagt, und so war es: { $cause }.
   *[no] Es war etwas anderes: { $cause }. Du sagtest: { $said }.
}
rehearse-showed = { $cause ->
    [not-wanted] Woran man es sah: seine Sache liegen gelassen oder nicht gewählt, { $figure }. „Zwei hinhalten“ zeigt das ohne Knopf.
    [too-late] Woran man es sah: Zeit, bis du damit zurück warst, { $figure }. Liegt alles bereit, kommt nichts zu spät.
    [avoided] Woran man es sah: fuhr zurück, als du drücktest, { $figure }. Leiser wird der Knopf gedrückt.
    [time-or-place] Woran man es sah: ein Zeichen oder Weggehen gleich nach einem Knall, { $figure }. Bei geschlossenen Fenstern gibt es keins.
    [health] Woran man es sah: liegen gelassen, auch das Liebste, { $figure }; und jeder Schritt langsam. Nichts von dem, was du ausprobiert hast, hilft da. Im Leben: zuerst eine Tierarztpraxis fragen.
   *[too-little] Woran man es sah: Nichts stand im Weg, und jedes Zeigen lehrte. Gezeigt: { $figure }.
}
rehearse-unseen = { $cause ->
    [not-wanted] Das war für dich nicht zu sehen: Gib seine Sache oder halt zwei hin.
    [too-late] Das war für dich nicht zu sehen: Zeig das Wort und gib seine Sache.
    [avoided] Das war für dich nicht zu sehen: Drück den Knopf, wenn { $name } in der Nähe ist.
    [time-or-place] Das war für dich nicht zu sehen: Warte auf einen Knall und achte auf ein Zeichen.
    [health] Das war für dich nicht zu sehen: Gib, was { $name } am liebsten mag. Im Leben: zuerst eine Tierarztpraxis fragen.
   *[too-little] Das war für dich nicht zu sehen: Zeig das Wort.
}
rehearse-put-right = { $cause ->
    [too-late] Du hast es behoben, bevor es sich zeigen konnte: Griffbereit kam nichts mehr zu spät.
    [avoided] Du hast es behoben, bevor es sich zeigen konnte: Leiser erschreckt der Knopf nicht mehr.
   *[time-or-place] Du hast es behoben, bevor es sich zeigen konnte: Bei geschlossenen Fenstern dringt kein Knall herein.
}
rehearse-showings = drei Wochen davor: { $before }; hier: { $here }
rehearse-notebook = Was das Notizbuch gesagt hätte
rehearse-notebook-what = Aus sechs Wochen Aufzeichnungen eines solchen Zuhauses und dieser Sitzung, nach denselben Regeln wie im echten Gebrauch. Was es zuerst nennt, ist nicht immer wahr.
rehearse-advisor = { $cause }: { $bearing }.
rehearse-three-more = Auch Wörter, die ähnlich klingen, eine schwer verständliche Aufnahme und Menschen, die verschieden antworten, können ein Wort aufhalten. Diese Übung hat sie nicht.
rehearse-share = { $club ->
    [yes] Mit { $name } und dem Verein teilen
   *[no] Mit { $name } teilen
}
rehearse-share-what = { $club ->
    [yes] Was an { $name } geht, auf die Seite Vereinbart: Übung und Tier, dein Name, und von „Wie du gelehrt hast“ die Sekunden und die Anteile dessen, was genommen, abgewartet, beantwortet, beachtet, gehen gelassen und in Ruhe gelassen wurde, je mit der Anzahl. Was nicht: wie schnell und wie gleichmäßig du gezeigt hast, was du gedrückt hast, ohne zu geben, wo das Tier war, als du eingeladen hast, was nach dem Warten kam, wie oft du gerufen, den Weg verstellt oder es noch einmal gesagt hast; kein Augenblick und nicht, was wahr war. Auch die anderen Coachs des Vereins lesen es: In seinem Namen wurde es mitgegeben. Ohne diesen Tipp sieht es niemand; auf jener Seite kannst du es zurücknehmen.
   *[no] Was an { $name } geht, auf die Seite Vereinbart: Übung und Tier, dein Name, und von „Wie du gelehrt hast“ die Sekunden und die Anteile dessen, was genommen, abgewartet, beantwortet, beachtet, gehen gelassen und in Ruhe gelassen wurde, je mit der Anzahl. Was nicht: wie schnell und wie gleichmäßig du gezeigt hast, was du gedrückt hast, ohne zu geben, wo das Tier war, als du eingeladen hast, was nach dem Warten kam, wie oft du gerufen, den Weg verstellt oder es noch einmal gesagt hast; kein Augenblick und nicht, was wahr war. Auch wer an Stelle von { $name } weitermacht, liest es. Ohne diesen Tipp sieht es niemand; auf jener Seite kannst du es zurücknehmen.
}
