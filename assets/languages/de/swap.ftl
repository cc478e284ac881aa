# What is said of a swap: what a suggestion does, and why nothing, or not enough, can be suggested.

# What a suggestion is best at.
suggestion-fewest-changes = wenigste Änderungen
suggestion-closest-taste = ähnlichster Geschmack
suggestion-cheapest = geringste Kosten
suggestion-least-sugar = am wenigsten Zucker

# The name of a new version, until a person gives it another.
# Name of a new version that makes up for a product that has changed.
swap-version-brought-back = wieder wie freigegeben
swap-version-name = mit { $ingredient }

# Whole sentences, which follow each other.
# The same product, as it is now; the arguments are those of the next message.
swap-as-it-is-made = So wie es jetzt zubereitet wird, enthält das Getränk { $swap } Zucker statt { $standard }; { $ingredient } hat sich geändert.
swap-equal-measures = Bei gleichen Maßen enthält das Getränk mit { $ingredient } { $swap } Zucker statt { $standard }.
swap-at-least = mindestens { $amount }
# { $moves } is a list of changed lines; { $changed } says whether there are any.
swap-result-level = { $changed ->
    [nothing] Ohne weitere Änderung stimmt es bei jedem Merkmal mit dem Standard überein.
   *[lines] Mit { $moves } stimmt es bei jedem Merkmal mit dem Standard überein.
}
swap-result-beyond = { $changed ->
    [nothing] Größter Unterschied ohne weitere Änderung: noch um { $steps } merkliche Schritte { $change }.
   *[lines] Größter Unterschied mit { $moves }: noch um { $steps } merkliche Schritte { $change }.
}
swap-result-within = { $changed ->
    [nothing] Ohne weitere Änderung erreicht kein Unterschied einen merklichen Schritt; der größte: um { $steps } Schritt { $change }.
   *[lines] Mit { $moves } erreicht kein Unterschied einen merklichen Schritt; der größte: um { $steps } Schritt { $change }.
}
swap-result-within-known = { $changed ->
    [nothing] Ohne weitere Änderung erreicht kein bekannter Unterschied einen merklichen Schritt; der größte: um { $steps } Schritt { $change }.
   *[lines] Mit { $moves } erreicht kein bekannter Unterschied einen merklichen Schritt; der größte: um { $steps } Schritt { $change }.
}
swap-result-not-compared = { $changed ->
    [nothing] Ohne weitere Änderung lässt es sich nicht vergleichen.
   *[lines] Mit { $moves } lässt es sich nicht vergleichen.
}
swap-axes-not-known = Nicht bekannt: { $axes }.
swap-gain-cost = { $change ->
    [less] Es kostet { $amount } weniger als der Standard.
   *[more] Es kostet { $amount } mehr als der Standard.
}
swap-gain-cheapest = Weniger kann es nicht kosten.
swap-gain-sugar = Es enthält { $sugar } Zucker.

