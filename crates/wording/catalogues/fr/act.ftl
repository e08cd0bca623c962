act-give-space = Pas de séance pour le moment. Laisse de l’espace et de la distance à { $name } et ne l’attire pas.
act-pause-sessions = Arrête de montrer et d’inviter pendant quelques jours. Continue à répondre aux appuis et n’attire pas { $name }.
act-no-more-today = Plus de séance aujourd’hui. Laisse de l’espace à { $name } et continue à répondre aux appuis.
act-ask-about-threats = Parles-en à un vétérinaire et à un professionnel qualifié du comportement. Fais des séances courtes et arrête au premier signe de tension.
act-ask-about-guarding = Ne prends rien à { $name }. Parles-en à un vétérinaire et à un professionnel qualifié du comportement.
act-ask-about-swallowing = { $today ->
    [yes] Appelle un vétérinaire maintenant.
   *[other] Consulte un vétérinaire et mets les petits objets hors de portée.
}
act-shorten-sessions = Fais des séances bien plus courtes et finis-les avant que { $name } veuille partir. Essaie une autre récompense.
act-ease-sessions = Change quelque chose avant la prochaine séance : un moment ou un lieu plus calme, moins de mots, plus de distance.
act-look-at-health = Regarde d’abord { $name }, pas l’entraînement : manger, boire, besoins, sommeil, mouvement.
act-stop-food = Plus de récompense à manger aujourd’hui. Prends le jeu, le contact ou l’exploration.
act-list-rewards = Qu’est-ce que { $name } pourrait aimer ? Ajoute au moins deux choses : nourriture, jeu, contact, exploration, repos.
act-test-likes = Fais un test de préférences.
act-choose-first-words = Choisis deux ou trois premiers mots.
act-set-allowance = Fixe combien { $name } peut manger par jour.
act-fill-card = Complète la fiche de « { $word } » : { $lacks }.
act-lack-reward = ce qu’il apporte
act-lack-answer = comment tous y répondent
act-lack-not-now = ce que vous dites pour « pas maintenant »
act-check-batteries = Vérifie la pile de { $words } : un son qui ralentit annonce souvent une pile faible.
act-check-silent = Vérifie la pile et le bouton de { $words } là où aucun animal n’entend. Laisse si le mot ne sert pas en ce moment.
act-retest-likes = Fais un court test de préférences avant les prochaines séances.
act-mend-hard-to-make-out = Fais sonner le bouton de « { $word } » depuis une autre pièce. Réenregistre-le, clair et doux, si tu ne reconnais pas le mot aussitôt.
act-mend-not-wanted = Reteste les préférences et change ce que « { $word } » apporte, ou montre-le quand { $name } en veut.
act-mend-too-little = Montre « { $word } » plus souvent, un peu chaque jour.
act-mend-too-late = Donne plus vite pour « { $word } » : garde la chose près du tableau, pour qu’elle vienne en deux secondes.
act-mend-avoided = Laisse le bouton de « { $word } » tranquille. Déplace-le ou essaie-en un plus doux, et attends que { $name } s’en approche.
act-mend-time-or-place = Fais les séances aux heures où { $name } participe, dans un lieu plus calme.
act-mend-health = Vois un vétérinaire avant de continuer l’entraînement.
act-mend-sounds-alike = Enregistre un autre mot pour « { $word } », qui sonne différemment.
act-mend-people-differ = Mettez-vous d’accord sur une réponse à « { $word } » et un délai. Affichez les règles de la maison là où tous les voient.
act-step-back = { $to ->
    [invite] Reviens à inviter « { $word } ». Ce n’est pas une perte.
   *[other] Reviens à montrer « { $word } ». Ce n’est pas une perte.
}
act-begin-inviting = Commence à inviter « { $word } » : propose, attends { $seconds } s, puis montre toi-même et donne.
act-invite = Invite « { $word } » une ou deux fois parmi les démonstrations. Quoi qu’il arrive, montre et donne.
act-show = Montre « { $word } » : appuie, dis, donne.
act-show-at-end = Montre « { $word } » à la fin de chaque séance.
act-leave-to-animal = « { $word } » est prêt pour la conversation : laisse-le à { $name } et réponds à chaque appui.
act-answer = Réponds à chaque appui sur « { $word } », aussi par « pas maintenant ».
act-signal-times = { $name } demande « { $word } » plus que tu ne peux donner. Mets un signal que tous voient : pendant { $available } s réponds à chaque appui par la chose, puis pendant { $unavailable } s dis « pas maintenant » et propose autre chose, et ainsi de suite.
act-rest = N’apprends rien aujourd’hui. Réponds aux appuis sur « { $word } ».
act-plan-check = Prévois une vérification de { $words }.
act-go-on-with-check = Continue la vérification : { $done } sur { $of } essais.
act-quoted = « { $word } »

