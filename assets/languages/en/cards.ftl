# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = counter card
card-kind-training = training sheet
card-kind-exercise = swap exercise
card-kind-answers = answers to the swap exercise
card-kind-menu = ingredients and allergens of the menu
card-kind-figures = figures of the menu
card-kind-ladder = sugar ladder
card-kind-matrix = levels, sizes and ice
card-kind-comparison = comparison of versions
card-kind-batch = shopping and batches
card-kind-scores = score sheet of a blind tasting
card-kind-pouring = pouring sheet of a blind tasting

## Why there is no card

card-no-recipe = there is no recipe `{ $id }` in the book
card-no-version = the recipe “{ $recipe }” has no version `{ $version }`
card-count-to-compare = { $count ->
    [one] a comparison takes 2 to 4 versions, not 1; choose more
   *[other] a comparison takes 2 to 4 versions, not { $count }; choose some of them
}
card-nothing-to-make = no drinks are asked for; enter a number of drinks from 1 to { $most }
card-no-exercise = no exercise is possible with { $replace } and { $with }: the first is not in the drink, or no change of amounts matches the taste. Try it in Swap first
card-empty-menu = the menu is empty: no recipe has a cup, or all are retired
card-nothing-approved = nothing on the menu is approved: approve the drinks that you serve, or ask for the card with drinks that are not approved
card-menu-too-long = { $drinks ->
    [one] 1 drink is on the menu, and a menu card takes { $most }; retire what you don't serve, or make a card per drink
   *[other] { $drinks } drinks are on the menu, and a menu card takes { $most }; retire what you don't serve, or make a card per drink
}
card-count-to-taste = this tasting takes { $wanted } drinks, not { $count }: choose what is tasted
card-count-of-tasters = enter a number of tasters from 1 to { $most }

pdf-font = a font that “{ $text }” needs can't be embedded; remove or replace the font and export again
pdf-writer = the PDF could not be written: { $reason }

## Figures

card-figure-not-known = not known
card-figure-not-known-because = not known ({ $reason })
card-figure-unstated = not stated
# Why a figure is not known in full.
card-figure-not-stated = not stated: { $names }
card-figure-at-least = at least { $figure } ({ $reason })
card-figure-least = at least { $figure }
weight-not-known = weight not known
amount-none = none
hours = { $hours } h

## Versions and approvals

version-original = original
revision-approved = { $version }: approved { $day }
revision-approved-by = { $version }: approved { $day } by { $person }
revision-changed = { $version }: changed since the approval of { $day }
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }: on trial, not approved
    [retired] { $version }: retired, not approved
   *[draft] { $version }: draft, not approved
}
revision-marked-only = { $version }: marked approved, but no approval is kept
revision-taken-back = { $state ->
    [trial] { $version }: on trial again; approved last on { $day }
    [retired] { $version }: retired; approved last on { $day }
   *[draft] { $version }: draft again; approved last on { $day }
}

## Steps

card-stage-mixed = Mixed
card-stage-mixed-cup = Mixed in the { $cup }
card-stage-mixed-shaker = Mixed in the { $shaker }, poured into the cup
card-stage-mixed-strained = Mixed in the { $shaker }, strained into the cup
card-stage-in-cup = In the cup
card-stage-on-top = On top
card-stage-steeped = Steeped and taken out
card-stage-steeped-for = Steeped for { $minutes } min and taken out
line-at-temperature = at { $temperature }
line-brings = brings { $mass } of { $ingredient }

## Facts

fact-cup = cup
cup-not-named = not chosen
cup-open = { $cup }, open
cup-with-lid = { $cup }, with a lid
cup-sealed = { $cup }, sealed with film
fact-contains = contains
fact-may-contain = may contain
contains-none = none of the fourteen allergens, as the packs state it
contains-none-listed = none of the allergens on the lists of the shop, as the packs state it
fact-allergens-not-stated = allergens not stated by
# Of some allergens only.
allergens-not-stated-some = { $ingredients } ({ $allergens })
allergens-all-stated = all state them
allergen-not-stated = not stated
fact-vegan = vegan, by ingredients

## Cautions and small print

card-cautions = Cautions
# Before a caution: "Caution (heat)".
card-caution = Caution ({ $kind })
card-small-print = ± is one standard uncertainty. Allergens and diets are by ingredients, as their packs state them; shared shakers, scoops and blenders can leave traces. This sheet is information, not proof of compliance: follow your local code.
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text } ({ $english })
card-not-confirmed = The translation of allergens and cautions has not been confirmed by the shop: the English text stands beside it.
card-confirmed = Allergens and cautions in this language: confirmed by { $person }, { $day }.
card-foot-in-full = At the foot, in full: { $foot }

