# How two books, two items or two states of a recipe differ. Clauses without a capital and a full stop.

## Books

difference-none = no differences
# The parts of a summary, such as "2 recipes changed (Pear Drift, Snowgate)". $change is added, changed or removed.
difference-settings = settings changed
difference-ingredients = { $count ->
        [one] 1 ingredient { $change } ({ $names })
       *[other] { $count } ingredients { $change } ({ $names })
    }
difference-measures = { $count ->
        [one] 1 measure { $change } ({ $names })
       *[other] { $count } measures { $change } ({ $names })
    }
difference-vessels = { $count ->
        [one] 1 vessel { $change } ({ $names })
       *[other] { $count } vessels { $change } ({ $names })
    }
difference-recipes = { $count ->
        [one] 1 recipe { $change } ({ $names })
       *[other] { $count } recipes { $change } ({ $names })
    }
difference-tastings = { $count ->
        [one] 1 tasting { $change } ({ $names })
       *[other] { $count } tastings { $change } ({ $names })
    }
difference-more-names = { $count } more
difference-order = { $kind ->
        [ingredient] ingredients in another order
        [measure] measures in another order
        [vessel] vessels in another order
        [tasting] tastings in another order
       *[recipe] recipes in another order
    }

## Items

# $names are names of fields.
detail-name = name: { $after } instead of { $before }
# A field of an item, or a figure of a composition.
detail-field = { $field }: { $after } instead of { $before }
detail-range = { $from } to { $to }
detail-waste = { $percent } waste
detail-batch = { $recipe }, yields { $grams }
detail-diet = vegan: { $vegan }, dairy-free: { $dairy_free }
detail-readings = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    }
detail-shape = { $height } high, { $bottom } across at the bottom, { $top } at the rim
detail-state = state: { $after } instead of { $before }
detail-version-added = version “{ $name }” added
detail-version-added-with = version “{ $name }” added ({ $lines })
detail-version-changed = version “{ $name }”: { $fields }
detail-version-changed-with = version “{ $name }”: { $fields } ({ $lines })
detail-version-removed = version “{ $name }” removed
detail-approvals = approvals: { $after } instead of { $before }
detail-more-lines = and { $count } more

## Lines of a recipe. $after is what it is now, $before what it was.

line-ingredient = { $after } instead of { $before }
line-instruction = instruction “{ $after }” instead of “{ $before }”
line-added-first = { $ingredient }, { $amount }, added at the beginning
line-added = { $ingredient }, { $amount }, added after { $place }
line-instruction-added-first = instruction “{ $text }” added at the beginning
line-instruction-added = instruction “{ $text }” added after { $place }
line-removed = { $ingredient } removed ({ $amount })
line-instruction-removed = instruction “{ $text }” removed
line-moved-first = { $line } moved to the beginning
line-moved = { $line } moved after { $place }
# An instruction where the name of an ingredient would stand.
line-named-instruction = instruction “{ $text }”
line-amount = { $line }: { $after } instead of { $before }
line-temperature = temperature of { $line }: { $after } instead of { $before }
line-as-stored = as stored
line-role = role of { $line }: { $after } instead of { $before }
line-stage = place of { $line }: { $after } instead of { $before }
line-carried = with { $line }: { $after } instead of { $before }
line-carried-syrup = { $amount } of { $ingredient }
line-carried-nothing = nothing
line-note = note on { $line }: { $after } instead of { $before }
line-note-text = “{ $text }”
line-nothing = none
recipe-cup = cup: { $after } instead of { $before }
recipe-no-cup = no cup instead of { $before }
recipe-shaker = shaker: { $after } instead of { $before }
recipe-strained = the ice is strained off
recipe-not-strained = the ice goes from the shaker into the cup
recipe-drinking-temperature = drinking temperature: { $after } instead of { $before }
recipe-drinking-temperature-of-shop = the shop's
recipe-menu-price = menu price: { $after } instead of { $before }
recipe-sugar-level = sugar level: { $after } instead of { $before }

## Names of fields

item-field-allergen-lists = allergen lists
item-field-allergens = allergens
item-field-approvals = approvals
item-field-articles = names in suppliers’ lists
item-field-brand = brand
item-field-builds-on = base
item-field-bulk-density = poured density
item-field-capacity = capacity
item-field-changes = changes
item-field-closures = lids and films
item-field-composition = composition
item-field-confirmations = confirmed translations
item-field-cooling-minutes = cooling time
item-field-cooling-run = cooling run
item-field-cup = cup
item-field-currency = currency
item-field-density = density
item-field-diet = diet
item-field-drinking-temperature = drinking temperature
item-field-doubts = re-scaled doubts
item-field-earlier-prices = earlier prices
item-field-earlier = earlier figures
item-field-entries = lines
item-field-filling = filling
item-field-form = form
item-field-hot-drinking-temperature = hot drinking temperature
item-field-hot-window = serving window of hot drinks
item-field-house-made = batch
item-field-ice-bulk-density = poured density of ice
item-field-ice-levels = ice levels
item-field-ice-melt-rate = melt rate of ice
item-field-ice-left = ice left in the cup
item-field-ice-temperature = ice temperature
item-field-iced-drinking-temperature = iced drinking temperature
item-field-iced-window = serving window of iced drinks
item-field-id = id
item-field-increment = increment
item-field-instruments = instruments
item-field-kind = kind
item-field-language = language
item-field-lot = lot
item-field-mass = mass
item-field-menu-price = menu price
item-field-sugar-level = sugar level
item-field-name = name
item-field-nominal = stated size
item-field-note = note
item-field-no-longer-sold = availability
item-field-opened-life-hours = shelf life once opened
item-field-price = price
item-field-readings = readings
item-field-refrigerator-temperature = refrigerator temperature
item-field-role = role
item-field-room-temperature = room temperature
item-field-sales-tax-percent = sales tax
item-field-season = season
item-field-serviceware = straws and sleeves
item-field-shaker = shaker
item-field-shape = shape
item-field-shop = name of the shop
item-field-specific-heat = specific heat
item-field-state = state
item-field-statement = ingredient list
item-field-steps = noticeable steps
item-field-strained = straining of the ice
item-field-sugar-levels = sugar levels
item-field-supplier = supplier
item-field-temperature = temperature
item-field-translations = translations
item-field-versions = versions
item-field-yardsticks = yardsticks
item-field-axis = what was asked about
item-field-counts = whether it counts as evidence
item-field-cups = cups
item-field-date = date
item-field-notes = taste notes
item-field-outcome = outcome
item-field-people = tasters
item-field-reason = reason
item-field-seed = seed
item-field-tasted = figures from tastings
