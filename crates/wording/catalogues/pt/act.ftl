act-give-space = Por enquanto sem sessão. Dê espaço e distância a { $name } e não tente fazer { $name } voltar.
act-pause-sessions = Pare de mostrar e convidar por alguns dias. Continue respondendo aos apertos e não atraia { $name } de volta.
act-no-more-today = Hoje sem mais sessões. Dê espaço a { $name } e continue respondendo aos apertos.
act-ask-about-threats = Fale com um veterinário e com um profissional qualificado de comportamento. Faça sessões curtas e pare ao primeiro sinal de tensão.
act-ask-about-guarding = Não tire nada de { $name }. Fale com um veterinário e com um profissional qualificado de comportamento.
act-ask-about-swallowing = { $today ->
    [yes] Ligue agora para um veterinário.
   *[other] Consulte um veterinário e deixe coisas pequenas fora do alcance.
}
act-shorten-sessions = Faça sessões bem mais curtas e termine antes que { $name } queira sair. Tente outra recompensa.
act-ease-sessions = Mude algo antes da próxima sessão: hora ou lugar mais calmo, menos palavras, mais distância.
act-look-at-health = Olhe primeiro para { $name }, não para o treino: comer, beber, necessidades, sono, movimento.
act-stop-food = Hoje sem mais recompensas de comida. Use brincadeira, carinho ou exploração.
act-list-rewards = Do que { $name } pode gostar? Adicione ao menos duas coisas: comida, brincadeira, carinho, exploração, descanso.
act-test-likes = Faça um teste de gostos.
act-choose-first-words = Escolha duas ou três primeiras palavras.
act-set-allowance = Defina quanta comida { $name } pode ter por dia.
act-fill-card = Preencha a ficha de “{ $word }”: { $lacks }.
act-lack-reward = o que ela traz
act-lack-answer = como todos respondem
act-lack-not-now = o que dizer para “agora não”
act-check-batteries = Verifique a pilha de { $words }: um som que fica lento costuma ser pilha fraca.
act-check-silent = Verifique a pilha e o botão de { $words } onde nenhum animal ouça. Deixe se a palavra não tem uso agora.
act-retest-likes = Faça um teste de gostos curto antes das próximas sessões.
act-mend-hard-to-make-out = Ouça o botão de “{ $word }” de outro cômodo. Grave de novo, claro e suave, se você não reconhecer a palavra logo.
act-mend-not-wanted = Teste os gostos de novo e mude o que “{ $word }” traz, ou mostre quando { $name } quiser.
act-mend-too-little = Mostre “{ $word }” mais vezes, um pouco por dia.
act-mend-too-late = Entregue mais rápido em “{ $word }”: deixe a coisa perto do quadro, para vir em dois segundos.
act-mend-avoided = Deixe o botão de “{ $word }” em paz. Mude-o de lugar ou tente um mais suave, e espere até { $name } se aproximar.
act-mend-time-or-place = Faça as sessões nas horas em que { $name } participa, em um lugar mais calmo.
act-mend-health = Vá a um veterinário antes de continuar o treino.
act-mend-sounds-alike = Grave outra palavra para “{ $word }”, uma que soe diferente.
act-mend-people-differ = Combinem uma resposta para “{ $word }” e um prazo. Ponham as regras da casa onde todos vejam.
act-step-back = { $to ->
    [invite] Volte a convidar “{ $word }”. Nada se perde.
   *[other] Volte a mostrar “{ $word }”. Nada se perde.
}
act-begin-inviting = Comece a convidar “{ $word }”: ofereça, espere { $seconds } s, depois mostre você e entregue.
act-invite = Convide “{ $word }” uma ou duas vezes entre as demonstrações. Venha o que vier, mostre e entregue.
act-show = Mostre “{ $word }”: aperte, diga, entregue.
act-show-at-end = Mostre “{ $word }” no fim de cada sessão.
act-leave-to-animal = “{ $word }” está pronta para a conversa: deixe com { $name } e responda a cada aperto.
act-answer = Responda a cada aperto de “{ $word }”, também com “agora não”.
act-signal-times = { $name } pede “{ $word }” mais do que você pode dar. Ponha um sinal que todos vejam: por { $available } s responda a cada aperto com a coisa, depois por { $unavailable } s diga “agora não” e ofereça outra coisa, e de novo.
act-rest = Hoje não ensine nada. Responda aos apertos de “{ $word }”.
act-plan-check = Planeje uma verificação de { $words }.
act-go-on-with-check = Continue a verificação: { $done } de { $of } ensaios.
act-quoted = “{ $word }”

