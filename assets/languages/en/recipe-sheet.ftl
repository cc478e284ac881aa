# The sheet of a recipe: its heading, its lines, what belongs to a line, and what a version changes.
# Labels beside fields and heads of columns begin with a small letter.

## Heading

recipe-sheet-name = Name of the recipe
# The subject of a sentence about characters that can't be seen.
recipe-sheet-the-name = the name
# Why a name is not taken: a clause.
recipe-sheet-name-missing = a name is missing
recipe-sheet-name-stays = A recipe needs a name, so the old name stays.
recipe-sheet-version-name = Name of the version
recipe-sheet-state = State
# In the list of states: opens the sheet on which a version is approved.
recipe-sheet-approve = approved…
recipe-sheet-no-ingredients = This recipe has no ingredients yet
recipe-sheet-change-makes-version = a change makes a new version
recipe-sheet-cup = Cup
recipe-sheet-no-cup = no cup
recipe-sheet-shaker = Shaker
recipe-sheet-no-shaker = made in the cup
recipe-sheet-shaken-in = shaken in { $shaker }
recipe-sheet-strain = strain off the ice
# Stands before the field of a temperature.
recipe-sheet-compare-taste = compare taste at
recipe-sheet-drinking-temperature = Drinking temperature in { $unit }
# Stands before the field of an amount of money.
recipe-sheet-price = price
recipe-sheet-menu-price = Menu price

## What the shares of the lines are shown of

# Stands before a row of words such as "sugar" and "heat".
recipe-sheet-show = show
recipe-sheet-show-lens = show { $lens }

## Columns of the lines

# Stands over temperatures, and before one: "at 78 °C".
recipe-sheet-at = at
recipe-sheet-mass = mass
recipe-sheet-heat = heat: brings, takes
recipe-sheet-uncertainty = uncertainty of the sugar
# $lens is "sugar", "cost" and the like.
recipe-sheet-total = { $lens }, total { $total }
recipe-sheet-total-at-least = { $lens }, at least { $total }
# Where a figure would stand.
recipe-sheet-mass-not-known = mass not known
recipe-sheet-no-price = no price
recipe-sheet-not-stated = not stated

## Columns of the table for a spreadsheet

# Which table it is, behind a colon.
recipe-sheet-table = lines
recipe-sheet-table-stage = stage
recipe-sheet-table-ingredient = ingredient
recipe-sheet-table-amount = amount
recipe-sheet-table-temperature = temperature

## Lines and instructions

# A line to a screen reader: "Line Milk, sugar 7.2 g".
recipe-sheet-line = Line { $ingredient }, { $lens } { $share }
recipe-sheet-amount-of = Amount of { $ingredient }
recipe-sheet-temperature-of = Temperature of { $ingredient }
recipe-sheet-at-temperature = at { $temperature }
recipe-sheet-ingredient = Ingredient { $ingredient }
recipe-sheet-put-another = { $ingredient }: put another ingredient here
recipe-sheet-brings-along = brings along { $mass } of { $ingredient }
recipe-sheet-brings-along-unknown = brings along { $ingredient }, mass not known
recipe-sheet-instruction = Instruction
recipe-sheet-instruction-hint = what is done here
recipe-sheet-instruction-row = Instruction { $text }
# The subject of a sentence about characters that can't be seen.
recipe-sheet-the-instruction = the instruction
recipe-sheet-add-ingredient = Add an ingredient
recipe-sheet-add-instruction = Add an instruction

## What belongs to a line

# Stand before menus: "as sweetener in the drink: mixed in".
recipe-sheet-as = as
recipe-sheet-in-the-drink = in the drink:
recipe-sheet-role = Role
recipe-sheet-stage = Stage
# The syrup of a topping: "brings along", a field with a number, "g of", a menu of syrups.
recipe-sheet-brings = brings along
recipe-sheet-grams-of = g of
recipe-sheet-brings-nothing = nothing
recipe-sheet-comes-along = Comes along
recipe-sheet-grams-along = Grams that come along
recipe-sheet-grams-below-zero = “{ $text }” is less than 0 g. Enter 0 g or more.
recipe-sheet-note-on = Note on { $ingredient }
recipe-sheet-note-hint = a note
recipe-sheet-open-in-counter = Open in Counter
recipe-sheet-open-in-counter-hint = See its label, price and weight per measure
recipe-sheet-see-batch = See its recipe
recipe-sheet-see-batch-hint = Opens the recipe by which the house makes it

