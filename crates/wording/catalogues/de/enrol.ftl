enrol-only-the-button = Erkannt wird nur der Klang des Knopfs selbst. Eine Stimme, die das Wort neu sagt, auch deine, gilt nicht als Drücken: Nimm den Knopf auf, während er spielt.
enrol-proof = Die Probe
enrol-proof-how = Drück „{ $says }“ noch einmal, mit diesem Gerät dort, wo es zuhören wird. Die Seite sagt, ob es gehört wurde, und wenn nicht, warum. Nichts wird als Drücken notiert.
enrol-proof-care = Drück ihn, wo { $name } es nicht hört: Ein Wort, das erklingt und nichts bringt, lehrt, dass es nichts bedeutet.
enrol-no-script = Aufnehmen und Probe brauchen JavaScript. Eine Tondatei geht auch ohne.
enrol-no-sound-taken = Dieses Notizbuch nimmt keinen Ton von Seiten an. Nimm einen Browser, der selbst hören kann.
enrol-button-of = Knopf { $number } von { $of }
enrol-which-button = Welcher Knopf ist es?
enrol-replaces = Derselbe: ersetzt diese Aufnahme
enrol-replaces-button = Knopf { $number }: ersetzt seine Aufnahme
enrol-another-button = Ein weiterer Knopf mit demselben Wort
enrol-record-again = Neu aufnehmen, oder einen weiteren Knopf
enrol-former = Frühere Aufnahmen ({ $count }): aufbewahrt, es wird nicht auf sie gehört
enrol-use-again = Wieder darauf hören
enrol-take-out = Nicht mehr auf diese hören
enrol-all-link = Alle Knöpfe in einem Zug aufnehmen
enrol-all-title = Alle Knöpfe aufnehmen
enrol-all-no-words = Dieses Brett hat noch keine Wörter. Füg sie zuerst hinzu, dann nimm ihre Knöpfe auf.
enrol-all-intro = { $words ->
    [1] Drück den Knopf, dann stopp. Die Seite schneidet seinen Ton zu und zeigt ihn, bevor etwas behalten wird.
   *[other] Drück die { $words } Knöpfe nacheinander in der Reihenfolge unten, mit zwei Sekunden Stille nach jedem. Die Seite schneidet den Ton, benennt ihn nach dieser Reihenfolge und zeigt ihn, bevor etwas behalten wird.
}
enrol-all-care = Tu es, während { $name } außer Hörweite ist, und halte die Ohren von den Knöpfen fern.
enrol-all-order = In dieser Reihenfolge
enrol-all-recorded = (hat eine Aufnahme)
