# The screen that swaps an ingredient: what is replaced, the suggestions, the steps, amounts by hand, every recipe.

swap-screen-title = Swap an ingredient
swap-screen-introduction = Choose an ingredient and its replacement. Evensip shows the plain swap and the amounts that match the standard again. The recipe changes only when you keep a result as a new version.
# How an answer is looked at: buttons side by side.
swap-screen-side-by-side = Side by side
swap-screen-step-by-step = Step by step
swap-screen-by-hand = By hand
swap-screen-everywhere = All recipes that use it
swap-screen-all-drifted = All drinks that have drifted
# In place of a figure.
swap-screen-not-known = not known

# Choosing the two ingredients. "Replace" and "With" are headings of two lists.
swap-screen-replace = Replace
swap-screen-replace-as-well = Replace as well
swap-screen-replace-ingredient = Replace { $ingredient }
swap-screen-with = With
swap-screen-with-ingredient = With { $ingredient }
swap-screen-back = Back to the suggestions
swap-screen-no-lines = This version has no ingredients yet. Add one in Recipe first.
swap-screen-choose-first = First choose the ingredient to replace.
swap-screen-find = Find a replacement
swap-screen-find-hint = type a name, a brand or a role
swap-screen-no-match = No ingredient matches. Add it in Counter first.
swap-screen-change = Change the swap
swap-screen-another = Swap another ingredient too
swap-screen-another-hint = Replace a second ingredient in the same drink, for example to make it vegan
swap-screen-remove-pair = Remove the swap of { $ingredient }
# What is worth knowing of an ingredient before it is chosen. { $amount } is a mass such as "100 g".
swap-screen-sugars-per = { $sugars } of sugar per { $amount }
swap-screen-sugars-per-100-ml = { $sugars } of sugar per 100 ml
swap-screen-sugars-not-stated = sugars not stated
swap-screen-house-made = house-made

# Conditions: the line that sums them up, and the fields.
swap-screen-conditions-show = Show conditions
swap-screen-conditions-hide = Hide conditions
swap-screen-conditions-clear = Clear all conditions
# The whole summary. { $lines } and { $conditions } are lists.
swap-screen-summary = may change: { $lines } · conditions: { $conditions }
swap-screen-summary-no-conditions = may change: { $lines } · no other conditions
swap-screen-summary-no-lines = Conditions: { $conditions }
swap-screen-summary-nothing = No other conditions
# Parts of the list of conditions.
swap-screen-condition-vegan = vegan
swap-screen-condition-without = without { $allergen }
swap-screen-condition-sugar = at most { $most } of sugar per 100 ml
swap-screen-condition-energy = at most { $most }
swap-screen-condition-cost = at most { $most }
swap-screen-condition-fill = at most { $most } of the cup
# { $from } is a number, { $to } a temperature with its unit.
swap-screen-condition-served = served at { $from } to { $to }
swap-screen-condition-lines = { $count ->
    [one] 1 line locked or limited
   *[other] { $count } lines locked or limited
}
# The two check boxes and the fields stand below this heading and go on with it.
swap-screen-must = The drink must
swap-screen-must-vegan = be vegan by its ingredients
swap-screen-must-without = be without
swap-screen-allergens = allergens…
# Names of fields, with a unit behind each.
swap-screen-most-sugar = sugar per 100 ml at most
swap-screen-most-energy = energy at most
swap-screen-most-cost = cost at most
swap-screen-most-fill = cup filled at most
swap-screen-served-least = serving temperature at least
swap-screen-served-most = served no hotter than
# In an empty field: no limit.
swap-screen-any = any
swap-screen-out-of-range = { $found } is out of range: enter { $from } to { $to }

# The table of lines that may change, and between which amounts.
swap-screen-lines-later = The lines appear here when the search is done.
swap-screen-lines = lines that may change
swap-screen-column-ingredient = ingredient
swap-screen-column-may-change = may change
swap-screen-column-now = now
swap-screen-column-least = at least
swap-screen-column-most = at most
swap-screen-column-unit = unit
swap-screen-may-change-hint = When this is off, the amount stays as in the plain swap.
swap-screen-may-add = a house sweetener may be added that the drink does not have
swap-screen-may-leave-out = a sweetener may be left out altogether
# In place of the amount of a line that may be added.
swap-screen-not-in-drink = not in the drink
# The name of a field: the smallest or largest amount of an ingredient.
swap-screen-least-of = Least of { $ingredient }
swap-screen-most-of = Most of { $ingredient }
# { $unit } is "g", "ml" or "spoons".
swap-screen-counted-in = this line is counted in { $unit }

