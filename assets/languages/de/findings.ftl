# What is wrong with a book. Findings begin with a small letter and end without a full stop: whoever shows them adds both.

## Places. The words between backticks are ids as the file has them; $field is the name of a field in the file.

place-settings = Einstellungen
place-ingredient = Zutat `{ $id }`, { $field ->
        [allergens] Allergene
        [brand] Marke
        [bulk_density] Schüttdichte
        [composition] Zusammensetzung
        [density] Dichte
        [diet] Ernährungsweise
        [earlier_prices] frühere Preise
        [house_made] Ansatz
        [name] Name
        [price] Preis
        [tasted] Ergebnisse von Verkostungen
        [temperature] Temperatur
       *[other] { $field }
    }
place-measure = Dosierhilfe `{ $id }`, { $field ->
        [increment] kleinster Schritt
        [name] Name
        [nominal] angegebene Größe
        [readings] Messwerte
        [temperature] Temperatur
       *[other] { $field }
    }
place-vessel = Gefäß `{ $id }`, { $field ->
        [capacity] Fassungsvermögen
        [closures] Deckel und Folien
        [cooling_minutes] Abkühlzeit
        [cooling_run] Abkühlmessung
        [mass] Gewicht
        [name] Name
        [price] Preis
        [serviceware] Trinkhalme und Manschetten
        [shape] Innenmaße
        [specific_heat] Wärmekapazität
        [temperature] Temperatur
       *[other] { $field }
    }
place-recipe = Rezept `{ $id }`, { $field ->
        [drinking_temperature] Trinktemperatur
        [lines] Zeilen
        [menu_price] Preis auf der Getränkekarte
        [name] Name
        [versions] Versionen
       *[other] { $field }
    }
place-line = Rezept `{ $recipe }`, Zeile `{ $line }`
place-line-of-version = Rezept `{ $recipe }`, Version `{ $version }`, Zeile `{ $line }`
place-version = Rezept `{ $recipe }`, Version `{ $version }`
place-approval = Rezept `{ $recipe }`, Freigabe { $number }
place-tasting = Verkostung `{ $id }`, { $field ->
        [cups] Becher
        [date] Datum
        [notes] Geschmacksnotizen
        [outcome] Ergebnis
        [people] Verkoster
       *[other] { $field }
    }
# The same by the names of things, as the window shows it.
place-named = { $kind ->
    [ingredient] Zutat { $name }
    [measure] Dosierhilfe { $name }
    [vessel] Gefäß { $name }
    [tasting] { $name }
   *[recipe] Rezept { $name }
}
place-named-line = { $ingredient }, in { $drink }
place-named-approval = { $recipe }, Freigabe { $number }

## Findings

# $kind is ingredient, measure, vessel, recipe or version.
finding-dangling = { $kind ->
        [ingredient] die Zutat `{ $id }` gibt es nicht; hinzufügen oder eine andere wählen
        [measure] die Dosierhilfe `{ $id }` gibt es nicht; hinzufügen oder eine andere wählen
        [vessel] das Gefäß `{ $id }` gibt es nicht; hinzufügen oder ein anderes wählen
        [recipe] das Rezept `{ $id }` gibt es nicht; hinzufügen oder ein anderes wählen
        [version] die Version `{ $id }` gibt es nicht; hinzufügen oder eine andere wählen
        [tasting] die Verkostung `{ $id }` gibt es nicht; hinzufügen oder eine andere wählen
       *[line] die Zeile `{ $id }` gibt es nicht; hinzufügen oder eine andere wählen
    }
# $nearest lists ids that look like the one that is missing.
finding-dangling-near = { $kind ->
        [ingredient] die Zutat
        [measure] die Dosierhilfe
        [vessel] das Gefäß
        [recipe] das Rezept
        [version] die Version
        [tasting] die Verkostung
       *[line] die Zeile
    } `{ $id }` gibt es nicht; war { $nearest } gemeint?
