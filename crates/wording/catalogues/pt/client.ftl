client-close = Fechar
