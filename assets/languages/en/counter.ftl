# The counter: what the shop has, and what holds for the shop as a whole. Rows are a quiet word, then fields with words between them;
# a message that ends with "-named" is what a screen reader says of the field.

## Of several items

counter-name = Name
counter-kind-named = Kind
counter-note = note
counter-note-named = Note
counter-used-in = Used in
counter-duplicate = Duplicate
counter-delete = Delete
counter-not-stated = not stated
# The same in a narrow field, while it is empty.
counter-not-stated-hint = not stated
counter-no-price = no price
counter-take-out = Remove it
# $item is a lid, a film, a straw or a sleeve.
counter-price-of = Price of the { $item }

## A cup, shaker or jug

# The row of the kind: "is a | cup".
counter-vessel-kind = is a
counter-vessel-capacity = capacity to the rim
counter-vessel-capacity-named = Capacity
counter-vessel-price = one costs
counter-vessel-price-named = Price of one
counter-vessel-inside = Inside measurements
counter-vessel-no-shape = Shape not stated, so a plain cup is drawn.
counter-vessel-state-shape = State its shape
counter-vessel-forget-shape = Forget the shape
counter-vessel-height = height
counter-vessel-height-named = Height inside
counter-vessel-height-unit = mm, bottom to rim
# A row with two fields: "across | 90 | mm at the rim, | 60 | mm at the bottom".
counter-vessel-across = across
counter-vessel-top-named = Across the rim
counter-vessel-top-unit = mm at the rim,
counter-vessel-bottom-named = Across the bottom
counter-vessel-bottom-unit = mm at the bottom
counter-vessel-heat = Heat it takes up
counter-vessel-mass = weighs
counter-vessel-mass-named = Mass
counter-vessel-specific-heat = specific heat
counter-vessel-specific-heat-named = Specific heat
counter-vessel-specific-heat-unit = kJ/(kg K): paper 1.4, plastic 1.7, glass 0.84, steel 0.5
counter-vessel-temperature = starts at
counter-vessel-temperature-named = Temperature at the start
counter-vessel-cooling = cooling time
counter-vessel-cooling-named = Cooling time constant
counter-vessel-cooling-unit = minutes for a full, open cup to cool 63 % of the way to room temperature
counter-vessel-cooling-run = { $count ->
        [one] { $count } thermometer reading is used instead of this time.
       *[other] { $count } thermometer readings are used instead of this time.
    }
# What the drawing of it is called.
counter-vessel-drawing = { $capacity }, { $height } high
counter-error-length = a length is more than 0 mm; found `{ $found }`

# What closes it. Rows: "usually | lid", "leaves | 10 | ml free, costs | 0.04 | EUR", "cools | 0.6 | times as fast as open".
counter-closures = Lid or film
counter-closures-none = Stays open.
counter-closure-add = Add a closure
counter-closure-open = open
counter-closure-lid = lid
counter-closure-film = film
counter-closure-first = usually
counter-closure-other = or
counter-closure-named = Closure
counter-closure-remove = Remove closure { $closure }
counter-closure-leaves = leaves
counter-closure-room-named = Head room of the { $closure }
counter-closure-costs = free, costs
counter-closure-cools = cools
counter-closure-factor-named = Cooling factor of the { $closure }
counter-closure-cools-unit = times as fast as open

# What goes with it. A row: "a | straw | for | 0.03 | EUR".
counter-ware = Straws and sleeves
counter-ware-first = a
counter-ware-named = Serviceware
counter-ware-price = for
counter-ware-straw = straw
counter-ware-wide-straw = wide straw
counter-ware-sleeve = sleeve
counter-ware-remove = Remove the { $item }
counter-ware-add = Add a straw or sleeve

## A measure

counter-measure-duplicate = Duplicate without readings
counter-measure-kind = kind
counter-measure-filled = filled
counter-measure-filled-named = Filling
counter-measure-level = level
counter-measure-heaped = heaped
# The smallest part of a use that can be measured: "smallest step | ½ | scoops".
counter-measure-step = smallest step
counter-measure-step-named = Smallest step in uses
counter-measure-pours = pours at
counter-measure-pours-named = Temperature at which it pours
counter-measure-pours-hint = its own
counter-measure-size = stated size
counter-measure-size-named = What it is called to hold
counter-measure-size-unit-named = It is called in

