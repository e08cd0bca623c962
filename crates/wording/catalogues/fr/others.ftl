others-title = Les autres
others-lead = Comment cela s’est passé dans d’autres foyers, à côté de ce qui est noté de { $name }. Habituel ne veut pas dire mieux, et rien ici n’est un but.
others-press = Un appui dit qu’un bouton a été enfoncé, pas pourquoi. Une longue attente ne dit rien de { $name }.
others-late = Attendre plus longtemps que d’habitude n’est ni une maladie ni un échec, et ne dit rien de ce que { $name } peut apprendre. Si d’autres signes s’y ajoutent, demande à un vétérinaire ou à un professionnel qualifié du comportement.
others-who = { $species ->
    [dog] des chiens
    [cat] des chats
    [parrot] des perroquets
    [rabbit] des lapins
   *[other] des animaux d’autres espèces
}{ $age ->
    [under-two] { " " }de moins de deux ans
    [two-to-seven] { " " }de deux à sept ans
    [eight-or-more] { " " }de huit ans ou plus
   *[every] { "" }
}
others-kind = { $kind ->
    [food] mots de nourriture
    [play] mots de jeu
    [touch] mots de contact
    [training] mots d’exercices
    [exploring] mots d’exploration
    [rest] mots de repos
    [closing] mots qui terminent une séance
    [other] mots dont personne n’a dit ce qu’ils apportent
   *[every] mots
}
others-half = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }, la moitié de tous les { $kind } a reçu son premier appui spontané { $value ->
    [0] avant la première démonstration
    [1] en { $value } démonstration
   *[other] en { $value } démonstrations ou moins
} (intervalle à { $level } : { $low } à { $high }).
others-half-days = En jours : la moitié en { $value ->
    [0] moins d’un jour
    [1] { $value } jour
   *[other] { $value } jours ou moins
} (intervalle à { $level } : { $low } à { $high }).
others-half-open = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }, moins de la moitié de tous les { $kind } a reçu un appui spontané dans le temps noté.
others-half-open-days = En jours : moins de la moitié dans le temps noté.
others-middle = La moitié du milieu : { $low } à { $high }.
others-middle-open = Un quart : en { $low } ou moins. Trois quarts : pas dans le temps noté.
others-beyond = pas dans le temps noté
others-own-before = Premier appui de { $name } sur « { $word } » avant la première démonstration.
others-own-pressed = Premier appui de { $name } sur « { $word } » après { $shown ->
    [1] { $shown } démonstration
   *[other] { $shown } démonstrations
}, en { $days ->
    [0] moins d’un jour
    [1] { $days } jour
   *[other] { $days } jours
}.
others-own-open = Pas encore d’appui de { $name } sur « { $word } » : { $shown ->
    [1] { $shown } démonstration
   *[other] { $shown } démonstrations
} jusqu’ici, en { $days ->
    [0] moins d’un jour
    [1] { $days } jour
   *[other] { $days } jours
}. Pas encore n’est pas jamais.
others-any-age = Trop peu de foyers avaient des animaux de cet âge : tous les âges y sont.
others-any-kind = Trop peu de foyers avaient des mots comme celui-ci : les mots pour tout y sont.
others-not-enough = Pas assez de cas comme les tiens : trop peu de foyers pour un chiffre où personne n’est reconnaissable.
others-closing-title = Mots qui terminent une séance
others-closing = Un mot qui termine une séance est montré quand quelque chose s’arrête. Il s’apprend autrement qu’un mot qui apporte quelque chose : il n’est donc mis qu’à côté de ses pareils.
others-nothing-shown = Rien encore à mettre à côté des autres : cela commence avec la première démonstration.
others-chart-title = « { $word } » : premiers appuis selon les démonstrations
others-chart-share = part appuyée
others-chart-showings = démonstrations
others-chart-mark = { $name } : { $shown }
others-chart-mark-open = { $name } : { $shown }, pas encore
others-band = intervalle à { $level }
others-joined-title = Participer
others-joined = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }, l’animal a participé à { $value } des invitations dans le foyer du milieu (intervalle à { $level } : { $low } à { $high }). La moitié du milieu des foyers : { $from } à { $to }.
others-own-joined = { $name } : { $joined } sur { $invited ->
    [1] { $invited } invitation
   *[other] { $invited } invitations
}. Ne pas participer est une réponse.
others-words-title = Ce que les premiers mots apportaient
others-words = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }.
others-nth = Mot
others-brings = Apporte
others-share = Part des animaux
others-kind-name = { $kind ->
    [food] nourriture
    [play] jeu
    [touch] contact
    [training] exercice
    [exploring] exploration
    [rest] repos
    [closing] fin d’une séance
   *[other] pas dit
}
others-hours-title = Heures de la journée
others-hours = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who } qui ont appuyé d’eux-mêmes : dans quelles heures tombait un appui, un seul tiré au sort par foyer.
others-hours-most = De { $from } à { $to } : { $value } (intervalle à { $level } : { $low } à { $high }), la plus grande part.
others-hours-caution = Les animaux appuient quand il y a quelqu’un et que les boutons sont à portée. Ce n’est pas un horaire pour { $name }.
others-hours-axis = heure de la journée
others-hours-share = part des foyers, en pour cent
others-hours-span = { $from } à { $to }
others-stages-title = Temps dans chaque étape
others-stages = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }, la moitié des mots est allée au-delà de « { $stage } » en { $value ->
    [0] moins d’un jour
    [1] { $value } jour
   *[other] { $value } jours ou moins
} (intervalle à { $level } : { $low } à { $high }).
others-stages-open = Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }, moins de la moitié des mots est allée au-delà de « { $stage } » dans le temps noté.
others-stages-not-enough = « { $stage } » : pas assez de cas comme le tien.
others-stages-caution = Aller plus loin est le choix des personnes, et un mot pour lequel personne n’a choisi d’étape compte comme montré. Aucun animal ne doit être quelque part à un jour donné : c’est ce que fait { $name } qui décide.
others-stages-axis = jours dans l’étape
others-stages-share = part allée plus loin
others-weeks-title = Appuis en une semaine
others-weeks = Dans { $homes ->
    [one] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who } : combien de fois l’animal a appuyé de lui-même sur un mot en une semaine depuis la première démonstration, un mot et une semaine tirés au sort dans chaque foyer.
