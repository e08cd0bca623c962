# What a coach and a home say to each other through the work: plans, notes, questions, answers.
talk-title = Convenu
talk-intro = Ce que tu conviens avec ton coach, et comment cela se passe.
talk-intro-coach = Ce que tu as écrit à ce foyer, et ce qui en est sorti.
talk-not-a-vet = Un coach n’est pas vétérinaire. En cas de douleur, de maladie, de peur ou de morsure, demande à un vétérinaire ou à un professionnel qualifié du comportement.
talk-rest = Les séances avec { $name } se reposent d’abord. Rien de ceci n’est à faire tant qu’Aujourd’hui ne le dit pas.
talk-none = Rien ici pour l’instant. Ce qu’un coach propose ou demande arrive ici et sur Aujourd’hui.
talk-none-coach = Tu n’as encore rien écrit à ce foyer.
talk-open = À répondre
talk-open-coach = En attente de réponse
talk-now = Convenu maintenant
talk-before = Avant ({ $count })
talk-from = De { $name }
talk-from-file = Lu dans un fichier : personne ici n’a vu { $name } l’écrire.
talk-plan = Plan jusqu’au { $day } : { $words }
talk-line = { $way ->
    [show] « { $word } » : le montrer, { $dose }
    [offer_in_view] « { $word } » : inviter avec la chose en vue, { $dose }
    [ask_and_point] « { $word } » : demander et montrer du doigt, { $dose }
    [ask_between_two] « { $word } » : demander « ceci ou cela », { $dose }
   *[any] « { $word } » : { $dose }
}
talk-dose = { $minutes ->
    [1] { $minutes } minute
   *[other] { $minutes } minutes
}, { $times ->
    [1] une fois par jour
    [2] deux fois par jour
   *[other] { $times } fois par jour
}
talk-stage = Étape { $stage } pour « { $word } »
talk-word = Un nouveau mot : « { $word } »
talk-likes = Un test de préférences
talk-check = Une vérification de « { $word } »
talk-note = Une note
talk-note-on = Une note sur { $about }
talk-question = Une question
talk-practice = Quelque chose à exercer
talk-question-on = Une question sur { $about }
talk-about-word = « { $word } »
talk-about-session = la séance du { $when }
talk-about-page = la page { $page }
talk-takes-up = Reprend : { $what }
talk-accept = Accepter
talk-noted = Lu
talk-decline = Refuser
talk-not-any-more = Plus maintenant
talk-answer = Répondre
talk-your-answer = Ta réponse
talk-add-words = Ajouter des mots
talk-most = Au plus { $most } caractères.
talk-if-you-like = Si tu veux. Au plus { $most } caractères.
talk-reply = { $reply ->
    [accepted] { $who } a accepté, { $when }
    [declined] { $who } a refusé, { $when }
    [ended] { $who } a mis fin à ceci, { $when }
   *[said] { $who } a répondu, { $when }
}
talk-goes-on = { $name } continue ceci depuis le { $day }.
talk-stands-in = { $name } remplace ici jusqu’au { $day }.
talk-someone = Quelqu’un du foyer
talk-standing = { $standing ->
    [declined] refusé
    [answered] répondu
    [ended] le dernier jour est passé
    [over] terminé sans réponse
   *[withdrawn] retiré
}
talk-since = Depuis le { $since }. Dernier jour : { $last }.
talk-kept = { $way ->
    [show] « { $word } » a été montré
    [any] « { $word } » a été montré ou invité
   *[other] « { $word } » a été invité
} { $on } { $on ->
    [0] jour
    [1] jour
   *[other] jours
} sur { $days }, { $times ->
    [1] une fois
    [2] deux fois
   *[other] { $times } fois
}. Convenu : { $dose }.
talk-not-begun = « { $word } » : aucun jour n’est encore passé. Convenu : { $dose }.
talk-sessions = { $sessions ->
    [1] En { $sessions } séance.
   *[other] En { $sessions } séances.
}
talk-sessions-timed = { $sessions ->
    [1] En { $sessions } séance, { $minutes } min.
   *[other] En { $sessions } séances, { $minutes } min en tout.
}
talk-no-record = { $days ->
    [1] { $days } jour est sans aucune note : on ne peut rien en dire.
   *[other] { $days } jours sont sans aucune note : on ne peut rien en dire.
}
talk-does-it-help = Est-ce que cela aide ?
talk-pressed = « { $word } », appuyé parmi les invitations voulues. Depuis : { $since }. Les { $days } jours d’avant : { $before }.
talk-right = « { $word } », juste parmi les appuis. Depuis : { $since }. Les { $days } jours d’avant : { $before }.
talk-other-causes = D’autres choses changent aussi. Si c’est le plan qui l’a fait, ces chiffres ne le disent pas. Un test d’un changement en dit plus.
talk-to-trial = Prévoir un test d’un changement
talk-do-word = Ajouter le mot
talk-card = De { $name } : { $what }
talk-agreed-with = Convenu avec { $name } : { $what }
talk-card-more = De { $names } : { $count } à répondre
talk-now-with = { $to } est maintenant ton coach, à la place de { $from }. Ce qui est convenu continue.
talk-now-covered = { $to } remplace { $from } jusqu’au { $day }. Ce qui est convenu continue.
talk-row = Convenu : { $dose }
talk-row-waits = Convenu : { $dose }. Cela attend : l’étape d’ici passe d’abord.
talk-row-never = Convenu : { $dose }. Cela ne se fait pas : personne n’attend un mot qui termine les séances.
talk-first-head = Ce qu’Aujourd’hui dit d’abord, avant toute invitation :
talk-first = « { $word } » : Aujourd’hui dit : { $step }. { $why }. Cela passe d’abord ; le plan l’attend.
talk-first-ends = « { $word } » termine les séances : il est montré alors, et personne ne l’attend. Aucune invitation ne peut être prévue.
talk-ends-sessions = { $word } (termine les séances)
talk-write = Écrire à ce foyer
talk-write-about = Écrire à ce sujet
talk-write-again = Écrire encore
talk-take-back = Retirer
talk-end = Mettre fin à ceci
talk-write-intro = Une chose à la fois, sous ton nom : { $name }. Le foyer accepte, refuse ou répond.
talk-which = Quoi ?
talk-kind = { $kind ->
    [plan] Un plan pour quelques jours
    [change] Un changement à essayer
    [stage] Une étape pour un mot
    [word] Un mot à ajouter
    [likes] Un test de préférences
    [check] Une vérification
    [meeting] Une rencontre
    [note] Une note
    [practice] Quelque chose à exercer
   *[question] Une question
}
talk-rests = Un signe fort met les séances avec { $name } au repos. Tant qu’Aujourd’hui ne le lève pas, aucune séance ne peut être proposée. Une note ou une question, oui.
talk-rests-still = ne peut pas être proposé maintenant : un signe fort met les séances avec { $name } au repos
talk-with = Avec { $name }
talk-instead = Plutôt { $name }
talk-something-else = Autre chose
talk-no-words = { $name } n’a pas encore de mot.
talk-line-of = Mot { $number }
talk-more-lines = Plus de mots
talk-field-word = Mot
talk-field-way = Comment
talk-way = { $way ->
    [show] le montrer
    [offer_in_view] inviter, la chose en vue
    [ask_and_point] inviter, demander et montrer du doigt
    [ask_between_two] inviter, « ceci ou cela »
   *[any] comme il convient
}
talk-field-minutes = Minutes
talk-field-times = Fois par jour
talk-field-last-day = Dernier jour
talk-field-stage = Étape
talk-field-says = Ce qu’il dirait
talk-field-about = Sur
talk-about-all = tout
talk-field-text = Avec tes mots
talk-send = Envoyer
talk-no-line = manque ; choisis au moins un mot
talk-way-of-closing = invite à un mot qui termine les séances : personne ne l’attend ; choisis « le montrer » ou « comme il convient »
talk-stage-of-closing = n’est pas pour un mot qui termine les séances : personne ne l’attend ; choisis une autre étape
talk-last-day-wrong = doit être un jour d’aujourd’hui au { $last }
talk-no-such = Il n’y a pas de telle proposition ici.
talk-over = est terminé ou retiré : il n’y a plus rien à accepter ni à refuser
talk-meeting = Une rencontre le { $when }, { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
}
talk-field-day = Jour
talk-field-time = Heure
talk-time-zone = Celle des horloges du foyer ({ $zone }), par exemple 18:30.
talk-time-wrong = doit être une heure à venir qui existe ce jour-là, par exemple 18:30
talk-filled = { $by ->
    [plan] Rempli d’après le dernier plan. Change ce qui ne va plus.
   *[steps] Rempli avec ce qu’Aujourd’hui a choisi. Change ce qui ne va pas.
}
talk-own = Un plan à nous
talk-own-intro = Pour quelques jours avec { $name }, comme vous l’avez décidé à une rencontre ou entre vous. Aujourd’hui le montre à côté de chaque mot.
talk-own-title = Notre plan à nous
talk-own-of-home = Le plan du foyer lui-même
talk-own-make = Faire un plan à nous avec { $name }
talk-own-keep = Garder ce plan
talk-own-stop = Arrêter ce plan
talk-change = À essayer : { $change }
talk-change-words = À essayer pour { $words } : { $change }
talk-field-change = En mots, ce qui change
talk-field-change-hint = nécessaire pour « autre chose » ; pour un autre mot : lequel
talk-field-change-words-hint = rien de coché : tous
talk-change-measured = Ce qui est mesuré
talk-change-how = Si le foyer accepte, un geste de plus tire au sort quand le changement commence. Il est jugé à la fin.
talk-as-trial = { $what } Mesuré : { $measure }.
talk-draw = Tirer les jours au sort
talk-draw-hint = À partir de demain. Seul ce qui vaut ce jour-là est montré. Un signe de stress fort y met fin, et arrêter est toujours juste.
talk-other-numbers = Choisir les nombres
talk-trial-lead = Essayé par tirage :
talk-to-the-trial = Le test
talk-not-agreed = n’est pas convenu : seul ce qui a été accepté peut être essayé
talk-trial-today = Test : { $question } Aujourd’hui { $what }.
talk-hand-over = Un autre coach : { $name }
talk-cover = Remplacement par { $name }, du { $first } au { $last }
talk-for-club = Écrit pour le club : ses autres coachs le lisent, et tes réponses.
talk-for-club-coach = Écrit pour le club : ses autres coachs le lisent, et ce que le foyer répond.
talk-not-read = Ceci, et ce que tu réponds, n’est plus lu par { $name } : le partage a pris fin le { $day }.
talk-not-read-now = Ceci, et ce que tu réponds, n’est pas lu par { $name } : rien n’est partagé maintenant.
talk-today-not-read = Ce que tu fais et réponds ici n’est plus lu par { $name }, depuis le { $day }.
talk-today-not-read-now = Ce que tu fais et réponds ici n’est pas lu par { $name } : rien n’est partagé maintenant.
talk-club-reads = Ce foyer partage avec tout ton club. Ses autres coachs lisent ce que tu écris ici, et les réponses.
talk-opens = se décide sur une page à part : cela ouvre le foyer à quelqu’un
talk-look-and-decide = Regarder et décider
talk-a-keeper-decides = C’est à qui gère le foyer d’en décider.
talk-see-sharing = Qui peut voir ce foyer
talk-field-exercise = Exercice à répéter
talk-field-character = Avec qui
talk-field-lessons = Leçons à lire
talk-practice-none = Aucun
talk-practice-nothing = Choisis un exercice ou une leçon.
talk-rehearse-it = S’y exercer : { $exercise }
talk-is-read = lue
talk-lessons-read = Leçons lues par quelqu’un du foyer : { $read } sur { $of }
talk-shared-count = Répétitions partagées : { $count }
talk-may-share = Après une répétition, tu peux en partager les chiffres avec { $name }. D’une répétition, rien n’est partagé tout seul.
talk-lessons-shown = Leçons que le foyer montre comme lues : { $read } sur { $of }. D’autres peuvent avoir été lues.
talk-lessons-seen = { $club ->
    [yes] { $name } et d’autres coachs du club voient seulement celles de ces leçons que quelqu’un du foyer montre : par une coche près de la leçon, absente au début.
   *[no] { $name } voit seulement celles de ces leçons que quelqu’un du foyer montre : par une coche près de la leçon, absente au début.
}
talk-nothing-to-share = De cette répétition, il n’y a rien à partager : il s’est passé trop peu.
talk-shared = D’une répétition de « { $exercise } » avec { $name }, un animal simulé :
talk-word-there = est déjà sur un bouton ici : propose une étape ou un plan pour lui, ou autre chose
talk-word-is-there = « { $word } » est déjà sur un bouton ici. Vers sa fiche
talk-word-how = Un mot seul : le foyer l’ajoute et choisit ce qu’il apporte. Rien n’est tiré au sort. Sur des boutons ici : { $words }.
talk-word-how-none = Un mot seul : le foyer l’ajoute et choisit ce qu’il apporte. Rien n’est tiré au sort.
talk-word-by-lot = Pour voir par tirage si un autre mot aide, propose un changement à essayer
talk-today-meeting = Rendez-vous avec { $name } : { $when }
talk-today-course-begins = « { $course } » commence { $day }
talk-today-course = « { $course } » : semaine { $week } sur { $weeks }, la suivante dès { $day }
talk-today-course-last = « { $course } » : semaine { $week } sur { $weeks }, jusqu’à { $day }
talk-trial-today-until = Test jusqu’à { $last } : { $question } Aujourd’hui { $what }.
talk-trial-begins = Test dès { $day } : { $question }
talk-in-place = { $name } a écrit ceci à la place de { $of }, qui continue.
talk-cover-reads = Tu remplaces { $name }, qui lit ce que tu écris ici et le continue.
talk-about-word-chart = le graphique « { $chart } » de « { $word } »
talk-about-chart = le graphique « { $chart } »
talk-look-at = Voir : { $what }
talk-write-about-chart = Écrire sur ce graphique
