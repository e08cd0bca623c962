# Several coaches in a club: another one in the place of one. $from, $to and $name are names of coaches.
colleagues-title = Collègues
colleagues-intro = D’autres coachs de ton club peuvent prendre ta place : pour un foyer, durablement, ou pour tous pendant ton absence. Chaque foyer décide.
colleagues-alone = Il n’y a pas d’autre coach dans ton club.
colleagues-who = Qui ?
colleagues-cover = Pendant ton absence
colleagues-cover-how = Un foyer qui partage avec tout le club reste ouvert à ton collègue tel quel. Les autres sont consultés ; tant qu’ils n’ont pas dit oui, ton collègue n’en voit rien. Cela finit tout seul après le dernier jour.
colleagues-first = Premier jour
colleagues-last = Dernier jour
colleagues-cover-me = Demander aux foyers
colleagues-covered-by = { $name } te remplace, du { $first } au { $last }.
colleagues-you-cover = Tu remplaces { $name }, du { $first } au { $last }.
colleagues-end = Mettre fin
colleagues-day-wrong = doit être un jour du { $first } au { $last }
colleagues-hand-over = Transmettre
colleagues-hand-over-title = Transmettre : { $home }
colleagues-hand-over-how = Le foyer décide. S’il dit oui, ce qu’il partage avec toi finit à ce moment et commence avec ton collègue, qui lit alors ce que toi et le foyer vous êtes écrit.
colleagues-propose = Demander au foyer
colleagues-handed-what = { $from } voudrait transmettre ton foyer à { $to }. Tu décides.
colleagues-cover-what = { $from } est absent du { $first } au { $last }. { $to } remplacerait. Tu décides.
colleagues-ends = Ce qui finit
colleagues-ends-club = Jusqu’ici, tous les coachs du club ont cela. Ensuite { $to } uniquement.
colleagues-begins = Ce qui commence
colleagues-begins-for-days = Ce qui commence, pour ces jours-là seulement
colleagues-reads-on = { $to } lit aussi ce que { $from } et toi vous êtes écrit, continue ce qui est ouvert et peut y mettre fin.
colleagues-done = { $asked ->
    [0] { $asked } foyer a été consulté.
    [1] { $asked } foyer a été consulté.
   *[other] { $asked } foyers ont été consultés.
} { $open ->
    [0] { $open } foyer est déjà ouvert à ton collègue.
    [1] { $open } foyer est déjà ouvert à ton collègue.
   *[other] { $open } foyers sont déjà ouverts à ton collègue.
}
colleagues-reads-back = De retour, { $from } lit ce que { $to } et toi vous êtes écrit ces jours-là.
