# The words of fixed lists, by their key.

# What a figure rests on.
evidence-label = label
evidence-specification-sheet = specification sheet
evidence-measured = measured
evidence-published-table = published table
evidence-assumed = assumed

# What an ingredient is like.
form-liquid = liquid
form-syrup = syrup
form-powder = powder
form-crystals = crystals
form-paste = paste
form-leaf = leaf
form-ice = ice
form-pieces = pieces
form-foam = foam

# A figure of an ingredient.
nutrient-energy = energy
nutrient-water = water
nutrient-fat = fat
nutrient-saturates = saturates
nutrient-carbohydrate = carbohydrate
nutrient-sugars = sugars
nutrient-polyols = polyols
nutrient-fibre = fibre
nutrient-protein = protein
nutrient-salt = salt
nutrient-acid = acid
nutrient-tea-solids = tea solids
nutrient-insoluble-solids = insoluble solids
nutrient-caffeine = caffeine
nutrient-degrees-brix = °Brix

# A sweetening alcohol.
polyol-erythritol = erythritol
polyol-xylitol = xylitol
polyol-sorbitol = sorbitol
polyol-mannitol = mannitol
polyol-maltitol = maltitol
polyol-lactitol = lactitol
polyol-isomalt = isomalt

# What the counter measures with.
measure-kind-scoop = scoop
measure-kind-pump = pump
measure-kind-spoon = spoon
measure-kind-jug = jug
measure-kind-ice-scoop = ice scoop
measure-kind-button = button
measure-kind-piece = piece

# Other words for a use of a measure that are read when they are typed behind a number, with a comma between.
amount-words-of-scoops = scoopful, scoopfuls
amount-words-of-presses = pump, pumps, squirt, squirts
amount-words-of-spoons = spoonful, spoonfuls
amount-words-of-jugs = pitcher, pitchers
amount-words-of-ice-scoops = scoop of ice, scoops of ice
amount-words-of-pushes = button, buttons, button press, button presses

# What a drink is made, poured or served in.
vessel-kind-cup = cup
vessel-kind-shaker = shaker
vessel-kind-jug = jug

# How far a recipe or version is.
state-draft = draft
state-on-trial = on trial
state-approved = approved
# Marked approved in the file, though no approval of it is kept.
state-marked-only = no approval
state-retired = retired

# What the shares of the lines are shown of.
lens-sugar = sugar
lens-sweetness = sweetness
lens-heat = heat
lens-cost = cost
lens-energy = energy
lens-tea = tea
lens-uncertainty = uncertainty

# What was found in the book.
found-recipe = recipe
found-version = version
found-ingredient = ingredient
found-measure = measure
found-vessel = cup, shaker or jug
found-flavour = flavour
found-sugar-level = sugar level
found-ice-level = ice level
found-instruction = instruction
found-note = note
found-approval = approval
found-tasting = tasting
found-shop = shop

# How serious a finding is.
severity-warning = warning
severity-error = error
