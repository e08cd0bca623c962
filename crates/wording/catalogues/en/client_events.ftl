# What happened, in words that the pages and the scripts both say.
client-events-given = given
client-events-partly = partly given
client-events-declined = not now
client-events-alternative = not now, something else
client-events-missed = missed
client-events-took = took it
client-events-ignored = ignored it
client-events-left = left
client-events-pressed-again = pressed again
client-events-end-done = the plan was done
client-events-end-left = { $name } left
client-events-end-strong-sign = a strong sign
client-events-end-closing-word = closing word
client-events-end-interrupted = something came up
client-events-level-joining = taking part
client-events-level-mild = mild
client-events-level-strong = strong
