heard-title = Apertos ouvidos
heard-nothing = Nada espera aqui.
heard-intro = Um microfone diz qual botão soou, não quem apertou. Diga o que você viu; deixe como está o que ninguém viu.
heard-did-it-sound = Soou?
heard-did-it-sound-hint = Ouvido com menos certeza. “Não soou” o desfaz.
heard-who-pressed = Quem apertou?
heard-count = { $title } ({ $count })
heard-listen = Ouvir pelo microfone deste aparelho
heard-log = O que foi desfeito fica no registro
heard-a-word = uma palavra
heard-older = { $count ->
    [1] Um mais antigo vem quando estes forem julgados.
   *[other] { $count } mais antigos vêm quando estes forem julgados.
}
heard-chance = probabilidade de ter soado: { $share }
heard-play = Ouvir
heard-play-of = o som de { $word }
heard-yes = Soou, ninguém viu
heard-no = Não soou
heard-animal = { $name } apertou
heard-person = Uma pessoa apertou
heard-not-kept = O som deste aperto não está guardado.
heard-gone = Esse aperto não espera aqui; talvez já tenha sido julgado.
