start-title = Tell us who lives here
start-all-stays = You can change everything later. It all stays on this machine.
start-on-server = You can change everything later. It is kept on this server. Only the people of your home see it until you share it. Whoever runs the server’s machine could read its disk.
start-you = Your name
start-you-hint = as you are called at home
start-animal = Your animal’s name
start-species = What animal?
start-species-name = { $species ->
    [dog] dog
    [cat] cat
    [parrot] parrot
    [rabbit] rabbit
   *[other] another animal
}
start-species-missing = is missing; choose one
start-others = Who else lives here?
start-others-hint = names with commas between; leave it empty if you live alone
start-zone = Where you live (sets midnight)
start-home = What you call your home
start-home-hint = only if you like, such as: the house by the park
start-home-of = { $name }’s home
start-zone-field = Time zone
start-bring = Kept a notebook or a diary before? { $link }
start-bring-link = Bring in a file
start-no-vet = Sayso helps to notice and to count. It does not replace a veterinarian or a qualified behaviour professional.
start-linked = Is your home on a server already? { $link }
start-linked-link = Link this notebook to it
start-notebook = Is there a notebook at home already? Leave this page empty. { $link }
start-notebook-link = Link the notebook
start-before = No buttons yet? { $lessons }, and { $rehearse }: nothing of it is written down.
start-before-read = Read the lessons
start-before-rehearse = rehearse on a simulated animal
