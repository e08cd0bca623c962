# Said by the scripts that record and prove: arguments and choices by one argument, nothing else.
client-enrol-prove = Press it now
client-enrol-prove-now = Press “{ $says }” once. { $seconds } s left.
client-enrol-judging = Comparing it with the recordings…
client-enrol-heard = Heard. Ready.
client-enrol-heard-more = { $sure }% sure, 1 press.
client-enrol-unsure = Heard as “{ $says }”, but only { $sure }% sure. Bring the device nearer or make the room quieter, then prove it again. If it stays so, record it again.
client-enrol-nothing = Nothing was heard. Is the microphone covered, or the button’s battery empty? Then prove it again.
client-enrol-too-quiet = Too quiet: only { $db } dB over the room. Switch off what hums, or bring the device nearer, then prove it again.
client-enrol-too-far = Too far: { $db } dB weaker than the recording. Put the device within three metres of the board, then prove it again.
client-enrol-wrong-speed = It played { $percent }% { $way ->
    [slower] slower
   *[faster] faster
} than recorded, more than is listened for. Check its battery, then record the button as it plays now.
client-enrol-another-word = Heard as “{ $other }” ({ $sure }% sure). If you pressed “{ $says }”, the two sound too much alike or one recording is of the other button: record it again.
client-enrol-another-sound = A sound came, but not this recording. Was it the button, not a voice? Its word may have been recorded over: then record the button again.
client-enrol-again = Prove again
client-enrol-skip = Skip
client-enrol-skipped = Not proved. It is listened for all the same; prove it whenever you like.
client-enrol-no-way = This browser cannot hear by itself, and this notebook takes no sound. Prove it with a newer browser; the recording is kept.
client-enrol-failed = That could not be judged ({ $why }). Try again.
client-enrol-begin = Start recording
client-enrol-running = Press now: “{ $next }”, then two seconds of quiet. { $heard } of { $words } so far; { $seconds } s left.
client-enrol-running-all = { $heard } sounds for { $words } words. Stop now.
client-enrol-end = That was the last one
client-enrol-cutting = Cutting it at the pauses…
client-enrol-none = No sound stood out. Hold the device a hand’s breadth from each button, in a quiet room, and start again.
client-enrol-match = As many sounds as words ({ $words }). Hear each, then keep them.
client-enrol-fewer = Fewer sounds ({ $sounds }) than words ({ $words }). Tap “was not pressed” where a word is missing, or start again with longer pauses.
client-enrol-more = More sounds ({ $sounds }) than words ({ $words }). Tap “Not a button” at a voice or a knock; the names after it move up.
client-enrol-sound = Sound { $number }
client-enrol-says = It says
client-enrol-no-word = Nothing: left out
client-enrol-drop = Not a button
client-enrol-not-pressed = “{ $says }” was not pressed
client-enrol-play = Play
client-enrol-picture = Picture of the sound, { $seconds } s long
client-enrol-beep = A beep in front was cut off.
client-enrol-long = Long: two buttons may have run together. Start again with longer pauses, or leave it out and record those two on their cards.
client-enrol-quiet = Quiet: only { $db } dB over the room. Record it again nearer.
client-enrol-keep = { $count ->
    [1] Keep this recording
   *[other] Keep these { $count } recordings
}
client-enrol-keep-hint = Recordings in use of these words are replaced; they stay on the words’ cards.
client-enrol-keeping = Keeping { $n } of { $count }…
client-enrol-not-kept = “{ $says }” could not be kept: { $why }
client-enrol-kept = { $count ->
    [1] One recording is kept. Now prove it.
   *[other] { $count } recordings are kept. Now prove them one after another.
}
client-enrol-next = Next: “{ $says }”
client-enrol-of = { $n } of { $count }: “{ $says }”
client-enrol-done = Proved: { $proved } of { $count } were heard surely.
client-enrol-not-proved = Not heard surely yet:
client-enrol-start-again = Start again
