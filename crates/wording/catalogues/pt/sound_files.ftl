# Por que um ficheiro de som não pode ser lido.
sound-files-empty = está vazio: não há som nele
sound-files-no-sound = não há som nele
sound-files-other-file = ficheiros { $kind } não são lidos aqui; guarda-o como WAV ou m4a
sound-files-unknown = não é um ficheiro de som que possa ser lido (WAV, m4a, FLAC, Ogg, MP3, AIFF, CAF ou WebM)
sound-files-other-sound = o seu som está codificado como { $coding }, que não é lido aqui; guarda-o como WAV ou m4a
sound-files-cut-short = está cortado: há { $there } s de { $promised } s. Nada dele foi usado. Copia-o de novo de onde foi gravado; se não existe mais, guarda-o como WAV com outro programa
sound-files-part-missing = está cortado: falta a parte que diz o que ele contém. Copia-o de novo de onde foi gravado
sound-files-damaged = está danificado depois de { $after } s; copia-o de novo de onde foi gravado
sound-files-no-format = não indica uma taxa de amostragem ou um número de canais que faça sentido
sound-files-changes = a taxa de amostragem ou o número de canais muda dentro dele; guarda-o como WAV com outro programa