finding-duplicate-in-recipe = die Kennung `{ $id }` steht zweimal in diesem Rezept; eine der beiden ändern
finding-version-cycle = Versionen bauen im Kreis aufeinander auf: { $chain }; bei einer davon das Originalrezept als Grundlage wählen
finding-house-made-cycle = hausgemachte Zutaten brauchen einander im Kreis: { $chain }; eine davon aus dem Rezept einer anderen entfernen
# The middle of a long chain of ids.
finding-chain-left-out = … ({ $count } weitere)
finding-change-without-target = eine Änderung ({ $field }) gehört zu einer Zeile, die es nicht mehr gibt; die Änderung löschen oder die Zeile wiederherstellen
# $what is one of the names of figures below.
finding-out-of-range = { $what } beträgt { $value }; zulässig sind { $least } bis { $most }
finding-empty-reading = ein Messwert ist 0 g; eingeben, was die Waage anzeigt
finding-sugar-fractions = die Zuckeranteile ergeben zusammen { $sum }; sie müssen 1 ergeben
finding-window-reversed = { $what } reicht von { $from } bis { $to }; die niedrigere Temperatur zuerst eingeben
finding-no-step = der merkliche Schritt für { $axis } ist 0; einen Anteil oder eine Untergrenze über 0 eingeben
finding-more-right-than-people = { $right } von { $people } Personen hatten recht; beide Zahlen prüfen
finding-not-two-cups = verglichen werden zwei Becher, aber { $count ->
        [0] es gibt keinen
        [one] es gibt 1
       *[other] es gibt { $count }
    }; den ersten Becher eingeben und den, der daran gemessen wurde
finding-no-such-cup = eine Notiz betrifft Becher { $cup }, aber { $count ->
        [0] es gibt keinen Becher
        [one] es gibt 1 Becher
       *[other] es gibt { $count } Becher
    }; die Nummer des Bechers eingeben
finding-yield-over-input = die Ausbeute beträgt { $grams }, mehr als in einen Ansatz hineinkommt; Rezept und Ausbeute prüfen
finding-yield-under-solids = die Ausbeute beträgt { $grams }, weniger als die Feststoffe, die in einen Ansatz hineinkommen; Rezept und Ausbeute prüfen
finding-sum-over-whole = { $parts } ergeben zusammen { $sum } in { $whole }; die Werte und ihre Bezugsmenge prüfen
# $part and $whole are nutrients, as in "75 g of sugars".
finding-part-over-whole = { $part_value } { $part } sind mehr als die { $whole_value } { $whole }, zu denen sie gehören; das Etikett prüfen
finding-readings-disagree = die Messwerte derselben Zutat reichen von { $least } bis { $most } je Dosierung; einer davon ist vielleicht ein Versehen, daher noch einmal wiegen
finding-never-calibrated = es gibt noch keine Messwerte; dreimal je zehn Dosierungen zusammen wiegen
finding-too-many-flavours = das Getränk hat { $count } Aromen; nur die ersten { $limit } werden verglichen
finding-too-many-sweeteners = das Getränk enthält { $count } Süßstoffe; nur die ersten { $limit } werden verglichen
finding-several-fill-amounts = mehr als eine Zeile füllt auf; nur eine Menge darf offen bleiben, daher die übrigen eingeben
finding-no-mass-of-use = das Gewicht einer Dosierung { $ingredient } ({ $measure }) ist nicht bekannt; zehn zusammen wiegen
finding-no-mass-of-volume = das Gewicht eines Milliliters { $ingredient } ist nicht bekannt; die Dichte eingeben
finding-hidden-characters = der Name enthält unsichtbare Zeichen: „{ $shown }“; neu eingeben
finding-no-date = „{ $found }“ ist kein Datum; Jahr-Monat-Tag eingeben, zum Beispiel 2026-05-04
# $off says how far the stated energy is outside the range; an empty text says that it can't be told.
finding-energy = die angegebene Energie beträgt { $stated }{ $off }; die Zusammensetzung ergibt { $from } bis { $to } (Verordnung (EU) Nr. 1169/2011, Anhang XIV); beides prüfen
finding-energy-in-kilocalories = die angegebene Energie beträgt { $stated }{ $off }; die Zusammensetzung ergibt { $from } bis { $to } (Verordnung (EU) Nr. 1169/2011, Anhang XIV); der Wert passt als Kilokalorien, daher die Einheit prüfen
finding-energy-too-low = , { $percent } zu niedrig
finding-energy-too-high = , { $percent } zu hoch
finding-density = { $what } beträgt { $stated }; die Zusammensetzung ergibt { $low } bis { $high }, daher beides prüfen
# $claim and $against are two of the texts below.
finding-claim-not-carried = die Zutat ist { $claim } eingetragen, aber { $against }; eine der beiden Angaben berichtigen
finding-stale-price = { $count ->
        [one] der Preis ist vom { $date }, einen Monat älter als das neueste Datum im Buch, { $newest }; nach einem neuen Preis fragen
       *[other] der Preis ist vom { $date }, { $count } Monate älter als das neueste Datum im Buch, { $newest }; nach einem neuen Preis fragen
    }
