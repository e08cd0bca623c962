consent-coach-figures-1 = { $who } voit les chiffres de ton foyer : Aujourd’hui, Preuves et les autres pages qui comptent. Ni le journal, ni qui a noté quoi, ni les sons.
consent-coach-log-1 = { $who } lit ton journal : chaque note, quand c’était et qui l’a écrite. Aucun son.
consent-coach-snippets-1 = { $who } écoute les sons courts gardés des appuis sur ton tableau. On peut y entendre des voix de la pièce.
consent-norms-1 = Tes chiffres comptent dans les valeurs de référence de ce serveur : un foyer parmi beaucoup, sans noms. Si tu retires ton accord, les valeurs calculées ensuite ne les comptent plus.
consent-research-1 = Tes notes peuvent être confiées à des études approuvées par un comité d’éthique, sans noms et sans sons. Si tu retires ton accord, aucune autre étude ne les reçoit. Ce qu’une étude a déjà ne peut pas être repris.
consent-ends-1 = C’est désactivé jusqu’à ce que tu l’actives. Tu peux le retirer à tout moment, avec effet immédiat.
consent-coach-figures-2 = { $who } voit les pages de ton foyer avec des chiffres : Aujourd’hui, Préférences, Mots, Preuves, Jours, Motifs, vérifications, essais d’un changement et feuilles à imprimer. On y lit tes cartes de mots avec ce que tu y as écrit, tes images, les enregistrements de tes boutons, les dates, et qui a commencé ou noté un test. Pas le journal note par note, ni les sons gardés des appuis.
