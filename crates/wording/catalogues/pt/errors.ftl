errors-too-large = É demasiado grande; aqui cabem no máximo { $bytes } bytes de uma vez. Envia menos de uma vez.
errors-not-paired = Este aparelho não está ligado ao caderno. Abre /pair e escreve o código mostrado onde o Sayso foi iniciado.
errors-too-many = { $seconds ->
    [one] Tentativas a mais. Espera um segundo e tenta de novo.
   *[other] Tentativas a mais. Espera { $seconds } segundos e tenta de novo.
}
errors-no-home = Ainda não há aqui nenhuma casa. Abre /start para criar uma.
errors-disk-full = O disco do caderno está cheio: arranja espaço na máquina onde ele está. Até lá os toques estão a salvo no telefone; o que um formulário enviou não ficou guardado.
errors-internal = Algo correu mal aqui; nada do que enviaste ficou guardado. O que foi está no registo, onde o Sayso foi iniciado.
errors-no-such-page = Não há nada neste endereço.
errors-no-such-file = Não há aqui tal ficheiro.
errors-no-such-animal = Este caderno não conhece esse animal.
errors-not-that-method = Este endereço não aceita esse tipo de pedido.
errors-too-large-here = É demasiado grande para este endereço; envia menos de uma vez.
errors-title-not-here = Não está aqui
errors-title-check = Verifica o que escreveste
errors-title-forbidden = Não é permitido daqui
errors-title-wait = Espera um pouco
errors-title-full = O disco está cheio
errors-title-unavailable = Agora não
errors-title-failed = Não funcionou
errors-nothing-kept = Nada ficou guardado. Volta atrás, muda isto e envia de novo:
errors-to-start = Ao início
errors-too-many-events = Num pedido cabem no máximo { $most } registos, não { $got }.
errors-listing-range = “after” tem de ser 0 ou mais, e “limit” de 1 a { $most }.
errors-no-array = O conteúdo tem de ser uma lista JSON de registos. Na linha { $line }, coluna { $column }: { $why }
errors-only-https = Aqui nada se recebe nem se diz por HTTP sem cifra. Abre https://{ $host }/.
errors-other-site = Isto veio da página de outro sítio e não foi aceite. Usa a página do Sayso.
errors-other-name = O Sayso não responde a este nome. Abre-o pelo endereço desta máquina ou pelo nome dela na rede de casa.
errors-this-machine-only = Aqui o Sayso responde só nesta máquina. Abre http://localhost ou http://127.0.0.1 com a porta.
errors-no-sound-taken = Este caderno não aceita som das páginas: quem o mantém desligou isso. Usa um navegador que consiga escutar por si.
errors-no-such = Este caderno não conhece { $what ->
    [check] tal verificação
    [trial] tal ensaio
    [reward] tal recompensa
    [press] tal toque
    [test] tal teste
    [word] tal palavra
    [rule] tal regra
   *[person] tal pessoa
}.
errors-body-broke = O envio cortou-se a meio. Envia-o outra vez.
errors-request-broken = Não é possível ler o pedido ({ $why }). Envia-o outra vez.
