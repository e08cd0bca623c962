client-offline-waiting = { $n ->
    [0] Rien n’attend ici : tout ce qui a été tapé est transmis.
    [1] { $n } saisie attend ici ; elle part dès que le carnet répond.
   *[other] { $n } saisies attendent ici ; elles partent dès que le carnet répond.
}