others-weeks-line = { $span } : { $some } des mots ont eu au moins un appui (intervalle à { $level } : { $somelow } à { $somehigh }), { $daily } sept appuis ou plus ({ $dailylow } à { $dailyhigh }), dans { $homes ->
    [one] { $homes } foyer
   *[other] { $homes } foyers
}.
others-weeks-span = { $to ->
    [1] Semaine { $from }
   *[other] Semaines { $from } à { $to }
}
others-weeks-caution = Ce sont les appuis notés : il y en a plus là où l’on écoute plus. Appuyer plus n’est pas vouloir dire plus, et aucun animal n’a à appuyer tant de fois à une semaine donnée : ce que fait { $name } décide.
others-weeks-axis = semaines depuis la première démonstration
others-weeks-share = part des mots
others-weeks-some = au moins un appui
others-weeks-daily = sept appuis ou plus
others-source-title = D’où cela vient
others-source = De l’édition « { $release } » du { $date }.
others-self-chosen = Ces foyers ont choisi de noter et de donner leurs notes. Ce ne sont pas tous les animaux, ni un échantillon qui vaille pour tous.
others-invented = Foyers inventés par une simulation : pour essayer cette page, aucune preuve sur les animaux.
others-noise = Du bruit a été ajouté à chaque compte, pour qu’aucun foyer ne soit reconnaissable. Les intervalles en tiennent compte.
others-club = Foyers de { $club } seulement. Aucun bruit ajouté.
others-none = Il n’y a pas encore ici de chiffres d’autres foyers.
others-none-home = Qui tient ce carnet peut y apporter des valeurs de référence, même sans réseau. Dans un terminal : sayso norms import FILE --data { $dir }
others-none-server = Qui tient ce serveur peut lui donner des valeurs de référence.
others-damaged = Les valeurs de référence gardées ici ne se lisent pas : { $why }. Apporte-les encore une fois.
others-link = Comment cela s’est passé dans d’autres foyers
others-usual = Pas encore d’appui sur « { $word } », après { $shown ->
    [1] { $shown } démonstration
   *[other] { $shown } démonstrations
}. Dans { $homes ->
    [1] { $homes } foyer
   *[other] { $homes } foyers
} avec { $who }, { $part ->
    [quarter] un quart
   *[half] la moitié
} de tous les { $kind } en a demandé plus de { $more } (intervalle à { $level } : { $low } à { $high }).
