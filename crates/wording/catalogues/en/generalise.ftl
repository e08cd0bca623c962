# Settings in which a word’s invitations are compared.
generalise-compares = { $what ->
    [person] Person
    [room] Room
    [time] Time
    [place] Place of the button
    [recording] Recording
    [chooser] Who chose the word
   *[checks] Checks
}
generalise-first-weeks = first four weeks
generalise-next-weeks = weeks 5 to 12
generalise-later = later
generalise-after-move = two weeks after it was moved
generalise-after-recording = two weeks after a new one
generalise-otherwise = otherwise
generalise-drawn = drawn by the notebook
generalise-chosen = chosen by a person
generalise-blind = blind
generalise-open = open: somebody knew
