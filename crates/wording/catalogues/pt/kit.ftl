# Recording real buttons: the sheet that says how, and the page that records.
kit-title = Gravar botões de verdade
kit-why = A escuta do Sayso foi medida com sons fabricados; nenhum botão de verdade foi gravado ainda. Gravações de botões de verdade mostram até onde se pode confiar nela.
kit-stays = Nada é enviado: você salva um arquivo neste aparelho e decide a quem dar.
kit-print = Imprimir o que fazer
kit-no-script = Para gravar é preciso JavaScript, que está desligado neste navegador.
kit-before = Antes de começar
kit-away = Nenhum animal no cômodo nem onde possa ouvir: uma palavra que soa e não traz nada ensina que não significa nada.
kit-loud = Deixe o volume do botão como está e mantenha-o longe dos ouvidos: um som forte muito perto pode fazer mal.
kit-people = Avise todas as pessoas que possam ser ouvidas. Não digam nomes durante a gravação.
kit-need = Você precisa de
kit-need-things = Um botão ou mais, um celular, uma fita métrica e uns 15 minutos por botão.
kit-steps = Passo a passo
kit-step = Passo
kit-what-to-do = O que fazer
kit-step-open = No celular, abra a página “{ $page }” a partir da página Ouvir.
kit-step-agree = Leia com o que você concorda e marque.
kit-step-say = Diga que botão e que celular são: tamanho, forma, idade. Sem nomes de marcas nem de pessoas.
kit-step-close = Em um cômodo silencioso, segure o celular a um palmo do botão e grave um aperto.
kit-step-presses = Ponha o celular a { $metres } m do botão. Aperte dez vezes, sempre que a página disser “Aperte agora”: a cada seis segundos.
kit-step-further = Faça o mesmo a { $distances } m, sem nada entre o botão e o celular.
kit-step-without = Grave três minutos sem apertos: conversem, andem, deixem o rádio ligado.
kit-step-again = Se puder, faça tudo de novo em outro cômodo, com outro ruído ou com outro celular.
kit-step-save = Salve o arquivo antes de fechar a página.
kit-to-fill-in = Para preencher à mão, se quiser
kit-distance = Distância
kit-metres = { $metres } m
kit-room = Cômodo
kit-noise = O que mais soa
kit-phone = Celular
kit-presses = Apertos
kit-without = nenhum, 3 minutos
kit-agree = Com o que você concorda
kit-consent = Todas as pessoas que podem ser ouvidas concordam com a gravação. O arquivo pode ser dado a quem mede e melhora a escuta dos apertos. Ele contém som e o que se preenche abaixo, nenhum nome.
kit-agreed = Concordamos com isso
kit-publish = O arquivo também pode ser publicado como som de teste
kit-publish-hint = deixe vazio se não tiver certeza
kit-about = O botão e o celular
kit-word = O que o botão diz
kit-button = Que tipo de botão
kit-button-hint = tamanho, forma, idade, carga da pilha; sem nome de marca
kit-phone-hint = tamanho e idade; sem nome de marca nem de pessoa
kit-close = O botão de perto
kit-close-how = Em um cômodo silencioso, segure o celular a um palmo do botão e aperte uma vez. A escuta conhece o botão por este som.
kit-take = Apertos à distância
kit-rooms = { $room ->
    [kitchen] cozinha
    [living] sala
    [bedroom] quarto
    [hall] corredor ou escada
    [outdoors] ao ar livre
   *[other] outro cômodo
}
kit-noises = { $noise ->
    [quiet] silêncio
    [talk] pessoas conversando
    [media] rádio, música ou televisão
    [machine] uma máquina da casa
    [outside] rua ou tempo
   *[other] outra coisa
}
kit-marked = Como os apertos são marcados
kit-countdown = Por contagem regressiva: aperte quando a página disser
kit-tap = Por toque: alguém toca na tela quando o botão é apertado
kit-recorded = Gravado
kit-save = Salvar
kit-save-how = Um só arquivo: os sons, o que você preencheu e com o que vocês concordaram.
kit-lead = Ajude a medir a escuta: grave os seus botões
