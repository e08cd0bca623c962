errors-too-large = That is too large; at most { $bytes } bytes go here at once. Send less at once.
errors-not-paired = This device is not paired with the notebook. Open /pair and enter the code shown where Sayso was started.
errors-too-many = { $seconds ->
    [one] Too many tries. Wait one second, then try again.
   *[other] Too many tries. Wait { $seconds } seconds, then try again.
}
errors-no-home = There is no home here yet. Open /start to set one up.
errors-disk-full = The notebook's disk is full: make room on the machine it is on. Taps are safe on the phone until then; what a form sent was not kept.
errors-internal = Something went wrong here; nothing you sent was kept. What it was stands in the log, where Sayso was started.
errors-no-such-page = There is nothing at this address.
errors-address-broken = Something in this address is missing or cannot be read. Go back and follow the link again.
errors-no-such-file = There is no such file here.
errors-no-such-animal = This notebook knows no such animal.
errors-no-such-lesson = There is no such lesson.
errors-not-that-method = This address does not take that kind of request.
errors-too-large-here = That is too large for this address; send less at once.
errors-title-not-here = Not here
errors-title-check = Please check what you entered
errors-title-forbidden = Not allowed from here
errors-title-wait = Wait a little
errors-title-full = The disk is full
errors-title-unavailable = Not just now
errors-title-failed = That did not work
errors-nothing-kept = Nothing was kept. Go back, change this, and send it again:
errors-to-start = To the start
errors-too-many-events = At most { $most } events go into one request, not { $got }.
errors-listing-range = "after" must be 0 or more and "limit" 1 to { $most }.
errors-no-array = The body must be a JSON array of events. It cannot be read from line { $line }, column { $column } on.
errors-only-https = Nothing is taken or told over plain HTTP here. Open https://{ $host }/.
errors-other-site = This came from another site's page, so it was not taken. Use Sayso's own page.
errors-other-name = Sayso does not answer to this name. Open it by this machine's address or its name on the home network.
errors-this-machine-only = Sayso answers only on this machine here. Open http://localhost or http://127.0.0.1 with its port.
errors-no-sound-taken = This notebook takes no sound from pages: whoever runs it has switched that off. Use a browser that can listen by itself.
errors-no-such = This notebook knows no such { $what ->
    [check] check
    [trial] trial
    [reward] reward
    [press] press
    [test] test
    [word] word
    [rule] rule
    [role] role
    [invitation] invitation
    [session] session
   *[person] person
}.
errors-body-broke = The body broke off while it was sent. Send it again.
errors-request-broken = The request cannot be read ({ $why }). Send it again.
