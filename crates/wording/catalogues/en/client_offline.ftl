# In the place of a page that cannot be had.
client-offline-waiting = { $n ->
    [0] No tap waits here: all so far were handed over.
    [one] { $n } tap waits here and is sent once the notebook answers.
   *[other] { $n } taps wait here and are sent once the notebook answers.
}
