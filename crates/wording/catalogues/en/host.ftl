# On a server of many homes: what stands in the way.
host-not-signed-in = Sign in first.
host-not-fresh = This needs a fresh sign-in: show once more that it is you.
host-not-by-role = Your role here does not reach so far. Ask a keeper of the home.
host-not-today = Today is not one of the days agreed with you.
host-not-your-name = This names another account than yours.
host-not-valid = This link or code does not hold, or not any more. Ask for a new one.
host-last-keeper = Someone else must be a keeper first.
host-taken = This is taken already.
host-left = This home has left the server. Nothing of it is taken in again.
host-public-url = The public address { $url } must begin with https://, or be http://localhost: passkeys need it.
host-cannot-open = The database cannot be opened: { $why }
host-no-mail = Mail cannot be sent: { $why }
host-part = This role cannot be had so: a sitter needs days and a person of the home, an observer a person.
host-email = This is no e-mail address.
host-away = The server’s database does not answer just now. Try again in a moment.
host-other-name = This server is open at { $url } alone.
