setup-what = { $step ->
    [food] How much food may { $name } have?
    [wants] What might { $name } like? Add four things.
    [likes] Test what { $name } likes
    [words] Choose { $name }’s first words
    [record] Record { $name }’s words, in your voice
    [places] Show where the buttons are
   *[people] Add everyone who answers { $name }
}
setup-why = { $step ->
    [food] so that rewards stay within it
    [wants] of several kinds: food, play, touch
    [likes] about ten minutes; it makes the first words a surer choice, and can come later
    [words] two or three, proposed with reasons
    [record] so that each button says it alike, and a press can be heard; can come later
    [places] so that a press can be read by its place
   *[people] everyone shows, and everyone answers alike
}
setup-title = Setting up for { $name }
setup-done-of = { $done } of { $of } needed steps done
setup-is-done = – done
setup-next = Next
setup-keep = Save
setup-later = Later
setup-along = Step { $number } of { $of }
setup-food-why = Food rewards take at most a tenth of { $name }’s day. From weight and age the day is estimated; a veterinarian’s figure is better.
setup-weight = Weight, { $unit }
setup-stage = Age and body
setup-stage-hint = used to estimate daily energy
setup-stage-unknown = not known
setup-food-more = { $species ->
    [dog] A puppy, or a veterinarian’s figure
   *[other] A veterinarian’s figure
}
setup-grown-weight-asked = is not there yet: type what the puppy will weigh once grown, or save once more without it; then nothing is computed
setup-grown-weight = For a puppy: weight once grown, { $unit }
setup-grown-weight-hint = ask the breeder or a veterinarian; without it nothing is computed
setup-day-kcal = The whole day’s food, kcal, as a veterinarian set it
setup-day-kcal-hint = replaces any formula
setup-day-kcal-more = must be more than 0; leave it empty to have it computed
setup-food-later = Without it no food is proposed as a word.
setup-record-later = The buttons speak without it. Today keeps a line for it.
setup-no-vet = Nothing here replaces a veterinarian.
