# Recordings of buttons: taken, proved, several a word, all in one go.
enrol-only-the-button = Only the button’s own sound is recognised. A voice that says the word afresh, yours too, is not taken for a press: record the button as it plays.
enrol-proof = Prove it
enrol-proof-how = Press “{ $says }” once more, with this device where it will listen. The page says whether it was heard, and if not, why. Nothing is noted as a press.
enrol-proof-care = Press it where { $name } does not hear it: a word that sounds and brings nothing teaches that it means nothing.
enrol-no-script = Recording and proving need JavaScript. A sound file can be kept without it.
enrol-no-sound-taken = This notebook takes no sound from pages. Use a browser that can hear by itself.
enrol-button-of = Button { $number } of { $of }
enrol-which-button = Which button is it?
enrol-replaces = The same one: replaces this recording
enrol-replaces-button = Button { $number }: replaces its recording
enrol-another-button = Another button with the same word
enrol-record-again = Record again, or another button
enrol-former = Former recordings ({ $count }): kept, not listened for
enrol-use-again = Listen for it again
enrol-take-out = Stop listening for this one
enrol-all-link = Record all buttons in one go
enrol-all-title = Record all buttons
enrol-all-no-words = There are no words on this board yet. Add them first, then record their buttons.
enrol-all-intro = { $words ->
    [1] Press the button, then stop. The page trims its sound and shows it before anything is kept.
   *[other] Press the { $words } buttons one after the other in the order below, with two seconds of quiet after each. The page cuts the sound, names it by that order and shows it before anything is kept.
}
enrol-all-care = Do it while { $name } is out of hearing, and keep your ears away from the buttons.
enrol-all-order = In this order
enrol-all-recorded = (has a recording)
