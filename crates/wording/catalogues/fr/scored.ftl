# What one scored oneself, and what there is to score.
scored-title = Ce que tu as noté
scored-intro = Réponses de tests de goûts et de vérifications que tu as notées toi-même. Ce que d’autres ont noté n’est pas ici, ni ce qui aurait été juste.
scored-none = Rien encore.
scored-likes = Tests de goûts
scored-to-score = À noter maintenant
scored-back = Vers le Tableau
