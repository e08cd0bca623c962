# Signing in on a server of many homes.
sign-in-title = Anmelden
sign-in-again-title = Zeig, dass du es bist
sign-in-again = Was jetzt kommt, soll nicht in falsche Hände geraten. Melde dich noch einmal an.
sign-in-passkey = Mit Passkey anmelden
sign-in-passkey-hint = Dein Gerät fragt nach Finger, Gesicht oder PIN.
sign-in-cancelled = Es wurde kein Passkey benutzt. Versuch es noch einmal, oder melde dich anders an.
sign-in-failed = Dieses Gerät konnte keinen Passkey benutzen. Melde dich anders an.
sign-in-by-mail = Per E-Mail
sign-in-email = E-Mail-Adresse
sign-in-email-hint = die auf der Seite deines Kontos
sign-in-send-link = Link senden
sign-in-send-link-to = Link an { $email } senden
sign-in-sent-title = Sieh in deine Post
sign-in-sent = Wenn hier ein Konto die Adresse { $email } hat, ist ein Brief mit einem Link unterwegs. Er gilt einmal, { $minutes ->
    [one] eine Minute
   *[other] { $minutes } Minuten
} lang.
sign-in-nothing-came = Nichts gekommen? Prüf die Adresse, und sieh bei der unerwünschten Post nach.
sign-in-another-address = Eine andere Adresse
sign-in-by-code = Mit einem Wiederherstellungscode
sign-in-code = Wiederherstellungscode
sign-in-code-hint = 32 Buchstaben und Ziffern von deiner gedruckten Liste; jeder gilt einmal
sign-in-wrong-code = gilt nicht: unbekannt oder schon benutzt
sign-in-no-account = Noch kein Konto? Öffne den Link einer Einladung, oder lies ihren Code ein.
sign-in-no-script = Passkeys brauchen JavaScript. Ein Link oder ein Code geht ohne.
sign-in-here-title = Auf diesem Gerät anmelden?
sign-in-here = Mach nur weiter, wenn du diesen Brief selbst bestellt hast.
sign-in-gone-title = Dieser Link gilt nicht
sign-in-gone = Er wurde schon benutzt, ist zu alt oder nicht ganz.
sign-in-new-link = Einen neuen bestellen
sign-in-provider = Mit { $name } anmelden
sign-in-provider-away = { $name } antwortet gerade nicht. Melde dich anders an, oder versuch es später noch einmal.
sign-in-provider-refused = { $name } hat dich nicht angemeldet. Versuch es noch einmal, oder melde dich anders an.
sign-in-provider-lost = Diese Anmeldung geht nicht zu Ende: Sie begann in einem anderen Browser, ist zu alt oder schon fertig. Fang noch einmal an.
sign-in-provider-unknown = Kein Konto hier ist mit deiner Anmeldung bei { $name } verbunden. Melde dich anders an und verbinde sie auf der Seite deines Kontos. Noch kein Konto? Öffne den Link deiner Einladung.
sign-in-provider-not-fresh = { $name } hat nicht gesagt, dass du gerade eben gezeigt hast, wer du bist. Zeig es anders.
sign-in-provider-taken = Es wurde nichts verbunden: Diese Anmeldung bei { $name } gehört schon zu einem Konto hier, oder deines ist mit einer anderen verbunden.
sign-in-none-yet = Noch lässt dich nichts als dieser Browser herein, also kannst du nicht zeigen, dass du es bist. Lege in deinem Konto einen Passkey an, gib eine E-Mail-Adresse an oder mache Wiederherstellungscodes. Komm dann hierher zurück und melde dich damit an.
sign-in-passkey-unknown = Dieser Passkey lässt dich nicht herein: Er ist hier nicht mehr bekannt, oder die Frage nach ihm ist zu lange her. Versuch es noch einmal oder melde dich auf andere Weise an.
sign-in-not-kept = Was du gesendet hast, wurde nicht behalten. Zeig, dass du es bist, und sende es dann noch einmal.
