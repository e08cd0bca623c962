ideas-name = { $key ->
    [chicken] Frango cozido, do tamanho de uma ervilha
    [cheese] Queijo, do tamanho de uma ervilha
    [carrot] Cenoura, uma fatia fina
    [apple] Maçã sem miolo, um cubinho
    [beans] Vagem cozida, uma
    [beef] Carne bovina magra cozida, do tamanho de uma ervilha
    [turkey] Peru cozido, do tamanho de uma ervilha
    [egg] Ovo cozido, do tamanho de uma ervilha
    [salmon] Salmão cozido, uma lasca pequena
    [kibble] Ração, um grão
    [pellet] Granulado da comida habitual, um
    [sunflower] Semente de girassol sem sal, uma
    [millet] Painço, uma pitada
    [pepper] Pimentão vermelho, uma tirinha
    [dandelion] Dente-de-leão, uma folha
    [parsley] Salsinha, um raminho
    [coriander] Coentro, um raminho
    [hay] Feno, um talo doce
    [tug] Puxa
    [ball] Bola
    [chase] Corre
    [squeak] Brinquedo que apita
    [wand] Varinha com pena
    [crinkle] Bola de papel
    [toss] Rato de pano
    [bell] Sino
    [shred] Papel para rasgar
    [peekaboo] Achou
    [willow] Bola de vime
    [tunnel] Túnel
    [rub] Carinho na barriga
    [scratch] Coçar o peito
    [brush] Escova
    [cheek] Carinho na bochecha
    [head] Coçar a cabeça
    [forehead] Carinho na testa, no chão
    [paw] Dar a pata
    [spin] Roda
    [touch_hand] Toca na mão
    [high_five] Toca aqui
    [step_up] Sobe
    [turn] Vira
    [target] Toca no bastão
    [up] De pé
    [garden] Jardim
    [walk] Passeio
    [sniff] Farejar em uma caixa de folhas
    [window] Janela
    [box] Caixa de papelão
    [room] Outro cômodo, com você
    [pen] Cercado lá fora
    [bed] Cama
    [sofa] Sofá, ao seu lado
    [perch] Poleiro tranquilo
    [hide] Casinha
   *[other] { $key }
}
ideas-label = { $key ->
    [chicken] frango
    [cheese] queijo
    [carrot] cenoura
    [apple] maçã
    [beans] vagem
    [beef] carne
    [turkey] peru
    [egg] ovo
    [salmon] salmão
    [kibble] ração
    [pellet] grão
    [sunflower] semente
    [millet] painço
    [pepper] pimentão
    [dandelion] folha
    [parsley] salsa
    [coriander] coentro
    [hay] feno
    [tug] puxa
    [ball] bola
    [chase] corre
    [squeak] apito
    [wand] pena
    [crinkle] papel
    [toss] rato
    [bell] sino
    [shred] papel
    [peekaboo] achou
    [willow] vime
    [tunnel] túnel
    [rub] carinho
    [scratch] coça
    [brush] escova
    [cheek] carinho
    [head] coça
    [forehead] testa
    [paw] pata
    [spin] roda
    [touch_hand] mão
    [high_five] toca
    [step_up] sobe
    [turn] vira
    [target] bastão
    [up] de pé
    [garden] jardim
    [walk] passeio
    [sniff] fareja
    [window] janela
    [box] caixa
    [room] quarto
    [pen] cercado
    [bed] cama
    [sofa] sofá
    [perch] poleiro
    [hide] casinha
   *[other] { $key }
}
ideas-title = Do que { $name } pode gostar?
ideas-four = Toque em quatro coisas ou mais, de vários tipos. { $name } decide depois.
ideas-health = Saúde:
ideas-other-kinds = Coisas de outros tipos
ideas-figures = kcal: valores habituais por pedaço (USDA e de memória); confira na embalagem. As ideias: prática comum, sem fonte.
ideas-add = Adicionar
ideas-own = Algo seu
ideas-kind = { $kind ->
    [food] comida
    [play] brincadeira
    [touch] carinho
    [training] um exercício
    [exploring] explorar
   *[rest] descanso
}
ideas-care = { $care ->
    [guarding] Não para um animal que protege comida ou brinquedos. Se { $name } ficar tenso ou rosnar, dê espaço e pergunte a um profissional qualificado de comportamento.
    [slipping] Em um chão que não escorregue; com patas rígidas ou ainda em crescimento, pergunte antes a um veterinário.
    [small_parts] Nada que se possa arrancar e engolir; guarde depois.
    [size] Grande demais para ser engolida ou ficar presa na garganta; retire quando estiver gasta.
   *[hands_off] Só enquanto { $name } vier buscar: nunca preso, nunca no colo à força.
}
ideas-none-ticked = não estão marcadas; toque em uma, ou escolha Mais tarde
ideas-unknown = incluem uma que este programa não conhece; recarregue a página
ideas-instead = { $name } raramente escolhe { $thing }. Ideias para tentar em vez disso: { $ideas }
ideas-instead-of = { $name } não quer muito { $thing }. Tente outra coisa do mesmo tipo e deixe { $name } escolher.
ideas-see = Ver todas as ideias
ideas-for-animal = Ideias para tentar com { $name }: { $ideas }
