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
