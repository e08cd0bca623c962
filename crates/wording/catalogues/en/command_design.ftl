command-design-listed = { $id }  { $question }  { $design }, { $points ->
    [one] { $points } point
   *[other] { $points } points
} from { $first }
command-design-stopped = Stopped. Put everything back as it was.
command-design-no-trial = the notebook knows no trial { $id }; see `sayso design list`
command-design-not-drawn = the order of this trial cannot be drawn from its plan: { $why }
command-design-heading = { $question } { $design }; { $measure } { $unit ->
    [day] each day
   *[session] each session
}
command-design-now = now: { $what }
command-design-rest = rest, everything as usual; strong signs of stress were noted
command-design-nothing = everything as usual
command-design-within = deliver within { $seconds } s
command-design-usual = as usual
command-design-point = point { $point } of { $of }: { $what }
command-design-departure = not as planned: { $what }
command-design-so-far = figures so far; nothing is claimed from them, and looking tempts to stop:
command-design-no-test = no test: { $why }
command-design-open-end = open
command-design-difference = difference, changed less usual: { $value } (95% interval { $low } to { $high }, n = { $n } points)
command-design-distance = mean distance from the goal: { $seconds }
command-design-orders = orders as extreme: { $extreme } of { $of }; { $p }
command-design-standards = the design { $verdict }: { $chances ->
    [one] { $chances } chance
   *[other] { $chances } chances
} to show an effect, at least { $fewest ->
    [one] { $fewest } point
   *[other] { $fewest } points
} each
command-design-missing = points over without a value: { $n } of { $of }
command-design-mean = mean: { $mean }
command-design-nap = { $name }: NAP { $nap } (90% interval { $low } to { $high }, n = { $n_a } and { $n_b }), Tau-U { $tau } ({ $p })
command-design-which-animal = say which animal with --animal
command-design-not-today = not today: strong signs of stress were noted; give space and plan on a calm day
command-design-too-soon = --first must be { $day } or later: the order is drawn before it begins
command-design-no-random = this machine gives no random numbers: { $why }
command-design-planned = Planned: { $id }
command-design-about = It is about { $name }, not the other way round: { $name } may leave at any time, and a strong sign of stress ends the trial.
command-design-see = See each day's condition with `sayso design show { $id }`.
