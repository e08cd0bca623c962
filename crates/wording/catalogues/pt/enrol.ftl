enrol-only-the-button = Só o som do próprio botão é reconhecido. Uma voz que diz a palavra de novo, a sua também, não conta como aperto: grave o botão enquanto ele toca.
enrol-proof = A prova
enrol-proof-how = Aperte “{ $says }” mais uma vez, com este aparelho onde ele vai escutar. A página diz se foi ouvido e, se não, por quê. Nada é anotado como aperto.
enrol-proof-care = Aperte onde { $name } não ouça: uma palavra que soa e não traz nada ensina que não significa nada.
enrol-no-script = Gravar e provar precisam de JavaScript. Um arquivo de som pode ser guardado sem ele.
enrol-no-sound-taken = Este caderno não recebe som das páginas. Use um navegador que ouça sozinho.
enrol-button-of = Botão { $number } de { $of }
enrol-which-button = Qual botão é?
enrol-replaces = O mesmo: substitui esta gravação
enrol-replaces-button = O botão { $number }: substitui a gravação dele
enrol-another-button = Outro botão com a mesma palavra
enrol-record-again = Gravar de novo, ou outro botão
enrol-former = Gravações anteriores ({ $count }): guardadas, não escutadas
enrol-use-again = Voltar a escutá-la
enrol-take-out = Parar de escutar esta
enrol-all-link = Gravar todos os botões de uma vez
enrol-all-title = Gravar todos os botões
enrol-all-no-words = Este quadro ainda não tem palavras. Adicione-as primeiro e depois grave os botões.
enrol-all-intro = { $words ->
    [1] Aperte o botão e pare. A página recorta o som e o mostra antes de guardar qualquer coisa.
   *[other] Aperte os { $words } botões um depois do outro na ordem abaixo, com dois segundos de silêncio após cada um. A página corta o som, dá os nomes nessa ordem e mostra tudo antes de guardar qualquer coisa.
}
enrol-all-care = Faça isso enquanto { $name } não puder ouvir, e mantenha os ouvidos longe dos botões.
enrol-all-order = Nesta ordem
enrol-all-recorded = (tem gravação)