act-change-calm-days = { $days } dias com no máximo um dia de sinais fortes.
act-change-calm-start = Um começo calmo amanhã: { $name } vem ao quadro por conta própria.
act-change-days-without = { $days } dias sem esse sinal.
act-change-fewer-left = { $name } deixa menos da metade das próximas { $sessions } sessões.
act-change-fewer-mild = Uma semana com sinais leves em claramente menos de { $share } das sessões.
act-change-usual-presses = Apertos como de costume, ou uma causa clara: visitas, viagem, pilha gasta, ninguém anotando.
act-change-next-day = Meia-noite, ou uma quantidade definida por um veterinário.
act-change-rewards-listed = Duas ou mais recompensas na lista.
act-change-test-recorded = Um teste de gostos anotado.
act-change-word-made = Uma ficha de palavra feita.
act-change-allowance-set = Uma quantidade digitada, ou o que falta preenchido.
act-change-card-filled = A ficha preenchida.
act-change-ends-no-session = A ficha não diz mais que ela termina a sessão.
act-change-usual-speed = Apertos na velocidade de sempre, por exemplo com pilha nova.
act-change-heard-again = Um aperto ouvido, ou a nova gravação cadastrada.
act-change-test-agrees = Um teste cuja ordem concorde com o anterior.
act-change-more-presses = Claramente mais apertos ao convidar, { $days } dias depois da mudança.
act-change-more-when-invited = { $name } aperta mais vezes nos convites em que quer a coisa: não mais claramente abaixo de { $share }.
act-change-lasts-again = Duas semanas ou mais após o domínio, os apertos e os acertos não estão mais claramente abaixo de { $share }.
act-change-fades = Duas semanas ou mais após o domínio, os apertos ou os acertos caem claramente abaixo de { $share }.
act-change-longer-or-back = Esperas mais longas quando duas sessões seguidas tiverem poucos apertos durante “agora não”. De volta a responder a cada aperto em um sinal forte, em uma saída, ou se os apertos não caírem em três sessões.
act-change-checked = A verificação planejada ou feita.

act-caution-ask-both = Consulte um veterinário e um profissional qualificado de comportamento, e siga a lei local sobre animais que mordem.
act-caution-ask-if-back = Se esses sinais voltarem, ou vierem sem causa visível, consulte um veterinário e um profissional qualificado de comportamento.
act-caution-call-vet-now = Ligue já para um veterinário, seja o que for que { $name } engoliu. Não provoque vômito sem orientação.
act-caution-take-nothing = Não tire nada à força e mantenha crianças longe.
act-caution-leaving-is-answer = Sair é uma resposta. Não chame nem atraia { $name } de volta ao quadro.
act-caution-single-sign = Um único sinal diz pouco. Olhe o corpo todo e a situação.
act-caution-may-be-illness = Uma mudança repentina pode ser doença, não treino: vá a um veterinário.
act-caution-individuals-differ = Animais do mesmo peso podem precisar de até três vezes mais ou menos. Observe o corpo e consulte um veterinário.
act-caution-battery = Troque pilhas onde nenhum animal ou criança alcance, guarde as velhas também fora do alcance, e parafuse a tampa. Uma pilha engolida ou mordida é uma emergência. Um animal: ligue já para um veterinário. Uma criança que engoliu uma pilha-botão ou a pôs no nariz ou no ouvido: vá já ao pronto-socorro. Não provoque vômito em ninguém sem orientação.
act-caution-not-pressing = Não apertar não diz nada sobre o que { $name } entende. Se algo em { $name } mudou de repente, vá primeiro a um veterinário.
act-caution-comes-and-goes = { $name } pode vir e sair. Pare enquanto { $name } ainda quiser mais.
act-caution-burst-may-come = Quando as respostas mudam, pode vir antes uma rajada de apertos: em 24% dos casos em pessoas, 12% quando outra coisa era oferecida (Lerman & Iwata 1995).
act-caution-never-for-needs = Nunca com água, necessidades, dor ou medo: a isso se responde. Se { $name } proteger coisas, rosnar ou morder, pare e consulte um profissional qualificado de comportamento.

act-hint-give-faster = Entregue mais rápido: agora após { $seconds }, tente { $aim }.
act-hint-show-only = Mostre você e entregue. Não espere nada.
act-hint-wait-then-show = Ofereça, espere { $seconds } s, depois mostre e entregue, venha o que vier.
act-hint-when-wanted = Mostre quando { $name } quiser.
act-hint-little-every-day = Um pouco por dia.
act-hint-answer-alike = Respondam todos igual, logo.
act-hint-good-hours = Nas horas em que { $name } participa, em um lugar calmo.
act-hint-let-it-come = Espere até { $name } vir ao botão.
act-hint-at-the-end = Por último na sessão.
act-hint-answer-every = Responda a cada aperto, também com “agora não”.
