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
compare-add = Oben wählen, was neben diesem Getränk stehen soll: eine seiner Versionen oder ein anderes Getränk. Kosten, Allergene, Geschmack und alle anderen Werte stehen dann nebeneinander, mit ihren Unterschieden.
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
compare-cost-and-guests = Kosten, Zucker und Gäste
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
# Behind a figure, for a screen reader. $more is "+3.4 ± 0.2 g".
compare-figure-and-more = { $figure }, { $more } im Vergleich zum ersten
compare-uncertainty = ± ist eine Standardunsicherheit. Bei einem Unterschied hebt sich auf, was die Getränke gemeinsam haben.
# Was gezeigt wird, und die Tabelle der ganzen Karte.
compare-side-by-side = Nebeneinander
compare-whole-menu = Die ganze Karte
compare-difference = Unterschied
compare-not-stated-difference = nicht angegeben
compare-add-menu = Aus der ganzen Karte wählen
compare-menu-find = Getränk oder Zutat suchen
compare-menu-find-named = Auf der Karte suchen
compare-menu-approved = Freigegeben
compare-menu-on-trial = In Erprobung
compare-menu-drafts = Entwürfe
compare-menu-all = Alle
compare-menu-without-any = Ohne ein Allergen…
compare-menu-without = Ohne { $allergens }
compare-menu-without-about = Nur Getränke, deren Packungen alle ihre Allergene angeben.
compare-menu-count = { $shown } von { $all } Getränken
compare-menu-side-by-side = { $count ->
    [0] Nebeneinanderstellen
   *[other] { $count } nebeneinanderstellen
}
compare-menu-side-by-side-hint = Zwei bis vier Getränke ankreuzen, um sie nebeneinander zu lesen
compare-menu-untick = Keines ankreuzen
compare-menu-print = Diese Zahlen drucken…
compare-menu-print-hint = Die Zahlen der Getränkekarte als Blatt
# Where the table has no room for all of its columns: the way to the others.
compare-menu-columns-before = Vorige Spalten
compare-menu-columns-behind = Weitere Spalten
compare-menu-table = die ganze Karte
compare-menu-tick = { $drink } ankreuzen
compare-menu-changed = seither geändert
compare-menu-some-silent = auf manchen Packungen nicht angegeben
compare-menu-no-standard = kein Standard
compare-menu-not-stated = nicht angegeben
compare-menu-off-standard = Schritte Abstand
compare-menu-empty = Das Buch hat noch kein Getränk, das in einem Becher serviert wird. Im Rezept einen Becher wählen.
compare-menu-none-match = Kein Getränk passt. Die Suche ändern oder alle Getränke zeigen.
compare-menu-none-approved = Kein Getränk ist freigegeben, wie es jetzt ist. Alle Getränke zeigen oder eines im Rezept freigeben.
compare-menu-none-of-state = Kein Getränk hat diesen Stand.
compare-menu-show-all = Alle Getränke zeigen
