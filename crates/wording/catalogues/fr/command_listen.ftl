command-listen-add-word = { $why }. Ajoute-le d’abord sur la page Mots
command-listen-the-recording = l’enregistrement
command-listen-name-a-file = nomme un fichier son, ou dis --record SECONDS
command-listen-enrolled = « { $word } » : rangé.
command-listen-enrolled-before = « { $word } » : cet enregistrement même était déjà rangé.
command-listen-clip-too-large = { $file } : { $bytes } octets ; l’enregistrement d’un mot peut en avoir { $most }
command-listen-no-findings = Rien à redire.
command-listen-quoted = « { $word } »
command-listen-without = Sans enregistrement, donc pas écoutés : { $words }.
command-listen-record-range = --record accepte de { $least } à { $most } secondes
command-listen-recording = Enregistrement de { $seconds } par « { $microphone } ». Fais sonner le bouton une fois, doucement et hors de portée d’oreille de l’animal.
command-listen-sound-lost = une partie du son s’est perdue, la machine étant trop occupée ; enregistre de nouveau
command-listen-nothing-heard = rien n’a été entendu ; fais sonner le bouton pendant l’enregistrement
command-listen-lost = le micro « { $microphone } » est perdu : { $why }
command-listen-lost-driver = le micro « { $microphone } » est perdu : son pilote s’est arrêté
command-listen-lost-silent = le micro « { $microphone } » est perdu : aucun son depuis { $seconds } s ; est-il encore branché ?
command-listen-built-without =
    ce programme a été construit sans le micro. Soit envoie-lui le son d’un enregistreur :
    { "  " }arecord -q -f S16_LE -r 16000 -c 1 -t raw | sayso listen ... --pcm s16le --rate 16000 --channels 1 -
    soit construis-le avec le micro (sous Linux avec les en-têtes d’ALSA, comme libasound2-dev chez Debian) :
    { "  " }cargo build --release -p sayso --features microphone
command-listen-no-microphone = cette machine n’a pas de micro, ou n’en donne pas à ce programme ; branches-en un, ou autorise-le, et recommence
command-listen-not-opened = le micro ne s’ouvre pas : { $why }
command-listen-samples = le micro « { $microphone } » donne des échantillons en { $samples }, qui ne se lisent pas
command-listen-give-what = donne --data DIR ou --clips DIR
command-listen-input-alone = l’entrée standard (-) s’écoute seule, sans autres fichiers
command-listen-input-samples = l’entrée standard contient de simples échantillons : dis lesquels, comme --pcm s16le --rate 16000 --channels 1
command-listen-pcm-for-input = --pcm est pour l’entrée standard ; donne - comme fichier
command-listen-one-file = avec --log donne un fichier à la fois, car chacun a commencé à son heure
command-listen-when-began = avec --log dis quand l’enregistrement a commencé, comme --started-at 2026-03-01T18:30:00Z
command-listen-checkpoint-one = --checkpoint va avec un seul fichier
command-listen-least-range = --least est une certitude de 0 à 1
command-listen-other-checkpoint = { $file } appartient à un autre fichier son ou à d’autres enregistrements ; supprime-le pour recommencer
command-listen-no-checkpoint = { $file } n’est pas un point de reprise de ce programme ({ $why })
command-listen-going-on = { $file } : reprise à { $seconds } s ; ce qui a été entendu avant n’est pas réimprimé
command-listen-progress = { $file } : { $share } lu, { $seconds } s examinées, appuis : { $n }
command-listen-damaged-parts = { $file } : { $n ->
    [one] { $n } partie abîmée a été laissée de côté ; les heures suivantes peuvent être trop tôt
   *[other] { $n } parties abîmées ont été laissées de côté ; les heures suivantes peuvent être trop tôt
}
command-listen-listening = Écoute par « { $microphone } » ({ $rate } Hz, canaux : { $channels }) de { $n ->
    [one] { $n } mot
   *[other] { $n } mots
}. Le son n’est pas gardé. Ctrl-C y met fin.
command-listen-missed = { $seconds } s de son se sont perdues, la machine étant trop occupée ; les appuis qui s’y trouvaient n’ont pas été entendus.
command-listen-no-ctrl-c = sayso : Ctrl-C n’est pas vu ({ $why }) ; arrête le programme autrement
command-listen-cut-off = l’entrée standard s’est arrêtée au milieu d’un échantillon : coupée, ou pas { $samples } ?
command-listen-left-out = « { $word } » n’est pas écouté : { $why }
command-listen-nothing-enrolled = aucun enregistrement n’est rangé, donc il n’y a rien à écouter ; voir `sayso enrol --help`
command-listen-second-clip = { $file } : un deuxième enregistrement de « { $word } »
command-listen-no-sound-files = { $dir } : aucun fichier son ({ $endings }) dedans
command-listen-presses-heard = { $n ->
    [one] { $n } appui entendu
   *[other] { $n } appuis entendus
} en { $minutes } minutes.
command-listen-logged = Dont notés : { $n } ; déjà dans le journal : { $known }.
command-listen-slowed = « { $word } » a ralenti de { $slowed } (erreur type { $error }, { $n } appuis ; probabilité qu’il ralentisse plus que des boutons sains : { $probability }) : sa pile s’épuise peut-être.
command-listen-never = Pas entendus du tout (autres mots : { $n ->
    [1] une fois
   *[other] { $n } fois
}) : { $words }. Personne ne les a peut-être pressés ; une pile vide ou un vieil enregistrement sont possibles aussi.
command-listen-home = Maison
command-listen-begun = Un nouveau carnet a été commencé dans { $folder }. Les heures sont en UTC tant que sa page Personnes n’indique pas de fuseau horaire.
command-listen-added = « { $word } » est un nouveau mot de ce carnet.
