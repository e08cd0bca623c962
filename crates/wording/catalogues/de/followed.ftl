# Über alle Zuhause eines Coachs: was folgte, wenn eine Änderung abgemacht war.
followed-title = Hilft Rat?
followed-how = Was folgte, wenn mit dir eine Änderung abgemacht war: eigenes Drücken an Tagen, an denen jemand hinsah, { $days } Tage danach gegen { $days } davor. Jedes Zuhause zählt einmal, mit seiner ersten solchen Änderung.
followed-caution = Hier hat niemand gelost. Eine Änderung wird vorgeschlagen, wenn es schlecht geht, und was schlecht geht, wird oft von selbst besser. Diese Anteile zeigen also nicht, dass die Änderung es war.
followed-change = Änderung
followed-more = Danach öfter gedrückt
followed-early = Zu früh oder zu wenig notiert
followed-homes = { $homes } Zuhause
followed-share = { $share } ({ $low } bis { $high }), { $more } von { $homes } Zuhause
followed-share-early = Zu früh, um etwas zu sagen: { $more } von { $homes } Zuhause
followed-none = Mit dir wurde noch nichts abgemacht, das etwas ändert.
followed-nothing = Zum Vergleich Zuhause, in denen acht Wochen lang nichts abgemacht wurde; die letzten vier Wochen gegen die vier davor. Öfter gedrückt: { $share }.
followed-plan = { $way ->
    [show] Plan: zeigen
    [offer_in_view] Plan: einladen, die Sache in Sicht
    [ask_and_point] Plan: fragen und hinzeigen
    [ask_between_two] Plan: „dies oder das“
   *[any] Plan: wie es passt
}
followed-stage = Stufe: { $stage }
followed-drawn-title = Ausgelost
followed-drawn-how = Hier bestimmte das Los, wann die Änderung begann. Jeder Versuch wird am Ende gegen alle Reihenfolgen gehalten, die hätten ausgelost werden können. Von zwanzig Änderungen, die nichts tun, sieht etwa eine so aus, als täte sie etwas. Versuche neben einem anderen, der dasselbe misst, sind getrennt gezählt.
followed-drawn = Ausgeloste Änderung
followed-came-out = Wie es ausging
followed-outcome = { $outcome ->
    [going] läuft: { $count }
    [stopped] abgebrochen: { $count }
    [rare] ein Unterschied, der zufällig selten wäre: { $count }
    [may_be_chance] kann Zufall sein: { $count }
    [too_few_orders] zu klein, um es zu sagen: { $count }
   *[untested] ohne Test zu Ende: { $count }
}
followed-beside = Oben nicht mitgezählt, weil an einigen derselben Tage ein anderer Versuch dasselbe maß: { $count ->
    [one] { $count } Versuch
   *[other] { $count } Versuche
} ({ $outcomes }). Beide lassen sich nicht auseinanderhalten.
followed-was-beside = neben einem anderen Versuch
followed-none-alone = noch keiner allein
followed-no-drawn = Noch kein Versuch. Was du unter „Eine Änderung zum Ausprobieren“ vorschlägst, kann das Zuhause auslosen.
followed-each = Jeder Versuch
followed-in-home = { $animal }, { $home }
