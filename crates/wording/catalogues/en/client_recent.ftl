client-recent-press = { $by ->
    [person] I pressed { $word }
    [animal] { $name } pressed { $word }
   *[unknown] Pressed: { $word }
}
client-recent-stumble = { $press } (stumble)
client-recent-delivery = { $word }: { $answer }
client-recent-feed = One piece of { $food }
client-recent-food = food
client-recent-invited = Invited { $word }: { $came }
client-recent-came-pressed = pressed { $word } at { $seconds } s
client-recent-came-without = asked its own way
client-recent-came-nothing = nothing by the wait
client-recent-came-left = went away
client-recent-swaps-stopped = Swaps stopped
client-recent-asked = Asked for { $word } without a button
client-recent-brushed = Brushed { $word }
client-recent-looked-at = Looked at { $word }
client-recent-looked = Looked at the board
client-recent-sign = Sign ({ $level }): { $sign }
client-recent-started = Session started
client-recent-ended = Session ended: { $why }
client-recent-joined = Joined
client-recent-left = Went away
client-recent-round = { $calls ->
    [one] Round of one begun
   *[other] Round of { $calls } begun
}
client-recent-drawn = Drawn for { $word }
client-recent-kept-here = { $time } · kept here
client-recent-edit = Edit
client-recent-edit-this = Edit: { $what }
client-recent-undo = Undo
client-recent-another-word = Another word…
client-recent-which-word = Which word was it?
client-recent-not-i = { $name } pressed it, not I
client-recent-i-did = I pressed it
client-recent-it-stumbled = It looked like a stumble
client-recent-it-meant = It looked meant
client-recent-was-given = It was given
client-recent-was-partly = It was partly given
client-recent-was-declined = It was: not now
client-recent-was-missed = It was missed
client-recent-first-stays = The first record stays visible in the log. Time and more can be changed there.