# The table of readings: what was weighed, how many uses together, their mass and the day.
counter-readings = Readings
counter-readings-table = readings
counter-reading-of = of
counter-reading-amount = reading
counter-reading-mass = mass
counter-reading-volume = volume
counter-reading-day = day
counter-reading-add = Add readings
counter-reading-add-hint = 8.9 9.1 8.8 g, then Enter
counter-next-reading-of-named = What the next readings weigh
counter-next-reading-uses-named = Number of uses per reading
# In the field of the mass while it is empty: put it on the scale.
counter-reading-weigh = weigh
counter-reading-of-named = Reading { $number } is of
counter-reading-uses-named = Uses of reading { $number }
counter-reading-amount-named = Amount of reading { $number }
counter-reading-day-named = Day of reading { $number }
counter-reading-remove = Remove reading { $number }
counter-water = water
counter-error-uses = “{ $found }” is not a count: enter a whole number, 1 or more
counter-error-reading = “{ $found }” is not a reading; enter more than 0 g or 0 ml
counter-error-one-reading = “{ $found }” is more than one reading; enter one

# What the readings say. $measured is a use ("1 scoop"), $total and $more are uses with their number ("30 scoops").
counter-results = Results
# $uses is what several uses are called: "scoops".
counter-results-none = No readings yet. Weigh ten { $uses } together, three times, and add the weights.
counter-results-assumed = Until then, Evensip uses the stated size, ± { $percent } %.
counter-result-no-mass = { $ingredient }: weighed, but without a mass yet
# "1 scoop = 12.4", and behind it the unit, the uncertainty and what was weighed.
counter-result = { $measured } = { $mass }
counter-result-of = of { $ingredient }
counter-result-drift = Drift: { $before } on { $first }, { $now } on { $last }, { $percent } %, more than the readings scatter. If the { $measure } is worn or was reset, add it as a new measure.
# One use as the subject of a sentence that begins small; the kind is chosen by its key.
counter-one-use = { $kind ->
        [scoop] one scoop
        [pump] one press
        [spoon] one spoon
        [jug] one jug
        [ice-scoop] one ice scoop
        [piece] one piece
       *[button] one push
    }
counter-result-scatter = { $count ->
        [one] { $measured } varies by { $scatter } g ({ $percent } %); { $count } reading with { $total } in total
       *[other] { $measured } varies by { $scatter } g ({ $percent } %); { $count } readings with { $total } in total
    }
counter-result-weigh-more = weigh { $more } more to halve the uncertainty
counter-result-no-scatter = one reading of { $total } shows no scatter: weigh { $more } more in readings of ten
counter-result-volume = holds { $volume }
counter-result-density = with the readings in water: { $density } g/ml as it lies in it

## Fields of every sheet

counter-the-name = the name
counter-error-no-name = a name is missing
counter-error-no-name-kept = a name is missing; it keeps the one that it had
counter-error-date = “{ $found }” is not a date: enter, for example, 2026-05-04
# What a screen reader says of the fields beside a figure.
counter-evidence-named = { $figure }, evidence
counter-uncertainty-named = { $figure }, uncertainty

## The shop as a whole

