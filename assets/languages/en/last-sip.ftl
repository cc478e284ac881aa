# A drink from the counter to the last sip. { $from }, { $to } and { $minutes } are times with their unit.
last-sip-level = It tastes right from { $from } to { $to } after it is handed over: within a step on temperature, sweetness and tea.
last-sip-level-once = It tastes right for less than a minute, { $minutes } after it is handed over.
last-sip-never = It is never within a step on temperature, sweetness and tea at once.
# { $steps } is a number of steps, on all axes together.
last-sip-best = It is at its best after { $minutes }, { $steps } steps away in all.
last-sip-nothing-known = Nobody knows what it should taste like: enter what is missing on the labels.
last-sip-end = After { $minutes } it has { $temperature }.
last-sip-end-sweetness = After { $minutes } it has { $temperature } and a sweetness of { $sweetness }.
# { $rate } is in grams a minute; { $basis } is stated or assumed.
last-sip-melts = { $basis ->
    [stated] Its ice melts by { $rate }, as the shop states, and it warms by the same heat.
   *[assumed] Its ice melts by { $rate }, which is assumed, and it warms by the same heat. Weigh the ice of a standing drink to know better.
}
# The ways below are put in place of { $way }.
last-sip-way-closure = { $closure ->
    [open] Open
    [lid] With a lid
   *[film] With a film
}
last-sip-way-ice = With { $percent } of the ice
last-sip-other-level = { $way }: right from { $from } to { $to }, at its best after { $minutes }.
last-sip-other-never = { $way }: never within a step, at its best after { $minutes }, { $steps } steps away.
# $level says whether it is within a step on every axis then.
last-sip-arrives = { $level ->
    [within] After { $minutes } on the way it has { $temperature } and is within a step.
    [off] After { $minutes } on the way it has { $temperature } and is not within a step.
   *[unknown] After { $minutes } on the way it has { $temperature }.
}
last-sip-arrives-before-best = It is at its best later, { $best } after it is handed over.
last-sip-arrives-at-best = It gets no better after that.
# The sheet of the window.
last-sip-no-course = How it stands is not known: an empty cup, or a hot drink whose cup nobody knows. Choose a cup in the recipe.
last-sip-way = on the way for
last-sip-way-named = Minutes on the way to the guest
last-sip-way-too-long = The picture ends after { $minutes }: a drink that is on the way for longer is not followed.
last-sip-table = from the counter to the last sip
# Why a strip is missing. $figure is its name, $reason a clause.
# A strip for a screen reader. $values are "at first 82 °C", in the unit of the strip.
last-sip-picture = { $figure } over { $minutes }: { $first } at first, { $last } at the end, held to { $aim }
last-sip-picture-without-aim = { $figure } over { $minutes }: { $first } at first, { $last } at the end
last-sip-legend = Line: the drink as it stands; the haze around it: where it is in 95 of 100 cases. The band across: within a step of what it is held to. Upright line: when it is at its best.
last-sip-legend-way = Shaded: on the way.
last-sip-otherwise = In another way
last-sip-off-by = away from what it is held to