## Columns of tables

column-all-batches = for all batches
column-amount = amount
column-axis = axis
column-batches = batches
column-cost = cost
column-drink = drink
column-drinks = drinks
column-energy = energy
column-figure = figure
column-for = for
column-house-made = house-made
column-ingredient = ingredient
column-ingredients = ingredients, the heaviest first
column-item = item
column-keeps = keeps
column-left-over = left over
column-tea = tea
column-brewed = to brew, with waste
column-leaf = dry leaf
column-water = water
column-level = sugar level
column-measure = measure
column-margin = margin
column-menu-price = menu price
column-needed = needed
column-noticeable = one noticeable step
column-nutrition = nutrition
column-one-batch = one batch, less waste
column-one-pack = one pack
column-one-use = one use
column-packs = packs
column-off-standard = off the standard, steps
column-part = part
column-per-100-ml = per 100 ml, without toppings
column-per-drink = per drink
column-pieces = pieces
column-state = state
column-sugar = sugar
column-supplier = supplier
column-sweetness = sweetness
column-this-drink = this drink
column-total-sugar = total sugar
column-weight = weight
column-with = with

## Training sheet

training-how = How to make it
training-target = Target
training-lines = What each ingredient adds
training-taste = Taste
training-measures = Measures
training-nutrition = Nutrition
training-shown = Shown once, made once
training-time-to-cool = time until it cools to { $temperature }
training-already-below = already below
training-already-below-tasted = already below; tasted at { $temperature } when it was approved
training-name = name
training-shown-by = shown by
training-day = day
training-measured = serving temperature measured, { $unit }
training-lines-caption = weight, sugar and energy of each ingredient
training-taste-caption = the drink on each axis of taste
training-measures-caption = what one use of each measure holds
training-nutrition-caption = nutrition of the drink
measure-stated = stated as { $amount }
measure-not-weighed = not weighed

## Menu

menu-title = Ingredients and allergens
menu-subtitle = the whole menu
menu-subtitle-approved = the approved drinks
menu-with-unapproved = with drinks that are not approved
menu-left-out = Not on this sheet, because they are not approved as they stand: { $drinks }.
menu-marks = “contains” and “may contain”: stated on the pack of an ingredient. “not stated”: at least one pack does not state its allergens. “{ $sign }”: every pack states its allergens, and none names this one.
menu-lists = Lists of allergens: { $lists }
figures-title = Figures of the menu
figures-caption = cost, price, sugar, energy and allergens of every drink
figures-at-most = at most { $figure }
figures-no-standard = no standard
figures-some-silent = not stated by some packs
figures-none-named = none named
figures-marks = Cost: with cup and closure, without sales tax. Margin: menu price less sales tax and cost; “at most” where a price or the tax is not stated. Sugar and energy: of the whole drink. The last column is the overall difference from the approved standard, in noticeable steps.
menu-ingredients = Ingredients
menu-allergens-caption = allergens of every drink
menu-ingredients-caption = ingredients of every drink

## Shopping and batches

batch-title = Shopping and batches
batch-for = { $count ->
    [one] for 1 drink
   *[other] for { $count } drinks
}
batch-drinks = Drinks
batch-make = Make beforehand
batch-brew = Brew
batch-tap = From the tap and the ice machine
batch-buy = Buy
batch-serve = Serve in
batch-note = Amounts are what the recipes need, plus waste, without a reserve. Packs and batches are rounded up.
batch-parts-caption = what goes into all batches together
batch-drinks-caption = the drinks to make
batch-make-caption = what the house makes beforehand
batch-brew-caption = tea to brew, as leaf and water
batch-tap-caption = water and ice that are not bought in packs
batch-buy-caption = what to buy
batch-serve-caption = cups and what goes with them
batch-total = total
batch-cost-of-all = total with tea, water and ice
batch-brew-note = Dry leaf and water are worked out for a hot brew of 5 minutes at the strength of the tea. A cold or longer brew needs other amounts.
price-not-stated = price not stated
serve-lid = lid for { $cup }
serve-film = film for { $cup }
serve-straw = straw
serve-wide-straw = wide straw
serve-sleeve = sleeve

## Exercise on a swap

exercise-subtitle = { $version }, an exercise
exercise-task = { $replace } is replaced by { $with }. After each step, how will the drink compare with the standard? Mark one box in each row.
exercise-same = “The same” means no more than one noticeable step from the standard.
exercise-answers-subtitle = { $version }, answers for the trainer
exercise-answer = answer
exercise-standard = the standard
exercise-plain-swap = the plain swap
exercise-less = less
exercise-the-same = the same
exercise-more = more
exercise-crosses-caption = the expected change on each axis of taste
exercise-answers-caption = how the drink compares with the standard after each step, in noticeable steps

