# Drinks side by side: which, what sets them apart, and a table with a column for each.
# Choosing them. $drink is "vegan" or "Hob & Ember, vegan".
compare-beside-it = verglichen mit
compare-beside-it-named = Verglichen mit: { $drink }
compare-another = Weiteres Getränk …
compare-full = Sie können bis zu vier Getränke vergleichen.
compare-find = Getränk suchen
compare-find-hint = Getränk suchen
compare-none = Kein passendes Getränk.
compare-more = Es gibt weitere: einen Teil des Namens eingeben
compare-add = Fügen Sie eine Version oder ein weiteres Getränk hinzu, um Kosten, Allergene, Geschmack und alle anderen Werte zu vergleichen.
# A recipe and a version of it.
compare-drink = { $recipe }, { $version }
# Which table is copied; { $before } may be such a pair again.
compare-table = { $before } neben { $after }
# On the head of a column.
compare-open = { $drink } öffnen
compare-remove = { $drink } entfernen
# What sets a drink apart, as clauses. $more is "+0.12 ± 0.02".
compare-cost = Kosten { $more } { $currency } je Getränk
compare-cost-not-known = die Kosten lassen sich nicht vergleichen: ein Preis ist nicht angegeben
# Headings of parts of the table, and names of rows.
compare-cost-and-guests = Kosten und Gäste
compare-figures = Werte
compare-how-made = Zubereitung
compare-margin = Marge
compare-contains = enthält
compare-may-contain = kann enthalten
compare-not-stated = Allergene nicht angegeben bei
compare-vegan = vegan, nach Zutaten
compare-dairy-free = milchfrei, nach Zutaten
compare-cup = Becher
compare-line = Zeile { $number }
# What stands in a cell. $amount is "2 scoops" or "to the rim".
compare-not-known = nicht bekannt
compare-no-menu-price = kein Preis für die Karte
compare-none-named = keine genannt
compare-amount = { $amount } { $ingredient }
# Below a figure, and behind it for a screen reader. $more is "+3.4 ± 0.2".
compare-with-the-first = { $more } im Vergleich zum ersten
compare-figure-and-more = { $figure }, { $more } im Vergleich zum ersten
compare-uncertainty = ± ist eine Standardunsicherheit. Bei einem Unterschied hebt sich auf, was die Getränke gemeinsam haben.