# How far a search is. { $parts } says what its parts are.
swap-screen-searching = Searching.
swap-screen-searching-parts = { $parts ->
    [recipes] Searching: { $done } of { $all } recipes done.
    [menu] Working out: { $done } of { $all } recipes done.
    [levels] Searching: { $done } of { $all } levels done.
    [variations] Searching: { $done } of { $all } variations done.
   *[amounts] Searching: { $done } of { $all } combinations of amounts done.
}
swap-screen-searching-groups = { $count ->
    [one] Searching: 1 group of amounts checked.
   *[other] Searching: { $count } groups of amounts checked.
}
swap-screen-stop = Stop the search
swap-screen-stopped = Search stopped. Start it again to see suggestions.
swap-screen-search-again = Search again

# The drinks that are compared. What the line of the level is, too: "the standard".
swap-screen-standard = Standard
# The drink with a product that has changed, with the amounts that it has.
swap-screen-as-it-is-made = As it is made now
swap-screen-plain-swap = Plain swap
swap-screen-the-standard = the standard
swap-screen-this-version = this version as it is now
swap-screen-standard-and-plain = standard and plain swap
swap-screen-no-line-changes = no line changes
swap-screen-same = the same
# What a screen reader says of a row. { $figure } is "cost: 0.92 €", { $change } "+0.04" or "the same".
swap-screen-figure-and-change = { $figure }, compared with the standard: { $change }

# The table of suggestions.
swap-screen-suggestions = suggestions
swap-screen-column-suggestion = suggestion
swap-screen-column-overall = overall, steps
swap-screen-column-sugar = sugar
swap-screen-column-cost = cost
swap-screen-lines-change = { $count ->
    [0] no line changes
    [one] 1 line changes
   *[other] { $count } lines change
}

# What was found, in sentences. { $reason } is a clause or several.
swap-screen-no-suggestion = No suggestion: { $reason }.
swap-screen-show-more = { $count ->
    [one] Show 1 more
   *[other] Show { $count } more
}
swap-screen-within-scatter = The remaining difference is within the counter’s own scatter: two cups of the same recipe differ as much.
swap-screen-within-scatter-known = As far as it is known, the remaining difference is within the counter’s own scatter.
swap-screen-beyond-scatter-within-step = The remaining difference is more than the counter’s own scatter, but less than a noticeable step on every axis.
swap-screen-beyond-scatter = The remaining difference is more than the counter’s own scatter.
# Two sentences, of which the second says how sure the result is. { $number } is the count as it is shown.
swap-screen-compared-with-approved = Compared with the approved standard.
swap-screen-compared-with-itself = No approval yet: compared with this version as it is now.
swap-screen-proven = { $count ->
    [one] Proven to be the best: there is 1 combination of amounts.
   *[other] Proven to be the best of { $number } combinations of amounts.
}
swap-screen-not-proven = { $count ->
    [one] The best result so far: there is 1 combination of amounts; the search reached its limit before it could prove this.
   *[other] The best result so far among { $number } combinations of amounts; the search reached its limit before it could prove this.
}
# Claims of a drink, and how they differ from those of the standard.
swap-screen-dairy-free = dairy-free, by ingredients
swap-screen-not-dairy-free = not dairy-free
swap-screen-dairy-free-not-known = dairy-free: not known
swap-screen-claim-changes = { $now }; the standard: { $before }
swap-screen-same-claims = Allergens and diet are the same as in the standard

# Keeping a drink as a version. The names are those that it gets until a person types another.
swap-screen-keep = Keep as new version
swap-screen-keep-name = Name of the new version
swap-screen-keep-plain = Keep the plain swap
swap-screen-keep-plain-name = Name of the plain swap
# { $kind } is what the suggestion is best at: "cheapest".
swap-screen-name-with-kind = with { $ingredient }, { $kind }
swap-screen-name-plain = { $ingredient }, equal measures
swap-screen-name-by-hand = with { $ingredient }, by hand

