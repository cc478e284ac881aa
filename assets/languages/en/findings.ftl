# What is wrong with a book. Findings begin with a small letter and end without a full stop: whoever shows them adds both.

## Places. The words between backticks are ids as the file has them, and fields are called as in the file.

place-settings = settings
place-ingredient = ingredient `{ $id }`, { $field ->
        [bulk_density] bulk density
       *[other] { $field }
    }
place-measure = measure `{ $id }`, { $field }
place-vessel = vessel `{ $id }`, { $field }
place-recipe = recipe `{ $id }`, { $field }
place-line = recipe `{ $recipe }`, line `{ $line }`
place-line-of-version = recipe `{ $recipe }`, version `{ $version }`, line `{ $line }`
place-version = recipe `{ $recipe }`, version `{ $version }`
place-approval = recipe `{ $recipe }`, approval { $number }
place-tasting = tasting `{ $id }`, { $field }
# The same by the names of things, as the window shows it.
place-named = { $kind ->
    [ingredient] ingredient { $name }
    [measure] measure { $name }
    [vessel] vessel { $name }
    [tasting] { $name }
   *[recipe] recipe { $name }
}
place-named-line = { $ingredient }, in { $drink }
place-named-approval = { $recipe }, approval { $number }

## Findings

# $kind is ingredient, measure, vessel, recipe, version or tasting.
finding-dangling = the { $kind } `{ $id }` does not exist; add it or choose another
# $nearest lists ids that look like the one that is missing.
finding-dangling-near = the { $kind } `{ $id }` does not exist; did you mean { $nearest }?
finding-duplicate-in-recipe = the id `{ $id }` is used twice in this recipe; give one of the two another id
finding-version-cycle = versions build on each other in a loop: { $chain }; base one of them on the original recipe
finding-house-made-cycle = house-made ingredients need each other in a loop: { $chain }; remove one of them from the recipe of another
# The middle of a long chain of ids.
finding-chain-left-out = … ({ $count } more)
finding-change-without-target = a change of { $field } belongs to a line that no longer exists; delete the change or restore the line
# $what is one of the names of figures below.
finding-out-of-range = { $what } is { $value }; it must be { $least } to { $most }
finding-empty-reading = a reading is 0 g; enter what the scale shows
finding-sugar-fractions = the sugar fractions add up to { $sum }; they must add up to 1
finding-window-reversed = { $what } is { $from } to { $to }; enter the cooler end first
finding-no-step = the noticeable step of { $axis } is 0; enter a fraction or a floor above 0
finding-more-right-than-people = { $right } of { $people } people were right; check both numbers
finding-not-two-cups = two cups are compared, but { $count ->
        [0] there is none
        [one] there is 1
       *[other] there are { $count }
    }; enter the cup that came first and the one that was held against it
finding-no-such-cup = a note is about cup { $cup }, but { $count ->
        [0] there is no cup
        [one] there is 1 cup
       *[other] there are { $count } cups
    }; enter the number of the cup