finding-no-longer-sold = { $ingredient } ist nicht mehr erhältlich; gegen eine andere Zutat austauschen oder dieses Getränk aus dem Angebot nehmen
finding-more-answers-than-people = { $answers } Antworten sind gezählt, aber { $named } Personen genannt; wer noch einmal verkostet, zählt einmal
finding-too-many-to-check = es gibt zu viele Versionen und Änderungen, um alle zu prüfen; ein Rezept sollte höchstens ein paar Dutzend haben
finding-more-findings = nur die ersten { $count } Befunde sind aufgeführt; zuerst diese beheben
finding-fill-out-of-reach = keine Menge dieser Zutat füllt den Becher so weit; die Menge in Gramm eingeben oder mit einer anderen Zeile auffüllen
finding-not-a-leaf = nur Teeblätter können ziehen: Was andere Zutaten an das Wasser abgeben, ist nicht bekannt; den fertigen Aufguss als Zutat mit eigenen Werten eingeben
finding-marked-only = als freigegeben markiert, aber keine Freigabe mit Tag und Person ist aufbewahrt, sodass es keinen eigenen Standard hat; verkosten und freigeben oder einen anderen Stand wählen
finding-changed-since-approval = als freigegeben markiert, aber nicht das, was am { $day } freigegeben wurde; so freigeben, wie es ist, zu jener Freigabe zurückgehen oder einen anderen Stand wählen
finding-no-cup = kein Becher ist gewählt; Volumen, Füllgrad und Serviertemperatur brauchen einen

## What an ingredient is stated to be, and what speaks against it

claim-dairy-free = als milchfrei
claim-vegan = als vegan
claim-allergens-listed = mit vollständigen Allergenen
against-contains = die Allergene umfassen { $allergen }
against-lactose = der enthaltene Zucker ist Laktose
against-honey = der enthaltene Zucker ist der von Honig
against-not-dairy-free = zugleich als nicht milchfrei
against-part-contains = sie wird mit { $part } hergestellt, und dort umfassen die Allergene { $allergen }
against-part-is-not = sie wird mit { $part } hergestellt, und dort ist das Gegenteil eingetragen

## Measures that do not hold what they are sold or named as

# $size is one of the sizes below.
miscalled-by-readings = die angegebene Größe ist { $size }, aber die Messwerte ergeben { $found }; { $cause }
miscalled-as-entered = der Name sagt { $size }, eingetragen ist aber { $found }; eine der beiden Angaben berichtigen
miscalled-spoon = vielleicht ist die Dosierhilfe größer oder gehäuft gefüllt, oder Gramm wurden als Milliliter eingegeben (5 ml eines Sirups mit 77 °Brix wiegen etwa 7 g)
miscalled-cup = vielleicht ist es ein Trinkbecher, oder die Dosierhilfe war nicht bis zur Markierung gefüllt, oder Gramm wurden als Milliliter eingegeben (eine Tasse sind 200 bis 250 ml)
miscalled-fluid-ounce = vielleicht ist eine Gewichtsunze gemeint, oder die Dosierhilfe war nicht bis zur Markierung gefüllt, oder Gramm wurden als Milliliter eingegeben (eine Flüssigunze sind 28 bis 30 ml)
miscalled-pint = vielleicht war die Dosierhilfe nicht bis zur Markierung gefüllt, oder sie stammt aus einem anderen Land (ein Pint sind in den USA 473 ml und im Vereinigten Königreich 568 ml)
miscalled-volume = vielleicht ist es eine andere Dosierhilfe, oder sie war nicht bis zur Markierung gefüllt, oder Gramm wurden als Milliliter eingegeben (100 ml eines Sirups mit 77 °Brix wiegen etwa 139 g)
# The name of the measure before what is said of it.
finding-size-not-as-called = „{ $name }“: { $miscalled }
# $number may have a fraction; $count is 1 up to one of them, and 2 above.
size-millilitre = { $number } ml
size-teaspoon = { $count ->
        [one] { $number } Teelöffel
       *[other] { $number } Teelöffel
    }
size-tablespoon = { $count ->
        [one] { $number } Esslöffel
       *[other] { $number } Esslöffel
    }
