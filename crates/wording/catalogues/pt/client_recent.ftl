client-recent-press = { $by ->
    [person] Carreguei em { $word }
    [animal] { $name } carregou em { $word }
   *[unknown] Toque: { $word }
}
client-recent-stumble = { $press } (tropeção)
client-recent-delivery = { $word }: { $answer }
client-recent-feed = Um pedaço de { $food }
client-recent-food = comida
client-recent-invited = Convidado { $word }: { $came }
client-recent-came-pressed = carregou em { $word } aos { $seconds } s
client-recent-came-without = pediu à sua maneira
client-recent-came-nothing = nada na espera
client-recent-came-left = foi-se
client-recent-swaps-stopped = Trocas paradas
client-recent-asked = Pediu { $word } sem botão
client-recent-brushed = Roçou { $word }
client-recent-looked-at = Olhou para { $word }
client-recent-looked = Olhou para o quadro
client-recent-sign = Sinal ({ $level }): { $sign }
client-recent-started = Sessão começada
client-recent-ended = Sessão terminada: { $why }
client-recent-joined = Juntou-se
client-recent-left = Foi-se
client-recent-round = { $calls ->
    [one] Ronda de uma começada
   *[other] Ronda de { $calls } começada
}
client-recent-drawn = Sorteado para { $word }
client-recent-kept-here = { $time } · guardado aqui
client-recent-edit = Editar
client-recent-edit-this = Editar: { $what }
client-recent-undo = Anular
client-recent-undo-this = Anular: { $what }
client-recent-another-word = Outra palavra…
client-recent-which-word = Que palavra foi?
client-recent-not-i = Foi { $name } que carregou, não eu
client-recent-i-did = Fui eu que carreguei
client-recent-it-stumbled = Pareceu um tropeção
client-recent-it-meant = Pareceu de propósito
client-recent-was-given = Foi dado
client-recent-was-partly = Foi dado em parte
client-recent-was-declined = Foi: agora não
client-recent-was-missed = Passou despercebido
client-recent-first-stays = O primeiro registo fica visível no registo. A hora e o resto mudam-se lá.
