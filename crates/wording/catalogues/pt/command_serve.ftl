command-serve-simulating = Simulando dez semanas de uma casa inventada ...
command-serve-invented = { $n ->
    [one] { $n } registro, inventado.
   *[other] { $n } registros, todos inventados.
} Nada disto diz algo sobre animais reais.
command-serve-holds-home = { $dir } já tem uma casa; é essa que é servida.
command-serve-code = Código de pareamento para um celular (válido { $minutes ->
    [1] um minuto
   *[other] { $minutes } minutos
}): { $code }
command-serve-open = O Sayso está aberto em { $url }
command-serve-no-address = Este computador não tem endereço em uma rede de casa, por isso nenhum celular chega até ele.
command-serve-from-phone = De um celular na mesma rede: { $url } (depois digite o código de pareamento)
command-serve-certificate = Uma vez em cada celular, a página de lá instala o certificado desta casa; a impressão digital dele (SHA-256) tem de ser
command-serve-strange-address =
    O endereço deste computador não é dos que as casas usam, por isso o certificado não pode responder por ele.
    Abra em vez disso o nome deste computador na rede, que termina em .local.
command-serve-this-machine =
    Só este computador recebe resposta. Para usar um celular, pare com Ctrl-C e inicie de novo com --lan;
    este código então abre { $url } no celular:
command-serve-no-qr = (sem código QR: { $why })
command-serve-stop = Pare com Ctrl-C.
command-serve-no-folder = { $dir } não é uma pasta; informe a do caderno
command-serve-device = { $id }  { $name } ({ $how ->
    [plain] por HTTP sem criptografia
   *[safe] por HTTPS
}), pareado { $paired }, visto pela última vez { $seen }
command-serve-no-device = Nenhum aparelho está pareado.
command-serve-no-such-device = nenhum aparelho pareado tem o identificador { $id }; a lista mostra quais há
command-serve-port-taken = { $at } não pode ser aberto: { $why }; o Sayso já está rodando? Escolha outra porta, ou um endereço desta máquina
command-serve-cannot-open = não é possível abrir o caderno: { $why }
command-serve-not-safe = não é possível servir HTTPS: { $why }
command-serve-certificate-content = { $file } não contém um certificado e a chave dele: { $why }. Recupere-o de uma cópia, ou apague-o: um novo é feito então, e cada celular tem de instalá-lo
command-serve-certificate-making = não foi possível fazer nenhum certificado: { $why }
command-serve-certificate-using = não é possível usar o certificado: { $why }
