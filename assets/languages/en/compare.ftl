# Drinks side by side: which, what sets them apart, and a table with a column for each.
# Choosing them. $drink is "vegan" or "Hob & Ember, vegan".
compare-beside-it = beside it
compare-beside-it-named = Beside it: { $drink }
compare-another = Another drink…
compare-full = You can compare up to four drinks.
compare-find = Find a drink
compare-find-hint = find a drink
compare-none = No drink matches.
compare-more = There are more: type a part of the name
compare-add = Add a version or another drink to compare cost, allergens, taste and every other figure.
# A recipe and a version of it.
compare-drink = { $recipe }, { $version }
# Which table is copied; { $before } may be such a pair again.
compare-table = { $before } beside { $after }
# On the head of a column.
compare-open = Open { $drink }
compare-remove = Remove { $drink }
# What sets a drink apart, as clauses. $more is "+0.12 ± 0.02".
compare-cost = cost { $more } { $currency } a drink
compare-cost-not-known = cost can’t be compared: a price is not stated
# Headings of parts of the table, and names of rows.
compare-cost-and-guests = Cost and guests
compare-figures = Figures
compare-how-made = How it is made
compare-margin = margin
compare-contains = contains
compare-may-contain = may contain
compare-not-stated = allergens not stated by
compare-vegan = vegan, by ingredients
compare-dairy-free = dairy-free, by ingredients
compare-cup = cup
compare-line = line { $number }
# What stands in a cell. $amount is "2 scoops" or "to the rim".
compare-not-known = not known
compare-no-menu-price = no menu price
compare-none-named = none named
compare-amount = { $amount } { $ingredient }
# Below a figure, and behind it for a screen reader. $more is "+3.4 ± 0.2".
compare-with-the-first = { $more } compared with the first
compare-figure-and-more = { $figure }, { $more } compared with the first
compare-uncertainty = ± is one standard uncertainty. In a difference, whatever the drinks share cancels out.
