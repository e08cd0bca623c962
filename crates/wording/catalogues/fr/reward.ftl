reward-poison = { $species ->
    [dog] { $food } peut empoisonner les chiens. Non ajouté.
    [cat] { $food } peut empoisonner les chats. Non ajouté.
    [parrot] { $food } peut empoisonner les perroquets. Non ajouté.
    [rabbit] { $food } peut empoisonner les lapins. Non ajouté.
   *[other] { $food } peut empoisonner cet animal. Non ajouté.
}
reward-says = Ce que tu dis déjà pour cela
reward-says-hint = un mot court ; le bouton peut dire la même chose
reward-already-said = nous disons déjà ce mot souvent chaque jour
reward-at-board = Peut-on le donner près du tableau ?
reward-at-board-hint = encore et encore, en quelques secondes ; sortir ne se peut pas
reward-as-usual = { $at_board ->
    [yes] comme d’habitude pour ce genre : oui
   *[no] comme d’habitude pour ce genre : non
}
reward-at-board-yes = oui
reward-at-board-no = non
reward-seconds = Le temps pour le donner, secondes
reward-usual-seconds = de l’appui à la fin ; habituel pour ce genre : environ { $seconds } (pratique courante, sans source)
reward-most = Au plus, chaque jour
reward-usual-times = avant que les gens ou l’animal n’en aient assez ; habituel pour ce genre : { $times }
reward-stand-in = Ce qui le représente dans un test de goûts
reward-stand-in-hint = ce qu’on peut montrer : la laisse ou la clé pour sortir