finding-yield-over-input = the yield is { $grams }, more than goes into a batch; check the recipe and the yield
finding-yield-under-solids = the yield is { $grams }, less than the solids that go into a batch; check the recipe and the yield
finding-sum-over-whole = { $parts } add up to { $sum } in { $whole }; check the figures and what they are per
# $part and $whole are nutrients, as in "75 g of sugars".
finding-part-over-whole = { $part_value } of { $part } are more than the { $whole_value } of { $whole } that they are part of; check the label
finding-readings-disagree = readings of the same ingredient range from { $least } to { $most } per use; one of them may be a slip, so weigh again
finding-never-calibrated = there are no readings yet; weigh ten uses together, three times
finding-too-many-flavours = the drink has { $count } flavours; only the first { $limit } are compared
finding-too-many-sweeteners = the drink has { $count } high-potency sweeteners; only the first { $limit } are compared
finding-several-fill-amounts = more than one line fills up; only one amount can be left open, so enter the others
finding-no-mass-of-use = the weight of one { $measure } of { $ingredient } is not known; weigh ten together
finding-no-mass-of-volume = the weight of a millilitre of { $ingredient } is not known; enter its density
finding-hidden-characters = the name contains invisible characters: “{ $shown }”; type it again
finding-no-date = “{ $found }” is not a date; enter year-month-day, such as 2026-05-04
# $off says how far the stated energy is outside the range; an empty text says that it can't be told.
finding-energy = the stated energy is { $stated }{ $off }; the composition gives { $from } to { $to } (Regulation (EU) 1169/2011, Annex XIV); check both
finding-energy-in-kilocalories = the stated energy is { $stated }{ $off }; the composition gives { $from } to { $to } (Regulation (EU) 1169/2011, Annex XIV); the figure fits as kilocalories, so check its unit
finding-energy-too-low = , { $percent } too low
finding-energy-too-high = , { $percent } too high
finding-density = { $what } is { $stated }; the composition gives { $low } to { $high }, so check both
# $claim and $against are two of the texts below.
finding-claim-not-carried = it is stated to be { $claim }, but { $against }; correct one of the two
finding-stale-price = { $count ->
        [one] the price is from { $date }, a month before the newest date in the book, { $newest }; ask for a new price
       *[other] the price is from { $date }, { $count } months before the newest date in the book, { $newest }; ask for a new price
    }
finding-no-longer-sold = { $ingredient } is no longer sold; swap it for another ingredient, or retire this drink
finding-more-answers-than-people = { $answers } answers are counted, but { $named } people are named; whoever tastes again counts once
finding-too-many-to-check = there are too many versions and changes to check them all; a recipe should have a few dozen at most
finding-more-findings = only the first { $count } findings are listed; fix these first
finding-fill-out-of-reach = no amount of this ingredient fills the cup this far; enter its amount in grams, or fill up with another line
finding-not-a-leaf = only leaf can be steeped: what other ingredients give to the water is not known; enter the brewed liquid as an ingredient with its own figures
finding-marked-only = marked approved, but no approval with a day and a person is kept, so that it has no standard of its own; taste and approve it, or give it another state
finding-changed-since-approval = marked approved, but not what was approved on { $day }; approve it as it stands, go back to that approval, or give it another state
finding-no-cup = no cup is chosen; volume, fill and serving temperature need one

## What an ingredient is stated to be, and what speaks against it

claim-dairy-free = dairy-free
claim-vegan = vegan
claim-allergens-listed = listed with all its allergens
against-contains = its allergens contain { $allergen }
against-lactose = its sugars are lactose
against-honey = its sugars are those of honey
against-not-dairy-free = it is stated not to be dairy-free
against-part-contains = it is made with { $part }, which contains { $allergen }
against-part-is-not = it is made with { $part }, which is stated not to be

## Measures that do not hold what they are sold or named as

# $size is one of the sizes below.
miscalled-by-readings = its stated size is { $size }, but its readings give { $found }; { $cause }
miscalled-as-entered = its name says { $size }, but { $found } is entered; correct one of the two
miscalled-spoon = it may be bigger or heaped, or grams were entered as millilitres (5 ml of a 77 °Brix syrup weigh about 7 g)
miscalled-cup = it may be a cup to drink from, or it was not filled to its mark, or grams were entered as millilitres (a cup is 200 to 250 ml)
miscalled-fluid-ounce = it may be an ounce by weight, or it was not filled to its mark, or grams were entered as millilitres (a fluid ounce is 28 to 30 ml)
miscalled-pint = it may not have been filled to its mark, or it is of another country (a pint is 473 ml in the US and 568 ml in the UK)
miscalled-volume = it may be another measure, or it was not filled to its mark, or grams were entered as millilitres (100 ml of a 77 °Brix syrup weigh about 139 g)
# The name of the measure before what is said of it.
finding-size-not-as-called = “{ $name }”: { $miscalled }
# $number may have a fraction; $count is 1 up to one of them, and 2 above.
size-millilitre = { $number } ml
size-teaspoon = { $count ->
        [one] { $number } teaspoon
       *[other] { $number } teaspoons
    }