# Why nothing, or not enough, can be suggested: clauses without a capital and a stop.
swap-not-in-version = { $ingredient } ist nicht in dieser Version: eine enthaltene Zutat wählen
swap-sweetness-not-known = { $drink ->
    [standard] die Süße des Standards ist nicht bekannt: Zucker und Zuckerarten vom Etikett von { $ingredients } eingeben oder den °Brix-Wert messen
   *[swap] die Süße nach dem Austausch ist nicht bekannt: Zucker und Zuckerarten vom Etikett von { $ingredients } eingeben oder den °Brix-Wert messen
}
swap-not-vegan = { $known ->
    [yes] { $count ->
        [one] { $ingredients } ist nicht vegan: im selben Austausch mit ersetzen
       *[other] { $ingredients } sind nicht vegan: im selben Austausch mit ersetzen
    }
   *[no] { $count ->
        [one] es ist nicht bekannt, ob { $ingredients } vegan ist: im selben Austausch mit ersetzen
       *[other] es ist nicht bekannt, ob { $ingredients } vegan sind: im selben Austausch mit ersetzen
    }
}
swap-contains = { $count ->
    [one] { $ingredients } enthält { $allergen }: im selben Austausch mit ersetzen
   *[other] { $ingredients } enthalten { $allergen }: im selben Austausch mit ersetzen
}
swap-allergens-not-stated = { $count ->
    [one] bei { $ingredients } ist nicht angegeben, ob enthalten: { $allergens }; beim Hersteller nachfragen
   *[other] bei { $ingredients } ist nicht angegeben, ob enthalten: { $allergens }; bei den Herstellern nachfragen
}
swap-may-contain = laut Packung „kann { $allergen } enthalten“: { $ingredients }; Gäste darauf hinweisen
# { $why } is a clause that begins with "hindrance-".
swap-not-reached = { $axis } lässt sich nicht treffen: auch mit den besten Mengen der veränderbaren Zeilen noch um { $steps } merkliche Schritte { $change }; { $why }
swap-kept-to = { $count ->
    [one] die Suche hielt diese Grenze ein: { $limits }; ohne sie gibt es vielleicht einen ähnlicheren Geschmack
   *[other] die Suche hielt diese Grenzen ein: { $limits }; ohne sie gibt es vielleicht einen ähnlicheren Geschmack
}
swap-not-compared = nicht verglichen, weil bei { $ingredient } oder einer anderen Zutat die Angabe fehlt: { $axes }

# Limits that a search keeps to, in a list.
swap-limit-sugar = höchstens { $most } Zucker je 100 ml
swap-limit-energy = höchstens { $most }
swap-limit-cost = höchstens { $most }
swap-limit-temperature = ein Servierfenster von { $from } bis { $to }
swap-limit-cup = der Platz im Becher

# Conditions that no amounts keep: clauses without a capital and a stop.
swap-all-conditions = keine Mengen passen zugleich zum Becher, zum Servierfenster und zu jeder Bedingung: eine Bedingung lockern oder mehr Zeilen veränderbar machen
swap-least-overfills = der Becher ist zu klein: Selbst mit den kleinsten Mengen ist er zu { $fill } gefüllt, höchstens { $room } sind möglich
swap-overfills = der Becher ist zu klein: Er ist zu { $fill } gefüllt, höchstens { $room } sind möglich
swap-fill-out-of-reach = keine Menge der Zeile, die den Becher auffüllt, erreicht die Füllmarke
swap-outside-window = es würde mit { $temperature } serviert, außerhalb des Servierfensters von { $from } bis { $to }: das Wasser, den Tee oder das Servierfenster ändern
swap-ice-melts = nur { $left } Eis blieben übrig, und der Laden lässt { $wanted } in diesem Becher: weniger heiße Flüssigkeit nehmen oder ändern, wie viel Eis der Laden lässt
# { $alone } says whether it is known which ingredient brings the most.
swap-over-sugar = { $alone ->
    [known] die Grenze von höchstens { $most } Zucker je 100 ml lässt sich nicht einhalten: Ohne sie kommt das Getränk mit dem ähnlichsten Geschmack auf { $found }; { $ingredient } allein bringt { $share } mit
   *[not-known] die Grenze von höchstens { $most } Zucker je 100 ml lässt sich nicht einhalten: Ohne sie kommt das Getränk mit dem ähnlichsten Geschmack auf { $found }
}
swap-over-energy = { $alone ->
    [known] die Grenze von höchstens { $most } lässt sich nicht einhalten: Ohne sie kommt das Getränk mit dem ähnlichsten Geschmack auf { $found }; { $ingredient } allein bringt { $share } mit
   *[not-known] die Grenze von höchstens { $most } lässt sich nicht einhalten: Ohne sie kommt das Getränk mit dem ähnlichsten Geschmack auf { $found }
}
swap-over-cost = { $alone ->
    [known] die Grenze von höchstens { $most } lässt sich nicht einhalten: Ohne sie kostet das Getränk mit dem ähnlichsten Geschmack { $found }; { $ingredient } allein kostet { $share }
   *[not-known] die Grenze von höchstens { $most } lässt sich nicht einhalten: Ohne sie kostet das Getränk mit dem ähnlichsten Geschmack { $found }
}
swap-undissolved = { $hot } heißes Wasser können { $powder } Pulver nicht lösen: Jedes Gramm Pulver braucht { $needed }

