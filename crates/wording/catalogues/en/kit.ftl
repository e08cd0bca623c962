# Recording real buttons: the sheet that says how, and the page that records.
kit-title = Record real buttons
kit-why = Sayso’s hearing was measured on made sounds; no real button has been recorded yet. Recordings of real ones show how far it can be trusted.
kit-stays = Nothing is sent anywhere: you save one file on this device and decide who gets it.
kit-print = Print what to do
kit-no-script = Recording needs JavaScript, which is switched off in this browser.
kit-before = Before you begin
kit-away = No animal in the room or within hearing: a word that sounds and brings nothing teaches that it means nothing.
kit-loud = Leave the button as loud as it is, and keep it away from ears: a loud replay close by can harm.
kit-people = Tell everyone who can be heard. Say no names while it records.
kit-need = You need
kit-need-things = One button or more, a phone, a tape measure, and about 15 minutes a button.
kit-steps = Step by step
kit-step = Step
kit-what-to-do = What to do
kit-step-open = On the phone, open the page “{ $page }” from the page Listen.
kit-step-agree = Read what you agree to, and tick it.
kit-step-say = Say what button and what phone it is: size, shape, age. No names of makers or people.
kit-step-close = Quiet room: hold the phone a hand’s breadth from the button, and record one press.
kit-step-presses = Lay the phone { $metres } m from the button. Press ten times, each time the page says “Press now”: every six seconds.
kit-step-further = Do the same at { $distances } m, with nothing between button and phone.
kit-step-without = Record three minutes without a press: talk, walk about, let the radio play.
kit-step-again = If you can, all of it again in another room, with other noise, or with another phone.
kit-step-save = Save the file before you close the page.
kit-to-fill-in = To fill in by hand, if you like
kit-distance = Distance
kit-metres = { $metres } m
kit-room = Room
kit-noise = What else sounds
kit-phone = Phone
kit-presses = Presses
kit-without = none, 3 minutes
kit-agree = What you agree to
kit-consent = Everyone who can be heard agrees to be recorded. The file may be given to people who measure and improve how presses are heard. It holds sound and what is filled in below, no names.
kit-agreed = We agree to this
kit-publish = The file may also be published as test sound
kit-publish-hint = leave it empty if you are not sure
kit-about = The button and the phone
kit-word = What the button says
kit-button = What kind of button
kit-button-hint = size, shape, age, how full the battery is; no maker’s name
kit-phone-hint = size and age; no maker’s name, and no person’s
kit-close = The button close by
kit-close-how = Hold the phone a hand’s breadth from the button, in a quiet room, and press once. The hearing knows the button by this sound.
kit-take = Presses at a distance
kit-rooms = { $room ->
    [kitchen] kitchen
    [living] living room
    [bedroom] bedroom
    [hall] hall or stairs
    [outdoors] outdoors
   *[other] another room
}
kit-noises = { $noise ->
    [quiet] quiet
    [talk] people talking
    [media] radio, music or television
    [machine] a machine in the house
    [outside] street or weather
   *[other] something else
}
kit-marked = How presses are marked
kit-countdown = By countdown: press when the page says so
kit-tap = By tap: somebody taps as the button is pressed
kit-recorded = Recorded
kit-save = Save
kit-save-how = One file: the sounds, what you filled in, and what you agreed to.
kit-lead = Help to measure the hearing: record your buttons
