setup-what = { $step ->
    [food] Quelle quantité de nourriture pour { $name } ?
    [wants] Qu’est-ce que { $name } pourrait aimer ? Ajoute quatre choses.
    [likes] Teste ce que { $name } aime
    [words] Choisis les premiers mots de { $name }
    [record] Enregistre les mots de { $name }, de ta voix
    [places] Indique où sont les boutons
   *[people] Ajoute toutes les personnes qui répondent à { $name }
}
setup-why = { $step ->
    [food] pour que les récompenses restent dans cette limite
    [wants] de plusieurs sortes : nourriture, jeu, contact
    [likes] une dizaine de minutes ; le choix des mots en devient plus sûr, et cela peut attendre
    [words] deux ou trois, proposés avec leurs raisons
    [record] pour que chaque bouton le dise de même et qu’un appui puisse être entendu ; cela peut attendre
    [places] pour reconnaître un appui à sa place
   *[people] tout le monde montre et répond de la même façon
}
setup-title = Mise en route pour { $name }
setup-done-of = { $done } sur { $of } étapes nécessaires faites
setup-is-done = – fait
setup-next = Suivant
setup-keep = Enregistrer
setup-later = Plus tard
setup-along = Étape { $number } sur { $of }
setup-food-why = Les récompenses à manger prennent au plus un dixième de la journée de { $name }. La journée est estimée d’après le poids et l’âge ; le chiffre d’un vétérinaire vaut mieux.
setup-weight = Poids, { $unit }
setup-stage = Âge et corps
setup-stage-hint = sert à estimer l’énergie du jour
setup-stage-unknown = inconnu
setup-food-more = { $species ->
    [dog] Un chiot, ou le chiffre d’un vétérinaire
   *[other] Le chiffre d’un vétérinaire
}
setup-grown-weight-asked = manque encore : indique le poids du chiot une fois adulte, ou enregistre encore une fois sans ; rien ne sera alors calculé
setup-grown-weight = Pour un chiot : poids adulte, { $unit }
setup-grown-weight-hint = demande à l’élevage ou à un vétérinaire ; sans lui rien n’est calculé
setup-day-kcal = La nourriture de la journée, kcal, fixée par un vétérinaire
setup-day-kcal-hint = remplace toute formule
setup-day-kcal-more = doit dépasser 0 ; laisse vide pour le calculer
setup-food-later = Sans cela, aucune nourriture n’est proposée comme mot.
setup-record-later = Les boutons parlent sans cela. Aujourd’hui en garde une ligne.
setup-no-vet = Rien ici ne remplace un vétérinaire.
