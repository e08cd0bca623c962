# What the check of a recording found.
recording-make-it-out = Listen for yourself: play it on its button from another room. If you would not take it for your live voice and know the word at once, record it again, close to the microphone, clear and soft. Recorded words may be hard to make out: family dogs answered about { $share } of trained cues from recorded-word buttons, near { $live } from a live voice (17 dogs; Higaki 2025, figures from a press text). Go on saying the word live as well.
recording-length = { $seconds } s long.
recording-loudness = Loudness { $lufs } LUFS.
recording-loudness-over = { $others ->
    [one] Loudness { $lufs } LUFS, { $by } LU over the other one.
   *[other] Loudness { $lufs } LUFS, { $by } LU over the middle of the { $others } others.
}
recording-loudness-under = { $others ->
    [one] Loudness { $lufs } LUFS, { $by } LU under the other one.
   *[other] Loudness { $lufs } LUFS, { $by } LU under the middle of the { $others } others.
}
recording-too-quiet = Too quiet for its loudness to be measured.
recording-peak = Highest point { $db } dB under full scale.
recording-contrast = Its loud parts are { $db } dB over its quiet ones.
recording-most-like = Most like “{ $word }” ({ $like } on a scale from 0 to 1).
recording-too-long = Longer than 3 s: record the one word alone, without a long pause (common practice, no source).
recording-too-short = Shorter than 0.3 s: say the whole word, a little slower; so short a sound is hard to tell from others (common practice, no source).
recording-clipped = Clipped, that is recorded too loud: hold the recorder farther away or speak more softly, and record it again.
recording-quieter = More than 6 LU quieter than the others: record it again somewhat nearer, as loud as the others.
recording-louder = More than 6 LU louder than the others: a sudden loud sound close to the ear can frighten or harm. Record it again more softly before the animal hears it.
recording-noisy = Noise in the background, or no pause at its ends: record it again in a quiet room.
recording-too-like = Nearly the same sound as “{ $other }”: presses of the two may be mistaken for each other. Check that the right file was taken, or record one of them in another voice.
