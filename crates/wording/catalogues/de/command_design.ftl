command-design-listed = { $id }  { $question }  { $design }, { $points ->
    [one] { $points } Punkt
   *[other] { $points } Punkte
} ab { $first }
command-design-stopped = Beendet. Stelle alles wieder wie vorher.
command-design-no-trial = das Notizbuch kennt keinen Versuch { $id }; siehe `sayso design list`
command-design-not-drawn = die Reihenfolge dieses Versuchs lässt sich nicht aus seinem Plan ziehen: { $why }
command-design-heading = { $question } { $design }; { $measure } { $unit ->
    [day] an jedem Tag
   *[session] in jeder Sitzung
}
command-design-now = jetzt: { $what }
command-design-rest = Pause, alles wie gewohnt; starke Zeichen von Stress wurden notiert
command-design-nothing = alles wie gewohnt
command-design-within = innerhalb von { $seconds } s geben
command-design-usual = wie gewohnt
command-design-point = Punkt { $point } von { $of }: { $what }
command-design-departure = nicht wie geplant: { $what }
command-design-so-far = Zahlen bis jetzt; nichts wird aus ihnen behauptet, und Hinsehen verleitet zum Abbrechen:
command-design-no-test = kein Test: { $why }
command-design-open-end = offen
command-design-difference = Unterschied, geändert minus gewohnt: { $value } (95-%-Intervall { $low } bis { $high }, n = { $n } Punkte)
command-design-distance = mittlerer Abstand vom Ziel: { $seconds }
command-design-orders = ebenso extreme Reihenfolgen: { $extreme } von { $of }; { $p }
command-design-standards = der Plan { $verdict }: Gelegenheiten, eine Wirkung zu zeigen: { $chances }, mindestens je { $fewest ->
    [one] { $fewest } Punkt
   *[other] { $fewest } Punkte
}
command-design-missing = vergangene Punkte ohne Wert: { $n } von { $of }
command-design-mean = Mittel: { $mean }
command-design-nap = { $name }: NAP { $nap } (90-%-Intervall { $low } bis { $high }, n = { $n_a } und { $n_b }), Tau-U { $tau } ({ $p })
command-design-which-animal = sage mit --animal, welches Tier
command-design-not-today = nicht heute: Starke Zeichen von Stress wurden notiert; gib Raum und plane an einem ruhigen Tag
command-design-too-soon = --first muss { $day } oder später sein: Die Reihenfolge wird gezogen, bevor es beginnt
command-design-no-random = dieser Rechner gibt keine Zufallszahlen: { $why }
command-design-planned = Geplant: { $id }
command-design-about = Es geht um { $name }, nicht umgekehrt: { $name } darf jederzeit gehen, und ein starkes Zeichen von Stress beendet den Versuch.
command-design-see = Was an jedem Tag gilt, zeigt `sayso design show { $id }`.
