client-close = Fermer
