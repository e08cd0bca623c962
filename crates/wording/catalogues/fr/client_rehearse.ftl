client-rehearse-press = Appuyer et dire
client-rehearse-give = Donner
client-rehearse-asked = { $name } a appuyé : donner
client-rehearse-offer = Inviter avec ceci
client-rehearse-instead = Donner ceci à la place
client-rehearse-ready = Rien n’a commencé. Tout bouge dès que tu commences.
client-rehearse-begun = Cela commence.
client-rehearse-wait = Attends : { $seconds } s
client-rehearse-then = Maintenant appuie, dis et donne.
client-rehearse-pause = Un signe léger : fais une pause et laisse de la place.
client-rehearse-of = { $passed } sur { $most }
client-rehearse-invited = Invitation { $n } sur { $all }
client-rehearse-treats = { $count ->
    [one] { $count } friandise restante
   *[other] { $count } friandises restantes
}
client-rehearse-paused = En pause tant que la page n’était pas visible.
client-rehearse-away = Le carnet ne répond pas. Ce que tu fais reste ici et sera envoyé à son retour ; la suite se verra alors.
client-rehearse-which = Lequel ? Touche son bouton.
client-rehearse-hold = Ne bouge plus avant le choix.
client-rehearse-waits = Attends
client-rehearse-now-press = Maintenant appuie et dis
client-rehearse-end-again = Appuie encore une fois sur { $key } pour terminer.
client-rehearse-none = Plus aucune : pas maintenant, ou autre chose
client-rehearse-none-here = Plus aucune
