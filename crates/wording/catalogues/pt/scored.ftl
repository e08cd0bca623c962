# What one scored oneself, and what there is to score.
scored-title = O que você anotou
scored-intro = Respostas de testes de gostos e verificações que você mesmo anotou. O que outros anotaram não está aqui, nem o que teria sido certo.
scored-none = Nada ainda.
scored-likes = Testes de gostos
scored-to-score = Para anotar agora
scored-back = Para o Quadro
