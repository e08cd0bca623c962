today-title = Hoje com { $name }
today-now = Agora
today-start = Começar
today-why = Por quê? ({ $sure })
today-why-plan = Por que tanto?
today-pause-why = { $a_day ->
    [1] Aqui costuma haver uma sessão por dia
   *[other] Aqui costuma haver { $a_day } sessões por dia
}, ou a prática comum quando há poucas; duas horas de descanso entre elas (prática comum, sem fonte).
today-care = Cuidado:
today-take-care = { $care } { $what }
today-change-our-mind = Mudaríamos de opinião se:
today-records = os registros
today-also = O que também vale:
today-alike = “{ $word }” soa muito parecida com { $others }. Outra palavra para uma delas se distingue melhor.
today-alike-first = “{ $word }” soa muito parecida com { $others } e ainda não foi mostrada: escolha antes outra palavra.
today-best-time = Melhor hora até agora: das { $from } às { $to }. Participou então: { $joined }.
today-shown-today = “{ $word }” { $times ->
    [0] ainda não foi mostrada hoje.
    [one] foi mostrada uma vez hoje.
   *[other] foi mostrada { $times } vezes hoje.
}
today-words = Palavras
today-more-words = { $count ->
    [1] Mais uma palavra: { $words }
   *[other] Mais { $count } palavras: { $words }
}
today-many-more-words = Mais { $count } palavras
today-trend = Apertos próprios nas últimas oito semanas: { $counts }
today-evidence = O que dizem os apertos de “{ $word }”
today-lately = Nos últimos sete dias
today-later = Mais tarde
today-joining = Com que frequência se juntou às sessões em quatro semanas
today-pieces = { $count } × “{ $name }”
today-food-left-pieces = Comida que resta hoje: { $pieces }
today-food-left = Recompensas de comida que restam hoje: { $left } de { $of }.
today-food-over = Hoje não há mais recompensas de comida: { $over } acima de { $of }
today-feeds = { $count ->
    [1] Dado uma vez até agora.
   *[other] Dado { $count } vezes até agora.
}
today-given = Dado até agora: { $kcal }.
today-energy-unknown = { $name }: não se sabe a energia de um pedaço.
today-how-computed = Como se calcula
today-whole-day = O dia inteiro: { $kcal }, { $basis }.
today-individuals = Indivíduos deste peso: cerca de { $low } a { $high }.
today-do-rewards = Adicionar o que pode agradar
today-do-likes = Para os testes de gostos
today-do-words = Escolher palavras
today-do-allowance = Definir a comida
today-do-card = Abrir a ficha
today-do-heard = O que foi ouvido
today-do-rules = Regras da casa
today-do-days = Dias e horas
today-do-places = Onde estão os botões
today-do-board = Para o quadro
today-do-stage = Mudar a etapa
today-do-checks = Para as verificações
today-session = { $minutes ->
    [1] Um minuto no máximo. Mostre:
   *[other] { $minutes } minutos no máximo. Mostre:
}
today-planned = { $planned }. { $hint }
today-hint-for = Com { $words }: { $hint }
today-rests-until = Sem sessão até { $until }.
today-ask-keeper = Ainda falta preparar algo para { $name }. Pergunte a quem cuida da casa o que fazer hoje.
today-ask-card = A ficha fica com quem cuida da casa
today-ask-food = Quanto { $name } pode comer por dia não está definido aqui. Pergunte a quem cuida da casa antes de dar qualquer coisa.
today-answer-only = Responda ao que { $name } apertar.
today-without-agreed = Sem o combinado: { $step }. { $why }
