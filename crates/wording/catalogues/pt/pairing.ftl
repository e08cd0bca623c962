pairing-title = Ligar este aparelho
pairing-intro = O Sayso foi iniciado para a rede de casa. Escreve o código que está no ecrã onde foi iniciado.
pairing-not-paired = Não ligado.
pairing-code = Código
pairing-code-hint = dez letras e algarismos
pairing-name = Nome deste aparelho
pairing-name-hint = se quiseres, por exemplo: telefone da Ana
pairing-pair = Ligar
pairing-taps-safe = Os toques feitos neste aparelho e ainda não enviados estão a salvo; são enviados assim que estiver ligado.
pairing-no-script = Sem JavaScript, o que este aparelho guardou do caderno não é apagado aqui; apaga os dados deste sítio nas definições do navegador.
pairing-plain-http = Por HTTP sem cifra, outros na mesma rede poderiam ler. Usa-o numa rede em que confies.
pairing-wrong = Esse não é o código. Está onde o Sayso foi iniciado: dez letras e algarismos.
pairing-expired = Esse código já não serve. Há agora um novo onde o Sayso foi iniciado.
pairing-paired-title = Ligado
pairing-paired = Este aparelho está ligado.
pairing-all-devices = Todos os aparelhos ligados
pairing-machine-alone = O Sayso foi iniciado só para esta máquina, por isso nenhum aparelho precisa de ser ligado.
pairing-devices = Aparelhos
pairing-devices-alone = O Sayso foi iniciado só para esta máquina, por isso nenhum outro aparelho pode ler este caderno.
pairing-devices-intro = Estes aparelhos podem ler este caderno e escrever nele. Retira o que se perdeu, vendeu ou emprestou.
pairing-this-device = (este aparelho)
pairing-device-times = Ligado em { $paired }. Visto pela última vez em { $seen }.
pairing-end = Retirar
pairing-devices-note = Um aparelho retirado é recusado logo. O que guardou para o quadro é apagado quando voltar a abrir o caderno; um que nunca volte fica com isso. Aparelhos não vistos há { $days } dias são retirados por si.
pairing-forget-all = Esquecer todos os aparelhos, este também
pairing-no-such-device = Não há tal aparelho ligado; talvez tenha sido retirado entretanto.
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
pairing-file = os aparelhos emparelhados em { $file }: { $why }; trata de que este programa possa ler e escrever o ficheiro
pairing-file-content = { $file } não contém aparelhos emparelhados ({ $why }). Recupera-o de uma cópia, ou apaga-o: cada telefone emparelha-se então de novo; nada do caderno se perde
