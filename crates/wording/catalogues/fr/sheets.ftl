sheets-title = Feuilles
sheets-intro = Chacune s’imprime en A4 ou Letter, sans les menus, et existe en PDF lisible par un lecteur d’écran.
sheets-fridge = Pour le frigo
sheets-fridge-what = Ce que chaque mot veut dire, comment tout le monde y répond, ce que tout le monde dit pour « pas maintenant », et les règles de la maison.
sheets-rules = Règles de la maison
sheets-buttons = Pour les boutons
sheets-buttons-what = Des étiquettes simples avec le mot.
sheets-labels = Étiquettes
sheets-animal-what = Pour la famille, le cabinet vétérinaire ou un professionnel du comportement.
sheets-progress = Rapport de progrès
sheets-likes-of = Ce que { $name } aime
sheets-print = Imprimer
sheets-print-menu = ou imprime depuis le menu du navigateur
sheets-all = Toutes les feuilles
sheets-pdf-a4 = PDF, A4
sheets-pdf-letter = PDF, US Letter
sheets-foot = Sayso · { $home } · { $day }
sheets-foot-page = Sayso · { $home } · { $day } · page { $page } sur { $of }

sheets-period = Période
sheets-days = { $days ->
    [1] Un jour
   *[other] { $days } jours
}
sheets-progress-of = Progrès de { $name }
sheets-not-a-diagnosis = Ce n’est pas un diagnostic.
sheets-own-records = Les notes d’un foyer, comptées par un programme. Personne ne les a vérifiées. Elles ne peuvent pas dire ce qu’un animal comprend, ressent ou de quoi il souffre ; demande pour cela à un cabinet vétérinaire ou à une personne qualifiée en comportement.
sheets-animal = Animal
sheets-species = { $species ->
    [dog] chien
    [cat] chat
    [parrot] perroquet
    [rabbit] lapin
   *[other] autre espèce
}
sheets-age-weeks = { $weeks ->
    [1] une semaine
   *[other] { $weeks } semaines
}
sheets-age-months = { $months ->
    [1] un mois
   *[other] { $months } mois
}
sheets-age-years = { $years ->
    [1] un an
   *[other] { $years } ans
}
sheets-age-about = environ { $age }
sheets-from-to = { $first } au { $last } ({ $zone })
sheets-printed-by = Imprimé par
sheets-limits = Limites
sheets-health = Précautions de santé

sheets-in-short = En bref
sheets-noted = Jours où quelque chose a été noté : { $noted } sur { $days }. Ce que personne n’a noté n’est pas ici.
sheets-joined = Séances auxquelles { $name } s’est joint de son plein gré : { $share }.
sheets-counts = Démonstrations par des personnes : { $showings }. Appuis spontanés de { $name } : { $presses }.
sheets-welfare = Bien-être :

sheets-words = Mots
sheets-none-taught = Aucun mot n’est encore enseigné.
sheets-since = depuis le début ; appuis spontanés de la période ci-dessus
sheets-word = Mot
sheets-stage = Étape
sheets-shown = Montré
sheets-to-giving = De l’appui au don
sheets-when-invited = Appuyé sur invitation et envie
sheets-own-presses = Appuis spontanés
sheets-presses-rest = En plus, appuis spontanés de la période sur des mots qui ne sont pas enseignés à { $name } actuellement : { $words }.
sheets-presses-of = « { $word } » { $presses }
sheets-n = { $n }
sheets-n-of = (sur { $n })
sheets-stages = Étapes : préparer, montrer (les personnes appuient et donnent), inviter (une offre, une attente, et la chose dans tous les cas), converser ({ $name } appuie sans qu’on le demande). Ne pas appuyer ne compte jamais comme ne pas comprendre.

sheets-showings-a-week = Démonstrations par semaine
sheets-joined-by-week = Participation aux séances, par semaine
sheets-week-from = semaine du { $day }
sheets-axis-week = semaine du
sheets-axis-showings = démonstrations
sheets-axis-joined = participation
sheets-axis-pressed = appuyé
sheets-told = { $what } : { $figure }

sheets-answered = Comment on a répondu aux appuis spontanés de { $name }
sheets-given = Donné : { $share }.
sheets-given-partly = Donné : { $share }, en partie : { $partly }.
sheets-not-now = Pas maintenant : { $declined }, autre chose : { $other }.
sheets-missed = Manqué, ou aucune réponse notée : { $share }.

sheets-body-language = Langage corporel noté
sheets-signs = Participe : { $joining }. Signes légers de stress : { $mild }. Signes forts : { $strong }.
sheets-strong-sign = { $day } : { $sign }
sheets-signs-note = Tel que vu par les personnes présentes. Un seul signe dit peu ; regarde tout le corps et la situation.

sheets-food = Récompenses en nourriture
sheets-reckoned = Calculé avec { $day } kcal par jour, dont au plus { $rewards } kcal de récompenses. Base : { $basis }.
sheets-reckoned-range = Calculé avec { $day } kcal par jour (selon les individus : { $low } à { $high }), dont au plus { $rewards } kcal de récompenses. Base : { $basis }.
sheets-no-allowance = Aucune quantité n’est calculée : { $why }.
sheets-why-unknown = elle n’est pas connue

