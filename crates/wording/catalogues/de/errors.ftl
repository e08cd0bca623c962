errors-too-large = Das ist zu groß; höchstens { $bytes } Bytes passen hier auf einmal. Sende weniger auf einmal.
errors-not-paired = Dieses Gerät ist nicht mit dem Notizbuch gekoppelt. Öffne /pair und gib den Code ein, der dort steht, wo Sayso gestartet wurde.
errors-too-many = { $seconds ->
    [one] Zu viele Versuche. Warte eine Sekunde und versuche es dann noch einmal.
   *[other] Zu viele Versuche. Warte { $seconds } Sekunden und versuche es dann noch einmal.
}
errors-no-home = Hier gibt es noch kein Zuhause. Öffne /start, um eines anzulegen.
errors-disk-full = Der Datenträger des Notizbuchs ist voll: Schaffe Platz auf dem Rechner, auf dem es liegt. Was du getippt hast, ist bis dahin auf dem Telefon sicher; was ein Formular gesendet hat, wurde nicht gespeichert.
errors-internal = Hier ist etwas schiefgegangen; nichts von dem, was du gesendet hast, wurde gespeichert. Was es war, steht im Protokoll, dort, wo Sayso gestartet wurde.
errors-no-such-page = Unter dieser Adresse gibt es nichts.
errors-address-broken = In dieser Adresse fehlt etwas, oder etwas ist nicht lesbar. Geh zurück und folge dem Link noch einmal.
errors-no-such-file = Eine solche Datei gibt es hier nicht.
errors-no-such-animal = Dieses Notizbuch kennt kein solches Tier.
errors-no-such-lesson = Eine solche Lektion gibt es nicht.
errors-not-that-method = Diese Adresse nimmt eine solche Anfrage nicht an.
errors-too-large-here = Das ist zu groß für diese Adresse; sende weniger auf einmal.
errors-title-not-here = Nicht hier
errors-title-check = Bitte prüfe deine Eingabe
errors-title-forbidden = Von hier aus nicht erlaubt
errors-title-wait = Warte ein wenig
errors-title-full = Der Datenträger ist voll
errors-title-unavailable = Gerade nicht
errors-title-failed = Das hat nicht geklappt
errors-nothing-kept = Nichts wurde gespeichert. Geh zurück, ändere dies und sende es noch einmal:
errors-to-start = Zum Anfang
errors-too-many-events = In eine Anfrage passen höchstens { $most } Einträge, nicht { $got }.
errors-listing-range = „after“ muss mindestens 0 sein, „limit“ 1 bis { $most }.
errors-no-array = Der Inhalt muss eine JSON-Liste von Einträgen sein. Ab Zeile { $line }, Spalte { $column } ist er nicht zu lesen.
errors-only-https = Über unverschlüsseltes HTTP wird hier nichts angenommen oder gesagt. Öffne https://{ $host }/.
errors-other-site = Das kam von der Seite einer anderen Website und wurde nicht angenommen. Benutze die eigene Seite von Sayso.
errors-other-name = Auf diesen Namen antwortet Sayso nicht. Öffne es über die Adresse dieses Rechners oder seinen Namen im Heimnetz.
errors-this-machine-only = Sayso antwortet hier nur auf diesem Rechner. Öffne http://localhost oder http://127.0.0.1 mit dem Port.
errors-no-sound-taken = Dieses Notizbuch nimmt keinen Ton von Seiten an: Wer es betreibt, hat das abgeschaltet. Nimm einen Browser, der selbst zuhören kann.
errors-no-such = Dieses Notizbuch kennt { $what ->
    [check] keine solche Prüfung
    [trial] keinen solchen Versuch
    [reward] keine solche Belohnung
    [press] keinen solchen Druck
    [test] keinen solchen Test
    [word] kein solches Wort
    [rule] keine solche Regel
    [role] keine solche Rolle
    [invitation] keine solche Einladung
    [session] keine solche Sitzung
   *[person] keinen solchen Menschen
}.
errors-body-broke = Die Sendung brach unterwegs ab. Sende sie noch einmal.
errors-request-broken = Die Anfrage ist nicht lesbar ({ $why }). Sende sie noch einmal.
