ideas-name = { $key ->
    [chicken] Poulet cuit, gros comme un pois
    [cheese] Fromage, gros comme un pois
    [carrot] Carotte, une fine tranche
    [apple] Pomme sans trognon, un petit cube
    [beans] Haricot vert cuit, un
    [beef] Bœuf maigre cuit, gros comme un pois
    [turkey] Dinde cuite, grosse comme un pois
    [egg] Œuf dur, gros comme un pois
    [salmon] Saumon cuit, un petit morceau
    [kibble] Croquette, une
    [pellet] Granulé de l’aliment habituel, un
    [sunflower] Graine de tournesol sans sel, une
    [millet] Millet, une pincée
    [pepper] Poivron rouge, une petite lanière
    [dandelion] Pissenlit, une feuille
    [parsley] Persil, un brin
    [coriander] Coriandre, un brin
    [hay] Foin, un brin doux
    [tug] Tire
    [ball] Balle
    [chase] Cours
    [squeak] Jouet qui couine
    [wand] Canne à plume
    [crinkle] Boule de papier
    [toss] Souris en tissu
    [bell] Cloche
    [shred] Papier à déchirer
    [peekaboo] Coucou
    [willow] Balle d’osier
    [tunnel] Tunnel
    [rub] Caresse sur le ventre
    [scratch] Gratouille sur le poitrail
    [brush] Brosse
    [cheek] Caresse sur la joue
    [head] Gratouille sur la tête
    [forehead] Caresse sur le front, au sol
    [paw] Donner la patte
    [spin] Tourne
    [touch_hand] Touche ma main
    [high_five] Tape là
    [step_up] Monte
    [turn] Demi-tour
    [target] Touche le bâton
    [up] Debout
    [garden] Jardin
    [walk] Promenade
    [sniff] Flairer dans une boîte de feuilles
    [window] Fenêtre
    [box] Carton
    [room] Pièce voisine, avec toi
    [pen] Enclos dehors
    [bed] Panier
    [sofa] Canapé, près de toi
    [perch] Perchoir tranquille
    [hide] Cachette
   *[other] { $key }
}
ideas-label = { $key ->
    [chicken] poulet
    [cheese] fromage
    [carrot] carotte
    [apple] pomme
    [beans] haricot
    [beef] bœuf
    [turkey] dinde
    [egg] œuf
    [salmon] saumon
    [kibble] croquette
    [pellet] granulé
    [sunflower] graine
    [millet] millet
    [pepper] poivron
    [dandelion] feuille
    [parsley] persil
    [coriander] coriandre
    [hay] foin
    [tug] tire
    [ball] balle
    [chase] cours
    [squeak] couine
    [wand] plume
    [crinkle] papier
    [toss] souris
    [bell] cloche
    [shred] papier
    [peekaboo] coucou
    [willow] osier
    [tunnel] tunnel
    [rub] caresse
    [scratch] gratte
    [brush] brosse
    [cheek] joue
    [head] gratte
    [forehead] front
    [paw] patte
    [spin] tourne
    [touch_hand] main
    [high_five] tape
    [step_up] monte
    [turn] demi-tour
    [target] bâton
    [up] debout
    [garden] jardin
    [walk] balade
    [sniff] flaire
    [window] fenêtre
    [box] carton
    [room] pièce
    [pen] enclos
    [bed] panier
    [sofa] canapé
    [perch] perchoir
    [hide] cachette
   *[other] { $key }
}
ideas-title = Qu’est-ce que { $name } pourrait aimer ?
ideas-four = Touche quatre choses ou plus, de plusieurs sortes. { $name } décidera plus tard.
ideas-health = Santé :
ideas-other-kinds = Choses d’autres sortes
ideas-figures = kcal : valeurs habituelles pour un morceau (USDA et de mémoire) ; vérifie l’emballage. Les idées : pratique courante, sans source.
ideas-add = Ajouter
ideas-own = Quelque chose à toi
ideas-kind = { $kind ->
    [food] nourriture
    [play] jeu
    [touch] contact
    [training] un exercice
    [exploring] exploration
   *[rest] repos
}
ideas-care = { $care ->
    [guarding] Pas pour un animal qui défend nourriture ou jouets. Si { $name } se raidit ou gronde, laisse de l’espace et demande à un professionnel qualifié du comportement.
    [slipping] Sur un sol qui ne glisse pas ; pour des pattes raides ou jeunes, demande d’abord à un vétérinaire.
    [small_parts] Rien qui puisse être arraché et avalé ; range-le ensuite.
    [size] Trop grande pour être avalée ou rester dans la gorge ; range-la dès qu’elle est usée.
   *[hands_off] Seulement tant que { $name } vient le chercher : jamais tenu, jamais sur les genoux de force.
}
ideas-none-ticked = ne sont pas cochées ; touches-en une, ou choisis Plus tard
ideas-unknown = en contiennent une que ce programme ne connaît pas ; recharge la page
ideas-instead = { $name } choisit rarement { $thing }. Idées à essayer à la place : { $ideas }
ideas-instead-of = { $name } ne veut guère { $thing }. Essaie autre chose du même genre et laisse { $name } choisir.
ideas-see = Voir toutes les idées
ideas-for-animal = Idées à essayer avec { $name } : { $ideas }