# What one use of a measure weighs. $use is "1 spoon", $measure the name of the measure.
recipe-sheet-weight-not-known = the weight of { $use } is not known: weigh ten together
recipe-sheet-weight-weighed = { $use } ({ $measure }) = { $mass }, weighed { $count ->
    [1] once
    [2] twice
   *[other] { $count } times
}
# $evidence is where the density is from: "label".
recipe-sheet-weight-water = { $use } ({ $measure }) = { $mass }, its volume measured with water { $count ->
    [1] once
    [2] twice
   *[other] { $count } times
}, density from { $evidence }
recipe-sheet-weight-stated = { $use } ({ $measure }) = { $mass }, from the measure’s stated size, not weighed

# What the same measure would hold of other sweeteners. $held is a list of messages that begin with recipe-sheet-held.
recipe-sheet-same-use = the same { $kind ->
    [scoop] scoop
    [pump] press
    [spoon] spoon
    [jug] jug
    [ice-scoop] ice scoop
    [piece] piece
   *[button] push
}: { $held }
# $uses is "2 spoons".
recipe-sheet-same-uses = the same { $uses }: { $held }
# The first of the list says what the masses are of. $form is "syrup".
recipe-sheet-held-first = { $form } { $mass } of sugar
recipe-sheet-held-first-named = { $form } { $mass } of sugar ({ $name })
recipe-sheet-held = { $form } { $mass } ({ $name })

## Finding an ingredient

recipe-sheet-find = Find an ingredient
recipe-sheet-find-hint = type a name or a brand
recipe-sheet-find-none = This book has no ingredients yet. Type a name to add the first.
# Stands before a button with the next message.
recipe-sheet-equal-measures = Replaces it by equal measures. To match the taste, use
recipe-sheet-swap = Swap…
recipe-sheet-in-drink-now = in the drink now
recipe-sheet-of-published-table = { $ingredient } of a published table
recipe-sheet-new-ingredient = New ingredient “{ $name }”
recipe-sheet-new-ingredient-hint = Its figures are not known until you enter its label in Counter
# Making it in the house: an empty batch, or a brew of a leaf.
recipe-sheet-new-batch = New house-made “{ $name }”
recipe-sheet-new-batch-hint = Adds the ingredient and an empty recipe for a batch of it
recipe-sheet-new-brew = Brew a tea from { $leaf }
recipe-sheet-new-brew-hint = Adds a house-made tea with its batch: water, leaf, steeping time and yield

## Below the lines

recipe-sheet-note = Note
recipe-sheet-note-on-recipe = Note on the recipe
recipe-sheet-note-on-recipe-hint = What should the next person know?
recipe-sheet-changes-from = Changes from { $version }
recipe-sheet-changes-from-original = Changes from the original recipe
recipe-sheet-no-changes = no changes yet

# What a version changes, each a clause of its own. $line is the name of an ingredient or the next message.
recipe-sheet-an-instruction = instruction
recipe-sheet-change-ingredient = { $after } instead of { $before }
recipe-sheet-change-ingredient-only = { $after } instead
recipe-sheet-change-amount = { $line }: { $amount }
recipe-sheet-change-temperature = { $line } at { $temperature }
recipe-sheet-change-temperature-stored = { $line } as it comes
recipe-sheet-change-role = { $line } as { $role }
# $stage is "mixed in", "on top" and the like.
recipe-sheet-change-stage = { $line }: { $stage }
recipe-sheet-change-carries-nothing = { $line } brings nothing along
recipe-sheet-change-carries = { $line } brings along { $mass }
recipe-sheet-change-note = { $line }: another note
recipe-sheet-change-instruction = “{ $text }”
recipe-sheet-change-added = added: { $amount } { $line }
recipe-sheet-change-instruction-added = added: an instruction
recipe-sheet-change-removed = without { $line }
recipe-sheet-change-moved = { $line } in another place
recipe-sheet-change-cup = in the { $cup }
recipe-sheet-change-no-shaker = made in the cup
recipe-sheet-change-shaker = shaken in the { $shaker }
recipe-sheet-change-strained = the ice stays behind in the shaker
recipe-sheet-change-not-strained = poured with the ice
recipe-sheet-change-drinking-temperature = taste compared at { $temperature }
recipe-sheet-change-drinking-temperature-of-shop = taste compared at the shop’s drinking temperature
recipe-sheet-change-sugar-level = made at { $percent } of the added sweetness
recipe-sheet-change-menu-price = { $price } on the menu
recipe-sheet-change-no-menu-price = not on the menu
