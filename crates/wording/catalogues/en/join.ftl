# What stands behind an invitation.
join-title = You are invited
join-to = { $kind ->
    [home] To the home “{ $place }”.
    [lost_home] To the home with the id { $place }, as its new keeper.
    [new_home] To a new home on this server.
    [club] To the club “{ $place }”.
   *[server] To this server: { $place }.
}
join-part = { $role ->
    [keeper] As a keeper: you see and do everything here. You also invite people, decide what is shared, and may take the home away.
    [member] As a member: you write down what happens and see all figures.
    [sitter] As a sitter: on the days agreed you write down what happens. You see Today and the rules of the house.
    [observer] As an observer: you score what you see, without seeing what others scored.
    [coach] As a coach: you see what homes decide to share, nothing else.
    [club_keeper] As a keeper of the club: you invite people and see who belongs to it.
   *[server_keeper] As a keeper of the server: you open homes and clubs. You see no home’s data by that.
}
join-days = Days agreed: { $weekdays }, from { $first } to { $last }.
join-until = The invitation holds until { $when }, and once.
join-signed-in = You are signed in as { $name }.
join-join = Join
join-have-account = Have an account here already? { $link }
join-sign-in-first = Sign in first
join-gone-title = This invitation does not hold
join-gone = It was taken already, is too old, or its link is not whole. Have you joined? Then sign in. If not, ask whoever invited you for a new one.
join-taken-title = Nothing to join
join-taken = You have a role here already, or somebody else came first. Ask whoever invited you.
join-welcome = Welcome, { $name }
join-passkey = Next time, sign in with your finger, face or PIN. Your device keeps a passkey for that: no password.
join-make-passkey = Set up a passkey
join-later = Later
join-way-back = Once signed out, you come back in by a passkey, a link by e-mail or a recovery code. All three are on { $account }.
join-not-yet = It lets you in from { $from }. Until then, whoever is still in the home can refuse it.
join-yours-title = You are in already
join-yours = You took this invitation yourself. It holds once; from now on you sign in.
join-yours-go = Go on
join-you-hint = { $kind ->
    [home] as you are called at home
    [new_home] as you are called at home
    [lost_home] as you are called at home
   *[other] as others here are to see you
}
join-as-whom = There you write as “{ $name }”.
join-not-you = Not { $name }? Sign out
join-kept = This link was for the first keeper, and somebody else came first. Are you that person? Then sign in. If not, ask whoever keeps it for an invitation.
