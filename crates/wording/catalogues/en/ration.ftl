ration-used-up = Today's food rewards are used up. Use play, touch or exploring, and give a smaller meal if the veterinarian agrees.
ration-starting-point = A starting point for a healthy animal: individuals of one weight need up to three times as much as others. Watch body condition and ask a veterinarian.
ration-growing = A growing animal's need changes from week to week: weigh often, use its own food as reward where you can, and ask a veterinarian.
ration-weight-loss = Computed on the target weight. Weight loss needs a veterinarian's plan; in cats, eating too little is itself dangerous.
ration-typed-in = Typed in, not checked by this program: it stands as the veterinarian gave it.
ration-basis-typed-in = typed in, as a veterinarian set it
ration-basis-formula = resting energy (70 times the weight in kg to the power of 0.75) = { $resting } kcal, times { $factor } for the life stage ({ $source })
ration-factor-source = { $source ->
    [charts] as in published veterinary charts, secondary; starting point only
    [home_dogs] as in published veterinary charts, secondary; home dogs of ideal weight used 1.83 (Divol & Priymenko 2017); starting point only
    [slimming] 80% of resting energy at the ideal weight, AAHA guidelines 2014; starting point only
    [growth_half] FEDIAF 2021, below half of the grown weight; starting point only
    [growth_most] FEDIAF 2021, from half to four fifths of the grown weight; starting point only
   *[growth_end] FEDIAF 2021, from four fifths of the grown weight; starting point only
}
ration-no-formula = there is no formula here { $whom }: ask a veterinarian how much { $name } may have in a day and type it in
ration-weight = { $weight } is no weight { $whom } ({ $low } to { $high }): check it, or ask a veterinarian how much { $name } may have in a day and type it in
ration-stage = “{ $stage }” is no life stage { $whom }: choose another, or ask a veterinarian how much { $name } may have in a day and type it in
ration-no-weight = no weight of { $name } is known: weigh { $name }, or ask a veterinarian how much { $name } may have in a day and type it in
ration-no-grown-weight = a puppy's need goes by its share of the weight it will have grown, and the grown weight of { $name } is not known: ask the breeder or a veterinarian and type it in, or type in what a veterinarian says { $name } may have in a day
ration-outgrown = { $weight } is more than the { $grown } expected of { $name } once grown: correct one of them, choose a grown stage of life, or ask a veterinarian how much { $name } may have in a day and type it in
ration-no-stage = no life stage of { $name } is known: choose one, or ask a veterinarian how much { $name } may have in a day and type it in
