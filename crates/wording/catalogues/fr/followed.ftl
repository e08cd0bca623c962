# Sur tous les foyers d’un coach : ce qui a suivi quand un changement était convenu.
followed-title = Le conseil aide-t-il ?
followed-how = Ce qui a suivi quand un changement était convenu avec toi : appuis propres les jours où quelqu’un regardait, { $days } jours après contre { $days } avant. Chaque foyer compte une fois, par son premier changement de ce genre.
followed-caution = Ici, personne n’a tiré au sort. Un changement est proposé quand cela va mal, et ce qui va mal s’améliore souvent tout seul. Ces parts ne montrent donc pas que le changement en est la cause.
followed-change = Changement
followed-more = A appuyé plus après
followed-early = Trop tôt ou trop peu noté
followed-homes = { $homes ->
    [0] { $homes } foyer
    [1] { $homes } foyer
   *[other] { $homes } foyers
}
followed-share = { $share } ({ $low } à { $high }), { $more } foyers sur { $homes }
followed-share-early = Trop tôt pour le dire : { $more } sur { $homes ->
    [0] { $homes } foyer
    [1] { $homes } foyer
   *[other] { $homes } foyers
}
followed-none = Rien qui change quelque chose n’a encore été convenu avec toi.
followed-nothing = Pour comparer, des foyers où rien n’a été convenu en huit semaines ; les quatre dernières semaines contre les quatre d’avant. A appuyé plus : { $share }.
followed-plan = { $way ->
    [show] Plan : montrer
    [offer_in_view] Plan : inviter, la chose en vue
    [ask_and_point] Plan : demander et montrer du doigt
    [ask_between_two] Plan : « ceci ou cela »
   *[any] Plan : comme cela convient
}
followed-stage = Étape : { $stage }
followed-drawn-title = Tiré au sort
followed-drawn-how = Ici, le sort a décidé quand le changement commençait. Chaque test est jugé à sa fin contre tous les ordres qui auraient pu être tirés. Sur vingt changements qui ne font rien, environ un semble faire quelque chose. Les tests à côté d’un autre qui mesure la même chose sont comptés à part.
followed-drawn = Changement tiré au sort
followed-came-out = Ce qui en est sorti
followed-outcome = { $outcome ->
    [going] en cours : { $count }
    [stopped] arrêtés : { $count }
    [rare] une différence rare par hasard : { $count }
    [may_be_chance] peut être le hasard : { $count }
    [too_few_orders] trop petits pour le dire : { $count }
   *[untested] finis sans analyse : { $count }
}
followed-beside = Non comptés ci-dessus, car un autre test a mesuré la même chose certains des mêmes jours : { $count ->
    [one] { $count } test
   *[other] { $count } tests
} ({ $outcomes }). On ne peut pas distinguer l’un de l’autre.
followed-was-beside = à côté d’un autre test
followed-none-alone = encore aucun seul
followed-no-drawn = Pas encore de test. Ce que tu proposes sous « Un changement à essayer » peut être tiré au sort par le foyer.
followed-each = Chaque test
followed-in-home = { $animal }, { $home }
