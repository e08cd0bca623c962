heard-title = Heard presses
heard-nothing = Nothing waits here.
heard-intro = A microphone tells which button sounded, not who pressed it. Say what you saw; leave what nobody saw as it is.
heard-did-it-sound = Did it sound?
heard-did-it-sound-hint = Heard with less certainty. “Did not sound” takes it back.
heard-who-pressed = Who pressed?
heard-count = { $title } ({ $count })
heard-listen = Listen through this device's microphone
heard-log = What was taken back stays in the log
heard-a-word = a word
heard-older = { $count ->
    [one] One older one follows once these are judged.
   *[other] { $count } older ones follow once these are judged.
}
heard-chance = probability that it sounded: { $share }
heard-play = Play
heard-play-of = the sound of { $word }
heard-yes = Sounded, nobody saw
heard-no = Did not sound
heard-animal = { $name } pressed
heard-person = A person pressed
heard-not-kept = The sound of this press is not kept.
heard-gone = No such press waits here; it may have been judged meanwhile.
