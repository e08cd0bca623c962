advice-topic-welfare = D’abord le bien-être
advice-topic-ration = Nourriture
advice-topic-set-up = Préparer
advice-topic-likes = Préférences
advice-topic-stuck = Bloqué
advice-topic-show = Montrer
advice-topic-invite = Inviter
advice-topic-converse = Répondre
advice-topic-probe = Vérifier
advice-sure-little = une supposition pour l’instant
advice-sure-fairly = assez sûr
advice-sure-very = sûr

advice-cause-hard-to-make-out = Le mot enregistré est peut-être difficile à distinguer
advice-cause-not-wanted = Ce qu’il apporte n’est pas voulu en ce moment
advice-cause-too-little = Trop peu montré
advice-cause-too-late = La chose vient trop tard
advice-cause-avoided = { $name } évite le bouton
advice-cause-time-or-place = L’heure, le lieu ou le bruit
advice-cause-health = { $name } ne va peut-être pas bien
advice-cause-sounds-alike = Il ressemble trop à un autre mot
advice-cause-people-differ = Chacun y répond autrement
advice-bearing-for = les notes vont dans ce sens
advice-bearing-perhaps = possible
advice-bearing-unknown = trop peu de notes pour le dire
advice-bearing-against = les notes disent le contraire

advice-next-rest = Pas de séance pour le moment. Laisse de l’espace à { $name } et réponds aux appuis.
advice-next-session = { $minutes } min au plus : montre { $words }.
advice-next-words-shown = « { $word } » { $times ->
    [one] { $times } fois
   *[other] { $times } fois
}
advice-so-far = { $planned } ({ $shown } sur { $of } montrés jusqu’ici)
advice-next-words-invited = « { $word } » { $times ->
    [one] { $times } fois, en invitant
   *[other] { $times } fois, dont { $invited } en invitant
}
advice-next-answer = Réponds quand { $name } appuie.
advice-held = { $sessions ->
    [1] Une séance aujourd’hui, finie à { $time }
   *[other] { $sessions } séances aujourd’hui, la dernière finie à { $time }
} : { $showings ->
    [0] aucune démonstration
    [1] une démonstration
   *[other] { $showings } démonstrations
}{ $bare ->
    [0] { "" }
    [1] , un appui sans la chose
   *[other] , { $bare } appuis sans la chose
}.
advice-running = Une séance est en cours, depuis { $time }. Va au tableau.
advice-next-pause = Pause jusqu’à { $time }. Après, une autre séance courte est possible, si { $name } en a envie. Réponds quand { $name } appuie.
advice-next-enough = Rien de plus n’est nécessaire aujourd’hui. Réponds quand { $name } appuie.
advice-length-few-sessions = Pratique courante : { $timed ->
    [0] aucune séance chronométrée
    [1] une seule séance chronométrée
   *[other] seulement { $timed } séances chronométrées
} en quatre semaines.
advice-length-few-left = Pratique courante : moins d’un quart des { $timed } séances chronométrées ont été quittées tôt.
advice-length-quarter-left = Dans un quart des { $timed } séances chronométrées, le départ est venu avant { $minutes } min ; finis plus tôt.

advice-lately-first-press = Premier appui spontané de { $name } sur « { $word } », { $day }.
advice-lately-more-presses = « { $word } » : { $now ->
    [1] un appui spontané
   *[other] { $now } appuis spontanés
} en sept jours, { $before } dans les quatre semaines d’avant.
advice-lately-check-passed = Vérification réussie : { $words }, juste { $right } fois sur { $of }.
advice-lately-joined = { $name } a participé à { $joined } séances sur { $of }.
advice-lately-taken = { $name } a pris { $taken } choses données sur { $of }.

advice-lean-left = { $name } choisit plus souvent sa gauche : mélange bien les côtés et continue à tester. Le classement en tient compte.
advice-lean-right = { $name } choisit plus souvent sa droite : mélange bien les côtés et continue à tester. Le classement en tient compte.
advice-lean-too-few = Trop peu de choix pour parler d’un côté préféré.
advice-lean-none = Aucune préférence de côté au-delà du hasard.
advice-known-well-enough = Favoris clairs pour l’instant : { $best } (sûr à { $sure }, { $n ->
    [1] un essai de choix
   *[other] { $n } essais de choix
}).
advice-known-enough-for-now = Pas tranché, mais assez pour l’instant ; meilleurs jusqu’ici : { $best } (sûr à { $sure }, { $n ->
    [1] un essai de choix
   *[other] { $n } essais de choix
}).
advice-known-not-yet = Pas encore clair ; meilleurs jusqu’ici : { $best } (sûr à { $sure }, { $n ->
    [1] un essai de choix
   *[other] { $n } essais de choix
}).
advice-next-pair = C’est la paire qui en dit le plus sur les meilleurs ; les côtés compensent ceux d’avant.

# Where a word stands.
advice-stage-prepare = préparer
advice-stage-show = montrer
advice-stage-invite = inviter
advice-stage-converse = converser
