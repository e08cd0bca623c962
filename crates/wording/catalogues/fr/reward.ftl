reward-poison = { $species ->
    [dog] { $food } peut empoisonner les chiens. Non ajouté.
    [cat] { $food } peut empoisonner les chats. Non ajouté.
    [parrot] { $food } peut empoisonner les perroquets. Non ajouté.
    [rabbit] { $food } peut empoisonner les lapins. Non ajouté.
   *[other] { $food } peut empoisonner cet animal. Non ajouté.
}
reward-says = Ce que tu dis déjà pour cela
reward-says-hint = un mot court ; le bouton peut dire la même chose
reward-already-said = nous disons déjà ce mot souvent chaque jour
reward-at-board = Peut-on le donner près du tableau ?
reward-at-board-hint = encore et encore, en quelques secondes ; sortir ne se peut pas
reward-as-usual = { $at_board ->
    [yes] comme d’habitude pour ce genre : oui
   *[no] comme d’habitude pour ce genre : non
}
reward-at-board-yes = oui
reward-at-board-no = non
reward-seconds = Le temps pour le donner, secondes
reward-usual-seconds = de l’appui à la fin ; habituel pour ce genre : environ { $seconds } (pratique courante, sans source)
reward-most = Au plus, chaque jour
reward-usual-times = avant que les personnes ou l’animal n’en aient assez ; habituel pour ce genre : { $times }
reward-stand-in = Ce qui le représente dans un test de préférences
reward-stand-in-hint = ce qu’on peut montrer : la laisse ou la clé pour sortir, la brosse pour une caresse
reward-keep-another = Enregistrer et en ajouter un autre
reward-new = Nouveau : { $kind }
reward-title = Quelque chose qu’ils peuvent vouloir
reward-which-kind = De quelle sorte ? Un mélange fait un meilleur tableau que la nourriture seule.
reward-kind = Sorte
reward-kind-missing = manque ; choisis-en une
reward-exact = aussi précis que possible, par exemple : poulet cuit, nature
reward-only-food = est seulement pour la nourriture ; laisse vide, ou choisis cette sorte
reward-not-added = désigne un aliment qui n’a pas été ajouté ; choisis-en un autre
reward-not-added-tick = désigne un aliment qui n’a pas été ajouté ; choisis-en un autre, ou coche seulement les animaux concernés
reward-none-means-all = aucun coché veut dire tous
reward-still-used = toujours utilisé
reward-energy = Énergie d’un morceau
reward-kcal = kcal par morceau
reward-kcal-hint = d’après l’emballage, s’il le dit
reward-not-known = Inconnu ? Laisse vide et donne le poids d’un morceau, avec le chiffre de l’emballage ou un aliment de la table.
reward-grams = Grammes par morceau
reward-grams-hint = pèse-en dix et divise par dix
reward-per-100 = kcal pour 100 g
reward-per-100-hint = d’après l’emballage ; c’est le meilleur chiffre
reward-table = ou un aliment nature
reward-table-hint = de la table USDA, sans sel, graisse ni assaisonnement ; valeurs habituelles : vérifie l’emballage
reward-kept = Enregistré.
reward-kept-kcal = { $name } : { $kcal } kcal par morceau.
reward-fits = { $name } : au plus { $pieces } par jour{ $by ->
    [card] , comme le dit la fiche.
   *[food] , si rien d’autre n’est donné : les récompenses de nourriture du jour font { $budget } kcal.
}
reward-fits-unknown = { $name } : on ne peut pas dire combien par jour. { $why }
reward-no-such = Ce carnet ne connaît pas cette récompense.
reward-none-of-these = aucun de ceux-ci
reward-food-line = { $food } : { $kcal } kcal pour 100 g
reward-food-name = { $food ->
    [chicken_breast_cooked] blanc de poulet cuit
    [cheddar] cheddar
    [carrot_raw] carotte crue
    [apple_raw] pomme crue
    [egg_cooked] œuf cuit
    [salmon_farmed_cooked] saumon d’élevage cuit
    [banana] banane
    [green_beans] haricots verts
    [turkey_breast_cooked] blanc de dinde cuit
    [beef_lean_cooked] bœuf maigre cuit
   *[other] { $food }
}
reward-kcal-more = doit dépasser 0, sinon on ne peut pas le compter sur la journée
reward-grams-missing = manque ; pèse dix morceaux et divise par dix
reward-kcal-missing = manque ; donne-le, ou les grammes d’un morceau et l’énergie de 100 g
reward-not-in-list = n’est pas dans la liste ; choisis-en un, ou donne toi-même l’énergie
reward-called-like-food = nomme un aliment à ne jamais donner. Si c’est cet aliment, ne le donne pas. Sinon, donne-lui un autre nom
