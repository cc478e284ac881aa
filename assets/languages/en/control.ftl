# Control charts of measures: whether a pump or a scoop still doses as it did. “One use” is a press of a pump, a scoop of a scoop.

control-title = Control chart
control-water = water
# What a chart is of.
control-name = { $measure }, { $ingredient }
control-limits = { $days ->
    [one] { $day }: { $mean } a use. After 1 day, chance keeps it between { $least } and { $most }.
   *[other] { $day }: { $mean } a use. After { $days } days, chance keeps it between { $least } and { $most }.
}
control-rough = These limits are rough: it takes readings of { $firm } days for firm ones.
# What a day shows.
control-signal = { $signal ->
    [outside] outside the limits
    [one-side] { $run } days in a row on the same side of the mean
    [trend] { $run } days in a row in the same direction
   *[spread] readings of one day unusually far apart, or unusually alike
}
control-steady = Nothing suggests that it doses differently.
# { $reason } is one of the signals.
control-shift = { $direction ->
    [less] Since { $day } one use is { $now } instead of { $before }, { $percent } less: { $reason }.
   *[more] Since { $day } one use is { $now } instead of { $before }, { $percent } more: { $reason }.
}
control-moved-about = Approved drinks that move with it, once it counts as it doses now:
control-moved = { $drink }: { $steps } steps from what was approved
control-moved-unknown = { $drink }: how far from what was approved is not known
control-none-moved = No approved drink moves by more than a noticeable step.
control-too-few = { $days ->
    [one] Readings of 1 day so far: a control chart takes { $wanted }.
   *[other] Readings of { $days } days so far: a control chart takes { $wanted }.
}
control-keep = Keep only the readings since { $day }
control-keep-hint = The measure then counts as it doses now, and its chart begins anew. You can undo this.
control-day = day
control-mean = one use
control-spread = apart
control-lower = lower limit
control-upper = upper limit
control-shows = shows
control-table = Control chart
# The picture for those who can't see it. { $limits } is a sentence, { $shift } another.
control-picture = { $name }: { $count } days. { $limits } { $shift }
control-legend = Line: the mean. Dashed: the limits. Filled: a day that shows a change.
