frame-today = Heute
frame-board = Brett
frame-likes = Vorlieben
frame-words = Wörter
frame-evidence = Belege
frame-days = Tage
frame-log = Protokoll
frame-people = Menschen
frame-sheets = Blätter
frame-learn = Lernen
frame-desk = Pult
frame-more = Mehr
frame-pages = Seiten
frame-to-content = Zum Inhalt
frame-home = Zuhause:
frame-which-animal = Welches Tier:
frame-animals = Tiere
frame-i-am = Ich bin { $name }
frame-who-are-you = Wer bist du?
frame-not-understood = { $count ->
        [one] Ein Eintrag wird hier
       *[other] { $count } Einträge werden hier
    } nicht verstanden ({ $kinds }): Eine spätere Version dieses Programms hat sie geschrieben. Sie bleiben erhalten, aber keine Seite zeigt oder zählt sie. Aktualisiere dieses Programm.
frame-methods = Wie gerechnet wird
frame-who-sees = Wer das sehen kann
frame-account = { $name }: Konto
frame-sign-out = Abmelden
frame-you = Du
frame-offline-out = Es gibt kein Netz, darum bist du hier noch angemeldet. Versuch es noch einmal, wo es eines gibt.
frame-unsent = Nicht gespeichert: Das Notizbuch antwortet nicht. Was du eingegeben hast, steht noch hier. Versuch es noch einmal, wenn es wieder da ist.
frame-unchecked = Diese Übersetzung ist noch nicht muttersprachlich geprüft.
