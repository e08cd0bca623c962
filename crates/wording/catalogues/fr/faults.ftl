# What is wrong with a field, said after its name.
faults-at = { $field } { $what }.
faults-field = { $field ->
    [name] Nom
    [weight_kg] Poids
    [adult_weight_kg] Poids adulte
    [day_kcal] Kcal par jour
    [reward_percent] Part des récompenses
    [reward_share] Part des récompenses
    [species] Espèce
    [born] Naissance
    [life_stage] Stade
    [age_years] Âge en années
    [age_months] Âge en mois
    [kind] Sorte
    [kcal_per_piece] Kcal par morceau
    [grams_per_piece] Grammes par morceau
    [seconds_to_deliver] Secondes pour donner
    [most_per_day] Maximum par jour
    [food] Aliment
    [text] Texte
    [word] Mot
    [words] Mots
    [animals] Animaux
    [animal] Animal
    [home] Foyer
    [zone] Fuseau horaire
    [role] Rôle
    [language] Langue
    [says] Ce qu’il dit
    [reward] Récompense
    [rewards] Récompenses
    [format] Format
    [rounds] Tours
    [days] Jours
    [one_in] Une sur
    [design] Plan
    [choices] Choix
    [rate] Part de réussite
    [who] Qui est là
    [stage] Étape
    [because] Pourquoi
    [why] Pourquoi
    [answer] Réponse
    [means] Sens
    [day] Jour
    [time] Heure
    [point] Point
    [first] Premier jour
    [points] Points
    [rows] Rangées
    [columns] Colonnes
    [observed_s] Secondes observées
    [after_s] Secondes
    [person] Personne
    [last] Dernier jour
    [weekdays] Jours de la semaine
    [club] Club
    [count] Nombre
    [account] Compte
    [purpose] But
    [last_day] Dernier jour
    [about] Sur
    [word_1] Mot 1
    [way_1] Comment 1
    [minutes_1] Minutes 1
    [times_1] Fois par jour 1
    [word_2] Mot 2
    [way_2] Comment 2
    [minutes_2] Minutes 2
    [times_2] Fois par jour 2
    [word_3] Mot 3
    [way_3] Comment 3
    [minutes_3] Minutes 3
    [times_3] Fois par jour 3
    [reply] Réponse
    [what] Quoi
    [stands] Ce qui représente :
    [whose] Foyer ou compte
    [new_person] Nom de quelqu’un de nouveau
    [email] Adresse électronique
   *[other] { $plain }
}
faults-not-kept = Pas encore enregistré.
faults-put-right = Ce que tu as saisi est encore là ; corrige ceci :
faults-unknown-field = n’est pas un champ de ce formulaire
faults-number = doit être un nombre comme 4,5, pas « { $text } »
faults-whole = doit être un nombre entier de { $low } à { $high }, pas « { $text } »
faults-one-of = doit être l’un de : { $names }
faults-unknown-id = nomme quelque chose que ce carnet ne connaît pas ; recharge la page
faults-not-read = est illisible : « { $text } »
faults-missing = manque
faults-missing-choose = manque ; fais un choix
faults-missing-usual = manque ; l’habitude est { $usual }
faults-missing-several = manquent ; l’habitude est { $usual }
faults-form-expected = Un formulaire était attendu (application/x-www-form-urlencoded).
faults-form-broken = est illisible ; recharge la page
faults-no-animal = manque ; ce genre de note concerne un animal
faults-range = doit être de { $low } à { $high }, pas { $found }
faults-too-few = doit être au moins { $least }, pas { $found }
faults-name = doit en nommer { $low } à { $high }, pas { $found }
faults-seconds = doit être de { $low } à { $high } secondes, pas { $found }
faults-twice = en nomme un deux fois
faults-amends-amendment = ne doit pas être elle-même une correction ou un retrait ; corrige encore la première note
faults-not-alternative = va seulement avec la réponse "alternative"
faults-not-pressed-again = va seulement avec la suite "pressed_again"
faults-not-between-two = nomme le second mot de "ask_between_two", et seulement de cela
faults-same-word = doit être un autre mot
faults-after-the-wait = dépasse l’attente de { $seconds } s ; note-le comme un appui ordinaire
faults-no-food = manque ; dis ce qui a été donné, ou nomme une récompense
faults-label-of-other = dit ce qui change quand la question est "other", et seulement alors
faults-not-by-word = "{ $measure }" ne se compte pas mot par mot ; nomme plutôt des animaux
faults-only-over-animals = sont seulement pour des lignes de base multiples sur des animaux
faults-criterion-for-people = doit être "delivery_delay" : un critère est pour les personnes, jamais pour l’animal
faults-criterion-a-phase = doit en compter un par phase après la première, pas { $found }
faults-only-with-criterion = sont seulement pour un critère changeant
faults-not-offered = n’a pas été proposé dans cet essai
faults-free-by-time = l’accès libre se note par le temps : utilise "observed"
faults-only-free = "observed" est seulement pour l’accès libre
faults-offered-once = doit être l’une des choses proposées, une fois
faults-longer-than-observed = dépasse les { $seconds } s observées
faults-swaps-one-in = doit être de { $low } à { $high }, pas { $found } ; plus d’un échange sur quatre fatigue un animal
faults-reward-share = doit être au plus { $most } ; pour plus, demande à un vétérinaire
faults-stage-of-other = le stade { $stage } ne va pas avec cette espèce ({ $species })
faults-grown-less-than-now = est { $grown } kg, moins que les { $now } kg de ce chiot ; corrige l’un, ou choisis un stade adulte
faults-no-energy = manque ; la nourriture demande l’énergie d’un morceau, en kcal
faults-only-food = est seulement pour la nourriture
faults-not-a-hash = doit avoir 64 chiffres hexadécimaux
faults-off-board = rangée { $row } colonne { $column } est hors du tableau
faults-place-twice = rangée { $row } colonne { $column } est prise deux fois
faults-two-places = est à deux places
faults-id-taken = appartient déjà à une autre note ; renvoie-la comme nouvelle
faults-empty = ne doit pas être vide
faults-too-long = doit avoir au plus { $most } caractères, pas { $found }
faults-control = ne doit pas contenir de caractères de commande comme des tabulations ou des sauts de ligne
faults-hidden = ne doit pas contenir le caractère { $code }, invisible ou qui retourne le texte autour de lui ; retape le texte
faults-quantity = doit être un nombre de { $low } à { $high }, pas { $found }
faults-not-a-time = « { $text } » n’est pas un moment comme 2026-03-01T18:30:00Z
faults-time-out-of-range = le moment { $text } est hors des années 2000 à 2199
faults-not-a-zone = « { $text } » n’est pas un fuseau horaire IANA comme Europe/Berlin
faults-not-a-day = « { $text } » n’est pas un jour comme 2026-03-01
faults-late-card = ne peut pas être après { $moment }, la date de la fiche remplacée. Corrige d’abord la date de cette fiche dans le journal
faults-late-amendment = ne peut pas être après { $moment }, le dernier changement, et ne peut donc plus changer. Note-le de nouveau, comme ce doit être
faults-in-swaps = participent déjà à des échanges ; arrête d’abord ceux-là
faults-signs-today = ne peuvent pas commencer aujourd’hui : de forts signes de stress ont été notés ; choisis un moment calme
faults-another-thing = doivent être 2 ou plus, pas { $found } ; un échange demande autre chose
faults-same-thing = en contiennent deux pour la même chose ({ $first }, { $second })
faults-one-in-usual = manque ; l’habitude est une sur { $usual }
faults-agree = doit être d’accord : tous ceux qui répondent donnent ce qui est tiré, ou arrêtent les échanges
faults-first-day = doit être de { $from } à { $to } : l’ordre est tiré avant le début
faults-seconds-list = doivent être des secondes comme 6; 4; 2.5
faults-check-long = rendent la vérification trop longue ; choisis moins de mots
faults-tick = doivent être 2 à { $most }, pas { $found } ; coche plus ou moins
faults-easiest = manquent ; 2 est le plus facile pour l’animal
faults-at-most-ticked = doit être au plus le nombre de mots cochés, { $ticked }
faults-never-given = contiennent { $name }, qu’il ne faut jamais donner à cet animal
faults-who = manque ; dis qui sera là
faults-above-chance = doit dépasser le hasard ({ $chance } %) et être au plus 99 %
faults-near-chance = est trop près du hasard pour une vérification de durée supportable
faults-place = doit être une place de 1 à { $most }, rien ou parti
faults-not-a-person = n’est pas une des personnes de ce foyer
faults-not-our-home = n’est pas de ce carnet
faults-per-gram = n’est pas l’énergie d’un aliment (0 à 9 kcal par gramme)
faults-no-sound-file = manque ; choisis un fichier son (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM)
faults-sound-unfit = ne peut pas servir : { $why }
faults-noted-at-board = de ce plan se note au tableau, comme toute réponse
faults-cannot-run = ne peut pas être mené : { $why }
faults-no-random = n’est pas possible : cette machine ne donne pas de nombres au hasard ({ $why })
faults-file-missing = manque ; choisis-en un
faults-file-empty = manque ou est vide ; choisis-en un
faults-other-home = n’est pas seulement celui de ce carnet : le fichier apporte { $homes }. Coche « { $tick } » s’il doit en être ainsi
faults-rows-faulty = a des défauts. Corrige-les dans le fichier et apporte-le à nouveau, ou coche « { $tick } »
faults-file-no-backup-use = « { $name } » ne peut pas servir de sauvegarde : { $what }
faults-file-no-archive = « { $name } » ne peut être lu comme archive d’un carnet : { $what }
faults-file-newer = « { $name } » a été écrit par une version plus récente ; mets ce programme à jour
faults-file-not-ours = « { $name } » est une base de données d’un autre programme, et non la sauvegarde d’un carnet
faults-file-not-a-backup = « { $name } » n’est pas une sauvegarde : il est abîmé, ou d’un autre genre
faults-file-backup-on-server = « { $name } » est la sauvegarde d’un carnet entier, et ici se trouve une maison d’un serveur. Enregistre là-bas une archive (.tar), sous « Fichiers : entrer et sortir », et apporte-la
faults-file-damaged = « { $name } » est abîmé : { $what }
faults-file-unknown = « { $name } » n’est pas de ceux qu’on peut prendre : un tableau (.csv), des lignes de JSON (.jsonl ou .ndjson), une archive (.tar) ou une sauvegarde (.sayso)
faults-take-in-home = n’est pas seulement celui de ce carnet : le fichier apporte { $homes }. Pour y garder plusieurs foyers, pour toujours, ajoute take_in_other_home=true
faults-away-home = est { $home }, un autre foyer que celui de ce carnet ; pour en tenir plusieurs dans un carnet, importe un fichier de ses entrées et dis-le
faults-too-many-bytes = est trop long : { $bytes } octets, quand { $most } est le plus
faults-not-written = ne peut pas s’écrire en JSON
faults-not-your-home = n’est pas un foyer où tu peux écrire ici ; il est peut-être parti
faults-not-your-role = n’est pas pour ton rôle dans ce foyer
faults-not-your-account = doit être le compte connecté, sous son propre nom
faults-on-its-page = se donne seulement sur la page « Qui peut voir ceci », où se lisent ses mots
faults-invites-closing = invite à un mot qui termine les séances : personne ne l’attend ; ce doit être « show » ou rien
faults-not-your-day = doit arriver un des jours convenus avec toi
faults-ends-first = doit finir après avoir commencé
faults-own-successor = doit être un autre coach que celui qui écrit
faults-sent-again = Pas encore gardé. Ce que tu as écrit est de nouveau ici : regarde-le et envoie-le encore une fois.
