frame-today = Hoje
frame-board = Quadro
frame-likes = Gostos
frame-words = Palavras
frame-evidence = Evidências
frame-days = Dias
frame-log = Registro
frame-people = Pessoas
frame-sheets = Folhas
frame-learn = Aprender
frame-desk = Mesa
frame-more = Mais
frame-pages = Páginas
frame-to-content = Ir para o conteúdo
frame-home = Casa:
frame-which-animal = Que animal:
frame-animals = Animais
frame-i-am = Sou { $name }
frame-who-are-you = Quem é você?
frame-not-understood = { $count ->
        [1] Um registro daqui não é entendido
       *[other] { $count } registros daqui não são entendidos
    } ({ $kinds }): foram escritos por uma versão posterior deste programa. Ficam guardados, mas nenhuma página os mostra nem conta. Atualize este programa.
frame-methods = Como se calcula
frame-who-sees = Quem pode ver isto
frame-account = { $name }: conta
frame-sign-out = Sair
frame-you = Você
frame-offline-out = Não há rede, por isso você continua com a sessão aberta aqui. Tente de novo onde houver.
frame-unsent = Não foi salvo: o caderno não responde. O que você digitou ainda está aqui. Tente de novo quando ele voltar.
frame-unchecked = Esta tradução ainda não foi revisada por um falante nativo.
