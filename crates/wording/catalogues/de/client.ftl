client-close = Schließen