sheets-likes = Préférences
sheets-last-tested = Dernier test le { $day }.
sheets-not-tested = Pas assez testé pour dire quoi que ce soit ({ $trials ->
    [0] aucun essai
    [1] un essai
   *[other] { $trials } essais
}).

sheets-not-known = Ce qu’on ne sait pas
sheets-open-no-check = Si { $name } comprend un mot : aucun contrôle prévu n’a eu lieu. Appuyer peut aussi venir de l’habitude d’un endroit, de signes que les personnes donnent sans le savoir, ou de ce qui a payé avant.
sheets-open-checks = Si { $name } comprend un mot, cette feuille ne le dit pas : { $checks ->
    [1] un essai
   *[other] { $checks } essais
} de vérifications prévues, à lire à la page Preuves.
sheets-open-word = Comment on répond à « { $word } » sur invitation.
sheets-open-little = Peu sur « { $word } » sur invitation ({ $n ->
    [1] une fois
   *[other] { $n } fois
}).
sheets-open-sessions = Si { $name } participe volontiers : aucune séance notée dans cette période.
sheets-open-likes = Ce que { $name } préfère : aucun test de préférences n’a eu lieu.

sheets-nothing-tested = Rien n’a encore été testé.
sheets-trials = Sur { $trials ->
    [1] un essai
   *[other] { $trials } essais
}, sans choix : { $none }.
sheets-trials-last = Sur { $trials ->
    [1] un essai
   *[other] { $trials } essais
}, le dernier le { $day }, sans choix : { $none }.
sheets-test-again = Tester encore :
sheets-over-middling = Probabilité d’être pris avant une chose moyennement aimée
sheets-chance = chance
sheets-consistency = { $circular ->
    [0] Les choix concordent : aucun cercle comme A avant B, B avant C, C avant A
    [1] Les choix comptent un cercle comme A avant B, B avant C, C avant A, sur au plus { $most }
   *[other] Les choix comptent { $circular } cercles comme A avant B, B avant C, C avant A, sur au plus { $most }
} ({ $items } choses comparées par deux ; cohérence { $zeta }, 1 est sans cercle).
sheets-side = Pris à gauche de { $name } : { $share }.
sheets-scores = Scores par genre de test
sheets-thing = Chose
sheets-score = { $format ->
    [single] Une à la fois : part des offres où { $name } est venu
    [paired] Deux à la fois : part des offres où elle a été prise
    [multiple] Toutes en rang : part des offres où elle a été prise
   *[free_access] Chronomètre : part du temps passé avec
}
sheets-likes-note = Les préférences changent avec la faim, l’heure et le jour ; voilà ce que { $name } a choisi au moment du test. Un trait est l’intervalle à 95 % ; « sur » compte les offres.
sheets-never-give = Ne donne jamais cela à { $name }.
sheets-eaten = { $thing } : { $why }. Déjà mangé ? Appelle tout de suite un cabinet vétérinaire.
sheets-care = Attention, pour { $name } :

sheets-none-on-board = Aucun mot n’est encore sur le tableau.
sheets-button = Bouton
sheets-means = Veut dire
sheets-answers = Tout le monde répond
sheets-not-now-said = Pas maintenant
sheets-ends-session = termine une séance
sheets-for-all = tous
sheets-every-press = Réponds à chaque appui, même à celui qui ressemble à un faux pas.
sheets-come-and-go = Chaque animal peut venir et partir ; ne l’appelle et ne l’attire jamais au tableau.
sheets-batteries = Ferme les couvercles des piles avec leurs vis. Une pile avalée ou mordue est une urgence. Un animal : appelle tout de suite un cabinet vétérinaire. Un enfant qui a avalé une pile bouton ou l’a mise dans le nez ou l’oreille : va tout de suite aux urgences.
sheets-of-animal = { $name } :

sheets-size = Taille
sheets-size-of = { $size ->
    [small] petite, { $width } × { $height } mm
    [middle] moyenne, { $width } × { $height } mm
   *[large] grande, { $width } × { $height } mm
}
sheets-glue = Les étiquettes aident les personnes. De petits bouts arrachés peuvent être avalés : colle-les à plat, et n’en mets pas là où un animal mordille. Imprime à 100 %, sans ajuster à la page.

sheets-written = Écrit : { $file } ({ $pages ->
    [1] une page
   *[other] { $pages } pages
}).
sheets-no-animal-needed = La feuille « { $sheet } » concerne tout le foyer : enlève --animal.
sheets-many-animals = Plusieurs animaux vivent ici : dis lequel avec --animal, un de { $names }.
sheets-no-animal = Aucun animal ne vit encore ici : ajoute-en un à la page Personnes.
sheets-no-check = { $name } n’a pas de telle vérification : prévois-en une à la page Vérifications.
sheets-picture-unread = L’image de « { $word } » est illisible : la feuille s’en passe. Reprenez-la sur la fiche du mot.
sheets-no-typeface = la police ne peut être lue
sheets-pdf-refused = le PDF n’a pas pu être écrit : { $why }
