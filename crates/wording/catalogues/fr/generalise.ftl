generalise-compares = { $what ->
    [person] Personne
    [room] Pièce
    [time] Temps
    [place] Place du bouton
    [recording] Enregistrement
    [chooser] Qui a choisi le mot
   *[checks] Vérifications
}
generalise-first-weeks = quatre premières semaines
generalise-next-weeks = semaines 5 à 12
generalise-later = plus tard
generalise-after-move = deux semaines après son déplacement
generalise-after-recording = deux semaines après un nouveau
generalise-otherwise = le reste du temps
generalise-drawn = tiré par le carnet
generalise-chosen = choisi par une personne
generalise-blind = à l’aveugle
generalise-open = ouverte : quelqu’un savait
