client-enrol-prove = Appuyer maintenant
client-enrol-prove-now = Appuie une fois sur « { $says } ». Encore { $seconds } s.
client-enrol-judging = Comparaison avec les enregistrements…
client-enrol-heard = Entendu. Prêt.
client-enrol-heard-more = Sûr à { $sure } %, 1 appui.
client-enrol-unsure = Entendu comme « { $says } », mais sûr à { $sure } % seulement. Rapproche l’appareil ou fais plus de calme, puis refais l’essai. Si cela reste ainsi, enregistre à nouveau.
client-enrol-nothing = Rien n’a été entendu. Le micro est-il couvert, ou la pile du bouton vide ? Puis refais l’essai.
client-enrol-too-quiet = Trop faible : seulement { $db } dB au-dessus du bruit de la pièce. Éteins ce qui ronfle ou rapproche l’appareil, puis refais l’essai.
client-enrol-too-far = Trop loin : { $db } dB plus faible que l’enregistrement. Pose l’appareil à moins de trois mètres du tableau, puis refais l’essai.
client-enrol-wrong-speed = Il a joué { $percent } % plus { $way ->
    [slower] lentement
   *[faster] vite
} que l’enregistrement, plus que ce qui est écouté. Vérifie sa pile, puis enregistre le bouton tel qu’il sonne maintenant.
client-enrol-another-word = Entendu comme « { $other } » (sûr à { $sure } %). Si tu as appuyé sur « { $says } », les deux se ressemblent trop, ou un enregistrement est celui de l’autre bouton : enregistre à nouveau.
client-enrol-another-sound = Un son est venu, mais pas celui de cet enregistrement. Était-ce le bouton, et non une voix ? Son mot a peut-être été réenregistré : alors enregistre à nouveau le bouton.
client-enrol-again = Refaire l’essai
client-enrol-skip = Passer
client-enrol-skipped = Pas essayé. Il est écouté quand même ; fais l’essai quand tu veux.
client-enrol-no-way = Ce navigateur n’entend pas par lui-même, et ce carnet ne prend pas de son. Fais l’essai avec un plus récent ; l’enregistrement est gardé.
client-enrol-failed = Impossible d’en juger ({ $why }). Réessaie.
client-enrol-begin = Commencer l’enregistrement
client-enrol-running = Appuie maintenant : « { $next } », puis deux secondes de calme. { $heard } sur { $words } jusqu’ici ; encore { $seconds } s.
client-enrol-running-all = { $heard } sons pour { $words } mots. Arrête maintenant.
client-enrol-end = C’était le dernier
client-enrol-cutting = Découpe aux pauses…
client-enrol-none = Aucun son ne s’est détaché. Tiens l’appareil à une largeur de main de chaque bouton, au calme, et recommence.
client-enrol-match = Autant de sons que de mots ({ $words }). Écoute chacun, puis garde-les.
client-enrol-fewer = Moins de sons ({ $sounds }) que de mots ({ $words }). Touche « pas appuyé » là où un mot manque, ou recommence avec des pauses plus longues.
client-enrol-more = Plus de sons ({ $sounds }) que de mots ({ $words }). Touche « Pas un bouton » pour une voix ou un coup ; les noms suivants avancent.
client-enrol-sound = Son { $number }
client-enrol-says = Il dit
client-enrol-no-word = Rien : laissé de côté
client-enrol-drop = Pas un bouton
client-enrol-not-pressed = « { $says } » : pas appuyé
client-enrol-play = Écouter
client-enrol-picture = Image du son, { $seconds } s
client-enrol-beep = Un bip au début a été coupé.
client-enrol-long = Long : deux boutons se sont peut-être enchaînés. Recommence avec des pauses plus longues, ou laisse-le et enregistre ces deux sur leurs fiches.
client-enrol-quiet = Faible : seulement { $db } dB au-dessus du bruit de la pièce. Enregistre-le à nouveau de plus près.
client-enrol-keep = { $count ->
    [1] Garder cet enregistrement
   *[other] Garder ces { $count } enregistrements
}
client-enrol-keep-hint = Les enregistrements en usage de ces mots sont remplacés ; ils restent sur les fiches des mots.
client-enrol-keeping = Enregistrement gardé : { $n } sur { $count }…
client-enrol-not-kept = « { $says } » n’a pas pu être gardé : { $why }
client-enrol-kept = { $count ->
    [1] Un enregistrement est gardé. Fais maintenant l’essai.
   *[other] { $count } enregistrements sont gardés. Fais maintenant l’essai de chacun.
}
client-enrol-next = Suivant : « { $says } »
client-enrol-of = { $n } sur { $count } : « { $says } »
client-enrol-done = Essai fini : { $proved } sur { $count } ont été entendus sûrement.
client-enrol-not-proved = Pas encore entendus sûrement :
client-enrol-start-again = Recommencer
