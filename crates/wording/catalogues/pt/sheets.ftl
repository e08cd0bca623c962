sheets-print = Imprimir
sheets-print-menu = ou imprime pelo menu do navegador
