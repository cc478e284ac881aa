# Planning a brew of tea. A message that ends with "-named" is what a screen reader says of the field.
# Which tea of the book is brewed: a row of names, or a list that is typed into.
serving-teas = Tea
serving-teas-any = any tea
serving-teas-choose = { $count ->
    [one] { $count } tea…
   *[other] One of { $count } teas…
}
serving-teas-hint = type a name or a brand
serving-teas-find = Find a tea
serving-teas-none = No teas match.
# How it is brewed, and which way round it is planned.
serving-brewing-infusion = Infusion
serving-brewing-plan = Plan
serving-brewing-for-tea = from the tea you need
serving-brewing-from-leaf = from the leaf you brew
# Rows: words, a field, its unit. The first four are names of figures, too.
serving-brewing-ready = ready tea
serving-brewing-ready-named = Ready tea
serving-brewing-ready-unit = g or ml
serving-brewing-strength = strength
serving-brewing-strength-named = Strength of the tea
serving-brewing-strength-unit = g tea solids in 100 g
serving-brewing-water = water
serving-brewing-water-named = Water of the brew
serving-brewing-leaf = leaf
serving-brewing-leaf-named = Leaf of the brew
serving-brewing-leaf-unit = g, or ml as it is poured
serving-brewing-pot = a pot holds
serving-brewing-pot-named = Water that a pot holds
serving-brewing-pot-unit = g or ml of water
serving-brewing-pot-hint = one pot
serving-brewing-start = brewing starts at
serving-brewing-start-named = Time when the water is poured on
serving-brewing-start-hint = hh:mm
serving-brewing-minutes = steeps for
serving-brewing-minutes-named = Steeping time in minutes
serving-brewing-holding = keep for
serving-brewing-holding-named = Hours that the tea is kept
serving-brewing-extraction = extracted from the leaf
serving-brewing-extraction-named = Part of the leaf that dissolves
serving-brewing-extraction-unit = % of it
serving-brewing-retention = leaf keeps back
serving-brewing-retention-named = Water kept back per gram of leaf
serving-brewing-retention-unit = g of water per gram of leaf
serving-brewing-caffeine = caffeine of the leaf
serving-brewing-caffeine-named = Caffeine per gram of leaf
serving-brewing-caffeine-unit = mg per gram of leaf
# What is still to be entered.
serving-brewing-unread = One field can’t be read. Correct it to see the result.
serving-brewing-no-amounts = Enter the amounts of water and leaf.
serving-brewing-no-tea = Enter how much tea you need.
serving-brewing-no-strength = Enter how strong the tea should be, or choose a tea of the book.
# What comes of it: names of figures. $reason is a clause.
serving-brewing-not-possible = This brew is not possible: { $reason }.
serving-brewing-table = brewing
serving-brewing-pots = pots
serving-brewing-water-each = water of each pot
serving-brewing-leaf-each = leaf of each pot
serving-brewing-water-all = water of all pots
serving-brewing-leaf-all = leaf of all pots
serving-brewing-retained = kept back by the leaf
serving-brewing-spent = spent leaf left behind
serving-brewing-cost = cost of the leaf
serving-brewing-cost-of-tea = cost of 100 g of tea
serving-brewing-caffeine-not-stated = caffeine of the leaf: not stated
serving-brewing-ready-at = ready at
serving-brewing-use-by = use by
# $ready and $until are times of day, perhaps "03:55 the next day"; $hours and $most are times with their unit.
serving-brewing-no-start = Enter when the water is poured on to see when the tea is ready.
serving-brewing-times = Ready at { $ready }, use by { $until } (kept for { $hours }).
serving-brewing-times-beyond = Ready at { $ready }, use by { $until } (kept for { $hours }). Published guidance keeps brewed tea no longer than { $most }.
serving-brewing-no-holding = Ready at { $ready }. Use by: the book does not state how long the tea keeps; published guidance is no longer than { $most }.
# $time is how long the water stays on the leaf; $source is a clause.
serving-brewing-method = Water at { $temperature }, { $time } on the leaf. Figures: { $source }. One millilitre of tea or water counts as 1 g, one of leaf as { $grams }.
serving-brewing-method-of-house = Water at { $temperature }, { $time } on the leaf. Figures: the batch of this tea. One millilitre of tea or water counts as 1 g, one of leaf as { $grams }.
# Carrying the figures into the book.
serving-brewing-house-made = { $tea } is house-made: its recipe gives these figures.
serving-brewing-dry = { $tea } is dry: the figures of a brew belong to a tea that is ready to drink. Choose that tea, or a leaf.
serving-brewing-begin = Add “{ $tea }” to the book
serving-brewing-begin-does = Adds a house-made tea with this brew as its batch. Strength, caffeine and cost follow from leaf and water; the leaf stays as it is.
serving-brewing-batch = Use this brew as the batch of { $tea }
serving-brewing-batch-does = Changes water and leaf in its recipe, the yield and the steeping time, and with them every drink made with it.
serving-brewing-is-batch = This is the batch of { $tea } in the book.
serving-brewing-no-density = { $tea } states its figures per 100 ml, and no density to convert these.
serving-brewing-use = Use these figures for { $tea }
# $evidence is "measured" or "assumed".
serving-brewing-use-does = Changes every drink made with it: water, tea solids and, where it is known, caffeine of 100 g, entered as { $evidence }.
