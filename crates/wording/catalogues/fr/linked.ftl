# Un carnet à la maison relié à son foyer sur un serveur : la page du carnet et celles du serveur.
linked-title = Relié à un serveur
linked-what = Un lien garde pareils ce carnet et son foyer sur un serveur. Ce que tu écris ici va là-bas. Ce qui s’écrit là-bas vient ici, comme les notes d’un coach.
linked-what-offline = Sans réseau, ce carnet marche comme toujours. Ce qui attend part quand le serveur répond de nouveau.
linked-step-code = Sur le serveur, ouvre « Qui peut voir ceci », puis « Carnets à la maison », et fais un code.
linked-step-open = Dans le carnet à la maison, ouvre Personnes, puis « Relié à un serveur ».
linked-step-paste = Colle là tout le texte avec le code.
linked-step-yes = Regarde ce qui va où, et dis oui. Avant cela, rien de ce qui est écrit dans le carnet n’est envoyé ; le serveur apprend seulement le nom du foyer.
linked-link = Texte du serveur
linked-link-hint = l’adresse avec le code, comme https://sayso.example/linked#…
linked-begin = Relier
linked-with = Relié à « { $home } » sur { $url }.
linked-unnamed = un foyer encore sans nom
linked-not-yet = Rien de ce qui est écrit ici n’a encore été envoyé ; le serveur connaît ce carnet par le nom du foyer. Dis ci-dessous ce qui peut partir.
linked-not-yet-command = Rien n’a encore été envoyé. Pour dire oui : sayso link --yes, avec --pictures et --recordings si cela peut partir aussi.
linked-goes = Ce qui va là-bas
linked-goes-all = Tout ce qui est écrit dans ce carnet va là-bas, aussi ce qui l’était avant : journal, fiches, rations, remarques.
linked-goes-who = Ceux qui tiennent le foyer là-bas et ses membres le voient. Qui d’autre le voit se décide là-bas seulement, par un accord.
linked-coaches = Coachs qui en voient quelque chose là-bas en ce moment : { $names }.
linked-no-coach = Aucun coach n’en voit quoi que ce soit là-bas en ce moment.
linked-pictures = Les images aussi
linked-recordings = Les enregistrements des boutons aussi
linked-sound-stays = Le son autour des appuis ne quitte jamais cette machine.
linked-yes = Oui, l’envoyer là-bas
linked-agreed = Les deux étaient pareils pour la dernière fois : { $when }.
linked-never-agreed = Les deux n’ont pas encore été pareils.
linked-waits = { $count ->
    [0] Rien n’attend d’être envoyé.
    [1] Une entrée attend d’être envoyée.
   *[other] { $count } entrées attendent d’être envoyées.
}
linked-moved = Entrées envoyées : { $sent }, reçues : { $received }. Images et enregistrements : { $media }.
linked-hinders = { $kind ->
    [away] Le serveur ne répond pas. Un nouvel essai se fait tout seul.
    [here] Ce carnet ne peut être lu ou écrit en ce moment. Un nouvel essai se fait tout seul.
   *[strange] Le serveur a répondu autrement que prévu. Un nouvel essai se fait tout seul.
}
linked-unreached = { $kind ->
    [away] Le serveur ne répond pas. Est-il allumé, et est-ce bien l’adresse qu’il montre, avec http:// ou https:// devant ?
    [here] Ce carnet ne peut être lu ou écrit en ce moment.
   *[strange] Ce qui répond là-bas n’est pas un serveur de ce programme. Vérifie l’adresse : c’est celle que montre le serveur.
}
linked-stopped = { $why ->
    [left] Le foyer a quitté ce serveur et y a été effacé. Plus rien n’est envoyé, et rien n’est perdu ici.
   *[ended] Le serveur ne le prend plus : le lien y a été terminé, ou la personne qui l’a fait ne tient plus le foyer. Rien n’est perdu ici.
}
linked-again = Réessayer depuis le début
linked-held-title = Pas dans le foyer du serveur
linked-lacks-title = Pas dans ce carnet
linked-held = { $why ->
    [differs] { $count ->
        [one] { $count } entrée diffère entre les deux ; chacun garde la sienne
       *[other] { $count } entrées diffèrent entre les deux ; chacun garde les siennes
    }
    [consent] { $count ->
        [one] { $count } entrée porte sur un accord ; il se donne et se retire sur le serveur même
       *[other] { $count } entrées portent sur des accords ; ils se donnent et se retirent sur le serveur même
    }
    [coach] { $count ->
        [one] { $count } entrée est au nom d’un coach ou d’un compte ; cela s’écrit sur le serveur même
       *[other] { $count } entrées sont au nom d’un coach ou d’un compte ; cela s’écrit sur le serveur même
    }
    [lacks] { $count ->
        [one] { $count } entrée porte sur une autre qui n’est pas là-bas
       *[other] { $count } entrées portent sur d’autres qui ne sont pas là-bas
    }
    [ahead] { $count ->
        [one] { $count } entrée est datée de plus d’un jour en avance ; elle part quand ce jour est venu
       *[other] { $count } entrées sont datées de plus d’un jour en avance ; elles partent quand ce jour est venu
    }
    [unread] { $count ->
        [one] { $count } entrée est d’un genre que l’autre côté ne connaît pas ; mets à jour le plus ancien des deux
       *[other] { $count } entrées sont de genres que l’autre côté ne connaît pas ; mets à jour le plus ancien des deux
    }
    [other_home] { $count ->
        [one] { $count } entrée est d’un autre foyer
       *[other] { $count } entrées sont d’un autre foyer
    }
   *[unsound] { $count ->
        [one] { $count } entrée n’est pas admise par les règles de l’autre côté
       *[other] { $count } entrées ne sont pas admises par les règles de l’autre côté
    }
}
linked-which = Lesquelles
linked-unlinking = Défaire le lien
linked-unlinking-what = Plus rien n’est envoyé ni cherché. Ce que chaque côté a, il le garde.
linked-unlink = Délier ce carnet
linked-ended = Ce carnet est délié. Ce qui est ici reste ici, et ce qui est sur le serveur y reste.
linked-not-told = Le serveur n’a pas pu être prévenu. Termine le lien là-bas aussi : « Qui peut voir ceci », puis « Carnets à la maison ».
linked-not-linked = Ce carnet n’est pas relié.
linked-no-address = « { $text } » n’est pas ce que montre un serveur. Colle-le en entier, de https:// à la fin du code.
linked-unsafe-address = { $url } n’est pas en https : d’autres pourraient lire ce qui y est envoyé. Demande à qui tient le serveur.
linked-damaged = { $file } ne contient pas de lien ({ $why }). Délie ici et relie de nouveau ; rien n’est perdu dans le carnet.
linked-already = Ce carnet est déjà relié, à { $url }. Délie-le d’abord.
linked-bad-code = Ce code ne vaut pas, ou plus. Fais-en un nouveau sur le serveur.
linked-other-home = Le foyer sur le serveur contient d’autres entrées que ce carnet, et deux foyers ne se mélangent pas. Choisis celui où ce carnet a emménagé, ou demande-en un nouveau à qui gère le serveur. L’accord peut déjà y être donné ; laisse le reste vide jusqu’à ce que le carnet soit relié.
linked-too-often = Trop d’essais. Attends un quart d’heure.
linked-notebooks = Carnets à la maison
linked-notebooks-what = Un carnet que quelqu’un tient sur une machine à la maison peut être relié à ce foyer. Il contient alors tout ce qui est ici, et apporte ce qui y est écrit.
linked-no-notebook = Aucun carnet n’est relié.
linked-how-many = { $count ->
    [0] Aucun carnet à la maison n’est relié.
    [1] Un carnet à la maison est relié : il contient tout ce qui est écrit ici.
   *[other] { $count } carnets à la maison sont reliés : chacun contient tout ce qui est écrit ici.
}
linked-see = Voir et terminer les liens
linked-nameless = Un carnet sans nom
linked-times = Code utilisé : { $linked }. Dernières nouvelles : { $heard }. Ce qui s’écrit à la maison arrive dès que quelqu’un y a dit oui.
linked-make-code = Faire un code
linked-code-what = Le code relie un carnet, une fois, pendant une heure.
linked-code-sees = Le carnet lit tout dans ce foyer. Ce qui vient de lui n’ouvre ce foyer à personne : l’accord se donne ici seulement.
linked-code-holds = Ce foyer contient déjà des entrées. Seul un carnet vide, ou celui qui a emménagé ici, peut y être relié.
linked-code-whoever = Qui a le code peut lire tout ce foyer. Ne le donne à personne d’autre qu’à toi.
linked-code = Le code
linked-code-once = Porte-le maintenant au carnet. Il n’est plus montré ensuite.
linked-qr = Le texte avec le code, en code QR
linked-shown = Ceci va dans un carnet
linked-shown-what = Ce texte relie un carnet à la maison à un foyer de ce serveur. L’ouvrir ne fait rien à lui seul.
linked-was-with = Était relié à « { $home } » sur { $url }.
linked-after-stopped = Délie-le ici. Pour continuer, fais un nouveau code sur le serveur et relie de nouveau.
linked-silent = Quelque chose attend, et le serveur n’a pas répondu depuis { $when }.
linked-as-said = Ce qui a été dit
linked-coaches-unknown = On ne sait pas encore quels coachs en voient quelque chose là-bas : le serveur ne l’a pas dit.
linked-comes = { $count ->
    [1] Une entrée qui est là-bas vient ici.
   *[other] { $count } entrées qui sont là-bas viennent ici.
}
linked-never-went = { $count ->
    [1] Une entrée de ce carnet n’y est jamais arrivée.
   *[other] { $count } entrées de ce carnet n’y sont jamais arrivées.
}
