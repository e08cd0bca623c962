# On a server of many homes: what stands in the way.
host-not-signed-in = Melde dich zuerst an.
host-not-fresh = Dafür musst du dich frisch anmelden: Zeig noch einmal, dass du es bist.
host-not-by-role = Deine Rolle reicht hier nicht so weit. Frag, wer das Zuhause verwaltet.
host-not-today = Heute ist keiner der mit dir vereinbarten Tage.
host-not-your-name = Das nennt ein anderes Konto als deines.
host-not-valid = Dieser Link oder Code gilt nicht oder nicht mehr. Lass dir einen neuen geben.
host-last-keeper = Zuerst muss jemand anderes verwalten.
host-taken = Das ist schon vergeben.
host-left = Dieses Zuhause hat den Server verlassen. Nichts davon wird wieder aufgenommen.
host-public-url = Die öffentliche Adresse { $url } muss mit https:// beginnen oder http://localhost sein: Passkeys brauchen das.
host-cannot-open = Die Datenbank lässt sich nicht öffnen: { $why }
host-no-mail = Post lässt sich nicht senden: { $why }
host-part = Diese Rolle gibt es so nicht: Wer für Tage betreut, braucht Tage und eine Person des Zuhauses, wer beobachtet, eine Person.
host-email = Das ist keine E-Mail-Adresse.
host-away = Die Datenbank des Servers antwortet gerade nicht. Versuch es gleich noch einmal.
host-other-name = Dieser Server ist nur unter { $url } offen.
