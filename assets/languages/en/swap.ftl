# What is said of a swap: what a suggestion does, and why nothing, or not enough, can be suggested.

# What a suggestion is best at.
suggestion-fewest-changes = fewest changes
suggestion-closest-taste = closest taste
suggestion-cheapest = cheapest
suggestion-least-sugar = least sugar

# The name of a new version, until a person gives it another.
# Name of a new version that makes up for a product that has changed.
swap-version-brought-back = brought back
swap-version-name = with { $ingredient }

# Whole sentences, which follow each other.
# The same product, as it is now; the arguments are those of the next message.
swap-as-it-is-made = As it is made now, the drink has { $swap } of sugar instead of { $standard }; { $ingredient } has changed.
swap-equal-measures = By equal measures, { $ingredient } gives { $swap } of sugar instead of { $standard }.
swap-at-least = at least { $amount }
# { $moves } is a list of changed lines; { $changed } says whether there are any.
swap-result-level = { $changed ->
    [nothing] Left as it is, it is level with the standard on every axis.
   *[lines] With { $moves }, it is level with the standard on every axis.
}
swap-result-beyond = { $changed ->
    [nothing] Left as it is, the drink is still { $change } by { $steps } noticeable steps, the largest difference.
   *[lines] With { $moves }, the drink is still { $change } by { $steps } noticeable steps, the largest difference.
}
swap-result-within = { $changed ->
    [nothing] Left as it is, no difference reaches a noticeable step; at most, the drink is { $change } by { $steps } of a step.
   *[lines] With { $moves }, no difference reaches a noticeable step; at most, the drink is { $change } by { $steps } of a step.
}
swap-result-within-known = { $changed ->
    [nothing] Left as it is, no known difference reaches a noticeable step; at most, the drink is { $change } by { $steps } of a step.
   *[lines] With { $moves }, no known difference reaches a noticeable step; at most, the drink is { $change } by { $steps } of a step.
}
swap-result-not-compared = { $changed ->
    [nothing] Left as it is, it can’t be compared.
   *[lines] With { $moves }, it can’t be compared.
}
swap-axes-not-known = Not known: { $axes }.
swap-gain-cost = { $change ->
    [less] It costs { $amount } less than the standard.
   *[more] It costs { $amount } more than the standard.
}
swap-gain-cheapest = It costs the least that is possible.
swap-gain-sugar = It has { $sugar } of sugar.

# Why nothing, or not enough, can be suggested: clauses without a capital and a stop.
swap-not-in-version = { $ingredient } is not in this version: choose an ingredient that is
swap-sweetness-not-known = { $drink ->
    [standard] the sweetness of the standard is not known: enter the sugars (and their kind) from the label of { $ingredients }, or measure its °Brix
   *[swap] the sweetness of the swap is not known: enter the sugars (and their kind) from the label of { $ingredients }, or measure its °Brix
}
swap-not-vegan = { $known ->
    [yes] { $count ->
        [one] { $ingredients } is not vegan: replace it in the same swap
       *[other] { $ingredients } are not vegan: replace them in the same swap
    }
   *[no] { $count ->
        [one] { $ingredients } is not known to be vegan: replace it in the same swap
       *[other] { $ingredients } are not known to be vegan: replace them in the same swap
    }
}
swap-contains = { $count ->
    [one] { $ingredients } contains { $allergen }: replace it in the same swap
   *[other] { $ingredients } contain { $allergen }: replace them in the same swap
}
swap-allergens-not-stated = { $count ->
    [one] { $ingredients } does not state whether it contains { $allergens }: ask the maker
   *[other] { $ingredients } do not state whether they contain { $allergens }: ask the makers
}
swap-may-contain = { $ingredients } may contain { $allergen } by the pack: tell the guest
# { $why } is a clause that begins with "hindrance-".
swap-not-reached = { $axis } can’t be matched: still { $change } by { $steps } noticeable steps with the best amounts of the lines that may change; { $why }
swap-kept-to = { $count ->
    [one] the search kept to { $limits }; without that limit a closer match may exist
   *[other] the search kept to { $limits }; without these limits a closer match may exist
}
swap-not-compared = not compared, because { $ingredient } or another ingredient does not state it: { $axes }

# Limits that a search keeps to, in a list.
swap-limit-sugar = at most { $most } of sugar per 100 ml
swap-limit-energy = at most { $most }
swap-limit-cost = at most { $most }
swap-limit-temperature = a serving window of { $from } to { $to }
swap-limit-cup = the room of the cup

