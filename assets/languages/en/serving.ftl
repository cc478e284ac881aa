# The sheets of the screen Serving: headings, and the way to each of them.
serving-sheet-cooling = Temperature and cooling
serving-sheet-ice = Melting ice
serving-sheet-last-sip = From the counter to the last sip
serving-sheet-nutrition = Nutrition
serving-sheet-yardsticks = Yardsticks
serving-sheet-guests = Allergens and diet
serving-sheet-cost = Cost and margin
serving-sheet-one-cup = Why is this cup off?
serving-sheet-brewing = Brewing tea
serving-original = original
# Below the name of the drink.
serving-version-and-cup = { $version } · { $cup }
serving-no-cup = no cup is named
serving-go-to = Go to { $sheet }
# What a click on a figure tells, and the name of what opens.
serving-how-worked-out = how this is worked out
serving-why = why { $figure }
serving-not-known = not known
# The heads of copied tables.
serving-head-unit = unit
serving-head-value = value
serving-head-remark = remark
# Cost and margin. $percent is a number.
serving-cost-no-price-stated = no price is stated
serving-cost-of-drink = cost of the drink
serving-cost-table = cost
serving-cost-source = Ingredient costs come from pack prices before sales tax and include waste.
serving-cost-no-closure = no closure
serving-cost-lid = lid
serving-cost-film = film
serving-cost-wide-straw = wide straw
serving-cost-straw = straw
serving-cost-sleeve = sleeve
serving-cost-no-price = no price: { $parts }
serving-cost-sales-tax = sales tax
serving-cost-sales-tax-of = sales tax, { $percent } %
serving-cost-no-rate = the shop states no rate
serving-cost-tax-not-stated = sales tax not stated
serving-cost-menu-price = menu price, sales tax included
serving-cost-margin = margin
serving-cost-margin-share = margin, as a share of the price before tax
serving-cost-not-known = its cost is not known
serving-cost-no-menu-price = the recipe states no menu price
# Allergens and diet.
serving-guests-none = No pack names an allergen.
serving-guests-contains = Contains
serving-guests-may-contain = May contain
serving-guests-not-stated = Not stated by
serving-guests-vegan-yes = Vegan, by ingredients.
serving-guests-vegan-no = Not vegan.
serving-guests-vegan-not-known = Vegan: not known, because an ingredient does not state it or is contradicted.
serving-guests-dairy-free-yes = Dairy-free, by ingredients.
serving-guests-dairy-free-no = Not dairy-free.
serving-guests-dairy-free-not-known = Dairy-free: not known, because an ingredient does not state it or is contradicted.
serving-guests-basis = By what the packs state of their ingredients; shared scoops, shakers and blenders carry traces.
serving-guests-questions = Questions about the ingredient lists
# $words stand in the ingredient list.
serving-guests-question-source = From the ingredient list of { $ingredient }: “{ $words }”
serving-guests-questions-basis = The pack in your hand is right. Words that name an allergen or an animal count until the entry is put right.
# Nutrition, and where the energy comes from.
serving-nutrition-per-100-ml = per 100 ml
serving-nutrition-per-drink = per drink
serving-nutrition-table = nutrition
serving-nutrition-empty = there is nothing in the cup
serving-nutrition-caffeine = caffeine, per drink
serving-nutrition-free-sugars = free sugars, per drink
serving-nutrition-basis = In the order of Regulation (EU) 1169/2011, Annex XV, rounded as the Commission’s guidance of 2012 prints it. Worked out from what the packs state; guidance, and no claim that it meets any law.
serving-nutrition-basis-with-toppings = In the order of Regulation (EU) 1169/2011, Annex XV, rounded as the Commission’s guidance of 2012 prints it. Figures per 100 ml leave out the toppings; figures per drink include them. Worked out from what the packs state; guidance, and no claim that it meets any law.
serving-energy-heading = Where the energy comes from
serving-energy-none = No line brings any energy.
serving-energy-not-stated = not stated
serving-energy-ingredient = ingredient
serving-energy-table = energy
serving-energy-part = part
# Allergens by US law; the clauses are "contains …" and "may contain …".
serving-guests-us = The nine major US allergens: { $clauses }.
serving-guests-us-wheat = wheat, unless the cereal is another one
serving-guests-us-shellfish = crustacean shellfish
serving-guests-us-eggs = eggs
serving-guests-us-fish = fish
serving-guests-us-peanuts = peanuts
serving-guests-us-soybeans = soybeans
serving-guests-us-milk = milk
serving-guests-us-tree-nuts = tree nuts
serving-guests-us-sesame = sesame
# Yardsticks. $publisher and $definition are clauses.
serving-yardsticks-none = No yardstick is selected. Yardsticks are guidance and no claim of compliance.
serving-yardsticks-source = { $publisher }. Counts { $definition }.
# Why what is typed is not taken, as a clause. $from is a number; $found and $to have their unit.
serving-out-of-range = { $found } is out of range: enter { $from } to { $to }
# $units are symbols such as "g" and "fl oz".
serving-no-mass-or-volume = “{ $found }” is neither a mass nor a volume: use { $units }
serving-not-a-time = “{ $found }” is not a time: enter hh:mm, from 00:00 to 23:59
