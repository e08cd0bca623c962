log-title = Journal
log-judge-heard = Juger les appuis entendus par un micro
log-about = Tout ce qui est noté pour { $name }, le plus récent d’abord. Rien n’est jamais effacé : ce qui est annulé ou modifié garde sa première trace.
log-filter = Choisir quoi voir
log-filtered = Affiché : { $what }
log-day = Jour
log-kind = Type
log-word = Mot
log-person = Noté par
log-any = tous
log-show = Afficher
log-show-all = Tout afficher
log-kind-name = { $kind ->
    [presses] appuis
    [answers] réponses
    [sessions] séances
    [invitations] invitations et séries
    [signs] signes
    [food] nourriture
    [likes] tests de préférences
    [checks] vérifications, échanges, essais
    [cards] fiches, tableau et règles
   *[other] autres notes
}
log-nothing = Rien n’est encore noté.
log-nothing-such = Rien de tel n’est noté ici.
log-newest = Les plus récents
log-newer = Plus récents
log-older = Plus anciens
log-pages = Pages du journal
log-undone = Annulé : { $what }
log-edited = Modifié. D’abord noté : { $what }, { $when }
log-when = { $day }, { $time }
log-noted = { $when }{ $who ->
    [none] { "" }
   *[other] { " " }· { $who }
}{ $how ->
    [heard] { " " }· entendu
    [device] { " " }· d’un appareil
    [import] { " " }· importé
   *[other] { "" }
}{ $twice ->
    [no] { "" }
   *[other] { "\u202F" }; aussi touché, donc compté une fois
}
log-edit = Modifier
log-edit-this = Modifier : { $what }, { $when }
log-undo = Annuler
log-undo-this = Annuler : { $what }, { $when }
log-bring-back = Rétablir
log-bring-back-this = Rétablir : { $what }, { $when }
log-time = Heure
log-time-zone = à { $zone }
log-time-wrong = L’heure { $what }.
log-time-form = doit être une heure comme 18:30 ou 18:30:05
log-time-ahead = est à venir ; elle doit être maintenant ou avant
log-who-pressed = Qui a appuyé
log-by = { $by ->
    [animal] { $name }
    [person] une personne, pour montrer
   *[other] personne n’a vu
}
log-meant = Semblait-ce voulu ?
log-accident = { $accident ->
    [no] cela semblait voulu
    [likely] cela semblait un faux pas
   *[other] on ne sait pas
}
log-how-answered = Comment on a répondu
log-what-then = Ce que { $name } a fait ensuite
log-how-strong = De quelle force
log-took = { $name } a-t-il pris la chose ?
log-yes = oui
log-no = non
log-not-seen = pas vu
log-back = Retour au journal
log-ahead = { $n ->
    [1] 1 événement est daté après maintenant.
   *[other] { $n } événements sont datés après maintenant.
}
log-ahead-why = { $n ->
    [1] Il est du { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
   *[other] Le premier est du { $when }{ $who ->
        [none] { "" }
       *[other] { " " }· { $who }
    }.
} L’horloge de l’appareil qui l’a noté avançait. Fiches et enregistrements comptent déjà ; le reste compte à partir de son heure. Règle cette horloge et modifie les heures dans le journal.
log-no-such-event = Le journal n’a pas cet événement.
log-took-choice = doit être oui, non ou laissé ouvert
log-id-without-time = L’adresse nomme un id, mais pas avant quelle heure : ?before=<time>&id=<id>
log-on-its-own-page = se corrige sur sa propre page : les fiches sous Personnes, l’accord sous Qui peut voir ceci
log-about-server = Tout ce qui est noté pour { $name }, le plus récent d’abord. Ce qui est annulé ou modifié garde sa première note. Tout ne part que si le foyer entier est effacé.