# Step by step. A row is "2. Plain swap, equal measures"; the last is marked as the result.
swap-screen-step-standard = The standard
swap-screen-step-plain = Plain swap, equal measures
swap-screen-step-row = { $number }. { $does }
swap-screen-step-row-result = { $number }. { $does }: the result
swap-screen-step-back = Step back
swap-screen-step-next = Next step
swap-screen-step-keys = or the keys Left and Right
swap-screen-no-mark-moves = No mark moves by as much as can be read.

# Amounts by hand.
swap-screen-sliders = Each slider moves in the increments of its measure. The small line marks the suggestion. The recipe changes only when you keep the result.
swap-screen-sliders-back = Back to the suggestion
swap-screen-slider = Amount of { $ingredient }
swap-screen-with-these = With these amounts
swap-screen-with-these-table = with these amounts
swap-screen-conditions-not-met = This does not meet the conditions: { $reason }.

# Every recipe that uses the ingredient.
# The drink has drifted: nothing is replaced, amounts make up for what has changed.
swap-screen-brings-back = Bring back to the standard: { $ingredient } as it is now
swap-screen-review-none = No recipe uses { $ingredient }.
swap-screen-none-drifted = No approved drink has drifted.
swap-screen-review-drifted = Every approved drink that has drifted, each with what brings it back to its own standard. Conditions on single lines do not apply here. Each selected row becomes a new version. Approved versions stay as they are, and you can undo everything at once.
swap-screen-review = Every recipe and version that uses { $ingredient }, each with the fewest changes that match its own standard. Conditions on single lines do not apply here. Each selected row becomes a new version. Approved versions stay as they are, and you can undo everything at once.
swap-screen-review-table = all recipes that use it
swap-screen-review-add = { $count ->
    [one] Add 1 new version
   *[other] Add { $count } new versions
}
swap-screen-review-added = { $count ->
    [one] Added 1 new version. You can undo this.
   *[other] Added { $count } new versions. You can undo this.
}
swap-screen-review-level = Select the level ones
swap-screen-review-already = already there
swap-screen-review-already-as = already there: { $drink }
swap-screen-review-cost = cost { $more }
swap-screen-review-cost-not-stated = change of cost not stated
swap-screen-review-cost-sum = { $count ->
        [one] cost { $more }
       *[other] cost of one of each of the { $count } drinks { $more }
    }
swap-screen-review-cost-part = { $count ->
        [one] cost of one drink { $more }, not stated for { $missing } more
       *[other] cost of one of each of the { $count } drinks { $more }, not stated for { $missing } more
    }
swap-screen-review-whole = with { $ingredient }: { $level } of { $count } level on every axis
swap-screen-review-with = with { $ingredient }:
swap-screen-review-beside = Compare with another ingredient
swap-screen-review-beside-named = Compare with { $ingredient }
swap-screen-review-instead = Swap with { $ingredient } instead
swap-screen-review-alone = Stop comparing
swap-screen-review-all = Select all
swap-screen-review-none-selected = Select none
# "Hazelthwaite, iced": a recipe and a version of it.
drink-and-version = { $recipe }, { $version }

# Tables that are copied: their columns and what stands in them.
swap-screen-yes = yes
swap-screen-no = no
swap-screen-steps-table = steps
swap-screen-table-drink = drink
swap-screen-table-standard = standard
swap-screen-table-plain-swap = plain swap
swap-screen-table-overall = overall difference, steps
swap-screen-table-cost = change of cost
swap-screen-table-changes = changes
swap-screen-table-step = step
swap-screen-table-does = change
swap-screen-table-moves = what moves
swap-screen-table-amount = amount
swap-screen-table-figure = figure
swap-screen-table-value = value
swap-screen-table-compared = compared with the standard
swap-screen-table-state = state
swap-screen-table-selected = selected
swap-screen-table-result = result
swap-screen-table-no-suggestion = no suggestion: { $reason }
