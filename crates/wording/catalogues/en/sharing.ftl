# Who can see a home, who looked, who belongs to it, consent, leaving: on a server of many homes.
sharing-role = { $role ->
    [keeper] keeper
    [member] member
    [sitter] sitter
    [observer] observer
    [coach] coach
    [club_keeper] keeper of the club
   *[other] keeper of the server
}
sharing-role-can = { $role ->
    [keeper] sees and writes everything, invites people, gives consent, and can leave with the home
    [member] sees and writes everything about the animals; changes no roles and no consent
    [sitter] on the agreed days: sees Today and the house rules, and writes at the board
    [observer] writes at the board and scores checks, without seeing what others scored
   *[other] see the page of roles
}
sharing-shows = { $what ->
    [see_today] Today
    [see_rules] the house rules
    [see_figures] the figures
    [see_log] the log, entry by entry
    [hear_snippets] the sounds kept of presses
    [advise] the page Agreed, and writing there
    [export] the whole log as a file
    [record] the Board, to write at it
   *[other] something this version has no name for
}
sharing-days-every = every day from { $first } to { $last }
sharing-days-some = from { $first } to { $last }: { $weekdays }
sharing-qr = The link as a QR code
sharing-shown-once = { $count ->
    [one] This link is shown only now. Send it, or let the other phone scan it.
   *[other] These links are shown only now. Send each, or let the other phone scan its code.
}
sharing-holds = Holds until { $until }, once.
sharing-whoever = Whoever opens it first gets the role. You can take it back until then.
sharing-leaving = Leaving
sharing-leaving-short = Take everything along as a file, then have it erased here.
sharing-leave = Leave this server
sharing-who-intro = These people can see something of your home at this moment.
sharing-sees-nothing = sees no page of what others wrote at this moment
sharing-sees = sees { $what }
sharing-nobody-else = Nobody else sees anything here.
sharing-keepers-see = Keepers of the server see none of this by their role; whoever has its machine or its backups in hand can read what is stored there.
sharing-coach-of = coach, { $clubs }
sharing-as-person = { $role }, as { $name }
sharing-looked = Who looked
sharing-looked-how = Looks of coaches, sitters and observers are noted. What somebody opens again within a quarter of an hour, or what stays open, is one look. Those of keepers and members are not noted: people who live together do not watch one another here.
sharing-looked-none = Nobody has looked yet.
sharing-between = { $from } to { $to }
sharing-look = { $times ->
    [one] { $when }: { $who }, { $what }, { $times } time
   *[other] { $when }: { $who }, { $what }, { $times } times
}
sharing-people = Who belongs here
sharing-you = (you)
sharing-change-of = Change the role of { $name }
sharing-change = Change
sharing-invite = Invite someone
sharing-open-invitations = Open invitations
sharing-end-invitation = Take it back
sharing-consent = Consent
sharing-consent-none = Nothing is shared with anyone outside the home.
sharing-consent-change = Give or take back
sharing-consent-before = Given before
sharing-given = { $what }: since { $at }
sharing-taken-back = { $what }: given { $at }, taken back { $ended }
sharing-opens-nothing = { $what }: given { $at }, but not by a keeper on this server; it opens nothing
sharing-purpose = { $purpose ->
    [coach_figures] { $who } sees figures
    [coach_log] { $who } reads the log
    [coach_snippets] { $who } hears sounds of presses
    [norms] figures count in this server’s norms
   *[other] records may go to studies
}
sharing-nameless = { $kind ->
    [club] a club that is not here any more
   *[other] a coach who is not here any more
}
sharing-back = Back to who can see this
sharing-invitation = Invitation
sharing-role-missing = is missing: choose one
sharing-person-missing = is missing: whoever sits or observes writes under an own name of the home
sharing-day-missing = is missing: choose a day
sharing-weekdays-missing = are missing: choose at least one
sharing-last-before-first = is before the first: choose the same day or a later one
sharing-invite-intro = You get a link that holds for some days and works once.
sharing-make-link = Make the link
sharing-no-person = no person of the home
sharing-as-role = Role
sharing-which-person = Which person of the home
sharing-which-person-hint = Needed for sitters and observers.
sharing-sitter-days = Days, for a sitter
sharing-first-day = First day
sharing-last-day = Last day
sharing-on-weekdays = Days of the week
sharing-role-of = Role of { $name }
sharing-end-role = End the role
sharing-end-role-what = { $name } sees nothing of the home from then on. What { $name } wrote stays in the log.
sharing-end-role-of = End the role of { $name }
sharing-consent-intro = Each purpose is asked for by itself. All are off until you give them, and you can take each back at any time.
sharing-with-coaches = Coaches and clubs
sharing-with-how = Ask your coach for the link or code on the club’s page. Opening it shares nothing: you are asked first.
sharing-club-code = Link or code of the club
sharing-look-at-club = Go on
sharing-no-code = is no link or code of a club: copy the whole of it from the coach’s message
sharing-whole-club = What you give here, every coach of { $club } has, now and later, as long as they are one.
sharing-coaches-of = Every coach of { $club }
sharing-coach-alone = What you give here, { $name } of { $club } has alone, as long as { $name } is a coach.
sharing-not-among = This is not, or no longer, one of your homes.
sharing-no-such-club = There is no such club or coach here. Ask your coach for the link anew.
sharing-already-seen = Taking back ends it at once. What someone has already seen, noted or saved cannot be fetched back.
sharing-share-with = Share with: { $who }
sharing-purpose-title = { $purpose ->
    [coach_figures] Figures
    [coach_log] The log
    [coach_snippets] Sounds of presses
    [norms] Norms
   *[other] Research
}
sharing-on-since = On since { $at }
sharing-off = Off
sharing-take-back = Take back
sharing-give = I agree
sharing-unclear = is not clear: open the page anew and choose there
sharing-new-words = have changed since: open the page anew and read them
sharing-other-home = is another one by now: this device has changed to it in another tab; open the page anew
sharing-not-the-name = is not “{ $name }”: type it as it stands here
sharing-take-along = First: take everything along
sharing-take-along-what = The archive holds the log and its sounds. The program opens it at home as a whole notebook.
sharing-what-happens = What happens
sharing-erased = Erased at once: the log, sounds, pictures, all that was worked out from them, who belongs to the home, invitations, consent, and who looked.
sharing-stays = Stays: a mark with the home’s number and the day it left. It holds no names, and keeps old phones from bringing the home back.
sharing-accounts-stay = Accounts stay with their people. Each can erase an own account on its page.
sharing-backups = { $days ->
    [one] Backups of the server still hold all of it, for { $days } day at most.
   *[other] Backups of the server still hold all of it, for { $days } days at most.
}
sharing-others-have = What others already have cannot be fetched back: what a coach noted or saved, what went into norms or to a study.
sharing-phones = Phones that were offline keep their own unsent entries. This server refuses them. On such a phone open the page of your homes: it offers them as a file. Only then clear the site’s data there, which drops them.
sharing-leave-now = Then: leave
sharing-no-way-back = There is no way back here. Look into the archive first: does it open?
sharing-type-name = Type the home’s name: { $name }
sharing-leave-button = Leave and erase
sharing-gone-title = The home has left
sharing-gone = “{ $name }” has left this server, and all of it is erased here.
sharing-gone-not-yet = “{ $name }” has left this server: nobody can open it any more. Its log could not be erased just now. The server tries again by itself within the hour; its keeper can do so at once.
sharing-to-homes = To your homes
sharing-anew = Let in by the server’s keeper
sharing-anew-by = { $by }, who keeps the server, invited a new keeper to this home on { $at }.
sharing-anew-taken = { $who } came by it on { $at }.
sharing-anew-refused = { $who } refused it on { $at }. Nobody came by it.
sharing-anew-open = From { $from } whoever has the link gets in as a keeper. Did nobody here ask for that? Then refuse it.
sharing-anew-over = It ran out. Nobody came by it.
sharing-anew-refuse = Refuse it
sharing-words-number = Version { $number } of these words
sharing-words-of = { $what } (version { $number } of the words)
sharing-words-since = You agreed to version { $number }, which said less exactly what is seen or given:
sharing-words-newer = The words are more exact since then. Read them under “Give or take back”.
sharing-you-see = You see here: { $what }.
sharing-you-see-nothing = You see no page of what others wrote here at this moment.
sharing-seen-by-home = What you write here is seen by the keepers and members of this home, and by coaches as far as a keeper agreed to it.
sharing-looks-of-you = Your looks are noted for the keepers of the home: which page and when. They see your name.
sharing-account-seen = Your name is seen by the homes and clubs you have a role in. Your e-mail address, passkeys and sessions stand on your account page alone.
sharing-page = { $page ->
    [calendar] the calendar, read by its address
    [desk] the desk, beside other homes
    [today] Today
    [board] the Board
    [likes] Likes
    [words] Words
    [evidence] Evidence
    [days] Days
    [patterns] Patterns
    [others] Others
    [designs] trials of a change
    [swaps] swaps
    [checks] checks
    [heard] what was heard
    [log] the Log
    [agreement] agreement of two scorers
    [ideas] ideas for rewards
    [talk] what was agreed
    [sheets] sheets to print
    [media] pictures and recordings
    [figures] figures for programs
    [scored] what they scored
   *[other] another page
}
sharing-copy = Copy the link
sharing-copied = Copied
sharing-send = Send it
sharing-new-person = Or the name of someone new
sharing-new-person-hint = For who has no card here yet: it is made with the invitation.
sharing-roles-later = Sitters and observers can be invited once the home is set up.
sharing-given-until = { $what }: since { $at }, until { $until }
sharing-given-for = { $what }: given { $at }, for { $from } until { $until } alone
sharing-restored = This server was brought back from a backup on { $at }. All consents ended with it, so that none opens again that you had taken back. Give anew what you want, and look whether everyone below still belongs here.
sharing-ended-by-restore = { $what }: given { $at }; ended as the server was brought back from a backup, until you give it anew
sharing-leave-for-all = { $names } keep this home, too. Leaving ends it for them as well, and nobody asks them. Talk first.
sharing-person-taken = is somebody’s already, who could then not tell apart who wrote what: choose another one, or type the name of someone new
sharing-name-is-there = “{ $name }” has a card here: choose it above if that person is meant, or type a name that tells the two apart
sharing-last-is-over = is over already: choose today or a later day
sharing-look-left = { $times ->
    [one] somebody who has left ({ $role }): { $what }, { $times } time
   *[other] somebody who has left ({ $role }): { $what }, { $times } times
}
sharing-stays-accounts = Stays for { $days ->
    [one] { $days } day
   *[other] { $days } days
}: which accounts belonged to it, so that their people read that it left.
sharing-stays-notebooks = Stays for { $days ->
    [one] { $days } day
   *[other] { $days } days
}: a hash of each linked notebook’s key, so that it is told that the home left. No name, no account.
sharing-end-all = End all sharing
sharing-end-all-what = This takes back every consent at once. From then on none of these holds:
sharing-end-all-now = End all of it now
sharing-name-and-person = is given beside a person chosen above: leave one of the two empty
sharing-weekdays-none = hold none of the days from the first to the last: tick one that comes in between
sharing-last-too-far = is more than a year after the first: choose { $day } or an earlier day, and invite anew after that
sharing-news-anew = { $by }, who keeps the server, invited a new keeper to this home. From { $from } whoever has that link gets in and keeps the home.
sharing-news-look = Look at it, and refuse it if nobody here asked
sharing-news-anew-short = A new keeper was invited to this home: look at it
sharing-news-restored = This server was brought back from a backup on { $at }, and every consent ended with it. Who coaches you sees nothing of this home until you give it anew.
sharing-news-give = See what ended, and give anew what you want
sharing-agree-newer = Agree to these words in place of the earlier ones
