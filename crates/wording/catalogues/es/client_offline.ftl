client-offline-waiting = { $n ->
    [0] Aquí no espera ningún toque: todos están entregados.
    [one] { $n } toque espera aquí y se envía cuando el cuaderno responda.
   *[other] { $n } toques esperan aquí y se envían cuando el cuaderno responda.
}
