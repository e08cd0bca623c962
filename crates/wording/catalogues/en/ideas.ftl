ideas-name = { $key ->
    [chicken] Chicken, cooked, pea-sized
    [cheese] Cheese, pea-sized
    [carrot] Carrot, a thin slice
    [apple] Apple without core, a small cube
    [beans] Green bean, cooked, one
    [beef] Beef, lean and cooked, pea-sized
    [turkey] Turkey, cooked, pea-sized
    [egg] Egg, boiled, pea-sized
    [salmon] Salmon, cooked, a small flake
    [kibble] Kibble, one piece
    [pellet] Pellet of the usual food, one
    [sunflower] Sunflower kernel, unsalted, one
    [millet] Millet, a pinch
    [pepper] Pepper, red, a small strip
    [dandelion] Dandelion leaf, one
    [parsley] Parsley, one sprig
    [coriander] Coriander, one sprig
    [hay] Hay, one sweet stalk
    [tug] Tug
    [ball] Ball
    [chase] Chase me
    [squeak] Squeaky toy
    [wand] Wand with a feather
    [crinkle] Crinkly paper ball
    [toss] Tossed soft mouse
    [bell] Bell to ring
    [shred] Paper to shred
    [peekaboo] Peekaboo
    [willow] Willow ball
    [tunnel] Tunnel run
    [rub] Belly rub
    [scratch] Chest scratch
    [brush] Brush
    [cheek] Cheek stroke
    [head] Head scratch
    [forehead] Forehead stroke, on the floor
    [paw] Give a paw
    [spin] Spin
    [touch_hand] Touch my hand
    [high_five] High five
    [step_up] Step up
    [turn] Turn around
    [target] Touch the stick
    [up] Stand up tall
    [garden] Garden
    [walk] Walk
    [sniff] Sniffing in a box of leaves
    [window] Window seat
    [box] Cardboard box
    [room] Another room, with you
    [pen] Outdoor run
    [bed] Bed
    [sofa] Sofa, beside you
    [perch] Perch, quiet
    [hide] Hiding house
   *[other] { $key }
}
ideas-label = { $key ->
    [chicken] chicken
    [cheese] cheese
    [carrot] carrot
    [apple] apple
    [beans] bean
    [beef] beef
    [turkey] turkey
    [egg] egg
    [salmon] salmon
    [kibble] kibble
    [pellet] pellet
    [sunflower] seed
    [millet] millet
    [pepper] pepper
    [dandelion] leaf
    [parsley] parsley
    [coriander] herb
    [hay] hay
    [tug] tug
    [ball] ball
    [chase] chase
    [squeak] squeak
    [wand] feather
    [crinkle] crinkle
    [toss] mouse
    [bell] bell
    [shred] paper
    [peekaboo] peekaboo
    [willow] willow
    [tunnel] tunnel
    [rub] rub
    [scratch] scratch
    [brush] brush
    [cheek] cheek
    [head] scratch
    [forehead] stroke
    [paw] paw
    [spin] spin
    [touch_hand] touch
    [high_five] five
    [step_up] step
    [turn] turn
    [target] stick
    [up] up
    [garden] garden
    [walk] walk
    [sniff] sniff
    [window] window
    [box] box
    [room] room
    [pen] run
    [bed] bed
    [sofa] sofa
    [perch] perch
    [hide] house
   *[other] { $key }
}
ideas-title = What might { $name } like?
ideas-four = Tap four things or more, of several kinds. { $name } decides later.
ideas-health = Health:
ideas-other-kinds = Things of other kinds
ideas-figures = kcal: typical values for one piece (USDA and from memory); check the packet. The ideas: common practice, no source.
ideas-add = Add these
ideas-own = Something of your own
ideas-kind = { $kind ->
    [food] food
    [play] play
    [touch] touch
    [training] an exercise
    [exploring] exploring
   *[rest] rest
}
ideas-care = { $care ->
    [guarding] Not for an animal that guards food or toys. If { $name } stiffens or growls over it, give space and ask a qualified behaviour professional.
    [slipping] On a floor that does not slide; ask a veterinarian first for stiff or young legs.
    [small_parts] Nothing that can be bitten off and swallowed; put it away afterwards.
    [size] Too large to be swallowed or to lodge in the throat; put it away once it is worn.
   *[hands_off] Only while { $name } comes for it: never held, never on a lap against its will.
}
ideas-none-ticked = are not ticked yet; tap one, or choose Later
ideas-unknown = hold one this program does not know; reload the page
ideas-instead = { $name } rarely picks { $thing }. Ideas to try instead: { $ideas }
ideas-instead-of = { $name } does not want { $thing } much. Try something else of its kind, and let { $name } choose.
ideas-see = See all ideas
ideas-for-animal = Ideas to try with { $name }: { $ideas }
