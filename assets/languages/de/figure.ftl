# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = kein Becher gewählt, oder der Raum ist nicht kühler als die Trinktemperatur
no-figure-warmer-only = ein eisgekühltes Getränk wird beim Stehen nur wärmer
no-figure-cup = kein Becher gewählt
no-figure-price = der Preis des Bechers, seines Verschlusses oder seines Trinkhalms ist nicht angegeben
no-figure-only-water = nur Wasser, Tee und Eis sind darin
no-figure-empty = der Becher ist leer

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = Gramm jeder Zuckerart mal ihre relative Süßkraft bei dieser Temperatur (Saccharose = 1), je 100 ml des gemischten Getränks.
formula-serving-temperature = Die Temperatur, bei der sich die Wärme aller Zeilen, des Eises, des Bechers und des Shakers ausgleicht.
formula-minutes-to-drinkable = Wärmeverlust durch die Wand und durch Verdunstung, nach den Messwerten des Bechers oder nach veröffentlichten Bechern, je nach Füllgrad.
formula-volume = Die Volumen von Wasser und gelösten Feststoffen bei { $celsius }, mit dem geschmolzenen Eis.
formula-fill = Getränk, Toppings, Schaum und Eis im Verhältnis zum Fassungsvermögen des Bechers bis zum Rand.
formula-dilution = Gramm Wasser, geschmolzenes Eis und Tee je Gramm alles Übrigen im gemischten Getränk.
formula-brix = Lösliche Feststoffe des gemischten Getränks, in Prozent seiner Masse.
formula-energy = Kohlenhydrate, Eiweiß, Fett, Ballaststoffe und Säure mal die Faktoren der Verordnung (EU) Nr. 1169/2011, Anhang XIV.
formula-cost = Gramm jeder Zeile mal Preis der Packung, mit Verlust, zuzüglich Becher, Verschluss und Zubehör.
formula-free-sugars = Der Teil des Zuckers jeder Zeile, der als frei gilt: zugesetzt oder aus Honig, Sirup und Saft.
formula-total-sugar = Gramm jeder Zeile mal Zuckergehalt der Zutat, zusammengezählt.
formula-sum = Gramm jeder Zeile mal Wert der Zutat, zusammengezählt.

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients } ({ $evidence })

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = Energie
nutrition-fat = Fett
nutrition-saturates = davon gesättigte Fettsäuren
nutrition-carbohydrate = Kohlenhydrate
nutrition-sugars = davon Zucker
nutrition-polyols = davon mehrwertige Alkohole
nutrition-fibre = Ballaststoffe
nutrition-protein = Eiweiß
nutrition-salt = Salz

# Where the noticeable step of an axis is from.
step-source-sweetness = Weber-Quotient 0,09 (Saccharose in Cola, J. Sensory Studies 2023, doi 10.1111/joss.12803) bis 0,17 (Schutz & Pilgrim 1957, Wert aus dem Gedächtnis); 0,10 gewählt; Untergrenze angenommen
step-source-acidity = Weber-Quotient von Citronensäure 0,22 (Schutz & Pilgrim 1957, Wert aus dem Gedächtnis); Untergrenze angenommen
step-source-creaminess = Weber-Quotient der Cremigkeit in Milchemulsionen 0,20 (Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521); Untergrenze angenommen
step-source-body = Weber-Quotient der Dickflüssigkeit 0,26 (Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), für die Viskosität, auf Feststoffe übertragen; Untergrenze angenommen
step-source-tea-strength = angenommen 0,20; feiner als der Weber-Quotient für die Bitterkeit von Koffein, 0,30 (Schutz & Pilgrim 1957, Wert aus dem Gedächtnis); Untergrenze angenommen
step-source-flavour = angenommen: kein veröffentlichter Wert für Aromen von Getränken
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = angenommen { $step }: kein veröffentlichter Wert; { $apart } werden unterschieden (Engelen et al. 2002, Eur. J. Oral Sci. 110:412)
step-source-volume = angenommen 5 %: kein veröffentlichter Wert; Untergrenze angenommen

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = Masse
measurand-volume = Volumen
measurand-total-sugar = Gesamtzucker
measurand-free-sugars = freie Zucker
measurand-sucrose = Saccharose
measurand-glucose = Glukose
measurand-fructose = Fruktose
measurand-lactose = Laktose
measurand-maltose = Maltose
measurand-other-sugars = andere Zucker
measurand-sweetness = Süße
measurand-soluble-solids = lösliche Feststoffe
measurand-density = Dichte
measurand-dilution = Verdünnung
measurand-serving-temperature = Serviertemperatur
measurand-ice-left = verbliebenes Eis
measurand-minutes-to-drinkable = Minuten bis zur Trinktemperatur
measurand-energy = Energie
measurand-fat = Fett
measurand-saturates = gesättigte Fettsäuren
measurand-carbohydrate = Kohlenhydrate
measurand-polyols = mehrwertige Alkohole
measurand-fibre = Ballaststoffe
measurand-protein = Eiweiß
measurand-salt = Salz
measurand-caffeine = Koffein
measurand-tea-solids = Teefeststoffe
measurand-acid = Säure
measurand-cost = Kosten
measurand-fill = Füllgrad
measurand-tea-strength = Teestärke
measurand-creaminess = Cremigkeit
measurand-acidity = Säuerlichkeit
measurand-body = Körper
measurand-dry-matter = Trockenmasse
measurand-sugar = Zucker
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = Hauseinheiten/100 ml
