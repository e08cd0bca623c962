# Warum eine Tondatei nicht gelesen werden kann.
sound-files-empty = sie ist leer: es ist kein Ton darin
sound-files-no-sound = es ist kein Ton darin
sound-files-other-file = { $kind }-Dateien werden hier nicht gelesen; speichere sie als WAV oder m4a
sound-files-unknown = das ist keine Tondatei, die gelesen werden kann (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF oder WebM)
sound-files-other-sound = ihr Ton ist als { $coding } codiert, das hier nicht gelesen wird; speichere sie als WAV oder m4a
sound-files-cut-short = sie ist abgeschnitten: { $there } s von { $promised } s sind da. Nichts davon wurde verwendet. Kopiere sie noch einmal von dort, wo sie aufgenommen wurde; gibt es nicht mehr davon, speichere sie mit einem anderen Programm als WAV
sound-files-part-missing = sie ist abgeschnitten: der Teil, der sagt, was darin ist, fehlt. Kopiere sie noch einmal von dort, wo sie aufgenommen wurde
sound-files-damaged = sie ist nach { $after } s beschädigt; kopiere sie noch einmal von dort, wo sie aufgenommen wurde
sound-files-no-format = sie nennt keine sinnvolle Abtastrate oder Zahl von Kanälen
sound-files-changes = die Abtastrate oder die Zahl der Kanäle wechselt in ihr; speichere sie mit einem anderen Programm als WAV
