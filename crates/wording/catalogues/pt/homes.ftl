homes-title = Que casa?
homes-intro = { $count ->
    [1] Este caderno tem uma casa.
   *[other] Este caderno tem { $count } casas. Cada uma tem seus animais, palavras e números; nada é contado entre elas.
}
homes-no-animal = ainda sem animal
homes-holds = { $animals }; { $count ->
    [1] um registro
   *[other] { $count } registros
}
homes-tail-since = { $name } (…{ $tail }, desde { $day })
homes-title-none = Ainda sem casa
homes-none = A sua conta ainda não faz parte de nenhuma casa. Peça um convite a quem cuida da casa ou deste servidor e abra o link neste aparelho.
homes-none-private = As casas que compartilham algo com você como coach ficam aqui enquanto o fizerem.
homes-clubs = Clubes
homes-to-server = O servidor
homes-give-up = Deixar um papel
homes-give-up-what = A partir daí você não vê mais nada da casa. O que você escreveu fica no registro dela.
homes-go = Deixar
homes-with-days = { $role }; { $days }
homes-not-begun = { $role }; aqui ainda não há nada escrito: quem cuida da casa começa
homes-closed-now = { $role }; hoje fechada para você
homes-shares = { $role }; compartilha { $what }
homes-find = Achar uma casa
homes-find-button = Achar
homes-found-none = Nenhuma casa sua tem “{ $text }” no nome.
homes-all = Todas as casas
homes-parted = Uma casa de que você fazia parte saiu deste servidor em { $day }. Tudo dela está apagado aqui.
homes-lost = A casa que estava aberta aqui não está mais aberta para você, ou saiu. Escolha uma das suas casas.
homes-title-server = Você cuida deste servidor
homes-title-clubs = Os seus clubes
homes-none-keeper = Você não faz parte de nenhuma casa aqui, e não precisa de uma para isso. Um convite para uma, aberto neste aparelho, a adiciona.
homes-none-coach = Neste momento nenhuma casa compartilha nada com você. Uma casa fica aqui enquanto quem cuida dela concordar. Ela some quando isso é retirado ou termina, ou quando a casa sai.
homes-none-for-programs = A sua conta não faz parte de nenhuma casa aqui. Abra antes o link de um convite.
homes-anew = Quem cuida do servidor convidou alguém para cuidar de “{ $home }”.
homes-restored = Este servidor foi trazido de volta de um backup em { $at }, e todo consentimento terminou com isso. As casas que você acompanha voltam quando quem cuida delas o der de novo. Peça a elas.
