# Signing in on a server of many homes.
sign-in-title = Sign in
sign-in-again-title = Show that it is you
sign-in-again = What comes next must not fall into wrong hands. Sign in once more.
sign-in-passkey = Sign in with a passkey
sign-in-passkey-hint = Your device asks for your finger, face or PIN.
sign-in-cancelled = No passkey was used. Try again, or sign in another way.
sign-in-failed = This device could not use a passkey. Sign in another way.
sign-in-by-mail = By e-mail
sign-in-email = E-mail address
sign-in-email-hint = the one on your account page
sign-in-send-link = Send a link
sign-in-send-link-to = Send a link to { $email }
sign-in-sent-title = Look at your mail
sign-in-sent = If an account here has the address { $email }, a letter with a link is on its way. It works once, within { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
}.
sign-in-nothing-came = Nothing came? Check the address, and look among unwanted mail.
sign-in-another-address = Another address
sign-in-by-code = With a recovery code
sign-in-code = Recovery code
sign-in-code-hint = 32 letters and digits from your printed list; each works once
sign-in-wrong-code = does not hold: unknown, or used already
sign-in-no-account = No account yet? Open the link of an invitation, or scan its code.
sign-in-no-script = Passkeys need JavaScript. A link or a code works without.
sign-in-here-title = Sign in on this device?
sign-in-here = Go on only if you asked for this letter yourself.
sign-in-gone-title = This link does not hold
sign-in-gone = It was used already, is too old, or is not whole.
sign-in-new-link = Ask for a new one
sign-in-provider = Sign in with { $name }
sign-in-provider-away = { $name } does not answer just now. Sign in another way, or try again later.
sign-in-provider-refused = { $name } did not sign you in. Try again, or sign in another way.
sign-in-provider-lost = This sign-in cannot be finished: it was begun in another browser, is too old, or was finished already. Begin again.
sign-in-provider-unknown = No account here is linked with your sign-in at { $name }. Sign in another way, then link it on your account page. No account yet? Open the link of your invitation.
sign-in-provider-not-fresh = { $name } did not say that you proved just now who you are. Show it another way.
sign-in-provider-taken = Nothing was linked: this sign-in at { $name } belongs to an account here already, or yours is linked with another one.
sign-in-none-yet = Nothing but this browser lets you in yet, so there is nothing to show by that it is you. On your account make a passkey, add an e-mail address or make recovery codes. Then come back here and sign in by it.
sign-in-passkey-unknown = This passkey does not let you in: it is not known here any more, or was asked for too long ago. Try once more, or sign in another way.
sign-in-not-kept = What you sent was not kept. Show that it is you, then send it once more.
