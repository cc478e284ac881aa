# A lesson on a swap: a group predicts each step, then the step is revealed.
lesson-title = Einen Austausch unterrichten
lesson-introduction = Wählen Sie eine Zutat und ihren Ersatz. Die Gruppe sagt den Geschmack voraus; dann decken Sie ihn Schritt für Schritt auf: zuerst den einfachen Austausch, dann jede Änderung, mit der der Standard wieder getroffen wird.
lesson-nothing = Es gibt nichts aufzudecken: Ein Wert, der für den Austausch nötig ist, ist nicht bekannt, oder keine änderbare Zeile bringt das Getränk näher an den Standard. Unter „Austausch“ sehen Sie, was zutrifft.
lesson-see-swap = Unter „Austausch“ ansehen
# The title: which recipe, and what replaces what.
lesson-of-swap = { $recipe }: { $with } statt { $replace }
lesson-begin-again = Von vorn beginnen
lesson-another-swap = Anderer Austausch
lesson-exercise = Übung auf Papier …
lesson-large = große Schrift für die Leinwand
# The step in hand: its number, how many there are, and what it changes.
lesson-step = { $number } von { $count }: { $does }
lesson-ask-first = Wie wird sich das Getränk vom Standard unterscheiden?
lesson-ask-next = Was wird sich dadurch gegenüber dem vorigen Schritt ändern?
lesson-result = Ergebnis
# A button: an axis of taste, and what may become of it: "sweetness: sweeter".
lesson-prediction = { $axis }: { $guess }
# $moved is "sweeter by 1.9 steps", $guess "less sweet".
lesson-correct = { $moved }: richtig
lesson-not-correct = { $moved } – nicht { $guess }
# How many predictions were correct: $right of $count.
lesson-score = { $count ->
    [one] { $right } von { $count } Vorhersage richtig
   *[other] { $right } von { $count } Vorhersagen richtig
}
# $least is a number below 1.
lesson-same = „Gleich“ heißt: weniger als { $least } eines merklichen Schritts Unterschied. Evensip schätzt; Gewissheit gibt das Verkosten.
# Buttons.
lesson-back = Zurück
lesson-reveal = Aufdecken
lesson-next = Nächster Schritt
lesson-last = Das war der letzte Schritt
# The table that is copied, and heads of its columns.
lesson-table = Vorhersagen
lesson-table-step = Schritt
lesson-table-change = Änderung
lesson-table-axis = Merkmal
lesson-table-prediction = Vorhersage
lesson-table-result = Ergebnis
lesson-table-moved = Verschiebung, merkliche Schritte
lesson-table-correct = richtig
