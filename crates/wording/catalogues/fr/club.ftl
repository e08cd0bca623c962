club-homes = Foyers qui partagent avec le club
club-homes-how = Seuls figurent ici ceux qui donnent leur accord en ce moment. Chaque regard est noté pour qui tient le foyer.
club-no-homes = Aucun foyer ne partage rien en ce moment.
club-purpose = { $purpose ->
    [coach_figures] les chiffres
    [coach_log] le journal
   *[other] les sons des appuis
}
club-open = Ouvrir
club-to-desk = Ouvrir ton bureau
club-link = Pour les foyers
club-link-what = Donne ce lien à qui tient un foyer. Il n’est pas secret et n’ouvre rien : on lui demande, but par but, ce que chaque coach du club peut voir.
club-own-link-what = Celui-ci demande pour toi, et personne d’autre :
club-members = Qui fait partie du club
club-end = Mettre fin
club-invited = Invitation comme : { $role }, jusqu’à { $until }
club-invite-coach = Inviter un coach
club-invite-keeper = Inviter à tenir le club
club-back = Retour au club
club-not-by-role = Ton rôle ici ne va pas jusque-là. Demande à qui tient le club.
