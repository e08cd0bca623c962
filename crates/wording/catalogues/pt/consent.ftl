consent-coach-figures-1 = { $who } vê os números do seu lar: Hoje, Evidências e as outras páginas que contam. Nem o registro, nem quem anotou o quê, nem sons.
consent-coach-log-1 = { $who } lê o seu registro: cada nota, quando foi e quem anotou. Nenhum som.
consent-coach-snippets-1 = { $who } ouve os sons curtos guardados dos apertos no seu quadro. Neles podem ser ouvidas vozes do ambiente.
consent-norms-1 = Seus números contam nos valores de referência deste servidor: um lar entre muitos, sem nomes. Se você retirar, os valores calculados depois não os contam.
consent-research-1 = Seus registros podem ir para estudos aprovados por um comitê de ética, sem nomes e sem sons. Se você retirar, não vão para nenhum outro estudo. O que um estudo já tem não pode ser recuperado.
consent-ends-1 = Fica desligado até você ligar. Você pode retirar a qualquer momento, e termina na hora.
consent-coach-figures-2 = { $who } vê as páginas do seu lar com números: Hoje, Gostos, Palavras, Evidências, Dias, Padrões, verificações, ensaios de uma mudança e folhas para imprimir. Nelas estão os seus cartões de palavras com o que você escreveu, as suas imagens, as gravações dos seus botões, as datas e quem começou ou pontuou um teste. Não o registro nota por nota, nem sons guardados dos apertos.