act-change-calm-days = { $days } jours avec au plus un jour de signes forts.
act-change-calm-start = Un début calme demain : { $name } vient au tableau sans y être appelé.
act-change-days-without = { $days } jours sans un tel signe.
act-change-fewer-left = { $name } quitte moins de la moitié des { $sessions } prochaines séances.
act-change-fewer-mild = Une semaine avec des signes légers dans nettement moins de { $share } des séances.
act-change-usual-presses = Des appuis comme d’habitude, ou une cause claire : visites, voyage, pile vide, personne pour noter.
act-change-next-day = Minuit, ou une quantité fixée par un vétérinaire.
act-change-rewards-listed = Deux récompenses ou plus dans la liste.
act-change-test-recorded = Un test de préférences noté.
act-change-word-made = Une fiche de mot créée.
act-change-allowance-set = Une quantité saisie, ou ce qui manque complété.
act-change-card-filled = La fiche complétée.
act-change-ends-no-session = La fiche ne dit plus qu’il termine la séance.
act-change-usual-speed = Des appuis à la vitesse habituelle, par exemple après une pile neuve.
act-change-heard-again = Un appui entendu, ou son nouvel enregistrement inscrit.
act-change-test-agrees = Un test dont l’ordre concorde avec le précédent.
act-change-more-presses = Nettement plus d’appuis à l’invitation, { $days } jours après le changement.
act-change-more-when-invited = Lors des invitations où { $name } veut la chose, plus d’appuis : la part n’est plus nettement au-dessous de { $share }.
act-change-lasts-again = Deux semaines ou plus après la maîtrise, les appuis et les appuis justes ne sont plus nettement au-dessous de { $share }.
act-change-fades = Deux semaines ou plus après la maîtrise, les appuis ou les appuis justes tombent nettement au-dessous de { $share }.
act-change-longer-or-back = Des attentes plus longues dès que deux séances de suite ont peu d’appuis pendant « pas maintenant ». Retour à une réponse à chaque appui après un signe fort, un départ, ou si les appuis ne baissent pas en trois séances.
act-change-checked = La vérification prévue ou faite.

act-caution-ask-both = Consulte un vétérinaire et un professionnel qualifié du comportement, et respecte la loi locale sur les animaux qui mordent.
act-caution-ask-if-back = Si de tels signes reviennent, ou viennent sans cause visible, consulte un vétérinaire et un professionnel qualifié du comportement.
act-caution-call-vet-now = Appelle aussitôt un vétérinaire, quoi qu’ait avalé { $name }. Ne fais pas vomir sauf si on te le dit.
act-caution-take-nothing = N’enlève rien de force et tiens les enfants à distance.
act-caution-leaving-is-answer = Partir est une réponse. N’appelle pas et n’attire pas { $name } vers le tableau.
act-caution-single-sign = Un seul signe dit peu. Regarde tout le corps et la situation.
act-caution-may-be-illness = Un changement soudain peut être une maladie, pas l’entraînement : vois un vétérinaire.
act-caution-individuals-differ = Des animaux de même poids peuvent avoir besoin de trois fois plus ou moins. Observe le corps et consulte un vétérinaire.
act-caution-battery = Change les piles là où ni animal ni enfant ne les atteint, range aussi les vieilles, et visse le couvercle. Une pile avalée ou mordue est une urgence. Un animal : appelle aussitôt un vétérinaire. Un enfant qui a avalé une pile bouton ou l’a mise dans le nez ou l’oreille : va aux urgences aussitôt. Ne fais vomir personne sauf si on te le dit.
act-caution-not-pressing = Ne pas appuyer ne dit rien de ce que { $name } comprend. Si quelque chose a changé soudain chez { $name }, vois d’abord un vétérinaire.
act-caution-comes-and-goes = { $name } peut venir et partir. Arrête tant que { $name } en veut encore.
act-caution-burst-may-come = Quand les réponses changent, une rafale d’appuis peut venir d’abord : dans 24 % des cas chez des personnes, 12 % quand autre chose était proposé (Lerman & Iwata 1995).
act-caution-never-for-needs = Jamais pour l’eau, les besoins, la douleur ou la peur : on y répond. Si { $name } garde des choses, grogne ou mord, arrête et consulte un professionnel qualifié du comportement.

act-hint-give-faster = Donne plus vite : maintenant après { $seconds }, vise { $aim }.
act-hint-show-only = Montre toi-même et donne. N’attends rien.
act-hint-wait-then-show = Propose, attends { $seconds } s, puis montre et donne, quoi qu’il arrive.
act-hint-when-wanted = Montre-le quand { $name } en veut.
act-hint-little-every-day = Un peu chaque jour.
act-hint-answer-alike = Répondez tous pareil, aussitôt.
act-hint-good-hours = Aux heures où { $name } participe, dans un lieu calme.
act-hint-let-it-come = Attends que { $name } vienne au bouton.
act-hint-at-the-end = En dernier dans la séance.
act-hint-answer-every = Réponds à chaque appui, aussi par « pas maintenant ».
