# The screen with the variations of a drink: its sugar ladder, other cups, hot or iced, less ice.

# Below the name of the drink: "original · compared with the standard of 2026-05-04".
variations-compared-with-standard = { $version } · compared with the standard of { $day }
variations-compared-with-itself = { $version } · no approval yet: compared with this version itself
# In place of a figure.
variations-not-known = not known

# Keeping a drink as a version. { $name } is a sugar level or a variation.
variations-keep = Keep
variations-keep-as-version = Keep { $name } as a new version
variations-nothing-changes = nothing changes
variations-no-amount-changes = no amount changes
# { $reason } is a clause without a capital and a stop.
variations-not-possible = Can’t be made: { $reason }.
variations-not-possible-cell = can’t be made: { $reason }

# The sugar ladder.
variations-ladder = Sugar ladder
variations-no-levels = No levels: { $reason }.
variations-sugar-not-known = The sugar is not known: a label does not state it.
variations-all-from-sweetener = All the sugar comes from the sweetener, so it can be left out completely.
# { $carriers } is a list such as "Tambrel chestnut powder 10.2 g".
variations-floor = { $floor } of its { $sugar } of sugar can’t be taken out, because other ingredients bring it: { $carriers }. A sugar level changes only what the sweetener adds.
# What the two colours of a bar are.
variations-legend-floor = can’t be taken out
variations-legend-sweetener = added by the sweetener
# Beside a bar, and what it says to a screen reader and under the pointer.
variations-bar = { $sugar } sugar
variations-bar-words = { $sugar } of sugar, of which { $floor } can’t be taken out
variations-bar-not-known = sugar not known
# What the line of the level of a row is.
variations-level-target = the target of this level
# { $sweetness } is a number or "not known", { $target } a number, { $compared } how the taste differs.
variations-level-words = sweetness { $sweetness }, target { $target } g/100 ml; { $compared }
# The name of a new version with a sugar level.
variations-level-version = { $level } sugar
# Words, with a comma between, by which the name of a level says already that it is one of sugar. Shops name levels in
# English, too: keep the English words in every language.
variations-level-says-sugar = sugar, sweet

# Other cups, hot or iced, less ice.
variations-sizes = Sizes and ice
variations-in-another-cup = In another cup
variations-with-less-ice = With less ice
variations-iced-instead = Iced instead of hot
variations-hot-instead = Hot instead of iced
# What the line of the level of a row is.
variations-size-target = the standard, in this size
# Names of variations. { $volume } is what the cup holds to its rim.
variations-cup = { $cup }, { $volume }
variations-iced-cup = iced, { $cup }
variations-hot-cup = hot, { $cup }
# The levels of ice of a shop that names none.
variations-less-ice = less ice
variations-little-ice = little ice
variations-no-ice = no ice
variations-ice-level = { $level }, { $percent } of the ice
# Names of new versions.
variations-iced = iced
variations-hot = hot

# Every level in every size with every amount of ice.
variations-matrix = Levels, sizes and ice in one table
variations-matrix-show = Show the table of levels, sizes and ice
variations-matrix-hide = Hide the table of levels, sizes and ice
variations-matrix-what = Sugar of the drink at each level. Tick what you want to keep. A level that whole measures can’t reach is not ticked for you.
variations-matrix-keep = { $count ->
    [0] Keep what is chosen
    [one] Keep 1 version
   *[other] Keep { $count } versions
}
variations-matrix-print = Print the table
variations-matrix-table = levels, sizes and ice
# { $variation } is a size with an amount of ice.
variations-matrix-choose = Choose { $variation }, { $level }: { $sugar }
variations-matrix-version = { $variation }, { $level }
# Behind a figure that whole measures do not give.
variations-matrix-by-other-means = { $sugar } *
# { $means } is a clause such as “with half a measure of Tambrel pear syrup”.
variations-keep-by-means = Keep { $name } { $means } as a new version
variations-offer = { $means }: { $amounts }

# The names of the levels.
variations-names = Names of the sugar and ice levels
variations-names-show = Show the names of the levels
variations-names-hide = Hide the names of the levels
# { $kind } is "sugar" or "ice" in all that follows; { $number } counts from 1.
variations-names-of = { $kind ->
    [sugar] Sugar levels
   *[ice] Ice levels
}
variations-level-name = { $kind ->
    [sugar] Name of sugar level { $number }
   *[ice] Name of ice level { $number }
}
variations-level-percent = { $kind ->
    [sugar] Percent of sugar level { $number }
   *[ice] Percent of ice level { $number }
}
variations-level-remove = { $kind ->
    [sugar] Remove sugar level { $number }
   *[ice] Remove ice level { $number }
}
variations-level-add = { $kind ->
    [sugar] Add a sugar level
   *[ice] Add an ice level
}
# The name of a new level, until a person types another.
variations-new-level = level { $number }
variations-level-without-name = a level needs a name
variations-percent-out-of-range = “{ $found }” is out of range: enter 0 to { $most }

# Tables that are copied: what they are, and their columns.
variations-ladder-table = sugar levels
variations-sizes-table = sizes and ice
variations-column-level = level
variations-column-sugar = sugar, g
variations-column-floor = of which can’t be taken out, g
variations-column-sweetness = sweetness, g/100 ml
variations-column-target = target, g/100 ml
variations-column-amounts = amounts
variations-column-taste-target = taste compared with the target
variations-column-variation = variation
variations-column-taste-standard = taste compared with the standard
variations-column-remark = remark
