enrol-only-the-button = Seul le son du bouton lui-même est reconnu. Une voix qui redit le mot, la tienne aussi, n’est pas prise pour un appui : enregistre le bouton pendant qu’il sonne.
enrol-proof = L’essai
enrol-proof-how = Appuie encore une fois sur « { $says } », l’appareil là où il écoutera. La page dit si c’est entendu et, sinon, pourquoi. Rien n’est noté comme appui.
enrol-proof-care = Appuie là où { $name } ne l’entend pas : un mot qui sonne et n’apporte rien apprend qu’il ne veut rien dire.
enrol-no-script = Enregistrer et essayer demandent JavaScript. Un fichier son se garde aussi sans.
enrol-button-of = Bouton { $number } sur { $of }
enrol-which-button = Quel bouton est-ce ?
enrol-replaces = Le même : remplace cet enregistrement
enrol-replaces-button = Le bouton { $number } : remplace son enregistrement
enrol-another-button = Un autre bouton avec le même mot
enrol-record-again = Enregistrer à nouveau, ou un autre bouton
enrol-former = Enregistrements d’avant ({ $count }) : gardés, pas écoutés
enrol-use-again = L’écouter à nouveau
enrol-take-out = Ne plus écouter celui-ci
enrol-all-link = Enregistrer tous les boutons d’un coup
enrol-all-title = Enregistrer tous les boutons
enrol-all-no-words = Ce tableau n’a pas encore de mots. Ajoute-les d’abord, puis enregistre leurs boutons.
enrol-all-intro = { $words ->
    [1] Appuie sur le bouton, puis arrête. La page rogne son son et le montre avant de rien garder.
   *[other] Appuie sur les { $words } boutons l’un après l’autre dans l’ordre ci-dessous, avec deux secondes de calme après chacun. La page découpe le son, le nomme selon cet ordre et le montre avant de rien garder.
}
enrol-all-care = Fais-le pendant que { $name } n’entend pas, et garde les oreilles loin des boutons.
enrol-all-order = Dans cet ordre
enrol-all-recorded = (a un enregistrement)
