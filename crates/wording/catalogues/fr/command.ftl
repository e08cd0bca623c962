command-no-home = { $dir } ne contient encore aucun foyer ; lance `sayso serve --data { $dir }` et crées-en un
command-no-animal = aucun animal ne s’appelle « { $asked } » ; il y a : { $known }
command-no-animal-yet = aucun animal ne s’appelle « { $asked } » ; il n’y en a pas encore
command-no-word = aucun mot ne dit « { $asked } » ; il y a : { $known }
command-no-word-yet = aucun mot ne dit « { $asked } » ; il n’y en a pas encore
command-several-words = plusieurs mots disent « { $asked } » ; donne l’un de leurs identifiants : { $ids }
command-not-understood = { $n ->
    [one] { $n } entrée de type { $kind } n’est pas comprise : une version ultérieure l’a écrite. Elle est gardée, mais ne compte pas ici.
   *[other] { $n } entrées de type { $kind } ne sont pas comprises : une version ultérieure les a écrites. Elles sont gardées, mais ne comptent pas ici.
}
command-no-language = SAYSO_LANGUAGE vaut « { $given } », qui n’est aucune de : { $known }
command-manual = Les pages du manuel sont dans { $dir } ; commence par : man { $first }
command-no-reward = aucune récompense ne s’appelle « { $asked } » ; il y a : { $known }
command-no-reward-yet = aucune récompense ne s’appelle « { $asked } » ; il n’y en a pas encore
command-several-rewards = plusieurs récompenses s’appellent « { $asked } » ; donne l’un de leurs identifiants : { $ids }
