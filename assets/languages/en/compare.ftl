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
compare-add = Choose above what to set beside this drink: one of its versions, or another drink. Cost, allergens, taste and every other figure then stand side by side, with their differences.
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
compare-cost-and-guests = Cost, sugar and guests
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
# Behind a figure, for a screen reader. $more is "+3.4 ± 0.2 g".
compare-figure-and-more = { $figure }, { $more } compared with the first
compare-uncertainty = ± is one standard uncertainty. In a difference, whatever the drinks share cancels out.
# What is looked at, and the table of the whole menu.
compare-side-by-side = Side by side
compare-whole-menu = The whole menu
compare-difference = difference
compare-not-stated-difference = not stated
compare-add-menu = Choose from the whole menu
compare-menu-find = find a drink or what is in it
compare-menu-find-named = Find on the menu
compare-menu-approved = Approved
compare-menu-on-trial = On trial
compare-menu-drafts = Drafts
compare-menu-all = All
compare-menu-without-any = Without an allergen…
compare-menu-without = Without { $allergens }
compare-menu-without-about = Only drinks whose packs all state their allergens.
compare-menu-count = { $shown } of { $all } drinks
compare-menu-side-by-side = { $count ->
    [0] Set side by side
   *[other] Set { $count } side by side
}
compare-menu-side-by-side-hint = Tick two to four drinks to read them side by side
compare-menu-untick = Untick all
compare-menu-print = Print these figures…
compare-menu-print-hint = The figures of the menu as a card
# Where the table has no room for all of its columns: the way to the others.
compare-menu-columns-before = Columns before
compare-menu-columns-behind = More columns
compare-menu-table = the whole menu
compare-menu-tick = Tick { $drink }
compare-menu-changed = changed since
compare-menu-some-silent = not stated by some packs
compare-menu-no-standard = no standard
compare-menu-not-stated = not stated
compare-menu-off-standard = steps off standard
compare-menu-empty = The book has no drink that is served in a cup yet. Choose a cup in Recipe.
compare-menu-none-match = No drink matches. Change what you look for, or show all drinks.
compare-menu-none-approved = No drink is approved as it stands. Show all drinks, or approve one in Recipe.
compare-menu-none-of-state = No drink is in this state.
compare-menu-show-all = Show all drinks
