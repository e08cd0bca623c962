# Recording real buttons: the sheet that says how, and the page that records.
kit-title = Enregistrer de vrais boutons
kit-why = L’écoute de Sayso a été mesurée sur des sons fabriqués ; aucun vrai bouton n’a encore été enregistré. Des enregistrements de vrais boutons montrent jusqu’où s’y fier.
kit-stays = Rien n’est envoyé : tu enregistres un fichier sur cet appareil et tu décides à qui le donner.
kit-print = Imprimer la marche à suivre
kit-no-script = L’enregistrement a besoin de JavaScript, qui est désactivé dans ce navigateur.
kit-before = Avant de commencer
kit-away = Aucun animal dans la pièce ni à portée d’oreille : un mot qui sonne et n’apporte rien apprend qu’il ne veut rien dire.
kit-loud = Laisse le volume du bouton tel quel et tiens-le loin des oreilles : un son fort tout près peut faire mal.
kit-people = Préviens toutes les personnes qu’on peut entendre. Ne dites aucun nom pendant l’enregistrement.
kit-need = Il te faut
kit-need-things = Un bouton ou plusieurs, un téléphone, un mètre ruban et environ 15 minutes par bouton.
kit-steps = Pas à pas
kit-step = Étape
kit-what-to-do = Que faire
kit-step-open = Sur le téléphone, ouvre la page « { $page } » depuis la page Écouter.
kit-step-agree = Lis ce que tu acceptes et coche-le.
kit-step-say = Dis quel bouton et quel téléphone c’est : taille, forme, âge. Aucun nom de marque ni de personne.
kit-step-close = Dans une pièce calme, tiens le téléphone à une largeur de main du bouton et enregistre un appui.
kit-step-presses = Pose le téléphone à { $metres } m du bouton. Appuie dix fois, chaque fois que la page dit « Appuie » : toutes les six secondes.
kit-step-further = Fais de même à { $distances } m, sans rien entre le bouton et le téléphone.
kit-step-without = Enregistre trois minutes sans appui : parlez, marchez, laissez la radio allumée.
kit-step-again = Si tu peux, refais le tout dans une autre pièce, avec un autre bruit ou un autre téléphone.
kit-step-save = Enregistre le fichier avant de fermer la page.
kit-to-fill-in = À remplir à la main, si tu veux
kit-distance = Distance
kit-metres = { $metres } m
kit-room = Pièce
kit-noise = Ce qu’on entend d’autre
kit-phone = Téléphone
kit-presses = Appuis
kit-without = aucun, 3 minutes
kit-agree = Ce que tu acceptes
kit-consent = Toutes les personnes qu’on peut entendre acceptent d’être enregistrées. Le fichier peut être donné à des gens qui mesurent et améliorent l’écoute des appuis. Il contient du son et ce qui est rempli ci-dessous, aucun nom.
kit-agreed = Nous acceptons
kit-publish = Le fichier peut aussi être publié comme son d’essai
kit-publish-hint = laisse vide en cas de doute
kit-about = Le bouton et le téléphone
kit-word = Ce que dit le bouton
kit-button = Quel genre de bouton
kit-button-hint = taille, forme, âge, charge de la pile ; pas de nom de marque
kit-phone-hint = taille et âge ; pas de nom de marque ni de personne
kit-close = Le bouton de près
kit-close-how = Dans une pièce calme, tiens le téléphone à une largeur de main du bouton et appuie une fois. L’écoute reconnaît le bouton à ce son.
kit-take = Appuis à distance
kit-rooms = { $room ->
    [kitchen] cuisine
    [living] salon
    [bedroom] chambre
    [hall] couloir ou escalier
    [outdoors] dehors
   *[other] une autre pièce
}
kit-noises = { $noise ->
    [quiet] calme
    [talk] des gens parlent
    [media] radio, musique ou télévision
    [machine] une machine de la maison
    [outside] rue ou météo
   *[other] autre chose
}
kit-marked = Comment les appuis sont marqués
kit-countdown = Par compte à rebours : appuie quand la page le dit
kit-tap = Par un toucher : quelqu’un touche l’écran au moment de l’appui
kit-recorded = Enregistré
kit-save = Enregistrer
kit-save-how = Un seul fichier : les sons, ce que tu as rempli et ce que vous avez accepté.
kit-lead = Aide à mesurer l’écoute : enregistre tes boutons
