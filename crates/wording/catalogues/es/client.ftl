client-close = Cerrar
