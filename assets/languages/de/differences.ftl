# How two books, two items or two states of a recipe differ. Clauses without a full stop.

## Books

difference-none = keine Unterschiede
# The parts of a summary, such as "2 recipes changed (Pear Drift, Snowgate)". $change is a key: added, changed or removed.
difference-settings = Einstellungen geändert
difference-ingredients = { $count ->
        [one] 1 Zutat
       *[other] { $count } Zutaten
    } { $change ->
        [added] hinzugefügt
        [changed] geändert
       *[removed] entfernt
    } ({ $names })
difference-measures = { $count ->
        [one] 1 Dosierhilfe
       *[other] { $count } Dosierhilfen
    } { $change ->
        [added] hinzugefügt
        [changed] geändert
       *[removed] entfernt
    } ({ $names })
difference-vessels = { $count ->
        [one] 1 Gefäß
       *[other] { $count } Gefäße
    } { $change ->
        [added] hinzugefügt
        [changed] geändert
       *[removed] entfernt
    } ({ $names })
difference-recipes = { $count ->
        [one] 1 Rezept
       *[other] { $count } Rezepte
    } { $change ->
        [added] hinzugefügt
        [changed] geändert
       *[removed] entfernt
    } ({ $names })
difference-tastings = { $count ->
        [one] 1 Verkostung
       *[other] { $count } Verkostungen
    } { $change ->
        [added] hinzugefügt
        [changed] geändert
       *[removed] entfernt
    } ({ $names })
difference-more-names = { $count } weitere
difference-order = { $kind ->
        [ingredient] Zutaten in anderer Reihenfolge
        [measure] Dosierhilfen in anderer Reihenfolge
        [vessel] Gefäße in anderer Reihenfolge
        [tasting] Verkostungen in anderer Reihenfolge
       *[recipe] Rezepte in anderer Reihenfolge
    }

## Items

# $names are names of fields.
detail-name = Name: { $after }, vorher { $before }
# A field of an item, or a figure of a composition.
detail-field = { $field }: { $after }, vorher { $before }
detail-range = { $from } bis { $to }
detail-waste = { $percent } Verlust
detail-batch = { $recipe }, ergibt { $grams }
detail-diet = vegan: { $vegan }, milchfrei: { $dairy_free }
detail-readings = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    }
detail-shape = { $height } hoch, unten { $bottom }, oben { $top } weit
detail-state = Stand: { $after }, vorher { $before }
detail-version-added = Version „{ $name }“ hinzugefügt
detail-version-added-with = Version „{ $name }“ hinzugefügt ({ $lines })
detail-version-changed = Version „{ $name }“: { $fields }
detail-version-changed-with = Version „{ $name }“: { $fields } ({ $lines })
detail-version-removed = Version „{ $name }“ entfernt
detail-approvals = Freigaben: { $after }, vorher { $before }
detail-more-lines = und { $count } weitere

## Lines of a recipe. $after is what it is now, $before what it was.

line-ingredient = { $after } statt { $before }
line-instruction = Anweisung „{ $after }“ statt „{ $before }“
line-added-first = { $ingredient }, { $amount }, am Anfang hinzugefügt
line-added = { $ingredient }, { $amount }, hinter { $place } hinzugefügt
line-instruction-added-first = Anweisung „{ $text }“ am Anfang hinzugefügt
line-instruction-added = Anweisung „{ $text }“ hinter { $place } hinzugefügt
line-removed = { $ingredient } entfernt ({ $amount })
line-instruction-removed = Anweisung „{ $text }“ entfernt
line-moved-first = { $line } an den Anfang verschoben
line-moved = { $line } hinter { $place } verschoben
# An instruction where the name of an ingredient would stand.
line-named-instruction = Anweisung „{ $text }“
line-amount = { $line }: { $after }, vorher { $before }
line-temperature = Temperatur von { $line }: { $after }, vorher { $before }
line-as-stored = wie gelagert
line-role = Rolle von { $line }: { $after }, vorher { $before }
line-stage = Platz von { $line }: { $after }, vorher { $before }
line-carried = mit { $line }: { $after }, vorher { $before }
line-carried-syrup = { $amount } { $ingredient }
line-carried-nothing = nichts
line-note = Notiz zu { $line }: { $after }, vorher { $before }
line-note-text = „{ $text }“
# In place of a cup, a shaker, a price or a note.
line-nothing = nichts
recipe-cup = Becher: { $after }, vorher { $before }
recipe-no-cup = kein Becher, vorher { $before }
recipe-shaker = Shaker: { $after }, vorher { $before }
recipe-strained = das Eis wird abgeseiht
recipe-not-strained = das Eis kommt aus dem Shaker mit in den Becher
recipe-drinking-temperature = Trinktemperatur: { $after }, vorher { $before }
recipe-drinking-temperature-of-shop = die des Ladens
recipe-menu-price = Preis auf der Getränkekarte: { $after }, vorher { $before }
recipe-sugar-level = Zuckerstufe: { $after }, vorher { $before }

