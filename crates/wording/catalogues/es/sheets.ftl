sheets-print = Imprimir
sheets-print-menu = o imprime desde el menú del navegador
