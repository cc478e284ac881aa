# The editor of an ingredient in Counter. Labels and options begin small; headings, buttons and the names that a screen reader says begin with a capital.

ingredient-duplicate = Duplicate as another brand
ingredient-not-stated = not stated
ingredient-not-known = not known
ingredient-name = Name

# What it is: labels before fields. Room for about 18 letters.
ingredient-brand = brand
ingredient-supplier = supplier
ingredient-lot = lot in use
ingredient-form = form
ingredient-role = used as
ingredient-temperature = temperature
ingredient-opened = keeps after opening
ingredient-hours = hours
ingredient-density = density
ingredient-poured-density = poured density
ingredient-sold = availability
ingredient-still-sold = sold
ingredient-no-longer-sold = no longer sold
ingredient-swap-everywhere = Swap it in every recipe
ingredient-swap-everywhere-hint = Look through every recipe that uses it, with a swap for each, before anything changes
ingredient-note = note

# The same fields as a screen reader names them, where that is more than the label.
ingredient-lot-named = Lot
ingredient-role-named = Usual role
ingredient-opened-named = Opened life in hours
ingredient-poured-density-named = Poured bulk density

# Bought, or made by a recipe of the book: the label, the choice of what is bought, and the link to the recipe.
ingredient-source = comes from
ingredient-bought = a supplier
ingredient-new-batch = a new batch made here
ingredient-brewed-from = a new brew of { $leaf }
ingredient-see-recipe = see it
# Under what an ingredient comes from, when its label overrules what the recipe gives.
ingredient-label-before-batch = Figures are stated under “The label as printed”: they are used instead of those of the batch.
# A link below it: removes the stated figures.
ingredient-by-its-batch = use the figures of the batch
# A brew: amounts of its recipe, the steeping time in minutes, and what comes of it.
ingredient-brew-water = water
ingredient-brew-water-named = Water of the brew
ingredient-brew-leaf = leaf
ingredient-brew-leaf-named = Leaf of the brew
ingredient-steeps = steeps for
ingredient-steeps-named = Steeping time in minutes
ingredient-minutes = minutes
ingredient-brewed = Gives { $strength } of tea solids per 100 g and leaves { $spent } of spent leaf behind. 100 g cost { $cost }.
ingredient-brewed-at-least = Gives { $strength } of tea solids per 100 g and leaves { $spent } of spent leaf behind. 100 g cost at least { $cost }: a price is missing.
# What one slice, leaf or pearl weighs. $count weighings stand behind a mean.
ingredient-piece = one piece weighs
ingredient-piece-named = Weight of one piece
ingredient-piece-readings = the mean of { $count } readings
# What is begun in the house: the name of a tea that is brewed of a leaf, and of the water for a book that has none.
house-made-brewed-name = { $leaf }, brewed
house-made-water = Water
# A house-made ingredient. "hours, waste" stands between two fields: "keeps [24] hours, waste [5] %".
ingredient-yield = a batch yields
ingredient-yield-named = Yield of a batch
# The part of the steeped leaf that dissolves, in percent.
ingredient-extraction = steeped leaf gives
ingredient-extraction-named = Part of the steeped leaf that dissolves
ingredient-keeps = keeps
ingredient-keeps-named = Shelf life in hours
ingredient-hours-waste = hours, waste
ingredient-waste-of-batch-named = Waste of a batch

# What the pack says.
ingredient-statement = ingredients
ingredient-statement-named = Ingredient list
ingredient-statement-hint = as printed on the pack
ingredient-vegan = vegan
ingredient-dairy-free = dairy-free
ingredient-allergens = Allergens
# Whether the pack states its allergens.
ingredient-allergens-stated = the pack states them
ingredient-allergens-silent = the pack says nothing
ingredient-allergens-none = contains none of the fourteen
# Heads of two narrow columns of boxes: "contains" and "may contain". Room for about 7 letters.
ingredient-allergen-has = has
ingredient-allergen-may = may
# Of an allergen that is not among the fourteen.
ingredient-declared-contains = contains it
ingredient-declared-may-contain = may contain it
ingredient-declared-free = free of it
ingredient-declared-not-stated = not stated

