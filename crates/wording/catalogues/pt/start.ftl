start-title = Diz-nos quem mora aqui
start-all-stays = Podes mudar tudo depois. Fica tudo nesta máquina.
start-you = O teu nome
start-you-hint = como te chamam em casa
start-animal = O nome do teu animal
start-species = Que animal é?
start-species-name = { $species ->
    [dog] cão
    [cat] gato
    [parrot] papagaio
    [rabbit] coelho
   *[other] outro animal
}
start-species-missing = falta; escolhe uma
start-others = Quem mais mora aqui?
start-others-hint = nomes separados por vírgulas; deixa vazio se moras só tu
start-zone = Onde moras (define a meia-noite)
start-home = Como chamas à tua casa
start-home-hint = só se quiseres, por exemplo: a casa junto ao parque
start-home-of = A casa de { $name }
start-zone-field = Fuso horário
start-bring = Já tinhas um caderno ou um diário? { $link }
start-bring-link = Traz um ficheiro
start-no-vet = O Sayso ajuda a reparar e a contar. Não substitui um veterinário nem um profissional de comportamento qualificado.
