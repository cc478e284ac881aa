# How a drink cools, and the thermometer readings of its cup. A message that ends with "-named" is what a screen reader says of the field.
serving-cooling-served = when served
serving-cooling-table = cooling
# $reason is a clause.
serving-cooling-no-curve = No cooling curve: { $reason }.
serving-readings-no-curve = The readings give no curve yet: { $reason }.
# Heads of columns and an axis.
serving-head-minutes = minutes
serving-head-temperature = temperature
# Where the drink is in the serving window of the shop. $by is a difference of temperatures, $from a number, $to a temperature.
serving-cooling-within = { $kind ->
    [hot] Within the serving window of { $from } to { $to } for hot drinks.
   *[iced] Within the serving window of { $from } to { $to } for iced drinks.
}
serving-cooling-above = { $kind ->
    [hot] { $by } above the serving window of { $from } to { $to } for hot drinks.
   *[iced] { $by } above the serving window of { $from } to { $to } for iced drinks.
}
serving-cooling-below = { $kind ->
    [hot] { $by } below the serving window of { $from } to { $to } for hot drinks.
   *[iced] { $by } below the serving window of { $from } to { $to } for iced drinks.
}
# Names of figures: minutes until a line of temperature is passed. $at is a temperature.
serving-cooling-to-drinking = to drinking temperature
serving-cooling-to-drinking-at = to drinking temperature, { $at }
serving-cooling-to-very-hot = below { $at }, no longer very hot
serving-cooling-to-lukewarm = to lukewarm, { $at }
# Beside such a figure.
serving-cooling-room-no-cooler = the room is no cooler than that
serving-cooling-already = already this cool when served
# The lines in the picture.
serving-cooling-line-very-hot = very hot, { $at }
serving-cooling-line-drinking = drinking temperature, { $at }
serving-cooling-line-lukewarm = lukewarm, { $at }
serving-cooling-legend = Line: this drink from serving on; band: where it is in 95 of 100 cases.
serving-cooling-legend-readings = Line: this drink from serving on; band: where it is in 95 of 100 cases. Dots: the readings as they were taken, the cup open; dashed: the curve through them.
# The picture for a screen reader. $lines are several of the next message, with commas between.
serving-cooling-picture = { $readings ->
    [one] cooling curve in { $unit }: { $lines }; { $readings } reading
   *[other] cooling curve in { $unit }: { $lines }; { $readings } readings
}
serving-cooling-picture-line = { $line } in { $minutes }
# What the curve is based on. $miss is a difference of temperatures.
serving-cooling-basis-readings = { $count ->
    [one] Based on { $count } thermometer reading of this cup, weighed against published cups. The curve misses it by { $miss }.
   *[other] Based on { $count } thermometer readings of this cup, weighed against published cups. The curve misses a reading by { $miss } at most.
}
serving-cooling-basis-constant = Based on the cup’s stated cooling time, weighed against published cups.
serving-cooling-basis-published = Based on published cups alone: the cooling of this cup is not stated.
# $fill is "90 %", $minutes "34 ± 4".
serving-cooling-speed = { $closure ->
    [lid] { $fill } full with its lid on, it would cool from { $from } by 63 % of the way to a room of { $room } in { $minutes } min.
    [film] { $fill } full under its film, it would cool from { $from } by 63 % of the way to a room of { $room } in { $minutes } min.
   *[open] { $fill } full, it would cool from { $from } by 63 % of the way to a room of { $room } in { $minutes } min.
}
# $request is a request in small letters: "keep reading, down to drinking temperature".
serving-cooling-narrow = To narrow it: { $request }.
# The readings. Rows: "in a room of | 22 | °C" and "with | 300 | ml in it".
serving-readings = Thermometer readings
serving-readings-table = thermometer readings
serving-readings-no-cup = Choose a cup in the recipe; readings belong to a cup.
serving-readings-how = Fill the { $cup } with hot water, leave it open and measure every few minutes. Three readings give a curve; later ones make it surer. With the volume noted, they apply to every drink in this cup, however full.
serving-readings-room = in a room of
serving-readings-room-named = Room temperature of the readings
serving-readings-volume = with
serving-readings-volume-named = Volume of the readings
serving-readings-volume-hint = not noted
serving-readings-volume-unit = { $unit } in it
serving-readings-minutes-named = Minutes of reading { $number }
serving-readings-celsius-named = Temperature of reading { $number }
serving-readings-remove = Remove reading { $number }