# The label as it is printed.
ingredient-label = The label as printed
ingredient-sodium = sodium
# The name of a field: $figure is a word of the label such as "fat".
ingredient-label-figure = label: { $figure }
# A figure of a label that is per something else, converted.
ingredient-per-100-grams = { $figure } per 100 g
# Two rows of words and choices: "per [serving] of [16] g energy in [kJ]" and "salt as [salt] carbohydrate [without fibre]".
ingredient-basis = per
ingredient-basis-grams = 100 g
ingredient-basis-millilitres = 100 ml
ingredient-basis-serving = serving
ingredient-serving-of = of
ingredient-energy-in = energy in
ingredient-salt-as = salt as
ingredient-salt-as-salt = salt
ingredient-carbohydrate = carbohydrate
ingredient-without-fibre = without fibre
ingredient-with-fibre = with fibre in it
# The same as a screen reader names them: the choice follows a colon.
ingredient-basis-named = Figures are per
ingredient-serving-named = Grams of a serving
ingredient-energy-in-named = Energy is printed in
ingredient-salt-as-named = Salt is printed as
ingredient-carbohydrate-named = Carbohydrate is printed
# Why the size of a serving is not taken.
ingredient-serving-needs-density = a serving in ml needs a density: weigh 100 ml and enter the density
ingredient-serving-out-of-range = “{ $found }” is out of range: enter more than 0 g
# The table of the label for a spreadsheet: what it is called, and its heads.
ingredient-label-table = label
ingredient-head-figure = figure
ingredient-head-unit = unit
ingredient-head-per-100-grams = per 100 g
ingredient-head-per-100-millilitres = per 100 ml
ingredient-head-per-serving = per { $grams } g
ingredient-head-evidence = evidence

# Sweetness and flavour.
ingredient-sweetness = Sweetness and flavour
ingredient-free-sugars = free sugars
ingredient-free-sugars-named = Free part of the sugars
ingredient-free-sugars-hint = of the sugars: 1 for syrup and juice, 0 for milk
# Which sugars they are.
ingredient-profile = the sugars are
ingredient-profile-named = Sugar profile
ingredient-profile-sucrose = table sugar
ingredient-profile-invert = invert sugar
ingredient-profile-hfcs-42 = HFCS-42
ingredient-profile-hfcs-55 = HFCS-55
ingredient-profile-fructose = fructose
ingredient-profile-glucose = dextrose
ingredient-profile-lactose = milk sugar
ingredient-profile-honey = honey
ingredient-profile-glucose-syrup = glucose syrup
ingredient-profile-own = own fractions
ingredient-dextrose-equivalent = dextrose equivalent
ingredient-other-sugar = other sugar
ingredient-fraction = Fraction of { $sugar }
# What it tastes of: the label, the name of the field, and what stands in it while it is empty.
ingredient-tastes-of = tastes of
ingredient-flavour-named = Flavour
ingredient-flavour-hint = chestnut
ingredient-flavour-strength = Strength of { $flavour }
# The unit of the strength, in a narrow column.
ingredient-per-gram = per gram
ingredient-add-flavour = Add a flavour
ingredient-remove = Remove { $item }
ingredient-remove-flavour = Remove this flavour
# What somebody says who has tasted it beside the standard.
ingredient-bench-note = Bench note
ingredient-bench-not-tasted = not tasted
ingredient-bench-assumed = not tasted: assumed equal per gram, ± 25 %
ingredient-bench-much-weaker = much weaker
ingredient-bench-weaker = weaker
ingredient-bench-equal = as strong as the standard
ingredient-bench-stronger = stronger
ingredient-bench-much-stronger = much stronger
# $note is one of the four above that are not equal, $strength a number with the standard as 1.
ingredient-bench-about = { $note }, about { $strength }
# Intense sweeteners.
ingredient-sweeteners = sweeteners
ingredient-sweetener-named = High-potency sweetener
ingredient-add-sweetener = Add a high-potency sweetener
ingredient-sweetener-milligrams = Milligrams of { $sweetener }
ingredient-sucralose = sucralose
ingredient-aspartame = aspartame
ingredient-acesulfame-k = acesulfame K
ingredient-rebaudioside-a = rebaudioside A
ingredient-stevioside = stevioside
ingredient-saccharin = saccharin

