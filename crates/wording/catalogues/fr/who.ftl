who-title = Qui es-tu ?
who-intro = Tout ce qui est noté sur cet appareil l’est alors à ton nom. On peut le changer à tout moment.
who-now = (en ce moment)
who-not-listed = Pas dans la liste ? { $link }
who-add = Ajouter une personne
who-new = { $name }, pas encore dans la liste
