# The page of a club.
club-homes = Homes that share with the club
club-homes-how = Only those that consent at this moment stand here. Each look is noted for the keepers of the home.
club-no-homes = No home shares anything at this moment.
club-purpose = { $purpose ->
    [coach_figures] figures
    [coach_log] the log
   *[other] sounds of presses
}
club-open = Open
club-to-desk = Open your desk
club-link = For households
club-link-what = Give this link to a keeper of a home. It is no secret and opens nothing: the keeper is asked, purpose by purpose, what every coach of the club may see.
club-own-link-what = This one asks for you alone:
club-members = Who belongs to the club
club-end = End
club-invited = Invited as { $role }, until { $until }
club-invite-coach = Invite a coach
club-invite-keeper = Invite a keeper of the club
club-back = Back to the club
club-not-by-role = Your role here does not reach so far. Ask a keeper of the club.
