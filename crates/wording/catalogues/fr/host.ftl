# On a server of many homes: what stands in the way.
host-not-signed-in = Connecte-toi d’abord.
host-not-fresh = Il faut pour cela une connexion récente : montre encore une fois que c’est toi.
host-not-by-role = Ton rôle ici ne va pas jusque-là. Demande à qui tient le foyer.
host-not-today = Aujourd’hui n’est pas un des jours convenus avec toi.
host-not-your-name = Ceci nomme un autre compte que le tien.
host-not-valid = Ce lien ou ce code n’est pas valable, ou ne l’est plus. Demandes-en un nouveau.
host-last-keeper = Il faut d’abord que quelqu’un d’autre tienne ce lieu.
host-taken = C’est déjà pris.
host-left = Ce foyer a quitté le serveur. Rien de lui n’est repris.
host-public-url = L’adresse publique { $url } doit commencer par https:// ou être http://localhost : les clés d’accès l’exigent.
host-cannot-open = La base de données ne s’ouvre pas : { $why }
host-no-mail = Le courrier ne part pas : { $why }
host-part = Ce rôle ne peut pas s’avoir ainsi : qui garde par jours a besoin de jours et d’une personne du foyer, qui observe d’une personne.
host-email = Ce n’est pas une adresse électronique.
host-away = La base de données du serveur ne répond pas en ce moment. Réessaie dans un instant.
host-other-name = Ce serveur ne s’ouvre qu’à { $url }.
