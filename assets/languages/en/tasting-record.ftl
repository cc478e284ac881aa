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
