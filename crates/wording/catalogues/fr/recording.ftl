recording-make-it-out = Écoute toi-même : fais-le entendre sur son bouton depuis une autre pièce. Si tu ne le prendrais pas pour ta voix en direct en reconnaissant aussitôt le mot, enregistre-le de nouveau, près du micro, clairement et doucement. Les mots enregistrés peuvent être durs à comprendre : des chiens de famille ont répondu à environ { $share } des signaux appris venant de boutons à mots enregistrés, près de { $live } à la voix en direct (17 chiens ; Higaki 2025, chiffres d’un texte de presse). Continue aussi de dire le mot toi-même.
recording-length = Dure { $seconds } s.
recording-loudness = Sonie { $lufs } LUFS.
recording-loudness-over = { $others ->
    [1] Sonie { $lufs } LUFS, { $by } LU au-dessus de l’autre.
   *[other] Sonie { $lufs } LUFS, { $by } LU au-dessus de la médiane des { $others } autres.
}
recording-loudness-under = { $others ->
    [1] Sonie { $lufs } LUFS, { $by } LU au-dessous de l’autre.
   *[other] Sonie { $lufs } LUFS, { $by } LU au-dessous de la médiane des { $others } autres.
}
recording-too-quiet = Trop faible pour que sa sonie soit mesurée.
recording-peak = Point le plus haut { $db } dB sous la pleine échelle.
recording-contrast = Ses parties fortes sont { $db } dB au-dessus des faibles.
recording-most-like = Le plus proche : « { $word } » ({ $like } sur une échelle de 0 à 1).
recording-too-long = Plus de 3 s : enregistre le mot seul, sans longue pause (pratique courante, sans source).
recording-too-short = Moins de 0,3 s : dis le mot en entier, un peu plus lentement ; un son si court se distingue mal des autres (pratique courante, sans source).
recording-clipped = Écrêté, c’est-à-dire enregistré trop fort : éloigne l’appareil ou parle plus doucement, et recommence.
recording-quieter = Plus de 6 LU plus faible que les autres : enregistre-le de nouveau un peu plus près, aussi fort que les autres.
recording-louder = Plus de 6 LU plus fort que les autres : un son fort et soudain près de l’oreille peut effrayer ou blesser. Enregistre-le de nouveau plus doucement avant que l’animal l’entende.
recording-noisy = Du bruit de fond, ou pas de silence aux extrémités : enregistre-le de nouveau dans une pièce calme.
recording-too-like = Presque le même son que « { $other } » : les appuis des deux pourraient être confondus. Vérifie que c’est le bon fichier, ou enregistre l’un des deux avec une autre voix.
