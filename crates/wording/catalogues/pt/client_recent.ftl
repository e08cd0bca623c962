client-recent-press = { $by ->
    [person] Apertei { $word }
    [animal] { $name } apertou { $word }
   *[unknown] Aperto: { $word }
}
client-recent-stumble = { $press } (tropeço)
client-recent-delivery = { $word }: { $answer }
client-recent-feed = Um pedaço de { $food }
client-recent-food = comida
client-recent-invited = Convidado { $word }: { $came }
client-recent-came-pressed = apertou { $word } aos { $seconds } s
client-recent-came-without = pediu do seu jeito
client-recent-came-nothing = nada na espera
client-recent-came-left = foi embora
client-recent-swaps-stopped = Trocas paradas
client-recent-asked = Pediu { $word } sem botão
client-recent-brushed = Roçou { $word }
client-recent-looked-at = Olhou para { $word }
client-recent-looked = Olhou para o quadro
client-recent-sign = Sinal ({ $level }): { $sign }
client-recent-started = Sessão começada
client-recent-ended = Sessão terminada: { $why }
client-recent-joined = Juntou-se
client-recent-left = Foi embora
client-recent-round = { $calls ->
    [1] Rodada de uma chamada começada
   *[other] Rodada de { $calls } chamadas começada
}
client-recent-drawn = Sorteado para { $word }
client-recent-kept-here = { $time } · guardado aqui
client-recent-edit = Editar
client-recent-edit-this = Editar: { $what }
client-recent-undo = Desfazer
client-recent-another-word = Outra palavra…
client-recent-which-word = Que palavra foi?
client-recent-not-i = Foi { $name } que apertou, não eu
client-recent-i-did = Fui eu que apertei
client-recent-it-stumbled = Pareceu um tropeço
client-recent-it-meant = Pareceu de propósito
client-recent-was-given = Foi dado
client-recent-was-partly = Foi dado em parte
client-recent-was-declined = Foi: agora não
client-recent-was-missed = Passou despercebido
client-recent-first-stays = O primeiro registro continua visível no Registro. A hora e o resto se mudam lá.
