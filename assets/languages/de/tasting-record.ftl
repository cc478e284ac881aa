# Verkostungen, die das Buch behält.

# Was herauskam, als Wert eines Feldes: eine Wendung ohne Punkt.
tasting-outcome-said = nichts gezählt
tasting-outcome-chosen = { $test ->
    [triangle] Dreieck: { $right } von { $people } fanden den abweichenden Becher
    [duo-trio] Duo-Trio: { $right } von { $people } fanden den Becher, der der Referenz gleicht
    [pair] Paar: { $right } von { $people } wählten wie erwartet den zweiten Becher
   *[pair-either-way] Paar: { $right } von { $people } wählten den zweiten Becher
}
tasting-outcome-matched = { $people ->
    [one] von 1 Person abgeglichen
   *[other] von { $people } Personen abgeglichen
}
tasting-outcome-passed-as-equal = { $people ->
    [one] von 1 Person als gleich angenommen
   *[other] von { $people } Personen als gleich angenommen
}
tasting-outcome-about = der zweite Becher hat etwa { $times }-mal so viel
tasting-counts = zählt
tasting-counts-not = zählt nicht

# Ein Becher: eine Menge einer Zutat in einem, der für die Verkostung gemischt wurde.
tasting-cup-part = { $amount } { $ingredient }
# Ein Becher ohne Zeilen.
tasting-cup-empty = ein leerer Becher

## Was alle Verkostungen zusammen über eine Zutat sagen.

# $what ist eine Achse oder ein Aroma, $before eine relative Unsicherheit wie ±25 %.
tasting-proposal = { $ingredient }, { $what }: das { $times }-Fache dessen, was angegeben oder angenommen und auf ±{ $before } bekannt war.
tasting-proposal-reference = { $ingredient }, { $what }: Daran werden die anderen gemessen.
tasting-proposal-taken = Bisher ist { $times } übernommen.
tasting-proposal-rests = { $count ->
    [one] Das beruht auf 1 Verkostung.
   *[other] Das beruht auf { $count } Verkostungen.
}
tasting-contradicts = { $tasting } widerspricht allem anderen: Ein so seltsames Ergebnis hat eine Wahrscheinlichkeit von { $chance }. Wiederholen Sie sie, oder lassen Sie sie weg, wenn etwas schiefging.
tasting-not-settled = Die Verkostungen lassen sich nicht gemeinsam abwägen: Sie widersprechen einander zu sehr. Lassen Sie die weg, bei der etwas schiefging.
tasting-nothing-learned = Noch zählt keine Verkostung.
# Warum eine Verkostung, die zählt, über keinen Wert etwas sagt. $tasting ist einer der Texte named-tasting….
tasting-aside-nothing-counted = { $tasting }: Es wurde nichts gezählt, daher sagt sie über keinen Wert etwas.
tasting-aside-unfinished = { $tasting }: Der Eintrag ist nicht fertig; zwei Becher und die Zahl der Personen werden gebraucht.
tasting-aside-no-axis = { $tasting }: Worum es ging, ist nicht angegeben; Süße oder ein Aroma wählen.
tasting-aside-other-axis = { $tasting }: Durch Verkostungen zu { $axis } wird kein Wert einer Zutat berichtigt.
tasting-aside-not-known = { $tasting }: Der Wert eines Bechers für { $axis } ist nicht bekannt; eingeben, was auf den Etiketten und an Gewichten fehlt.
tasting-aside-changed = { $tasting }: { $ingredients } hat sich seit der Verkostung geändert.
tasting-aside-nothing-differs = { $tasting }: Die Becher unterscheiden sich in nichts, was eine Verkostung berichtigen könnte.
# Was aus einem Getränk wird. $before und $after sind Werte mit Einheit, $change ist etwa „süßer um 1,2 Schritte“.
tasting-effect = { $drink }: { $axis } { $before } → { $after } ({ $change }).
tasting-effect-standard = { $drink }: { $axis } { $before } → { $after } ({ $change }); Abstand zum Standard { $off_before } → { $off_after } Schritte.
tasting-effect-none = Kein Getränk enthält sie.

## Die Verkostungen eines Getränks, auf seinem Blatt

tastings = Verkostungen
# $tasting ist einer der Texte named-tasting…, $outcome einer von tasting-outcome….
tastings-row = { $tasting }: { $outcome }
tastings-add = Verkostung eintragen
tastings-remove = Diese Verkostung löschen
tastings-people = Verkoster
tastings-people-named = Name oder Kürzel eines Verkosters
tastings-people-hint = ein Name, dann Enter
tastings-people-fewer = Den letzten entfernen
tastings-date = am
tastings-date-named = Tag der Verkostung
tastings-in-future = { $day } liegt nach dem heutigen Tag; den Tag der Verkostung eingeben
tastings-reason = Grund
tastings-reason-named = Grund der Verkostung
tastings-cup = Becher { $number }
tastings-axis = gefragt nach
tastings-axis-named = Wonach gefragt wurde
tastings-no-axis = welcher Becher welcher ist
tastings-outcome = Ergebnis
tastings-outcome-named = Art des Ergebnisses
tastings-outcome-kind = { $kind ->
    [matched] Becher 2 an Becher 1 angeglichen
    [passed-as-equal] Becher 2 als gleich angenommen
    [about] Becher 2 hat etwa ein Vielfaches
    [pair] Paar: Becher 2 müsste mehr haben
    [pair-either-way] Paar: jeder kann mehr haben
    [triangle] Dreieck: welcher weicht ab?
    [duo-trio] Duo-Trio: welcher gleicht der Referenz?
   *[said] nichts gezählt
}
tastings-counted = Personen
tastings-counted-named = Wie viele Personen antworteten, jede einmal gezählt
tastings-right = davon
tastings-right-named = Wie viele recht hatten oder Becher 2 wählten
tastings-times = das Vielfache
tastings-times-named = Das Vielfache, das Becher 2 hat
tastings-counts = zählt als Beleg für die Zutaten
tastings-note = gesagt
tastings-note-named = Was jemand über einen Becher sagte
tastings-note-hint = AB 2: etwas flach
tastings-said = Becher { $number }: { $text }
tastings-said-by = { $person }, Becher { $number }: { $text }
tastings-take-over = Die Folgen für die Getränke ansehen und für { $ingredient } übernehmen
