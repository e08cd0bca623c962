lacking-few = il faut au moins { $needed ->
    [1] une valeur
   *[other] { $needed } valeurs
} ; il { $got ->
    [0] n’y en a aucune
    [1] y en a une
   *[other] y en a { $got }
}
lacking-nothing = rien n’a encore été observé
lacking-no-variation = toutes les valeurs sont les mêmes
lacking-one-category = les { $n } notes sont les mêmes ; l’accord au-delà du hasard ne peut être jugé
lacking-nothing-shared = rien n’a été noté par au moins deux personnes
lacking-disconnected = { $groups } groupes de choses n’ont jamais été comparés entre eux
lacking-separated = certaines choses n’ont jamais perdu contre les autres
lacking-unsettled = l’estimation ne s’est pas stabilisée
lacking-no-span = les { $n } observations tombent au même moment ; aucun changement n’est mesurable
lacking-time-goes-back = les notes ne sont pas dans l’ordre du temps
lacking-not-fit = les notes ne conviennent pas à cette méthode ({ $why })
lacking-choices = { $choices } choix par essai parmi { $words } mots ; de 2 choix jusqu’au nombre de mots
lacking-no-trials = une vérification a au moins un essai
lacking-word-twice = un mot figure deux fois
lacking-long-runs = aucun ordre n’a été trouvé sans un mot trop souvent de suite
lacking-no-card = le mot n’a pas de fiche
