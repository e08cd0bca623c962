club-homes = Hogares que comparten con el club
club-homes-how = Aquí están solo los que consienten en este momento. Cada mirada se anota para quien lleva el hogar.
club-no-homes = Ningún hogar comparte nada en este momento.
club-purpose = { $purpose ->
    [coach_figures] cifras
    [coach_log] el registro
   *[other] sonidos de pulsaciones
}
club-open = Abrir
club-to-desk = Abrir tu mesa
club-link = Para los hogares
club-link-what = Da este enlace a quien lleva un hogar. No es secreto y no abre nada: se le pregunta, fin por fin, qué puede ver cada coach del club.
club-own-link-what = Este pregunta solo por ti:
club-members = Quién pertenece al club
club-end = Terminar
club-invited = Invitación como: { $role }, hasta { $until }
club-invite-coach = Invitar a un coach
club-invite-keeper = Invitar a llevar el club
club-back = Volver al club
club-not-by-role = Tu papel aquí no llega hasta ahí. Pregunta a quien lleva el club.
