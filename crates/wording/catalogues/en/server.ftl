# The page for keepers of a server of many homes.
server-title = The server
server-intro = Counts and sizes, nothing of what homes write.
server-homes = Homes
server-left = Homes that left
server-clubs = Clubs
server-accounts = Accounts
server-memory = Stories in memory, this process
server-megabytes = { $value } MB
server-unfinished = { $count ->
    [one] { $count } home has left, but its log is still here.
   *[other] { $count } homes have left, but their logs are still here.
}
server-sign-in-again = Sign in again to change something
server-why-again = What is done here needs a sign-in of the last minutes.
server-finish = Erase them now
server-open-homes = Open homes
server-open-homes-what = Each gets an empty notebook and a link for its first keeper. You see nothing of it.
server-how-many = How many, { $most } at most
server-how-many-wrong = must be a whole number from 1 to { $most }
server-open = Open and get the links
server-waiting = { $count ->
    [one] { $count } home waits for its first keeper
   *[other] { $count } homes wait for their first keepers
}
server-waiting-what = A link that was lost or ran out is replaced by a new one. The first that is taken counts; the others then hold no more.
server-new-link = New link
server-members = { $count ->
    [one] { $count } role
   *[other] { $count } roles
}
server-club-name = Name of a new club
server-open-club = Open the club
server-keepers = Keepers of the server
server-end-keeper = End
server-invite-keeper = Invite another keeper of the server
server-sessions = Sessions of an account
server-sessions-what = Where an account is in wrong hands: all its devices are signed out at once. Its person signs in anew.
server-account-id = Id of the account, as its page tells it
server-end-sessions = End all its sessions
server-links = { $count ->
    [one] { $count } link
   *[other] { $count } links
}
server-stopped = Stopped after { $made }: { $why } Those below are open.
server-number = Number
server-link = Link for the first keeper
server-until = Holds until
server-back = Back to the server
server-club-name-missing = is missing: give the club a name
server-account-missing = is no id of an account: copy it from the page of the account
server-sessions-ended = { $count ->
    [one] { $count } session ended.
   *[other] { $count } sessions ended.
}
server-anew = A home that lost its way in
server-anew-what = Where every keeper has lost phone, mail and codes, invite a new one. Be sure who asks: whoever takes the link has the home.
server-anew-told = The home is told who did this and when. Whoever is still in can refuse it. No account that keeps the server gets in by it.
server-anew-whose = Id of the home; or the id or e-mail address of an account that keeps it
server-anew-invite = Invite a new keeper
server-anew-from = It lets someone in from { $from } until { $until }, once.
server-anew-unknown = is no home here that had a keeper: copy the id from the page of an account, or from printed codes
server-anew-several = keeps several homes: give the id of the home
server-anew-open = was invited anew already: that link still holds
server-club-taken = is the name of a club here already: choose another one
server-not-by-role = Your role here does not reach so far. Ask a keeper of the server.
server-account-unknown = is no account here: copy it from the page of the account
server-utc = { $at } UTC
