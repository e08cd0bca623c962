ideas-name = { $key ->
    [chicken] Frango cozido, do tamanho de uma ervilha
    [cheese] Queijo, do tamanho de uma ervilha
    [carrot] Cenoura, uma fatia fina
    [apple] Maçã sem caroço, um cubinho
    [beans] Feijão-verde cozido, um
    [beef] Vaca magra cozida, do tamanho de uma ervilha
    [turkey] Peru cozido, do tamanho de uma ervilha
    [egg] Ovo cozido, do tamanho de uma ervilha
    [salmon] Salmão cozido, uma lasca pequena
    [kibble] Ração, um grão
    [pellet] Granulado da comida habitual, um
    [sunflower] Semente de girassol sem sal, uma
    [millet] Painço, uma pitada
    [pepper] Pimento vermelho, uma tirinha
    [dandelion] Dente-de-leão, uma folha
    [parsley] Salsa, um raminho
    [coriander] Coentros, um raminho
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
    [peekaboo] Cucu
    [willow] Bola de vime
    [tunnel] Túnel
    [rub] Carinho na barriga
    [scratch] Coçar o peito
    [brush] Escova
    [cheek] Festa na bochecha
    [head] Coçar a cabeça
    [forehead] Festa na testa, no chão
    [paw] Dar a pata
    [spin] Roda
    [touch_hand] Toca na mão
    [high_five] Dá cá cinco
    [step_up] Sobe
    [turn] Vira
    [target] Toca no pau
    [up] De pé
    [garden] Jardim
    [walk] Passeio
    [sniff] Farejar numa caixa de folhas
    [window] Janela
    [box] Caixa de cartão
    [room] Outra sala, contigo
    [pen] Cercado lá fora
    [bed] Cama
    [sofa] Sofá, ao teu lado
    [perch] Poleiro sossegado
    [hide] Casinha
   *[other] { $key }
}
ideas-title = De que poderá { $name } gostar?
ideas-four = Toca em quatro coisas ou mais, de vários tipos. { $name } decide depois.
ideas-health = Saúde:
ideas-other-kinds = Coisas de outros tipos
ideas-figures = kcal: valores habituais por pedaço (USDA e de memória); confirma na embalagem. As ideias: prática comum, sem fonte.
ideas-add = Juntar
ideas-own = Algo teu
ideas-kind = { $kind ->
    [food] comida
    [play] brincadeira
    [touch] toque
    [training] um exercício
    [exploring] explorar
   *[rest] descanso
}
ideas-care = { $care ->
    [guarding] Não para um animal que guarda comida ou brinquedos. Se { $name } ficar tenso ou rosnar, dá espaço e pergunta a um profissional de comportamento qualificado.
    [slipping] Num chão que não escorregue; com patas rígidas ou novas, pergunta antes a um veterinário.
    [small_parts] Nada que se possa arrancar e engolir; guarda-o depois.
   *[hands_off] Só enquanto { $name } vier buscar: nunca preso, nunca ao colo à força.
}
ideas-none-ticked = não estão marcadas; toca numa, ou escolhe Mais tarde
ideas-unknown = incluem uma que este programa não conhece; recarrega a página
ideas-instead = { $name } raramente escolhe { $thing }. Ideias para tentar em vez disso: { $ideas }
ideas-instead-of = { $name } não quer muito { $thing }. Tenta outra coisa do mesmo tipo e deixa { $name } escolher.
ideas-see = Ver todas as ideias
ideas-for-animal = Ideias para tentar com { $name }: { $ideas }
