client-kit-first = D’abord, accepte ci-dessus et indique ce que dit le bouton, quel genre de bouton c’est et quel téléphone c’est.
client-kit-clip = Enregistrer le bouton de près
client-kit-clip-now = Appuie une fois sur le bouton. Encore { $seconds } s.
client-kit-clip-kept = « { $word } » de près : { $seconds } s, silence coupé aux deux bouts.
client-kit-clip-first = D’abord, enregistre « { $word } » de près.
client-kit-presses = Enregistrer { $count } appuis
client-kit-without = Enregistrer 3 minutes sans appui
client-kit-press-now = Appuie
client-kit-tap-now = Appuie sur le bouton et touche « { $mark } » au même moment.
client-kit-mark = Appuyé
client-kit-marked = { $count ->
    [0] Aucun appui marqué pour l’instant.
    [one] { $count } appui marqué.
   *[other] { $count } appuis marqués.
}
client-kit-no-press = N’appuie sur rien pendant encore { $seconds } s.
client-kit-stop = Arrêter et garder
client-kit-interrupted = Le son a été interrompu et cet enregistrement a été écarté. Garde la page devant et recommence.
client-kit-too-short = Trop court pour servir ; il a été écarté.
client-kit-take = « { $word } », { $metres } m, { $room }, { $noise } : { $count ->
    [one] { $count } appui
   *[other] { $count } appuis
} en { $seconds } s
client-kit-take-without = Sans appui, { $metres } m, { $room }, { $noise } : { $seconds } s
client-kit-undo = Annuler
client-kit-save = Enregistrer le fichier
client-kit-nothing = Rien à enregistrer encore : enregistre le bouton de près, puis des appuis.
client-kit-saved = Enregistré sous { $file } ({ $megabytes } Mo). Il est seulement sur cet appareil ; rien n’a été envoyé.
