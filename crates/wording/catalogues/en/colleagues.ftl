# Several coaches in a club: another one in the place of one. $from, $to and $name are names of coaches.
colleagues-title = Colleagues
colleagues-intro = Other coaches of your club can take your place: for a home for good, or for all of yours while you are away. Each home decides.
colleagues-alone = You have no other coach in your club.
colleagues-who = Who?
colleagues-cover = While you are away
colleagues-cover-how = A home that shares with the whole club stays open to your colleague as it is. Every other home is asked; until it says yes, your colleague sees nothing of it. It ends by itself after the last day.
colleagues-first = First day
colleagues-last = Last day
colleagues-cover-me = Ask the homes
colleagues-covered-by = { $name } covers for you, { $first } to { $last }.
colleagues-you-cover = You cover for { $name }, { $first } to { $last }.
colleagues-end = End
colleagues-day-wrong = must be a day from { $first } to { $last }
colleagues-hand-over = Hand over
colleagues-hand-over-title = Hand over: { $home }
colleagues-hand-over-how = The home decides. When it says yes, what it shares with you ends at that moment, and begins with your colleague, who then reads what you and the home wrote to each other.
colleagues-propose = Ask the home
colleagues-handed-what = { $from } would like to hand your home over to { $to }. You decide.
colleagues-cover-what = { $from } is away from { $first } to { $last }. { $to } would stand in. You decide.
colleagues-ends = What ends
colleagues-ends-club = Until now every coach of the club has this. From then on { $to } alone.
colleagues-begins = What begins
colleagues-begins-for-days = What begins, for those days alone
colleagues-reads-on = { $to } also reads what { $from } and you wrote to each other, goes on with what is open, and may end it.
colleagues-done = { $asked ->
    [one] { $asked } home was asked.
   *[other] { $asked } homes were asked.
} { $open ->
    [one] { $open } home is open to your colleague already.
   *[other] { $open } homes are open to your colleague already.
}
colleagues-reads-back = Back again, { $from } reads what { $to } and you wrote to each other on those days.
