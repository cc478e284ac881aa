# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = temperature
axis-sweetness-more = sweeter
axis-sweetness-less = less sweet
axis-tea-strength-more = stronger tea
axis-tea-strength-less = weaker tea
axis-creaminess-more = creamier
axis-creaminess-less = less creamy
axis-acidity-more = more acid
axis-acidity-less = less acid
axis-body-more = fuller
axis-body-less = thinner
axis-temperature-more = hotter
axis-temperature-less = cooler
axis-volume-more = larger
axis-volume-less = smaller
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = more { $flavour }
axis-flavour-less = less { $flavour }

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
       *[other] { $change } by { $steps } steps
    }
axis-same = the same
axis-not-known = not known

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = none

# What fills a cup: "to 400 ml".
amount-fill-to = to { $volume }
amount-fill-to-rim = to the rim

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
    [one] scoop
   *[other] scoops
}
amount-uses-pump = { $amount } { $count ->
    [one] press
   *[other] presses
}
amount-uses-spoon = { $amount } { $count ->
    [one] spoon
   *[other] spoons
}
amount-uses-jug = { $amount } { $count ->
    [one] jug
   *[other] jugs
}
amount-uses-ice-scoop = { $amount } { $count ->
    [one] ice scoop
   *[other] ice scoops
}
amount-uses-button = { $amount } { $count ->
    [one] push
   *[other] pushes
}
amount-uses-piece = { $amount } { $count ->
    [one] piece
   *[other] pieces
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = slice, slices, leaf, leaves, pearl, pearls
amount-uses-other = { $amount } { $count ->
    [one] use
   *[other] uses
}
