pairing-title = Parear este aparelho
pairing-intro = O Sayso foi iniciado para a rede de casa. Digite o código que está na tela onde ele foi iniciado.
pairing-not-paired = Não pareado.
pairing-code = Código
pairing-code-hint = dez letras e números
pairing-name = Nome deste aparelho
pairing-name-hint = se quiser, por exemplo: celular da Ana
pairing-pair = Parear
pairing-taps-safe = Os toques feitos neste aparelho e ainda não enviados estão a salvo; são enviados assim que ele for pareado.
pairing-no-script = Sem JavaScript, o que este aparelho guardou do caderno não é apagado aqui; apague os dados deste site nas configurações do navegador.
pairing-plain-http = Por HTTP sem criptografia, outros na mesma rede poderiam ler. Use em uma rede em que você confia.
pairing-wrong = Esse não é o código. Está onde o Sayso foi iniciado: dez letras e números.
pairing-expired = Esse código não serve mais. Há agora um novo onde o Sayso foi iniciado.
pairing-paired-title = Pareado
pairing-paired = Este aparelho está pareado.
pairing-all-devices = Todos os aparelhos pareados
pairing-machine-alone = O Sayso foi iniciado só para esta máquina, por isso nenhum aparelho precisa ser pareado.
pairing-devices = Aparelhos
pairing-devices-alone = O Sayso foi iniciado só para esta máquina, por isso nenhum outro aparelho pode ler este caderno.
pairing-devices-intro = Estes aparelhos podem ler este caderno e escrever nele. Retire o que se perdeu, foi vendido ou emprestado.
pairing-this-device = (este aparelho)
pairing-device-times = Pareado em { $paired }. Visto pela última vez em { $seen }.
pairing-end = Retirar
pairing-devices-note = Um aparelho retirado é recusado logo. O que ele guardou para o quadro é apagado quando voltar a abrir o caderno; um que nunca volte fica com isso. Aparelhos não vistos há { $days } dias são retirados automaticamente.
pairing-forget-all = Esquecer todos os aparelhos, este também
pairing-no-such-device = Não há tal aparelho pareado; talvez tenha sido retirado nesse meio-tempo.
pairing-unnamed = Um aparelho sem nome
pairing-kind = { $kind ->
    [iphone] Um iPhone
    [ipad] Um iPad
    [android] Um aparelho Android
    [windows] Um computador Windows
    [mac] Um Mac
    [chromebook] Um Chromebook
    [linux] Um computador Linux
   *[other] Um aparelho
}
pairing-file = os aparelhos pareados em { $file }: { $why }; cuide para que este programa possa ler e escrever o arquivo
pairing-file-content = { $file } não contém aparelhos pareados ({ $why }). Recupere-o de uma cópia, ou apague-o: cada celular é então pareado de novo; nada do caderno se perde
