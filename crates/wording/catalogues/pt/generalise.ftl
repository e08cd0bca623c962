generalise-compares = { $what ->
    [person] Pessoa
    [room] Cômodo
    [time] Tempo
    [place] Lugar do botão
    [recording] Gravação
    [chooser] Quem escolheu a palavra
   *[checks] Verificações
}
generalise-first-weeks = primeiras quatro semanas
generalise-next-weeks = semanas 5 a 12
generalise-later = depois
generalise-after-move = duas semanas depois de mudar de lugar
generalise-after-recording = duas semanas depois de uma nova
generalise-otherwise = em outros momentos
generalise-drawn = sorteada pelo caderno
generalise-chosen = escolhida por uma pessoa
generalise-blind = às cegas
generalise-open = aberta: alguém sabia
