# A notebook at home that is linked to its home on a server: the page of the notebook, and those of the server.
linked-title = Linked to a server
linked-what = A link keeps this notebook and its home on a server the same. What you write here goes there. What is written there comes here, such as a coach's notes.
linked-what-offline = Without a network this notebook works as ever. What waits goes when the server is reached again.
linked-step-code = On the server, open “Who can see this”, then “Notebooks at home”, and make a code.
linked-step-open = In the notebook at home, open People, then “Linked to a server”.
linked-step-paste = Paste the whole text with the code there.
linked-step-yes = Look at what goes where, and say yes. Before that nothing written in the notebook is sent; the server only learns what the home is called.
linked-link = Text from the server
linked-link-hint = the address with the code, such as https://sayso.example/linked#…
linked-begin = Link
linked-with = Linked to “{ $home }” at { $url }.
linked-unnamed = a home without a name yet
linked-not-yet = Nothing written here has been sent yet; the server knows this notebook by the name of the home. Say below what may go.
linked-not-yet-command = Nothing has been sent yet. To say yes: sayso link --yes, with --pictures and --recordings where those may go too.
linked-goes = What goes there
linked-goes-all = Everything written in this notebook goes there, also what was written before: log, cards, rations, remarks.
linked-goes-who = The keepers and members of the home there see it. Who else does is decided there alone, by a keeper's consent.
linked-coaches = Coaches who see something of it there now: { $names }.
linked-no-coach = No coach sees anything of it there now.
linked-pictures = Pictures, too
linked-recordings = Recordings of the buttons, too
linked-sound-stays = Sound around presses never leaves this machine.
linked-yes = Yes, send it there
linked-agreed = The two last agreed: { $when }.
linked-never-agreed = The two have not agreed yet.
linked-waits = { $count ->
    [0] Nothing waits to be sent.
    [one] One record waits to be sent.
   *[other] { $count } records wait to be sent.
}
linked-moved = Records sent: { $sent }, received: { $received }. Pictures and recordings: { $media }.
linked-hinders = { $kind ->
    [away] The server is not reached. It is tried again by itself.
    [here] This notebook cannot be read or written just now. It is tried again by itself.
   *[strange] The server answered otherwise than expected. It is tried again by itself.
}
linked-unreached = { $kind ->
    [away] The server is not reached. Is it on, and is the address the one it shows, with http:// or https:// in front?
    [here] This notebook cannot be read or written just now.
   *[strange] What answers there is no server of this program. Check the address: it is the one that the server shows.
}
linked-stopped = { $why ->
    [left] The home has left that server and was erased there. Nothing is sent any more, and nothing is lost here.
   *[ended] The server no longer takes it: the link was ended there, or the keeper who made it keeps the home no more. Nothing is lost here.
}
linked-again = Try again from the beginning
linked-held-title = Not in the server's home
linked-lacks-title = Not in this notebook
linked-held = { $why ->
    [differs] { $count ->
        [one] { $count } record differs between the two; each keeps its own
       *[other] { $count } records differ between the two; each keeps its own
    }
    [consent] { $count ->
        [one] { $count } record is about consent; that is given and taken back on the server itself
       *[other] { $count } records are about consent; that is given and taken back on the server itself
    }
    [coach] { $count ->
        [one] { $count } record is in a coach's or an account's name; those are written on the server itself
       *[other] { $count } records are in a coach's or an account's name; those are written on the server itself
    }
    [lacks] { $count ->
        [one] { $count } record is about another one that is not there
       *[other] { $count } records are about others that are not there
    }
    [ahead] { $count ->
        [one] { $count } record is dated more than a day ahead; it goes once that day has come
       *[other] { $count } records are dated more than a day ahead; they go once that day has come
    }
    [unread] { $count ->
        [one] { $count } record is of a kind the other side does not know; update the older of the two
       *[other] { $count } records are of kinds the other side does not know; update the older of the two
    }
    [other_home] { $count ->
        [one] { $count } record is another home's
       *[other] { $count } records are another home's
    }
   *[unsound] { $count ->
        [one] { $count } record is not let in by the rules of the other side
       *[other] { $count } records are not let in by the rules of the other side
    }
}
linked-which = Which they are
linked-unlinking = Unlink
linked-unlinking-what = Nothing is sent or fetched any more. What each side has, it keeps.
linked-unlink = Unlink this notebook
linked-ended = This notebook is unlinked. What is here stays here, and what is on the server stays there.
linked-not-told = The server could not be told. End the link there, too: “Who can see this”, then “Notebooks at home”.
linked-not-linked = This notebook is not linked.
linked-no-address = “{ $text }” is not what a server shows. Paste all of it, from https:// to the end of the code.
linked-unsafe-address = { $url } is not https, so others could read what is sent there. Ask whoever runs the server.
linked-damaged = { $file } does not hold a link ({ $why }). Unlink here, and link anew; nothing in the notebook is lost.
linked-already = This notebook is linked already, to { $url }. Unlink it first.
linked-bad-code = This code does not hold, or not any more. Make a new one on the server.
linked-other-home = The home on the server holds other records than this notebook, and two homes are not mixed. Choose the home that this notebook moved into, or ask whoever runs the server for a new one. Consent may be given in it; leave the rest empty until the notebook is linked.
linked-too-often = Too many tries. Wait a quarter of an hour.
linked-notebooks = Notebooks at home
linked-notebooks-what = A notebook that someone keeps on a machine at home can be linked to this home. It then holds all that this home holds, and brings what is written in it.
linked-no-notebook = No notebook is linked.
linked-how-many = { $count ->
    [0] No notebook at home is linked.
    [one] One notebook at home is linked: it holds all that is written here.
   *[other] { $count } notebooks at home are linked: each holds all that is written here.
}
linked-see = See and end links
linked-nameless = A notebook without a name
linked-times = Code used: { $linked }. Last heard of: { $heard }. What is written at home comes once somebody there has said yes.
linked-make-code = Make a code
linked-code-what = The code links one notebook, once, within an hour.
linked-code-sees = The notebook reads everything in this home. What comes from it opens this home to nobody: consent is given here alone.
linked-code-holds = This home holds records already. Only an empty notebook, or the one that moved in here, can be linked to it.
linked-code-whoever = Whoever has the code can read all of this home. Give it to nobody but yourself.
linked-code = The code
linked-code-once = Take it to the notebook now. It is not shown again.
linked-qr = The text with the code, as a QR code
linked-shown = This belongs in a notebook
linked-shown-what = This text links a notebook at home to a home on this server. Opening it does nothing by itself.
linked-was-with = Was linked to “{ $home }” at { $url }.
linked-after-stopped = Unlink here. To go on, make a new code on the server and link anew.
linked-silent = Something waits, and the server has not answered since { $when }.
linked-as-said = What was said
linked-coaches-unknown = Which coaches see something of it there is not known yet: the server has not said.
linked-comes = { $count ->
    [one] One record that stands there comes here.
   *[other] { $count } records that stand there come here.
}
linked-never-went = { $count ->
    [one] One record of this notebook never went there.
   *[other] { $count } records of this notebook never went there.
}
