command-listen-add-word = { $why }. Add it on the page Words first
command-listen-the-recording = the recording
command-listen-name-a-file = name a sound file, or say --record SECONDS
command-listen-enrolled = "{ $word }": enrolled.
command-listen-enrolled-before = "{ $word }": this very recording was enrolled already.
command-listen-clip-too-large = { $file }: { $bytes } bytes; a recording of one word may have { $most }
command-listen-no-findings = Nothing to object to.
command-listen-quoted = "{ $word }"
command-listen-without = Without a recording, so not listened for: { $words }.
command-listen-record-range = --record takes { $least } to { $most } seconds
command-listen-recording = Recording { $seconds } through "{ $microphone }". Play the button once, softly and out of the animal's hearing.
command-listen-sound-lost = part of the sound was lost, as the machine was too busy; record it again
command-listen-nothing-heard = nothing was heard; play the button while it records
command-listen-lost = the microphone "{ $microphone }" is lost: { $why }
command-listen-lost-driver = the microphone "{ $microphone }" is lost: its driver has ended
command-listen-lost-silent = the microphone "{ $microphone }" is lost: no sound has come for { $seconds } s; is it still plugged in?
command-listen-built-without =
    this program was built without the microphone. Either pipe a recorder into it:
    { "  " }arecord -q -f S16_LE -r 16000 -c 1 -t raw | sayso listen ... --pcm s16le --rate 16000 --channels 1 -
    or build it with the microphone (on Linux with ALSA's headers, such as Debian's libasound2-dev):
    { "  " }cargo build --release -p sayso --features microphone
command-listen-no-microphone = this machine has no microphone, or gives none to this program; plug one in, or allow it, and try again
command-listen-not-opened = the microphone cannot be opened: { $why }
command-listen-samples = the microphone "{ $microphone }" gives samples as { $samples }, which is not read
command-listen-give-what = give --data DIR or --clips DIR
command-listen-input-alone = standard input (-) is listened to alone, without other files
command-listen-input-samples = standard input holds bare samples: say which, such as --pcm s16le --rate 16000 --channels 1
command-listen-pcm-for-input = --pcm is for standard input; give - as the file
command-listen-one-file = with --log give one file at a time, as each began at its own time
command-listen-when-began = with --log say when the recording began, such as --started-at 2026-03-01T18:30:00Z
command-listen-checkpoint-one = --checkpoint goes with one file
command-listen-least-range = --least is a confidence from 0 to 1
command-listen-other-checkpoint = { $file } belongs to another sound file or other recordings; remove it to begin anew
command-listen-no-checkpoint = { $file } is no checkpoint of this program ({ $why })
command-listen-going-on = { $file }: going on at { $seconds } s; what was heard before is not printed again
command-listen-progress = { $file }: { $share } read, { $seconds } s examined, { $n ->
    [one] { $n } press
   *[other] { $n } presses
}
command-listen-damaged-parts = { $file }: { $n ->
    [one] { $n } damaged part was left out; times after it may be early
   *[other] { $n } damaged parts were left out; times after them may be early
}
command-listen-listening = Listening through "{ $microphone }" ({ $rate } Hz, { $channels ->
    [one] { $channels } channel
   *[other] { $channels } channels
}) for { $n ->
    [one] { $n } word
   *[other] { $n } words
}. The sound is not kept. Ctrl-C ends it.
command-listen-missed = { $seconds } s of sound were lost, as the machine was too busy; presses in them were not heard.
command-listen-no-ctrl-c = sayso: Ctrl-C is not seen ({ $why }); end the program otherwise
command-listen-cut-off = standard input ended within a sample: cut off, or not { $samples }?
command-listen-left-out = "{ $word }" is not listened for: { $why }
command-listen-nothing-enrolled = no recording is enrolled, so there is nothing to listen for; see `sayso enrol --help`
command-listen-second-clip = { $file }: a second clip of "{ $word }"
command-listen-no-sound-files = { $dir }: no sound file ({ $endings }) in it
command-listen-presses-heard = { $n ->
    [one] { $n } press
   *[other] { $n } presses
} heard in { $minutes } minutes.
command-listen-logged = { $n } of them logged; { $known ->
    [one] { $known } was in the log already.
   *[other] { $known } were in the log already.
}
command-listen-slowed = "{ $word }" has slowed by { $slowed } (standard error { $error }, { $n } presses; probability that it slows more than healthy buttons do: { $probability }): its battery may be running down.
command-listen-never = Not heard at all (other words: heard { $n ->
    [one] once
   *[other] { $n } times
}): { $words }. Nobody may have pressed them; a flat battery or an old recording is possible too.
command-listen-home = Home
command-listen-begun = A new notebook was begun in { $folder }. Times are in UTC until its page People names a time zone.
command-listen-added = “{ $word }” is a new word of this notebook.
