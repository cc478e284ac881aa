# The words of fixed lists, by their key.

# What a figure rests on.
evidence-label = Etikett
evidence-specification-sheet = Spezifikation
evidence-measured = gemessen
evidence-published-table = veröffentlichte Tabelle
evidence-assumed = angenommen

# What an ingredient is like.
form-liquid = Flüssigkeit
form-syrup = Sirup
form-powder = Pulver
form-crystals = Kristalle
form-paste = Paste
form-leaf = Teeblatt
form-ice = Eis
form-pieces = Stücke
form-foam = Schaum

# A figure of an ingredient.
nutrient-energy = Energie
nutrient-water = Wasser
nutrient-fat = Fett
nutrient-saturates = gesättigte Fettsäuren
nutrient-carbohydrate = Kohlenhydrate
nutrient-sugars = Zucker
nutrient-polyols = mehrwertige Alkohole
nutrient-fibre = Ballaststoffe
nutrient-protein = Eiweiß
nutrient-salt = Salz
nutrient-acid = Säure
nutrient-tea-solids = Teefeststoffe
nutrient-insoluble-solids = unlösliche Feststoffe
nutrient-caffeine = Koffein
nutrient-degrees-brix = °Brix

# A sweetening alcohol.
polyol-erythritol = Erythrit
polyol-xylitol = Xylit
polyol-sorbitol = Sorbit
polyol-mannitol = Mannit
polyol-maltitol = Maltit
polyol-lactitol = Lactit
polyol-isomalt = Isomalt

# What the counter measures with.
measure-kind-scoop = Messlöffel
measure-kind-pump = Pumpe
measure-kind-spoon = Löffel
measure-kind-jug = Kännchen
measure-kind-ice-scoop = Eisschaufel
measure-kind-button = Taste
measure-kind-piece = Stück

# Other words for a use of a measure that are read when they are typed behind a number, with a comma between.
amount-words-of-scoops = Messlöffeln, Maßlöffel, Maßlöffeln, Dosierlöffel, Schippe, Schippen, Schaufel, Schaufeln
amount-words-of-presses = Hüben, Pumphub, Pumphübe, Pumpstoß, Pumpstöße, Pumpstoss, Stoß, Stöße, Pumpe, Pumpen
amount-words-of-spoons = Löffeln, Barlöffel
amount-words-of-jugs = Kanne, Kannen, Krug, Krüge
amount-words-of-ice-scoops = Eisschippe, Eisschippen, Eislöffel, Eiskelle, Eiskellen
amount-words-of-pushes = Knopfdruck, Knopfdrücke, Taste, Tasten

# What a drink is made, poured or served in.
vessel-kind-cup = Becher
vessel-kind-shaker = Shaker
vessel-kind-jug = Kanne

# How far a recipe or version is.
state-draft = Entwurf
state-on-trial = in Erprobung
state-approved = freigegeben
# Marked approved in the file, though no approval of it is kept.
state-marked-only = ohne Freigabe
state-retired = ausgelistet

# What the shares of the lines are shown of.
lens-sugar = Zucker
lens-sweetness = Süße
lens-heat = Wärme
lens-cost = Kosten
lens-energy = Energie
lens-tea = Tee
lens-uncertainty = Unsicherheit

# What was found in the book.
found-recipe = Rezept
found-version = Version
found-ingredient = Zutat
found-measure = Dosierhilfe
found-vessel = Becher, Shaker oder Kanne
found-flavour = Aroma
found-sugar-level = Zuckerstufe
found-ice-level = Eisstufe
found-instruction = Anweisung
found-note = Notiz
found-approval = Freigabe
found-tasting = Verkostung
found-shop = Laden

# How serious a finding is.
severity-warning = Warnung
severity-error = Fehler
