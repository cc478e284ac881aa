# What is drawn of a drink: the level, the cup, the list of figures and how a figure is worked out.

# A choice as a screen reader says it: what is chosen, and what it is now.
choice-named = { $name }: { $word }

widget-not-known = not known
widget-not-stated = not stated

# The level in words, for a screen reader. $standard is "the standard"; each of $axes is "sweetness: sweeter by 2.1 steps".
widget-level = Level against { $standard }. { $axes }. { $overall }
# Behind the level of a drink that has just changed. $level is the sentence above.
widget-level-moved = { $level }. Moved: { $moved }
widget-level-nothing-moves = { $level }. No mark moves
# In the legend: what the band is.
widget-level-band = one noticeable step either side

# The sentence under the level. $far is a number of noticeable steps.
widget-level-nothing-compared = no axis can be compared with the standard yet
widget-level-even = level on every axis
widget-level-within = every axis is within one step ({ $far } overall)
widget-level-within-as-known = every known axis is within one step ({ $far } overall)
widget-level-off = not level: { $far } steps overall, { $axes }
# The last of a list of axes.
widget-level-more-axes = { $count } more
widget-level-some-not-known = { $verdict }; not known: { $axes }

# A mark of the level. $change is "sweeter" or "less sweet"; $steps is a number.
widget-mark-level = level
widget-mark-steps = { $change } by { $steps } steps
# At most one step: "sweeter by 0.4 of a step".
widget-mark-part = { $change } by { $steps } of a step
widget-mark-steps-not-counted = { $change } by { $steps } steps, which does not count
widget-mark-part-not-counted = { $change } by { $steps } of a step, which does not count
# Under a mark, where there is little room.
widget-mark-short = { $steps } { $change }
widget-mark-of-axis = { $axis }: { $difference }
widget-mark-moved = { $axis }: { $from } → { $to }
# What the tooltip of a mark says.
widget-mark-figures = standard { $standard }, this drink { $drink }
widget-mark-step = one noticeable step is { $step }
widget-mark-doubt = uncertainty: ± { $u } steps; the counter's own scatter: { $scatter } steps
widget-mark-step-source = Step, unless the shop has set its own: { $source }

# Names of the axes under the level: at most seven letters or so.
widget-axis-sweetness = sweet
widget-axis-tea-strength = tea
widget-axis-creaminess = cream
widget-axis-acidity = acid
widget-axis-body = body
widget-axis-temperature = heat
widget-axis-volume = volume

# The cup in words, for a screen reader. Each of $layers is "whole milk 180 ml".
widget-cup = { $cup }. From the bottom: { $layers }.
widget-cup-ice = { $volume } of it is ice.
widget-cup-none = no cup
widget-cup-of-volume = { $cup }, { $volume }
widget-cup-full = { $percent } % full
widget-cup-served = when served
# $fill is "92 % full".
widget-cup-served-full = when served, { $fill }
# Remarks under the cup.
widget-cup-overfull = { $volume } do not fit
widget-cup-head-room = reaches into the head room of { $volume }
widget-cup-not-chosen = no cup chosen: drawn as a plain cup
widget-cup-no-shape = shape not stated, drawn as a plain cup
widget-cup-not-known = volume not known: { $ingredients }
# Two lines under the cup, one below the other.
widget-cup-as-poured = layers as poured, each at its own temperature:
widget-cup-sum-differs = their sum is not quite the volume of the drink
# What the strength of the colours in the cup stands for.
widget-cup-colours-sugar = the stronger a colour, the more sugar
widget-cup-colours-sweetness = the stronger a colour, the more sweetness
widget-cup-colours-heat = the stronger a colour, the more heat it brings or takes
widget-cup-colours-cost = the stronger a colour, the more cost
widget-cup-colours-energy = the stronger a colour, the more energy
widget-cup-colours-tea = the stronger a colour, the more tea
widget-cup-colours-uncertainty = the stronger a colour, the more uncertain the sugar
# A layer that can be clicked: it leads to its line. $layer is "whole milk 180 ml".
widget-cup-go-to = go to { $layer }

# The list of figures: its groups, and the heads of its columns.
widget-figures = figures
widget-figures-taste = Taste
widget-figures-on-top = With what floats on top
widget-figures-cup = In the cup
widget-figures-nutrition = Nutrition
widget-figures-cost = Cost
widget-figures-figure = figure
widget-figures-unit = unit
widget-figures-value = value
widget-figures-doubt = ±
widget-figures-in-100-ml = per 100 ml
widget-figures-remark = remark
# What a click on a figure shows, behind "Click:".
widget-figures-how = how this is worked out
widget-sweetness-at = sweetness at { $celsius }
widget-minutes-until = minutes until { $celsius }
# In place of the minutes, where the drink is handed over below its drinking temperature.
widget-served-below = served below this
widget-served-below-tasted = served below this; tasted at { $celsius } when it was approved
widget-first-sip = first sip: { $figure }
widget-stirred = stirred: { $figure }
widget-allergens = allergens: { $allergens }
widget-claims-source = Based on what the packs state. Shared scoops, shakers and blenders can leave traces.

# How a figure is worked out.
widget-why = why { $figure }
# $figure is "total sugar: 20.3 g, ± 1.7".
widget-why-title = How { $figure } is worked out
# Which table is copied: the lines with what each brings of the figure.
widget-why-lines = lines, { $figure }
widget-why-evidence = Evidence for the { $nutrient }: { $evidence }.
widget-why-ingredient = ingredient
widget-why-cup-and-shaker = cup and shaker
widget-why-cup-and-more = cup and what goes with it
widget-why-assumed = Assumed, because no pack says it
widget-why-doubt = What makes it uncertain
# Behind a cause of uncertainty: what would narrow it.
widget-why-narrow = — { $narrow }
