# The editor of an ingredient in Counter. Labels and options begin small; headings, buttons and the names that a screen reader says begin with a capital.

ingredient-duplicate = Als andere Marke duplizieren
ingredient-not-stated = nicht angegeben
ingredient-not-known = nicht bekannt
ingredient-name = Name

# What it is: labels before fields. Room for about 18 letters.
ingredient-brand = Marke
ingredient-supplier = Lieferant
ingredient-lot = aktuelle Charge
ingredient-form = Form
ingredient-role = verwendet als
ingredient-temperature = Temperatur
ingredient-opened = geöffnet haltbar
ingredient-hours = Stunden
ingredient-density = Dichte
ingredient-poured-density = Schüttdichte
ingredient-sold = Erhältlichkeit
ingredient-still-sold = erhältlich
ingredient-no-longer-sold = nicht mehr erhältlich
ingredient-swap-everywhere = In allen Rezepten austauschen
ingredient-swap-everywhere-hint = Jedes Rezept mit dieser Zutat mit einem Austausch durchsehen, bevor sich etwas ändert
ingredient-note = Notiz

# The same fields as a screen reader names them, where that is more than the label.
ingredient-lot-named = Charge
ingredient-role-named = Übliche Rolle
ingredient-opened-named = Haltbarkeit nach dem Öffnen in Stunden
ingredient-poured-density-named = Schüttdichte

# Bought, or made by a recipe of the book: the label, the choice of what is bought, and the link to the recipe.
ingredient-source = Herkunft
ingredient-bought = Lieferant
ingredient-new-batch = neuer eigener Ansatz
ingredient-brewed-from = neuer Aufguss aus { $leaf }
ingredient-see-recipe = Rezept öffnen
# Under what an ingredient comes from, when its label overrules what the recipe gives.
ingredient-label-before-batch = Unter „Angaben auf dem Etikett“ stehen Werte: Sie gelten anstelle der Werte des Ansatzes.
# A link below it: removes the stated figures.
ingredient-by-its-batch = die Werte des Ansatzes verwenden
# A brew: amounts of its recipe, the steeping time in minutes, and what comes of it.
ingredient-brew-water = Wasser
ingredient-brew-water-named = Wasser für den Aufguss
ingredient-brew-leaf = Teeblätter
ingredient-brew-leaf-named = Teeblätter für den Aufguss
ingredient-steeps = zieht
ingredient-steeps-named = Ziehzeit in Minuten
ingredient-minutes = Minuten
ingredient-brewed = Ergibt { $strength } Teefeststoffe je 100 g und lässt { $spent } nasse Teeblätter zurück. 100 g kosten { $cost }.
ingredient-brewed-at-least = Ergibt { $strength } Teefeststoffe je 100 g und lässt { $spent } nasse Teeblätter zurück. 100 g kosten mindestens { $cost }: Ein Preis fehlt.
# What one slice, leaf or pearl weighs. $count weighings stand behind a mean.
ingredient-piece = ein Stück wiegt
ingredient-piece-named = Gewicht eines Stücks
ingredient-piece-readings = Mittel aus { $count } Messungen
# What is begun in the house: the name of a tea that is brewed of a leaf, and of the water for a book that has none.
house-made-brewed-name = { $leaf }, aufgebrüht
house-made-water = Wasser
# A house-made ingredient. "hours, waste" stands between two fields: "keeps [24] hours, waste [5] %".
ingredient-yield = ein Ansatz ergibt
ingredient-yield-named = Ausbeute eines Ansatzes
# The part of the steeped leaf that dissolves, in percent.
ingredient-extraction = Teeblatt gibt ab
ingredient-extraction-named = Löslicher Anteil der gezogenen Teeblätter
ingredient-keeps = haltbar
ingredient-keeps-named = Haltbarkeit in Stunden
ingredient-hours-waste = Stunden, Verlust
ingredient-waste-of-batch-named = Verlust je Ansatz

