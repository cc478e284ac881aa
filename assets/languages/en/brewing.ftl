# How leaf is brewed.
infusion-hot = hot
infusion-cold = cold
infusion-second = second infusion
infusion-reference = reference brew (ISO 3103)
# Where the figures of a method are from.
infusion-source-hot = extraction between 22 % of the leaf in household infusions (Letheby, in Cooley's Cyclopaedia) and 35 % at equilibrium at 1:10 (Long 1977); retention common practice, no source
infusion-source-cold = extraction assumed, lower than hot; retention common practice, no source
infusion-source-second = extraction assumed: most of what a first infusion leaves below 35 % at equilibrium (Long 1977)
infusion-source-reference = ISO 3103:2019: 2 g per 100 ml, boiling water, 6 min for black tea; extraction as for a hot brew
# Why a brew is not possible, as a clause without a full stop.
brew-leaf-takes-all = { $leaf } of leaf keeps back { $retained } of the { $water } of water; use more water or less leaf
brew-too-strong = a strength of { $wanted } per 100 g is more than the { $most } that this method draws at most; choose a weaker tea
brew-not-an-amount = { $what ->
    [water] the water is { $found }; enter an amount above 0
    [leaf] the leaf is { $found }; enter an amount above 0
    [tea] the tea is { $found }; enter an amount above 0
    [strength] the strength is { $found }; enter a number above 0
    [extraction] the extraction is { $found }; enter a number above 0
   *[pot] the pot is { $found }; enter an amount above 0
}
# A time of day on a later day; $time is "03:55".
time-next-day = { $time } the next day
time-days-later = { $days ->
    [one] { $time } { $days } day later
   *[other] { $time } { $days } days later
}
