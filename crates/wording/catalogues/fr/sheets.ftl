sheets-title = Fiches
sheets-intro = Chacune s’imprime en A4 ou Letter, sans les menus.
sheets-print = Imprimer
sheets-print-menu = ou imprime par le menu du navigateur
sheets-all = Toutes les fiches
sheets-fridge = Pour le frigo
sheets-fridge-what = Ce que veut dire chaque mot, comment tout le monde y répond, ce que tout le monde dit pour « pas maintenant », et les règles de la maison.
sheets-rules = Règles de la maison
sheets-buttons = Pour les boutons
sheets-buttons-what = De simples étiquettes avec le mot.
sheets-labels = Étiquettes
sheets-report-for = Pour la famille, un vétérinaire ou un professionnel du comportement.
sheets-report = Bilan des progrès
sheets-likes = Ce que { $name } aime
sheets-size = Taille
sheets-size-of = { $size ->
    [small] petite, 40 × 25 mm
    [large] grande, 90 × 60 mm
   *[middle] moyenne, 60 × 40 mm
}
sheets-no-word = Aucun mot n’est encore sur le tableau.
sheets-labels-note = Les étiquettes aident les gens. De petits bouts arrachés peuvent être avalés : colle-les bien à plat, et n’en mets pas là où un animal mordille.
sheets-button = Bouton
sheets-means = Veut dire
sheets-everyone-answers = Tout le monde répond
sheets-not-now = Pas maintenant
sheets-ends-session = termine une séance
sheets-for-all = tous
sheets-answer-every-press = Réponds à chaque appui, même à celui qui ressemble à un faux pas.
sheets-may-come-and-go = { $name } peut aller et venir ; n’appelle et n’attire jamais { $name } vers le tableau.
sheets-any-may-come-and-go = Chaque animal peut aller et venir ; n’en appelle et n’en attire jamais un vers le tableau.
sheets-batteries = Ferme les caches des piles avec leurs vis. { $emergency }
sheets-of-animal = { $name } :
sheets-nothing-tested = Rien n’a encore été testé.
sheets-tested = { $trials ->
    [one] D’après un essai, le { $day } ; sans choix : { $none }.
   *[other] D’après { $trials } essais, le dernier le { $day } ; sans choix : { $none }.
}
sheets-test-again = À tester de nouveau :
sheets-likes-note = Les préférences changent avec la faim, l’heure et le jour ; voici ce que { $name } a choisi quand on a demandé. Une ligne est l’intervalle à 95 % ; on compte les offres.
sheets-progress = Progrès de { $name }
sheets-period = Période
sheets-days = { $days ->
    [one] Un jour
   *[other] { $days } jours
}
sheets-no-diagnosis = { $lead } Les notes d’un foyer, comptées par un programme. Personne ne les a vérifiées. Elles ne peuvent pas dire ce qu’un animal comprend, ressent ou de quoi il souffre ; pour cela, demande à un vétérinaire ou à un professionnel qualifié du comportement.
sheets-no-diagnosis-lead = Pas un diagnostic.
sheets-animal = Animal
sheets-about = environ { $age }
sheets-dates = { $from } à { $to } ({ $zone })
sheets-printed-by = Imprimé par
sheets-limits = Limites
sheets-cautions = Mises en garde de santé
sheets-in-short = En bref
sheets-days-noted = Jours avec quelque chose de noté : { $days } sur { $all }. Ce que personne n’a noté n’est pas ici.
sheets-joined = Séances avec la participation de { $name } : { $share }.
sheets-presses = Fois où les gens ont montré : { $showings }. Appuis spontanés : { $presses }.
sheets-welfare = Bien-être :
sheets-words = Mots
sheets-none-taught = Aucun mot n’est encore enseigné.
sheets-words-caption = depuis le début ; appuis spontanés des 28 derniers jours
sheets-word = Mot
sheets-stage = Étape
sheets-figures-say = chiffres : { $stage }
sheets-shown = Montré
sheets-press-to-giving = De l’appui à la remise
sheets-pressed = Appui sur invitation et avec envie
sheets-own-presses = Appuis spontanés
sheets-times = { $times ->
    [one] { $times } fois
   *[other] { $times } fois
}
sheets-stages = Étapes : préparer, montrer (les gens appuient et donnent), inviter (une offre, une attente, et la chose dans tous les cas), converser ({ $name } appuie spontanément). L’absence d’appui n’est jamais comptée comme une absence de compréhension.
sheets-showings-a-week = Fois montré par semaine
sheets-week-from = semaine du
sheets-showings = fois montré
sheets-week-of = semaine du { $day }
sheets-joined-by-week = Séances avec participation, par semaine
sheets-axis-joined = participation
sheets-axis-pressed = appuis
sheets-answered = Comment on a répondu aux appuis spontanés de { $name }
sheets-given = Donné : { $share }.
sheets-given-partly = Donné : { $share }, en partie : { $partly }.
sheets-declined = Pas maintenant : { $share }, autre chose : { $other }.
sheets-missed = Manqué, ou pas de réponse notée : { $share }.
sheets-signs = Langage corporel noté
sheets-signs-counts = Participation : { $joining }. Signes de stress légers : { $mild }. Signes forts : { $strong }.
sheets-sign-of = { $day } : { $sign }
sheets-signs-note = Tel que vu par les personnes présentes. Un seul signe veut dire peu ; lis tout le corps et la situation.
sheets-food = Récompenses alimentaires
sheets-food-budget = Calculé avec { $day } par jour, dont récompenses { $budget } au plus. Base : { $basis }.
sheets-food-budget-range = Calculé avec { $day } par jour (selon l’animal : { $low } à { $high }), dont récompenses { $budget } au plus. Base : { $basis }.
sheets-food-none = Aucune ration n’est calculée : { $why }.
sheets-food-unknown = elle n’est pas connue
sheets-likes-heading = Préférences
sheets-last-tested = Dernier test le { $day }.
sheets-not-tested-enough = { $trials ->
    [one] Pas assez testé pour dire quoi que ce soit ({ $trials } essai).
   *[other] Pas assez testé pour dire quoi que ce soit ({ $trials } essais).
}
sheets-not-known = Ce qu’on ne sait pas
sheets-no-check = Si { $name } comprend un mot quelconque : aucune vérification prévue n’a été faite. Les appuis peuvent aussi venir d’une habitude de place, d’indices que les gens donnent sans le savoir, ou de ce qui a payé auparavant.
sheets-check-elsewhere = { $trials ->
    [one] Cette fiche ne tranche pas si { $name } comprend un mot : le seul essai de vérifications prévues est sur la page Preuves.
   *[other] Cette fiche ne tranche pas si { $name } comprend un mot : { $trials } essais de vérifications prévues sont sur la page Preuves.
}
sheets-not-invited = Comment « { $word } » est répondu sur invitation : jamais invité avec envie jusqu’ici.
sheets-little-invited = { $times ->
    [one] Peu de chose sur « { $word } » sur invitation : { $times } fois.
   *[other] Peu de chose sur « { $word } » sur invitation : { $times } fois.
}
sheets-no-session = Avec quel plaisir { $name } participe : aucune séance n’a été notée pendant cette période.
sheets-no-likes-test = Ce que { $name } préfère : aucun test de préférences n’a été fait.
