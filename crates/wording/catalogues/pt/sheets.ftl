sheets-title = Folhas
sheets-intro = Cada uma imprime-se em A4 ou Letter, sem os menus.
sheets-print = Imprimir
sheets-print-menu = ou imprime pelo menu do navegador
sheets-all = Todas as folhas
sheets-fridge = Para o frigorífico
sheets-fridge-what = O que quer dizer cada palavra, como todos lhe respondem, o que todos dizem para “agora não”, e as regras da casa.
sheets-rules = Regras da casa
sheets-buttons = Para os botões
sheets-buttons-what = Etiquetas simples com a palavra.
sheets-labels = Etiquetas
sheets-report-for = Para a família, um veterinário ou um profissional do comportamento.
sheets-report = Relatório de progresso
sheets-likes = Gostos de { $name }
sheets-size = Tamanho
sheets-size-of = { $size ->
    [small] pequeno, 40 × 25 mm
    [large] grande, 90 × 60 mm
   *[middle] médio, 60 × 40 mm
}
sheets-no-word = Ainda não há nenhuma palavra no quadro.
sheets-labels-note = As etiquetas ajudam as pessoas. Pedaços pequenos arrancados podem ser engolidos: cola-as bem planas, e não ponhas nenhuma onde um animal roa.
sheets-button = Botão
sheets-means = Quer dizer
sheets-everyone-answers = Todos respondem
sheets-not-now = Agora não
sheets-ends-session = acaba uma sessão
sheets-for-all = todos
sheets-answer-every-press = Responde a cada toque, também ao que parece um tropeção.
sheets-may-come-and-go = { $name } pode ir e vir; nunca chames nem atraias { $name } para o quadro.
sheets-any-may-come-and-go = Cada animal pode ir e vir; nunca chames nem atraias nenhum para o quadro.
sheets-batteries = Fecha as tampas das pilhas com os seus parafusos. { $emergency }
sheets-of-animal = { $name }:
sheets-nothing-tested = Ainda não foi testado nada.
sheets-tested = { $trials ->
    [one] De um ensaio, em { $day }; sem escolha: { $none }.
   *[other] De { $trials } ensaios, o último em { $day }; sem escolha: { $none }.
}
sheets-test-again = Testar de novo:
sheets-likes-note = Os gostos mudam com a fome, a hora e o dia; isto é o que { $name } escolheu quando se perguntou. Uma linha é o intervalo de 95%; contam-se as ofertas.
sheets-progress = Progresso de { $name }
sheets-period = Período
sheets-days = { $days ->
    [one] Um dia
   *[other] { $days } dias
}
sheets-no-diagnosis = { $lead } Registos próprios de uma casa, contados por um programa. Ninguém os verificou. Não podem dizer o que um animal entende, sente ou de que sofre; para isso pergunta a um veterinário ou a um profissional qualificado do comportamento.
sheets-no-diagnosis-lead = Não é um diagnóstico.
sheets-animal = Animal
sheets-about = cerca de { $age }
sheets-dates = { $from } a { $to } ({ $zone })
sheets-printed-by = Impresso por
sheets-limits = Limites
sheets-cautions = Avisos de saúde
sheets-in-short = Em resumo
sheets-days-noted = Dias com algo anotado: { $days } de { $all }. O que ninguém anotou não está aqui.
sheets-joined = Sessões em que { $name } participou: { $share }.
sheets-presses = Vezes que as pessoas mostraram: { $showings }. Toques próprios: { $presses }.
sheets-welfare = Bem-estar:
sheets-words = Palavras
sheets-none-taught = Ainda não se ensina nenhuma palavra.
sheets-words-caption = desde o início; toques próprios nos últimos 28 dias
sheets-word = Palavra
sheets-stage = Etapa
sheets-figures-say = números: { $stage }
sheets-shown = Mostrada
sheets-press-to-giving = Do toque à entrega
sheets-pressed = Toque com convite e vontade
sheets-own-presses = Toques próprios
sheets-times = { $times ->
    [one] uma vez
   *[other] { $times } vezes
}
sheets-stages = Etapas: preparar, mostrar (as pessoas tocam e dão), convidar (uma oferta, uma espera e a coisa em todo o caso), conversar ({ $name } toca por iniciativa própria). Não tocar nunca conta como não entender.
sheets-showings-a-week = Vezes mostrada por semana
sheets-week-from = semana de
sheets-showings = vezes mostrada
sheets-week-of = semana de { $day }
sheets-joined-by-week = Sessões com participação, por semana
sheets-axis-joined = com participação
sheets-axis-pressed = com toque
sheets-answered = Como se respondeu aos toques próprios de { $name }
sheets-given = Dado: { $share }.
sheets-given-partly = Dado: { $share }, em parte: { $partly }.
sheets-declined = Agora não: { $share }, outra coisa: { $other }.
sheets-missed = Perdido, ou sem resposta anotada: { $share }.
sheets-signs = Linguagem corporal anotada
sheets-signs-counts = Participar: { $joining }. Sinais leves de stress: { $mild }. Sinais fortes: { $strong }.
sheets-sign-of = { $day }: { $sign }
sheets-signs-note = Tal como o viram as pessoas presentes. Um só sinal significa pouco; lê o corpo todo e a situação.
sheets-food = Recompensas de comida
sheets-food-budget = Calculado com { $day } por dia, das quais recompensas no máximo { $budget }. Base: { $basis }.
sheets-food-budget-range = Calculado com { $day } por dia (conforme o animal: { $low } a { $high }), das quais recompensas no máximo { $budget }. Base: { $basis }.
sheets-food-none = Não se calcula nenhuma quantidade: { $why }.
sheets-food-unknown = não se conhece
sheets-likes-heading = Gostos
sheets-last-tested = Último teste em { $day }.
sheets-not-tested-enough = { $trials ->
    [one] Não foi testado o bastante para dizer alguma coisa (um ensaio).
   *[other] Não foi testado o bastante para dizer alguma coisa ({ $trials } ensaios).
}
sheets-not-known = O que não se sabe
sheets-no-check = Se { $name } entende alguma palavra: não foi feita nenhuma verificação planeada. Tocar também pode vir de um hábito de lugar, de pistas que as pessoas dão sem saber, ou do que antes compensou.
sheets-check-elsewhere = { $trials ->
    [one] Esta folha não decide se { $name } entende uma palavra: o único ensaio de verificações planeadas está na página Evidências.
   *[other] Esta folha não decide se { $name } entende uma palavra: { $trials } ensaios de verificações planeadas estão na página Evidências.
}
sheets-not-invited = Como se responde a “{ $word }” com convite: até agora nunca com convite e vontade.
sheets-little-invited = { $times ->
    [one] Pouco sobre “{ $word }” com convite: uma vez.
   *[other] Pouco sobre “{ $word }” com convite: { $times } vezes.
}
sheets-no-session = Com que vontade { $name } participa: não foi anotada nenhuma sessão neste período.
sheets-no-likes-test = De que { $name } mais gosta: não foi feito nenhum teste de gostos.
