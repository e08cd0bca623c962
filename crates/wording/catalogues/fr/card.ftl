card-animal = Un animal
card-new-animal = Un nouvel animal
card-name = Nom
card-species = Espèce
card-species-hint = Le langage du corps, les aliments dangereux et la formule d’énergie en dépendent.
card-age = Âge
card-born = Date de naissance
card-if-known = si connue
card-estimated = cette date est estimée
card-or-age = Inconnue ? Donne un âge ; une date est calculée et marquée comme estimée.
card-years = Âge, années
card-months = et mois
card-months-hint = 0 à 11
card-food = Nourriture
card-weight-hint = par exemple 4,5
card-grown-hint = Le besoin d’un chiot dépend de la part du poids adulte déjà atteinte. Demande à l’élevage ou à un vétérinaire ; sans elle rien n’est calculé.
card-day-hint = Pour chiens et chats, laisse vide : un point de départ est calculé. Où rien ne peut l’être, demande à un vétérinaire et écris-le ; cela remplace toute formule.
card-share = Part pour les récompenses, pour cent
card-share-hint = au plus 10 ; vide veut dire 10
card-allow = À prendre en compte
card-limits = Limites
card-limits-hint = ouïe, vue, mouvement : entend ou voit mal, pattes raides
card-cautions = Précautions de santé
card-cautions-hint = allergies, douleurs, médicaments, défend nourriture ou places ; affiché partout où l’on propose à manger
card-takes-part = participe toujours
card-versions = Rien ici ne remplace un vétérinaire. Chaque changement est une nouvelle version ; les anciennes restent au journal.
card-back = Retour à Personnes
card-stage = { $stage ->
    [neutered_adult] adulte, stérilisé
    [intact_adult] adulte, non stérilisé
    [obese_prone] adulte, grossit facilement
    [weight_loss] au régime (indique le poids visé)
    [kitten] chaton
   *[puppy] chiot
}
card-whose = { $species ->
    [dog] { $stage } (chiens)
   *[cat] { $stage } (chats)
}
card-choose-one = manque ; choisis-en une
card-stage-no-fit = « { $stage } » ne va pas avec : { $species }
card-less-than-now = est inférieur aux { $weight } d’aujourd’hui ; corrige l’un, ou choisis un stade adulte
card-share-wrong = doit dépasser 0 et rester sous 10 ; pour plus, demande à un vétérinaire
card-born-twice = et un âge ont tous deux été donnés ; n’en donne qu’un
card-born-later = est dans le futur
card-born-long-ago = remonte à plus de 120 ans
card-weeks-old = { $weeks ->
    [1] une semaine
   *[other] { $weeks } semaines
}
card-months-old = { $months } mois
card-years-old = { $years ->
    [1] un an
   *[other] { $years } ans
}
card-home = Chez nous
card-home-name-hint = comme vous l’appelez
card-zone-hint = Un nom comme Europe/Paris. Un jour est celui de la maison, aussi au changement d’heure.
card-zone-moves = La changer déplace aussi les limites des jours passés : tout chiffre par jour ou heure est recalculé.
card-person = Une personne
card-new-person = Une nouvelle personne
card-name-at-home = comme à la maison
card-role-title = Ce que cette personne est pour la maison
card-role = { $role ->
    [home] vit ici : montre et répond
    [coach] accompagne de l’extérieur
   *[visitor] vient parfois : garde, promène, en ami
}
card-no-such-person = Ce carnet ne connaît pas cette personne.
card-rule = Une règle de la maison
card-new-rule = Une nouvelle règle de la maison
card-rules-how = Les règles figurent sur la feuille du frigo. Les courtes se tiennent mieux : répondre à chaque appui, même par « pas maintenant ».
card-the-rule = La règle
card-rule-for = Pour
card-every-word = tous les mots
card-still-holds = est toujours valable
card-rule-missing = manque ; écris la règle
card-no-such-rule = Ce carnet ne connaît pas cette règle.
card-people = Personnes
card-animals = Animaux
card-add-animal = Ajouter un animal
card-add-person = Ajouter une personne
card-edit = Modifier
card-edit-it = Modifier { $what }
card-not-named = pas encore nommé
card-files = Fichiers : entrée et sortie
card-devices = Appareils qui peuvent lire ceci
card-about-age = environ { $age }
card-weight = Poids
card-grown = Attendu adulte
card-stage-title = Stade
card-food-today = Nourriture aujourd’hui
card-budget = { $budget } pour les récompenses, sur environ { $day } kcal par jour.
card-range = Animaux de ce poids : { $low } à { $high } kcal par jour.
card-given = { $feeds ->
    [1] Donné { $given } kcal en une fois, reste { $left } kcal.
   *[other] Donné { $given } kcal en { $feeds } fois, reste { $left } kcal.
}
card-nobody = personne de nommé
card-basis = Base : { $basis }.
card-not-computed = Rien n’est calculé : { $why }. { $link }
card-type-in = Écris-le
card-wants = Ce qu’ils peuvent vouloir
card-wants-none = Rien de noté encore. Quatre choses ou plus, de plusieurs sortes, font un bon test de préférences.
card-examples = { $kind ->
    [food] tout ce qui se mange ou se lèche
    [play] un jouet, tirer, courir, une cloche
    [touch] caresser, brosser, les genoux
    [training] un exercice aimé
    [exploring] dehors, flairer, la fenêtre
   *[rest] un panier, une pièce calme, le sommeil
}
card-add-want = Ajouter quelque chose
card-kcal-piece = { $kcal } kcal par morceau
card-s-to-give = { $seconds } s pour donner
card-at-most = au plus { $times } par jour
card-says = dit « { $says } »
card-said-often = déjà souvent dit
card-at-board = { $at_board ->
    [yes] peut être donné près du tableau
   *[no] pas près du tableau
}
card-stands-for = { $stand_in } le représente
card-for-whom = pour { $names }
card-rules = Règles de la maison
card-rules-none = Aucune encore. Que fait chacun quand un bouton sonne et qu’on n’a pas le temps ?
card-edit-rule = Modifier la règle : { $rule }
card-add-rule = Ajouter une règle
card-fridge = Feuille pour le frigo
card-put-away = Plus utilisés ({ $things })
