client-recent-press = { $by ->
    [person] J’ai appuyé sur { $word }
    [animal] { $name } a appuyé sur { $word }
   *[unknown] Appui : { $word }
}
client-recent-stumble = { $press } (maladresse)
client-recent-delivery = { $word } : { $answer }
client-recent-feed = Un morceau de { $food }
client-recent-food = nourriture
client-recent-invited = Invité à { $word } : { $came }
client-recent-came-pressed = appui sur { $word } à { $seconds } s
client-recent-came-without = demandé à sa façon
client-recent-came-nothing = rien pendant l’attente
client-recent-came-left = parti
client-recent-swaps-stopped = Échanges arrêtés
client-recent-asked = Demandé { $word } sans bouton
client-recent-brushed = { $word } frôlé
client-recent-looked-at = Regardé { $word }
client-recent-looked = Regardé le tableau
client-recent-sign = Signe ({ $level }) : { $sign }
client-recent-started = Séance commencée
client-recent-ended = Séance terminée : { $why }
client-recent-joined = Venu
client-recent-left = Parti
client-recent-round = { $calls ->
    [1] Série d’un commencée
   *[other] Série de { $calls } commencée
}
client-recent-drawn = Tiré pour { $word }
client-recent-kept-here = { $time } · gardé ici
client-recent-edit = Modifier
client-recent-edit-this = Modifier : { $what }
client-recent-undo = Annuler
client-recent-another-word = Un autre mot…
client-recent-which-word = Quel mot était-ce ?
client-recent-not-i = C’est { $name } qui a appuyé, pas moi
client-recent-i-did = C’est moi qui ai appuyé
client-recent-it-stumbled = Cela semblait une maladresse
client-recent-it-meant = Cela semblait voulu
client-recent-was-given = C’était donné
client-recent-was-partly = C’était donné en partie
client-recent-was-declined = C’était : pas maintenant
client-recent-was-missed = C’était manqué
client-recent-first-stays = La première note reste visible dans le journal. L’heure et le reste s’y changent.
