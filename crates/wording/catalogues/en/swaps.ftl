# Agreed swaps. $name is the animal's.
swaps-title = Agreed swaps
swaps-earlier = Earlier times
swaps-choice = { $lead } Giving another thing on purpose may disappoint. Leave it be for an animal that is new, ill, anxious or guards things. Stop at signs of stress ({ $signs }); a strong sign stops it at once.
swaps-choice-lead = Your choice, for { $name }’s sake.
swaps-thing-food = { $thing } – food
swaps-why = Does { $name } press for the thing, or is any good thing right? Only one way tells: now and then something else comes, by chance, and we see whether { $name } presses on.
swaps-how = You answer as ever: when you are going to give something, the board says what. One time in eight it is the thing of another word. What { $name } does next is what counts, not what you think of it.
swaps-not-now = Not now: strong signs of stress were noted. Give { $name } space; agree on a calm day.
swaps-too-few-words = { $words ->
    [0] Swaps need two words or more, each with a thing of its own; { $name } has none.
   *[other] Swaps need two words or more, each with a thing of its own; { $name } has { $words }.
}
swaps-to-words = To the words
swaps-field-words = Words taking part
swaps-field-words-hint = Food is not ticked: never for food that { $name } waits for with signs of stress. Words that end a session take no part.
swaps-field-days = Days
swaps-field-days-hint = 28 are usual; you can stop at any time
swaps-field-one-in = One answer in so many
swaps-field-one-in-hint = 8 is usual, 4 the most often
swaps-agreed = Agreed
swaps-agreed-wrong = Everyone must agree: everyone who answers gives what is drawn, or stops the swaps.
swaps-agreed-everyone = Everyone who answers { $name } has agreed
swaps-begin = Begin the swaps
swaps-running = { $lead }: { $words }.
swaps-running-lead = Swaps are running
swaps-drawn = Answers drawn
swaps-swapped = Of those, another thing
swaps-as-drawn = Given as drawn
swaps-of = { $some } of { $all }
swaps-against = A stretch of four days with an answer not given as drawn can count against, never for.
swaps-rate = One answer in { $number }, since { $day }. Days left: { $days }.
swaps-stop-signs = Stop: signs of stress
swaps-stop-home = Stop: we do not want it any more
swaps-answer-how = Answer on the board under “Answer”. Not giving anything is always fine and draws nothing. Stopping is fine too; what was drawn stays.
swaps-to-board = To the board
swaps-dates = { $from } to { $to }
swaps-past = { $drawn ->
    [one] { $dates }: { $words }. One answer drawn, another thing { $swapped }, given as drawn { $given }.
   *[other] { $dates }: { $words }. { $drawn } answers drawn, another thing { $swapped }, given as drawn { $given }.
}
swaps-stopped = Stopped.
swaps-stopped-signs = Stopped because of signs of stress.
