command-no-home = { $dir } ainda não tem nenhuma casa; rode `sayso serve --data { $dir }` e crie uma
command-no-animal = nenhum animal se chama “{ $asked }”; há: { $known }
command-no-animal-yet = nenhum animal se chama “{ $asked }”; ainda não há nenhum
command-no-word = nenhuma palavra diz “{ $asked }”; há: { $known }
command-no-word-yet = nenhuma palavra diz “{ $asked }”; ainda não há nenhuma
command-several-words = várias palavras dizem “{ $asked }”; dê um dos seus identificadores: { $ids }
command-not-understood = { $n ->
    [one] { $n } registro do tipo { $kind } não é entendido: foi escrito por uma versão posterior. Fica guardado, mas aqui não conta.
   *[other] { $n } registros do tipo { $kind } não são entendidos: foram escritos por uma versão posterior. Ficam guardados, mas aqui não contam.
}
command-no-language = SAYSO_LANGUAGE é “{ $given }”, que não é nenhuma de: { $known }
command-manual = As páginas do manual estão em { $dir }; comece por: man { $first }
command-no-reward = nenhuma recompensa se chama “{ $asked }”; há: { $known }
command-no-reward-yet = nenhuma recompensa se chama “{ $asked }”; ainda não há nenhuma
command-several-rewards = várias recompensas se chamam “{ $asked }”; dê um dos seus identificadores: { $ids }
