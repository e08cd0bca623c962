# Why a sound file cannot be read.
sound-files-empty = it is empty: there is no sound in it
sound-files-no-sound = there is no sound in it
sound-files-other-file = { $kind } files are not read here; save it as WAV or m4a
sound-files-unknown = it is no sound file that can be read (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF or WebM)
sound-files-other-sound = its sound is coded as { $coding }, which is not read here; save it as WAV or m4a
sound-files-cut-short = it is cut short: { $there } s of { $promised } s are there. Nothing of it was used. Copy it again from where it was recorded; if no more of it exists, save it as WAV with another program
sound-files-part-missing = it is cut short: the part that tells what is in it is missing. Copy it again from where it was recorded
sound-files-damaged = it is damaged after { $after } s; copy it again from where it was recorded
sound-files-no-format = it names no sample rate or number of channels that makes sense
sound-files-changes = the sample rate or the number of channels changes within it; save it as WAV with another program