size-tablespoon = { $count ->
        [one] { $number } tablespoon
       *[other] { $number } tablespoons
    }
size-cup = { $count ->
        [one] { $number } cup
       *[other] { $number } cups
    }
size-fluid-ounce = { $number } fl oz
size-pint = { $count ->
        [one] { $number } pint
       *[other] { $number } pints
    }
size-quart = { $count ->
        [one] { $number } quart
       *[other] { $number } quarts
    }

## Names of figures, as the subject of a sentence

book-figure-amount = the amount
book-figure-temperature = the temperature
book-figure-carried-syrup = the syrup that sticks to it
book-figure-nutrient = the figure for { $nutrient }
book-figure-menu-price = the menu price
book-figure-drinking-temperature = the drinking temperature
book-figure-sugar-level = the sugar level
book-figure-uncertainty = an uncertainty
book-figure-free-sugar-fraction = the free part of the sugars
book-figure-sugar-fraction = a sugar fraction
book-figure-dextrose-equivalent = the dextrose equivalent
book-figure-tasters = the number of people who tasted
book-figure-doubt-times = what doubts are multiplied by
book-figure-tasted-times = what tastings multiply a figure by
book-figure-times-as-much = how many times as much the second cup has
book-figure-density = the density
book-figure-bulk-density = the poured density
book-figure-pack-price = the price of a pack
book-figure-earlier-pack-price = an earlier price of a pack
book-figure-pack-content = the content of a pack
book-figure-waste = the waste
book-figure-yield = the yield
book-figure-extraction = the part of the leaf that goes into the water
book-figure-steeping-time = the steeping time
book-figure-volume = the volume
book-figure-mass = the mass
book-figure-increment = the increment
book-figure-reading = a reading
book-figure-uses-in-reading = the number of uses in a reading
book-figure-reading-time = the time of a reading
book-figure-capacity = the capacity
book-figure-specific-heat = the specific heat
book-figure-cooling-time = the cooling time
book-figure-cooling-factor = the cooling factor
book-figure-price = the price
book-figure-height = the height
book-figure-bottom-diameter = the diameter at the bottom
book-figure-top-diameter = the diameter at the top
book-figure-head-room = the head room
book-figure-room-temperature = the room temperature
book-figure-refrigerator-temperature = the refrigerator temperature
book-figure-hot-drinking-temperature = the hot drinking temperature
book-figure-iced-drinking-temperature = the iced drinking temperature
book-figure-ice-temperature = the ice temperature
book-figure-ice-bulk-density = the poured density of ice
book-figure-ice-melt-rate = the melt rate of ice
book-figure-ice-left = the ice left in the cup
book-figure-level = the level { $level }
book-figure-hot-window = the serving window of hot drinks
book-figure-iced-window = the serving window of iced drinks
book-figure-sales-tax = the sales tax
book-figure-scale-step = the increment of the scale
book-figure-thermometer-error = the error of the thermometer
book-figure-mark-error = the error of a mark
book-figure-noticeable-step = the noticeable step of { $axis }
book-figure-step-floor = the floor of the noticeable step of { $axis }
book-figure-axis-weight = the weight of { $axis }

## What a change of a recipe changes

changed-ingredient = the ingredient
changed-amount = the amount
changed-temperature = the temperature
changed-role = the role
changed-stage = the stage
changed-carried-syrup = the syrup that sticks to it
changed-note = the note
changed-instruction = the instruction
changed-added-line = an added line
changed-removed-line = a removed line
changed-order = the order
changed-cup = the cup
changed-shaker = the shaker
changed-straining = straining
changed-drinking-temperature = the drinking temperature
changed-sugar-level = the sugar level
changed-menu-price = the menu price
