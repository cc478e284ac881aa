# The terms of the program, each explained in a sentence or two wherever it heads or names something.
term-standard = The standard is the latest approval of the version or of the nearest one that it builds on, with the figures that it was tasted with.
term-plain-swap = The plain swap replaces one ingredient by equal measures (between a powder and a liquid, by equal fat or dry matter) and changes no other line.
term-noticeable-step = A noticeable step is a difference that a taster just notices: a percentage of the standard’s value, but never less than the floor.
term-level = The level compares a drink with its standard. The line is the standard, the band is one noticeable step either side, and each mark is one axis of taste with its uncertainty.
term-whisker = The thin line through a mark shows its uncertainty: one standard uncertainty up and one down. Where it crosses the edge of the band, only tasting tells.
term-distance = The overall difference combines all axes into one number of noticeable steps. It can be above 1 even when every single axis is within one step.
term-step-floor = The floor is the least that a noticeable step is, however little of it the standard has.
term-sugar-floor = The sugar floor is what powders, milk and fruit bring. Leaving out the sweetener can’t take the drink below it.
term-scatter = The counter’s own scatter is how much two cups of the same recipe differ, because no two scoops or presses are quite alike.
term-uncertainty = ± is one standard uncertainty: the true value lies within it about two times in three, and almost always within twice that.
term-evidence = Evidence is where a figure comes from, and it decides how far the figure is trusted. Type two or more readings one after another, such as 1.31 1.32 1.30, and the figure is measured.
term-sweetness = Sweetness is sucrose equivalent (SE): the grams of plain sugar in 100 ml that would taste as sweet at this temperature.
term-tea-strength = Tea strength is the dissolved solids of the tea in 100 ml of the drink.
term-flavour = A flavour is measured in house units. The book says how many units one gram of an ingredient has.
term-creaminess = Creaminess is the fat in 100 ml of the drink.
term-acidity = Acidity is the fruit acid in 100 ml of the drink, counted as citric acid.
term-body = Body is how full the drink feels in the mouth: the dissolved and very fine solids in 100 ml, sugars left out.
term-free-sugars = Free sugars are added sugars and those of honey, syrups and juices. The sugar of milk does not count.
term-soluble-solids = Soluble solids are what is dissolved in 100 g of the drink, as a refractometer reads it (°Brix).
term-dilution = Dilution is the water, melted ice and tea for each gram of everything else.
term-drinking-temperature = The drinking temperature is where tastes are compared: warmth changes how sweet a sugar is.
term-serving-window = The serving window is the temperature range in which the shop serves drinks of this kind.
term-fill = Fill is how much of the cup the drink takes up, with toppings and ice, in percent of its volume to the rim.
term-head-room = Head room is what a lid or film needs to stay free below the rim.

# The explanation of a term, and below it what a click does; $click is a clause.
term-and-click = { $sentence }
    Click: { $click }
