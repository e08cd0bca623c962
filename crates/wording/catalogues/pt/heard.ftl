heard-title = Toques ouvidos
heard-nothing = Nada espera aqui.
heard-intro = Um microfone diz que botão soou, não quem carregou. Diz o que viste; deixa como está o que ninguém viu.
heard-did-it-sound = Soou?
heard-did-it-sound-hint = Ouvido com menos certeza. “Não soou” anula-o.
heard-who-pressed = Quem carregou?
heard-count = { $title } ({ $count })
heard-listen = Ouvir pelo microfone deste aparelho
heard-log = O que foi anulado fica no registo
heard-a-word = uma palavra
heard-older = { $count ->
    [one] Segue-se um mais antigo quando estes forem julgados.
   *[other] Seguem-se { $count } mais antigos quando estes forem julgados.
}
heard-chance = probabilidade de ter soado: { $share }
heard-play = Ouvir
heard-play-of = o som de { $word }
heard-yes = Soou, ninguém viu
heard-no = Não soou
heard-animal = { $name } carregou
heard-person = Uma pessoa carregou
heard-not-kept = O som deste toque não está guardado.
heard-gone = Esse toque não espera aqui; talvez já tenha sido julgado.
