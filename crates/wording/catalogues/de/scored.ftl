# What one scored oneself, and what there is to score.
scored-title = Was du bewertet hast
scored-intro = Antworten von Vorliebentests und Prüfungen, die du selbst notiert hast. Was andere notiert haben, steht hier nicht, auch nicht, was richtig gewesen wäre.
scored-none = Noch nichts.
scored-likes = Vorliebentests
scored-to-score = Jetzt zu bewerten
scored-back = Zum Brett
