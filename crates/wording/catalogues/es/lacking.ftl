lacking-few = { $needed ->
    [one] hace falta al menos un valor
   *[other] hacen falta al menos { $needed } valores
}; { $got ->
    [0] no hay ninguno
    [one] hay uno
   *[other] hay { $got }
}
lacking-nothing = aún no se ha observado nada
lacking-no-variation = todos los valores son iguales
lacking-one-category = las { $n } valoraciones son iguales; no se puede juzgar el acuerdo más allá del azar
lacking-nothing-shared = nada lo valoraron al menos dos personas
lacking-disconnected = { $groups } grupos de cosas nunca se compararon entre sí
lacking-separated = algunas cosas nunca perdieron ante las otras
lacking-unsettled = la estimación no se asentó
lacking-no-span = las { $n } observaciones caen en un mismo momento; no se puede medir ningún cambio
lacking-time-goes-back = los registros no están en orden de tiempo
lacking-not-fit = los registros no encajan con este método ({ $why })
lacking-choices = { $choices } opciones por ensayo de { $words } palabras; de 2 opciones hasta tantas como palabras
lacking-no-trials = una comprobación tiene al menos un ensayo
lacking-word-twice = una palabra figura dos veces
lacking-long-runs = no se halló un orden sin una palabra demasiadas veces seguidas
lacking-no-card = la palabra no tiene ficha