# Conditions that no amounts keep: clauses without a capital and a stop.
swap-all-conditions = no amounts fit the cup, the serving window and every condition at once: relax a condition or let more lines change
swap-least-overfills = the cup is too small: even with the smallest amounts it is { $fill } full, and { $room } is the limit
swap-overfills = the cup is too small: it is { $fill } full, and { $room } is the limit
swap-fill-out-of-reach = no amount of the line that fills the cup reaches its mark
swap-outside-window = it would be served at { $temperature }, outside the serving window of { $from } to { $to }: change the water, the tea or the window
swap-ice-melts = only { $left } of ice would be left, and the shop leaves { $wanted } in this cup: use less hot liquid, or change how much ice the shop leaves
# { $alone } says whether it is known which ingredient brings the most.
swap-over-sugar = { $alone ->
    [known] a limit of { $most } of sugar per 100 ml can’t be met: without it, the closest taste has { $found }; { $ingredient } alone brings { $share }
   *[not-known] a limit of { $most } of sugar per 100 ml can’t be met: without it, the closest taste has { $found }
}
swap-over-energy = { $alone ->
    [known] a limit of { $most } can’t be met: without it, the closest taste has { $found }; { $ingredient } alone brings { $share }
   *[not-known] a limit of { $most } can’t be met: without it, the closest taste has { $found }
}
swap-over-cost = { $alone ->
    [known] a limit of { $most } can’t be met: without it, the closest taste costs { $found }; { $ingredient } alone costs { $share }
   *[not-known] a limit of { $most } can’t be met: without it, the closest taste costs { $found }
}
swap-undissolved = { $hot } of hot water can’t dissolve { $powder } of powder: each gram of powder needs { $needed }

# Limits whose figure is not known: clauses without a capital and a stop. { $count } is how many ingredients state nothing.
swap-sugar-not-known = { $count ->
    [0] whether it has at most { $most } of sugar per 100 ml is not known
    [one] whether it has at most { $most } of sugar per 100 ml is not known: { $ingredients } does not state its sugars
   *[other] whether it has at most { $most } of sugar per 100 ml is not known: { $ingredients } do not state their sugars
}
swap-energy-not-known = { $count ->
    [0] whether it has at most { $most } is not known
    [one] whether it has at most { $most } is not known: { $ingredients } does not state its energy
   *[other] whether it has at most { $most } is not known: { $ingredients } do not state their energy
}
swap-cost-not-known = { $count ->
    [0] whether it costs at most { $most } is not known: the cup or what goes with it has no price
   *[other] whether it costs at most { $most } is not known: there is no price for { $ingredients }
}
swap-temperature-not-known = { $count ->
    [0] whether it is served at { $from } to { $to } is not known
   *[other] whether it is served at { $from } to { $to } is not known: the weight of { $ingredients } is not known
}
swap-fill-not-known = { $count ->
    [0] whether it fits the cup is not known
   *[other] whether it fits the cup is not known: the weight of { $ingredients } is not known
}

# What stands in the way of an axis of taste: clauses without a capital and a stop.
hindrance-at-most = { $ingredient } is at its maximum, { $amount }
hindrance-at-least = { $ingredient } is at its minimum, { $amount }
# { $change } is "more" or "less" of the ingredient, { $what } the condition that it breaks.
hindrance-forbidden = { $change ->
    [more] { $what ->
        [fill] more { $ingredient } would leave no room for what fills the cup
        [cup] more { $ingredient } would not fit the cup
        [temperature] with more { $ingredient }, it would be served outside the serving window
        [ice] more { $ingredient } would leave too little ice
        [sugar] with more { $ingredient }, it would have more sugar than is allowed
        [energy] with more { $ingredient }, it would have more energy than is allowed
        [cost] with more { $ingredient }, it would cost more than is allowed
       *[powder] with more { $ingredient }, some powder would not dissolve
    }
   *[less] { $what ->
        [fill] less { $ingredient } would leave no room for what fills the cup
        [cup] less { $ingredient } would not fit the cup
        [temperature] with less { $ingredient }, it would be served outside the serving window
        [ice] less { $ingredient } would leave too little ice
        [sugar] with less { $ingredient }, it would have more sugar than is allowed
        [energy] with less { $ingredient }, it would have more energy than is allowed
        [cost] with less { $ingredient }, it would cost more than is allowed
       *[powder] with less { $ingredient }, some powder would not dissolve
    }
}
hindrance-pushes-others = { $change ->
    [more] more { $ingredient } would push { $axes } further off
   *[less] less { $ingredient } would push { $axes } further off
}
hindrance-too-coarse = { $ingredient } can’t be measured in smaller amounts than { $amount }
hindrance-brings-sugar = { $ingredient } alone brings { $amount } of sugar
hindrance-no-line = no line that may change has an effect on it
