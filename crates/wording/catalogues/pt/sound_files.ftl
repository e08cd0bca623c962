# Por que um arquivo de som não pode ser lido.
sound-files-empty = está vazio: não há som nele
sound-files-no-sound = não há som nele
sound-files-other-file = arquivos { $kind } não são lidos aqui; salve-o como WAV ou m4a
sound-files-unknown = não é um arquivo de som que possa ser lido (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM)
sound-files-other-sound = o som dele está codificado como { $coding }, que não é lido aqui; salve-o como WAV ou m4a
sound-files-cut-short = está cortado: há { $there } s de { $promised } s. Nada dele foi usado. Copie-o de novo de onde foi gravado; se não existe mais, salve-o como WAV com outro programa
sound-files-part-missing = está cortado: falta a parte que diz o que ele contém. Copie-o de novo de onde foi gravado
sound-files-damaged = está danificado depois de { $after } s; copie-o de novo de onde foi gravado
sound-files-no-format = não indica uma taxa de amostragem ou um número de canais que faça sentido
sound-files-changes = a taxa de amostragem ou o número de canais muda dentro dele; salve-o como WAV com outro programa
