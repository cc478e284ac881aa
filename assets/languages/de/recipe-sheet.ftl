# The sheet of a recipe: its heading, its lines, what belongs to a line, and what a version changes.
# Labels beside fields and heads of columns begin with a small letter.

## Heading

recipe-sheet-name = Name des Rezepts
# The subject of a sentence about characters that can't be seen.
recipe-sheet-the-name = der Name
# Why a name is not taken: a clause.
recipe-sheet-name-missing = ein Name fehlt
recipe-sheet-name-stays = Ein Rezept braucht einen Namen. Der alte Name bleibt.
recipe-sheet-version-name = Name der Version
recipe-sheet-state = Stand
# In the list of states: opens the sheet on which a version is approved.
recipe-sheet-approve = freigegeben …
recipe-sheet-no-ingredients = Dieses Rezept hat noch keine Zutaten
recipe-sheet-change-makes-version = eine Änderung legt eine neue Version an
recipe-sheet-cup = Becher
recipe-sheet-no-cup = kein Becher
recipe-sheet-shaker = Shaker
recipe-sheet-no-shaker = im Becher zubereitet
recipe-sheet-shaken-in = geschüttelt in: { $shaker }
recipe-sheet-strain = Eis abseihen
# Stands before the field of a temperature.
recipe-sheet-compare-taste = Geschmacksvergleich bei
recipe-sheet-drinking-temperature = Trinktemperatur in { $unit }
# Stands before the field of an amount of money.
recipe-sheet-price = Preis
recipe-sheet-menu-price = Preis auf der Getränkekarte

## What the shares of the lines are shown of

# Stands before a row of words such as "sugar" and "heat".
recipe-sheet-show = anzeigen
recipe-sheet-show-lens = { $lens } anzeigen

## Columns of the lines

# Stands over temperatures, and before one: "at 78 °C".
recipe-sheet-at = bei
recipe-sheet-mass = Masse
recipe-sheet-heat = Wärme: bringt, nimmt
recipe-sheet-uncertainty = Unsicherheit des Zuckers
# $lens is "sugar", "cost" and the like.
recipe-sheet-total = { $lens }, gesamt { $total }
recipe-sheet-total-at-least = { $lens }, mindestens { $total }
# Where a figure would stand.
recipe-sheet-mass-not-known = Masse nicht bekannt
recipe-sheet-no-price = kein Preis
recipe-sheet-not-stated = nicht angegeben

## Columns of the table for a spreadsheet

# Which table it is, behind a colon.
recipe-sheet-table = Zeilen
recipe-sheet-table-stage = Platz im Getränk
recipe-sheet-table-ingredient = Zutat
recipe-sheet-table-amount = Menge
recipe-sheet-table-temperature = Temperatur

## Lines and instructions

# A line to a screen reader: "Line Milk, sugar 7.2 g".
recipe-sheet-line = Zeile { $ingredient }, { $lens } { $share }
recipe-sheet-amount-of = Menge: { $ingredient }
recipe-sheet-temperature-of = Temperatur: { $ingredient }
recipe-sheet-at-temperature = bei { $temperature }
recipe-sheet-ingredient = Zutat { $ingredient }
recipe-sheet-put-another = { $ingredient }: hier eine andere Zutat einsetzen
recipe-sheet-brings-along = bringt { $mass } { $ingredient } mit
recipe-sheet-brings-along-unknown = bringt { $ingredient } mit, Masse nicht bekannt
recipe-sheet-instruction = Anweisung
recipe-sheet-instruction-hint = was hier zu tun ist
recipe-sheet-instruction-row = Anweisung { $text }
# The subject of a sentence about characters that can't be seen.
recipe-sheet-the-instruction = die Anweisung
recipe-sheet-add-ingredient = Zutat hinzufügen
recipe-sheet-add-instruction = Anweisung hinzufügen

## What belongs to a line

# Stand before menus: "as sweetener in the drink: mixed in".
recipe-sheet-as = als
recipe-sheet-in-the-drink = im Getränk:
recipe-sheet-role = Rolle
recipe-sheet-stage = Platz im Getränk
# The syrup of a topping: "brings along", a field with a number, "g of", a menu of syrups.
recipe-sheet-brings = bringt mit:
recipe-sheet-grams-of = g
recipe-sheet-brings-nothing = nichts
recipe-sheet-comes-along = Kommt mit hinein
recipe-sheet-grams-along = Gramm, die mit hineinkommen
recipe-sheet-grams-below-zero = „{ $text }“ ist weniger als 0 g. Geben Sie 0 g oder mehr ein.
recipe-sheet-note-on = Notiz zu { $ingredient }
recipe-sheet-note-hint = Notiz
recipe-sheet-open-in-counter = Unter „Tresen“ öffnen
recipe-sheet-open-in-counter-hint = Etikett, Preis und Gewicht je Dosierhilfe ansehen
recipe-sheet-see-batch = Rezept ansehen
recipe-sheet-see-batch-hint = Öffnet das Rezept, nach dem es hergestellt wird

