command-no-home = { $dir } aún no contiene ningún hogar; ejecuta `sayso serve --data { $dir }` y crea uno
command-no-animal = ningún animal se llama «{ $asked }»; hay: { $known }
command-no-animal-yet = ningún animal se llama «{ $asked }»; aún no hay ninguno
command-no-word = ninguna palabra dice «{ $asked }»; hay: { $known }
command-no-word-yet = ninguna palabra dice «{ $asked }»; aún no hay ninguna
command-several-words = varias palabras dicen «{ $asked }»; da uno de sus identificadores: { $ids }
command-not-understood = { $n ->
    [one] { $n } registro de tipo { $kind } no se entiende: lo escribió una versión posterior. Se guarda, pero aquí no cuenta.
   *[other] { $n } registros de tipo { $kind } no se entienden: los escribió una versión posterior. Se guardan, pero aquí no cuentan.
}
command-no-language = SAYSO_LANGUAGE es «{ $given }», que no es ninguna de: { $known }
command-manual = Las páginas del manual están en { $dir }; empieza por: man { $first }
command-no-reward = ninguna recompensa se llama «{ $asked }»; hay: { $known }
command-no-reward-yet = ninguna recompensa se llama «{ $asked }»; aún no hay ninguna
command-several-rewards = varias recompensas se llaman «{ $asked }»; da uno de sus identificadores: { $ids }
