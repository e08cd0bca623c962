words-first = Premiers mots
words-further = Proposer d’autres mots
words-none-yet = Pas encore de mot. Deux ou trois suffisent pour commencer (pratique courante, sans source).
words-take = Prendre ces mots
words-button-says = Le bouton dit
words-says = « { $says } » :
words-untested = Pas encore de test de goûts : ce que { $name } aime est ici une supposition.
words-test-first = Tester d’abord, une dizaine de minutes
words-tested = { $trials ->
    [one] D’après un essai d’un test de goûts, la nourriture du jour, le temps pour donner et le son des mots.
   *[other] D’après { $trials } essais de tests de goûts, la nourriture du jour, le temps pour donner et le son des mots.
}
words-other-sets = Autres ensembles ({ $sets })
words-left-out = Écartés, et pourquoi ({ $things })
words-why-these = Pourquoi ceux-ci ?
words-score = Le meilleur mélange : aimés, vite donnés, faciles à distinguer. Score { $total } : goût et dons { $liked }, sortes { $kinds }, sons distincts { $apart }, déjà dits { $said }.
words-best-in = Le meilleur de tous les ensembles dans { $share } des { $draws } tirages de ce qu’on ne sait pas encore.
words-how-much = { $guess ->
    [yes] environ { $times } fois par jour près du tableau (une supposition pour l’instant)
   *[no] environ { $times } fois par jour près du tableau
}
words-not-tested = Pas encore testé : que { $name } l’aime est une supposition.
words-picked = Chance que { $name } le choisisse plutôt qu’une chose moyenne : { $figure }.
words-scored = { $format ->
    [free_access] Occupé avec dans un test chronométré : { $figure }.
   *[other] Pris dans un test : { $figure }.
}
words-seconds-measured = Le donner prend environ { $seconds } s : mesuré chez vous, n = { $n }.
words-seconds-kind = Le donner prend environ { $seconds } s : comme d’autres choses du même genre chez vous, n = { $n }, jusqu’à son propre chiffre.
words-seconds-card = Le donner prend { $seconds } s, d’après sa fiche.
words-seconds-usual = Le donner prend environ { $seconds } s : habituel pour ce genre (pratique courante, sans source), jusqu’à cinq dons.
words-a-day-measured = Donné { $times } fois un jour ordinaire : mesuré sur { $days } jours.
words-a-day-card = Au plus { $times } fois par jour, d’après sa fiche.
words-a-day-usual = Au plus { $times } fois par jour : habituel pour ce genre (pratique courante, sans source).
words-pieces = { $pieces ->
    [one] Un morceau par jour tient dans la ration, si rien d’autre n’est donné en récompense.
   *[other] { $pieces } morceaux par jour tiennent dans la ration, si rien d’autre n’est donné en récompense.
}
words-already-said = Vous dites déjà souvent ce mot.
words-sounds-like-one = Ressemble beaucoup à « { $other } » : un autre mot se distingue mieux.
words-how-many = doivent être 1 à { $most } mots pour commencer, pas { $ticked }
words-must-not = Ne doit pas être donné : { $why }.
words-twice = « { $says } » est déjà sur un autre bouton ; choisis un autre mot
words-no-set = Pas encore de proposition : { $usable } des choses notées peuvent être des premiers mots, il en faut { $needed }.
words-too-many = Pas de proposition : trop de choses à comparer. Mets-en d’abord de côté.
words-no-allowance = La quantité de nourriture de { $name } n’est pas fixée : on ne peut pas le doser.
words-bad-figure = Un chiffre de sa fiche ne peut pas être juste.
words-not-at-board = On ne peut pas le donner encore et encore près du tableau, et un premier mot demande beaucoup de répétitions rapides. Si c’est possible, dis-le sur sa fiche.
words-no-piece = La ration du jour n’en laisse aucun morceau.
words-too-slow = Prend { $seconds } s près du tableau, plus de { $slowest } s : trop peu de répétitions.
words-too-seldom = Peut être donné { $times } fois par jour, moins de { $fewest }.
words-no-company = Ne va avec aucun autre : il faut { $needed } mots ensemble.
words-outscored = { $by ->
    [liking] Moins aimé que les choisis (score inférieur de { $behind }).
    [uncertainty] Son attrait est moins sûr : teste-le davantage (score inférieur de { $behind }).
    [deliveries] Se donne moins souvent que les choisis (score inférieur de { $behind }).
    [spread] N’ajoute aucune sorte nouvelle (score inférieur de { $behind }).
    [apart] Ressemble plus aux autres que les choisis (score inférieur de { $behind }).
   *[said] Vous ne le dites pas encore, contrairement aux choisis (score inférieur de { $behind }).
}
words-give = Donner { $says }.
words-asks-for = demande : { $name }
words-not-now = « Pas maintenant », une fois et calmement ; proposer autre chose.
