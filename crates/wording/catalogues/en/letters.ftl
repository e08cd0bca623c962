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
letters-tidings-subject = Something new at { $server }
letters-tidings-homes = { $homes ->
    [one] One home has something new for you:
   *[other] { $homes } homes have something new for you:
}

    { $link }
letters-tidings-things = { $things ->
    [one] Your coach sent you one thing:
   *[other] Your coach sent you { $things } things:
}

    { $link }
letters-tidings-why =
    What it is stands there and not here, for others may read mail.

    You get this letter because you chose it in your account at { $server }: { $every ->
        [day] once a day
       *[week] once a week
    } at most, and only when something is new. Strong signs of stress are never told by mail.

    No more of these letters, without signing in:

    { $link }
letters-stop = No more letters about what is new
letters-stop-what = You then get no more of these letters. Links to sign in still come when you ask for one.
letters-stopped-title = No more of these letters
letters-stopped = Done. If you want them again, choose so in your account.
letters-stop-unknown = This link stops no letters: it is too old, or was copied in part. In your account you can stop them, too.