# The price.
ingredient-price = pack price
ingredient-price-named = Price of a pack
ingredient-price-hint = such as 11.40 for 1 kg
# A price as it is typed and shown. The words between the two are read back: keep both, and a word or sign between them.
ingredient-price-for = { $price } for { $content }
ingredient-price-usable = { $price } { $currency } per usable { $unit }
ingredient-price-usable-wasted = { $price } { $currency } per usable { $unit }: { $percent } % is wasted
# Stands where the waste and the day of a price will be.
ingredient-no-price-yet = after the price
ingredient-waste = waste
ingredient-waste-named = Waste in percent
# Stands behind the waste and before the day: "waste [3] %, priced on [2026-05-04]".
ingredient-priced-on = %, priced on
ingredient-price-day-named = Day of the price
ingredient-no-day = no day
# Why a price is not taken. Errors begin with a small letter and end without a full stop.
ingredient-price-not-read = “{ $found }” is not a price: enter, for example, 11.40 for 1 kg
ingredient-price-without-unit = “{ $found }” has no unit: enter, for example, 1 kg, 750 ml, 2.5 lb or 12 × 1 kg
ingredient-pack-not-read = “{ $found }” is not what a pack holds: enter, for example, 1 kg, 750 ml, 2.5 lb or 12 × 1 kg
ingredient-price-of-nothing = a pack of “{ $found }” holds nothing: enter more than 0 g

# What it cost before. $currency is a sign or a code, or empty.
ingredient-prices = prices so far
ingredient-prices-per-pack = { $currency } per pack
ingredient-prices-per-kilogram = { $currency } per kg
ingredient-prices-per-litre = { $currency } per l
ingredient-prices-change = change
ingredient-prices-same = the same
ingredient-prices-from = from
# There are at least seven.
ingredient-prices-all = Show all { $count } prices
ingredient-price-remove = Remove the price of { $day }
ingredient-price-remove-no-day = Remove the price without a day
# The table of the prices for a spreadsheet: what it is called, and its heads.
ingredient-prices-table = prices
ingredient-head-day = day
ingredient-head-pack = price of a pack
ingredient-head-content = content
ingredient-head-per-kilogram = price per kg
ingredient-head-per-litre = price per l

# Beside the fields.
ingredient-check = Check these figures
ingredient-missing = Missing
ingredient-one-use = Weight per use
ingredient-no-readings = No measure has readings for this ingredient. Open a measure to add some.
ingredient-used-in = Used in
# The table of what one use weighs: what it is called, and its heads.
ingredient-one-use-table = one use weighs
ingredient-head-measure = measure
ingredient-head-one-use = one use

# What nobody has stated, each with what would close the gap.
ingredient-missing-sugars = sugars: not stated — read the label
ingredient-missing-fat = fat: not stated — read the label
ingredient-missing-saturates = saturates: not stated — read the label
ingredient-missing-carbohydrate = carbohydrate: not stated — read the label
ingredient-missing-protein = protein: not stated — read the label
ingredient-missing-salt = salt: not stated — read the label
ingredient-missing-polyols = polyols: not stated — the pack names one, so ask the maker for the amount
ingredient-missing-statement = polyols: not known — enter the ingredient list, which names any
ingredient-missing-polyol = which polyol it is: not stated — read the ingredient list
ingredient-missing-fibre = fibre: not stated — read the label
ingredient-missing-acid = acid: not stated — the pack or the name suggests some, so ask the maker
ingredient-missing-tea-solids = tea solids: not stated — measure the soluble solids, or ask the maker
ingredient-missing-insoluble = insoluble solids: not stated — ask the maker
ingredient-missing-energy = energy: not stated — read the label
ingredient-missing-sweetener = intense sweetener: the pack names one without an amount — ask the maker
ingredient-missing-pack-density = cost: the pack is sold by volume — weigh a measured volume of it
ingredient-missing-caffeine = caffeine: not stated — ask the maker, or enter 0 if it can’t contain any
ingredient-missing-water = water: not known while a solid is not stated
ingredient-missing-free-sugars = free sugars: not stated — enter which part of the sugars is added
ingredient-missing-profile = which sugars they are: not stated — sweetness needs it
ingredient-missing-price = price: not stated — the cost of its drinks is not known
ingredient-missing-poured-density = poured density: not stated — weigh a level measure of it
ingredient-missing-density = density: not stated — the label is per 100 ml, so weigh 100 ml of it
ingredient-missing-allergens = allergens: not stated — no drink with it can be called free of an allergen
ingredient-missing-vegan = vegan: not stated

## What tastings show of it

ingredient-tasted = From tastings
ingredient-tasted-take = Take this over
ingredient-tasted-take-hint = The cups that were tasted did not change: what was approved with this ingredient follows.
# $times is a factor with its uncertainty: "1.08 ± 0.06".
ingredient-tasted-taken = Taken over on { $date }: { $what } { $times } times what is stated.
ingredient-tasted-taken-by = Taken over on { $date } by { $by }: { $what } { $times } times what is stated.
ingredient-tasted-give-up = Give it up, so that what is stated holds again
ingredient-tasted-more = { $count ->
    [one] and 1 more drink
   *[other] and { $count } more drinks
}
