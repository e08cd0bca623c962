client-offline-waiting = { $n ->
    [0] Hier wartet nichts: alles bisher Getippte ist übergeben.
    [one] { $n } Eingabe wartet hier und wird gesendet, sobald das Notizbuch antwortet.
   *[other] { $n } Eingaben warten hier und werden gesendet, sobald das Notizbuch antwortet.
}
