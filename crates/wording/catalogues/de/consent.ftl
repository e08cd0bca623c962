consent-coach-figures-1 = { $who } sieht die Zahlen eures Zuhauses: Heute, Belege und die anderen Seiten, die zählen. Nicht das Protokoll, nicht, wer was notiert hat, und keine Töne.
consent-coach-log-1 = { $who } liest euer Protokoll: jeden Eintrag, wann er war und wer ihn notiert hat. Keine Töne.
consent-coach-snippets-1 = { $who } hört die kurzen Töne, die von Drücken an eurem Brett aufbewahrt werden. Stimmen im Raum können darauf zu hören sein.
consent-norms-1 = Eure Zahlen zählen in den Vergleichswerten dieses Servers: ein Zuhause unter vielen, ohne Namen. Nimmst du das zurück, zählen sie in keinen später berechneten mehr.
consent-research-1 = Eure Aufzeichnungen dürfen an Studien gehen, die eine Ethikkommission gebilligt hat, ohne Namen und ohne Töne. Nimmst du das zurück, gehen sie an keine weitere Studie. Was eine Studie schon hat, lässt sich nicht zurückholen.
consent-ends-1 = Das ist aus, bis du es einschaltest. Du kannst es jederzeit zurücknehmen, und es endet sofort.
