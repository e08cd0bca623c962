sheets-print = Drucken
sheets-print-menu = oder drucke über das Menü des Browsers
