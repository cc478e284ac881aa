# The sheets of the screen Serving: headings, and the way to each of them.
serving-sheet-cooling = Temperatur und Abkühlen
serving-sheet-ice = Schmelzendes Eis
serving-sheet-last-sip = Von der Theke bis zum letzten Schluck
serving-sheet-nutrition = Nährwerte
serving-sheet-yardsticks = Richtwerte
serving-sheet-guests = Allergene und Ernährung
serving-sheet-cost = Kosten und Marge
serving-sheet-one-cup = Warum weicht dieser Becher ab?
serving-sheet-brewing = Tee aufbrühen
serving-original = Original
# Below the name of the drink.
serving-version-and-cup = { $version } · { $cup }
serving-no-cup = kein Becher gewählt
serving-go-to = Zu „{ $sheet }“
# What a click on a figure tells, and the name of what opens.
serving-how-worked-out = zeigen, wie das berechnet wird
serving-why = Berechnung: { $figure }
serving-not-known = nicht bekannt
# The heads of copied tables.
serving-head-unit = Einheit
serving-head-value = Wert
serving-head-remark = Bemerkung
# Cost and margin. $percent is a number.
serving-cost-no-price-stated = kein Preis angegeben
serving-cost-of-drink = Kosten des Getränks
serving-cost-table = Kosten
serving-cost-source = Die Kosten der Zutaten ergeben sich aus den Packungspreisen ohne Umsatzsteuer, einschließlich Verlust.
serving-cost-no-closure = kein Verschluss
serving-cost-lid = Deckel
serving-cost-film = Folie
serving-cost-wide-straw = dicker Trinkhalm
serving-cost-straw = Trinkhalm
serving-cost-sleeve = Manschette
serving-cost-no-price = kein Preis: { $parts }
serving-cost-sales-tax = Umsatzsteuer
serving-cost-sales-tax-of = Umsatzsteuer, { $percent } %
serving-cost-no-rate = der Laden gibt keinen Satz an
serving-cost-tax-not-stated = Umsatzsteuer nicht angegeben
serving-cost-menu-price = Preis auf der Getränkekarte, mit Umsatzsteuer
serving-cost-margin = Marge
serving-cost-margin-share = Marge, als Anteil des Preises vor Steuer
serving-cost-not-known = die Kosten sind nicht bekannt
serving-cost-no-menu-price = das Rezept gibt keinen Preis für die Getränkekarte an
# Allergens and diet.
serving-guests-none = Keine Packung nennt ein Allergen.
serving-guests-contains = Enthält
serving-guests-may-contain = Kann enthalten
serving-guests-not-stated = Nicht angegeben bei
serving-guests-vegan-yes = Vegan, nach Zutaten.
serving-guests-vegan-no = Nicht vegan.
serving-guests-vegan-not-known = Vegan: nicht bekannt, weil bei einer Zutat die Angabe fehlt oder ihr widersprochen wird.
serving-guests-dairy-free-yes = Milchfrei, nach Zutaten.
serving-guests-dairy-free-no = Nicht milchfrei.
serving-guests-dairy-free-not-known = Milchfrei: nicht bekannt, weil bei einer Zutat die Angabe fehlt oder ihr widersprochen wird.
serving-guests-basis = Nach den Angaben der Packungen zu ihren Zutaten; gemeinsam benutzte Messlöffel, Shaker und Mixer übertragen Spuren.
serving-guests-questions = Fragen zu den Zutatenverzeichnissen
# $words stand in the ingredient list.
serving-guests-question-source = Aus dem Zutatenverzeichnis von { $ingredient }: „{ $words }“
serving-guests-questions-basis = Es gilt die Packung, die Sie in der Hand haben. Wörter, die ein Allergen oder ein Tier nennen, zählen, bis der Eintrag berichtigt ist.
# Nutrition, and where the energy comes from.
serving-nutrition-per-100-ml = je 100 ml
serving-nutrition-per-drink = je Getränk
serving-nutrition-table = Nährwerte
serving-nutrition-empty = der Becher ist leer
serving-nutrition-caffeine = Koffein, je Getränk
serving-nutrition-free-sugars = freie Zucker, je Getränk
serving-nutrition-basis = In der Reihenfolge der Verordnung (EU) Nr. 1169/2011, Anhang XV, gerundet nach dem Leitfaden der Kommission von 2012. Berechnet aus den Angaben der Packungen; zur Orientierung, ohne Anspruch auf Übereinstimmung mit einem Gesetz.
serving-nutrition-basis-with-toppings = In der Reihenfolge der Verordnung (EU) Nr. 1169/2011, Anhang XV, gerundet nach dem Leitfaden der Kommission von 2012. Werte je 100 ml gelten ohne Toppings, Werte je Getränk mit ihnen. Berechnet aus den Angaben der Packungen; zur Orientierung, ohne Anspruch auf Übereinstimmung mit einem Gesetz.
serving-energy-heading = Herkunft der Energie
serving-energy-none = Keine Zeile liefert Energie.
serving-energy-not-stated = nicht angegeben
serving-energy-ingredient = Zutat
serving-energy-table = Energie
serving-energy-part = Anteil
# Allergens by US law; the clauses are "contains …" and "may contain …".
serving-guests-us = Die neun Hauptallergene nach US-Recht: { $clauses }.
serving-guests-us-wheat = Weizen, sofern es kein anderes Getreide ist
serving-guests-us-shellfish = Krebstiere
serving-guests-us-eggs = Eier
serving-guests-us-fish = Fische
serving-guests-us-peanuts = Erdnüsse
serving-guests-us-soybeans = Sojabohnen
serving-guests-us-milk = Milch
serving-guests-us-tree-nuts = Schalenfrüchte
serving-guests-us-sesame = Sesam
# Yardsticks. $publisher and $definition are clauses.
serving-yardsticks-none = Kein Richtwert ist ausgewählt. Richtwerte dienen zur Orientierung und sind keine Aussage über die Einhaltung von Vorschriften.
serving-yardsticks-source = { $publisher }. Gezählt wird: { $definition }.
# Why what is typed is not taken, as a clause. $from is a number; $found and $to have their unit.
serving-out-of-range = { $found } liegt außerhalb des Bereichs: { $from } bis { $to } eingeben
# $units are symbols such as "g" and "fl oz".
serving-no-mass-or-volume = „{ $found }“ ist weder eine Masse noch ein Volumen: mit { $units } angeben
serving-not-a-time = „{ $found }“ ist keine Uhrzeit: hh:mm eingeben, von 00:00 bis 23:59
