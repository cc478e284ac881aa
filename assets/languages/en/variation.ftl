# What is said of a drink made in another way: with less sugar, in another cup, iced, hot, or with less ice.

# Whole sentences, which follow each other.
# { $others } says how much of the sugar other ingredients than the sweetener bring.
variation-sugar = { $others ->
    [not-known] { $sugar } of sugar. How much of it comes from other ingredients is not known.
    [no-sugar] { $sugar } of sugar.
    [none] { $sugar } of sugar, all from the sweetener.
    [all] { $sugar } of sugar, which comes from other ingredients and can’t be taken out.
   *[part] { $sugar } of sugar, of which { $floor } come from other ingredients and can’t be taken out.
}
variation-cup = The new cup holds { $ratio } times as much.
variation-fill = The drink is { $volume } and fills { $fill }.
variation-fill-not-known = The drink is { $volume }. How much of the cup it fills is not known.
variation-ice-left = It is served at { $served } with { $ice } of ice left.
variation-ice = { $volume } of drink instead of { $standard } keep the cup as full.
variation-hot = Poured at { $poured }, it is served at { $served }.
variation-taste-iced = Cold dulls sweetness: taste it before you approve it.
variation-taste-hot = Warmth brings out sweetness and bitterness: taste it before you approve it.

# { $compared } says what the drink is compared with: the standard, its hot or iced standard, or what the level or cup asks for.
# { $known } is "part" where a figure that the comparison needs is not known.
variation-within = { $compared ->
    [standard] { $known ->
        [all] Compared with the standard, no difference reaches a noticeable step.
       *[part] Compared with the standard, no known difference reaches a noticeable step.
    }
    [hot] { $known ->
        [all] Compared with the hot standard, no difference reaches a noticeable step.
       *[part] Compared with the hot standard, no known difference reaches a noticeable step.
    }
    [iced] { $known ->
        [all] Compared with the iced standard, no difference reaches a noticeable step.
       *[part] Compared with the iced standard, no known difference reaches a noticeable step.
    }
   *[other] { $known ->
        [all] No difference reaches a noticeable step.
       *[part] No known difference reaches a noticeable step.
    }
}
# { $change } is "sweeter" or "less sweet".
variation-beyond = { $compared ->
    [standard] Compared with the standard, it is still { $change } by { $steps } noticeable steps, the largest difference.
    [hot] Compared with the hot standard, it is still { $change } by { $steps } noticeable steps, the largest difference.
    [iced] Compared with the iced standard, it is still { $change } by { $steps } noticeable steps, the largest difference.
   *[other] It is still { $change } by { $steps } noticeable steps, the largest difference.
}
# { $why } is a clause that begins with "hindrance-".
variation-beyond-because = It is still { $change } by { $steps } noticeable steps, the largest difference: { $why }.

# Why a drink can't be made in another way: clauses without a capital and a stop.
variation-no-cup = the recipe has no cup: choose one first
variation-already-iced = it is iced already: choose an ice level instead
variation-no-ice-in-book = the book has no ice: add it to the ingredients first
variation-no-ice = it has no ice
variation-ice-fills = its ice fills the cup to the rim: enter an amount of ice first
variation-nothing-poured-hot = nothing in it is poured hot: add water or tea first
# Whole measures do not come near a level. { $steps } is a list of the smallest amounts: "Tambrel pear syrup by 1 press".
variation-not-in-whole-measures = whole measures can’t reach it: one step changes { $steps }
variation-step = { $ingredient } by { $amount }

# Why a drink has no sugar levels: clauses without a capital and a stop.
levels-sweetness-not-known = the sweetness is not known: enter the sugars (and their kind) from the label of { $ingredients }
levels-no-sweetener = there is no sweetener to reduce: all { $sugar } of sugar come from other ingredients
levels-not-in-steps = { $count ->
    [one] { $ingredients } can’t be reduced step by step: enter its amount in grams, millilitres or a measure of the shop
   *[other] { $ingredients } can’t be reduced step by step: enter their amounts in grams, millilitres or a measure of the shop
}

# What comes near a level that whole measures miss, in place of them.
level-by-part = with half a measure of { $ingredient }
level-by-measure = with { $ingredient } measured by { $measure }
level-by-scale = with { $ingredient } weighed on the scale
level-by-sweetener = with { $ingredient } added
# A sentence. { $means } is one of the clauses above, { $moves } a list of changed lines.
level-offer = { $level } { $means }: { $moves }; { $sugar } of sugar.