# What the pack says.
ingredient-statement = Zutatenverzeichnis
ingredient-statement-named = Zutatenverzeichnis
ingredient-statement-hint = wie auf der Packung gedruckt
ingredient-vegan = vegan
ingredient-dairy-free = milchfrei
ingredient-allergens = Allergene
# Whether the pack states its allergens.
ingredient-allergens-stated = auf der Packung angegeben
ingredient-allergens-silent = auf der Packung nicht angegeben
ingredient-allergens-none = enthält keines der vierzehn
# Heads of two narrow columns of boxes: "contains" and "may contain". Room for about 7 letters.
ingredient-allergen-has = enthält
ingredient-allergen-may = evtl.
# Of an allergen that is not among the fourteen.
ingredient-declared-contains = enthalten
ingredient-declared-may-contain = Spuren möglich
ingredient-declared-free = nicht enthalten
ingredient-declared-not-stated = nicht angegeben

# The label as it is printed.
ingredient-label = Angaben auf dem Etikett
ingredient-sodium = Natrium
# The name of a field: $figure is a word of the label such as "fat".
ingredient-label-figure = Etikett: { $figure }
# A figure of a label that is per something else, converted.
ingredient-per-100-grams = { $figure } je 100 g
# Two rows of words and choices: "per [serving] of [16] g energy in [kJ]" and "salt as [salt] carbohydrate [without fibre]".
ingredient-basis = je
ingredient-basis-grams = 100 g
ingredient-basis-millilitres = 100 ml
ingredient-basis-serving = Portion
ingredient-serving-of = von
ingredient-energy-in = Energie in
ingredient-salt-as = Salz als
ingredient-salt-as-salt = Salz
ingredient-carbohydrate = Kohlenhydrate
ingredient-without-fibre = ohne Ballaststoffe
ingredient-with-fibre = mit Ballaststoffen
# The same as a screen reader names them: the choice follows a colon.
ingredient-basis-named = Angaben je
ingredient-serving-named = Gramm je Portion
ingredient-energy-in-named = Energie angegeben in
ingredient-salt-as-named = Salz angegeben als
ingredient-carbohydrate-named = Kohlenhydrate angegeben
# Why the size of a serving is not taken.
ingredient-serving-needs-density = für eine Portion in ml wird die Dichte benötigt: 100 ml wiegen und die Dichte eingeben
ingredient-serving-out-of-range = „{ $found }“ liegt außerhalb des Bereichs: mehr als 0 g eingeben
# The table of the label for a spreadsheet: what it is called, and its heads.
ingredient-label-table = Etikett
ingredient-head-figure = Angabe
ingredient-head-unit = Einheit
ingredient-head-per-100-grams = je 100 g
ingredient-head-per-100-millilitres = je 100 ml
ingredient-head-per-serving = je { $grams } g
ingredient-head-evidence = Beleg

# Sweetness and flavour.
ingredient-sweetness = Süße und Aroma
ingredient-free-sugars = freie Zucker
ingredient-free-sugars-named = Freier Anteil des Zuckers
ingredient-free-sugars-hint = Anteil am Zucker: 1 bei Sirup und Saft, 0 bei Milch
# Which sugars they are.
ingredient-profile = Zuckerarten
ingredient-profile-named = Zuckerprofil
ingredient-profile-sucrose = Haushaltszucker
ingredient-profile-invert = Invertzucker
ingredient-profile-hfcs-42 = HFCS-42
ingredient-profile-hfcs-55 = HFCS-55
ingredient-profile-fructose = Fruktose
ingredient-profile-glucose = Dextrose
ingredient-profile-lactose = Milchzucker
ingredient-profile-honey = Honig
ingredient-profile-glucose-syrup = Glukosesirup
ingredient-profile-own = eigene Anteile
ingredient-dextrose-equivalent = Dextroseäquivalent
ingredient-other-sugar = andere Zucker
ingredient-fraction = Anteil: { $sugar }
# What it tastes of: the label, the name of the field, and what stands in it while it is empty.
ingredient-tastes-of = schmeckt nach
ingredient-flavour-named = Aroma
ingredient-flavour-hint = Kastanie
ingredient-flavour-strength = Stärke: { $flavour }
# The unit of the strength, in a narrow column.
ingredient-per-gram = je g
ingredient-add-flavour = Aroma hinzufügen
ingredient-remove = { $item } entfernen
ingredient-remove-flavour = Dieses Aroma entfernen
# What somebody says who has tasted it beside the standard.
ingredient-bench-note = Verkostung
ingredient-bench-not-tasted = nicht verkostet
ingredient-bench-assumed = nicht verkostet: je Gramm als gleich angenommen, ± 25 %
ingredient-bench-much-weaker = viel schwächer
ingredient-bench-weaker = schwächer
ingredient-bench-equal = so stark wie der Standard
ingredient-bench-stronger = stärker
ingredient-bench-much-stronger = viel stärker
# $note is one of the four above that are not equal, $strength a number with the standard as 1.
ingredient-bench-about = { $note }, etwa { $strength }
# Intense sweeteners.
ingredient-sweeteners = Süßstoffe
ingredient-sweetener-named = Süßstoff
ingredient-add-sweetener = Süßstoff hinzufügen
ingredient-sweetener-milligrams = Milligramm { $sweetener }
ingredient-sucralose = Sucralose
ingredient-aspartame = Aspartam
ingredient-acesulfame-k = Acesulfam K
ingredient-rebaudioside-a = Rebaudiosid A
ingredient-stevioside = Steviosid
ingredient-saccharin = Saccharin

