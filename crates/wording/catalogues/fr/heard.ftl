heard-title = Appuis entendus
heard-nothing = Rien n’attend ici.
heard-intro = Un micro dit quel bouton a sonné, pas qui a appuyé. Dis ce que tu as vu ; laisse tel quel ce que personne n’a vu.
heard-did-it-sound = A-t-il sonné ?
heard-did-it-sound-hint = Entendu avec moins de certitude. « N’a pas sonné » l’annule.
heard-who-pressed = Qui a appuyé ?
heard-count = { $title } ({ $count })
heard-listen = Écouter par le micro de cet appareil
heard-log = Ce qui a été annulé reste dans le journal
heard-a-word = un mot
heard-older = { $count ->
    [1] Un plus ancien suit une fois ceux-ci jugés.
   *[other] { $count } plus anciens suivent une fois ceux-ci jugés.
}
heard-chance = probabilité qu’il ait sonné : { $share }
heard-play = Écouter
heard-play-of = le son de { $word }
heard-yes = A sonné, personne n’a vu
heard-no = N’a pas sonné
heard-animal = { $name } a appuyé
heard-person = Une personne a appuyé
heard-not-kept = Le son de cet appui n’est pas gardé.
heard-gone = Aucun appui de ce genre n’attend ici ; il a peut-être été jugé entre-temps.
