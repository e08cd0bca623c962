errors-too-large = É grande demais; aqui cabem no máximo { $bytes } bytes de uma vez. Envie menos de uma vez.
errors-not-paired = Este aparelho não está pareado com o caderno. Abra /pair e digite o código mostrado onde o Sayso foi iniciado.
errors-too-many = { $seconds ->
    [1] Tentativas demais. Espere um segundo e tente de novo.
   *[other] Tentativas demais. Espere { $seconds } segundos e tente de novo.
}
errors-no-home = Ainda não há nenhuma casa aqui. Abra /start para criar uma.
errors-disk-full = O disco do caderno está cheio: libere espaço na máquina onde ele está. Até lá os toques estão a salvo no celular; o que um formulário enviou não ficou guardado.
errors-internal = Algo deu errado aqui; nada do que você enviou foi guardado. O que houve está no registro do programa, onde o Sayso foi iniciado.
errors-no-such-page = Não há nada neste endereço.
errors-address-broken = Neste endereço falta algo, ou algo não pode ser lido. Volte e siga o link de novo.
errors-no-such-file = Não há tal arquivo aqui.
errors-no-such-animal = Este caderno não conhece esse animal.
errors-no-such-lesson = Não há essa lição.
errors-not-that-method = Este endereço não aceita esse tipo de pedido.
errors-too-large-here = É grande demais para este endereço; envie menos de uma vez.
errors-title-not-here = Não está aqui
errors-title-check = Verifique o que você escreveu
errors-title-forbidden = Não é permitido daqui
errors-title-wait = Espere um pouco
errors-title-full = O disco está cheio
errors-title-unavailable = Agora não
errors-title-failed = Não funcionou
errors-nothing-kept = Nada foi guardado. Volte, mude isto e envie de novo:
errors-to-start = Para o início
errors-too-many-events = Em um pedido cabem no máximo { $most } registros, não { $got }.
errors-listing-range = “after” tem de ser 0 ou mais, e “limit” de 1 a { $most }.
errors-no-array = O conteúdo tem de ser uma lista JSON de registros. Não dá para ler a partir da linha { $line }, coluna { $column }.
errors-only-https = Aqui nada se recebe nem se diz por HTTP sem criptografia. Abra https://{ $host }/.
errors-other-site = Isto veio da página de outro site e não foi aceito. Use a página do Sayso.
errors-other-name = O Sayso não responde a este nome. Abra-o pelo endereço desta máquina ou pelo nome dela na rede de casa.
errors-this-machine-only = Aqui o Sayso responde só nesta máquina. Abra http://localhost ou http://127.0.0.1 com a porta.
errors-no-sound-taken = Este caderno não aceita som das páginas: quem o mantém desligou isso. Use um navegador que consiga ouvir sozinho.
errors-no-such = Este caderno não conhece { $what ->
    [check] tal verificação
    [trial] tal ensaio
    [reward] tal recompensa
    [press] tal aperto
    [test] tal teste
    [word] tal palavra
    [rule] tal regra
    [role] tal papel
    [invitation] tal convite
    [session] tal sessão
   *[person] tal pessoa
}.
errors-body-broke = O envio foi cortado no meio. Envie de novo.
errors-request-broken = Não é possível ler o pedido ({ $why }). Envie de novo.
