# What is said of a drink made in another way: with less sugar, in another cup, iced, hot, or with less ice.

# Whole sentences, which follow each other.
# { $others } says how much of the sugar other ingredients than the sweetener bring.
variation-sugar = { $others ->
    [not-known] { $sugar } Zucker. Wie viel davon aus anderen Zutaten stammt, ist nicht bekannt.
    [no-sugar] { $sugar } Zucker.
    [none] { $sugar } Zucker, ganz aus der Süßung.
    [all] { $sugar } Zucker, ganz aus anderen Zutaten und daher nicht weglassbar.
   *[part] { $sugar } Zucker, davon { $floor } aus anderen Zutaten und daher nicht weglassbar.
}
variation-cup = Der neue Becher fasst das { $ratio }-Fache.
variation-fill = Das Getränk hat { $volume } und füllt den Becher zu { $fill }.
variation-fill-not-known = Das Getränk hat { $volume }. Wie weit es den Becher füllt, ist nicht bekannt.
variation-ice-left = Es wird mit { $served } serviert, dabei sind noch { $ice } Eis übrig.
variation-ice = Mit { $volume } Getränk statt { $standard } bleibt der Becher ebenso voll.
variation-hot = Mit { $poured } eingegossen, wird es mit { $served } serviert.
variation-taste-iced = Kälte dämpft die Süße: Verkosten Sie es, bevor Sie es freigeben.
variation-taste-hot = Wärme betont Süße und Bitterkeit: Verkosten Sie es, bevor Sie es freigeben.

# { $compared } says what the drink is compared with: the standard, its hot or iced standard, or what the level or cup asks for.
# { $known } is "part" where a figure that the comparison needs is not known.
variation-within = { $compared ->
    [standard] { $known ->
        [all] Im Vergleich zum Standard erreicht kein Unterschied einen merklichen Schritt.
       *[part] Im Vergleich zum Standard erreicht kein bekannter Unterschied einen merklichen Schritt.
    }
    [hot] { $known ->
        [all] Im Vergleich zum heißen Standard erreicht kein Unterschied einen merklichen Schritt.
       *[part] Im Vergleich zum heißen Standard erreicht kein bekannter Unterschied einen merklichen Schritt.
    }
    [iced] { $known ->
        [all] Im Vergleich zum eisgekühlten Standard erreicht kein Unterschied einen merklichen Schritt.
       *[part] Im Vergleich zum eisgekühlten Standard erreicht kein bekannter Unterschied einen merklichen Schritt.
    }
   *[other] { $known ->
        [all] Kein Unterschied erreicht einen merklichen Schritt.
       *[part] Kein bekannter Unterschied erreicht einen merklichen Schritt.
    }
}
# { $change } is "sweeter" or "less sweet".
variation-beyond = { $compared ->
    [standard] Größter Unterschied zum Standard: noch um { $steps } merkliche Schritte { $change }.
    [hot] Größter Unterschied zum heißen Standard: noch um { $steps } merkliche Schritte { $change }.
    [iced] Größter Unterschied zum eisgekühlten Standard: noch um { $steps } merkliche Schritte { $change }.
   *[other] Größter Unterschied: noch um { $steps } merkliche Schritte { $change }.
}
# { $why } is a clause that begins with "hindrance-": its verb stands second, as it does behind "denn".
variation-beyond-because = Größter Unterschied: noch um { $steps } merkliche Schritte { $change }, denn { $why }.

# Why a drink can't be made in another way: clauses without a capital and a stop.
variation-no-cup = das Rezept hat keinen Becher: zuerst einen wählen
variation-already-iced = es ist schon eisgekühlt: stattdessen eine Eisstufe wählen
variation-no-ice-in-book = im Buch gibt es kein Eis: zuerst bei den Zutaten hinzufügen
variation-no-ice = es enthält kein Eis
variation-ice-fills = das Eis füllt den Becher bis zum Rand: zuerst eine Eismenge eingeben
variation-nothing-poured-hot = nichts darin wird heiß eingegossen: zuerst Wasser oder Tee hinzufügen
# Whole measures miss a level. { $steps } is a list of the least amounts: "Tambrel Birnensirup um 1 Hub".
variation-not-in-whole-measures = mit ganzen Maßen nicht zu erreichen: Der kleinste Schritt ist { $steps }
variation-step = { $amount } { $ingredient }

# Why a drink has no sugar levels: clauses without a capital and a stop.
levels-sweetness-not-known = die Süße ist nicht bekannt: Zucker und Zuckerarten vom Etikett von { $ingredients } eingeben
levels-no-sweetener = es gibt keine Süßung, die sich verringern lässt: Alle { $sugar } Zucker stammen aus anderen Zutaten
levels-not-in-steps = { $count ->
    [one] { $ingredients } lässt sich nicht schrittweise verringern: die Menge in Gramm, in Millilitern oder mit einer Dosierhilfe des Ladens eingeben
   *[other] { $ingredients } lassen sich nicht schrittweise verringern: die Mengen in Gramm, in Millilitern oder mit einer Dosierhilfe des Ladens eingeben
}

# What comes near a level that whole measures miss.
level-by-part = mit einem halben Maß { $ingredient }
level-by-measure = mit { $ingredient }, gemessen mit: { $measure }
level-by-scale = mit { $ingredient }, auf der Waage abgewogen
level-by-sweetener = mit { $ingredient } als Zugabe
# A sentence. { $means } is one of the clauses above, { $moves } a list of changed lines.
level-offer = { $level } { $means }: { $moves }; { $sugar } Zucker.