size-cup = { $count ->
        [one] { $number } Tasse
       *[other] { $number } Tassen
    }
size-fluid-ounce = { $number } fl oz
size-pint = { $count ->
        [one] { $number } Pint
       *[other] { $number } Pints
    }
size-quart = { $count ->
        [one] { $number } Quart
       *[other] { $number } Quarts
    }

## Names of figures, as the subject of a sentence

book-figure-amount = die Menge
book-figure-temperature = die Temperatur
book-figure-carried-syrup = der anhaftende Sirup
book-figure-nutrient = der Wert für { $nutrient }
book-figure-menu-price = der Preis auf der Getränkekarte
book-figure-drinking-temperature = die Trinktemperatur
book-figure-sugar-level = die Zuckerstufe
book-figure-uncertainty = eine Unsicherheit
book-figure-free-sugar-fraction = der freie Anteil des Zuckers
book-figure-sugar-fraction = ein Zuckeranteil
book-figure-dextrose-equivalent = das Dextroseäquivalent
book-figure-tasters = die Zahl der Verkoster
book-figure-doubt-times = das Vielfache von Unsicherheiten
book-figure-tasted-times = das Vielfache aus Verkostungen
book-figure-times-as-much = das Vielfache, das der zweite Becher hat,
book-figure-density = die Dichte
book-figure-bulk-density = die Schüttdichte
book-figure-pack-price = der Preis einer Packung
book-figure-earlier-pack-price = ein früherer Preis einer Packung
book-figure-pack-content = der Inhalt einer Packung
book-figure-waste = der Verlust
book-figure-yield = die Ausbeute
book-figure-extraction = der lösliche Anteil der Teeblätter
book-figure-steeping-time = die Ziehzeit
book-figure-volume = das Volumen
book-figure-mass = das Gewicht
book-figure-increment = der kleinste Schritt
book-figure-reading = ein Messwert
book-figure-uses-in-reading = die Anzahl der Dosierungen in einem Messwert
book-figure-reading-time = die Zeit eines Messwerts
book-figure-capacity = das Fassungsvermögen
book-figure-specific-heat = die Wärmekapazität
book-figure-cooling-time = die Abkühlzeit
book-figure-cooling-factor = der Abkühlfaktor
book-figure-price = der Preis
book-figure-height = die Höhe
book-figure-bottom-diameter = der Durchmesser am Boden
book-figure-top-diameter = der Durchmesser am Rand
book-figure-head-room = der Freiraum
book-figure-room-temperature = die Raumtemperatur
book-figure-refrigerator-temperature = die Temperatur des Kühlschranks
book-figure-hot-drinking-temperature = die Trinktemperatur heißer Getränke
book-figure-iced-drinking-temperature = die Trinktemperatur eisgekühlter Getränke
book-figure-ice-temperature = die Temperatur des Eises
book-figure-ice-bulk-density = die Schüttdichte des Eises
book-figure-ice-melt-rate = die Schmelzrate des Eises
book-figure-ice-left = das Eis, das im Becher bleibt
book-figure-level = die Stufe „{ $level }“
book-figure-hot-window = das Servierfenster heißer Getränke
book-figure-iced-window = das Servierfenster eisgekühlter Getränke
book-figure-sales-tax = die Umsatzsteuer
book-figure-scale-step = die Teilung der Waage
book-figure-thermometer-error = die Abweichung des Thermometers
book-figure-mark-error = die Abweichung einer Markierung
book-figure-noticeable-step = der merkliche Schritt für { $axis }
book-figure-step-floor = die Untergrenze des merklichen Schritts für { $axis }
book-figure-axis-weight = die Gewichtung von { $axis }

## What a change of a recipe changes. No article: the word stands before "von" and alone.

changed-ingredient = Zutat
changed-amount = Menge
changed-temperature = Temperatur
changed-role = Rolle
changed-stage = Platz im Getränk
changed-carried-syrup = anhaftende Sirupmenge
changed-note = Notiz
changed-instruction = Anweisung
changed-added-line = hinzugefügte Zeile
changed-removed-line = entfernte Zeile
changed-order = Reihenfolge
changed-cup = Becher
changed-shaker = Shaker
changed-straining = Abseihen
changed-drinking-temperature = Trinktemperatur
changed-sugar-level = Zuckerstufe
changed-menu-price = Preis auf der Getränkekarte
