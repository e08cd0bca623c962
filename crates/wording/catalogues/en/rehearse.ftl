# Rehearsing on a simulated animal. $name is the animal's name: it never stands where a language needs another form of it.
# $word is what a button says, $thing the short name of a thing.
rehearse-title = Rehearse
rehearse-intro = Practise on an animal that cannot be harmed, before the buttons arrive or whenever you like. Nothing of it goes into the notebook.
rehearse-simulation = A simulation: real animals differ.
rehearse-assumes = What it assumes
rehearse-assumes-short = In short: a showing teaches most where its thing comes at once and is taken; less soon after the last. What is shown while the animal is elsewhere or still has something teaches nothing; at a sign it takes a little back. “Not now”, something else, or no answer takes a little back. Hurry, calling, barring the way and a long session strain, until a sign shows and the animal leaves. All goes about ten times as fast as in our simulated homes. How much of each is our choice: nobody has measured it.
rehearse-name = { $who ->
    [eager] Zip
    [wary] Moth
    [old] Bramble
    [quick] Pico
   *[guards] Rusk
}
rehearse-character = { $who ->
    [eager] Zip, a young dog: comes at once, tires late
    [wary] Moth, a cat: comes when nothing is asked
    [old] Bramble, an old dog: every step takes its time
    [quick] Pico, a parrot: learns quickly, presses out of curiosity too
   *[guards] Rusk, a dog: minds being disturbed while eating
}
rehearse-with = With whom
rehearse-exercise = { $which ->
    [likes] What does it like?
    [showing] Press, say, give
    [leaving] Let it go
    [inviting] Five invitations
    [evening] An evening of presses
    [stuck] A word that is stuck
   *[free] Free play
}
rehearse-short = { $which ->
    [likes] Pairs of things held out: what is chosen, and how sure that is.
    [showing] Two minutes of showing two or three words.
    [leaving] Somebody wants to go, and may.
    [inviting] Each with its whole wait of five seconds.
    [evening] Up to thirty presses, hurried, as many as the animal makes: each answered fairly, also with “not now”.
    [stuck] A word does not get on. Try things, then say what holds it up.
   *[free] Five minutes of whatever you like.
}
rehearse-how = { $which ->
    [likes] Tap “Hold out two”: you hold one thing on each side. Then hold still until { $name } has chosen, or chosen neither, and is done with it. Twelve pairs tell most; fewer tell less.
    [showing] Tap a button: you press it and say its word. Tap it again to give the thing. Give at once, share the presses between the words, and leave time to eat and play.
    [leaving] Show words as you like. When { $name } goes away, let it be: no calling, nothing in the way. Then end.
    [inviting] Tap “Invite” and a button: you hold the thing in view. Then do nothing for five seconds. Pressed? Say the word and give at once. Not pressed? Press it yourself, say it, give it. Where { $name } has gone away, let it be.
    [evening] { $name } presses. Answer each press: give it, say “not now”, or give something else. Treats run out.
    [stuck] The outlined word does not get on. Something holds it up: try one thing after the other, watch what { $name } does, and end when you have an idea. Then you say what it is, and hear what was true.
   *[free] All that the Board has, and what tempts one besides: calling, standing in the way, saying it again.
}
rehearse-choose = Rehearse
rehearse-fits = { $which ->
    [showing] Before the first session
    [inviting] Before the first invitation
   *[evening] Once presses are answered
}
rehearse-others = Other exercises
rehearse-lessons = Lessons for this
rehearse-start = Start
rehearse-see = See how it went
rehearse-all = All exercises
rehearse-no-script = Rehearsing needs scripts. The lessons do without.
rehearse-room = The room from above: the board and you at the top, a bed at the lower right, the open door at the lower left.
rehearse-room-likes = The room from above: you at the top, with a thing in each hand once you hold two out; a bed at the lower right, the open door at the lower left.
rehearse-happens = What happens
rehearse-words = Buttons of the board
rehearse-acts = What you can do
rehearse-keys-words = the buttons, in order
rehearse-keys-count = These keys count here
rehearse-keys-before = With a keyboard: { $list }.
rehearse-keys-one = { $key }: { $does }
rehearse-word = { $thing ->
    [treat] Treat
    [ball] Ball
    [out] Out
   *[company] Company
}
rehearse-act = { $does ->
    [two] Hold out two
    [offer] Invite
    [again] Say it again
    [not-now] Not now
    [instead] Something else
    [call] Call over
    [block] Stand in the way
    [back] Step away
    [ready] Have all at hand
    [softer] Soften the sound
    [quiet] Close the windows
   *[end] End
}
rehearse-you = { $does ->
    [two] You hold out two things.
    [show] You press “{ $word }” and say it.
    [give] You give: { $word }.
    [offer] You hold in view: { $word }. Wait.
    [again] You say it again.
    [not-now] You say “not now”.
    [instead] You say “not now” and give something else: { $word }.
    [call] You call { $name } over.
    [block] You stand in the way.
    [back] You step away.
    [ready] You fetch the things and keep them at hand.
    [softer] You lay a cloth over the loudspeakers: all buttons are softer.
    [quiet] You close windows and doors.
   *[end] You end.
}
rehearse-you-gone = { $does ->
    [call] You call: { $name } hears it outside and stays away.
   *[block] You stand in the doorway: { $name } stays away.
}
rehearse-seen = { $what ->
    [chose] { $name } chooses and has it: { $word }.
    [chose-none] { $name } chooses neither.
    [looks-up] { $name } looks up.
    [comes] { $name } comes over.
    [joined] { $name } is at the board.
    [joined-likes] { $name } is in front of you.
    [looks] { $name } looks at “{ $word }”.
    [brushed] { $name } brushes “{ $word }”: no sound.
    [pressed] { $name } presses “{ $word }”.
    [took] { $name } takes it: { $word }.
    [finished] { $name } has finished.
    [ignored] { $name } does not take it.
    [wanders] { $name } turns to something else.
    [leaves] { $name } goes away.
    [gone] { $name } has gone.
    [barred] { $name } cannot get past you.
    [eases] { $name } is at ease again.
    [wait-over] Five seconds are over.
    [noise] Outside something bangs.
    [startled] { $name } starts back from “{ $word }”.
    [fetches] Not at hand: { $word }. You go and fetch it.
    [fetched] You are back with it: { $word }.
   *[unanswered] “{ $word }” was left without an answer.
}
rehearse-sign = { $level ->
    [strong] Strong sign from { $name }: { $sign }.
   *[mild] Mild sign from { $name }: { $sign }.
}
rehearse-held = On the left: { $left }. On the right: { $right }.
rehearse-chosen = Chosen, of times held out: { $word }
rehearse-leans-away = leans away from what is offered
rehearse-over = { $why ->
    [time] The time is up.
    [done] That was all of it.
   *[ended] It is over.
}
rehearse-hand-on = Hand this on
rehearse-hand-on-what = This address leads to the same exercise with the same animal, and to its lessons. It says nothing about your home.
rehearse-copy = Copy the address
rehearse-copied = Copied
rehearse-send = Send it
rehearse-went = How it went
rehearse-one-thing = One thing for next time
rehearse-change = { $change ->
    [soften] Once { $name } started back from “{ $word }”: do not press it again before it is softer.
    [longer] Stay for the two minutes, as long as { $name } likes to.
    [longer-evening] Stay for the evening, as long as { $name } likes to.
    [more-invitations] Invite five times, each with its whole wait.
    [let-choose] Hold still until { $name } has chosen or turned away. No second word, no next pair.
    [more-pairs] Hold out more pairs: each thing at least five times.
    [step-away] At a strong sign step away at once, or end. Everything else can wait.
    [let-go] When { $name } goes, let it be so: no calling, nothing in the way, nothing shown.
    [let-eat] Let { $name } have in peace what it took. Nothing is pressed or shown until that is over.
    [pause] At a mild sign pause for five seconds and leave room.
    [wait] Wait the five seconds out without a word or a touch. Help comes after them.
    [do-not-push] No calling, barring or saying it again: { $name } comes freely or not at all.
    [answer] Answer every press, also with “not now”.
    [sooner] Give sooner. Keep the thing in your hand before you press.
    [when-there] Show when { $name } is at the board, and things that are wanted just then.
    [slower] Leave more time between presses.
    [instead] Now and then give something else when it is “not now” for “{ $word }”.
    [even] Share the presses: show “{ $least }” as often as “{ $word }”.
    [oftener] Show more: a few words, again and again.
    [give] Give what the button says, after every press of yours.
    [try] Try more kinds of things before you say what holds it up: show, hold two out, have it at hand, soften, close the windows.
    [stay] { $name } had not gone yet. Stay until { $name } does, then let it be.
    [too-soon] Too little happened to say anything. Try again, and take your time.
    [after-wait] When the five seconds are over, press it yourself, say it, give it. The wait never ends in nothing.
    [when-there-invited] Invite when { $name } is at the board. Who is elsewhere is left in peace.
    [wanted] Invite with what { $name } wants just then.
    [wanted-shown] Show what { $name } wants just then.
    [vet] In life: stop, and ask a veterinarian. Lessons can wait.
    [give-oftener] Give what “{ $word }” says more often. Where it cannot be had, give it at another time, unasked.
    [used-up] All treats of the evening were given. Go on answering “{ $word }” with “not now”, or with something else.
    [shorter] Make it shorter: end while { $name } still likes it.
    [shorter-left] Whoever leaves has ended it. Let that be the end for the day.
    [give-never] Give what a button says as often as it can be had, first of all for “{ $word }”. What cannot be had now may be had at another time.
   *[carry-on] Carry on like this.
}
rehearse-because = { $change ->
    [soften] Pressed again after { $name } started back from it: { $figure }
    [longer] You ended it after { $figure }.
    [longer-evening] You ended it after { $figure }.
    [more-invitations] Invitations: { $figure }
    [let-choose] Choices left in peace: { $figure }
    [more-pairs] Pairs: { $figure }
    [step-away] Strong signs heeded: { $figure }
    [let-go] Leaving honoured: { $figure }
    [let-eat] Had in peace, of things taken: { $figure }
    [pause] Mild signs heeded: { $figure }
    [wait] Waits kept: { $figure }
    [do-not-push] Times you called, barred the way or said it again: { $figure }
    [answer] Presses answered: { $figure }
    [sooner] From press to thing: { $figure }. Aim for 2 s at most.
    [when-there] Taken, of what you showed: { $figure }
    [slower] Showings: { $figure }
    [instead] Presses of “{ $word }” answered with “not now”: { $figure }
    [even] Showings: { $figure }
    [oftener] Showings: { $figure }
    [give] Given, of what you pressed: { $figure }
    [try] Kinds of things tried: { $figure }
    [stay] { $name } did not go away, so nothing can be said of letting go.
    [too-soon] Nobody was invited; nothing was shown, given or answered.
    [after-wait] Shown and given after the wait: { $figure }
    [when-there-invited] Invited while { $name } was at the board or on the way: { $figure }
    [wanted] Taken, of what you gave after your invitations: { $figure }
    [wanted-shown] Taken, of what you showed at the board: { $figure }
    [vet] { $name } was not well. In life nobody sees that for certain at a board: a change in eating, moving or pressing is reason enough.
    [give-oftener] “{ $word }” fell here. Of its presses, answered with “not now” or something else: { $figure }
    [used-up] “{ $word }” fell all the same. Of its presses, answered with “not now” or something else: { $figure }
    [shorter] At the board until you last asked for something: { $figure }. For { $name } it grows long after about { $word }.
    [shorter-left] { $name } left after { $figure } at the board. Once { $name } was back, you went on.
    [give-never] No press here was given what it says. Of the presses of “{ $word }”, answered with “not now” or something else: { $figure }
    [carry-on-likes] Each choice was left to { $name }.
    [carry-on-no-choice] No pair came to a choice, and nothing you did stood in the way.
   *[carry-on] Nothing here stood in the way of learning.
}
rehearse-would-change = The next rehearsal may name something else: this one was short, and few records tell little.
rehearse-care-strong = In life, a strong sign ends the session. Keep your distance, and ask a veterinarian or a qualified behaviour professional before you go on.
rehearse-care-guards = In life, whoever guards food may bite: take nothing from the mouth or the bowl, keep children away, and ask a qualified behaviour professional.
rehearse-care-likes = In life do not test likes with food or things that somebody guards.
rehearse-measured = How you taught
rehearse-measured-what = The figures of real use, of this one rehearsal.
rehearse-row = { $which ->
    [paid] Given, of what you pressed
    [held] Choices left in peace
    [delay] From your press to the thing
    [answer-delay] From { $name }’s press to the thing
    [pace] Showings
    [balance] Between the words
    [taken] Taken, of what you showed
    [waits] Waits kept
    [answered] Presses answered
    [alternatives] Something else given, where it was not what was pressed
    [leaving] Leaving honoured
    [mild] Mild signs heeded
    [strong] Strong signs heeded
    [eaten] Had in peace, of things taken
    [given] Things given
    [after-wait] Shown and given after the wait
    [invited-there] Invited while { $name } was there or on the way
   *[pushes] Called, barred or said again
}
rehearse-times = { $times ->
    [one] once
   *[other] { $times } times
}
rehearse-k-of-n = { $k } of { $n }
rehearse-count = { $word } { $times }
rehearse-truth = What was true
rehearse-truth-what = In life nobody can see this. Here the simulation tells how likely { $name } presses a word’s button when its thing is wanted. The last column: had everything come as soon as can be, at most a second sooner.
rehearse-of-word = Word
rehearse-before = before
rehearse-after = after
rehearse-sooner = 1 s sooner
rehearse-liked = { $name } likes, most first: { $things }.
rehearse-likes-told = { $same ->
    [yes] Chosen most was also what is liked most. Yet each was held out at most { $times }, and a choice or two by chance turns the order: few pairs cannot tell likes that lie close.
   *[no] Chosen most: { $chosen }. Liked most: { $liked }. Each was held out at most { $times }, and a choice or two by chance turns the order: few pairs cannot tell likes that lie close.
}
rehearse-line = The whole of it
rehearse-line-what = { $moments } moments in { $seconds }: what { $name } did above, what you did below.
rehearse-lane = { $lane ->
    [animal] { $name }
    [signs] Signs
   *[you] You
}
rehearse-marks = Ring: came, offered, “not now” or stepped away. Dot: a press. Square: taken or given. Cross: went, or was pushed. Triangle: a sign, filled where strong.
rehearse-when = When
rehearse-what = What
rehearse-list = All moments as a list
rehearse-watch = Watch it again
rehearse-same = The same again
rehearse-another = With another day of { $name }
rehearse-show-on = Show this to somebody
rehearse-show-on-what = The address of this page holds the whole rehearsal and nothing about your home. Send it to your coach if you like; nobody sees it otherwise.
rehearse-at-home = This notebook answers at home alone, so its whole address opens nowhere else. What is copied is the part after it: whoever has a notebook of their own, or is at the same server, puts it behind theirs.
rehearse-no-such = There is no such exercise.
rehearse-no-acts = What was done cannot be read from this address: { $item }. Begin the exercise anew.
rehearse-practise = Rehearse it: { $title }
rehearse-who = { $who ->
    [eager] Zip, a young dog
    [wary] Moth, a cat
    [old] Bramble, an old dog
    [quick] Pico, a parrot
   *[guards] Rusk, a dog that guards food
}
rehearse-whoswho = Whom you may meet
rehearse-the-lesson = The lesson for this: { $title }
rehearse-gain = All else as it was, this alone would have brought the words from { $was } to { $would }, on average.
rehearse-gain-given = Had the thing been given after each of the presses left without an answer, all else as it was, the words would have come from { $was } to { $would }, on average. “Not now” is an answer, too, and brings less.
rehearse-asks-more = { $name } asks more often than before for: { $things }
rehearse-asks-less = { $name } asks less often than before for: { $things }
rehearse-asks-same = { $name } asks about as often as before for everything.
rehearse-stuck-word = The word that does not get on: “{ $word }”
rehearse-before-shown = From the notebook, shown in the last three weeks: { $list }. For any one word, under two a day (42 in three weeks) is little.
rehearse-name-it = What holds “{ $word }” up?
rehearse-name-help = Say what you think before you read on. Nobody is told.
rehearse-name-button = Say it
rehearse-held-up = { $hit ->
    [yes] You said so, and so it was: { $cause }.
   *[no] It was something else: { $cause }. You said: { $said }.
}
rehearse-showed = { $cause ->
    [not-wanted] How it showed: its thing left lying or passed over, { $figure }. “Hold out two” shows that without a button.
    [too-late] How it showed: time until you were back with it, { $figure }. With all at hand nothing is late.
    [avoided] How it showed: started back when you pressed it, { $figure }. Softened, the button is pressed.
    [time-or-place] How it showed: a sign or going away right after a bang, { $figure }. With the windows closed there is none.
    [health] How it showed: things left, even the best liked, { $figure }; and every step slow. Nothing you tried mends that. In life: ask a veterinarian first.
   *[too-little] How it showed: nothing stood against it, and each showing taught. Shown: { $figure }.
}
rehearse-unseen = { $cause ->
    [not-wanted] You did not come to see it: give its thing, or hold out two.
    [too-late] You did not come to see it: show the word and give its thing.
    [avoided] You did not come to see it: press its button while { $name } is near.
    [time-or-place] You did not come to see it: wait for a bang, and look for a sign.
    [health] You did not come to see it: give what { $name } likes best. In life: ask a veterinarian first.
   *[too-little] You did not come to see it: show the word.
}
rehearse-put-right = { $cause ->
    [too-late] You put it right before it could show: with all at hand nothing was late any more.
    [avoided] You put it right before it could show: softened, the button frightens no more.
   *[time-or-place] You put it right before it could show: with the windows closed no bang comes through.
}
rehearse-showings = three weeks before: { $before }; here: { $here }
rehearse-notebook = What the notebook would have said
rehearse-notebook-what = From six weeks of records of such a home and this session, the same rules as in real use. What it calls first is not always true.
rehearse-advisor = { $cause }: { $bearing }.
rehearse-three-more = Words that sound alike, a recording that is hard to make out, and people who answer differently can also hold a word up. This exercise does not have them.
rehearse-share = { $club ->
    [yes] Share this with { $name } and the club
   *[no] Share this with { $name }
}
rehearse-share-what = { $club ->
    [yes] What goes to { $name }, on the page Agreed: exercise and animal, your name, and of “How you taught” the seconds and the shares of what was taken, waited, answered, heeded, let go and left in peace, each with its count. What does not: how fast and how evenly you showed, what you pressed without giving, where the animal was when you invited, what came after a wait, how often you called, barred the way or said it again; no moment of it, and not what was true. The other coaches of the club read it, too: this was handed over in its name. Without this tap nobody sees it; on that page you can take it back.
   *[no] What goes to { $name }, on the page Agreed: exercise and animal, your name, and of “How you taught” the seconds and the shares of what was taken, waited, answered, heeded, let go and left in peace, each with its count. What does not: how fast and how evenly you showed, what you pressed without giving, where the animal was when you invited, what came after a wait, how often you called, barred the way or said it again; no moment of it, and not what was true. Whoever goes on in { $name }’s place reads it, too. Without this tap nobody sees it; on that page you can take it back.
}
