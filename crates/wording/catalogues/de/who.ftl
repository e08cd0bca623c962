who-title = Wer bist du?
who-intro = Alles, was auf diesem Gerät notiert wird, gilt dann als von dir. Das lässt sich jederzeit ändern.
who-now = (jetzt)
who-not-listed = Nicht dabei? { $link }
who-add = Eine Person hinzufügen
who-new = { $name }, noch nicht aufgeführt