## Blind tasting

blind-scores-title = Blind tasting
blind-pouring-title = Blind tasting: pouring sheet
# { $seed } is the number that codes and orders are drawn from. It stands on both sheets of a tasting.
blind-subtitle = { $design ->
    [triangle] triangle test, no. { $seed }
    [duo-trio] duo–trio test, no. { $seed }
    [pair] paired comparison, no. { $seed }
   *[ranking] ranking of three cups, no. { $seed }
}
blind-how = Taste the cups from left to right. Rinse with water in between. Do not talk until everybody has finished. If you are not sure, choose anyway.
blind-taster = Taster { $number }
blind-task = { $design ->
    [triangle] Two of these cups are the same, and one is different. Mark the different one.
   *[duo-trio] Taste R first. One of the other cups is the same as R. Mark that one.
}
# { $more } is "sweeter", "creamier".
blind-task-more = { $design ->
    [pair] Mark the cup that is { $more }.
   *[ranking] Put the cups in order: 1 is { $more } than the others, then 2, then 3. Mark one cup in each row.
}
blind-task-liking = { $design ->
    [pair] Mark the cup that you like better.
   *[ranking] Put the cups in order: 1 is the one that you like best, then 2, then 3. Mark one cup in each row.
}
blind-my-answer = my answer
blind-rank = { $rank ->
    [first] 1, the most
    [second] 2
   *[third] 3, the least
}
blind-cup = { $number ->
    [first] first cup
    [second] second cup
   *[third] third cup
}
blind-boxes-caption = the cups of taster { $number }, in the order of tasting
blind-pour-secret = Keep this sheet out of the tasters’ sight. Whoever pours neither tastes nor serves.
blind-pour-alike = Write the codes on the cups first. Same kind of cup, same amount, same temperature, everything within a few minutes. Let hot drinks cool until nobody burns their mouth.
blind-pour-hide = If the drinks look different, hide it: dark cups, lids with a hole, or dim light.
blind-pour-allergies = Before anyone tastes, ask everybody about allergies and have them read the top of the score sheet. The allergens of each drink stand below.
blind-pour-cut = Cut the score sheet between the tasters, so that nobody sees the answers of others.
blind-sample = { $letter }: { $drink }
blind-cups = cups
blind-codes = codes on them
blind-references = further cups marked R
blind-orders = Before each taster
blind-orders-caption = code and drink of each cup, by taster, in the order of tasting
blind-taster-column = taster
blind-reference = R
blind-right = right answer
blind-seed = The number { $seed } gives the same codes and orders again.
blind-unbalanced = Every order comes equally often only with { $multiple } tasters, or a multiple of that.

## Sugar ladder

ladder-subtitle = { $version }, sugar ladder
ladder-floor = Without sweetener the drink still has { $sugar } of sugar, from its other ingredients.
ladder-not-possible = { $level }: { $reason }
ladder-see-below = not possible, see below
ladder-caption = amounts at each sugar level

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }, levels, sizes and ice
# A size with an amount of ice.
matrix-iced = { $cup }, iced
matrix-ice = { $cup }, { $level }
matrix-not-possible = Not possible: { $reason }

## Comparison

comparison-title = Comparison
comparison-lines = Ingredients and amounts
comparison-figures = Figures
comparison-taste = Taste compared with { $first }
comparison-line = { $amount } { $ingredient } ({ $grams })
comparison-level = level
comparison-lines-caption = ingredients and amounts of each version
comparison-drinks-caption = ingredients and amounts of each drink
comparison-figures-caption = figures of each version
comparison-taste-caption = taste of each version compared with the first, in noticeable steps

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = drink
serving = 1 drink
serving-of = 1 drink, { $volume }
step-add = Add { $amount } of { $ingredient }.
left-state = its state ({ $revision })
left-cautions = { $count ->
    [one] 1 caution, which must be passed on with the drink in another way
   *[other] { $count } cautions, which must be passed on with the drink in another way
}
left-allergens = its allergens
left-uncertainty = serving temperature and every uncertainty
left-measures = the shop's measures as measures: their names stand in the text of an ingredient
left-roles = roles, temperatures of the lines, cup, shaker and menu price
left-composition = composition and evidence of the ingredients
left-versions = the other versions and the history of approvals
left-caffeine = caffeine and energy in kJ
left-figure = { $figure }, which is not known in full: { $known }

## What an ingredient is for in a drink

role-base = base
role-flavour = flavour
role-creamer = creamer
role-sweetener = sweetener
role-tea = tea
role-water = water
role-ice = ice
role-topping = topping
role-garnish = garnish
