frame-today = Aujourd’hui
frame-board = Tableau
frame-likes = Préférences
frame-words = Mots
frame-evidence = Preuves
frame-days = Jours
frame-log = Journal
frame-people = Personnes
frame-sheets = Fiches
frame-learn = Apprendre
frame-desk = Bureau
frame-more = Plus
frame-pages = Pages
frame-to-content = Aller au contenu
frame-home = Foyer :
frame-which-animal = Quel animal :
frame-animals = Animaux
frame-i-am = Je suis { $name }
frame-who-are-you = Qui es-tu ?
frame-not-understood = { $count ->
        [1] Une entrée n’est pas comprise ici
       *[other] { $count } entrées ne sont pas comprises ici
    } ({ $kinds }) : une version plus récente de ce programme les a écrites. Elles sont conservées, mais aucune page ne les montre ni ne les compte. Mets ce programme à jour.
frame-methods = Comment c’est calculé
frame-who-sees = Qui peut voir ceci
frame-account = { $name } : compte
frame-sign-out = Se déconnecter
frame-you = Toi
frame-offline-out = Il n’y a pas de réseau : tu es encore en session ici. Réessaie là où il y en a.
frame-unsent = Rien n’est enregistré : le carnet ne répond pas. Ce que tu as saisi est encore là. Réessaie quand il sera de retour.
frame-unchecked = Cette traduction n’a pas encore été relue par une personne de langue maternelle.
