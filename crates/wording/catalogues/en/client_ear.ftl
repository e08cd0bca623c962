client-ear-insecure = This page came over plain HTTP, and browsers give the microphone only to pages that came safely. On the machine where Sayso runs, open it as http://localhost. For a phone, start Sayso with --lan --secure and open the address it then shows.
client-ear-unable = This browser cannot listen. Use a newer one, or run “sayso listen” on the machine where Sayso runs.
client-ear-connected = Connected.
client-ear-waiting = No answer from the notebook; { $seconds } s are kept here and sent later.
client-ear-lost = { $seconds } s could not be kept and were not heard.
client-ear-held = Presses are heard but cannot be stored just now: { $why }
client-ear-silent = Nothing sounds at the microphone: is it covered or switched off?
client-ear-heard-now = { $count ->
    [0] No press heard yet.
    [one] One press heard.
   *[other] { $count } presses heard.
}
client-ear-listening = Listening for { $count ->
    [one] one word
   *[other] { $count } words
} since { $time }.
client-ear-words = Listened for: { $words }.
client-ear-left-out = Their sound is missing, so they are not: { $words }.
client-ear-press = { $time }, { $sure }% sure, { $state ->
    [tapped] noted; it was tapped too and counts once
    [known] noted before
   *[new] noted
}
client-ear-kept = its sound is kept to be judged
client-ear-busy = Another page has been listening to this board since { $time }.
client-ear-take = Listen here instead
client-ear-taken = Off: another page listens now.
client-ear-off = Off.
client-ear-off-heard = Off. { $count ->
    [0] Nothing was heard.
    [one] One press was heard.
   *[other] { $count } presses were heard.
}
client-ear-asking = Asking for the microphone…
client-ear-connecting = Connecting…
client-ear-ending = Hearing the last of it…
client-ear-not-allowed = The microphone was not allowed. Allow it for this page in the browser's settings, then try again.
client-ear-not-found = This device has no microphone.
client-ear-in-use = The microphone is in use by another program. Close that one, then try again.
client-ear-not-opened = The microphone could not be opened ({ $why }).
client-ear-gone = The microphone was taken away, or is not allowed any more.
client-ear-stopped = The browser stopped the sound.
client-ear-sound-gone = Sound no longer kept
client-ear-not-noted = No answer from the notebook; nothing was noted. Try again.
client-ear-noted = Noted: { $word }, { $answer }.
client-ear-record-insecure = Recording here needs a page that came safely: open Sayso on the machine itself, or start it with --lan --secure. A sound file works in any case.
client-ear-record-unable = This browser cannot record. Choose a sound file.
client-ear-loudness = Loudness at the microphone
client-ear-record = Record with this device
client-ear-record-how = Hold the device a hand's breadth from the button, in a quiet room, where the animal does not hear it.
client-ear-recording = Recording: press the button once. { $seconds } s left.
client-ear-stop = Stop
client-ear-record-again = Record again
client-ear-record-nothing = Nothing was heard. Is the microphone covered or switched off?
client-ear-recorded = { $seconds } s, silence at both ends cut off. Hear it, then keep it, or record again.
client-ear-what-recorded = What was recorded
client-ear-record-keep = Keep this recording and check it
client-ear-unsent = { $count ->
    [one] One tap made on this device is
   *[other] { $count } taps made on this device are
} not in the notebook yet. Pair it again and they are sent. If it will not be paired again, save them to a file, which “sayso import” reads, and clear this device.
client-ear-clear = Clear this device
client-ear-clear-sure = Clear what this device keeps, { $count ->
    [one] one unsent tap
   *[other] { $count } unsent taps
} included? See first that the file was saved.
client-ear-cleared = This device keeps nothing of the notebook any more.
client-ear-save-unsent = Save them to a file
client-ear-pause = Pause
client-ear-go-on = Go on
client-ear-here = This device hears by itself: no sound leaves it, only presses do.
client-ear-there = This browser cannot hear by itself: while it listens, sound goes to the machine where Sayso runs.
client-ear-no-way = This browser cannot hear by itself, and this notebook takes no sound. Use a newer browser.
client-ear-ready = Getting the recordings ready…
client-ear-not-ready = Listening could not begin ({ $why }). Open this page once while the notebook answers, then try again.
client-ear-broke = Listening broke off on this device ({ $why }). Switch it on again.
client-ear-hearing = Hearing on this device.
client-ear-behind = This device is slow: { $seconds } s behind.
client-ear-gap = Not heard: { $from } to { $to }.
client-ear-no-sound = No sound has come since { $time }: another program or a call may have the microphone.
client-ear-last = { $time }, { $sure }% sure
client-ear-unsent-signed-out = { $count ->
    [one] One tap made on this device is
   *[other] { $count } taps made on this device are
} not in the notebook yet. Sign in again, open the Board, and they are sent. If nobody will sign in here again, save them to a file, which “sayso import” reads, and clear this device.
client-ear-unsent-left = { $count ->
    [one] One tap made on this device is
   *[other] { $count } taps made on this device are
} of a home that is not yours any more: it has left this server, or your role there has ended. That cannot be sent. Save it to a file, which “sayso import” reads, then clear it here.
