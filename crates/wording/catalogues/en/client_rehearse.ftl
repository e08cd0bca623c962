# A rehearsal as it runs. $name is the animal's name.
client-rehearse-press = Press and say
client-rehearse-give = Give
client-rehearse-asked = { $name } pressed: give
client-rehearse-offer = Invite with this
client-rehearse-instead = Give this instead
client-rehearse-ready = Nothing has begun. Everything moves once you start.
client-rehearse-begun = It begins.
client-rehearse-wait = Wait: { $seconds } s
client-rehearse-then = Now press, say and give.
client-rehearse-pause = A mild sign: pause, and leave room.
client-rehearse-of = { $passed } of { $most }
client-rehearse-invited = Invitation { $n } of { $all }
client-rehearse-treats = { $count ->
    [one] { $count } treat left
   *[other] { $count } treats left
}
client-rehearse-paused = Paused while the page is hidden.
client-rehearse-away = The notebook does not answer. What you do stands here and is sent once it is back; what comes of it shows then.
client-rehearse-which = Which one? Tap its button.
client-rehearse-hold = Hold still until one is chosen.
client-rehearse-waits = Wait
client-rehearse-now-press = Now press and say
client-rehearse-end-again = Press { $key } once more to end.
client-rehearse-none = None left: not now, or something else
client-rehearse-none-here = None left