# The price.
ingredient-price = Packungspreis
ingredient-price-named = Preis einer Packung
ingredient-price-hint = z. B. 11,40 für 1 kg
# A price as it is typed and shown. The words between the two are read back: keep both, and a word or sign between them.
ingredient-price-for = { $price } für { $content }
ingredient-price-usable = { $price } { $currency } je nutzbarem { $unit }
ingredient-price-usable-wasted = { $price } { $currency } je nutzbarem { $unit }: { $percent } % Verlust
# Stands where the waste and the day of a price will be.
ingredient-no-price-yet = nach dem Preis
ingredient-waste = Verlust
ingredient-waste-named = Verlust in Prozent
# Stands behind the waste and before the day: "waste [3] %, priced on [2026-05-04]".
ingredient-priced-on = %, Preis vom
ingredient-price-day-named = Datum des Preises
ingredient-no-day = ohne Datum
# Why a price is not taken. Errors begin with a small letter and end without a full stop.
ingredient-price-not-read = „{ $found }“ ist kein Preis: zum Beispiel 11,40 für 1 kg eingeben
ingredient-price-without-unit = bei „{ $found }“ fehlt die Einheit: zum Beispiel 1 kg, 750 ml, 2,5 lb oder 12 × 1 kg eingeben
ingredient-pack-not-read = „{ $found }“ ist kein Inhalt einer Packung: zum Beispiel 1 kg, 750 ml, 2,5 lb oder 12 × 1 kg eingeben
ingredient-price-of-nothing = eine Packung mit „{ $found }“ ist leer: mehr als 0 g eingeben

# What it cost before. $currency is a sign or a code, or empty.
ingredient-prices = Preisverlauf
ingredient-prices-per-pack = { $currency } je Packung
ingredient-prices-per-kilogram = { $currency } je kg
ingredient-prices-per-litre = { $currency } je l
ingredient-prices-change = Änderung
ingredient-prices-same = unverändert
ingredient-prices-from = Lieferant
# There are at least seven.
ingredient-prices-all = Alle { $count } Preise anzeigen
ingredient-price-remove = Preis vom { $day } entfernen
ingredient-price-remove-no-day = Preis ohne Datum entfernen
# The table of the prices for a spreadsheet: what it is called, and its heads.
ingredient-prices-table = Preise
ingredient-head-day = Datum
ingredient-head-pack = Preis einer Packung
ingredient-head-content = Inhalt
ingredient-head-per-kilogram = Preis je kg
ingredient-head-per-litre = Preis je l

