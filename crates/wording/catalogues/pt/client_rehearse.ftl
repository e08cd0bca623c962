client-rehearse-press = Apertar e dizer
client-rehearse-give = Dar
client-rehearse-asked = { $name } apertou: dar
client-rehearse-offer = Convidar com isto
client-rehearse-instead = Dar isto no lugar
client-rehearse-ready = Nada começou. Tudo se move quando você começar.
client-rehearse-begun = Começa.
client-rehearse-wait = Espere: { $seconds } s
client-rehearse-then = Agora aperte, diga e dê.
client-rehearse-pause = Um sinal leve: faça uma pausa e deixe espaço.
client-rehearse-of = { $passed } de { $most }
client-rehearse-invited = Convite { $n } de { $all }
client-rehearse-treats = { $count ->
    [one] resta { $count } petisco
   *[other] restam { $count } petiscos
}
client-rehearse-paused = Em pausa enquanto a página não estava à vista.
client-rehearse-away = O caderno não responde. O que você faz fica aqui e é enviado quando ele voltar; o que resulta aparece então.
client-rehearse-which = Qual? Toque no botão.
client-rehearse-hold = Fique imóvel até a escolha.
client-rehearse-waits = Espere
client-rehearse-now-press = Agora aperte e diga
client-rehearse-end-again = Aperte { $key } mais uma vez para terminar.
client-rehearse-none = Acabou: agora não, ou outra coisa
client-rehearse-none-here = Acabou