counter-shop-name-named = Name of the shop
counter-shop-name-hint = the shop's name
counter-shop-currency = currency
counter-shop-currency-named = Currency
# A row: "sales tax | 19 | % within the menu price".
counter-shop-tax = sales tax
counter-shop-tax-named = Sales tax in percent
counter-shop-tax-unit = % within the menu price
counter-shop-note-named = Note on the book
counter-shop-temperatures = Temperatures
counter-shop-room = the room
counter-shop-room-named = Temperature of the room
counter-shop-refrigerator = the refrigerator
counter-shop-refrigerator-named = Temperature of the refrigerator
counter-shop-ice-temperature = the ice
counter-shop-ice-temperature-named = Temperature of the ice
counter-shop-hot = hot, tasted at
counter-shop-hot-named = Hot drinks are tasted at
counter-shop-iced = iced, tasted at
counter-shop-iced-named = Iced drinks are tasted at
# A row with two fields: "hot, served | 55 | to | 75".
counter-shop-hot-window = hot, served
counter-shop-hot-from-named = Coolest that is served hot
counter-shop-hot-to-named = Hottest that is served hot
counter-shop-iced-window = iced, served
counter-shop-iced-from-named = Coolest that is served iced
counter-shop-iced-to-named = Hottest that is served iced
counter-shop-window-to = to
counter-shop-allergen-lists = Lists of allergens
counter-shop-allergen-lists-what = What is asked of packs and named to guests. Of what is not on the list of the European Union a pack says nothing unless you have asked: until then it counts as not stated.
counter-shop-ice = Ice
# How much a millilitre of ice in a heap weighs.
counter-shop-ice-density = as it lies
counter-shop-ice-density-named = Bulk density of ice
counter-shop-ice-density-unit = g/ml; weigh a level scoop of it and measure the scoop with water
counter-shop-ice-melts = melts
counter-shop-ice-melts-named = Ice that melts in a minute
counter-shop-ice-melts-unit = g a minute in a drink that stands
counter-shop-ice-left = left in the cup
counter-shop-ice-left-named = Ice left in the cup in percent
counter-shop-ice-left-unit = % of the cup, as it lies, when an iced drink is handed over
# In a field that is empty: a usual figure is taken.
counter-shop-assumed = assumed
# Rows: "the scale shows | 0.1 | g steps", "temperatures are | 1 | K off at most", "marks are | 5 | % off at most".
counter-shop-instruments = How well you measure
counter-shop-scale = the scale shows
counter-shop-scale-named = Steps of the scale in grams
counter-shop-scale-unit = g steps
counter-shop-thermometer = temperatures are
counter-shop-thermometer-named = How far a temperature may be off
counter-shop-thermometer-unit = K off at most
counter-shop-marks = marks are
counter-shop-marks-named = How far a mark may be off in percent
counter-shop-marks-unit = % off at most

# The table of noticeable steps: what of a drink is tasted, how large a part of it and at least how much makes a difference.
counter-steps = Noticeable steps
counter-steps-table = noticeable steps
counter-steps-about = How large a difference must be before a guest notices it: a percentage of the standard's value, but never less than the floor. If you have tested your tasters, enter your own figures.
counter-step-axis = axis
counter-step-part = part
counter-step-part-percent = part, %
counter-step-floor = floor
counter-step-unit = unit
counter-step-weight = weight
counter-step-whose = whose
counter-step-own = the shop's own
counter-step-reset = Reset
counter-step-part-named = Part of { $axis } in percent
counter-step-floor-named = Floor of { $axis }
counter-step-weight-named = Weight of { $axis }

## The lists

# The kinds of things to look at; $kind is a key.
counter-kinds = { $kind ->
        [ingredient] ingredients
        [measure] measures
        [vessel] vessels
       *[shop] shop
    }
counter-look-at = { $kind ->
        [ingredient] look at ingredients
        [measure] look at measures
        [vessel] look at vessels
       *[shop] look at shop
    }
counter-count = { $kind ->
        [ingredient] { $count ->
            [one] { $count } ingredient
           *[other] { $count } ingredients
        }
        [measure] { $count ->
            [one] { $count } measure
           *[other] { $count } measures
        }
       *[vessel] { $count ->
            [one] { $count } vessel
           *[other] { $count } vessels
        }
    }
# What the copied table is of.
counter-table-of = { $kind ->
        [ingredient] ingredients
        [measure] measures
       *[vessel] vessels
    }
counter-find-named = { $kind ->
        [ingredient] Find ingredients
        [measure] Find measures
       *[vessel] Find vessels
    }
# In the field that finds, while it is empty.
counter-find-ingredient = name, brand or role
counter-find-other = name or kind
counter-new = { $kind ->
        [ingredient] New ingredient
        [measure] New measure
       *[vessel] New vessel
    }
