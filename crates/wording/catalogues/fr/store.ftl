store-not-a-database = { $path } n’est pas un carnet : ce n’est pas même une base de données
store-not-ours = { $path } est une base de données, mais pas un carnet de ce programme
store-newer = { $path } a été écrit par une version plus récente (schéma { $found } ; cette version connaît jusqu’à { $known }) ; mets ce programme à jour
store-corrupt = { $path } est abîmé ({ $what }) ; gardes-en une copie et restaure la dernière sauvegarde dans un nouveau dossier
store-unwritable = impossible d’écrire dans { $path } : { $what }
store-cannot-hold = impossible d’écrire dans { $path } : { $what }. Un fichier apporté, ou fait pour être envoyé, reste un moment dans ce dossier : laisse l’utilisateur qui lance ce programme y écrire
store-full = le disque du carnet est plein ; rien de ceci n’a été gardé. Fais de la place, puis réessaie
store-busy = le carnet est occupé : un autre processus le tenait verrouillé ; réessaie
store-closed = le carnet a été fermé
store-exists = { $path } existe déjà ; choisis un autre nom
store-bad-backup = { $path } ne peut pas servir de sauvegarde : { $what }
store-backup-no-file = ce fichier n’existe pas
store-backup-itself = c’est le carnet lui-même
store-backup-other-digest = elle est abîmée : son contenu n’a pas l’empreinte qu’elle indique
store-backup-no-digest = elle est abîmée : son empreinte manque
store-backup-row = elle est abîmée : { $what }
store-backup-not-the-log = elle ne contient pas ce que contient le carnet ; son disque est peut-être défaillant
store-backup-loose = { $rows ->
    [1] une ligne ne renvoie à rien
   *[other] { $rows } lignes ne renvoient à rien
}
store-bad-archive = { $path } ne peut être lu comme archive d’un carnet : { $what }
store-archive-lacks = il n’y a pas de { $file } dedans
store-unknown-file = { $name } n’est pas de ceux qu’on peut prendre : un tableau (.csv), des lignes de JSON (.jsonl ou .ndjson), une archive (.tar) ou une sauvegarde (.sayso)
store-other-home = { $path } ferait tenir plusieurs foyers à ce carnet. Il apporte { $homes }. Rien n’a été gardé ; pour en garder plusieurs dans un carnet, pour toujours, dis-le
store-home-brings = { $home } : { $events ->
    [1] une entrée
   *[other] { $events } entrées
}
store-bad-clip = enregistrement { $hash } : { $what }
store-clip-not-a-hash = son nom n’est pas fait de 64 chiffres hexadécimaux
store-clip-size = il a { $found } octets ; de 1 à { $most } sont admis
store-clip-other-content = il est abîmé : ses octets n’ont pas cette empreinte ; garde l’enregistrement à nouveau
store-not-imported = rien n’a été importé : { $why }
store-import-faults = { $count ->
    [1] un défaut : { $first }
   *[other] { $count } défauts, le premier : { $first }
}
store-import-other-homes = le fichier ferait tenir plusieurs foyers à ce carnet. Il apporte { $homes }. Pour en garder plusieurs dans un carnet, pour toujours, dis-le
store-import-not-its-own = un foyer sur un serveur n’accepte qu’un fichier d’un seul foyer. Celui-ci apporte { $homes }. Exporte chaque foyer à part et apporte son propre fichier
store-import-not-empty = le fichier est d’un autre foyer ({ $home }), et celui-ci contient déjà des notes. Le carnet d’un autre foyer n’entre que là où rien n’est encore écrit : demandes-en un nouveau à qui tient le serveur
store-import-taken = une autre entrée avec l’id { $id } est déjà gardée
store-database = base de données : { $why }
store-no-home-yet = { $dir } ne contient pas encore de foyer
store-damaged-row = entrée { $id } (ligne { $row }) : { $what }
store-row-no-event = son contenu n’est pas une entrée
store-row-column = sa colonne { $column } dit autre chose que son contenu
store-log-left = il n’est plus là, mais { $file } à côté l’est ; il peut y avoir des entrées dedans
store-other-schema = son schéma { $schema } n’est pas celui que ce programme a fait
store-snapshot = l’instantané de { $home } { $what } ; enlève le fichier { $file } et recommence : le journal fait foi, et un autre en est tiré
store-snapshot-differs = diffère du journal à l’entrée { $id } (ligne { $row })
store-snapshot-more = contient l’entrée { $id }, que le journal n’a pas
store-unreachable = la base de données ne répond pas ({ $what }) ; rien n’indique que ceci soit conservé. Vérifie son adresse et qu’elle fonctionne, puis réessaie
store-old-database = le serveur de base de données est PostgreSQL { $found } ; ce programme demande { $least } ou plus récent
store-newer-database = une version plus récente a créé la base de données (schéma { $found } ; cette version connaît jusqu’à { $known }) ; mets ce programme à jour
store-no-rights = la base de données refuse ce programme ({ $what }) ; que son propriétaire accorde le rôle sayso_server à l’utilisateur qui se connecte
store-not-let-in = la base de données n’admet pas cet utilisateur ({ $what }) ; vérifie l’utilisateur et le mot de passe dans SAYSO_DATABASE (SAYSO_DATABASE_OWNER pour le propriétaire)
store-needs-owner = les tables manquent encore ou sont d’une version antérieure, et l’utilisateur qui se connecte ne peut pas les créer ({ $what }) ; donne leur propriétaire par --database-owner ou dans la variable SAYSO_DATABASE_OWNER
store-database-damaged = la base de données est endommagée ({ $what }) ; gardes-en une copie et remets sa dernière sauvegarde
store-no-such-home = il n’y a pas de foyer { $home } ici
store-home-left = ce foyer est parti : tout ce qui est à lui a été effacé ici, et plus rien n’en est conservé
store-only-folder-backup = un foyer sur un serveur n’a pas de fichier de sauvegarde à lui ; prends-en plutôt une archive
store-only-folder-restore = une sauvegarde ne peut pas être apportée à un serveur ; restaure-la dans un dossier, prends-y une archive et apporte celle-ci
store-only-folder-check = un foyer sur un serveur n’a pas de fichier à vérifier ; prends-en une archive et vérifie-la dans un dossier
store-only-folder-snippets = le son autour des appuis n’est pas conservé sur un serveur ; écoute avec un carnet dans un dossier pour en juger à l’oreille
