who-title = Who are you?
who-intro = Everything noted on this device is then noted as yours. It can be changed at any time.
who-now = (now)
who-not-listed = Not listed? { $link }
who-add = Add a person
who-new = { $name }, not listed yet
