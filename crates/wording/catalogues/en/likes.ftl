likes-test-title = { $format ->
    [paired] Likes test: two at a time
    [multiple] Likes test: all in a row
    [single] Likes test: one at a time
   *[free_access] Likes test: all at once, timed
}
likes-stop-here = Stop here: strong signs of stress were noted. Give space and do not lure back. The test can go on another day.
likes-trial = Trial { $number } of { $of } · round { $round } of { $rounds }
likes-done = All trials are done. Thank you, { $name }.
likes-see-ranking = See the ranking
likes-noted-already = That was noted already; nothing was changed. Use Undo if the last answer is wrong.
likes-stop-for-now = Stop for now
likes-goes-on-later = – what was noted is kept; the test can go on later.
likes-last-chose = Last: { $thing }
likes-last-none = Last: chose none
likes-last-away = Last: walked away
likes-last-watched = Last: watched { $seconds } s
likes-undo = Undo
likes-away-is-an-answer = { $name } walked away, and that is an answer. Go on when { $name } comes back unasked, or another day.
likes-stand-in = { $thing } cannot be held up: offer { $stand_in } for it. If { $name } picks it, go there at once.
likes-no-stand-in = { $thing } cannot be held up beside another thing. Offer what stands for it at home, always the same, such as the lead; or time it freely.
likes-name-stand-in = Name it on the card
likes-time-freely = Time it freely
likes-needs-stand-in = cannot be held up: name what stands for it on its card, or use the stopwatch
likes-shown-as = shown as: { $stand_in }
likes-pieces = { $pieces } × { $thing }
likes-food-left = Food rewards left today: { $kcal } kcal ({ $pieces }). A piece that is taken is counted.
likes-food-short = Not enough is left for one piece of everything here. Stop for today, or cut smaller pieces and edit the card.
likes-food-unknown = How much food { $name } may have today is not known. A piece that is taken is counted all the same.
likes-in-front = in front of { $name }
likes-to-the-left = { $name }’s left
likes-to-the-right = { $name }’s right
likes-far-left = 1, { $name }’s far left
likes-far-right = { $place }, { $name }’s far right
likes-lay-one = Put this out; tap it if { $name } comes to it
likes-lay = Put these out, as { $name } sees them; tap what { $name } takes
likes-lay-all = Put all of these out, in this order from { $name }’s left
likes-did-not-come = Did not come
likes-chose-none = Chose none
likes-walked-away = Walked away
likes-how-to-hold = Stand behind the middle, hold both alike, look at neither. Let what was taken be enjoyed; put the others away.
likes-two-at-once = If two are taken at once, note nothing and offer them again.
likes-half-a-minute = No choice within about half a minute is “none”.
likes-move-freely = Let { $name } move freely; five minutes are usual. Time what { $name } is busy with, one thing at a time.
likes-begin = Begin
likes-times = Times in seconds
likes-seconds-there = Seconds the things were there
likes-seconds-busy = { $thing }: seconds busy with it
likes-pieces-eaten = { $thing }: pieces eaten
likes-note-times = Note these times
likes-away-at-once = Walked away at once
