client-kit-first = First agree above, and fill in what the button says, what kind it is, and which phone this is.
client-kit-clip = Record the button close by
client-kit-clip-now = Press the button once. { $seconds } s left.
client-kit-clip-kept = “{ $word }” close by: { $seconds } s, silence at both ends cut off.
client-kit-clip-first = First record “{ $word }” close by.
client-kit-presses = Record { $count } presses
client-kit-without = Record 3 minutes without a press
client-kit-press-now = Press now
client-kit-tap-now = Press the button, and tap “{ $mark }” at the same moment.
client-kit-mark = Pressed
client-kit-marked = { $count ->
    [0] No press marked yet.
    [one] One press marked.
   *[other] { $count } presses marked.
}
client-kit-no-press = Press nothing for { $seconds } s more.
client-kit-stop = Stop and keep
client-kit-interrupted = The sound was interrupted, so this recording was dropped. Keep the page in front and record it again.
client-kit-too-short = Too short to be of use, so it was dropped.
client-kit-take = “{ $word }”, { $metres } m, { $room }, { $noise }: { $count ->
    [one] one press
   *[other] { $count } presses
} in { $seconds } s
client-kit-take-without = No press, { $metres } m, { $room }, { $noise }: { $seconds } s
client-kit-undo = Undo
client-kit-save = Save the file
client-kit-nothing = Nothing to save yet: record the button close by, and then presses.
client-kit-saved = Saved as { $file } ({ $megabytes } MB). It is on this device only; nothing was sent.