counter-none-yet = { $kind ->
        [ingredient] This book has no ingredients yet. Use the plus sign to add an ingredient.
        [measure] This book has no measures yet. Use the plus sign to add a measure.
       *[vessel] This book has no vessels yet. Use the plus sign to add a vessel.
    }
counter-none-match = { $kind ->
        [ingredient] No ingredients match.
        [measure] No measures match.
       *[vessel] No vessels match.
    }
counter-add-named = Add “{ $name }”
counter-published = From a published table…
counter-published-unreadable = The tables can’t be read.
counter-sort-by = Sort by { $column }
counter-close = Close the item
counter-close-hint = Back to the whole list (Esc)
counter-shop-about = Settings for every drink in the shop: temperatures, prices and noticeable steps.

# Headings of columns, which are narrow.
counter-column-name = name
counter-column-brand = brand
counter-column-remark = remark
counter-column-form = form
counter-column-role = role
counter-column-sugars = sugars per 100 g
counter-column-price-per-kg = price per kg
# How many recipes use it.
counter-column-used = used
counter-column-last-reading = last reading
counter-column-kind = kind
# The stated size of a measure.
counter-column-called = called
counter-column-one-use = one use
counter-column-readings = readings
counter-column-capacity = capacity
counter-column-mass = mass
counter-column-price = price
counter-not-weighed = not weighed
counter-dash = –

## Adding, copying and deleting

# Names that a new item has until it gets its own.
counter-new-ingredient = New ingredient
counter-new-measure = New measure
counter-new-cup = New cup
counter-name-of-copy = { $name }, another
counter-used-nowhere = Nowhere yet.
counter-use-version = { $recipe }, { $version }
counter-use-approval = an approval of { $recipe }
counter-use-readings = readings of the { $measure }
# The last of a list of uses.
counter-uses-more = { $count } more
counter-uses-last = { $before } and { $last }
# $kind is the key of what can't be deleted; the sentence begins with a capital letter wherever it is shown.
counter-refusal = { $kind ->
        [ingredient] { $name } can't be deleted, because it is used in { $uses }.
       *[other] the { $name } can't be deleted, because it is used in { $uses }.
    }

## What approved drinks were tasted with

counter-earlier = Tasted with earlier figures
counter-earlier-about = Approved drinks keep the figures that they were tasted with. The latest change stands first.
# $changes is a list of clauses: "sugars: 62 g instead of 48 g".
counter-earlier-since = Since { $day }: { $changes }
counter-earlier-now = Now: { $changes }
counter-earlier-day = different since
counter-earlier-day-named = Day since which it has been different
counter-earlier-lot = from lot
counter-earlier-lot-named = First lot that was different
counter-earlier-wrong = The earlier figures were wrong
counter-earlier-wrong-hint = The product was always like this: standards tasted with it take the figures that stand here now.
counter-earlier-drifted = Drinks that have drifted

# What to measure first: what narrows the figures of the drinks most.
measure-first = Measure these first
measure-first-looking = Comparing the drinks…
measure-first-no-drinks = No drink has a cup yet. As soon as one has, what narrows its figures most is listed here.
measure-first-nothing = Nothing that you can measure narrows the figures of your drinks.
measure-first-about = { $drinks ->
    [approved] { $count ->
        [one] What narrows the figures of your approved drink most.
       *[other] What narrows the figures of your { $count } approved drinks most.
    }
   *[all] { $count ->
        [one] What narrows the figures of your drink most.
       *[other] What narrows the figures of your { $count } drinks most. None is approved yet.
    }
}
# $narrow is what to do, a sentence without a stop; $does what that is good for.
measure-first-row = { $narrow }: { $does }.
measure-first-narrows = { $count ->
    [one] { $percent } % less uncertainty, in 1 drink
   *[other] { $percent } % less uncertainty, in { $count } drinks
}
measure-first-needed = { $count ->
    [one] without it the figures of 1 drink are not whole.
   *[other] without it the figures of { $count } drinks are not whole.
}
measure-first-unweighed = what one use of the { $measure } holds of { $ingredient } is not known
measure-first-no-density = what a millilitre of { $ingredient } weighs is not known
