start-title = Conte quem mora aqui
start-all-stays = Você pode mudar tudo depois. Tudo fica nesta máquina.
start-on-server = Você pode mudar tudo depois. Fica guardado neste servidor. Só as pessoas da sua casa veem, até você compartilhar. Quem cuida da máquina do servidor poderia ler o disco dela.
start-you = Seu nome
start-you-hint = como chamam você em casa
start-animal = O nome do seu animal
start-species = Que animal é?
start-species-name = { $species ->
    [dog] cão
    [cat] gato
    [parrot] papagaio
    [rabbit] coelho
   *[other] outro animal
}
start-species-missing = falta; escolha uma
start-others = Quem mais mora aqui?
start-others-hint = nomes separados por vírgulas; deixe vazio se você mora só
start-zone = Onde você mora (define a meia-noite)
start-home = Como você chama a sua casa
start-home-hint = só se quiser, por exemplo: a casa perto do parque
start-home-of = A casa de { $name }
start-zone-field = Fuso horário
start-bring = Já tinha um caderno ou um diário? { $link }
start-bring-link = Traga um arquivo
start-no-vet = O Sayso ajuda a observar e a contar. Não substitui um veterinário nem um profissional qualificado de comportamento.
start-linked = A sua casa já está em um servidor? { $link }
start-linked-link = Ligue este caderno a ela
start-notebook = Já existe um caderno em casa? Deixe esta página vazia. { $link }
start-notebook-link = Ligue o caderno
start-before = Ainda sem botões? { $lessons } e { $rehearse }: nada disso é anotado.
start-before-read = Leia as lições
start-before-rehearse = ensaie com um animal simulado