## Names of fields

item-field-allergen-lists = Allergenlisten
item-field-allergens = Allergene
item-field-approvals = Freigaben
item-field-articles = Namen in Listen von Lieferanten
item-field-brand = Marke
item-field-builds-on = Grundlage
item-field-bulk-density = Schüttdichte
item-field-capacity = Fassungsvermögen
item-field-changes = Änderungen
item-field-closures = Deckel und Folien
item-field-composition = Zusammensetzung
item-field-confirmations = bestätigte Übersetzungen
item-field-cooling-minutes = Abkühlzeit
item-field-cooling-run = Abkühlmessung
item-field-cup = Becher
item-field-currency = Währung
item-field-density = Dichte
item-field-diet = Ernährungsweise
item-field-drinking-temperature = Trinktemperatur
item-field-doubts = angepasste Unsicherheiten
item-field-earlier-prices = frühere Preise
item-field-earlier = frühere Werte
item-field-entries = Zeilen
item-field-filling = Füllung
item-field-form = Form
item-field-hot-drinking-temperature = Trinktemperatur heißer Getränke
item-field-hot-window = Servierfenster heißer Getränke
item-field-house-made = Ansatz
item-field-ice-bulk-density = Schüttdichte des Eises
item-field-ice-levels = Eisstufen
item-field-ice-melt-rate = Schmelzrate des Eises
item-field-ice-left = Eis, das im Becher bleibt
item-field-ice-temperature = Temperatur des Eises
item-field-iced-drinking-temperature = Trinktemperatur eisgekühlter Getränke
item-field-iced-window = Servierfenster eisgekühlter Getränke
item-field-id = Kennung
item-field-increment = kleinster Schritt
item-field-instruments = Messgenauigkeit
item-field-kind = Art
item-field-language = Sprache
item-field-lot = Charge
item-field-mass = Gewicht
item-field-menu-price = Preis auf der Getränkekarte
item-field-sugar-level = Zuckerstufe
item-field-name = Name
item-field-nominal = angegebene Größe
item-field-note = Notiz
item-field-no-longer-sold = Erhältlichkeit
item-field-opened-life-hours = Haltbarkeit nach dem Öffnen
item-field-price = Preis
item-field-readings = Messwerte
item-field-refrigerator-temperature = Temperatur des Kühlschranks
item-field-role = Rolle
item-field-room-temperature = Raumtemperatur
item-field-sales-tax-percent = Umsatzsteuer
item-field-season = Saison
item-field-serviceware = Trinkhalme und Manschetten
item-field-shaker = Shaker
item-field-shape = Innenmaße
item-field-shop = Name des Ladens
item-field-specific-heat = Wärmekapazität
item-field-state = Stand
item-field-statement = Zutatenverzeichnis
item-field-steps = merkliche Schritte
item-field-strained = Abseihen des Eises
item-field-sugar-levels = Zuckerstufen
item-field-supplier = Lieferant
item-field-temperature = Temperatur
item-field-translations = Übersetzungen
item-field-versions = Versionen
item-field-yardsticks = Richtwerte
item-field-axis = Frage
item-field-counts = Zählung als Beleg
item-field-cups = Becher der Verkostung
item-field-date = Datum
item-field-notes = Geschmacksnotizen
item-field-outcome = Ergebnis
item-field-people = Verkoster
item-field-reason = Grund
item-field-seed = Startzahl
item-field-tasted = Ergebnisse von Verkostungen