# Beside the fields.
ingredient-check = Angaben prüfen
ingredient-missing = Fehlende Angaben
ingredient-one-use = Gewicht einer Dosierung
ingredient-no-readings = Keine Dosierhilfe hat Messwerte für diese Zutat. Öffnen Sie eine Dosierhilfe, um Messwerte hinzuzufügen.
ingredient-used-in = Verwendet in
# The table of what one use weighs: what it is called, and its heads.
ingredient-one-use-table = Gewicht einer Dosierung
ingredient-head-measure = Dosierhilfe
ingredient-head-one-use = eine Dosierung

# What nobody has stated, each with what would close the gap.
ingredient-missing-sugars = Zucker: nicht angegeben – Etikett lesen
ingredient-missing-fat = Fett: nicht angegeben – Etikett lesen
ingredient-missing-saturates = gesättigte Fettsäuren: nicht angegeben – Etikett lesen
ingredient-missing-carbohydrate = Kohlenhydrate: nicht angegeben – Etikett lesen
ingredient-missing-protein = Eiweiß: nicht angegeben – Etikett lesen
ingredient-missing-salt = Salz: nicht angegeben – Etikett lesen
ingredient-missing-polyols = Polyole: nicht angegeben – die Packung nennt eines, daher beim Hersteller nach der Menge fragen
ingredient-missing-statement = Polyole: nicht bekannt – das Zutatenverzeichnis eingeben, das jedes nennt
ingredient-missing-polyol = Art des Polyols: nicht angegeben – Zutatenverzeichnis lesen
ingredient-missing-fibre = Ballaststoffe: nicht angegeben – Etikett lesen
ingredient-missing-acid = Säure: nicht angegeben – Packung oder Name lassen welche erwarten, daher beim Hersteller nachfragen
ingredient-missing-tea-solids = Teefeststoffe: nicht angegeben – lösliche Stoffe messen oder beim Hersteller nachfragen
ingredient-missing-insoluble = unlösliche Feststoffe: nicht angegeben – beim Hersteller nachfragen
ingredient-missing-energy = Energie: nicht angegeben – Etikett lesen
ingredient-missing-sweetener = Süßstoff: die Packung nennt einen ohne Menge – beim Hersteller nachfragen
ingredient-missing-pack-density = Kosten: die Packung wird nach Volumen verkauft – ein abgemessenes Volumen davon wiegen
ingredient-missing-caffeine = Koffein: nicht angegeben – beim Hersteller nachfragen, oder 0 eingeben, wenn keines enthalten sein kann
ingredient-missing-water = Wasser: nicht bekannt, solange ein Feststoff nicht angegeben ist
ingredient-missing-free-sugars = freie Zucker: nicht angegeben – eingeben, welcher Teil des Zuckers zugesetzt ist
ingredient-missing-profile = Zuckerarten: nicht angegeben – für die Süße erforderlich
ingredient-missing-price = Preis: nicht angegeben – die Kosten der Getränke damit sind nicht bekannt
ingredient-missing-poured-density = Schüttdichte: nicht angegeben – einen gestrichenen Messlöffel davon wiegen
ingredient-missing-density = Dichte: nicht angegeben – das Etikett gilt je 100 ml, daher 100 ml davon wiegen
ingredient-missing-allergens = Allergene: nicht angegeben – kein Getränk damit darf als frei von einem Allergen bezeichnet werden
ingredient-missing-vegan = vegan: nicht angegeben

## Was Verkostungen über sie zeigen

ingredient-tasted = Aus Verkostungen
ingredient-tasted-take = Übernehmen
ingredient-tasted-take-hint = Die verkosteten Becher haben sich nicht geändert: Was mit dieser Zutat freigegeben wurde, folgt.
# $times ist ein Faktor mit seiner Unsicherheit: „1,08 ± 0,06“.
ingredient-tasted-taken = Am { $date } übernommen: { $what } das { $times }-Fache der Angabe.
ingredient-tasted-taken-by = Am { $date } von { $by } übernommen: { $what } das { $times }-Fache der Angabe.
ingredient-tasted-give-up = Zurücknehmen, sodass wieder die Angabe gilt
ingredient-tasted-more = { $count ->
    [one] und 1 weiteres Getränk
   *[other] und { $count } weitere Getränke
}
