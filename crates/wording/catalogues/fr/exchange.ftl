exchange-title = Fichiers : entrer et sortir
exchange-title-taken = Repris
exchange-title-look = Regarde avant de le reprendre
exchange-gone = Ce fichier n’est plus gardé ici. Choisis-le à nouveau.
exchange-bring = Faire entrer un fichier
exchange-bring-intro = Tu vois d’abord ce qu’il contient. Rien n’est repris avant que tu le dises, et rien de ce qui est ici n’est changé ni perdu.
exchange-file = Le fichier
exchange-file-hint = Un tableau (.csv), des lignes JSON (.jsonl), une archive avec enregistrements (.tar) ou une sauvegarde (.sayso) ; { $most } MiB au plus
exchange-file-hint-server = Un tableau (.csv), des lignes JSON (.jsonl) ou une archive avec enregistrements (.tar) ; { $most } MiB au plus
exchange-look = Le regarder
exchange-columns = Ce qu’un tableau peut contenir, et par quelles colonnes : { $page }.
exchange-columns-title = Les fichiers en détail
exchange-out = Tout sortir
exchange-out-intro = Chacun contient chaque entrée telle qu’elle a d’abord été notée. Garde les copies là où toi seul peux les lire : elles racontent tes journées.
exchange-backup = Sauvegarde
exchange-backup-hint = entrées et enregistrements, avec contrôle d’intégrité ; à garder et à reprendre
exchange-backup-save = Enregistrer une sauvegarde
exchange-archive = Archive
exchange-archive-hint = entrées et enregistrements en fichiers simples que tout système ouvre
exchange-archive-save = Enregistrer une archive
exchange-table = Tableau
exchange-table-hint = entrées seules, pour un tableur (CSV)
exchange-table-save = Enregistrer un tableau
exchange-lines = Lignes JSON
exchange-lines-hint = entrées seules, pour un autre programme
exchange-lines-save = Enregistrer les lignes
exchange-to-people = Retour aux personnes
exchange-begin-new = Commencer plutôt un nouveau carnet
exchange-several-box = Commencer avec tous dans un seul carnet
exchange-other-box = Reprendre aussi un autre foyer
exchange-leave-out-box = Laisser de côté les lignes fautives
exchange-leave-out-hint = { $count ->
    [1] une ligne n’entrera pas
   *[other] { $count } lignes n’entreront pas
}
exchange-nothing-taken = « { $name } » : rien n’en a encore été repris.
exchange-several = Plusieurs foyers
exchange-several-intro = Ce carnet est vide, et le fichier contient plusieurs foyers : { $homes }.
exchange-another = Un autre foyer
exchange-another-intro = Le fichier contient des entrées d’un foyer que ce carnet n’a pas : { $homes }.
exchange-for-good = Chaque foyer garde ses animaux, ses mots et ses chiffres, mais une fois dans un même carnet ils ne peuvent plus être séparés.
exchange-faults = Fautes
exchange-faults-intro = Le mieux est de les corriger dans le fichier et de le rapporter : les lignes déjà entrées sont alors connues.
exchange-take-in = Le reprendre
exchange-nothing-new = Il n’y a rien à reprendre.
exchange-away = Ne pas le reprendre
exchange-rows = Lignes
exchange-new = Nouvelles
exchange-known = Déjà connues
exchange-other-id = Une autre entrée a leur identifiant
exchange-other-faults = Avec d’autres fautes
exchange-recordings = Enregistrements
exchange-days = Jours
exchange-from-to = { $from } à { $to }
exchange-by-kind = Nouvelles entrées par sorte
exchange-later = { $count ->
    [1] Une entrée de sorte { $kind } : une version plus récente l’a écrite. Elle est conservée, mais pas montrée. Mets ce programme à jour.
   *[other] { $count } entrées de sorte { $kind } : une version plus récente les a écrites. Elles sont conservées, mais pas montrées. Mets ce programme à jour.
}
exchange-and-more = Et { $count } de plus.
exchange-times = { $count ->
    [1] une fois
   *[other] { $count } fois
}
exchange-fault = { $times }{ $place } : attendu { $wanted }.
exchange-fault-found = { $times }{ $place } : trouvé « { $found } » ; attendu { $wanted }.
exchange-fault-found-one-of = { $times }{ $place } : trouvé par exemple « { $found } » ; attendu { $wanted }.
exchange-fault-said = { $times }{ $place } : { $what }.
exchange-in-lines = { $count ->
    [1] (ligne { $lines })
   *[other] (lignes { $lines })
}
exchange-in-more-lines = (lignes { $lines } et d’autres)
exchange-whose = À qui elles sont
exchange-unnamed = Un foyer sans nom ({ $id })
exchange-share-new = { $count ->
    [one] { $count } nouvelle
   *[other] { $count } nouvelles
}
exchange-share-backup = { $count } dans la sauvegarde
exchange-not-here = { $share }, pas dans ce carnet
exchange-new-events = Nouvelles entrées
exchange-other-content = Autre contenu ici
exchange-unsound = Défectueuses
exchange-new-recordings = Nouveaux enregistrements
exchange-known-recordings = Enregistrements connus
exchange-damaged-recordings = Enregistrements abîmés
exchange-conflicts = Là où une entrée d’ici diffère de celle de la sauvegarde, celle d’ici reste.
exchange-no-digest = Elle a été faite par une version antérieure et ne porte pas d’empreinte : un dégât a pu passer inaperçu.
exchange-report = « { $name } » : { $counts }. Le fichier lui-même n’est pas gardé ici.
exchange-counts = { $count ->
    [1] une entrée nouvelle, { $known } déjà connues
   *[other] { $count } entrées nouvelles, { $known } déjà connues
}
exchange-counts-recordings = { $count ->
    [1] un enregistrement nouveau, { $known } déjà connus
   *[other] { $count } enregistrements nouveaux, { $known } déjà connus
}
exchange-damaged = { $count ->
    [1] Un enregistrement est abîmé et laissé de côté.
   *[other] { $count } enregistrements sont abîmés et laissés de côté.
}
exchange-kept-here = { $count ->
    [1] Une entrée d’ici diffère de celle de la sauvegarde. Celle d’ici a été gardée.
   *[other] { $count } entrées d’ici diffèrent de celles de la sauvegarde. Celles d’ici ont été gardées.
}
exchange-unsound-left = { $count ->
    [1] Laissée de côté, défectueuse lors de la sauvegarde : une entrée.
   *[other] Laissées de côté, défectueuses lors de la sauvegarde : { $count } entrées.
}
exchange-another-file = Un autre fichier
exchange-nameless = le fichier
exchange-moves-in = Le fichier est le carnet d’un autre foyer ({ $home }). Ses notes deviennent celles de ce foyer, avec leurs identifiants. Dès lors, n’écris plus qu’ici : ce qui s’ajoute ensuite à l’ancien carnet ne vient que si tu apportes son fichier encore une fois.
exchange-diary = Lu comme un journal
exchange-diary-intro = Ce tableau a ses propres colonnes. Voici comment elles sont lues ; si c’est faux, ne le reprends pas.
exchange-diary-column = { $part ->
    [day] « { $column } » : le jour
    [time] « { $column } » : l’heure
    [word] « { $column } » : le mot sur lequel l’animal a appuyé
    [who] « { $column } » : quel animal ; pour une remarque, aussi quelle personne
   *[note] « { $column } » : une remarque
}
exchange-diary-rules = Chaque mot compte comme un appui de l’animal, sans dire s’il était voulu. Un jour sans heure est mis à midi.
exchange-diary-first = Un journal a d’abord besoin de l’animal et de ses mots. Commence par eux, puis apporte ce fichier sous « Fichiers : entrer et sortir ».
exchange-help = À quoi peut ressembler un tableau
exchange-help-found = Colonnes trouvées : { $columns }.
exchange-help-wanted = Il faut un jour ou une heure, et un mot ou une remarque. Des jours comme 2026-03-01, des heures comme 18:30. Les mots et les noms tels qu’ils sont ici. Retire les autres colonnes.
exchange-help-save = Enregistrer cet exemple
exchange-help-open = À quoi peut ressembler un journal
exchange-example =
    date,heure,mot,qui,note
    2026-03-01,18:30,manger,Bo,est venu du canapé
    2026-03-02,,,Bo,a dormi toute la journée
