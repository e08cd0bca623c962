# Sheets to print.
sheets-print = Print
sheets-print-menu = or print from the browser’s menu