# Limits whose figure is not known: clauses without a capital and a stop. { $count } is how many ingredients state nothing.
swap-sugar-not-known = { $count ->
    [0] ob es höchstens { $most } Zucker je 100 ml hat, ist nicht bekannt
   *[other] ob es höchstens { $most } Zucker je 100 ml hat, ist nicht bekannt: Bei { $ingredients } ist der Zucker nicht angegeben
}
swap-energy-not-known = { $count ->
    [0] ob es höchstens { $most } hat, ist nicht bekannt
   *[other] ob es höchstens { $most } hat, ist nicht bekannt: Bei { $ingredients } ist die Energie nicht angegeben
}
swap-cost-not-known = { $count ->
    [0] ob es höchstens { $most } kostet, ist nicht bekannt: Für den Becher oder sein Zubehör gibt es keinen Preis
   *[other] ob es höchstens { $most } kostet, ist nicht bekannt: Für { $ingredients } gibt es keinen Preis
}
swap-temperature-not-known = { $count ->
    [0] ob es mit { $from } bis { $to } serviert wird, ist nicht bekannt
   *[other] ob es mit { $from } bis { $to } serviert wird, ist nicht bekannt: Das Gewicht von { $ingredients } ist nicht bekannt
}
swap-fill-not-known = { $count ->
    [0] ob es in den Becher passt, ist nicht bekannt
   *[other] ob es in den Becher passt, ist nicht bekannt: Das Gewicht von { $ingredients } ist nicht bekannt
}

# What stands in the way of an axis of taste: clauses without a capital and a stop. Their verb stands second.
hindrance-at-most = { $ingredient } hat die Höchstmenge schon erreicht ({ $amount })
hindrance-at-least = { $ingredient } hat die Mindestmenge schon erreicht ({ $amount })
# { $change } is "more" or "less" of the ingredient, { $what } the condition that it breaks.
hindrance-forbidden = { $change ->
    [more] { $what ->
        [fill] mit mehr { $ingredient } bliebe kein Platz für das, was den Becher auffüllt
        [cup] mit mehr { $ingredient } würde der Inhalt nicht in den Becher passen
        [temperature] mit mehr { $ingredient } würde es außerhalb des Servierfensters serviert
        [ice] mit mehr { $ingredient } bliebe zu wenig Eis
        [sugar] mit mehr { $ingredient } hätte es mehr Zucker als erlaubt
        [energy] mit mehr { $ingredient } hätte es mehr Energie als erlaubt
        [cost] mit mehr { $ingredient } wäre es teurer als erlaubt
       *[powder] mit mehr { $ingredient } bliebe ein Teil des Pulvers ungelöst
    }
   *[less] { $what ->
        [fill] mit weniger { $ingredient } bliebe kein Platz für das, was den Becher auffüllt
        [cup] mit weniger { $ingredient } würde der Inhalt nicht in den Becher passen
        [temperature] mit weniger { $ingredient } würde es außerhalb des Servierfensters serviert
        [ice] mit weniger { $ingredient } bliebe zu wenig Eis
        [sugar] mit weniger { $ingredient } hätte es mehr Zucker als erlaubt
        [energy] mit weniger { $ingredient } hätte es mehr Energie als erlaubt
        [cost] mit weniger { $ingredient } wäre es teurer als erlaubt
       *[powder] mit weniger { $ingredient } bliebe ein Teil des Pulvers ungelöst
    }
}
hindrance-pushes-others = { $change ->
    [more] mehr { $ingredient } würde { $axes } weiter vom Standard entfernen
   *[less] weniger { $ingredient } würde { $axes } weiter vom Standard entfernen
}
hindrance-too-coarse = { $ingredient } lässt sich nicht in kleineren Mengen als { $amount } abmessen
hindrance-brings-sugar = { $ingredient } allein bringt { $amount } Zucker mit
hindrance-no-line = keine veränderbare Zeile wirkt sich darauf aus
