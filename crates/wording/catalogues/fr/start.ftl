start-title = Dis-nous qui vit ici
start-all-stays = Tout peut être changé plus tard. Tout reste sur cet appareil.
start-on-server = Tu pourras tout changer plus tard. C’est gardé sur ce serveur. Seules les personnes de ton foyer le voient, tant que tu ne le partages pas. Qui gère la machine du serveur pourrait lire son disque.
start-you = Ton nom
start-you-hint = comme on t’appelle à la maison
start-animal = Le nom de ton animal
start-species = Quel animal ?
start-species-name = { $species ->
    [dog] chien
    [cat] chat
    [parrot] perroquet
    [rabbit] lapin
   *[other] un autre animal
}
start-species-missing = manque ; choisis-en une
start-others = Qui d’autre vit ici ?
start-others-hint = des prénoms séparés par des virgules ; laisse vide si personne d’autre ne vit ici
start-zone = Où tu vis (fixe minuit)
start-home = Le nom de votre chez-vous
start-home-hint = si tu veux, par exemple : la maison près du parc
start-home-of = Chez { $name }
start-zone-field = Fuseau horaire
start-bring = Tu tenais déjà un carnet ou un journal ? { $link }
start-bring-link = Importe un fichier
start-no-vet = Sayso aide à observer et à compter. Il ne remplace ni vétérinaire ni professionnel qualifié du comportement.
start-linked = Ton foyer est-il déjà sur un serveur ? { $link }
start-linked-link = Relie ce carnet à lui
start-notebook = Y a-t-il déjà un carnet à la maison ? Laisse cette page vide. { $link }
start-notebook-link = Relie le carnet
start-before = Pas encore de boutons ? { $lessons } et { $rehearse } : rien n’en est noté.
start-before-read = Lis les leçons
start-before-rehearse = répète avec un animal simulé
