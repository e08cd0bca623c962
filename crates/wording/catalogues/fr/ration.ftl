ration-used-up = Les récompenses alimentaires d’aujourd’hui sont épuisées. Utilise le jeu, le contact ou l’exploration, et donne un repas plus petit si le vétérinaire est d’accord.
ration-starting-point = Un point de départ pour un animal en bonne santé : à poids égal, certains ont besoin de jusqu’à trois fois plus que d’autres. Surveille l’état corporel et demande à un vétérinaire.
ration-growing = Le besoin d’un animal en croissance change de semaine en semaine : pèse souvent, utilise sa propre nourriture comme récompense quand tu peux, et demande à un vétérinaire.
ration-weight-loss = Calculé sur le poids visé. Perdre du poids demande le plan d’un vétérinaire ; chez le chat, manger trop peu est en soi dangereux.
ration-typed-in = Saisi, non vérifié par ce programme : il reste tel que le vétérinaire l’a donné.
ration-basis-typed-in = saisi, comme un vétérinaire l’a fixé
ration-basis-formula = énergie au repos (70 fois le poids en kg à la puissance 0,75) = { $resting } kcal, fois { $factor } pour l’âge de la vie ({ $source })
ration-factor-source = { $source ->
    [charts] comme dans des tables vétérinaires publiées, secondaire ; simple point de départ
    [home_dogs] comme dans des tables vétérinaires publiées, secondaire ; des chiens de famille au poids idéal utilisaient 1,83 (Divol & Priymenko 2017) ; simple point de départ
    [slimming] 80 % de l’énergie au repos au poids idéal, recommandations AAHA 2014 ; simple point de départ
    [growth_half] FEDIAF 2021, sous la moitié du poids adulte ; simple point de départ
    [growth_most] FEDIAF 2021, de la moitié aux quatre cinquièmes du poids adulte ; simple point de départ
   *[growth_end] FEDIAF 2021, à partir des quatre cinquièmes du poids adulte ; simple point de départ
}
ration-no-formula = il n’y a pas de formule ici { $whom } : demande à un vétérinaire combien { $name } peut avoir par jour et saisis-le
ration-weight = { $weight } n’est pas un poids { $whom } ({ $low } à { $high }) : vérifie-le, ou demande à un vétérinaire combien { $name } peut avoir par jour et saisis-le
ration-stage = « { $stage } » n’est pas un âge de la vie { $whom } : choisis-en un autre, ou demande à un vétérinaire combien { $name } peut avoir par jour et saisis-le
ration-no-weight = le poids de { $name } n’est pas connu : pèse { $name }, ou demande à un vétérinaire combien { $name } peut avoir par jour et saisis-le
ration-no-grown-weight = le besoin d’un chiot dépend de sa part du poids adulte, et celui de { $name } n’est pas connu : demande à l’éleveur ou à un vétérinaire et saisis-le, ou saisis combien { $name } peut avoir par jour selon un vétérinaire
ration-outgrown = { $weight } dépasse les { $grown } attendus de { $name } à l’âge adulte : corrige l’un des deux, choisis un âge adulte, ou demande à un vétérinaire combien { $name } peut avoir par jour et saisis-le
ration-no-stage = l’âge de la vie de { $name } n’est pas connu : choisis-en un, ou demande à un vétérinaire combien { $name } peut avoir par jour et saisis-le
