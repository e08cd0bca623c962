signs-see-walks-up = vient quand tu commences à montrer
signs-see-ears-forward = oreilles en avant ou tête penchée à un mot
signs-see-waits = attend près du tableau et regarde la personne
signs-see-comes-at-sound = vient d’une autre pièce au son
signs-see-brings-thing = apporte la chose demandée
signs-see-loose-body = corps souple, queue détendue
signs-see-lip-lick = se lèche les babines ou bâille hors de propos
signs-see-turns-away = détourne la tête ou le corps
signs-see-sniffs-floor = renifle le sol, se gratte, s’ébroue
signs-see-lifts-paw = lève une patte, oreilles en arrière
signs-see-panting = halète sans chaleur ni effort
signs-see-eye-whites = on voit le blanc des yeux
signs-see-tail-tucked = queue entre les pattes, accroupi
signs-see-freezes = se fige, fixe du regard
signs-see-avoids-board = se cache ou refuse d’approcher du tableau
signs-see-growl = grognement
signs-see-bite = claquement de dents ou morsure
signs-see-guards = défend de la nourriture, une chose ou le bouton
signs-see-swallowed = a avalé quelque chose qui n’est pas de la nourriture
signs-see-approaches-tail-up = approche, queue dressée
signs-see-rubs = se frotte à la personne ou au tableau
signs-see-slow-blink = cligne lentement des yeux, oreilles en avant
signs-see-tail-tip = le bout de la queue s’agite
signs-see-ears-sideways = les oreilles se tournent sur le côté
signs-see-skin-ripples = la peau du dos frémit, coup de langue rapide sur le nez
signs-see-tail-lashes = la queue fouette
signs-see-ears-flat = oreilles plaquées
signs-see-crouches = se tapit, pupilles dilatées
signs-see-hides = se cache
signs-see-hiss = feulement ou coup de patte
signs-see-leans-in = se penche vers toi, plumes détendues
signs-see-steps-unasked = va au tableau sans y être invité
signs-see-feathers-tight = plumes plaquées, se penche en arrière
signs-see-pupils-pin = les pupilles se contractent par à-coups, nuque hérissée, corps raide et dressé
signs-see-lunges = se jette en avant
signs-see-nudges = approche, pousse du nez
signs-see-flops = se laisse tomber sur le flanc, se toilette à côté
signs-see-freezes-flat = se fige à plat ventre, oreilles en arrière
signs-see-thumps = tape du pied
signs-see-runs-to-hide = court se cacher
signs-act-carry-on = continue
signs-act-pause-let-leave = fais une pause, laisse de l’espace, laisse l’animal partir
signs-act-end-no-lure = termine la séance ; n’attire pas l’animal pour qu’il revienne
signs-act-end-distance-ask = termine la séance, garde tes distances ; consulte un vétérinaire et un professionnel qualifié du comportement
signs-act-end-take-nothing-ask = termine la séance, garde tes distances, ne lui prends rien ; consulte un vétérinaire et un professionnel qualifié du comportement
signs-act-call-vet = appelle aussitôt un vétérinaire ; ne fais pas vomir sauf si on te le dit
signs-act-pause = fais une pause, laisse de l’espace
signs-act-end = termine la séance
signs-of-any = se détourner, se cacher, se figer, menacer
signs-whose = { $species ->
    [dog] Chien
    [cat] Chat
    [parrot] Perroquet
    [rabbit] Lapin
   *[other] Un autre animal
}
signs-levels = { $whose } : légers : { $mild }. Forts : { $strong }.
signs-only-strong = { $whose } : on ne connaît aucun signe léger ; le premier peut déjà être fort : { $strong }.
