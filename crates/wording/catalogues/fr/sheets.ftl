sheets-print = Imprimer
sheets-print-menu = ou imprime par le menu du navigateur
