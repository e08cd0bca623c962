frame-today = Today
frame-board = Board
frame-likes = Likes
frame-words = Words
frame-evidence = Evidence
frame-days = Days
frame-log = Log
frame-people = People
frame-sheets = Sheets
frame-learn = Learn
frame-desk = Desk
frame-more = More
frame-pages = Pages
frame-to-content = To the content
frame-home = Home:
frame-which-animal = Which animal:
frame-animals = Animals
frame-i-am = I am { $name }
frame-who-are-you = Who are you?
frame-not-understood = { $count ->
        [one] One event here is
       *[other] { $count } events here are
    } not understood ({ $kinds }): a later version of this program wrote them. They are kept, but no page shows or counts them. Update this program.
frame-methods = How it is computed
frame-who-sees = Who can see this
frame-account = { $name }: account
frame-sign-out = Sign out
frame-you = You
frame-offline-out = There is no network, so you are still signed in here. Try again where there is one.
frame-unsent = Not saved: the notebook gives no answer. What you typed still stands here. Try again when it is back.
frame-unchecked = A native speaker has not checked this language yet.
