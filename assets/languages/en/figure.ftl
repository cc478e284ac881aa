# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = no cup is chosen, or the room is no cooler than the drinking temperature
no-figure-warmer-only = an iced drink gets only warmer while it stands
no-figure-cup = no cup is chosen
no-figure-price = the price of the cup, its closure or its straw is not stated
no-figure-only-water = only water, tea and ice are in it
no-figure-empty = nothing is in the cup

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = The grams of each sugar times its relative sweetness at this temperature (sucrose = 1), per 100 ml of the mixed drink.
formula-serving-temperature = The temperature at which the heat of all lines, the ice, the cup and the shaker balances.
formula-minutes-to-drinkable = Heat lost through the wall and by evaporation, from the readings of the cup or from published cups, for how full it is.
formula-volume = The volumes of water and dissolved solids at { $celsius }, with the ice that has melted.
formula-fill = Drink, toppings, foam and ice compared with what the cup holds to its rim.
formula-dilution = Grams of water, molten ice and tea for each gram of everything else in the mixed drink.
formula-brix = Soluble solids of the mixed drink, in percent of its mass.
formula-energy = Carbohydrate, protein, fat, fibre and acid times the factors of Regulation (EU) 1169/2011, Annex XIV.
formula-cost = The grams of each line times the price of its pack, with waste, plus the cup, its closure and what goes with it.
formula-free-sugars = The part of each line's sugars that counts as free: added, or from honey, syrup and juice.
formula-total-sugar = The grams of each line times the sugars of its ingredient, added up.
formula-sum = The grams of each line times the figure of its ingredient, added up.

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients } ({ $evidence })

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = energy
nutrition-fat = fat
nutrition-saturates = of which saturates
nutrition-carbohydrate = carbohydrate
nutrition-sugars = of which sugars
nutrition-polyols = of which polyols
nutrition-fibre = fibre
nutrition-protein = protein
nutrition-salt = salt

# Where the noticeable step of an axis is from.
step-source-sweetness = Weber fraction 0.09 (sucrose in cola, J. Sensory Studies 2023, doi 10.1111/joss.12803) to 0.17 (Schutz & Pilgrim 1957, value from memory); 0.10 chosen; floor assumed
step-source-acidity = Weber fraction of citric acid 0.22 (Schutz & Pilgrim 1957, value from memory); floor assumed
step-source-creaminess = Weber fraction of creaminess in dairy emulsions 0.20 (Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521); floor assumed
step-source-body = Weber fraction of thickness 0.26 (Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), of viscosity, applied to solids; floor assumed
step-source-tea-strength = assumed 0.20; finer than the Weber fraction of caffeine's bitterness, 0.30 (Schutz & Pilgrim 1957, value from memory); floor assumed
step-source-flavour = assumed: no published figure for flavours of drinks
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = assumed { $step }: no published figure; { $apart } are told apart (Engelen et al. 2002, Eur. J. Oral Sci. 110:412)
step-source-volume = assumed 5 %: no published figure; floor assumed

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = mass
measurand-volume = volume
measurand-total-sugar = total sugar
measurand-free-sugars = free sugars
measurand-sucrose = sucrose
measurand-glucose = glucose
measurand-fructose = fructose
measurand-lactose = lactose
measurand-maltose = maltose
measurand-other-sugars = other sugars
measurand-sweetness = sweetness
measurand-soluble-solids = soluble solids
measurand-density = density
measurand-dilution = dilution
measurand-serving-temperature = serving temperature
measurand-ice-left = ice left
measurand-minutes-to-drinkable = minutes to drinkable
measurand-energy = energy
measurand-fat = fat
measurand-saturates = saturates
measurand-carbohydrate = carbohydrate
measurand-polyols = polyols
measurand-fibre = fibre
measurand-protein = protein
measurand-salt = salt
measurand-caffeine = caffeine
measurand-tea-solids = tea solids
measurand-acid = acid
measurand-cost = cost
measurand-fill = fill
measurand-tea-strength = tea strength
measurand-creaminess = creaminess
measurand-acidity = acidity
measurand-body = body
measurand-dry-matter = dry matter
measurand-sugar = sugar
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = house units/100 ml
