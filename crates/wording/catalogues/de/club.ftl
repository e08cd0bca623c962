club-homes = Zuhause, die mit dem Club teilen
club-homes-how = Hier stehen nur die, die in diesem Moment eingewilligt haben. Jeder Blick wird für die notiert, die das Zuhause verwalten.
club-no-homes = In diesem Moment teilt kein Zuhause etwas.
club-purpose = { $purpose ->
    [coach_figures] Zahlen
    [coach_log] das Protokoll
   *[other] Töne von Drücken
}
club-open = Öffnen
club-to-desk = Dein Pult öffnen
club-link = Für Haushalte
club-link-what = Gib diesen Link jemandem, der ein Zuhause verwaltet. Er ist kein Geheimnis und öffnet nichts: Gefragt wird Zweck für Zweck, was jeder Coach des Clubs sehen darf.
club-own-link-what = Dieser fragt nur für dich:
club-members = Wer zum Club gehört
club-end = Beenden
club-invited = Eingeladen als: { $role }, bis { $until }
club-invite-coach = Einen Coach einladen
club-invite-keeper = Jemanden zum Verwalten des Clubs einladen
club-back = Zurück zum Club
club-not-by-role = Deine Rolle reicht hier nicht so weit. Frag, wer den Club verwaltet.
