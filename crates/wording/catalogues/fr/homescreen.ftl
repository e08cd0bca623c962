homescreen-description = Le carnet d’un tableau de mots enregistrés.
homescreen-earlier = Le carnet ne répond pas. Cette page date du { $time } et n’est peut-être plus valable ; rien ne peut en être envoyé. Le tableau accepte les notes en attendant.
homescreen-no-answer = Pas de réponse du carnet
homescreen-not-this-page = Cette page a besoin du carnet ; elle viendra dès qu’il répond.
homescreen-what-works = En attendant, le Tableau prend ce que tu tapes ; c’est gardé ici et envoyé plus tard. Aujourd’hui peut se lire tel qu’il était.
homescreen-none-kept = Aucune des deux n’a été ouverte sur cet appareil ; elles ne peuvent pas s’afficher maintenant.
homescreen-try-again = Réessayer
homescreen-read-lessons = Lire les leçons
