errors-too-large = C’est trop grand ; au plus { $bytes } octets passent ici à la fois. Envoie moins à la fois.
errors-not-paired = Cet appareil n’est pas associé au carnet. Ouvre /pair et saisis le code affiché là où Sayso a été lancé.
errors-too-many = { $seconds ->
    [1] Trop d’essais. Attends une seconde, puis réessaie.
   *[other] Trop d’essais. Attends { $seconds } secondes, puis réessaie.
}
errors-no-home = Il n’y a pas encore de foyer ici. Ouvre /start pour en créer un.
errors-disk-full = Le disque du carnet est plein : fais de la place sur la machine où il se trouve. Les appuis sont à l’abri sur le téléphone jusque-là ; ce qu’un formulaire a envoyé n’a pas été gardé.
errors-internal = Quelque chose s’est mal passé ici ; rien de ce que tu as envoyé n’a été gardé. Le détail est dans le journal, là où Sayso a été lancé.
errors-no-such-page = Il n’y a rien à cette adresse.
errors-address-broken = Dans cette adresse, quelque chose manque ou ne peut être lu. Reviens en arrière et suis le lien à nouveau.
errors-no-such-file = Il n’y a pas de fichier de ce nom ici.
errors-no-such-animal = Ce carnet ne connaît pas cet animal.
errors-no-such-lesson = Cette leçon n’existe pas.
errors-not-that-method = Cette adresse n’accepte pas ce genre de demande.
errors-too-large-here = C’est trop grand pour cette adresse ; envoie moins à la fois.
errors-title-not-here = Pas ici
errors-title-check = Vérifie ce que tu as saisi
errors-title-forbidden = Pas permis d’ici
errors-title-wait = Attends un peu
errors-title-full = Le disque est plein
errors-title-unavailable = Pas pour l’instant
errors-title-failed = Cela n’a pas marché
errors-nothing-kept = Rien n’a été gardé. Reviens en arrière, change ceci et renvoie-le :
errors-to-start = Au début
errors-too-many-events = Une demande contient au plus { $most } entrées, pas { $got }.
errors-listing-range = « after » doit valoir 0 ou plus, « limit » de 1 à { $most }.
errors-no-array = Le contenu doit être une liste JSON d’entrées. Il ne se lit plus à partir de la ligne { $line }, colonne { $column }.
errors-only-https = Rien n’est reçu ni dit ici en HTTP non chiffré. Ouvre https://{ $host }/.
errors-other-site = Ceci venait de la page d’un autre site et n’a pas été pris. Utilise la page de Sayso.
errors-other-name = Sayso ne répond pas à ce nom. Ouvre-le par l’adresse de cette machine ou par son nom sur le réseau de la maison.
errors-this-machine-only = Sayso ne répond ici que sur cette machine. Ouvre http://localhost ou http://127.0.0.1 avec son port.
errors-no-sound-taken = Ce carnet ne prend aucun son des pages : qui le fait tourner l’a désactivé. Utilise un navigateur qui peut écouter lui-même.
errors-no-such = Ce carnet ne connaît pas { $what ->
    [check] cette vérification
    [trial] cet essai
    [reward] cette récompense
    [press] cet appui
    [test] ce test
    [word] ce mot
    [rule] cette règle
    [role] ce rôle
    [invitation] cette invitation
    [session] cette session
   *[person] cette personne
}.
errors-body-broke = L’envoi s’est coupé en route. Envoie-le à nouveau.
errors-request-broken = La demande ne peut être lue ({ $why }). Envoie-la à nouveau.
