# Signing in on a server of many homes.
sign-in-title = Entrar
sign-in-again-title = Mostre que é você
sign-in-again = O que vem agora não deve cair em mãos erradas. Entre mais uma vez.
sign-in-passkey = Entrar com uma chave de acesso
sign-in-passkey-hint = O seu aparelho pede o dedo, o rosto ou o PIN.
sign-in-cancelled = Nenhuma chave de acesso foi usada. Tente de novo ou entre de outro jeito.
sign-in-failed = Este aparelho não conseguiu usar uma chave de acesso. Entre de outro jeito.
sign-in-by-mail = Por e-mail
sign-in-email = Endereço de e-mail
sign-in-email-hint = o da página da sua conta
sign-in-send-link = Enviar um link
sign-in-send-link-to = Enviar um link para { $email }
sign-in-sent-title = Veja o seu e-mail
sign-in-sent = Se uma conta daqui tem o endereço { $email }, uma carta com um link está a caminho. Ele serve uma vez, durante { $minutes ->
    [one] { $minutes } minuto
   *[other] { $minutes } minutos
}.
sign-in-nothing-came = Não chegou nada? Confira o endereço e olhe no lixo eletrônico.
sign-in-another-address = Outro endereço
sign-in-by-code = Com um código de recuperação
sign-in-code = Código de recuperação
sign-in-code-hint = 32 letras e números da sua lista impressa; cada um serve uma vez
sign-in-wrong-code = não vale: desconhecido ou já usado
sign-in-no-account = Ainda sem conta? Abra o link de um convite ou leia o código dele.
sign-in-no-script = Chaves de acesso precisam de JavaScript. Um link ou um código funciona sem.
sign-in-here-title = Entrar neste aparelho?
sign-in-here = Continue só se você mesmo pediu esta carta.
sign-in-gone-title = Este link não vale
sign-in-gone = Já foi usado, é antigo demais ou não está inteiro.
sign-in-new-link = Pedir um novo
sign-in-provider = Entrar com { $name }
sign-in-provider-away = { $name } não responde agora. Entre de outro jeito ou tente mais tarde.
sign-in-provider-refused = { $name } não deixou você entrar. Tente de novo ou entre de outro jeito.
sign-in-provider-lost = Esta entrada não pode terminar: começou em outro navegador, é antiga demais ou já terminou. Comece de novo.
sign-in-provider-unknown = Nenhuma conta daqui está ligada à sua entrada em { $name }. Entre de outro jeito e ligue-a na página da sua conta. Ainda sem conta? Abra o link do seu convite.
sign-in-provider-not-fresh = { $name } não disse que você acabou de provar quem é. Mostre de outro jeito.
sign-in-provider-taken = Nada foi ligado: esta entrada em { $name } já é de uma conta daqui, ou a sua está ligada a outra.
sign-in-none-yet = Por enquanto só este navegador deixa você entrar, então não há como mostrar que é você. Na sua conta, crie uma chave de acesso, adicione um endereço de e-mail ou faça códigos de recuperação. Depois volte aqui e entre com isso.
sign-in-passkey-unknown = Esta chave de acesso não deixa você entrar: não é mais conhecida aqui, ou foi pedida há tempo demais. Tente mais uma vez ou entre de outro modo.
sign-in-not-kept = O que você enviou não foi guardado. Mostre que é você e envie mais uma vez.
