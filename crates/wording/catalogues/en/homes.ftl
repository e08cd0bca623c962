homes-title = Which home?
homes-intro = { $count ->
    [one] This notebook holds one home.
   *[other] This notebook holds { $count } homes. Each has its own animals, words and figures; nothing is counted across them.
}
homes-no-animal = no animal yet
homes-holds = { $animals }; { $count ->
    [one] one event
   *[other] { $count } events
}
homes-tail-since = { $name } (…{ $tail }, since { $day })
homes-title-none = No home yet
homes-none = Your account belongs to no home yet. Ask a keeper of the home, or who runs this server, for an invitation, and open its link on this device.
homes-none-private = Homes that share something with you as a coach stand here as long as they do.
homes-clubs = Clubs
homes-to-server = The server
homes-give-up = Give up a role
homes-give-up-what = You see nothing of the home from then on. What you wrote stays in its log.
homes-go = Give it up
homes-with-days = { $role }; { $days }
homes-not-begun = { $role }; nothing is written here yet: a keeper begins
homes-closed-now = { $role }; closed to you today
homes-shares = { $role }; shares { $what }
homes-find = Find a home
homes-find-button = Find
homes-found-none = No home of yours has “{ $text }” in its name.
homes-all = All homes
homes-parted = A home you belonged to left this server on { $day }. All of it is erased here.
homes-lost = The home that was open here is not open to you any more, or has left. Choose one of your homes.
homes-title-server = You keep this server
homes-title-clubs = Your clubs
homes-none-keeper = You belong to no home here, and need none for this. An invitation to one, opened on this device, adds it.
homes-none-coach = No home shares anything with you at this moment. A home stands here as long as one of its keepers agrees to it. It goes when that is taken back, runs out, or the home leaves.
homes-none-for-programs = Your account belongs to no home here. Open the link of an invitation first.
homes-anew = A keeper of the server invited a new keeper to “{ $home }”.
homes-restored = This server was brought back from a backup on { $at }, and every consent ended with it. Homes you coach come back once a keeper gives it anew. Ask them.
