# Pourquoi un fichier son ne peut pas être lu.
sound-files-empty = il est vide : il ne contient aucun son
sound-files-no-sound = il ne contient aucun son
sound-files-other-file = les fichiers { $kind } ne sont pas lus ici ; enregistre-le en WAV ou m4a
sound-files-unknown = ce n’est pas un fichier son qui peut être lu (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM)
sound-files-other-sound = son contenu est codé en { $coding }, qui n’est pas lu ici ; enregistre-le en WAV ou m4a
sound-files-cut-short = il est coupé : { $there } s sur { $promised } s sont là. Rien n’en a été utilisé. Copie-le de nouveau depuis l’appareil qui l’a enregistré ; s’il n’en existe pas plus, enregistre-le en WAV avec un autre programme
sound-files-part-missing = il est coupé : la partie qui dit ce qu’il contient manque. Copie-le de nouveau depuis l’appareil qui l’a enregistré
sound-files-damaged = il est abîmé après { $after } s ; copie-le de nouveau depuis l’appareil qui l’a enregistré
sound-files-no-format = il n’indique pas de fréquence d’échantillonnage ou de nombre de canaux qui ait un sens
sound-files-changes = la fréquence d’échantillonnage ou le nombre de canaux y change ; enregistre-le en WAV avec un autre programme
