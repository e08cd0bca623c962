signs-see-walks-up = vem quando você começa a mostrar
signs-see-ears-forward = orelhas para a frente ou cabeça inclinada ao ouvir uma palavra
signs-see-waits = espera junto ao quadro e olha para a pessoa
signs-see-comes-at-sound = vem de outro cômodo ao ouvir o som
signs-see-brings-thing = traz a coisa pedida
signs-see-loose-body = corpo solto, cauda relaxada
signs-see-lip-lick = lambe os lábios ou boceja fora de contexto
signs-see-turns-away = vira a cabeça ou o corpo para o lado
signs-see-sniffs-floor = cheira o chão, se coça, se sacode
signs-see-lifts-paw = levanta uma pata, orelhas para trás
signs-see-panting = ofega sem calor nem exercício
signs-see-eye-whites = vê-se o branco dos olhos
signs-see-tail-tucked = cauda entre as pernas, agachado
signs-see-freezes = fica imóvel, olha fixamente
signs-see-avoids-board = esconde-se ou não quer chegar perto do quadro
signs-see-growl = rosnado
signs-see-bite = tentativa de morder ou mordida
signs-see-guards = protege comida, uma coisa ou o botão
signs-see-swallowed = engoliu algo que não é comida
signs-see-approaches-tail-up = aproxima-se, cauda erguida
signs-see-rubs = roça-se na pessoa ou no quadro
signs-see-slow-blink = pisca devagar, orelhas para a frente
signs-see-tail-tip = a ponta da cauda se mexe em solavancos
signs-see-ears-sideways = as orelhas viram para os lados
signs-see-skin-ripples = a pele do dorso estremece, lambida rápida no nariz
signs-see-tail-lashes = a cauda chicoteia
signs-see-ears-flat = orelhas coladas à cabeça
signs-see-crouches = agacha-se, pupilas dilatadas
signs-see-hides = esconde-se
signs-see-hiss = bufo ou patada
signs-see-leans-in = inclina-se para você, penas relaxadas
signs-see-steps-unasked = vai até o quadro sem ser chamado
signs-see-feathers-tight = penas coladas ao corpo, afasta-se
signs-see-pupils-pin = as pupilas se contraem e se dilatam, nuca eriçada, corpo rígido e erguido
signs-see-lunges = investe contra alguém
signs-see-nudges = aproxima-se, empurra com o focinho
signs-see-flops = deita-se de lado, limpa-se por perto
signs-see-freezes-flat = fica imóvel colado ao chão, orelhas para trás
signs-see-thumps = bate a pata no chão
signs-see-runs-to-hide = corre para se esconder
signs-act-carry-on = continue
signs-act-pause-let-leave = faça uma pausa, dê espaço, deixe que se afaste
signs-act-end-no-lure = termine a sessão; não tente atrair de volta
signs-act-end-distance-ask = termine a sessão, mantenha distância; procure um veterinário e um profissional qualificado de comportamento
signs-act-end-take-nothing-ask = termine a sessão, mantenha distância, não tire nada do animal; procure um veterinário e um profissional qualificado de comportamento
signs-act-call-vet = ligue já para um veterinário; não provoque o vômito a não ser que um deles mande
signs-act-pause = faça uma pausa, dê espaço
signs-act-end = termine a sessão
signs-of-any = virar-se, esconder-se, ficar imóvel, ameaçar
signs-whose = { $species ->
    [dog] Cachorro
    [cat] Gato
    [parrot] Papagaio
    [rabbit] Coelho
   *[other] Outro animal
}
signs-levels = { $whose }: leves: { $mild }. Fortes: { $strong }.
signs-only-strong = { $whose }: não se conhece nenhum sinal leve; o primeiro já pode ser forte: { $strong }.
