# Causes of uncertainty: what is uncertain, as a noun in small letters.
# $evidence is where the figure comes from.
cause-composition = { $evidence ->
    [label] the { $nutrient } of { $ingredient } on the label
    [specification] the { $nutrient } of { $ingredient } on the specification sheet
    [measured] the { $nutrient } of { $ingredient } as measured here
    [published] the { $nutrient } of { $ingredient } from a published table
    [assumed] the { $nutrient } of { $ingredient }, which is assumed
   *[derived] the { $nutrient } of { $ingredient }, worked out from its other figures
}
cause-sugar-split = which sugars are in { $ingredient }
cause-undeclared = the water and solids that the pack of { $ingredient } leaves out
cause-flavour = the strength of the { $flavour } in { $ingredient }
cause-nameless-flavour = the strength of a flavour in { $ingredient }
cause-high-potency = the intense sweetener in { $ingredient }
cause-density = the density of { $ingredient }
cause-bulk-density = the poured density of { $ingredient }
cause-calibration = what one use of the { $measure } holds
cause-calibration-with = what one use of the { $measure } holds of { $ingredient }
cause-unknown-measure = a measure that is not in the book
cause-extraction = how much of { $ingredient } dissolves
cause-retention = how much water { $ingredient } keeps back
cause-free-sugars = how much of the sugars of { $ingredient } is added
cause-measure-temperature = the temperature at which the { $measure } pours
cause-line-temperature = the temperature of { $ingredient } when it is added
cause-batch = the weighing and measuring of a batch of { $ingredient }
cause-polyol-sweetness = the sweetness of { $polyol }: published values disagree
cause-unknown-polyol-sweetness = the sweetness of a polyol of no known kind: published values disagree
cause-tasted-sweetness = how sweet { $ingredient } was tasted to be
cause-polyol-energy = which polyol is in { $ingredient }
cause-potency = the sweetness of the intense sweetener: published values disagree
cause-sweetener-mixture = the taste of several intense sweeteners together
cause-freezing-point = the temperature at which the drink freezes
cause-melting = how much of the ice has melted when the drink is served
cause-heat-model = the heat lost while mixing and pouring
cause-density-model = the volume that the parts of the drink add up to
cause-yield = the yield of a batch of { $ingredient }
cause-room-temperature = the temperature of the room
cause-temperature = the temperature of { $ingredient } when it is used
cause-vessel-heat = the heat that the { $vessel } takes up
cause-cooling = how fast a drink cools in the { $vessel }
# $sugar is one of glucose, fructose, lactose, maltose and other.
cause-relative-sweetness = { $sugar ->
    [glucose] the sweetness of glucose at { $celsius }: published values disagree
    [fructose] the sweetness of fructose at { $celsius }: published values disagree
    [lactose] the sweetness of lactose at { $celsius }: published values disagree
    [maltose] the sweetness of maltose at { $celsius }: published values disagree
   *[other] the sweetness of other sugars at { $celsius }: published values disagree
}
cause-use-scatter = the counter's own scatter in measuring { $ingredient }
cause-reading = the reading of the scale or the mark for { $ingredient }
# What stands in the place of an ingredient where a line is not in the drink any more.
cause-some-line = a line

# What a person can do to know it better, as a request in small letters.
narrow-specification = ask for the specification sheet
narrow-which-sugars = ask the maker which sugars they are
narrow-measure-again = measure it again
narrow-read-label = read the label of the pack
narrow-label-or-maker = read the label, or ask the maker
narrow-taste-with-standard = taste it side by side with the standard
narrow-weigh-volume = weigh a measured volume of it
narrow-weigh-drink-volume = weigh a measured volume of the drink
narrow-weigh-level-measures = weigh level measures of it
narrow-soluble-solids = measure the soluble solids of the brew
narrow-weigh-brew = weigh the brew that comes off it
narrow-ingredient-list = read the ingredient list
narrow-thermometer-pouring = read a thermometer as it pours
narrow-thermometer-adding = read a thermometer as you pour it in
narrow-weigh-into-batch = weigh what goes into a batch
narrow-thermometer-iced = read a thermometer in the iced drink
narrow-thermometer-served = read a thermometer in the drink as it is served
narrow-weigh-batches = weigh the next three batches
narrow-thermometer-room = read a thermometer in the room
narrow-weigh-vessel = weigh it empty and enter what it is made of
# $uses is the word for several uses of the measure: "presses".
narrow-never-weighed = no readings yet: weigh ten { $uses }, three times
narrow-weighed-once = weighed once: weigh ten { $uses }, twice more
narrow-weigh-more = weigh ten { $uses }, three times more
narrow-press-to-stop = press to the stop, or weigh this line
narrow-strike-level = strike it level, or weigh this line
narrow-weigh-line = weigh this line
