# The page of one’s own account.
account-title = Your account
account-no-way-back = You have no way back in yet. Add a passkey, an e-mail address or recovery codes.
account-you = You
account-language-hint = of this page and of letters; a home’s pages go by your card there
account-passkeys = Passkeys
account-passkeys-what = A passkey signs you in by finger, face or PIN. Have one on each device, or one that your devices share.
account-times = Since { $since }. Last used { $used }.
account-unused = Since { $since }. Not used yet.
account-forget = Forget it
account-passkey-name = Name of the passkey
account-passkey-name-hint = if you like; else the kind of device
account-add-passkey = Add a passkey
account-cancelled = No passkey was made. Try again whenever you like.
account-failed = This device could not make a passkey.
account-known = This device has a passkey of this account already.
account-email-none = No address yet. With one, a link by e-mail lets you in where you have no passkey.
account-email-is = Links to sign in go to { $email }.
account-prove = Send a letter to prove it
account-forget-email = Forget the address
account-proof-sent = A letter is on its way to { $email }. Open its link within { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
}, in a browser that is signed in here.
account-prove-title = Is this your address?
account-prove-what = Once proved, links to sign in to your account can go to it.
account-prove-yes = Yes, it is mine
account-prove-signed-out = Sign in here first. Then open the link in the letter once more.
account-email-taken = Another account has this address.
account-codes = Recovery codes
account-codes-what = For the day every passkey is lost. Print them and keep them somewhere safe.
account-codes-left = { $count ->
    [0] You have none.
    [1] One is left.
   *[other] { $count } are left.
}
account-codes-make = Make new codes
account-codes-old = Those of before hold no longer then.
account-codes-once = They are shown this once. Each signs you in once.
account-codes-done = I have them
account-sessions = Where you are signed in
account-zone = Times are those of { $zone }.
account-end-others = Sign out everywhere else
account-roles = Your roles
account-role = { $role ->
    [keeper] Keeper of { $place }
    [member] Member of { $place }
    [sitter] Sitter in { $place }
    [observer] Observer in { $place }
    [coach] Coach in { $place }
    [club_keeper] Keeper of the club { $place }
   *[server_keeper] Keeper of the server
}
account-new-home = a home without a name yet
account-no-role = You have no role here. An invitation gives you one.
account-leave = Leave
account-leave-what = You lose sight of it at once. What you wrote down stays there. Only an invitation brings you back.
account-leave-button = Leave this role
account-last-keeper = You are the last keeper there. Make someone else a keeper first.
account-erase = Erase the account
account-erase-what = Your name, address, passkeys, codes, sessions and roles go at once. This cannot be undone. What you wrote into homes’ logs stays theirs. Backups of the server hold the rest for { $days ->
    [one] one day
   *[other] { $days } days
} more.
account-erase-button = Erase my account
account-erase-alone = You are the only keeper of what stands here. Before the account can go, let someone else keep each, or leave with it.
account-erase-other-keeper = Make someone else a keeper
account-erased-title = Your account is erased
account-erased = You are signed out here and everywhere.
account-sign-out-anyway = Sign out all the same
account-id = Id of this account, for whoever keeps the server: { $id }
account-provider-what = You can sign in with { $name } as well. It tells this server only which of its people you are.
account-provider-link = Sign in with { $name } from now on
account-provider-forget = No longer sign in with { $name }
account-home-id = Id of this home: { $id }
account-codes-ids = If all else is lost, whoever keeps the server can invite you anew by one of these ids:
account-codes-account = Your account
account-erase-looks = Homes go on reading that somebody looked, without your name: your role, the page and the day, for { $days } days.
account-proof-not-sent-title = The letter was not sent
account-proof-not-sent = No letter could be sent to { $email } just now. Nothing has changed. Check the address and try again later; if that fails too, tell whoever keeps the server.
account-news = News by e-mail
account-news-what = A short letter when something is new: how many homes or things, and where. No names, no figures, nothing of what was written.
account-news-urgent = Nothing urgent comes by mail. Strong signs of stress stand first on the coach’s desk and on Today at home.
account-news-no-email = For this, prove an e-mail address first.
account-news-every = How often, at most
account-news-never = Not at all
account-news-daily = Once a day
account-news-weekly = Once a week, on Mondays
account-news-hour = From this hour on
account-news-zone = Where you live (sets the hour)