# What one use of a measure weighs. $use is "1 spoon", $measure the name of the measure.
recipe-sheet-weight-not-known = was { $use } wiegt, ist nicht bekannt: zehn zusammen wiegen
recipe-sheet-weight-weighed = { $use } ({ $measure }) = { $mass }, { $count ->
    [1] einmal
    [2] zweimal
   *[other] { $count }-mal
} gewogen
# $evidence is where the density is from: "label".
recipe-sheet-weight-water = { $use } ({ $measure }) = { $mass }, Volumen { $count ->
    [1] einmal
    [2] zweimal
   *[other] { $count }-mal
} mit Wasser gemessen, Beleg der Dichte: { $evidence }
recipe-sheet-weight-stated = { $use } ({ $measure }) = { $mass }, nach der angegebenen Größe der Dosierhilfe, nicht gewogen

# What the same measure would hold of other sweeteners. $held is a list of messages that begin with recipe-sheet-held.
recipe-sheet-same-use = { $kind ->
    [scoop] derselbe Messlöffel
    [pump] derselbe Hub
    [spoon] derselbe Löffel
    [jug] dasselbe Kännchen
    [ice-scoop] dieselbe Eisschaufel
    [piece] dasselbe Stück
   *[button] derselbe Tastendruck
}: { $held }
# $uses is "2 spoons".
recipe-sheet-same-uses = dieselben { $uses }: { $held }
# The first of the list says what the masses are of. $form is "syrup".
recipe-sheet-held-first = { $form } { $mass } Zucker
recipe-sheet-held-first-named = { $form } { $mass } Zucker ({ $name })
recipe-sheet-held = { $form } { $mass } ({ $name })

## Finding an ingredient

recipe-sheet-find = Zutat suchen
recipe-sheet-find-hint = Name oder Marke eingeben
recipe-sheet-find-none = Dieses Buch hat noch keine Zutaten. Geben Sie einen Namen ein, um die erste hinzuzufügen.
# Stands before a button with the next message.
recipe-sheet-equal-measures = Ersetzt sie Maß für Maß. Geschmack angleichen:
recipe-sheet-swap = Austausch …
recipe-sheet-in-drink-now = jetzt im Getränk
recipe-sheet-of-published-table = { $ingredient } aus einer veröffentlichten Tabelle
recipe-sheet-new-ingredient = Neue Zutat „{ $name }“
recipe-sheet-new-ingredient-hint = Ihre Werte sind erst bekannt, wenn Sie ihr Etikett unter „Tresen“ eingeben
# Making it in the house: an empty batch, or a brew of a leaf.
recipe-sheet-new-batch = Neu hausgemacht: „{ $name }“
recipe-sheet-new-batch-hint = Fügt die Zutat und ein leeres Rezept für einen Ansatz davon hinzu
recipe-sheet-new-brew = Tee aus { $leaf } aufbrühen
recipe-sheet-new-brew-hint = Fügt einen hausgemachten Tee mit seinem Ansatz hinzu: Wasser, Teeblätter, Ziehzeit und Ausbeute

## Below the lines

recipe-sheet-note = Notiz
recipe-sheet-note-on-recipe = Notiz zum Rezept
recipe-sheet-note-on-recipe-hint = Was sollte die nächste Person wissen?
recipe-sheet-changes-from = Änderungen gegenüber „{ $version }“
recipe-sheet-changes-from-original = Änderungen gegenüber dem Original
recipe-sheet-no-changes = noch keine Änderungen

# What a version changes, each a clause of its own. $line is the name of an ingredient or the next message.
recipe-sheet-an-instruction = Anweisung
recipe-sheet-change-ingredient = { $after } statt { $before }
recipe-sheet-change-ingredient-only = stattdessen { $after }
recipe-sheet-change-amount = { $line }: { $amount }
recipe-sheet-change-temperature = { $line } bei { $temperature }
recipe-sheet-change-temperature-stored = { $line } wie gelagert
recipe-sheet-change-role = { $line } als { $role }
# $stage is "mixed in", "on top" and the like.
recipe-sheet-change-stage = { $line }: { $stage }
recipe-sheet-change-carries-nothing = { $line } bringt nichts mit
recipe-sheet-change-carries = { $line } bringt { $mass } mit
recipe-sheet-change-note = { $line }: andere Notiz
recipe-sheet-change-instruction = „{ $text }“
recipe-sheet-change-added = neu: { $amount } { $line }
recipe-sheet-change-instruction-added = neu: eine Anweisung
recipe-sheet-change-removed = ohne { $line }
recipe-sheet-change-moved = { $line } an anderer Stelle
recipe-sheet-change-cup = Becher: { $cup }
recipe-sheet-change-no-shaker = im Becher zubereitet
recipe-sheet-change-shaker = geschüttelt in: { $shaker }
recipe-sheet-change-strained = das Eis bleibt im Shaker zurück
recipe-sheet-change-not-strained = mit dem Eis eingegossen
recipe-sheet-change-drinking-temperature = Geschmacksvergleich bei { $temperature }
recipe-sheet-change-drinking-temperature-of-shop = Geschmacksvergleich bei der Trinktemperatur des Ladens
recipe-sheet-change-sugar-level = mit { $percent } der zugesetzten Süße
recipe-sheet-change-menu-price = { $price } auf der Getränkekarte
recipe-sheet-change-no-menu-price = nicht auf der Getränkekarte
