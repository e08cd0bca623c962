command-serve-simulating = A simular dez semanas de uma casa inventada ...
command-serve-invented = { $n ->
    [one] { $n } registo, inventado.
   *[other] { $n } registos, todos inventados.
} Nada disto diz algo sobre animais verdadeiros.
command-serve-holds-home = { $dir } já tem uma casa; é essa que é servida.
command-serve-code = Código de emparelhamento para um telefone (válido { $minutes ->
    [one] um minuto
   *[other] { $minutes } minutos
}): { $code }
command-serve-open = O Sayso está aberto em { $url }
command-serve-no-address = Este computador não tem endereço numa rede de casa, por isso nenhum telefone lhe chega.
command-serve-from-phone = De um telefone na mesma rede: { $url } (depois escreve o código de emparelhamento)
command-serve-certificate = Uma vez em cada telefone, a página de lá instala o certificado desta casa; a sua impressão digital (SHA-256) tem de ser
command-serve-strange-address =
    O endereço deste computador não é dos que as casas usam, por isso o certificado não pode responder por ele.
    Abre antes o nome deste computador na rede, que acaba em .local.
command-serve-this-machine =
    Só este computador recebe resposta. Para usar um telefone, para com Ctrl-C e começa de novo com --lan;
    este código abre então { $url } no telefone:
command-serve-no-qr = (sem código QR: { $why })
command-serve-stop = Para com Ctrl-C.
command-serve-no-folder = { $dir } não é uma pasta; dá a do caderno
command-serve-device = { $id }  { $name } ({ $how ->
    [plain] por HTTP sem cifra
   *[safe] por HTTPS
}), emparelhado { $paired }, visto pela última vez { $seen }
command-serve-no-device = Nenhum dispositivo está emparelhado.
command-serve-no-such-device = nenhum dispositivo emparelhado tem o identificador { $id }; a lista mostra quais há
command-serve-port-taken = { $at } não se pode abrir: { $why }; o Sayso já está a correr? Escolhe outra porta, ou um endereço desta máquina
command-serve-cannot-open = não é possível abrir o caderno: { $why }
command-serve-not-safe = não é possível servir HTTPS: { $why }
command-serve-certificate-content = { $file } não contém um certificado e a sua chave: { $why }. Recupera-o de uma cópia, ou apaga-o: faz-se então um novo, e cada telefone tem de o instalar
command-serve-certificate-making = não foi possível fazer nenhum certificado: { $why }
command-serve-certificate-using = não é possível usar o certificado: { $why }
