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
lesson-wall = Auf der Leinwand zeigen
lesson-leave-wall = Leinwand beenden
# The step in hand: its number, how many there are, and what it changes.
lesson-step = { $number } von { $count }: { $does }
lesson-ask-first = Wie wird sich das Getränk vom Standard unterscheiden?
lesson-ask-next = Wie unterscheidet es sich jetzt vom Standard?
lesson-result = Ergebnis
# A button: an axis of taste, and what may become of it: "sweetness: sweeter".
lesson-prediction = { $axis }: { $guess }
# How many predict, and the buttons that make them fewer or more.
lesson-learners = { $count ->
    [one] Eine Vorhersage für die Gruppe
   *[other] { $count } Lernende
}
lesson-learners-fewer = Eine Person weniger
lesson-learners-more = Eine Person mehr
lesson-learners-what = Für jede gehobene Hand einmal klicken.
# Behind the words of a guess: how many learners expect it.
lesson-hands = { $guess }: { $count }
# $right of $count learners expected it.
lesson-some-correct = { $outcome }: { $right } von { $count } richtig
# $outcome is "sweeter by 1.9 steps", $guess "less sweet".
lesson-correct = { $outcome }: richtig
lesson-not-correct = { $outcome } – nicht { $guess }
# How many predictions were correct: $right of $count.
lesson-score = { $count ->
    [one] { $right } von { $count } Vorhersage richtig
   *[other] { $right } von { $count } Vorhersagen richtig
}
# The same over all steps of the lesson.
lesson-score-in-all = { $count ->
    [one] In allen Schritten { $right } von { $count } Vorhersage richtig
   *[other] In allen Schritten { $right } von { $count } Vorhersagen richtig
}
# Why: the figure of the drink, that of the standard with its unit, and what a noticeable step is.
lesson-why = { $drink } statt { $standard }; ein Schritt ist { $step }
# Which line is behind it. $now and $before are amounts with their unit, $what is "fat".
lesson-why-swap = { $with } bringt { $now } { $what }, { $replace } brachte { $before }
lesson-why-line = { $ingredient } bringt { $now } { $what } statt { $before }
lesson-why-new = { $ingredient } bringt { $now } { $what }
lesson-why-gone = { $ingredient } brachte { $before } { $what }
lesson-what-sweetness = Süße (als Zucker)
lesson-what-tea = Teefeststoffe
lesson-what-fat = Fett
lesson-what-acid = Säure
lesson-what-body = Trockenmasse ohne Zucker
lesson-what-volume = Flüssigkeit
lesson-what-flavour = Aroma „{ $flavour }“
# An amount of a flavour, in house units.
lesson-units = { $number } Einheiten
# Short words on the buttons of the wall screen.
lesson-less = weniger
lesson-more = mehr
lesson-same = „Gleich“ heißt: höchstens ein merklicher Schritt Abstand zum Standard, also im Band des Geschmacksbilds. Evensip schätzt; Gewissheit gibt das Verkosten.
# Buttons.
lesson-back = Zurück
lesson-reveal = Aufdecken
lesson-next = Nächster Schritt
lesson-last = Das war der letzte Schritt
lesson-next-drink = Nächstes Getränk: { $drink }
# The table that is copied, and heads of its columns.
lesson-table = Vorhersagen
lesson-table-step = Schritt
lesson-table-change = Änderung
lesson-table-axis = Merkmal
lesson-table-prediction = Vorhersage
lesson-table-result = Ergebnis
lesson-table-difference = Abstand zum Standard, merkliche Schritte
lesson-table-correct = richtig
lesson-table-correct-of = { $right } von { $count }
