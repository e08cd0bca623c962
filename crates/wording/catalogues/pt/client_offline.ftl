client-offline-waiting = { $n ->
    [0] Nenhum toque espera aqui: todos foram entregues.
    [1] { $n } toque espera aqui e é enviado quando o caderno responder.
   *[other] { $n } toques esperam aqui e são enviados quando o caderno responder.
}
