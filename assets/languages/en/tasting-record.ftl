# Tastings that the book keeps.

# What came out, as the value of a field: a phrase without a stop.
tasting-outcome-said = nothing counted
tasting-outcome-chosen = { $test ->
    [triangle] triangle: { $right } of { $people } found the odd cup
    [duo-trio] duo–trio: { $right } of { $people } found the cup like the reference
    [pair] pair: { $right } of { $people } chose the second cup, as expected
   *[pair-either-way] pair: { $right } of { $people } chose the second cup
}
tasting-outcome-matched = { $people ->
    [one] matched by 1 person
   *[other] matched by { $people } people
}
tasting-outcome-passed-as-equal = { $people ->
    [one] passed as equal by 1 person
   *[other] passed as equal by { $people } people
}
tasting-outcome-about = the second cup has about { $times } times as much
tasting-counts = counts
tasting-counts-not = doesn’t count

# A cup: an amount of an ingredient of one that was mixed for the tasting.
tasting-cup-part = { $amount } of { $ingredient }
# A cup of no lines.
tasting-cup-empty = an empty cup

## What all tastings together say of an ingredient.

# $what is an axis or a flavour, $before a relative uncertainty such as ±25 %.
tasting-proposal = { $ingredient }, { $what }: { $times } times what is stated or assumed, which was known to ±{ $before }.
tasting-proposal-reference = { $ingredient }, { $what }: the others are measured by it.
tasting-proposal-taken = So far { $times } has been taken over.
tasting-proposal-rests = { $count ->
    [one] It rests on 1 tasting.
   *[other] It rests on { $count } tastings.
}
tasting-contradicts = { $tasting } contradicts everything else: a result as strange has a probability of { $chance }. Repeat it, or leave it out if something went wrong.
tasting-not-settled = The tastings can’t be weighed together: they contradict each other too much. Leave out the one that went wrong.
tasting-nothing-learned = No tasting counts yet.
# Why a tasting that counts says nothing of a figure. $tasting is one of the texts of named-tasting….
tasting-aside-nothing-counted = { $tasting }: nothing was counted, so it says nothing of a figure.
tasting-aside-unfinished = { $tasting }: its entry is not finished; two cups and the number of people are needed.
tasting-aside-no-axis = { $tasting }: what it was about is not stated; choose sweetness or a flavour.
tasting-aside-other-axis = { $tasting }: no figure of an ingredient is corrected by tastings of { $axis }.
tasting-aside-not-known = { $tasting }: the { $axis } of a cup is not known; enter what is missing on the labels and the weights.
tasting-aside-changed = { $tasting }: { $ingredients } changed since it was tasted.
tasting-aside-nothing-differs = { $tasting }: the cups differ in nothing that a tasting could correct.
# What becomes of a drink. $before and $after are figures with their unit, $change is such as “sweeter by 1.2 steps”.
tasting-effect = { $drink }: { $axis } { $before } → { $after } ({ $change }).
tasting-effect-standard = { $drink }: { $axis } { $before } → { $after } ({ $change }); from its standard { $off_before } → { $off_after } steps.
tasting-effect-none = No drink has it in it.

## The tastings of a drink, on its sheet

tastings = Tastings
# $tasting is one of the texts of named-tasting…, $outcome one of those of tasting-outcome….
tastings-row = { $tasting }: { $outcome }
tastings-add = Enter a tasting
tastings-remove = Delete this tasting
tastings-people = tasters
tastings-people-named = Name or initials of a taster
tastings-people-hint = a name, then Enter
tastings-people-fewer = Take the last one away
tastings-date = on
tastings-date-named = Day of the tasting
tastings-in-future = { $day } is after today; enter the day of the tasting
tastings-reason = reason
tastings-reason-named = Reason for the tasting
tastings-cup = cup { $number }
tastings-axis = asked about
tastings-axis-named = What was asked about
tastings-no-axis = which cup is which
tastings-outcome = outcome
tastings-outcome-named = Kind of outcome
tastings-outcome-kind = { $kind ->
    [matched] cup 2 was matched to cup 1
    [passed-as-equal] cup 2 passed as equal
    [about] cup 2 has about so many times as much
    [pair] pair: cup 2 should have more
    [pair-either-way] pair: either may have more
    [triangle] triangle: which is odd?
    [duo-trio] duo–trio: which is like the reference?
   *[said] nothing counted
}
tastings-counted = people
tastings-counted-named = How many people answered, each counted once
tastings-right = of them
tastings-right-named = How many were right or chose cup 2
tastings-times = times
tastings-times-named = How many times as much cup 2 has
tastings-counts = counts as evidence of the ingredients
tastings-note = said
tastings-note-named = What somebody said of a cup
tastings-note-hint = AB 2: a little flat
tastings-said = cup { $number }: { $text }
tastings-said-by = { $person }, cup { $number }: { $text }
tastings-take-over = See what it does to the drinks, and take it over for { $ingredient }
