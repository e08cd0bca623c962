signs-see-walks-up = walks up when showing starts
signs-see-ears-forward = ears forward or head tilted at a word
signs-see-waits = waits at the board and looks at the person
signs-see-comes-at-sound = comes from another room at the sound
signs-see-brings-thing = brings the thing asked for
signs-see-loose-body = loose body, soft tail
signs-see-lip-lick = lip lick or yawn out of context
signs-see-turns-away = turns head or body away
signs-see-sniffs-floor = sniffs the floor, scratches, shakes off
signs-see-lifts-paw = lifts a paw, ears back
signs-see-panting = panting without heat or exercise
signs-see-eye-whites = whites of the eyes showing
signs-see-tail-tucked = tail tucked, crouching
signs-see-freezes = freezes, stares
signs-see-avoids-board = hides or will not come near the board
signs-see-growl = growl
signs-see-bite = snap or bite
signs-see-guards = guards food, a thing or the button
signs-see-swallowed = swallowed something that is no food
signs-see-approaches-tail-up = approaches, tail up
signs-see-rubs = rubs on person or board
signs-see-slow-blink = blinks slowly, ears forward
signs-see-tail-tip = tail tip flicks
signs-see-ears-sideways = ears turn sideways
signs-see-skin-ripples = skin ripples, quick lick of the nose
signs-see-tail-lashes = tail lashes
signs-see-ears-flat = ears flat
signs-see-crouches = crouches, pupils wide
signs-see-hides = hides
signs-see-hiss = hiss or swat
signs-see-leans-in = leans in, feathers relaxed
signs-see-steps-unasked = steps to the board unasked
signs-see-feathers-tight = feathers slicked tight, leans away
signs-see-pupils-pin = pupils pin with raised nape and a stiff, upright body
signs-see-lunges = lunges
signs-see-nudges = approaches, nudges
signs-see-flops = flops, grooms nearby
signs-see-freezes-flat = freezes flat, ears back
signs-see-thumps = thumps
signs-see-runs-to-hide = runs to hide
signs-act-carry-on = carry on
signs-act-pause-let-leave = pause, give space, let it leave
signs-act-end-no-lure = end the session; do not lure back
signs-act-end-distance-ask = end the session, keep distance; see a veterinarian and a qualified behaviour professional
signs-act-end-take-nothing-ask = end the session, keep distance, take nothing from it; see a veterinarian and a qualified behaviour professional
signs-act-call-vet = call a veterinarian at once; do not make it vomit unless told to
signs-act-pause = pause, give space
signs-act-end = end the session
signs-of-any = turning away, hiding, freezing, threatening
signs-whose = { $species ->
    [dog] Dog
    [cat] Cat
    [parrot] Parrot
    [rabbit] Rabbit
   *[other] Another animal
}
signs-levels = { $whose }: mild: { $mild }. Strong: { $strong }.
signs-only-strong = { $whose }: no mild sign is known, so the first may be a strong one: { $strong }.
