# Letters sent by e-mail, in plain text.
letters-sign-in-subject = Your link to sign in
letters-sign-in =
    This link signs you in at { $server }:

    { $link }

    It works once, within { $minutes ->
        [one] one minute
       *[other] { $minutes } minutes
    }.

    If it was not you who asked, do nothing. Nobody gets in without this letter.
letters-prove-subject = Is this your address?
letters-prove =
    Someone at { $server } says that this is their address. Open this link where you are signed in:

    { $link }

    It works once, within { $minutes ->
        [one] one minute
       *[other] { $minutes } minutes
    }.

    If it was not you, do nothing. The address is then not taken.
letters-rescue-subject = A new keeper was invited to your home
letters-rescue = 
    { $by }, who keeps { $server }, invited a new keeper to your home: someone said it had lost its way in.

    From { $from } (UTC) whoever has that link gets in. If nobody of your home asked for it, refuse it here:

    { $link }
