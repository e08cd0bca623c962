homescreen-description = Le carnet d’un tableau de mots enregistrés.
homescreen-earlier = Le carnet ne répond pas. Cette page date du { $time } et n’est peut-être plus valable ; rien ne peut en être envoyé. Le tableau accepte les notes en attendant.
