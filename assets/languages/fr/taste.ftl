# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = température
axis-sweetness-more = plus sucré
axis-sweetness-less = moins sucré
axis-tea-strength-more = thé plus fort
axis-tea-strength-less = thé moins fort
axis-creaminess-more = plus onctueux
axis-creaminess-less = moins onctueux
axis-acidity-more = plus acide
axis-acidity-less = moins acide
axis-body-more = plus de corps
axis-body-less = moins de corps
axis-temperature-more = plus chaud
axis-temperature-less = plus froid
axis-volume-more = plus grand
axis-volume-less = plus petit
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = plus de { $flavour }
axis-flavour-less = moins de { $flavour }

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
        [one] { $change } de { $steps } cran
       *[other] { $change } de { $steps } crans
    }
axis-same = identique
axis-not-known = non connu

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = sans

# What fills a cup: "to 400 ml".
amount-fill-to = jusqu’à { $volume }
amount-fill-to-rim = à ras bord

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
    [one] mesurette
   *[other] mesurettes
}
amount-uses-pump = { $amount } { $count ->
    [one] coup de pompe
   *[other] coups de pompe
}
amount-uses-spoon = { $amount } { $count ->
    [one] cuillère
   *[other] cuillères
}
amount-uses-jug = { $amount } { $count ->
    [one] pichet
   *[other] pichets
}
amount-uses-ice-scoop = { $amount } { $count ->
    [one] pelle à glaçons
   *[other] pelles à glaçons
}
amount-uses-button = { $amount } { $count ->
    [one] appui
   *[other] appuis
}
amount-uses-piece = { $amount } { $count ->
    [one] pièce
   *[other] pièces
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = tranche, tranches, feuille, feuilles, perle, perles
amount-uses-other = { $amount } { $count ->
    [one] unité
   *[other] unités
}
